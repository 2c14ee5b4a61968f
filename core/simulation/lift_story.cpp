#include "core/simulation/lift_story.h"

#include "core/direction/lift_for_plan.h"
#include "core/direction/plan_blocks.h"
#include "core/progression/coach_choice.h"

#include <cstdlib>
#include <utility>

namespace chalk::simulation {

namespace {

using progression::Exposure;
using progression::LiftMachine;
using progression::SetRecord;
using progression::Stage;

constexpr int kTries = 45;

/// How far a lift stands from where it should: whole stages, cycles counting more, and the flag.
int distance(const LiftMachine& machine, const Ending& ending)
{
    const auto& state = machine.state();
    const int stages = std::abs(progression::numberOf(state.stage) - ending.stage);
    const int cycles = 4 * std::abs(state.cycle - ending.cycle);
    const bool isStalled = state.flags.has(progression::Flag::Stalled);
    return 2 * (stages + cycles) + (isStalled != ending.isStalled ? (ending.isStalled ? 12 : 1) : 0);
}

SetRecord* lastWorkingSet(Exposure& exposure)
{
    for (auto set = exposure.sets.rbegin(); set != exposure.sets.rend(); ++set) {
        if (!set->isWarmup) {
            return &*set;
        }
    }
    return nullptr;
}

void lighten(Exposure& exposure, const LiftMachine& machine)
{
    const SetRecord* last = lastWorkingSet(exposure);
    if (last == nullptr) {
        return;
    }
    const base::Load load = machine.loads().atMost(base::Load::fromCenti(last->load.centi() * 85 / 100));
    int working = 0;
    for (SetRecord& set : exposure.sets) {
        if (!set.isWarmup) {
            set.load = load;
            ++working;
        }
    }
    if (working > 2) {
        exposure.sets.pop_back();
    }
}

/// A turn of what was done that leaves it an exposure.
void turn(Exposure& exposure, Turn kind, const LiftMachine& machine)
{
    switch (kind) {
    case Turn::LosesASet:
        if (SetRecord* last = lastWorkingSet(exposure)) {
            last->steadiness = progression::Steadiness::Lost;
        }
        break;
    case Turn::GoesLighter:
        lighten(exposure, machine);
        break;
    case Turn::OnlyWarmsUp:
        for (SetRecord& set : exposure.sets) {
            set.isWarmup = true;
        }
        break;
    case Turn::IsScreened:
    case Turn::LoadsTooSoon:
    case Turn::TriesOnHold:
        break;
    }
}

/// What takes the place of what was due; nothing where the turn is none of that kind, or the lift does not stand so.
std::optional<progression::EventBody> instead(Turn kind, const LiftMachine& machine, SimulatedLifter& lifter)
{
    const auto& state = machine.state();
    const bool isLearning = state.stage == Stage::Pattern || state.stage == Stage::Control;
    const bool isScreened = kind == Turn::IsScreened && !isLearning && !state.isOnHold;
    const bool isLoaded = (kind == Turn::LoadsTooSoon && isLearning) || (kind == Turn::TriesOnHold && state.isOnHold);
    if (isScreened) {
        return lifter.screen();
    }
    return isLoaded ? std::optional(lifter.tryLightly(machine)) : std::nullopt;
}

/// A story as it is being played.
class Play {
public:
    Play(const LiftStory& story, const Talent& talent, std::uint64_t seed)
        : m_story(story),
          m_machine(LiftMachine::create(story.setup).value()),
          m_lifter(talent, seed),
          m_lift{story.pattern, story.exerciseKey, story.equipmentKey, story.setup, story.sessions.front().date, {}},
          m_act(story.coachActs.begin())
    {
    }

    [[nodiscard]] const LiftMachine& machine() const { return m_machine; }

    /// Plays the sessions before a moment.
    void playBefore(base::Date day, int minute)
    {
        for (; m_next < m_story.sessions.size(); ++m_next) {
            const StorySession& session = m_story.sessions[m_next];
            if (std::pair(session.date, session.startMinute) >= std::pair(day, minute)) {
                return;
            }
            actUntil(session.date);
            beginPlans(session.date);
            hold(session.date);
            train(session);
        }
    }

    /// Plays what is left.
    studio::DocumentLift finish()
    {
        const auto end = base::Date::fromDays(2'000'000);
        playBefore(end, 0);
        actUntil(end);
        beginPlans(end);
        return std::move(m_lift);
    }

private:
    void actUntil(base::Date date)
    {
        for (; m_act != m_story.coachActs.end() && m_act->first <= date; ++m_act) {
            if (!m_machine.faultOf(m_act->second)) {
                m_machine.apply(m_act->first, m_act->second);
                m_lift.events.push_back({{m_act->first, m_act->second}, std::nullopt});
            }
        }
    }

    void beginPlans(base::Date date)
    {
        for (; m_nextPlan < m_story.plans.size() && m_story.plans[m_nextPlan].plan.begunOn <= date; ++m_nextPlan) {
            const auto& [plan, lift] = m_story.plans[m_nextPlan];
            const auto& state = m_machine.state();
            const auto single = direction::startingSingle(m_spoken, plan.begunOn);
            if (!single || !progression::isLoaded(state.stage) || state.isOnHold) {
                continue;
            }
            const base::Load load = state.block ? state.block->single : single->load;
            const progression::Block block = direction::blockOf(plan.plan, lift, plan.begunOn, load, single->isTested, plan.note);
            m_machine.apply(plan.begunOn, block);
            m_lift.events.push_back({{plan.begunOn, block}, std::nullopt});
        }
    }

    void hold(base::Date date)
    {
        const auto reason = m_story.holds.find(date);
        const progression::Prescription next = m_machine.withoutLighterWeek().prescriptionOn(date);
        if (reason != m_story.holds.end() && next.kind == progression::PrescriptionKind::Work) {
            const progression::CoachSet kept = keepingSetOf(m_machine, next, reason->second);
            m_machine.apply(date, kept);
            m_lift.events.push_back({{date, kept}, std::nullopt});
        }
    }

    void train(const StorySession& session)
    {
        const double weeks = (session.date - m_story.sessions.front().date) / 7.0;
        auto body = m_lifter.answer(m_machine, session.date, weeks);
        if (const auto kind = m_story.turns.find(session.date); kind != m_story.turns.end()) {
            if (auto other = instead(kind->second, m_machine, m_lifter)) {
                body = std::move(other);
            } else if (auto* exposure = body ? std::get_if<Exposure>(&*body) : nullptr) {
                turn(*exposure, kind->second, m_machine);
            }
        }
        if (body) {
            log(session, *std::move(body));
        }
    }

    void log(const StorySession& session, progression::EventBody body)
    {
        auto* exposure = std::get_if<Exposure>(&body);
        if (const auto pain = m_story.pains.find(session.date); exposure != nullptr && pain != m_story.pains.end()) {
            exposure->pain = pain->second;
        }
        if (exposure != nullptr) {
            if (const auto single = direction::spokenIn(session.date, *exposure, m_machine)) {
                m_spoken.push_back(*single);
            }
        }
        m_machine.apply(session.date, body);
        studio::DocumentEvent entry{{session.date, std::move(body)}, session.code};
        if (m_story.slips.count(session.date) > 0) {
            addSlip(entry);
        }
        m_lift.events.push_back(entry);
        if (m_story.doubles.count(session.date) > 0) {
            entry.former.clear();
            entry.isTakenBack = true;
            m_lift.events.push_back(std::move(entry));
        }
    }

    /// Ten reps too many in the last set, as a finger slips.
    static void addSlip(studio::DocumentEvent& entry)
    {
        progression::Event wrong = entry.event;
        auto* exposure = std::get_if<Exposure>(&wrong.body);
        if (SetRecord* last = exposure == nullptr ? nullptr : lastWorkingSet(*exposure)) {
            last->amount += 10;
            entry.former.push_back(std::move(wrong));
        }
    }

    const LiftStory& m_story;
    LiftMachine m_machine;
    SimulatedLifter m_lifter;
    studio::DocumentLift m_lift;
    std::vector<direction::SpokenSingle> m_spoken;
    std::size_t m_next = 0;
    std::size_t m_nextPlan = 0;
    std::map<base::Date, progression::EventBody>::const_iterator m_act;
};

}  // namespace

studio::DocumentLift play(const LiftStory& story, const Talent& talent, std::uint64_t seed)
{
    return Play(story, talent, seed).finish();
}

studio::DocumentLift playTowards(const LiftStory& story, const Ending& ending, base::Date day, int minute, const Talent& talent, std::uint64_t seed)
{
    studio::DocumentLift best;
    int least = 1'000'000;
    Chance chance(seed);
    for (int i = 0; i < kTries && least > 0; ++i) {
        Talent varied = talent;
        varied.strength *= 0.75 + 0.5 * chance.unit();
        varied.gain *= 0.4 + 1.4 * chance.unit();
        varied.learning = 20 + chance.below(70);
        Play attempt(story, varied, chance.next());
        attempt.playBefore(day, minute);
        if (const int far = distance(attempt.machine(), ending); far < least) {
            least = far;
            best = attempt.finish();
        }
    }
    return best;
}

}  // namespace chalk::simulation
