#include "tests/support/tiny_week.h"

#include "core/simulation/chance.h"

namespace chalk::test {

namespace {

using simulation::Chance;
using week::WeekProblem;

constexpr int kMorning = 420;
constexpr int kGrid = 30;

int oneOf(Chance& chance, std::initializer_list<int> values)
{
    return *(values.begin() + chance.below(static_cast<int>(values.size())));
}

void addTinyCoach(WeekProblem& problem, Chance& chance)
{
    week::CoachWeek coach;
    coach.id = "C" + std::to_string(problem.coaches.size());
    coach.capacity = 1 + chance.below(3);
    coach.softMaxMinutes = oneOf(chance, {30, 50, 120});
    for (int day = 0; day < 3; ++day) {
        const int from = kMorning + oneOf(chance, {0, 0, 15, 30});
        coach.windows.push_back({day, from, from + oneOf(chance, {60, 120, 150})});
    }
    if (chance.happens(30)) {
        coach.breaks.push_back({0, kMorning + 30, kMorning + oneOf(chance, {45, 60})});
    }
    if (chance.happens(15)) {
        coach.absences.push_back({1, 0, 1440});
    }
    problem.coaches.push_back(coach);
}

void addTinyClient(WeekProblem& problem, Chance& chance)
{
    week::ClientWeek client;
    client.id = "K" + std::to_string(problem.clients.size());
    client.priority = oneOf(chance, {1, 2, 4});
    client.maxGroup = 1 + chance.below(3);
    client.recovery = {chance.happens(50) ? week::RecoveryKind::RestDay : week::RecoveryKind::Hours, oneOf(chance, {20, 24, 36})};
    for (int day = 0; day < 3; ++day) {
        if (chance.happens(90)) {
            client.available.push_back({day, kMorning + oneOf(chance, {0, 0, 30, 40}), kMorning + oneOf(chance, {90, 120, 180})});
        }
    }
    if (chance.happens(50)) {
        client.preferred.push_back({chance.below(3), kMorning, kMorning + oneOf(chance, {0, 10, 40})});
    }
    for (std::size_t coach = 0; coach < problem.coaches.size(); ++coach) {
        if (chance.happens(85)) {
            client.coaches.push_back({coach, oneOf(chance, {0, 8, 15})});
        }
    }
    if (chance.happens(30)) {
        client.lastWeek.push_back({-oneOf(chance, {300, 800, 1500}), {oneOf(chance, {0, 1}) == 0 ? "squat" : "pull"}});
    }
    problem.clients.push_back(client);
}

void addTinySession(WeekProblem& problem, Chance& chance)
{
    week::SessionWish session;
    session.id = "S" + std::to_string(problem.sessions.size());
    session.client = static_cast<std::size_t>(chance.below(static_cast<int>(problem.clients.size())));
    session.minutes = oneOf(chance, {20, 30, 45, 60});
    session.patterns = chance.happens(60) ? std::vector<std::string>{"squat"} : std::vector<std::string>{"pull", "squat"};
    if (chance.happens(60)) {
        const int from = oneOf(chance, {0, 0, 10});
        session.needs.push_back({0, oneOf(chance, {40, 60, 100}), from, session.minutes});
    }
    if (chance.happens(50)) {
        session.standing = week::Slot{static_cast<std::size_t>(chance.below(2)), chance.below(3) * 1440 + kMorning + oneOf(chance, {0, 30, 45, 60})};
    }
    problem.sessions.push_back(session);
}

}  // namespace

WeekProblem tinyWeek(std::uint64_t seed)
{
    Chance chance(seed);
    WeekProblem problem;
    problem.name = "tiny";
    problem.grid = kGrid;
    for (int day = 0; day < 3; ++day) {
        problem.open.push_back({day, kMorning, kMorning + oneOf(chance, {90, 120, 150})});
    }
    problem.weights.unplaced = oneOf(chance, {20, 100, 1000});
    problem.weights.gapPer15 = oneOf(chance, {0, 2, 7});
    problem.stations.push_back({"rack", 1, {}});
    if (chance.happens(30)) {
        problem.stations[0].closures.push_back({{chance.below(2), kMorning + 10, kMorning + 40}, 0});
    }
    addTinyCoach(problem, chance);
    addTinyCoach(problem, chance);
    for (int i = 2 + chance.below(2); i > 0; --i) {
        addTinyClient(problem, chance);
    }
    for (int i = 3 + chance.below(2); i > 0; --i) {
        addTinySession(problem, chance);
    }
    return problem;
}

}  // namespace chalk::test
