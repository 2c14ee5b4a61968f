#include "ui/common/look.h"
#include "ui/common/panel.h"

#include <QLabel>
#include <QVBoxLayout>

#include <gtest/gtest.h>

namespace chalk::ui::common {

TEST(Panel, HasAHeadOnlyWithATitle)
{
    const Look look;
    Panel panel(look);
    auto* contents = new QWidget(&panel);
    panel.body()->addWidget(contents);
    panel.resize(300, 200);
    panel.show();
    const int without = contents->mapTo(&panel, QPoint()).y();
    panel.setTitle(QStringLiteral("Needs attention today"), QStringLiteral("6"));
    panel.layout()->activate();
    EXPECT_EQ(contents->mapTo(&panel, QPoint()).y(), without + 44 + 1);
    panel.setTitle({});
    panel.layout()->activate();
    EXPECT_EQ(contents->mapTo(&panel, QPoint()).y(), without);
}

}  // namespace chalk::ui::common
