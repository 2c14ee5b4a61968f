#include "core/studio/backup_rotation.h"

#include <algorithm>
#include <numeric>
#include <set>
#include <tuple>

namespace chalk::studio {

namespace {

/// Keeps the latest `most` of the stretches of time that `stretchOf` names; the first backup asked about of each is kept.
template <class Stretch>
class LatestOf {
public:
    explicit LatestOf(int most) : m_most(static_cast<std::size_t>(std::max(0, most))) {}

    /// Whether the backup is the first one of its stretch, and the stretch is among the latest. Asked from the latest backup back.
    bool keeps(const Stretch& stretch)
    {
        return m_seen.size() < m_most && m_seen.insert(stretch).second;
    }

private:
    std::size_t m_most;
    std::set<Stretch> m_seen;
};

std::pair<int, int> weekOf(base::Date day)
{
    const base::IsoWeek week = day.isoWeek();
    return {week.year, week.week};
}

std::pair<int, unsigned> monthOf(base::Date day)
{
    const auto ymd = day.ymd();
    return {static_cast<int>(ymd.year()), static_cast<unsigned>(ymd.month())};
}

std::vector<std::size_t> fromTheLatest(std::span<const BackupMoment> backups)
{
    std::vector<std::size_t> order(backups.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(), [&backups](std::size_t a, std::size_t b) { return backups[a] > backups[b]; });
    return order;
}

}  // namespace

std::vector<std::size_t> spentBackups(std::span<const BackupMoment> backups, BackupMoment now, const BackupRotation& rotation)
{
    LatestOf<std::size_t> latest(std::max(1, rotation.latest));
    LatestOf<base::Date> days(rotation.days);
    LatestOf<std::pair<int, int>> weeks(rotation.weeks);
    LatestOf<std::pair<int, unsigned>> months(rotation.months);
    std::vector<std::size_t> spent;
    for (const std::size_t index : fromTheLatest(backups)) {
        const BackupMoment& made = backups[index];
        if (made > now) {
            continue;
        }
        // Every rule is asked: a backup that one of them keeps takes its place in the others too.
        const bool isLatest = latest.keeps(index);
        const bool isOfDay = days.keeps(made.day);
        const bool isOfWeek = weeks.keeps(weekOf(made.day));
        const bool isOfMonth = months.keeps(monthOf(made.day));
        if (!isLatest && !isOfDay && !isOfWeek && !isOfMonth) {
            spent.push_back(index);
        }
    }
    std::sort(spent.begin(), spent.end());
    return spent;
}

}  // namespace chalk::studio
