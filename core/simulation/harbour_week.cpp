#include "core/simulation/harbour_week.h"

#include <algorithm>
#include <initializer_list>

namespace chalk::simulation {

namespace {

constexpr int kFriday = 4;
constexpr int kSaturday = 5;
constexpr int kSunday = 6;
constexpr int kHour = 60;
constexpr int kInes = 1;
constexpr int kTobias = 2;

clients::WeekHours hoursOf(std::initializer_list<clients::DayHours> stretches)
{
    clients::WeekHours hours;
    for (const clients::DayHours& stretch : stretches) {
        [[maybe_unused]] const bool isAdded = hours.add(stretch);
    }
    return hours;
}

/// The same stretch on weekdays from Monday to `last`.
void addDaily(clients::WeekHours& hours, int last, int fromHour, int toHour)
{
    for (int day = 0; day <= last; ++day) {
        [[maybe_unused]] const bool isAdded = hours.add({day, fromHour * kHour, toHour * kHour});
    }
}

}  // namespace

void addHours(studio::StudioDocument& studio)
{
    clients::WeekHours open = hoursOf({{kSaturday, 8 * kHour, 13 * kHour}, {kSunday, 9 * kHour, 12 * kHour}});
    addDaily(open, kFriday, 6, 13);
    addDaily(open, kFriday, 16, 20);
    clients::WeekHours ines = hoursOf({{kSaturday, 8 * kHour, 13 * kHour}});
    addDaily(ines, kFriday, 6, 13);
    addDaily(ines, kFriday - 1, 16, 20);
    clients::WeekHours tobias = hoursOf({{kSunday, 9 * kHour, 12 * kHour}});
    addDaily(tobias, kFriday, 10, 13);
    addDaily(tobias, kFriday, 16, 20);
    studio.week.open = open;
    studio.coachWork[base::CoachId(kInes)] = {ines, 4, 7 * kHour};
    studio.coachWork[base::CoachId(kTobias)] = {tobias, 3, 6 * kHour};
    const base::Date monday = studio.today - studio.today.weekday();
    studio.closures = {{monday + 9, monday + 9, 0, week::kDayMinutes, {}, lifts::Station::Rack, 1, "One rack is repaired"},
                       {monday + 10, monday + 10, 16 * kHour, week::kDayMinutes, base::CoachId(kTobias), {}, 0, "A course"},
                       {monday + 12, monday + 12, 12 * kHour, week::kDayMinutes, {}, {}, 0, "Harbour lights"},
                       {monday + 31, monday + 40, 0, week::kDayMinutes, {}, {}, 0, "Between the years"}};
}

void addPlanning(studio::DocumentClient& client, const Person& person)
{
    week::ClientPlanning& planning = client.planning;
    const std::string name = person.name;
    for (const Slot& slot : person.slots) {
        planning.standing.push_back({slot.weekday, slot.startMinute, base::CoachId(slot.coach)});
        planning.maxGroup = std::min(slot.capacity, planning.maxGroup.value_or(slot.capacity));
    }
    std::sort(planning.standing.begin(), planning.standing.end(), [](const auto& a, const auto& b) { return a.weekday < b.weekday; });
    if (name == "Hanne Skov-Adler" || name == "Lars Pemberley") {
        planning.recovery.kind = week::RecoveryKind::RestDay;
    }
    if (name == "Joaquin Ferro" || name == "Callum Strand") {
        planning.otherCoaches = {{base::CoachId(kTobias), 15}};
    }
    if (name == "Tomasz Wyre" || name == "Hanne Skov-Adler" || name == "Sefa Reid") {
        client.client.sessionsPerWeek = 3;
    }
    const bool isFixed = name == "Noor Castell" || name == "Sefa Reid";
    for (sessions::Session& session : client.sessions) {
        session.isLocked = isFixed && session.state == sessions::SessionState::Planned;
    }
}

}  // namespace chalk::simulation
