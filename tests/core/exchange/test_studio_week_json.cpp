#include "core/exchange/studio_week_json.h"

#include <gtest/gtest.h>

namespace chalk::exchange {

namespace {

CoachNames twoCoaches()
{
    return coachNamesOf({{base::CoachId(1), "Ines"}, {base::CoachId(2), "Tobias"}});
}

}  // namespace

TEST(StudioWeekJsonTest, WhatIsByDefaultIsNotWritten)
{
    EXPECT_TRUE(toJson(week::StudioWeek()).isEmpty());
    EXPECT_TRUE(toJson(week::CoachWork()).isEmpty());
    EXPECT_TRUE(toJson(week::ClientPlanning(), twoCoaches()).isEmpty());
}

TEST(StudioWeekJsonTest, WhatIsWrittenReadsTheSame)
{
    week::StudioWeek studio;
    studio.open = {};
    ASSERT_TRUE(studio.open.add({5, 480, 780}));
    studio.stations[lifts::Station::Rack] = 3;
    studio.weights.consecutive = 9;
    EXPECT_EQ(readStudioWeek(toJson(studio), {}).value(), studio);

    const week::CoachWork work{studio.open, 3, 360};
    EXPECT_EQ(readCoachWork(toJson(work), {}).value(), work);

    week::ClientPlanning planning{2, 3, {week::RecoveryKind::RestDay, 36}, {{base::CoachId(2), 20}}, {{1, 540, base::CoachId(1)}}};
    EXPECT_EQ(readClientPlanning(toJson(planning, twoCoaches()), {}, twoCoaches()).value(), planning);
    EXPECT_EQ(readClientPlanning(toJson(planning, CoachNames()), {}, CoachNames()).value(), planning) << "by id";

    const base::Date day = *base::Date::fromYmd(2026, 12, 24);
    const week::Closure closure{day, day + 9, 0, 720, {}, lifts::Station::Rack, 1, "Repair"};
    EXPECT_EQ(readClosure(toJson(closure, twoCoaches()), {}, twoCoaches()).value(), closure);

    const week::BookingPlace place{base::CoachId(2), day, 540, 45, "Rack 1", 4, true};
    EXPECT_EQ(readBookingPlace(toJson(place, twoCoaches()), {}, twoCoaches()).value(), place);
}

TEST(StudioWeekJsonTest, AFaultNamesItsField)
{
    EXPECT_EQ(readStudioWeek(QJsonObject{{QStringLiteral("stations"), QJsonObject{{QStringLiteral("pool"), 1}}}}, "week").error().field, "week.stations.pool");
    EXPECT_EQ(readCoachWork(QJsonObject{{QStringLiteral("capacity"), 0}}, "coaches[0].work").error().field, "coaches[0].work.capacity");
    const QJsonObject stranger{{QStringLiteral("first"), QStringLiteral("2026-12-24")}, {QStringLiteral("coach"), QStringLiteral("Nobody")}};
    EXPECT_EQ(readClosure(stranger, "closures[0]", twoCoaches()).error().field, "closures[0].coach");
    const QJsonObject backwards{{QStringLiteral("first"), QStringLiteral("2026-12-24")}, {QStringLiteral("last"), QStringLiteral("2026-12-23")}};
    EXPECT_EQ(readClosure(backwards, "closures[0]", twoCoaches()).error().field, "closures[0].last");
}

}  // namespace chalk::exchange
