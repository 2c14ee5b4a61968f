#include "core/checkin/trends.h"

#include "core/checkin/phase.h"

#include <algorithm>

namespace chalk::checkin {

namespace {

using analysis::Work;

constexpr int kDaysPerWeek = 7;
constexpr int kMiddleOfWeek = 3;  // days after the first of seven

std::vector<TrendWeek> emptyWeeks(const DayRange& days, base::Date day)
{
    std::vector<TrendWeek> weeks;
    for (base::Date monday = days.from; monday <= days.to; monday = monday + kDaysPerWeek) {
        TrendWeek week;
        week.monday = monday;
        week.isOver = monday + kDaysPerWeek <= day;
        weeks.push_back(week);
    }
    return weeks;
}

/// The week that a day lies in; nothing outside of the weeks.
TrendWeek* weekWith(std::vector<TrendWeek>& weeks, base::Date day)
{
    const int index = (day - weeks.front().monday) / kDaysPerWeek;
    return day < weeks.front().monday || index >= static_cast<int>(weeks.size()) ? nullptr : &weeks[static_cast<std::size_t>(index)];
}

void addWorkDone(std::vector<TrendWeek>& weeks, std::span<const analysis::DatedWork> done)
{
    for (const analysis::DatedWork& one : done) {
        if (TrendWeek* week = weekWith(weeks, one.date)) {
            week->work[static_cast<std::size_t>(one.pattern)] += one.work;
        }
    }
}

void addLighterWeeks(std::vector<TrendWeek>& weeks, const TrendedLift& lift)
{
    for (const LiftDay& day : lift.days) {
        TrendWeek* week = day.isLighter ? weekWith(weeks, day.date + kMiddleOfWeek) : nullptr;
        if (week != nullptr) {
            ++week->lighterLifts;
        }
    }
}

void addAttendance(analysis::Attendance& sum, const analysis::Attendance& more)
{
    sum.came += more.came;
    sum.missed += more.missed;
    sum.cancelledLate += more.cancelledLate;
    sum.cancelledInTime += more.cancelledInTime;
}

void addSessions(std::vector<TrendWeek>& weeks, std::span<const sessions::Session> sessions)
{
    for (const sessions::Session& one : sessions) {
        if (TrendWeek* week = weekWith(weeks, one.date)) {
            addAttendance(week->attendance, analysis::attendanceOf({&one, 1}, one.date, one.date));
        }
    }
}

std::optional<FigureGap> volumeGapOf(const std::vector<TrendWeek>& weeks)
{
    const auto have = std::count_if(weeks.begin(), weeks.end(), [](const TrendWeek& week) { return week.together().volume > base::Mass(); });
    return have >= kWeeksOfBars ? std::nullopt : std::optional(FigureGap{static_cast<int>(have), kWeeksOfBars});
}

/// The gap of a figure that every lift has for itself, where none has it; `have` says how far a lift is.
template <class Have>
std::optional<FigureGap> liftGapOf(const std::vector<LiftTrend>& lifts, int need, Have have)
{
    FigureGap gap{0, need};
    for (std::size_t i = 0; i < lifts.size(); ++i) {
        const int one = have(lifts[i]);
        if (one >= need) {
            return std::nullopt;
        }
        if (!gap.lift || one > gap.have) {
            gap.have = one;
            gap.lift = i;
        }
    }
    return gap;
}

/// Assumes that from here on every week has sessions and all of them are rated. A week that began with an unrated session is lost.
std::optional<FigureGap> monotonyGapOf(const std::vector<TrendWeek>& weeks)
{
    const auto have =
        static_cast<int>(std::count_if(weeks.begin(), weeks.end(), [](const TrendWeek& week) { return week.load.monotony.has_value(); }));
    if (have >= kWeeksOfMonotony) {
        return std::nullopt;
    }
    const TrendWeek& present = weeks.back();
    const int lost = present.load.unrated > 0 ? 1 : 0;
    return FigureGap{have, kWeeksOfMonotony, present.monday + kDaysPerWeek * (kWeeksOfMonotony - have + lost)};
}

bool areMostLearning(const std::vector<LiftTrend>& lifts)
{
    std::vector<progression::Stage> stages;
    for (const LiftTrend& lift : lifts) {
        stages.push_back(lift.stage);
    }
    return phaseOf(stages) == Phase::Learning;
}

/// Compares the halves of the finished weeks.
LoadTrend loadTrendIn(const std::vector<TrendWeek>& weeks, std::optional<base::Date> firstLoad)
{
    std::vector<double> volumes;
    for (const TrendWeek& week : weeks) {
        if (week.isOver) {
            volumes.push_back(week.together().volume.kilograms());
        }
    }
    const std::size_t odd = volumes.size() % 2;
    const bool isNew = firstLoad && *firstLoad >= weeks.front().monday + static_cast<int>(odd) * kDaysPerWeek;
    return loadTrendOf(std::span<const double>(volumes).subspan(odd), isNew);
}

ClientTrend clientTrendOf(const ClientWork& client, const DayRange& days, base::Date day)
{
    std::vector<TrendWeek> weeks = emptyWeeks(days, day);
    addWorkDone(weeks, client.work);
    ClientTrend trend{client.client, client.name, loadTrendIn(weeks, client.firstLoad), {}, analysis::attendanceOf(client.sessions, days.from, days.to), {}};
    trend.monotony = weekLoadOf(client.efforts, mondayOf(day) - kDaysPerWeek, day).monotony;
    for (const TrendWeek& week : weeks) {
        trend.volume += week.together().volume;
    }
    return trend;
}

void addLoads(std::vector<TrendWeek>& weeks, std::span<const SessionEffort> efforts)
{
    for (const SessionEffort& effort : efforts) {
        if (TrendWeek* week = weekWith(weeks, effort.date)) {
            week->load.load += effort.load.value_or(0);
            ++(effort.load ? week->load.rated : week->load.unrated);
        }
    }
}

}  // namespace

DayRange trendDays(base::Date day, int weeks)
{
    const base::Date monday = mondayOf(day);
    return {monday - kDaysPerWeek * (weeks - 1), monday + (kDaysPerWeek - 1)};
}

Work TrendWeek::together() const
{
    Work sum;
    for (const Work& one : work) {
        sum += one;
    }
    return sum;
}

Trends trendsOf(const TrendsRequest& request)
{
    Trends trends;
    trends.days = trendDays(request.day, request.weeks);
    trends.weeks = emptyWeeks(trends.days, request.day);
    addWorkDone(trends.weeks, request.work);
    addSessions(trends.weeks, request.sessions);
    for (TrendWeek& week : trends.weeks) {
        week.load = weekLoadOf(request.efforts, week.monday, request.day);
    }
    for (const TrendedLift& lift : request.lifts) {
        trends.lifts.push_back(liftTrendOf(lift, trends.days));
        addLighterWeeks(trends.weeks, lift);
    }
    trends.ratio = loadRatioOf(request.efforts, request.day);
    trends.volumeGap = volumeGapOf(trends.weeks);
    trends.singlesGap = liftGapOf(trends.lifts, kSinglesOfALine, [](const LiftTrend& lift) { return lift.estimates; });
    trends.targetsGap = liftGapOf(trends.lifts, 1, [](const LiftTrend& lift) { return lift.buildSince && !lift.targets.empty() ? 1 : 0; });
    trends.monotonyGap = monotonyGapOf(trends.weeks);
    trends.isLearning = areMostLearning(trends.lifts);
    return trends;
}

StudioTrends studioTrendsOf(std::span<const ClientWork> clients, base::Date day, int weeks)
{
    StudioTrends trends;
    trends.days = trendDays(day, weeks);
    trends.weeks = emptyWeeks(trends.days, day);
    for (const ClientWork& client : clients) {
        addWorkDone(trends.weeks, client.work);
        addSessions(trends.weeks, client.sessions);
        addLoads(trends.weeks, client.efforts);
        trends.clients.push_back(clientTrendOf(client, trends.days, day));
    }
    trends.volumeGap = volumeGapOf(trends.weeks);
    return trends;
}

}  // namespace chalk::checkin
