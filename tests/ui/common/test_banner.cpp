#include "ui/common/action_button.h"
#include "ui/common/banner.h"
#include "ui/common/look.h"

#include <QLabel>
#include <QSignalSpy>
#include <QTest>

#include <gtest/gtest.h>

namespace chalk::ui::common {

TEST(Banner, IsNeverCutShort)
{
    const Look look;
    Banner banner(look);
    QString words = QStringLiteral("Disc irritation 2024.");
    for (int i = 0; i < 12; ++i) {
        words += QStringLiteral(" No loaded rounding, the hinge stays under 120 kg.");
    }
    banner.setMessage({Signal::Warn, QStringLiteral("warning"), QStringLiteral("Lower back."), words});
    const int wide = banner.heightForWidth(1200);
    const int narrow = banner.heightForWidth(500);
    EXPECT_GT(narrow, wide * 3 / 2);
    banner.resize(500, narrow);
    banner.show();
    for (const QLabel* label : banner.findChildren<QLabel*>()) {
        if (!label->text().isEmpty()) {
            EXPECT_GE(label->height(), label->heightForWidth(label->width()));
        }
    }
    EXPECT_EQ(banner.accessibleName(), QStringLiteral("Lower back. ") + words);
}

TEST(Banner, ShowsWhatPeopleWroteAsText)
{
    const Look look;
    Banner banner(look);
    banner.setMessage({Signal::Pain, QStringLiteral("pain"), QStringLiteral("<Stop>"), QStringLiteral("a < b & c")});
    bool isFound = false;
    for (const QLabel* label : banner.findChildren<QLabel*>()) {
        isFound = isFound || (label->text().contains(QStringLiteral("&lt;Stop&gt;")) && label->text().contains(QStringLiteral("a &lt; b &amp; c")));
    }
    EXPECT_TRUE(isFound);
}

TEST(Banner, ItsButtonsWork)
{
    const Look look;
    Banner banner(look);
    ActionButton* button = banner.addButton(QStringLiteral("Open health"));
    const QSignalSpy clicks(button, &QAbstractButton::clicked);
    banner.show();
    QTest::mouseClick(button, Qt::LeftButton);
    EXPECT_EQ(clicks.count(), 1);
}

}  // namespace chalk::ui::common
