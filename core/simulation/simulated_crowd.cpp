#include "core/simulation/simulated_crowd.h"

#include "core/simulation/lift_story.h"
#include "core/simulation/simulated_studio.h"

#include <algorithm>
#include <array>

#include <fmt/core.h>

namespace chalk::simulation {

namespace {

using sessions::Session;
using sessions::SessionState;

constexpr int kCoaches = 6;
constexpr std::array kFirstNames{"Alma", "Benno", "Carla", "Denis", "Elif", "Farid", "Greta", "Hugo", "Ivana", "Jonas",
                                 "Karin", "Leon", "Mina", "Nils", "Olga", "Paul", "Rita", "Sami", "Tessa", "Viktor"};
constexpr std::array kLastNames{"Abel", "Brandt", "Costa", "Dorn", "Eklund", "Fontana", "Graf", "Horvat", "Ilic", "Jansen",
                                "Kovac", "Lind", "Moreau", "Novak", "Olsen", "Pinto", "Quist", "Rossi", "Santos", "Thorne",
                                "Urban", "Vidal", "Weiss", "Ymer", "Zeller"};
constexpr std::array kGoals{"General strength", "Health", "Back to sport", "Feel strong", "Less stiffness"};
constexpr std::array<LiftChoice, 8> kChoices{{{"back_squat", "bar"},
                                              {"trap_bar_deadlift", "trap_bar"},
                                              {"bench_press", "bar"},
                                              {"machine_row", "row_stack"},
                                              {"dumbbell_overhead_press", "dumbbells"},
                                              {"pulldown", "pulldown_stack"},
                                              {"split_squat", "dumbbells"},
                                              {"farmer_carry", "dumbbells"}}};

}  // namespace

SimulatedCrowd::SimulatedCrowd(const lifts::Catalogue& catalogue, int weeks, base::Date today, std::uint64_t seed)
    : m_catalogue(catalogue), m_weeks(weeks), m_today(today), m_seed(seed), m_equipment(studioEquipment())
{
    for (int i = 1; i <= kCoaches; ++i) {
        m_coaches.push_back({base::CoachId(i), fmt::format("Coach {}", i)});
    }
}

studio::DocumentClient SimulatedCrowd::client(int number) const
{
    Chance chance(m_seed * 1'000'003U + static_cast<std::uint64_t>(number));
    studio::DocumentClient client;
    const auto first = static_cast<std::size_t>(chance.below(static_cast<int>(kFirstNames.size())));
    const auto last = static_cast<std::size_t>(chance.below(static_cast<int>(kLastNames.size())));
    client.client = {base::ClientId(number), fmt::format("{} {} {}", kFirstNames[first], kLastNames[last], number),
                     m_today - 365 * (18 + chance.below(55)), kGoals[static_cast<std::size_t>(chance.below(5))], base::CoachId(1 + chance.below(kCoaches)),
                     base::MassUnit::Kilogram, base::Load::fromCenti(5500 + 100 * chance.below(45)), m_today - 7 * m_weeks, 2, {}};
    const int weekday = chance.below(4);
    const int start = 60 * (7 + chance.below(12));
    const base::Date monday = m_today - m_today.weekday();
    for (int week = -m_weeks; week <= 1; ++week) {
        for (const int day : {weekday, weekday + 2}) {
            Session session{{}, {}, client.client.coach, monday + 7 * week + day, start, 60, "Floor", 4, sessions::SessionKind::Training,
                            SessionState::Planned, fmt::format("{}-{}", number, sessionCode(chance))};
            if (session.date < m_today) {
                session.state = chance.happens(90) ? SessionState::Recorded : chance.happens(50) ? SessionState::Missed : SessionState::CancelledInTime;
            }
            client.sessions.push_back(session);
        }
    }
    for (std::size_t i = 0; i < kChoices.size(); ++i) {
        const lifts::Exercise& exercise = *m_catalogue.find(kChoices[i].exercise);
        LiftStory story{exercise.pattern, exercise.key, kChoices[i].equipment, setupOf(exercise, m_equipment, kChoices[i].equipment, client.client), {}};
        int kept = static_cast<int>(i);
        for (const Session& session : client.sessions) {
            if (session.state == SessionState::Recorded && ++kept % 4 != 0) {
                story.sessions.push_back({session.date, session.startMinute, session.code});
            }
        }
        if (!story.sessions.empty()) {
            client.lifts.push_back(play(story, talentFor(exercise, story.setup, 0.7 + 0.6 * chance.unit()), chance.next()));
        }
    }
    return client;
}

}  // namespace chalk::simulation
