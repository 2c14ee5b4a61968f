#include "core/simulation/lift_story.h"

#include <cstdlib>

namespace chalk::simulation {

namespace {

using progression::LiftMachine;

constexpr int kTries = 45;

LiftMachine machineOf(const LiftStory& story)
{
    return LiftMachine::create(story.setup).value();
}

/// How far a lift ended from where it should: whole stages, cycles counting more, and the flag.
int distance(const LiftMachine& machine, const Ending& ending)
{
    const auto& state = machine.state();
    const int stages = std::abs(progression::numberOf(state.stage) - ending.stage);
    const int cycles = 4 * std::abs(state.cycle - ending.cycle);
    const bool isStalled = state.flags.has(progression::Flag::Stalled);
    return 2 * (stages + cycles) + (isStalled != ending.isStalled ? (ending.isStalled ? 12 : 1) : 0);
}

void setPain(progression::EventBody& body, int pain)
{
    if (auto* exposure = std::get_if<progression::Exposure>(&body)) {
        exposure->pain = pain;
    }
}

studio::DocumentLift playOn(LiftMachine& machine, const LiftStory& story, const Talent& talent, std::uint64_t seed)
{
    studio::DocumentLift lift{story.pattern, story.exerciseKey, story.equipmentKey, story.setup, story.sessions.front().date, {}};
    SimulatedLifter lifter(talent, seed);
    const auto add = [&machine, &lift](base::Date date, progression::EventBody body, const std::string& code) {
        machine.apply(date, body);
        lift.events.push_back({{date, std::move(body)}, code.empty() ? std::nullopt : std::optional(code)});
    };
    auto act = story.coachActs.begin();
    const auto actUntil = [&](base::Date date) {
        for (; act != story.coachActs.end() && act->first <= date; ++act) {
            if (!machine.faultOf(act->second)) {
                add(act->first, act->second, {});
            }
        }
    };
    for (const StorySession& session : story.sessions) {
        actUntil(session.date);
        const double weeks = (session.date - story.sessions.front().date) / 7.0;
        auto body = lifter.answer(machine, session.date, weeks);
        if (!body) {
            continue;
        }
        if (const auto pain = story.pains.find(session.date); pain != story.pains.end()) {
            setPain(*body, pain->second);
        }
        add(session.date, *std::move(body), session.code);
    }
    actUntil(base::Date::fromDays(2'000'000));
    return lift;
}

}  // namespace

studio::DocumentLift play(const LiftStory& story, const Talent& talent, std::uint64_t seed)
{
    LiftMachine machine = machineOf(story);
    return playOn(machine, story, talent, seed);
}

studio::DocumentLift playTowards(const LiftStory& story, const Ending& ending, const Talent& talent, std::uint64_t seed)
{
    studio::DocumentLift best;
    int least = 1'000'000;
    Chance chance(seed);
    for (int i = 0; i < kTries && least > 0; ++i) {
        Talent varied = talent;
        varied.strength *= 0.75 + 0.5 * chance.unit();
        varied.gain *= 0.4 + 1.4 * chance.unit();
        varied.learning = 20 + chance.below(70);
        LiftMachine machine = machineOf(story);
        studio::DocumentLift lift = playOn(machine, story, varied, chance.next());
        if (const int far = distance(machine, ending); far < least) {
            least = far;
            best = std::move(lift);
        }
    }
    return best;
}

}  // namespace chalk::simulation
