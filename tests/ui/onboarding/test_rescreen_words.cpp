#include "ui/onboarding/rescreen_words.h"

#include "core/exchange/catalogue_json.h"
#include "core/exchange/screen_json.h"
#include "ui/common/look.h"
#include "ui/common/prose.h"

#include <gtest/gtest.h>

namespace chalk::ui::onboarding {

using progression::RescreenReason;
using screens::Mark;

TEST(RescreenWords, SaysWhyAScreenIsDue)
{
    const base::Date day = *base::Date::parse("2026-09-29");
    EXPECT_EQ(rescreenSentence({RescreenReason::EightWeeks, day, {}}), QStringLiteral("A new screen is due since 29 Sep 2026: the last one is eight weeks old."));
    EXPECT_EQ(rescreenSentence({RescreenReason::Layoff, {}, {lifts::Pattern::Squat, lifts::Pattern::Hinge}}), QStringLiteral("A new screen is due after a layoff: squat, hinge."));
    EXPECT_EQ(rescreenSentence({RescreenReason::Hold, day, {lifts::Pattern::VerticalPush}}),
              QStringLiteral("A new screen is due: a hold was released on 29 Sep 2026 (vertical push)."));
}

TEST(RescreenWords, PausesSayTheirSeconds)
{
    EXPECT_EQ(pauseWord({screens::PauseMark::Shaky, 3200}), QStringLiteral("shaky 3.2 s"));
    EXPECT_EQ(pauseWord({screens::PauseMark::Held, std::nullopt}), QStringLiteral("held"));
    EXPECT_EQ(pauseWord({}), QStringLiteral("not tried"));
}

TEST(RescreenWords, TheTableNamesPointsStagesAndPainThenAndNow)
{
    const auto lifts = exchange::builtInCatalogue();
    const auto catalogue = exchange::builtInScreenCatalogue(lifts);
    const auto& guide = catalogue.of(lifts::Pattern::Squat);
    auto before = catalogue.blankScreen(*base::Date::parse("2026-09-29"));
    auto after = catalogue.blankScreen(*base::Date::parse("2026-11-24"));
    before.of(lifts::Pattern::Squat).points[0].mark = Mark::Partly;
    for (screens::PointMark& point : after.of(lifts::Pattern::Squat).points) {
        point.mark = Mark::Met;
    }
    before.of(lifts::Pattern::Hinge).points[0].mark = Mark::Met;
    after.of(lifts::Pattern::Hinge).pain = screens::ScreenPain{"left hip <b>", 4};
    const common::Look look;
    const QString text = common::plainText(comparisonHtml(before, after, catalogue, progression::Policy::defaultsFor(base::MassUnit::Kilogram), look.theme()));
    EXPECT_TRUE(text.contains(QStringLiteral("29 Sep 2026\n24 Nov 2026")));
    EXPECT_TRUE(text.contains(QString::fromStdString(guide.points[0].text) + QStringLiteral("\npartly\nmet\nbetter")));
    EXPECT_TRUE(text.contains(QString::fromStdString(guide.points[1].text) + QStringLiteral("\nnot judged\nmet\n")));
    EXPECT_TRUE(text.contains(QStringLiteral("Squat\n1 Pattern\n2 Control\nbetter"))) << text.toStdString();
    EXPECT_TRUE(text.contains(QStringLiteral("Hinge\n1 Pattern\non hold\nworse")));
    EXPECT_TRUE(text.contains(QStringLiteral("Pain\nnone\nleft hip <b>, 4 of 10\nworse")));
    EXPECT_TRUE(text.contains(QStringLiteral("Single-leg\nnot screened\nnot screened")));
}

}  // namespace chalk::ui::onboarding
