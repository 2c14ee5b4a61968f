#include "core/checkin/forecast.h"

#include "core/analysis/estimated_maximum.h"
#include "core/analysis/lift_work.h"
#include "core/base/enum_keys.h"
#include "core/checkin/lift_log.h"
#include "core/plateau/stage_lever.h"

#include <algorithm>
#include <cmath>

namespace chalk::checkin {

namespace {

using progression::LiftMachine;
using progression::Prescription;

constexpr int kWeekDays = 7;
constexpr int kSpanWeeks = 4;
/// Repetitions that the estimated single allows above the target: with so many to spare nobody misses it.
constexpr int kEasyBy = 2;
constexpr int kSpanDays = kSpanWeeks * kWeekDays;
constexpr std::array<std::string_view, 5> kNoForecastKeys{"on_hold", "not_loaded", "no_single", "few_exposures", "away"};

/// What was done of a lift from one day to another.
struct DoneSpan {
    int exposures = 0;
    int made = 0;

    [[nodiscard]] double share() const { return static_cast<double>(made) / exposures; }
};

DoneSpan doneBetween(std::span<const plateau::LoggedExposure> log, base::Date from, base::Date to)
{
    DoneSpan done;
    for (const plateau::LoggedExposure& row : log) {
        if (row.date >= from && row.date <= to && !row.isLighterWeek) {
            ++done.exposures;
            done.made += plateau::isComplete(row) ? 1 : 0;
        }
    }
    return done;
}

/// The three paces, but for the change of strength.
struct Paces {
    ForecastPace slow;
    ForecastPace expected;
    ForecastPace fast;
};

/// There is at least one span of four weeks since `first`.
Paces pacesOf(std::span<const plateau::LoggedExposure> log, base::Date first, base::Date day)
{
    const DoneSpan all = doneBetween(log, first, day);
    const double weeks = static_cast<double>(day - first + 1) / kWeekDays;
    const ForecastPace expected{all.exposures / weeks, all.share(), 0};
    Paces paces{expected, expected, expected};
    for (base::Date last = day; last - (kSpanDays - 1) >= first; last = last - kSpanDays) {
        const DoneSpan span = doneBetween(log, last - (kSpanDays - 1), last);
        if (span.exposures == 0) {
            continue;
        }
        const double rate = static_cast<double>(span.exposures) / kSpanWeeks;
        paces.slow.exposuresPerWeek = std::min(paces.slow.exposuresPerWeek, rate);
        paces.fast.exposuresPerWeek = std::max(paces.fast.exposuresPerWeek, rate);
        paces.slow.madeShare = std::min(paces.slow.madeShare, span.share());
        paces.fast.madeShare = std::max(paces.fast.madeShare, span.share());
    }
    return paces;
}

/// The median of the last estimates: one good or bad day does not set the whole forecast off.
base::Mass presentSingle(std::span<const EstimatePoint> estimates)
{
    constexpr std::size_t kLast = 3;
    std::vector<base::Mass> last;
    for (const EstimatePoint& point : estimates.last(std::min(kLast, estimates.size()))) {
        last.push_back(point.median);
    }
    std::sort(last.begin(), last.end());
    return last[last.size() / 2];
}

/// A lift that goes on at one pace.
class PacedLift {
public:
    PacedLift(LiftMachine machine, const ForecastPace& pace, base::Mass single, base::Date day)
        : m_machine(std::move(machine)), m_pace(pace), m_single(single), m_day(day)
    {
    }

    /// Goes on up to a day and says where the lift stands then.
    [[nodiscard]] ForecastPoint goOnTo(base::Date day);

private:
    [[nodiscard]] base::Date dateOf(int exposure) const;
    [[nodiscard]] base::Mass singleOn(base::Date date) const;
    [[nodiscard]] int repsAllowed(const Prescription& asked, base::Date date) const;
    void expose(base::Date date);

    LiftMachine m_machine;
    ForecastPace m_pace;
    base::Mass m_single;
    base::Date m_day;
    int m_done = 0;
    double m_missesDue = 0;
};

base::Date PacedLift::dateOf(int exposure) const
{
    return m_day + static_cast<int>(std::ceil(exposure * kWeekDays / m_pace.exposuresPerWeek));
}

base::Mass PacedLift::singleOn(base::Date date) const
{
    constexpr double kPerCent = 100;
    const double growth = std::pow(1 + m_pace.weeklyPercent / kPerCent, static_cast<double>(date - m_day) / kWeekDays);
    return base::Mass::fromRaw(std::llround(static_cast<double>(m_single.raw()) * growth));
}

/// The repetitions that leave as many in reserve as are asked for; 0 or more.
int PacedLift::repsAllowed(const Prescription& asked, base::Date date) const
{
    const auto moved = analysis::massMoved(asked.load, m_machine.setup(), m_machine.kit(), analysis::BodyShare::Counted);
    const auto reps = analysis::repsAt(moved.value_or(base::Mass()), singleOn(date), analysis::Formula::Epley);
    return reps ? std::max(0, static_cast<int>(std::floor(reps->reps)) - asked.reserve) : 0;
}

void PacedLift::expose(base::Date date)
{
    constexpr int kMostReserve = 10;
    const Prescription asked = m_machine.prescriptionOn(date);
    if (asked.kind != progression::PrescriptionKind::Work) {
        return;
    }
    const int allowed = repsAllowed(asked, date);
    int reps = std::min(allowed, asked.repsHigh.value());
    m_missesDue = std::min(1.0, m_missesDue + 1 - m_pace.madeShare);
    const bool isEasy = allowed >= asked.repsHigh.value() + kEasyBy;
    if (m_missesDue >= 1 && !isEasy && reps >= asked.repsLow.value()) {
        reps = asked.repsLow.value() - 1;
    }
    const bool isMade = reps >= asked.repsLow.value();
    m_missesDue = isMade ? m_missesDue : std::max(0.0, m_missesDue - 1);
    progression::SetRecord set;
    set.load = asked.load;
    set.amount = reps;
    set.rir = static_cast<std::int16_t>(std::min(kMostReserve, asked.reserve + (isMade ? allowed - reps : 0)));
    set.restSeconds = static_cast<std::int16_t>(asked.rest.value());
    m_machine.apply(date, progression::Exposure{0, std::vector(static_cast<std::size_t>(asked.sets.value()), set)});
}

ForecastPoint PacedLift::goOnTo(base::Date day)
{
    while (dateOf(m_done + 1) <= day) {
        expose(dateOf(++m_done));
    }
    const Prescription asked = m_machine.prescriptionOn(day);
    return {asked.stage, asked.cycle, asked.load, asked.sets, asked.repsLow, asked.rest, singleOn(day)};
}

/// What speaks against a forecast before the record is looked at more closely.
std::optional<ForecastLack> lackOf(const LiftEvidence& evidence, base::Date day)
{
    if (evidence.isOnHold) {
        return ForecastLack{NoForecast::OnHold, 0};
    }
    if (!progression::isLoaded(evidence.stage)) {
        return ForecastLack{NoForecast::NotLoaded, 0};
    }
    if (evidence.measure != lifts::Measure::Reps) {
        return ForecastLack{NoForecast::NoSingle, 0};
    }
    if (!evidence.estimates.empty() && day - evidence.estimates.back().date > kLayoffDays) {
        return ForecastLack{NoForecast::Away, 0};
    }
    const int missing = kForecastNeeds - static_cast<int>(evidence.estimates.size());
    return missing > 0 ? std::optional(ForecastLack{NoForecast::FewExposures, missing}) : std::nullopt;
}

/// The weeks that are missing, as exposures at the usual two a week.
int exposuresShort(base::Date first, base::Date day)
{
    constexpr int kUsualPerWeek = 2;
    const int days = kForecastNeedsWeeks * kWeekDays - (day - first + 1);
    return days > 0 ? (days * kUsualPerWeek + kWeekDays - 1) / kWeekDays : 0;
}

std::vector<ForecastWeek> forecastWeeksOf(const LiftMachine& machine, const Forecast& forecast, base::Date day)
{
    PacedLift slow(machine, forecast.slow, forecast.single, day);
    PacedLift expected(machine, forecast.expected, forecast.single, day);
    PacedLift fast(machine, forecast.fast, forecast.single, day);
    std::vector<ForecastWeek> weeks;
    for (int week = 1; week <= kForecastWeeks; ++week) {
        const base::Date monday = day - day.weekday() + week * kWeekDays;
        const base::Date sunday = monday + (kWeekDays - 1);
        weeks.push_back({monday, slow.goOnTo(sunday), expected.goOnTo(sunday), fast.goOnTo(sunday)});
    }
    return weeks;
}

}  // namespace

tl::expected<Forecast, ForecastLack> forecastOf(const LiftRecord& record, const LiftEvidence& evidence, base::Date day)
{
    if (const auto lack = lackOf(evidence, day)) {
        return tl::make_unexpected(*lack);
    }
    const base::Date first = evidence.estimates.front().date;
    const auto& change = evidence.evidence.longChange ? evidence.evidence.longChange : evidence.evidence.change;
    const int missing = exposuresShort(first, day);
    if (missing > 0 || !change) {
        return tl::make_unexpected(ForecastLack{NoForecast::FewExposures, std::max(1, missing)});
    }
    const auto isLater = [day](const progression::Event& event) { return event.date > day; };
    const auto past = record.events.first(static_cast<std::size_t>(std::find_if(record.events.begin(), record.events.end(), isLater) - record.events.begin()));
    LiftMachine machine = *record.fresh;
    for (const progression::Event& event : past) {
        machine.apply(event.date, event.body);
    }
    const auto log = logOf(*record.fresh, past);
    if (doneBetween(log, first, day).exposures == 0) {
        return tl::make_unexpected(ForecastLack{NoForecast::FewExposures, kForecastNeeds});
    }
    const Paces paces = pacesOf(log, first, day);
    Forecast forecast{paces.slow, paces.expected, paces.fast, presentSingle(evidence.estimates), {}};
    forecast.slow.weeklyPercent = change->low;
    forecast.expected.weeklyPercent = change->percent;
    forecast.fast.weeklyPercent = change->high;
    forecast.weeks = forecastWeeksOf(machine, forecast, day);
    return forecast;
}

std::string_view keyOf(NoForecast why)
{
    return base::keyIn(kNoForecastKeys, why);
}

}  // namespace chalk::checkin
