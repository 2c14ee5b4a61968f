#pragma once

#include "core/sessions/session.h"
#include "core/sessions/session_report.h"
#include "core/store/act.h"
#include "core/store/database.h"
#include "core/store/progress.h"

#include <functional>
#include <optional>
#include <vector>

namespace chalk::store {

class ActWork;

/// One lift's part of what is recorded.
struct NewRecord {
    base::LiftId lift;
    progression::Event event;
};

/// What whoever records has seen of a session. What is not named is not compared.
struct SeenSession {
    bool hasNoEntry = false;                        ///< of these lifts, in this session
    std::optional<sessions::SessionReport> report;
    /// The entries of the lift that counted when the coach chose: a choice made on another state of it is shown before it counts.
    std::optional<std::vector<base::EventId>> entriesOfLift = {};
};

/// Writes what people do. Each call is one act in one transaction; nothing is ever overwritten: the log of a lift only grows, a choice of the coach too.
/// What somebody else changed since it was seen is refused as a Conflict, for the person to see it first.
class RecordWriter {
public:
    /// `atUtc` answers the present moment, ISO 8601: it is asked at every act. `coach` is who does it, none where nobody said.
    RecordWriter(Database& database, std::function<QString()> atUtc, base::CoachId coach = {});

    /// Records events of one client, done in `session` (or outside of any). A session with work in it counts as recorded then.
    /// What the coach does (release, set, swap) is recorded in the same way.
    /// A `report` takes the place of what was said of the session before, as by saveReport; it may come without records.
    [[nodiscard]] Result<ActOutcome> record(base::ClientId client, base::SessionId session, const std::vector<NewRecord>& records,
                                            const std::optional<sessions::SessionReport>& report = {}, const SeenSession& seen = {});
    /// Puts another version in the place of an entry. A `report` is that of the entry's session, as by saveReport. The conflict of an entry that
    /// another version stands for by now names that one.
    [[nodiscard]] Result<ActOutcome> correct(base::EventId entry, const progression::Event& event, const std::optional<sessions::SessionReport>& report = {},
                                             const std::optional<sessions::SessionReport>& seenReport = {});
    /// Takes an entry back. A session without any entry left is planned again.
    [[nodiscard]] Result<ActOutcome> takeBack(base::EventId entry);
    /// Sets what became of a session, or of several at once.
    [[nodiscard]] Result<ActOutcome> setSessionState(base::SessionId session, sessions::SessionState state,
                                                     std::optional<sessions::SessionState> seen = {});
    [[nodiscard]] Result<ActOutcome> setSessionStates(const std::vector<base::SessionId>& sessions, sessions::SessionState state);
    /// Says something once of a session, in the place of what was said before. Fails where a field is out of its range, where nothing changes, and
    /// where sleep, soreness or stress are said anew of a client without consent to keep health data on the session's day.
    [[nodiscard]] Result<ActOutcome> saveReport(base::SessionId session, const sessions::SessionReport& report,
                                                const std::optional<sessions::SessionReport>& seen = {});
    /// Takes an act back, by appending: entries get their former versions, sessions their former states and reports. An undone act can be
    /// brought back by undoing the undo. Fails where something later builds on it. `progress` stops it where it answers false: nothing is taken back then.
    [[nodiscard]] Result<ActOutcome> undo(base::ActId act, const Progress& progress = {});
    /// How many entries of lifts an act wrote: what it costs to take it back.
    [[nodiscard]] Result<int> entriesOf(base::ActId act);

private:
    void checkReport(ActWork& work, base::SessionId session, const sessions::SessionReport& report, const std::optional<sessions::SessionReport>& seen);
    void refuseOtherState(ActWork& work, const NewRecord& choice, const std::vector<base::EventId>& seen);
    void refuseOtherEntries(ActWork& work, base::SessionId session, const std::vector<NewRecord>& records);
    [[nodiscard]] Result<ActOutcome> replaceEntry(base::EventId entry, const progression::Event* event, ActKind kind,
                                                  const std::optional<sessions::SessionReport>& report = {},
                                                  const std::optional<sessions::SessionReport>& seenReport = {});

    Database& m_database;
    std::function<QString()> m_atUtc;
    base::CoachId m_coach;
};

}  // namespace chalk::store
