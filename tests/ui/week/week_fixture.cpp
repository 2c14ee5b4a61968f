#include "tests/ui/week/week_fixture.h"

namespace chalk::test {

week::WeekFacts someWeek()
{
    week::WeekFacts facts;
    facts.monday = *base::Date::fromYmd(2026, 11, 23);
    facts.nowMinute = -week::kDayMinutes;
    facts.coaches = {{{base::CoachId(1), "Ines"}, {}}, {{base::CoachId(2), "Tobias"}, {}}};
    return facts;
}

week::ClientOfWeek& addClient(week::WeekFacts& facts, const char* name)
{
    week::ClientOfWeek& client = facts.clients.emplace_back();
    client.client.id = base::ClientId(static_cast<std::int64_t>(facts.clients.size()));
    client.client.name = name;
    client.client.coach = base::CoachId(1);
    client.client.sessionsPerWeek = 1;
    client.planning.maxGroup = 3;
    client.free = week::StudioWeek::usualOpeningHours();
    client.lifts = {{base::LiftId(2 * client.client.id.value()), lifts::Pattern::Squat, lifts::Station::Rack, {}},
                    {base::LiftId(2 * client.client.id.value() + 1), lifts::Pattern::HorizontalPush, lifts::Station::Floor, {}}};
    return client;
}

sessions::Session& book(week::ClientOfWeek& client, int day, int minute, int coach)
{
    sessions::Session session;
    session.id = base::SessionId(client.client.id.value() * 100 + static_cast<std::int64_t>(client.sessions.size()));
    session.client = client.client.id;
    session.coach = base::CoachId(coach);
    session.date = *base::Date::fromYmd(2026, 11, 23) + day;
    session.startMinute = minute;
    session.place = "Rack 1";
    session.placeCapacity = 3;
    client.sessions.push_back({session, {}});
    return client.sessions.back().session;
}

}  // namespace chalk::test
