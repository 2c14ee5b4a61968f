#include "core/simulation/harbour_reports.h"

#include "core/simulation/chance.h"

#include <array>

namespace chalk::simulation {

namespace {

constexpr int kDaysReported = 56;  ///< the studio asks since eight weeks ago

constexpr std::array<const char*, 6> kNotes{"Came five minutes late, shorter warm-up.",
                                            "Short night, kept the loads and took longer rests.",
                                            "Asked for something to do while travelling.",
                                            "Wants the rack by the window next time.",
                                            "Calm and well paced today.",
                                            "New shoes, stood more firmly."};

sessions::SessionReport reportOf(const sessions::Session& session, Chance& chance)
{
    sessions::SessionReport report;
    if (chance.happens(75)) {
        report.effortTenths = 50 + 5 * chance.below(8);
        report.minutes = session.minutes - 2 - chance.below(9);
    }
    if (chance.happens(40)) {
        report.sleep = 2 + chance.below(4);
        report.soreness = 1 + chance.below(4);
        report.stress = 1 + chance.below(4);
    }
    if (chance.happens(8)) {
        report.note = kNotes[static_cast<std::size_t>(chance.below(static_cast<int>(kNotes.size())))];
    }
    return report;
}

}  // namespace

void addReports(studio::DocumentClient& client, int number, base::Date today)
{
    Chance chance(static_cast<std::uint64_t>(410911 + 389 * number));
    for (const sessions::Session& session : client.sessions) {
        if (session.state != sessions::SessionState::Recorded || today - session.date > kDaysReported) {
            continue;
        }
        if (sessions::SessionReport report = reportOf(session, chance); !report.isEmpty()) {
            client.reports[session.code] = std::move(report);
        }
    }
}

}  // namespace chalk::simulation
