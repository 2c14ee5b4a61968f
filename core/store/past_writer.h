#pragma once

#include "core/store/act_work.h"
#include "core/store/client_inserts.h"
#include "core/store/session_code.h"
#include "core/tables/past_lifts.h"

#include <map>
#include <optional>
#include <vector>

namespace chalk::store {

/// Whose past it is, and what it is written with.
struct PastOwner {
    base::ClientId client;
    base::CoachId coach;
    base::MassUnit unit = base::MassUnit::Kilogram;
    std::optional<base::Load> bodyMass;
    std::string name;
    bool isNew = true;  ///< else some lifts may run already
};

/// The kit in force on a day, by the swaps up to that day; `kit` is the one that the lift began with.
[[nodiscard]] progression::Kit kitOn(base::Date day, progression::Kit kit, const std::vector<LogEntry>& entries);

/// Writes past sessions of clients into the log, as part of one act. Failures go to the database.
class PastWriter {
public:
    PastWriter(Database& database, ActWork& work, std::vector<planning::EquipmentOnHand> kilogramKit, std::vector<planning::EquipmentOnHand> poundKit, SessionCodes newCode);

    /// Writes the sessions with what was done in them, begins lifts where there are none of a pattern, and judges everything by date. A lift that runs
    /// already goes on with its own exercise and unit afterwards. Answers how many lifts began.
    int write(const PastOwner& owner, const std::vector<tables::PastSession>& past);

private:
    /// One entry of a lift on its way.
    struct PastEntry {
        progression::Event event;
        base::SessionId session;
    };
    /// A lift that the client has.
    struct RunningLift {
        base::LiftId id;
        base::MassUnit unit = base::MassUnit::Kilogram;
    };

    [[nodiscard]] std::vector<base::SessionId> writeSessions(const PastOwner& owner, const std::vector<tables::PastSession>& past);
    void begin(const PastOwner& owner, lifts::Pattern pattern, const std::vector<tables::PastSession>& past, const std::vector<base::SessionId>& sessions);
    /// `past` is in the lift's unit.
    void goOn(const RunningLift& lift, lifts::Pattern pattern, const std::vector<tables::PastSession>& past, const std::vector<base::SessionId>& sessions);
    [[nodiscard]] std::optional<RunningLift> runningLift(base::ClientId client, lifts::Pattern pattern);
    [[nodiscard]] progression::Kit pastKitOf(const lifts::Exercise& exercise, base::MassUnit unit, std::optional<base::Load> bodyMass,
                                         const std::vector<tables::PastSession>& past) const;
    void judgeFresh(base::LiftId lift, const std::vector<PastEntry>& entries);
    /// The withdrawn client who holds the lifts that an import began for somebody known, once it is taken back.
    [[nodiscard]] base::ClientId holderFor(const PastOwner& owner, base::Date startedOn);

    Database& m_database;
    ActWork& m_work;
    std::vector<planning::EquipmentOnHand> m_kilogramKit;
    std::vector<planning::EquipmentOnHand> m_poundKit;
    SessionCodes m_newCode;
    ClientInserts m_inserts;
    Statement m_insertSession;
    Statement m_insertChange;
    Statement m_runningLift;
    std::map<base::ClientId, base::ClientId> m_holders;
};

}  // namespace chalk::store
