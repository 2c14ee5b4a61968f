#include "tests/support/week_on_test.h"

#include "core/week/slot_table.h"
#include "core/week/week_checker.h"

namespace chalk::test {

using week::DaySpan;
using week::WeekProblem;

std::vector<DaySpan> everyDay(int first, int last, int fromHour, int toHour)
{
    std::vector<DaySpan> spans;
    for (int day = first; day <= last; ++day) {
        spans.push_back({day, fromHour * 60, toHour * 60});
    }
    return spans;
}

WeekProblem quietWeek()
{
    WeekProblem problem;
    problem.name = "quiet";
    problem.open = everyDay(kMon, kSun, 6, 22);
    problem.stations = {{"rack", 2, {}}};
    problem.coaches = {{"early", 3, 480, everyDay(kMon, kFri, 8, 18), {}, {}}, {"late", 3, 480, everyDay(kMon, kFri, 12, 20), {}, {}}};
    return problem;
}

std::size_t addClient(WeekProblem& problem, int maxGroup)
{
    week::ClientWeek client;
    client.id = "client " + std::to_string(problem.clients.size());
    client.maxGroup = maxGroup;
    client.available = everyDay(kMon, kSun, 6, 22);
    client.coaches = {{0, 0}, {1, 5}};
    problem.clients.push_back(client);
    return problem.clients.size() - 1;
}

std::size_t addSession(WeekProblem& problem, std::size_t client, int minutes)
{
    week::SessionWish wish;
    wish.id = "session " + std::to_string(problem.sessions.size());
    wish.client = client;
    wish.minutes = minutes;
    wish.patterns = {"squat"};
    problem.sessions.push_back(wish);
    return problem.sessions.size() - 1;
}

int drawFrom(std::mt19937& random, int least, int most)
{
    return least + static_cast<int>((static_cast<std::uint64_t>(random()) * static_cast<std::uint64_t>(most - least + 1)) >> 32);
}

namespace {

void drawBusyClient(WeekProblem& problem, std::mt19937& random)
{
    const std::size_t index = test::addClient(problem, drawFrom(random, 1, 3));
    week::ClientWeek& client = problem.clients[index];
    client.priority = drawFrom(random, 1, 3);
    client.recovery = {drawFrom(random, 0, 1) == 0 ? week::RecoveryKind::Hours : week::RecoveryKind::RestDay, drawFrom(random, 1, 2) * 24};
    client.available.clear();
    for (int day = kMon; day <= kWed; ++day) {
        const int from = drawFrom(random, 14, 34) * 30;
        client.available.push_back({day, from, from + drawFrom(random, 2, 5) * 30});
    }
    if (drawFrom(random, 0, 2) == 0) {
        client.coaches.pop_back();
    }
    if (drawFrom(random, 0, 1) == 0) {
        client.preferred.push_back({drawFrom(random, kMon, kWed), 9 * 60, 11 * 60});
    }
    if (drawFrom(random, 0, 1) == 0) {
        client.lastWeek.push_back({-drawFrom(random, 2, 30) * 60, {drawFrom(random, 0, 1) == 0 ? "squat" : "pull"}});
    }
}

void drawBusySession(WeekProblem& problem, std::size_t client, std::mt19937& random)
{
    week::SessionWish& wish = problem.sessions[test::addSession(problem, client, drawFrom(random, 2, 4) * 15 + drawFrom(random, 0, 1) * 10)];
    if (drawFrom(random, 0, 1) == 0) {
        wish.patterns = {"pull"};
    }
    if (drawFrom(random, 0, 1) == 0) {
        wish.needs.push_back({0, drawFrom(random, 1, 2) * 50, 10, 25});
    }
    if (drawFrom(random, 0, 2) == 0) {
        const DaySpan& span = problem.clients[client].available[static_cast<std::size_t>(drawFrom(random, 0, 2))];
        wish.standing = week::Slot{0, span.day * week::kDayMinutes + (span.from + 14) / 15 * 15};
    }
}

/// Locks here and there, where it stands legally beside those that are locked already.
void drawBusyLocks(WeekProblem& problem, std::mt19937& random)
{
    week::WeekPlan locked(problem.sessions.size());
    for (std::size_t session = 0; session < problem.sessions.size(); ++session) {
        if (problem.sessions[session].standing && drawFrom(random, 0, 2) == 0) {
            locked[session] = problem.sessions[session].standing;
            problem.sessions[session].isLocked = week::faultsOf(problem, locked).empty();
            if (!problem.sessions[session].isLocked) {
                locked[session].reset();
            }
        }
    }
}

}  // namespace

WeekProblem drawnWeek(unsigned seed, std::size_t clients)
{
    std::mt19937 random(seed);
    WeekProblem problem = quietWeek();
    problem.name = "drawn " + std::to_string(seed);
    problem.open = everyDay(kMon, kWed, 7, 20);
    problem.stations[0].units = 1;
    problem.stations[0].closures = {{{kTue, 9 * 60 + 10, 10 * 60}, 0}};
    for (std::size_t coach = 0; coach < 2; ++coach) {
        problem.coaches[coach].capacity = drawFrom(random, 1, 2);
        problem.coaches[coach].softMaxMinutes = 180;
        problem.coaches[coach].breaks = {{drawFrom(random, kMon, kWed), 13 * 60, 13 * 60 + 40}};
    }
    problem.coaches[1].absences = {{drawFrom(random, kMon, kWed), 0, week::kDayMinutes}};
    for (std::size_t client = 0; client < clients; ++client) {
        drawBusyClient(problem, random);
        for (int count = drawFrom(random, 1, 2); count > 0; --count) {
            drawBusySession(problem, client, random);
        }
    }
    drawBusyLocks(problem, random);
    return problem;
}

week::WeekPlan drawnPlan(const WeekProblem& problem, unsigned seed)
{
    std::mt19937 random(seed);
    week::SlotTable table(problem, {});
    const auto count = static_cast<int>(problem.sessions.size());
    for (std::size_t session = 0; session < problem.sessions.size(); ++session) {
        if (problem.sessions[session].isLocked) {
            table.place(session, *problem.sessions[session].standing);
        }
    }
    for (int turn = 0; turn < count; ++turn) {
        const auto session = static_cast<std::size_t>(drawFrom(random, 0, count - 1));
        std::vector<week::Slot> slots = table.candidatesOf(session);
        std::erase_if(slots, [&](const week::Slot& slot) { return !table.fits(session, slot); });
        if (!table.plan()[session] && !slots.empty()) {
            table.place(session, slots[static_cast<std::size_t>(drawFrom(random, 0, static_cast<int>(slots.size()) - 1))]);
        }
    }
    return table.plan();
}

}  // namespace chalk::test
