#pragma once

#include "core/store/pending_write.h"

#include <vector>

namespace chalk::test {

/// One of each kind, with all their fields filled.
inline std::vector<store::PendingWrite> everyPendingWrite()
{
    sessions::SessionReport report;
    report.effortTenths = 75;
    report.note = "Slow \"today\"\nBack squat: deep, 2½ s";
    const base::Date day = base::Date::parse("2026-11-24").value();
    const progression::Exposure sets{2, {{base::Load::fromCenti(7750), 8, 2, 150, progression::Steadiness::Shaky, false}, {base::Load::fromCenti(2000), 5, -1, -1, progression::Steadiness::Steady, true}}};
    const store::EntryWrite entry{base::ClientId(3), base::SessionId(9), base::LiftId(4), base::EventId(12), lifts::Measure::Reps, {day, sets}, report, sessions::SessionReport()};
    const week::BookingPlace place{base::CoachId(1), day, 1050, 60, "Rack 1", 2, true};
    sessions::Session booked;
    booked.client = base::ClientId(3);
    booked.coach = base::CoachId(2);
    booked.date = day;
    booked.startMinute = 600;
    booked.place = "Floor";
    return {entry, store::ReportWrite{base::SessionId(9), report, sessions::SessionReport()},
            store::StateWrite{base::SessionId(9), sessions::SessionState::CancelledLate, sessions::SessionState::Printed},
            store::BookingChanges{{booked}, {{base::SessionId(7), place, place}, {base::SessionId(8), place, std::nullopt}}, {base::SessionId(5), base::SessionId(6)},
                                  {{base::SessionId(6), {place, sessions::SessionState::Printed}}}}};
}

}  // namespace chalk::test
