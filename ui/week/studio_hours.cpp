#include "ui/week/studio_hours.h"

#include "core/exchange/studio_week_json.h"
#include "core/store/studio_reader.h"
#include "ui/common/closure_words.h"
#include "ui/common/formats.h"
#include "ui/common/settling.h"

namespace chalk::ui::week {

using chalk::week::Closure;
using chalk::week::CoachWork;

template <class Outcome>
bool StudioHours::done(const Outcome& outcome)
{
    const bool isGivenUp = !outcome && outcome.error().kind == store::StoreError::Kind::Conflict;
    const QString refusal = outcome || isGivenUp ? QString() : outcome.error().message;
    read(m_today);
    m_refusal = refusal.isEmpty() ? m_refusal : refusal;
    return outcome.has_value();
}

void StudioHours::read(base::Date today)
{
    m_today = today;
    store::WeekSettings settings(m_database);
    auto studio = settings.studioWeek();
    auto coaches = store::StudioReader(m_database).coaches();
    auto work = settings.coachWork();
    auto closures = settings.closures(today);
    if (!studio || !coaches || !work || !closures) {
        m_refusal = !studio ? studio.error().message : !coaches ? coaches.error().message : !work ? work.error().message : closures.error().message;
        return;
    }
    m_refusal.clear();
    m_studio = *std::move(studio);
    m_coaches = *std::move(coaches);
    m_work = *std::move(work);
    m_closures = *std::move(closures);
}

CoachWork StudioHours::workOf(base::CoachId coach) const
{
    const auto own = m_work.find(coach);
    return own == m_work.end() ? CoachWork() : own->second;
}

clients::WeekHours StudioHours::hoursOf(base::CoachId coach) const
{
    return workOf(coach).hours.value_or(m_studio.open);
}

bool StudioHours::setStudio(chalk::week::StudioWeek studio)
{
    return done(common::settled(m_dialogs, m_database, {}, [&](const common::Settling& settling) {
        studio = settling.merged ? exchange::readStudioWeek(*settling.merged, {}).value_or(studio) : studio;
        return store::WeekSettings(m_database).setStudioWeek(studio, settling.seen ? std::nullopt : std::optional(m_studio));
    }));
}

bool StudioHours::setOpen(const clients::WeekHours& open)
{
    chalk::week::StudioWeek studio = m_studio;
    studio.open = open;
    return setStudio(std::move(studio));
}

bool StudioHours::setUnits(lifts::Station station, int units)
{
    chalk::week::StudioWeek studio = m_studio;
    studio.stations.erase(station);
    if (units > 0) {
        studio.stations[station] = units;
    }
    return setStudio(std::move(studio));
}

bool StudioHours::setWork(base::CoachId coach, CoachWork work)
{
    return done(common::settled(m_dialogs, m_database, {}, [&](const common::Settling& settling) {
        work = settling.merged ? exchange::readCoachWork(*settling.merged, {}).value_or(work) : work;
        return store::WeekSettings(m_database).setCoachWork(coach, work, settling.seen ? std::nullopt : std::optional(workOf(coach)));
    }));
}

bool StudioHours::setHours(base::CoachId coach, const clients::WeekHours& hours)
{
    CoachWork work = workOf(coach);
    work.hours = hours;
    return setWork(coach, work);
}

bool StudioHours::setCapacity(base::CoachId coach, int capacity)
{
    CoachWork work = workOf(coach);
    work.capacity = capacity;
    return setWork(coach, work);
}

bool StudioHours::addClosure(const Closure& closure)
{
    return done(store::WeekSettings(m_database).addClosure(closure));
}

bool StudioHours::removeClosure(std::int64_t id)
{
    return done(store::WeekSettings(m_database).removeClosure(id));
}

QString closureLine(const Closure& closure, const std::vector<clients::Coach>& coaches)
{
    std::vector<chalk::week::CoachOfWeek> known;
    for (const clients::Coach& coach : coaches) {
        known.push_back({coach, {}});
    }
    const QString days = closure.first == closure.last ? common::dayText(closure.first)
                                                       : QStringLiteral("%1 – %2").arg(common::dayText(closure.first), common::dayText(closure.last));
    return QStringLiteral("%1 · %2").arg(days, common::closureText(closure, known));
}

}  // namespace chalk::ui::week
