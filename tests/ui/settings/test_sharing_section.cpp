#include "ui/settings/sharing_section.h"

#include "tests/support/small_studio.h"
#include "ui/common/look.h"

#include <gtest/gtest.h>

namespace chalk::ui::settings {

TEST(SharingSection, SaysWhereTheStudioLivesAndWhoWorksThere)
{
    test::StudioOnTest studio;
    const common::Look look;
    SharingSection section(look, studio.database());
    EXPECT_EQ(section.words().at(0), studio.file());
    EXPECT_EQ(section.words().at(2), QStringLiteral("Nobody said"));
    EXPECT_TRUE(section.words().at(3).startsWith(QStringLiteral("Owner")));
    studio.database().setAuthor(base::CoachId(2));
    section.refresh();
    const QString second = studio.rows(QStringLiteral("SELECT name FROM coach WHERE id = 2")).at(0);
    EXPECT_EQ(section.words().at(2), second);
    EXPECT_TRUE(section.words().at(4).contains(second));
}

}  // namespace chalk::ui::settings
