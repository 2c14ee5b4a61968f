#pragma once

#include "core/progression/evidence.h"
#include "core/store/lift_cache.h"

namespace chalk::store {

/// One entry of a lift's history as it counts now, and how it was decided.
struct HistoryEntry {
    base::EventId id;
    base::SessionId session;
    progression::Event event;
    lifts::Measure measure = lifts::Measure::Reps;  ///< what its sets are counted in
    progression::RuleList rules;
    progression::Prescription after;
    progression::Stage stageAfter = progression::Stage::Pattern;
    int cycleAfter = 1;
    bool isCorrected = false;                       ///< there are former versions
};

/// Reads a lift's log.
class HistoryReader {
public:
    explicit HistoryReader(Database& database) : m_database(database) {}

    /// What counts, by date, each with its decision.
    [[nodiscard]] Result<std::vector<HistoryEntry>> read(base::LiftId lift);
    /// Every version of an entry, the first one first; the last one counts unless it is void.
    [[nodiscard]] Result<std::vector<LogEntry>> versions(base::EventId entry);

private:
    Database& m_database;
};

/// A history as the evidence for the next stage is asked from: points into `history`.
[[nodiscard]] std::vector<progression::JudgedEvent> judgedEvents(const std::vector<HistoryEntry>& history);

}  // namespace chalk::store
