#pragma once

#include "core/sessions/session.h"
#include "core/store/event_log.h"
#include "core/store/lift_cache.h"

#include <functional>
#include <vector>

namespace chalk::store {

/// One lift's part of what is recorded.
struct NewRecord {
    base::LiftId lift;
    progression::Event event;
};

/// What became of a lift: the rules that fired, and what was due before and is due after, on the day of the last event.
struct LiftOutcome {
    base::LiftId lift;
    progression::RuleList rules;
    progression::Prescription before;
    progression::Prescription after;
};

/// A decision that a correction made different.
struct ChangedDecision {
    base::Date date;
    progression::RuleList before;
    progression::RuleList after;
};

/// What an act did: for undo, and to tell the person.
struct ActOutcome {
    base::ActId act;
    base::ClientId client;
    std::vector<LiftOutcome> lifts;
    std::vector<ChangedDecision> changed;  ///< decisions of other entries, in date order
};

/// Writes what people do. Each call is one act in one transaction; nothing is ever overwritten.
class RecordWriter {
public:
    /// `atUtc` is the moment of the act, ISO 8601: asked for at every act.
    RecordWriter(Database& database, std::function<QString()> atUtc);

    /// Records events of one client, done in `session` (or outside of any); the session counts as recorded then.
    [[nodiscard]] Result<ActOutcome> record(base::ClientId client, base::SessionId session, const std::vector<NewRecord>& records);
    /// Puts another version in the place of an entry.
    [[nodiscard]] Result<ActOutcome> correct(base::EventId entry, const progression::Event& event);
    /// Takes an entry back.
    [[nodiscard]] Result<ActOutcome> takeBack(base::EventId entry);
    /// Sets what became of a session.
    [[nodiscard]] Result<ActOutcome> setSessionState(base::SessionId session, sessions::SessionState state);
    /// Takes an act back, by appending: entries get their former versions, sessions their former states. An undone act can be
    /// brought back by undoing the undo. Fails where something later builds on it.
    [[nodiscard]] Result<ActOutcome> undo(base::ActId act);

private:
    base::ActId beginAct(const char* kind, base::ClientId client, base::ActId undoes = {});
    LiftOutcome recordOne(const NewRecord& record, base::ActId act, base::SessionId session);
    void changeSession(base::ActId act, base::SessionId session, sessions::SessionState state);
    /// Appends a version and replays its lift.
    void replace(const LogEntry& old, const progression::Event& event, bool isVoid, ActOutcome& outcome);
    void undoSessions(base::ActId act, base::ActId undo);
    [[nodiscard]] Result<ActOutcome> finish(Transaction& transaction, ActOutcome outcome);
    [[nodiscard]] Result<ActOutcome> replaceEntry(base::EventId entry, const progression::Event* event, const char* kind);

    Database& m_database;
    std::function<QString()> m_atUtc;
};

}  // namespace chalk::store
