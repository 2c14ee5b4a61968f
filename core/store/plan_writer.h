#pragma once

#include "core/direction/client_plan.h"
#include "core/direction/tested_maximum.h"
#include "core/progression/event.h"
#include "core/store/act.h"
#include "core/store/conflict.h"
#include "core/store/database.h"

#include <functional>
#include <optional>

namespace chalk::store {

/// Writes the plans that follow the beginner months, and the tests of maxima. Each call is one act in one transaction. RecordWriter::undo takes it
/// back, with its events, and brings it back.
class PlanWriter {
public:
    /// `atUtc` answers the present moment, ISO 8601: it is asked at every act. `coach` is who does it, none where nobody said.
    PlanWriter(Database& database, std::function<QString()> atUtc, base::CoachId coach = {});

    /// Begins a plan on its day: writes it, and a block of its weeks in the log of each of its lifts that can follow it (loaded, not on hold, with a
    /// single). One of the client's that runs on that day is ended by it. Refused where the plan has a fault (see direction::faultOf) or names a lift
    /// that is not the client's. The plan's own id is not read.
    [[nodiscard]] Result<ActOutcome> begin(direction::ClientPlan plan);
    /// Puts another version in the place of a plan that runs on `day`: its weeks from that of `day` on and its singles are what lifts follow from now on.
    /// Lifts that left the plan (released from a hold, set or swapped) take it up again. A lift that is in it no longer goes back to the ladder.
    /// A Conflict where it is not as it was `seen` any more.
    [[nodiscard]] Result<ActOutcome> change(const direction::ClientPlan& plan, base::Date day, const std::optional<direction::ClientPlan>& seen = {});
    /// Ends a plan that runs on `day`: its lifts go back to the ladder.
    [[nodiscard]] Result<ActOutcome> end(base::PlanId plan, base::Date day, const std::string& note);
    /// Keeps what a test found, and what was lifted in it in the log of the lift: the exposure's sets, done in `session` (or outside of any).
    [[nodiscard]] Result<ActOutcome> recordTest(direction::TestedMaximum test, const std::optional<progression::Exposure>& exposure,
                                                base::SessionId session = {});

private:
    Database& m_database;
    std::function<QString()> m_atUtc;
    base::CoachId m_coach;
};

}  // namespace chalk::store
