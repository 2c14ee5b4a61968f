#pragma once

#include "core/progression/event.h"
#include "core/progression/lift_state.h"
#include "core/store/act_reader.h"
#include "core/store/audit.h"

#include <string>
#include <variant>
#include <vector>

namespace chalk::store {

/// What a coach set by hand, and the lift as it was set up, with the kit of then.
struct HandSet {
    progression::CoachSet set;
    progression::LiftSetup setup;
};

/// A lift that an act wrote to or decided about.
struct ToldLift {
    base::LiftId id;
    lifts::Pattern pattern = lifts::Pattern::Squat;
    std::string exerciseKey;    ///< what it was done with then
    std::vector<HandSet> sets;  ///< as they were entered; none of an act that took them back
};

/// One row of the audit as it is told.
struct AuditRecord {
    std::int64_t id = 0;
    AuditWhat what = AuditWhat::ClientDetails;
    QJsonObject before;
    QJsonObject after;
};

/// One thing that somebody did: an act of the log, or what the audit holds.
struct ChangeEntry {
    std::string atUtc;       ///< ISO 8601
    std::string coachName;   ///< empty where nobody said
    base::ClientId client;   ///< none where it was about several, or none
    std::string clientName;
    std::variant<ActRecord, AuditRecord> did;
    std::vector<ToldLift> lifts = {};  ///< that an act wrote to or decided about; of a client's history those of that client
};

/// At most so many are read where nobody says how many.
inline constexpr int kUsualHistory = 500;

/// Tells who changed what and when, from the acts and the audit together.
class ChangeHistory {
public:
    explicit ChangeHistory(Database& database) : m_database(database) {}

    /// Of one client, the latest first, at most `count`.
    [[nodiscard]] Result<std::vector<ChangeEntry>> of(base::ClientId client, int count = kUsualHistory);
    /// Of the whole studio.
    [[nodiscard]] Result<std::vector<ChangeEntry>> all(int count = kUsualHistory);

private:
    [[nodiscard]] std::vector<ChangeEntry> audited(base::ClientId client, int count);

    Database& m_database;
};

}  // namespace chalk::store
