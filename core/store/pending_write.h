#pragma once

#include "core/lifts/exercise.h"
#include "core/store/record_writer.h"
#include "core/store/session_writer.h"

#include <QJsonObject>

#include <functional>
#include <optional>
#include <variant>

namespace chalk::store {

/// What was done of a lift in a session, or what takes the place of an entry of it.
struct EntryWrite {
    base::ClientId client;
    base::SessionId session;
    base::LiftId lift;
    base::EventId replaces;  ///< none: it is the first of this lift in this session
    lifts::Measure measure = lifts::Measure::Reps;  ///< in which its sets are counted
    progression::Event event;
    std::optional<sessions::SessionReport> report = {};
    std::optional<sessions::SessionReport> seenReport = {};

    bool operator==(const EntryWrite&) const = default;
};

struct ReportWrite {
    base::SessionId session;
    sessions::SessionReport report;
    std::optional<sessions::SessionReport> seen = {};

    bool operator==(const ReportWrite&) const = default;
};

struct StateWrite {
    base::SessionId session;
    sessions::SessionState state = sessions::SessionState::Planned;
    std::optional<sessions::SessionState> seen = {};

    bool operator==(const StateWrite&) const = default;
};

/// A write as a plain value: it can wait for the server and be done later. Each of them is one act.
using PendingWrite = std::variant<EntryWrite, ReportWrite, StateWrite, BookingChanges>;

/// Does it under `token`: the second time it is refused by the studio.
[[nodiscard]] Result<ActOutcome> perform(Database& database, const PendingWrite& write, const std::function<QString()>& atUtc, const QString& token);

/// Whether the second one takes the place of the first while both wait: of the same lift in the same session, of the report of the same session …
[[nodiscard]] bool isSameThing(const PendingWrite& first, const PendingWrite& second);

/// The same write by somebody who has seen what is there now: `conflict` is what it met. A merged value takes the place of one's own where it is given.
[[nodiscard]] PendingWrite overConflict(PendingWrite write, const Conflict& conflict, const std::optional<QJsonObject>& merged);

[[nodiscard]] QJsonObject toJson(const PendingWrite& write);
/// Nothing where it cannot be read.
[[nodiscard]] std::optional<PendingWrite> pendingWriteIn(const QJsonObject& object);

}  // namespace chalk::store
