#include "core/checkin/finding.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace chalk::checkin {

namespace {

using lifts::Pattern;

const base::Date kFindingDay = *base::Date::parse("2026-11-25");

JudgedLift liftOfPattern(Pattern pattern, bool isStalled = false, int flatWeeks = 0, double z = 0)
{
    return {base::LiftId(1 + static_cast<int>(pattern)), pattern, "some_lift", isStalled, false, flatWeeks, z};
}

const std::vector<JudgedLift>& threeLifts()
{
    static const std::vector<JudgedLift> lifts{liftOfPattern(Pattern::Squat, true, 3, 0.6), liftOfPattern(Pattern::Hinge, true, 5, 0.7),
                                               liftOfPattern(Pattern::SingleLeg, true, 5, 1.4)};
    return lifts;
}

QueueEntry inQueue(const char* name, FindingKind kind, int flatWeeks = 0, int client = 1)
{
    QueueEntry entry;
    entry.client = base::ClientId(client);
    entry.name = name;
    entry.finding = {kind, std::nullopt, flatWeeks};
    return entry;
}

}  // namespace

TEST(Finding, TheWorstComesFirst)
{
    std::vector<AttentionReason> reasons{ClearanceDue{}, LiftOnHold{Pattern::Hinge, "hip_hinge", {}, 0}, SessionsMissed{2, 4},
                                         ScreenDue{Pattern::Squat, "squat", progression::Stage::Pattern, false, {}, 0}, DirectionDue{kFindingDay, 200, 0}};
    EXPECT_EQ(findingOf(reasons, threeLifts(), true), (Finding{FindingKind::Pain, base::LiftId(2), 0}));
    reasons.erase(reasons.begin() + 1);
    EXPECT_EQ(findingOf(reasons, threeLifts(), true).kind, FindingKind::Clearance);
    reasons.erase(reasons.begin());
    EXPECT_EQ(findingOf(reasons, threeLifts(), true).kind, FindingKind::Plateau);
    EXPECT_EQ(findingOf(reasons, {}, true).kind, FindingKind::Direction);
    reasons.back() = DirectionDue{kFindingDay, 200, 0, kFindingDay - 1};
    EXPECT_EQ(findingOf(reasons, {}, true), (Finding{FindingKind::Direction, std::nullopt, 0, kFindingDay - 1}));
    reasons.pop_back();
    EXPECT_EQ(findingOf(reasons, {}, true).kind, FindingKind::Attendance);
    reasons.erase(reasons.begin());
    const std::vector<JudgedLift> lifts{liftOfPattern(Pattern::Squat)};
    EXPECT_EQ(findingOf(reasons, lifts, true), (Finding{FindingKind::Rescreen, base::LiftId(1), 0}));
    EXPECT_EQ(findingOf({}, lifts, true), Finding{});
}

TEST(Finding, OfStalledLiftsTheLongestFlatAndThenTheSurest)
{
    EXPECT_EQ(findingOf({}, threeLifts(), true), (Finding{FindingKind::Plateau, base::LiftId(1 + static_cast<int>(Pattern::SingleLeg)), 5}));
}

TEST(Finding, WhoMayNotTrainHasNoPlateau)
{
    EXPECT_EQ(findingOf({}, threeLifts(), false).kind, FindingKind::OnCourse);
}

TEST(Finding, NobodyIsDueBeforeTheReviewButForPainAndClearance)
{
    for (const FindingKind kind : kFindingKinds) {
        const bool isPressing = kind == FindingKind::Pain || kind == FindingKind::Clearance;
        EXPECT_EQ(isDue({kind, {}, 0}, kFindingDay + 1, kFindingDay), isPressing);
        EXPECT_TRUE(isDue({kind, {}, 0}, kFindingDay, kFindingDay));
        EXPECT_TRUE(isDue({kind, {}, 0}, std::nullopt, kFindingDay));
    }
}

TEST(Finding, TheQueueIsOrderedByKindThenWeeksThenName)
{
    const std::vector<QueueEntry> ordered{inQueue("Zoe", FindingKind::Pain), inQueue("Bo", FindingKind::Plateau, 6), inQueue("Ada", FindingKind::Plateau, 4),
                                          inQueue("Bo", FindingKind::Plateau, 4), inQueue("Bo", FindingKind::Plateau, 4, 2),
                                          inQueue("Ada", FindingKind::Direction), inQueue("Ada", FindingKind::OnCourse)};
    std::vector<QueueEntry> shuffled(ordered.rbegin(), ordered.rend());
    std::sort(shuffled.begin(), shuffled.end(), isBefore);
    EXPECT_EQ(shuffled, ordered);
    EXPECT_FALSE(isBefore(ordered.front(), ordered.front()));
}

TEST(Finding, TheMorePressingTheSoonerItIsLookedAtAgain)
{
    for (const FindingKind kind : kFindingKinds) {
        EXPECT_EQ(reviewDaysAfter(kind) % 7, 0);
        EXPECT_LE(reviewDaysAfter(FindingKind::Pain), reviewDaysAfter(kind));
        EXPECT_GE(reviewDaysAfter(FindingKind::OnCourse), reviewDaysAfter(kind));
    }
}

}  // namespace chalk::checkin
