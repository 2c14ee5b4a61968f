#include "ui/week/week_hours.h"

#include "tests/ui/week/week_fixture.h"

#include <algorithm>

namespace chalk::ui::week {

namespace {

using test::clock;
using test::WeekOnTest;

chalk::week::WeekFacts splitWeek()
{
    chalk::week::WeekFacts facts = test::someWeek();
    facts.studio.open = {};
    for (int day = 0; day < 5; ++day) {
        EXPECT_TRUE(facts.studio.open.add({day, clock(7), clock(13)}));
        EXPECT_TRUE(facts.studio.open.add({day, clock(16), clock(20)}));
    }
    return facts;
}

bool has(const WeekScene& scene, const HatchedSpan& span)
{
    return std::find(scene.hatched.begin(), scene.hatched.end(), span) != scene.hatched.end();
}

}  // namespace

TEST(WeekHours, OnlyDaysThatOpenAreShownAndClosedHoursAreFolded)
{
    const WeekScene scene = WeekOnTest(splitWeek()).scene();
    EXPECT_EQ(scene.days, (std::vector<int>{0, 1, 2, 3, 4}));
    EXPECT_EQ(scene.from, clock(7));
    EXPECT_EQ(scene.to, clock(20));
    EXPECT_EQ(scene.folds, (std::vector<FoldedHours>{{clock(13), clock(16)}}));
}

TEST(WeekHours, ASessionInClosedHoursOpensThem)
{
    chalk::week::WeekFacts facts = splitWeek();
    test::book(test::addClient(facts, "Ada Lund"), 5, clock(14));
    const WeekScene scene = WeekOnTest(facts).scene();
    EXPECT_EQ(scene.days.back(), 5);
    EXPECT_EQ(scene.folds, (std::vector<FoldedHours>{{clock(13), clock(14)}, {clock(15), clock(16)}}));
}

TEST(WeekHours, AStudioWithoutHoursShowsAPlainWeek)
{
    chalk::week::WeekFacts facts = test::someWeek();
    facts.studio.open = {};
    const WeekScene scene = WeekOnTest(facts).scene();
    EXPECT_EQ(scene.days.size(), 5U);
    EXPECT_LT(scene.from, scene.to);
    EXPECT_TRUE(scene.folds.empty());
}

TEST(WeekHours, ClosuresAreHatchedWithTheirWord)
{
    chalk::week::WeekFacts facts = splitWeek();
    facts.closures = {{facts.monday + 2, facts.monday + 2, clock(18), clock(24), {}, {}, 0, "Harbour lights"},
                      {facts.monday + 4, facts.monday + 4, clock(16), clock(24), base::CoachId(2), {}, 0, ""}};
    const WeekScene scene = WeekOnTest(facts).scene();
    EXPECT_TRUE(has(scene, {2, std::nullopt, clock(18), clock(20), QStringLiteral("Harbour lights")}));
    EXPECT_TRUE(has(scene, {4, 1, clock(16), clock(20), QStringLiteral("off")}));
    EXPECT_TRUE(has(scene, {0, std::nullopt, clock(13), clock(16), QStringLiteral("closed")}));
    EXPECT_FALSE(std::any_of(scene.hatched.begin(), scene.hatched.end(), [](const HatchedSpan& span) { return span.coach == 0U; }));
}

TEST(WeekHours, ACoachIsOffOnlyWhereTheStudioIsOpen)
{
    chalk::week::WeekFacts facts = splitWeek();
    clients::WeekHours hours;
    ASSERT_TRUE(hours.add({0, clock(10), clock(13)}));
    facts.coaches[1].work.hours = hours;
    const WeekScene scene = WeekOnTest(facts).scene();
    EXPECT_TRUE(has(scene, {0, 1, clock(7), clock(10), QStringLiteral("off")}));
    EXPECT_TRUE(has(scene, {0, 1, clock(16), clock(20), QStringLiteral("off")}));
    EXPECT_FALSE(has(scene, {0, 1, clock(13), clock(20), QStringLiteral("off")}));
}

}  // namespace chalk::ui::week
