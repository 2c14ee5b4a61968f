#include "tests/support/journey.h"

#include <array>

namespace chalk::test {

namespace {

using progression::EventBody;
using progression::Exposure;
using progression::LiftMachine;
using progression::Prescription;
using progression::PrescriptionKind;
using progression::Rehearsal;
using progression::SetRecord;
using progression::Stage;
using progression::Steadiness;
using progression::Verdict;

/// Draws small numbers from one large one.
class Whim {
public:
    explicit Whim(std::uint32_t value) : m_value(value) {}
    int below(int n)
    {
        const auto drawn = static_cast<int>(m_value % static_cast<std::uint32_t>(n));
        m_value /= static_cast<std::uint32_t>(n);
        return drawn;
    }

private:
    std::uint32_t m_value;
};

/// Reps with the reserve kept that suit the stage, from far short to far over.
int repsFor(const Prescription& next, Whim& whim)
{
    const int low = next.repsLow.value();
    const std::array<int, 8> reps{low, low, next.repsHigh.value(), low + 1, 6, 12, low - 2, 4};
    return std::max(1, reps[static_cast<std::size_t>(whim.below(8))]);
}

EventBody exposureFor(const Prescription& next, Whim& whim)
{
    SetRecord set;
    set.load = next.load;
    set.amount = repsFor(next, whim);
    set.rir = 2;
    set.restSeconds = static_cast<std::int16_t>(next.rest.value());
    if (next.stage == Stage::BaseLoad && whim.below(2) == 0) {
        set.amount = 8;
        set.rir = 5;
    }
    Exposure exposure{0, std::vector<SetRecord>(static_cast<std::size_t>(next.sets.value()), set)};
    switch (whim.below(12)) {
        case 0:
            exposure.pain = 2;
            break;
        case 1:
            exposure.pain = 6;
            break;
        case 2:
            exposure.sets.back().steadiness = Steadiness::Shaky;
            break;
        case 3:
            exposure.sets.back().steadiness = Steadiness::Lost;
            break;
        case 4:
            exposure.sets.pop_back();
            break;
        case 5:
            exposure.sets.front().rir = 0;
            break;
        case 6:
            exposure.sets.front().rir = SetRecord::kNotRecorded;
            break;
        default:
            break;
    }
    return exposure;
}

EventBody rehearsalFor(Whim& whim)
{
    Rehearsal rehearsal = goodRehearsal();
    if (whim.below(4) == 0) {
        rehearsal.criteria.back().verdict = Verdict::Partly;
    }
    rehearsal.reps = base::Reps(4 + whim.below(6));
    rehearsal.pauses.middleMs = 800 + 200 * whim.below(6);
    rehearsal.pain = whim.below(12) == 0 ? 1 : 0;
    rehearsal.steadiness = whim.below(8) == 0 ? Steadiness::Shaky : Steadiness::Steady;
    return rehearsal;
}

LiftMachine machineOf(progression::LiftSetup setup, Stage start)
{
    setup.startStage = start;
    return LiftMachine::create(std::move(setup)).value();
}

}  // namespace

Journey::Journey(progression::LiftSetup setup, Stage start) : m_machine(machineOf(std::move(setup), start))
{
}

void Journey::live(std::uint32_t value)
{
    Whim whim(value);
    constexpr std::array kGaps{2, 3, 2, 4, 2, 3, 2, 0, 5, 2, 3, 2, 16, 2, 31, 60};
    pass(kGaps[static_cast<std::size_t>(whim.below(16))]);
    const Prescription next = m_machine.prescriptionOn(m_day);
    switch (next.kind) {
        case PrescriptionKind::Hold:
            return record(progression::Release{"moves without pain again"});
        case PrescriptionKind::Rehearse:
            return record(rehearsalFor(whim));
        case PrescriptionKind::Work:
            return value % 41 == 7 ? record(progression::LighterWeek{}) : record(exposureFor(next, whim));
    }
}

void Journey::record(EventBody body)
{
    Entry entry{m_day, std::move(body), {}, Stage::Pattern};
    entry.rules = m_machine.apply(m_day, entry.body);
    entry.stageAfter = m_machine.state().stage;
    m_entries.push_back(std::move(entry));
}

void Journey::work(int sets, double load, int reps, int rir)
{
    record(exposureOf(std::vector<Work>(static_cast<std::size_t>(sets), Work{load, reps, rir})));
}

progression::JudgedEvent Journey::last() const
{
    const Entry& entry = m_entries.back();
    return {entry.date, &entry.body, entry.rules, entry.stageAfter};
}

std::vector<progression::JudgedEvent> Journey::history() const
{
    std::vector<progression::JudgedEvent> history;
    for (const Entry& entry : m_entries) {
        history.push_back({entry.date, &entry.body, entry.rules, entry.stageAfter});
    }
    return history;
}

progression::Kit kettlebellKit()
{
    return fixedKit({8, 12, 16, 20, 24});
}

}  // namespace chalk::test
