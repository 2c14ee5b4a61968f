#include "tests/support/usual_week.h"

#include "core/simulation/chance.h"

#include <algorithm>

namespace chalk::test {

namespace {

using simulation::Chance;
using week::DaySpan;
using week::WeekProblem;

constexpr int kOpen = 360;
constexpr int kClose = 1290;
constexpr int kTrainingDays = 6;

int drawnFrom(Chance& chance, std::initializer_list<int> values)
{
    return *(values.begin() + chance.below(static_cast<int>(values.size())));
}

int onGrid(int minute, int grid)
{
    return minute / grid * grid;
}

void addUsualCoach(WeekProblem& problem, Chance& chance)
{
    week::CoachWeek coach;
    coach.id = "C" + std::to_string(problem.coaches.size() + 1);
    coach.capacity = drawnFrom(chance, {1, 4, 4, 6});
    coach.softMaxMinutes = 390 + 30 * chance.below(3);
    for (int day = 0; day < kTrainingDays - 1; ++day) {
        coach.windows.push_back({day, kOpen, 780});
        coach.windows.push_back({day, 960, 1230});
        coach.breaks.push_back({day, 600, 630});
    }
    coach.windows.push_back({kTrainingDays - 1, 480, 810});
    if (chance.happens(20)) {
        coach.absences.push_back({chance.below(5), 0, 1440});
    }
    problem.coaches.push_back(coach);
}

void addUsualClient(WeekProblem& problem, Chance& chance)
{
    week::ClientWeek client;
    client.id = "K" + std::to_string(problem.clients.size() + 1);
    client.priority = drawnFrom(chance, {1, 1, 1, 2, 2, 4});
    client.maxGroup = drawnFrom(chance, {1, 2, 4, 6, 6});
    client.recovery = {chance.happens(50) ? week::RecoveryKind::Hours : week::RecoveryKind::RestDay, drawnFrom(chance, {36, 48})};
    const int usual = drawnFrom(chance, {kOpen, kOpen, 660, 990, 990, 1020});
    for (int day = 0; day < kTrainingDays; ++day) {
        const int from = onGrid(day == kTrainingDays - 1 ? 480 : usual + 15 * chance.below(3), problem.grid);
        if (chance.happens(75)) {
            client.available.push_back({day, from, std::min(kClose, from + 180 + 30 * chance.below(3))});
            client.preferred.push_back({day, from + 30, from + 60});
        }
    }
    const int coaches = static_cast<int>(problem.coaches.size());
    for (int first = chance.below(coaches), i = 0; i < std::min(coaches, 1 + chance.below(3)); ++i) {
        client.coaches.push_back({static_cast<std::size_t>((first + i) % coaches), i == 0 ? 0 : drawnFrom(chance, {8, 15, 25})});
    }
    if (chance.happens(40)) {
        client.lastWeek.push_back({-(1 + chance.below(3)) * 1440 + usual, {"squat", "push"}});
    }
    problem.clients.push_back(client);
}

void addUsualSession(WeekProblem& problem, std::size_t client, Chance& chance)
{
    week::SessionWish session;
    session.id = "S" + std::to_string(problem.sessions.size() + 1);
    session.client = client;
    session.minutes = drawnFrom(chance, {30, 45, 60, 60, 60, 90});
    session.patterns = {"squat", chance.happens(50) ? "push" : "pull"};
    session.needs = {{0, drawnFrom(chance, {20, 40}), 0, session.minutes}, {1, 25, 0, session.minutes}, {2, 100, 0, session.minutes}};
    const auto& owner = problem.clients[client];
    if (chance.happens(80) && !owner.available.empty()) {
        const DaySpan& span = owner.available[static_cast<std::size_t>(chance.below(static_cast<int>(owner.available.size())))];
        const int start = span.day * 1440 + onGrid(span.from + problem.grid - 1, problem.grid) + problem.grid * chance.below(5);
        session.standing = week::Slot{owner.coaches.front().coach, start};
    }
    problem.sessions.push_back(session);
}

}  // namespace

WeekProblem usualWeek(const UsualWeek& size)
{
    Chance chance(size.seed);
    WeekProblem problem;
    problem.name = "usual";
    problem.grid = size.grid;
    for (int day = 0; day < kTrainingDays; ++day) {
        problem.open.push_back({day, day == kTrainingDays - 1 ? 480 : kOpen, day == kTrainingDays - 1 ? 960 : kClose});
    }
    const int coaches = std::max(1, size.clients / size.clientsACoach);
    problem.stations = {{"rack", 1 + coaches / 2, {}}, {"bench", 1 + coaches / 2, {}}, {"floor", 4 * coaches, {}}};
    for (int i = 0; i < coaches; ++i) {
        addUsualCoach(problem, chance);
    }
    for (int i = 0; i < size.clients; ++i) {
        addUsualClient(problem, chance);
        for (int sessions = 1 + chance.below(3); sessions > 0; --sessions) {
            addUsualSession(problem, static_cast<std::size_t>(i), chance);
        }
    }
    return problem;
}

}  // namespace chalk::test
