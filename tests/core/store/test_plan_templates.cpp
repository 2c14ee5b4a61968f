#include "core/store/plan_templates.h"

#include "core/exchange/catalogue_json.h"
#include "core/exchange/plan_template_json.h"
#include "tests/support/small_studio.h"

#include <gtest/gtest.h>

namespace chalk::store {

namespace {

/// The template of two sessions under a name of the studio's.
planning::PlanTemplate ownTemplate(const std::string& name)
{
    planning::PlanTemplate plan = exchange::builtInPlanTemplates(exchange::builtInCatalogue()).at(1);
    plan.key = "own";
    plan.name = name;
    return plan;
}

}  // namespace

TEST(PlanTemplates, KeepsThemByNameAndPutsOneOfThatNameInItsPlace)
{
    const lifts::Catalogue catalogue = exchange::builtInCatalogue();
    test::StudioOnTest studio;
    PlanTemplates templates(studio.database(), catalogue);
    EXPECT_TRUE(templates.all().value().empty());
    ASSERT_TRUE(templates.save(ownTemplate("Winter")));
    ASSERT_TRUE(templates.save(ownTemplate("Autumn")));
    EXPECT_EQ(templates.all().value(), (std::vector<planning::PlanTemplate>{ownTemplate("Autumn"), ownTemplate("Winter")}));
    planning::PlanTemplate shorter = ownTemplate("Winter");
    shorter.sessions.pop_back();
    ASSERT_TRUE(templates.save(shorter));
    EXPECT_EQ(templates.all().value().back(), shorter);
    ASSERT_TRUE(templates.remove("Autumn"));
    ASSERT_TRUE(templates.remove("Autumn")) << "nothing to do";
    EXPECT_EQ(templates.all().value(), std::vector<planning::PlanTemplate>{shorter});
}

TEST(PlanTemplates, ARenamedOneKeepsItsKeyAndTakesNobodysName)
{
    const lifts::Catalogue catalogue = exchange::builtInCatalogue();
    test::StudioOnTest studio;
    PlanTemplates templates(studio.database(), catalogue);
    ASSERT_TRUE(templates.save(ownTemplate("Winter")));
    ASSERT_TRUE(templates.save(ownTemplate("Autumn")));
    EXPECT_FALSE(templates.rename("Winter", "Autumn"));
    EXPECT_FALSE(templates.rename("Spring", "Summer"));
    EXPECT_FALSE(templates.rename("Winter", ""));
    ASSERT_TRUE(templates.rename("Winter", "Spring"));
    EXPECT_EQ(templates.all().value(), (std::vector<planning::PlanTemplate>{ownTemplate("Autumn"), ownTemplate("Spring")}));
}

TEST(PlanTemplates, WhatSomebodyElseKeptUnderANameIsShownBeforeItIsWrittenOver)
{
    const lifts::Catalogue catalogue = exchange::builtInCatalogue();
    test::StudioOnTest studio;
    const auto second = Database::open(studio.file(), OpenMode::MustExist).value();
    PlanTemplates one(studio.database(), catalogue);
    PlanTemplates other(*second, catalogue);
    const planning::PlanTemplate theirs = ownTemplate("Winter");
    planning::PlanTemplate yours = theirs;
    yours.sessions.pop_back();
    ASSERT_TRUE(one.save(theirs, QJsonObject()));
    const auto refused = other.save(yours, QJsonObject());
    ASSERT_FALSE(refused);
    ASSERT_EQ(refused.error().kind, StoreError::Kind::Conflict) << "nothing stood under that name when the second one began";
    EXPECT_EQ(refused.error().conflict->about, ConflictAbout::Template);
    EXPECT_EQ(refused.error().conflict->theirs, exchange::toJson(theirs));
    EXPECT_EQ(one.all().value(), std::vector<planning::PlanTemplate>{theirs});
    ASSERT_TRUE(other.save(yours, exchange::toJson(theirs))) << "theirs was seen";

    const auto kept = one.remove("Winter", exchange::toJson(theirs));
    ASSERT_FALSE(kept);
    EXPECT_EQ(kept.error().kind, StoreError::Kind::Conflict) << "it holds something else by now";
    EXPECT_EQ(one.all().value(), std::vector<planning::PlanTemplate>{yours});
    ASSERT_TRUE(one.remove("Winter", exchange::toJson(yours)));
    EXPECT_TRUE(other.remove("Winter", exchange::toJson(yours))) << "it is gone, as was wanted";
    const auto gone = other.save(theirs, exchange::toJson(yours));
    ASSERT_FALSE(gone);
    EXPECT_TRUE(gone.error().conflict->theirs.isEmpty());
}

TEST(PlanTemplates, RefusesOneThatIsNotSound)
{
    const lifts::Catalogue catalogue = exchange::builtInCatalogue();
    test::StudioOnTest studio;
    PlanTemplates templates(studio.database(), catalogue);
    planning::PlanTemplate none = ownTemplate("None");
    none.sessions.clear();
    const auto refused = templates.save(none);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().kind, StoreError::Kind::Refused);
    EXPECT_TRUE(refused.error().message.startsWith(QLatin1String("sessions"))) << refused.error().message.toStdString();
}

TEST(PlanTemplates, OneThatCannotBeReadIsNamed)
{
    const lifts::Catalogue catalogue = exchange::builtInCatalogue();
    test::StudioOnTest studio;
    PlanTemplates templates(studio.database(), catalogue);
    ASSERT_TRUE(templates.save(ownTemplate("Winter")));
    studio.rows(QStringLiteral("UPDATE plan_template SET detail = '{}'"));
    const auto read = templates.all();
    ASSERT_FALSE(read);
    EXPECT_EQ(read.error().kind, StoreError::Kind::Damaged);
    EXPECT_TRUE(read.error().message.contains(QLatin1String("the template Winter"))) << read.error().message.toStdString();
}

}  // namespace chalk::store
