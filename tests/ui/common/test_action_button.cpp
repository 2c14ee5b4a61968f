#include "ui/common/action_button.h"
#include "ui/common/look.h"

#include <QImage>

#include <gtest/gtest.h>

namespace chalk::ui::common {

TEST(ActionButton, MakesRoomForIconAndKey)
{
    Look look;
    ActionButton button(look, QStringLiteral("New client"));
    const int bare = button.sizeHint().width();
    button.setIconName(QStringLiteral("plus"));
    const int withIcon = button.sizeHint().width();
    button.setKeyText(QStringLiteral("N"));
    EXPECT_GT(withIcon, bare + 15);
    EXPECT_GT(button.sizeHint().width(), withIcon + 15);
}

TEST(ActionButton, HasTheHeightsOfTheSpecification)
{
    const Look look;
    ActionButton button(look, QStringLiteral("Print"));
    EXPECT_EQ(button.sizeHint().height(), 36);
    button.setButtonSize(ButtonSize::Small);
    EXPECT_EQ(button.sizeHint().height(), 32);
    button.setButtonSize(ButtonSize::Large);
    EXPECT_EQ(button.sizeHint().height(), 44);
}

TEST(ActionButton, IsDrawnInTheColourOfItsKind)
{
    const Look look;
    ActionButton button(look, QStringLiteral("Print"));
    button.setKind(ButtonKind::Primary);
    button.resize(button.sizeHint());
    const QImage image = button.grab().toImage();
    EXPECT_EQ(image.pixelColor(8, image.height() / 2), look.theme().pri);
    button.setKind(ButtonKind::Normal);
    EXPECT_EQ(button.grab().toImage().pixelColor(8, image.height() / 2), look.theme().raised);
}

}  // namespace chalk::ui::common
