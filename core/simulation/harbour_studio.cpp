#include "core/simulation/harbour_studio.h"

#include "core/simulation/harbour_check_ins.h"
#include "core/simulation/harbour_forms.h"
#include "core/simulation/harbour_people.h"
#include "core/simulation/harbour_plans.h"
#include "core/simulation/harbour_reports.h"
#include "core/simulation/harbour_week.h"

#include <algorithm>

namespace chalk::simulation {

namespace {

using sessions::Session;
using sessions::SessionState;

constexpr int kWeeksAhead = 1;
constexpr int kDaysPlayed = 5;  ///< after the day of the scenario, up to Sunday: so the studio can be put back to any day of the week

/// What became of a session in the end.
SessionState fateOf(const Person& person, const Session& session, base::Date today, Chance& chance)
{
    const std::string name = person.name;
    const int ago = today - session.date;
    const bool isKept = chance.happens(person.comes);
    const int kind = chance.below(10);
    if (ago == 0 && session.startMinute < kOpeningMinute) {
        return SessionState::Recorded;
    }
    if (name == "Gwen Tarrant" && ago < 22 && ago > 1) {
        return ago >= 8 && ago < 14 ? SessionState::CancelledLate : SessionState::Missed;
    }
    if (name == "Ingrid Sollund" && ago < 0) {
        return SessionState::CancelledInTime;  // until a doctor has seen her
    }
    if (isKept) {
        return SessionState::Recorded;
    }
    return kind < 4 ? SessionState::Missed : kind < 8 ? SessionState::CancelledInTime : SessionState::CancelledLate;
}

/// Long holidays, in which nothing is booked.
bool isHoliday(const Person& person, base::Date day, base::Date today)
{
    const int ago = today - day;
    const std::string name = person.name;
    if (name == "Ingrid Sollund") {
        return ago < 62 && ago > 4;  // a long journey, back last Friday
    }
    if (name == "Yara Hadley") {
        return ago < 12;
    }
    if (name == "Lars Pemberley") {
        return ago > 100 && ago < 131;
    }
    return name == "Joaquin Ferro" ? ago > 88 && ago < 106 : name == "Callum Strand" && ago > 60 && ago < 76;
}

std::vector<Session> sessionsOf(const Person& person, base::Date today, Chance& chance)
{
    std::vector<Session> sessions;
    const base::Date monday = today - today.weekday();
    for (int week = -person.weeksHere; week <= kWeeksAhead; ++week) {
        for (const Slot& slot : person.slots) {
            const base::Date day = monday + 7 * week + slot.weekday;
            if (isHoliday(person, day, today)) {
                continue;
            }
            Session session{{}, {}, base::CoachId(slot.coach), day, slot.startMinute, slot.minutes, slot.place, slot.capacity,
                            sessions::SessionKind::Training, SessionState::Planned, sessionCode(chance)};
            if (day <= today + kDaysPlayed) {
                session.state = fateOf(person, session, today, chance);
            }
            if (std::string(person.name) == "Marit Eskelin") {
                session.kind = week == -1 ? sessions::SessionKind::Trial : sessions::SessionKind::MovementScreen;
            }
            sessions.push_back(session);
        }
    }
    std::sort(sessions.begin(), sessions.end(), [](const Session& a, const Session& b) { return std::pair(a.date, a.startMinute) < std::pair(b.date, b.startMinute); });
    return sessions;
}

/// On how many days of the week a plan wants its lift on a day; nothing where none runs.
std::optional<int> plannedDays(const std::vector<PlanPart>& plans, base::Date day)
{
    std::optional<int> days;
    for (const auto& [plan, lift] : plans) {
        if (plan.plan.wishes.start <= day && day <= direction::lastDayOf(plan)) {
            days = plan.plan.wishes.lifts[lift].exposures;
        }
    }
    return days;
}

/// The kept sessions that a lift is trained in: the first lifts of the list start at once, the later ones some weeks on; somebody
/// who comes often trains each lift in two sessions of three, or on the days that a plan wants.
std::vector<StorySession> storySessions(const std::vector<Session>& sessions, std::size_t lift, const Person& person, const std::vector<PlanPart>& plans)
{
    std::vector<StorySession> story;
    int kept = 0;
    const int firstSession = person.weeksHere > 8 ? static_cast<int>(lift) / 3 : 0;
    for (const Session& session : sessions) {
        if (session.state != SessionState::Recorded) {
            continue;
        }
        const int turn = kept + static_cast<int>(lift);
        const auto days = plannedDays(plans, session.date);
        const bool isItsTurn = days ? turn % static_cast<int>(person.slots.size()) < *days : person.slots.size() < 2 || turn % 4 != 3;
        if (kept >= firstSession && isItsTurn) {
            story.push_back({session.date, session.startMinute, session.code});
        }
        ++kept;
    }
    return story;
}

clients::Client profileOf(const Person& person, int number, base::Date today, Chance& chance)
{
    clients::Client client;
    client.id = base::ClientId(number);
    client.name = person.name;
    client.birthDate = base::Date::fromDays(today.daysSince1970() - person.age * 36525 / 100 - 30 - chance.below(300));
    client.goal = person.goal;
    client.coach = base::CoachId(person.coach);
    client.unit = person.unit;
    client.bodyMass = base::Load::fromCenti(static_cast<std::int32_t>(person.bodyMass * 100));
    client.startedOn = today - 7 * person.weeksHere - 3;
    client.sessionsPerWeek = std::max(1, static_cast<int>(person.slots.size()));
    return client;
}

studio::DocumentClient clientOf(const Person& person, int number, const studio::StudioDocument& studio, const lifts::Catalogue& catalogue)
{
    Chance chance(static_cast<std::uint64_t>(788055 + 977 * number));
    studio::DocumentClient client;
    client.client = profileOf(person, number, studio.today, chance);
    client.sessions = sessionsOf(person, studio.today, chance);
    addParticulars(client, studio.today);
    const std::vector<direction::ClientPlan> plans = plansOf(person, catalogue, studio.today);
    for (std::size_t i = 0; i < person.choices.size(); ++i) {
        const lifts::Exercise& exercise = *catalogue.find(person.choices[i].exercise);
        const std::vector<PlanPart> parts = partsOf(plans, i);
        LiftStory story{exercise.pattern, exercise.key, person.choices[i].equipment,
                        setupOf(exercise, studio.equipment, person.choices[i].equipment, client.client),
                        storySessions(client.sessions, i, person, parts)};
        story.plans = parts;
        addPolicy(story.setup.policy, person.name, exercise.pattern);
        if (!story.sessions.empty()) {
            addEvents(story, person.name, studio.today);
            const Talent talent = talentFor(exercise, story.setup, person.strength);
            client.lifts.push_back(playTowards(story, person.endings[i], studio.today, kOpeningMinute, talent, chance.next()));
        }
    }
    settlePlans(client, plans);
    addDecisions(client, studio.today);
    return client;
}

}  // namespace

void openOn(studio::StudioDocument& document, base::Date day)
{
    studio::slideTo(document, day);
    studio::rewindTo(document, day, kOpeningMinute);
}

studio::StudioDocument harbourStudio(const lifts::Catalogue& catalogue, const screens::ScreenCatalogue& guides)
{
    studio::StudioDocument studio;
    studio.name = "Ketch Lane Studio";
    studio.today = *base::Date::fromYmd(2026, 11, 24);
    studio.coaches = {{base::CoachId(1), "Ines"}, {base::CoachId(2), "Tobias"}};
    studio.equipment = studioEquipment();
    addHours(studio);
    int number = 0;
    for (const Person& person : harbourPeople()) {
        studio.clients.push_back(clientOf(person, ++number, studio, catalogue));
        addForms(studio.clients.back(), person, number, studio.today, guides);
        addPlanning(studio.clients.back(), person);
        addReports(studio.clients.back(), number, studio.today);
    }
    studio.today = studio.today + kDaysPlayed;
    return studio;
}

}  // namespace chalk::simulation
