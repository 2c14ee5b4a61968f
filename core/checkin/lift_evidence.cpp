#include "core/checkin/lift_evidence.h"

#include "core/analysis/best_single.h"
#include "core/analysis/lift_work.h"
#include "core/checkin/lift_log.h"
#include "core/plateau/detector.h"
#include "core/plateau/load_step.h"
#include "core/plateau/median.h"

#include <algorithm>

namespace chalk::checkin {

namespace {

using progression::LiftMachine;

constexpr int kReviewWeekDays = 7;

/// Goes through the events of a lift once and notes what a check-in shows.
class LiftReview {
public:
    LiftReview(const LiftMachine& fresh, base::Date day) : m_machine(fresh), m_day(day), m_days(checkInDays(day)) { startVolume(); }

    void take(const progression::Event& event);
    /// What was noted, up to the day.
    [[nodiscard]] LiftEvidence finish();

    [[nodiscard]] const LiftMachine& machine() const { return m_machine; }
    [[nodiscard]] std::span<const plateau::LoggedExposure> log() const { return m_log; }

private:
    void startVolume();
    void takeExposure(base::Date date, const progression::Exposure& exposure);
    void takePain(base::Date date, int pain);
    void takeStage(base::Date date);
    void noteGap(base::Date lastDay, int days);
    void noteLighterWeek(base::Date from);

    LiftMachine m_machine;
    base::Date m_day;
    DayRange m_days;
    LiftEvidence m_noted;
    std::vector<plateau::LoggedExposure> m_log;
    std::optional<base::Date> m_lastWork;
    int m_swaps = 0;
};

void LiftReview::startVolume()
{
    for (base::Date monday = m_days.from; monday <= m_days.to; monday = monday + kReviewWeekDays) {
        m_noted.volume.push_back({monday, 0, 0});
    }
}

void LiftReview::take(const progression::Event& event)
{
    if (const auto* exposure = std::get_if<progression::Exposure>(&event.body)) {
        takeExposure(event.date, *exposure);
    } else if (const auto* rehearsal = std::get_if<progression::Rehearsal>(&event.body)) {
        takePain(event.date, rehearsal->pain);
    } else if (std::holds_alternative<progression::Swap>(event.body)) {
        ++m_swaps;
        m_noted.estimates.clear();  // of another exercise: they do not compare
    }
    m_machine.apply(event.date, event.body);
    if (std::holds_alternative<progression::LighterWeek>(event.body)) {
        noteLighterWeek(event.date);
    }
    takeStage(event.date);
}

void LiftReview::takeExposure(base::Date date, const progression::Exposure& exposure)
{
    takePain(date, exposure.pain);
    if (auto logged = loggedExposureOf(m_machine, date, exposure, m_swaps)) {
        m_log.push_back(*std::move(logged));
    }
    const auto isWork = [](const progression::SetRecord& set) { return !set.isWarmup; };
    if (std::any_of(exposure.sets.begin(), exposure.sets.end(), isWork)) {
        noteGap(date - 1, m_lastWork ? date - *m_lastWork : 0);
        m_lastWork = date;
    }
    if (date < m_days.from) {
        return;
    }
    if (const auto single = analysis::bestSingle(exposure, m_machine.setup(), m_machine.kit())) {
        m_noted.estimates.push_back({date, single->band.lowest, single->band.median, single->band.highest});
    }
    const analysis::Work work = analysis::workOf(exposure, m_machine.setup(), m_machine.kit(), analysis::BodyShare::LeftOut);
    WeekVolume& week = m_noted.volume[static_cast<std::size_t>((date - m_days.from) / kReviewWeekDays)];
    week.volume += work.volume.kilograms();
    week.sets += static_cast<int>(work.sets);
}

void LiftReview::takePain(base::Date date, int pain)
{
    if (pain > 0 && date >= m_days.from) {
        m_noted.pain.push_back({date, pain});
    }
}

/// The stretches go on to the day of the check-in; `finish` cuts off what lies before the weeks that are looked at.
void LiftReview::takeStage(base::Date date)
{
    auto& stages = m_noted.stages;
    const progression::LiftState& state = m_machine.state();
    if (!stages.empty() && stages.back().stage == state.stage && stages.back().cycle == state.cycle) {
        return;
    }
    if (!stages.empty() && stages.back().days.from == date) {
        stages.pop_back();  // two events of one day: the last one says where it stands
    } else if (!stages.empty()) {
        stages.back().days.to = date - 1;
    }
    stages.push_back({{date, m_day}, state.stage, state.cycle});
}

/// A gap since the last work that goes on to `lastDay`.
void LiftReview::noteGap(base::Date lastDay, int days)
{
    if (days >= kLayoffDays && lastDay >= m_days.from) {
        m_noted.layoffs.push_back({std::max(*m_lastWork + 1, m_days.from), lastDay});
    }
}

/// One that begins anew ends the one before; a lift that has nothing to make lighter begins none.
void LiftReview::noteLighterWeek(base::Date from)
{
    const auto until = m_machine.state().lighterUntil;
    if (!until || *until < m_days.from) {
        return;
    }
    auto& weeks = m_noted.lighterWeeks;
    if (!weeks.empty() && weeks.back().to >= from) {
        weeks.back().to = from - 1;
    }
    std::erase_if(weeks, [](const DayRange& week) { return week.to < week.from; });
    weeks.push_back({std::max(from, m_days.from), *until});
}

LiftEvidence LiftReview::finish()
{
    noteGap(m_day, m_lastWork ? m_day - *m_lastWork : 0);
    std::erase_if(m_noted.stages, [this](const StageStretch& stretch) { return stretch.days.to < m_days.from; });
    for (StageStretch& stretch : m_noted.stages) {
        stretch.days.from = std::max(stretch.days.from, m_days.from);
    }
    return std::move(m_noted);
}

/// Weeks that the next step from the load that is asked for is expected to take.
std::optional<double> weeksPerStepOf(const LiftMachine& machine, const progression::Prescription& next)
{
    const auto above = next.kind == progression::PrescriptionKind::Work ? machine.loads().nextAbove(next.load) : std::nullopt;
    if (!above) {
        return std::nullopt;
    }
    const auto moved = [&machine](base::Load load) {
        return analysis::massMoved(load, machine.setup(), machine.kit(), analysis::BodyShare::Counted).value_or(base::Mass()).in(machine.setup().unit);
    };
    const base::Load present = moved(next.load);
    return present > base::Load() ? std::optional(plateau::weeksPerLoadStep(present, moved(*above) - present)) : std::nullopt;
}

/// The median of what was left in reserve of late; nothing where it was never written down.
std::optional<double> reserveOf(std::span<const plateau::LoggedExposure> log)
{
    std::vector<double> last;
    for (auto row = log.rbegin(); row != log.rend() && last.size() < kReserveMemory; ++row) {
        if (row->reserve && !row->isLighterWeek) {
            last.push_back(*row->reserve);
        }
    }
    return last.empty() ? std::nullopt : std::optional(plateau::medianOf(last));
}

void describe(LiftEvidence& evidence, const LiftRecord& record, const LiftMachine& machine, base::Date day)
{
    evidence.lift = record.lift;
    evidence.pattern = record.pattern;
    evidence.exerciseKey = machine.kit().exerciseKey;
    evidence.name = record.name;
    evidence.unit = machine.setup().unit;
    evidence.measure = machine.kit().measure;
    evidence.pieces = machine.kit().pieces;
    evidence.isOnHold = machine.state().isOnHold;
    evidence.next = machine.prescriptionOn(day);
    evidence.stage = evidence.next->stage;
    evidence.cycle = evidence.next->cycle;
    evidence.flags = evidence.next->flags;
    evidence.weeksPerStep = weeksPerStepOf(machine, *evidence.next);
}

}  // namespace

bool isStalled(const plateau::Judgement& judgement, progression::Flags flags, bool isOnHold)
{
    using plateau::PlateauVerdict;
    return !isOnHold && (judgement.verdict == PlateauVerdict::Stalled || judgement.verdict == PlateauVerdict::Regressing ||
                         flags.has(progression::Flag::Stalled));
}

std::optional<DayRange> flatSinceBest(std::span<const plateau::CleanExposure> log, base::Date day)
{
    const auto segment = plateau::segmentOn(log, day);
    if (segment.empty()) {
        return std::nullopt;
    }
    const plateau::BestReading best = plateau::bestReadingOf(segment, day);
    return DayRange{best.daysSinceLever ? day - *best.daysSinceLever : segment.front().date, day};
}

LiftEvidence liftEvidenceOf(const LiftRecord& record, const plateau::CheckDay& check)
{
    LiftReview review(*record.fresh, check.date);
    for (const progression::Event& event : record.events) {
        if (event.date <= check.date) {
            review.take(event);
        }
    }
    LiftEvidence evidence = review.finish();
    describe(evidence, record, review.machine(), check.date);
    evidence.reserve = reserveOf(review.log());
    const auto clean = plateau::cleaned(review.log());
    evidence.judgement = plateau::judge(clean, check);
    evidence.evidence = plateau::evidenceFor(evidence.judgement, clean, check);
    if (isStalled(evidence.judgement, evidence.flags, evidence.isOnHold)) {
        evidence.flat = flatSinceBest(clean, check.date);
    }
    return evidence;
}

}  // namespace chalk::checkin
