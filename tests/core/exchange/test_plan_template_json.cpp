#include "core/exchange/plan_template_json.h"

#include "core/exchange/catalogue_json.h"

#include <gtest/gtest.h>

#include <QFile>
#include <QJsonArray>

namespace chalk::exchange {

namespace {

using planning::PlanTemplate;

std::string templateFaultAfter(const QByteArray& sound, const QByteArray& spoilt)
{
    QFile file(QStringLiteral(":/catalogue/plan_templates.json"));
    EXPECT_TRUE(file.open(QIODevice::ReadOnly));
    QByteArray text = file.readAll();
    const auto place = text.indexOf(sound);
    EXPECT_GE(place, 0) << sound.constData();
    text.replace(place, sound.size(), spoilt);
    const auto read = readPlanTemplates(text, builtInCatalogue());
    return read ? std::string("none") : read.error().field + ": " + read.error().reason;
}

}  // namespace

TEST(BuiltInPlanTemplates, OneToFourSessionsEachWithAllEightPatterns)
{
    const auto templates = builtInPlanTemplates(builtInCatalogue());
    for (int sessions = 1; sessions <= 4; ++sessions) {
        const PlanTemplate* plan = planning::templateFor(templates, sessions);
        ASSERT_NE(plan, nullptr) << sessions;
        EXPECT_TRUE(planning::patternsLeftOut(*plan).empty()) << plan->key;
        for (const lifts::Pattern pattern : lifts::kPatterns) {
            EXPECT_FALSE(plan->of(pattern).loaded.empty()) << keyOf(pattern);
            EXPECT_FALSE(plan->of(pattern).rehearsed.empty()) << keyOf(pattern);
        }
    }
    EXPECT_EQ(planning::templateFor(templates, 5), nullptr);
}

TEST(PlanTemplateJson, ReadsBackTheSame)
{
    const lifts::Catalogue catalogue = builtInCatalogue();
    for (PlanTemplate plan : builtInPlanTemplates(catalogue)) {
        plan.isOrderKept = !plan.isOrderKept;
        plan.name = "Ours";
        EXPECT_EQ(readPlanTemplate(toJson(plan), "plan", catalogue).value(), plan);
    }
}

TEST(PlanTemplateJson, ExercisesOfItsOwnCountAlone)
{
    QJsonObject object{{QStringLiteral("key"), QStringLiteral("own")},
                       {QStringLiteral("name"), QStringLiteral("Own")},
                       {QStringLiteral("sessions"), QJsonArray{QJsonObject{{QStringLiteral("name"), QStringLiteral("A")}, {QStringLiteral("patterns"), QJsonArray{QStringLiteral("squat")}}}}}};
    const auto plan = readPlanTemplate(object, "own", builtInCatalogue()).value();
    EXPECT_TRUE(plan.of(lifts::Pattern::Squat).loaded.empty());
    EXPECT_EQ(planning::patternsLeftOut(plan).size(), 7U);
}

TEST(PlanTemplateJson, FaultsNameTheirPlace)
{
    EXPECT_EQ(templateFaultAfter("\"patterns\": [\"squat\", \"hinge\"", "\"patterns\": [\"squat\", \"squat\""), "templates[0].sessions[0].patterns: has squat twice");
    EXPECT_EQ(templateFaultAfter("\"patterns\": [\"squat\", \"hinge\"", "\"patterns\": [\"squat\", \"jump\""), "templates[0].sessions[0].patterns: jump is no pattern");
    EXPECT_EQ(templateFaultAfter("\"goblet_squat\"", "\"no_such_lift\""), "templates[0].exercises.squat.loaded: no_such_lift is no exercise of the catalogue");
    EXPECT_EQ(templateFaultAfter("\"goblet_squat\"", "\"sit_to_stand\""), "templates[0].exercises.squat.loaded: sit_to_stand is done without load");
    EXPECT_EQ(templateFaultAfter("\"bodyweight_squat\"", "\"goblet_squat\""), "templates[0].exercises.squat.rehearsed: goblet_squat is done with load");
    EXPECT_EQ(templateFaultAfter("\"two_full\"", "\"one_full\""), "templates[1].key: one_full is there twice");
    EXPECT_EQ(templateFaultAfter("\"name\": \"A\"", "\"title\": \"A\""), "templates[1].sessions[0].title: is not a field that is known here");
    EXPECT_EQ(templateFaultAfter("\"hinge\": {", "\"bend\": {"), "exercises.bend: is not a field that is known here");
}

}  // namespace chalk::exchange
