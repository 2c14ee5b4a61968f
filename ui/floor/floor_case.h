#pragma once

#include "core/clients/client.h"
#include "core/lifts/exercise.h"
#include "core/progression/lift_machine.h"
#include "core/sessions/entry_line.h"
#include "core/sessions/session.h"

#include <QString>

#include <optional>
#include <vector>

namespace chalk::ui::floor {

/// One lift of a session that is being recorded.
struct FloorLift {
    base::LiftId id;
    lifts::Exercise exercise;
    progression::LiftMachine machine;  ///< as it stood before this session
    progression::Prescription due;
    QString line;                      ///< as typed and not saved yet
    base::EventId saved;               ///< the entry of this session; none before it is saved
    std::optional<progression::EventBody> savedBody = {};
    bool isSkipped = false;

    [[nodiscard]] sessions::EntryPlan plan() const { return {due, machine.kit().measure, machine.setup().policy}; }
    [[nodiscard]] bool isDone() const { return !saved.isNone() || isSkipped; }
};

/// One client of the slot.
struct FloorClient {
    clients::Client client;
    std::vector<clients::Caution> cautions;
    bool isBlocked = false;  ///< clearance: nothing loaded may be recorded
    sessions::Session session;
    std::vector<FloorLift> lifts;
};

/// One slot of today's run: the sessions of one coach at one time.
struct RunSlot {
    int startMinute = 0;
    QString coach;
    QString names;  ///< `Joaquin, Adaeze, Callum`
    std::vector<sessions::Session> sessions;

    [[nodiscard]] bool isRecorded() const;
    /// Whether anybody is still to come.
    [[nodiscard]] bool isOpen() const;
};

}  // namespace chalk::ui::floor
