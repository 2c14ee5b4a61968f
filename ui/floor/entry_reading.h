#pragma once

#include "ui/common/banner.h"
#include "ui/floor/floor_presenter.h"

#include <QString>

#include <optional>
#include <vector>

namespace chalk::ui::floor {

/// A part of an entry as it was understood: `reps` **8, 8, 7**.
struct EntryChip {
    QString before;
    QString strong;
    QString after;
    bool isSteady = false;  ///< drawn in the colour of what went well
    bool isLow = false;     ///< drawn as something to be minded: shaky, lost, pain

    bool operator==(const EntryChip&) const = default;
};

/// What an entry comes to as it stands now.
enum class EntryState : std::uint8_t {
    Blocked,  ///< the client waits for clearance
    OnHold,   ///< the lift waits for the coach
    Skipped,
    Fault,    ///< a part makes no sense
    Waiting,  ///< a rehearsal that is not judged to its end
    Ready     ///< could be saved
};

/// An entry and what follows from it.
struct EntryReading {
    EntryState state = EntryState::Ready;
    common::BannerMessage message;                ///< for Ready: what comes next time, and why
    std::vector<EntryChip> chips;
    std::optional<progression::EventBody> body;   ///< where it could be saved
    std::optional<Preview> preview;
    QString remark;                               ///< words after two spaces, for the session's note
    int faultBegin = 0;                           ///< in the line, in characters
    int faultLength = 0;
    std::optional<RehearsalFault> rehearsalFault; ///< for Waiting, and for a Fault in a rehearsal
};

/// Reads what stands in the lift's line, or in its rehearsal.
[[nodiscard]] EntryReading readEntry(const FloorClient& client, const FloorLift& lift);

}  // namespace chalk::ui::floor
