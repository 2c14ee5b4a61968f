#include "ui/floor/rehearsal_draft.h"

#include "core/exchange/catalogue_json.h"
#include "core/exchange/screen_json.h"

#include <gtest/gtest.h>

namespace chalk::ui::floor {

using progression::Verdict;

namespace {

RehearsalDraft judgedDraft()
{
    RehearsalDraft draft;
    draft.verdicts = {Verdict::Met, Verdict::Partly, Verdict::NotMet, Verdict::Met, Verdict::Met, Verdict::Met};
    return draft;
}

const screens::ScreenCatalogue& rehearsalScreens()
{
    static const screens::ScreenCatalogue screens = exchange::builtInScreenCatalogue(exchange::builtInCatalogue());
    return screens;
}

RehearsalPoints pointsOfPattern(lifts::Pattern pattern)
{
    return rehearsalPoints(rehearsalScreens().of(pattern));
}

}  // namespace

TEST(RehearsalDraft, EveryPatternHasThePointsOfItsScreen)
{
    for (const lifts::Pattern pattern : lifts::kPatterns) {
        const auto points = pointsOfPattern(pattern);
        ASSERT_EQ(points.size(), screens::kPointsPerPattern);
        for (const RehearsalPoint& point : points) {
            EXPECT_FALSE(point.words.isEmpty());
            EXPECT_NE(rehearsalScreens().of(pattern).find(point.key), nullptr);
        }
    }
}

TEST(RehearsalDraft, ARecordOfOtherPointsIsCorrectedByItsOwn)
{
    progression::Rehearsal record;
    record.criteria = {{"depth", Verdict::Met}, {"even_weight", Verdict::NotMet}};
    const auto points = pointsOf(record, rehearsalScreens().of(lifts::Pattern::Squat));
    ASSERT_EQ(points.size(), 2U);
    EXPECT_EQ(points[1].words, QStringLiteral("Even weight"));
    const auto policy = progression::Policy::defaultsFor(base::MassUnit::Kilogram);
    EXPECT_EQ(rehearsalOf(draftOf(record, points), points, policy).criteria, record.criteria) << "nothing of it is lost";
    record.criteria = {{pointsOfPattern(lifts::Pattern::Squat)[2].key, Verdict::Met}};
    EXPECT_EQ(pointsOf(record, rehearsalScreens().of(lifts::Pattern::Squat)).size(), screens::kPointsPerPattern);
}

TEST(RehearsalDraft, PatternAsksForEveryPointAndControlDoesNot)
{
    RehearsalDraft draft = judgedDraft();
    draft.verdicts[1].reset();
    const auto fault = faultOf(draft, pointsOfPattern(lifts::Pattern::Squat), true);
    ASSERT_TRUE(fault);
    EXPECT_EQ(fault->place, RehearsalPlace::Point);
    EXPECT_EQ(fault->point, 1);
    EXPECT_TRUE(fault->message.contains(pointsOfPattern(lifts::Pattern::Squat)[1].words));
    EXPECT_FALSE(faultOf(draft, pointsOfPattern(lifts::Pattern::Squat), false));
}

TEST(RehearsalDraft, NumbersThatMakeNoSenseAreNamedAtTheirPlace)
{
    for (const char* text : {"x", "-1", "1001", "2.5"}) {
        RehearsalDraft draft = judgedDraft();
        draft.reps = QString::fromUtf8(text);
        const auto fault = faultOf(draft, pointsOfPattern(lifts::Pattern::Hinge), true);
        ASSERT_TRUE(fault) << text;
        EXPECT_EQ(fault->place, RehearsalPlace::Reps);
    }
    for (const char* text : {"one", "-1", "61", "1:30", "nan", "inf"}) {
        RehearsalDraft draft = judgedDraft();
        draft.pauses[2] = QString::fromUtf8(text);
        const auto fault = faultOf(draft, pointsOfPattern(lifts::Pattern::Hinge), true);
        ASSERT_TRUE(fault) << text;
        EXPECT_EQ(fault->place, RehearsalPlace::PauseBottom);
        EXPECT_TRUE(fault->message.contains(QString::fromUtf8(text)));
    }
}

TEST(RehearsalDraft, ADraftIsARecordAndBack)
{
    RehearsalDraft draft = judgedDraft();
    draft.reps = QStringLiteral("6");
    draft.pauses = {QStringLiteral("1"), QStringLiteral("1.5"), QString()};
    draft.felt = progression::Steadiness::Shaky;
    draft.pain = 3;
    const auto policy = progression::Policy::defaultsFor(base::MassUnit::Kilogram);
    const auto record = rehearsalOf(draft, pointsOfPattern(lifts::Pattern::Squat), policy);
    EXPECT_EQ(record.reps, base::Reps(6));
    EXPECT_EQ(record.pauses, (progression::Pauses{1000, 1500, std::nullopt}));
    EXPECT_EQ(draftOf(record, pointsOfPattern(lifts::Pattern::Squat)), draft);
    EXPECT_EQ(rehearsalOf(RehearsalDraft(), pointsOfPattern(lifts::Pattern::Squat), policy).reps, policy.controlReps);
    EXPECT_TRUE(rehearsalOf(RehearsalDraft(), pointsOfPattern(lifts::Pattern::Squat), policy).criteria.empty());
}

}  // namespace chalk::ui::floor
