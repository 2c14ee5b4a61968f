#include "ui/common/chip.h"
#include "ui/common/look.h"

#include <QImage>
#include <QTest>

#include <gtest/gtest.h>

namespace chalk::ui::common {

TEST(Chip, ItsWidthDoesNotChangeWhenItGoesOn)
{
    const Look look;
    Chip chip(look, QStringLiteral("Flagged"));
    chip.setCount(8);
    const QSize off = chip.sizeHint();
    chip.setChecked(true);
    EXPECT_EQ(chip.sizeHint(), off);
    chip.setCount(std::nullopt);
    EXPECT_LT(chip.sizeHint().width(), off.width());
}

TEST(Chip, TheKeyboardTurnsItOnAndItShows)
{
    const Look look;
    Chip chip(look, QStringLiteral("Flagged"));
    chip.resize(chip.sizeHint());
    chip.show();
    const QImage off = chip.grab().toImage();
    QTest::keyClick(&chip, Qt::Key_Space);
    EXPECT_TRUE(chip.isChecked());
    EXPECT_NE(chip.grab().toImage(), off);
}

}  // namespace chalk::ui::common
