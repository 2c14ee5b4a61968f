#include "ui/floor/rehearsal_draft.h"

#include <gtest/gtest.h>

namespace chalk::ui::floor {

using progression::Verdict;

namespace {

RehearsalDraft judgedDraft()
{
    RehearsalDraft draft;
    draft.verdicts = {Verdict::Met, Verdict::Partly, Verdict::NotMet, Verdict::Met};
    return draft;
}

}  // namespace

TEST(RehearsalDraft, EveryPatternHasFourPointsInWords)
{
    for (const lifts::Pattern pattern : lifts::kPatterns) {
        const auto points = rehearsalPoints(pattern);
        ASSERT_EQ(points.size(), 4U);
        for (const RehearsalPoint& point : points) {
            EXPECT_FALSE(point.words.isEmpty());
        }
        EXPECT_EQ(points[0].key, "depth");
    }
}

TEST(RehearsalDraft, PatternAsksForEveryPointAndControlDoesNot)
{
    RehearsalDraft draft = judgedDraft();
    draft.verdicts[1].reset();
    const auto fault = faultOf(draft, lifts::Pattern::Squat, true);
    ASSERT_TRUE(fault);
    EXPECT_EQ(fault->place, RehearsalPlace::Point);
    EXPECT_EQ(fault->point, 1);
    EXPECT_TRUE(fault->message.contains(QStringLiteral("Knees follow the toes")));
    EXPECT_FALSE(faultOf(draft, lifts::Pattern::Squat, false));
}

TEST(RehearsalDraft, NumbersThatMakeNoSenseAreNamedAtTheirPlace)
{
    for (const char* text : {"x", "-1", "1001", "2.5"}) {
        RehearsalDraft draft = judgedDraft();
        draft.reps = QString::fromUtf8(text);
        const auto fault = faultOf(draft, lifts::Pattern::Hinge, true);
        ASSERT_TRUE(fault) << text;
        EXPECT_EQ(fault->place, RehearsalPlace::Reps);
    }
    for (const char* text : {"one", "-1", "61", "1:30", "nan", "inf"}) {
        RehearsalDraft draft = judgedDraft();
        draft.pauses[2] = QString::fromUtf8(text);
        const auto fault = faultOf(draft, lifts::Pattern::Hinge, true);
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
    const auto record = rehearsalOf(draft, lifts::Pattern::Squat, policy);
    EXPECT_EQ(record.reps, base::Reps(6));
    EXPECT_EQ(record.pauses, (progression::Pauses{1000, 1500, std::nullopt}));
    EXPECT_EQ(draftOf(record, lifts::Pattern::Squat), draft);
    EXPECT_EQ(rehearsalOf(RehearsalDraft(), lifts::Pattern::Squat, policy).reps, policy.controlReps);
    EXPECT_TRUE(rehearsalOf(RehearsalDraft(), lifts::Pattern::Squat, policy).criteria.empty());
}

}  // namespace chalk::ui::floor
