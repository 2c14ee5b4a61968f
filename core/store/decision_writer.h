#pragma once

#include "core/checkin/check_in.h"
#include "core/store/act.h"
#include "core/store/conflict.h"
#include "core/store/database.h"

#include <functional>
#include <optional>

namespace chalk::store {

/// Writes what is decided at check-ins. RecordWriter::undo takes a decision back, with its event, and brings it back.
class DecisionWriter {
public:
    /// `atUtc` answers the present moment, ISO 8601: it is asked at every act. `coach` is who does it, none where nobody said.
    DecisionWriter(Database& database, std::function<QString()> atUtc, base::CoachId coach = {});

    /// Writes a decision as one act in one transaction, with the event of the choice, if it has one, in the log of the decision's
    /// lift on the decision's day. The decision's own `act` is not read. Refused where the lift is not one of the client, an event
    /// has no lift, the next review is not after the day, or the lift refuses the event (see LiftMachine::faultOf); a lighter
    /// week is refused on a lift that carries no load or is on hold.
    /// `seenOfDay` is the act of the last decision about the client on that day that whoever decides has seen, none where they saw none: a later
    /// one is a Conflict.
    [[nodiscard]] Result<ActOutcome> decide(checkin::Decision decision, const std::optional<progression::EventBody>& event,
                                            std::optional<base::ActId> seenOfDay = {});

private:
    Database& m_database;
    std::function<QString()> m_atUtc;
    base::CoachId m_coach;
};

}  // namespace chalk::store
