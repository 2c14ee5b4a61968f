#include "core/progression/screen_start.h"

#include "core/base/enum_keys.h"
#include "core/progression/lift_machine.h"

#include <algorithm>

namespace chalk::progression {

namespace {

using screens::Mark;
using screens::PauseDepth;
using screens::PauseMark;
using screens::PauseTry;
using screens::PatternScreen;

constexpr std::array<std::string_view, 3> kStartStateKeys{"not_screened", "on_hold", "starts"};
constexpr std::array<std::string_view, 2> kNeedKeys{"push_up_control", "overhead_reach"};

Verdict verdictFor(Mark mark)
{
    switch (mark) {
    case Mark::Met:
        return Verdict::Met;
    case Mark::Partly:
        return Verdict::Partly;
    case Mark::NotMet:
    case Mark::NotJudged:
        break;
    }
    return Verdict::NotMet;
}

Steadiness steadinessFor(screens::MovementSteadiness steadiness)
{
    switch (steadiness) {
    case screens::MovementSteadiness::Steady:
        return Steadiness::Steady;
    case screens::MovementSteadiness::Shaky:
        return Steadiness::Shaky;
    case screens::MovementSteadiness::Lost:
        break;
    }
    return Steadiness::Lost;
}

std::optional<int> pauseFor(const PauseTry& pause, const Policy& policy)
{
    const bool isThere = pause.mark == PauseMark::Held || pause.mark == PauseMark::Shaky;
    return isThere ? std::optional(pause.heldMs.value_or(policy.pauseMs)) : std::nullopt;
}

/// A lift in Pattern with nothing but the body: what the rules of rehearsals need.
LiftMachine unloadedLift(const Policy& policy)
{
    LiftSetup setup;
    setup.kit.equipment = lifts::BodyAdded{{base::Load()}};
    setup.policy = policy;
    return LiftMachine::create(std::move(setup)).value();
}

void countPoints(PatternStart& start, const PatternScreen& screen)
{
    for (const screens::PointMark& point : screen.points) {
        start.met += point.mark == Mark::Met ? 1 : 0;
        start.partly += point.mark == Mark::Partly ? 1 : 0;
        start.notMet += point.mark == Mark::NotMet ? 1 : 0;
        if (point.mark == Mark::Partly || point.mark == Mark::NotMet) {
            start.pointsInTheWay.push_back(point);
        }
    }
}

/// What keeps the lift out of Base load once every point is met.
void findControlGaps(PatternStart& start, const PatternScreen& screen, const Policy& policy)
{
    if (start.stage != Stage::Control) {
        return;
    }
    for (const PauseDepth depth : screens::kPauseDepths) {
        const PauseTry& pause = screen.pauseAt(depth);
        const std::optional<int> held = pauseFor(pause, policy);
        if (pause.mark != PauseMark::NotTried && (!held || *held < policy.pauseMs || pause.mark == PauseMark::Shaky)) {
            start.pausesInTheWay.push_back(depth);
        }
    }
    start.areRepsInTheWay = screen.reps.value_or(policy.controlReps) < policy.controlReps;
    start.isSteadinessInTheWay = screens::steadinessOf(screen) != screens::MovementSteadiness::Steady;
}

bool isOverheadReachMet(const PatternScreen& screen)
{
    return std::any_of(screen.points.begin(), screen.points.end(),
                       [](const screens::PointMark& point) { return point.key == kOverheadReachPoint && point.mark == Mark::Met; });
}

std::vector<StartNeed> unmetNeedsOf(const PatternStart& start, const PatternScreen& screen)
{
    if (start.pattern == lifts::Pattern::HorizontalPush && start.stage < Stage::Control) {
        return {StartNeed::PushUpControl};
    }
    if (start.pattern == lifts::Pattern::VerticalPush && !isOverheadReachMet(screen)) {
        return {StartNeed::OverheadReach};
    }
    return {};
}

}  // namespace

Rehearsal rehearsalOf(const PatternScreen& screen, const Policy& policy)
{
    Rehearsal trial;
    for (const screens::PointMark& point : screen.points) {
        trial.criteria.push_back({point.key, verdictFor(point.mark)});
    }
    trial.reps = screen.reps.value_or(policy.controlReps);
    trial.pauses = {pauseFor(screen.pauseAt(PauseDepth::Top), policy), pauseFor(screen.pauseAt(PauseDepth::Middle), policy),
                    pauseFor(screen.pauseAt(PauseDepth::Bottom), policy)};
    trial.steadiness = steadinessFor(screens::steadinessOf(screen));
    if (screen.pain) {
        trial.pain = screen.pain->score.value_or(policy.painHold);
    }
    return trial;
}

PatternStart startOf(const PatternScreen& screen, const Policy& policy)
{
    PatternStart start;
    start.pattern = screen.pattern;
    start.isProvisional = !screens::openMarksOf(screen).isNothing();
    countPoints(start, screen);
    if (screens::isStarted(screen)) {
        LiftMachine lift = unloadedLift(policy);
        start.rules = lift.apply(base::Date(), rehearsalOf(screen, policy));
        start.isPainAtHoldLimit = lift.state().isOnHold;
        start.state = screens::isPainful(screen) ? StartState::OnHold : StartState::Starts;
        start.stage = lift.state().stage;
    }
    findControlGaps(start, screen, policy);
    start.unmetNeeds = unmetNeedsOf(start, screen);
    return start;
}

std::array<PatternStart, lifts::kPatterns.size()> startsOf(const screens::MovementScreen& screen, const Policy& policy)
{
    std::array<PatternStart, lifts::kPatterns.size()> starts;
    std::transform(screen.patterns.begin(), screen.patterns.end(), starts.begin(),
                   [&policy](const PatternScreen& one) { return startOf(one, policy); });
    return starts;
}

tl::expected<ChosenStart, ChoiceFault> chosenStartOf(const PatternStart& start, const StartChoice& choice)
{
    if (choice.stage > Stage::BaseLoad) {
        return tl::make_unexpected(ChoiceFault::NoStartStage);
    }
    const bool isHeld = start.state == StartState::OnHold;
    if (isHeld && (start.isPainAtHoldLimit || choice.stage != Stage::Pattern)) {
        return tl::make_unexpected(ChoiceFault::OnHold);
    }
    const bool isKept = start.state == StartState::Starts && choice.stage == start.stage;
    const bool isReasonGiven = choice.reason.find_first_not_of(" \t\r\n") != std::string::npos;
    if (!isKept && !isReasonGiven) {
        return tl::make_unexpected(ChoiceFault::ReasonMissing);
    }
    ChosenStart chosen;
    chosen.pattern = start.pattern;
    chosen.stage = choice.stage;
    chosen.byRules = start.stage;
    chosen.reason = isKept ? std::string() : choice.reason;
    chosen.isAboveScreen = choice.stage > start.stage;
    if (isLoaded(choice.stage)) {
        chosen.against = start.unmetNeeds;
    }
    return chosen;
}

std::string_view keyOf(StartState state)
{
    return base::keyIn(kStartStateKeys, state);
}

std::string_view keyOf(StartNeed need)
{
    return base::keyIn(kNeedKeys, need);
}

}  // namespace chalk::progression
