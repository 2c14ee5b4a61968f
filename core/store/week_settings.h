#pragma once

#include "core/store/conflict.h"
#include "core/week/studio_week.h"

#include <map>
#include <optional>
#include <vector>

namespace chalk::store {

inline constexpr int kMostSessionsInWeek = 7;

/// A closure on file.
struct KeptClosure {
    std::int64_t id = 0;
    week::Closure closure;

    bool operator==(const KeptClosure&) const = default;
};

/// What weeks are planned from: the studio's hours, stations and weights, the work of coaches, the wishes of clients, closures. What nobody
/// has set has its stated default. A setting that cannot be read is a fault of the file that names it; one out of its range is refused.
/// `seen` is what was set when whoever writes began: where it is something else by now, that is a Conflict. Closures are added and taken away one by
/// one and never written over.
class WeekSettings {
public:
    explicit WeekSettings(Database& database) : m_database(database) {}

    [[nodiscard]] Result<week::StudioWeek> studioWeek();
    [[nodiscard]] Result<void> setStudioWeek(const week::StudioWeek& studio, const std::optional<week::StudioWeek>& seen = {});

    /// Of every coach.
    [[nodiscard]] Result<std::map<base::CoachId, week::CoachWork>> coachWork();
    [[nodiscard]] Result<void> setCoachWork(base::CoachId coach, const week::CoachWork& work, const std::optional<week::CoachWork>& seen = {});

    [[nodiscard]] Result<week::ClientPlanning> planning(base::ClientId client);
    /// Of every client.
    [[nodiscard]] Result<std::map<base::ClientId, week::ClientPlanning>> allPlanning();
    [[nodiscard]] Result<void> setPlanning(base::ClientId client, const week::ClientPlanning& planning,
                                           const std::optional<week::ClientPlanning>& seen = {});

    /// How many sessions clients want in the week of a Monday, of those for whom it is not the usual number.
    [[nodiscard]] Result<std::map<base::ClientId, int>> quotas(base::Date monday);
    /// Nothing: the usual number again. Refused where it is not 0 to kMostSessionsInWeek, or the day is no Monday.
    /// `seen` is quotaSeen() of what whoever writes has seen of it.
    [[nodiscard]] Result<void> setQuota(base::ClientId client, base::Date monday, std::optional<int> sessions, const Seen& seen = {});
    /// A client's number of sessions in a week, as conflicts have it: `sessions` is `usual` where the week has none of its own.
    [[nodiscard]] static QJsonObject quotaSeen(base::Date monday, std::optional<int> sessions);

    /// Those that end on `from` or later, by their first day.
    [[nodiscard]] Result<std::vector<KeptClosure>> closures(base::Date from);
    /// Its id.
    [[nodiscard]] Result<std::int64_t> addClosure(const week::Closure& closure);
    /// Refused where there is none.
    [[nodiscard]] Result<void> removeClosure(std::int64_t id);

private:
    void refuseFault(const std::optional<week::WeekFault>& fault);

    Database& m_database;
};

// For work that has its transaction already. Failures go to the database.

void putStudioWeek(Database& database, const week::StudioWeek& studio);
void putCoachWork(Database& database, base::CoachId coach, const week::CoachWork& work);
void putPlanning(Database& database, base::ClientId client, const week::ClientPlanning& planning);
void putQuota(Database& database, base::ClientId client, base::Date monday, int sessions);
std::int64_t insertClosure(Database& database, const week::Closure& closure);

}  // namespace chalk::store
