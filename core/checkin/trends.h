#pragma once

#include "core/analysis/attendance.h"
#include "core/analysis/dated_work.h"
#include "core/checkin/lift_trend.h"
#include "core/checkin/load_trend.h"
#include "core/checkin/week_load.h"

#include <array>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace chalk::checkin {

/// Over how many weeks trends are shown.
inline constexpr std::array kTrendWeeks{4, 12, 26};

/// Whole ISO weeks, Monday to Sunday, the last one that of `day`. `weeks` is 1 or more.
[[nodiscard]] DayRange trendDays(base::Date day, int weeks);

/// One ISO week of a client, or of everybody.
struct TrendWeek {
    base::Date monday;
    bool isOver = false;              ///< its Sunday is past
    analysis::PatternWork work{};     ///< load volume by pattern, body mass left out
    analysis::Attendance attendance;  ///< of the sessions that are over
    int lighterLifts = 0;             ///< of a client: whose lighter week lies mostly in this one
    WeekLoad load;                    ///< of everybody: the loads are summed, and there is no monotony

    [[nodiscard]] analysis::Work together() const;
};

/// What a figure still waits for.
struct FigureGap {
    int have = 0;
    int need = 0;
    std::optional<base::Date> firstOn{};  ///< the day it starts on if nothing is missing from here on; nothing where the day cannot be told
    std::optional<std::size_t> lift{};    ///< the lift that is nearest to it: an index of Trends::lifts

    bool operator==(const FigureGap&) const = default;
};

inline constexpr int kWeeksOfBars = 2;      ///< weeks with load that make a chart of weeks (common practice: one bar compares with nothing)
inline constexpr int kWeeksOfMonotony = 2;  ///< weeks with a monotony that make a line (common practice)

/// How a client went.
struct Trends {
    DayRange days;
    std::vector<TrendWeek> weeks;  ///< all, oldest first
    std::vector<LiftTrend> lifts;  ///< in the order they were given
    tl::expected<LoadRatio, NoRatio> ratio;
    std::optional<FigureGap> volumeGap;    ///< in weeks with load
    std::optional<FigureGap> singlesGap;   ///< in sessions of a lift
    std::optional<FigureGap> targetsGap;   ///< in lifts beyond Base load
    std::optional<FigureGap> monotonyGap;  ///< in finished weeks of which every session is rated
    bool isLearning = false;               ///< most lifts are still in stages 1 to 3 (checkin::Phase)
};

/// What trends are worked out from; the values are the caller's and only read.
struct TrendsRequest {
    base::Date day;
    int weeks = kTrendWeeks[1];                     ///< 1 or more
    std::span<const analysis::DatedWork> work;      ///< what lies outside of the weeks is left aside
    std::span<const sessions::Session> sessions;
    std::span<const SessionEffort> efforts;         ///< of the weeks, and of the five that end with the week of `day`
    std::span<const TrendedLift> lifts;
};

[[nodiscard]] Trends trendsOf(const TrendsRequest& request);

/// One client among everybody.
struct ClientTrend {
    base::ClientId client;
    std::string name;
    LoadTrend load;                          ///< the later half of the finished weeks against the earlier one; of an odd number the first is left out
    base::Mass volume;                       ///< over all weeks
    analysis::Attendance attendance;         ///< over all weeks
    std::optional<double> monotony;          ///< of the last finished week

    /// Whether the days of the last finished week were too much alike.
    [[nodiscard]] bool isTooMuchAlike() const { return monotony && *monotony >= kTooMuchAlike; }
};

/// How the studio went.
struct StudioTrends {
    DayRange days;
    std::vector<TrendWeek> weeks;      ///< all, oldest first
    std::vector<ClientTrend> clients;  ///< in the order they were given
    std::optional<FigureGap> volumeGap;
};

/// One client's part of a studio's trends.
struct ClientWork {
    base::ClientId client;
    std::string name;
    std::vector<analysis::DatedWork> work;
    std::vector<sessions::Session> sessions;
    std::vector<SessionEffort> efforts;
    std::optional<base::Date> firstLoad;  ///< the client's first record with a load, however long ago
};

[[nodiscard]] StudioTrends studioTrendsOf(std::span<const ClientWork> clients, base::Date day, int weeks);

}  // namespace chalk::checkin
