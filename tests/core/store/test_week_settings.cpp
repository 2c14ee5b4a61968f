#include "core/store/week_settings.h"

#include "tests/support/small_studio.h"

#include <gtest/gtest.h>

namespace chalk::store {

class WeekSettingsTest : public ::testing::Test {
protected:
    test::StudioOnTest m_studio;
    WeekSettings m_settings{m_studio.database()};
};

TEST_F(WeekSettingsTest, WhatNobodySetHasItsDefault)
{
    EXPECT_EQ(m_settings.studioWeek().value(), week::StudioWeek());
    const auto work = m_settings.coachWork().value();
    ASSERT_FALSE(work.empty());
    EXPECT_EQ(work.begin()->second, week::CoachWork());
    EXPECT_EQ(m_settings.planning(base::ClientId(1)).value(), week::ClientPlanning());
    EXPECT_TRUE(m_settings.closures(base::Date())->empty());
}

TEST_F(WeekSettingsTest, WhatIsSetIsKept)
{
    week::StudioWeek studio;
    studio.weights.gapPer15 = 5;
    ASSERT_TRUE(m_settings.setStudioWeek(studio));
    EXPECT_EQ(m_settings.studioWeek().value(), studio);

    const week::CoachWork work{studio.open, 2, 300};
    ASSERT_TRUE(m_settings.setCoachWork(base::CoachId(1), work));
    EXPECT_EQ(m_settings.coachWork()->at(base::CoachId(1)), work);

    week::ClientPlanning planning;
    planning.priority = 3;
    planning.standing = {{2, 600, base::CoachId(1)}};
    ASSERT_TRUE(m_settings.setPlanning(base::ClientId(1), planning));
    EXPECT_EQ(m_settings.planning(base::ClientId(1)).value(), planning);
    EXPECT_EQ(m_settings.allPlanning()->size(), 1U);
}

TEST_F(WeekSettingsTest, WhatCannotBeIsRefusedAndNothingIsKept)
{
    week::CoachWork work;
    work.capacity = 99;
    const auto refused = m_settings.setCoachWork(base::CoachId(1), work);
    ASSERT_FALSE(refused);
    EXPECT_TRUE(refused.error().message.contains(QStringLiteral("capacity")));
    EXPECT_EQ(m_settings.coachWork()->at(base::CoachId(1)), week::CoachWork());
}

TEST_F(WeekSettingsTest, AQuotaIsOfOneWeekAndCanBeTakenBack)
{
    const base::Date monday = test::smallStudioDay() - 1;
    const base::ClientId ada(1);
    EXPECT_TRUE(m_settings.quotas(monday)->empty());
    ASSERT_TRUE(m_settings.setQuota(ada, monday, 1));
    ASSERT_TRUE(m_settings.setQuota(ada, monday, 0)) << "set anew";
    EXPECT_EQ(m_settings.quotas(monday).value(), (std::map<base::ClientId, int>{{ada, 0}}));
    EXPECT_TRUE(m_settings.quotas(monday + 7)->empty());
    ASSERT_TRUE(m_settings.setQuota(ada, monday, {}));
    EXPECT_TRUE(m_settings.quotas(monday)->empty());

    EXPECT_FALSE(m_settings.setQuota(ada, monday + 1, 1)) << "no Monday";
    EXPECT_FALSE(m_settings.setQuota(ada, monday, 8));
    EXPECT_FALSE(m_settings.setQuota(ada, monday, -1));
    EXPECT_FALSE(m_settings.setQuota(base::ClientId(99), monday, 1)) << "nobody";
    EXPECT_TRUE(m_settings.quotas(monday)->empty());
}

TEST_F(WeekSettingsTest, ClosuresComeByTheirFirstDayAndGo)
{
    const base::Date day = test::smallStudioDay();
    const week::Closure lights{day + 3, day + 3, 720, week::kDayMinutes, {}, {}, 0, "Harbour lights"};
    const week::Closure ill{day, day + 1, 0, week::kDayMinutes, base::CoachId(1), {}, 0, "Ill"};
    const week::Closure rack{day + 1, day + 2, 0, week::kDayMinutes, {}, lifts::Station::Rack, 1, {}};
    ASSERT_TRUE(m_settings.addClosure(lights));
    const auto id = m_settings.addClosure(ill);
    ASSERT_TRUE(id);
    ASSERT_TRUE(m_settings.addClosure(rack));
    const auto all = m_settings.closures(day).value();
    ASSERT_EQ(all.size(), 3U);
    EXPECT_EQ(all[0].closure, ill);
    EXPECT_EQ(all[1].closure, rack);
    EXPECT_EQ(all[2].closure, lights);
    EXPECT_EQ(m_settings.closures(day + 3)->size(), 1U);
    ASSERT_TRUE(m_settings.removeClosure(*id));
    EXPECT_EQ(m_settings.closures(day)->size(), 2U);
    EXPECT_FALSE(m_settings.removeClosure(*id));
}

}  // namespace chalk::store
