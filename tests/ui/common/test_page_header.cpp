#include "ui/common/action_button.h"
#include "ui/common/look.h"
#include "ui/common/page_header.h"

#include <QLabel>

#include <gtest/gtest.h>

namespace chalk::ui::common {

TEST(PageHeader, TheSubtitleGivesWayFirst)
{
    const Look look;
    PageHeader header(look);
    const QString subtitle = QStringLiteral("45 · Strong, back-safe · with Ines · month 7 · twice a week");
    header.setTitle(QStringLiteral("Joaquin Ferro"));
    header.setSubtitle(subtitle);
    header.addTool(new ActionButton(look, QStringLiteral("Record session"), &header));
    header.resize(1200, header.height());
    header.show();
    const auto shown = [&header] { return header.findChildren<QLabel*>().at(1)->text(); };
    EXPECT_EQ(shown(), subtitle);
    header.resize(420, header.height());
    EXPECT_TRUE(shown().endsWith(QChar(0x2026)));
    EXPECT_EQ(header.findChildren<QLabel*>().at(0)->text(), QStringLiteral("Joaquin Ferro"));
    header.resize(1200, header.height());
    EXPECT_EQ(shown(), subtitle);
    EXPECT_EQ(header.height(), 64);
}

}  // namespace chalk::ui::common
