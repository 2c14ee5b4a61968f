#include "core/checkin/choices.h"

#include "core/progression/block_rules.h"
#include "core/progression/coach_choice.h"
#include "core/progression/swap_to.h"

#include <algorithm>

namespace chalk::checkin {

namespace {

using progression::CoachSet;
using progression::EventBody;
using progression::LiftMachine;
using progression::Prescription;
using progression::Stage;

/// Stands for the reason that the coach gives later: no rule reads it, but a set without one has a fault.
constexpr const char* kSomeReason = "-";

/// Lists the choices of one lift.
class ChoiceList {
public:
    ChoiceList(const LiftMachine& machine, base::Date day) : m_machine(machine), m_day(day) {}

    /// A choice that writes nothing; the lift goes on as it stands, or nothing is known of what comes next.
    void add(ChoiceKind kind, bool hasNext);
    /// A choice with its event, where the lift does not refuse it.
    void add(ChoiceKind kind, EventBody event);
    [[nodiscard]] std::vector<Choice>& choices() { return m_choices; }

private:
    const LiftMachine& m_machine;
    base::Date m_day;
    std::vector<Choice> m_choices;
};

void ChoiceList::add(ChoiceKind kind, bool hasNext)
{
    Choice choice;
    choice.kind = kind;
    if (hasNext) {
        choice.next = m_machine.prescriptionOn(m_day);
    }
    m_choices.push_back(std::move(choice));
}

void ChoiceList::add(ChoiceKind kind, EventBody event)
{
    LiftMachine after = m_machine;
    EventBody tried = event;
    if (auto* set = std::get_if<CoachSet>(&tried)) {
        set->reason = kSomeReason;
    }
    if (after.faultOf(tried)) {
        return;
    }
    after.apply(m_day, tried);
    Choice choice;
    choice.kind = kind;
    choice.next = after.prescriptionOn(m_day);
    if (const auto* swap = std::get_if<progression::Swap>(&event)) {
        choice.exerciseKey = swap->exerciseKey;
    }
    if (std::holds_alternative<progression::LighterWeek>(event)) {
        choice.later = after.withoutLighterWeek().prescriptionOn(m_day);
    }
    choice.event = std::move(event);
    m_choices.push_back(std::move(choice));
}

Stage stageAfter(Stage stage)
{
    return stage == Stage::RestCut ? Stage::LoadBuild : static_cast<Stage>(progression::numberOf(stage) + 1);
}

/// On to the next stage with what was reached: from Load build with the load that was made last, from Rep build with the best reps.
CoachSet movingOn(const LiftMachine& machine, Stage from, base::Date day)
{
    const progression::LiftState& state = machine.state();
    progression::CoachNumbers numbers = progression::numbersAt(machine, stageAfter(from), day);
    if (from == Stage::LoadBuild && state.lastMade) {
        numbers.load = state.lastMade;
    } else if (from == Stage::RepBuild) {
        numbers.reps = std::max(machine.setup().policy.repFloor, state.best);
    }
    return progression::coachSetOf(numbers, {});
}

void addSwap(ChoiceList& list, const std::optional<lifts::SwapOption>& option)
{
    if (option) {
        list.add(ChoiceKind::Swap, progression::swapTo(*option, std::nullopt));
    }
}

void addRescreen(ChoiceList& list, const LiftEvidence& evidence)
{
    if (evidence.isOnHold || evidence.stage == Stage::Pattern) {
        list.add(ChoiceKind::Rescreen, true);
    } else if (!progression::isLoaded(evidence.stage) || evidence.flags.has(progression::Flag::Rescreen)) {
        CoachSet set;
        set.stage = Stage::Pattern;
        list.add(ChoiceKind::Rescreen, EventBody(set));
    }
}

bool isDirectionOpen(const ClientSigns& client, base::Date day)
{
    const bool isLate = client.firstLoad && day - *client.firstLoad >= SuggestionFigures().manyStallsDays;
    return client.isPlanToReview || (!client.isDirectionSettled && isLate);
}

/// Puts the suggested choice first; holding is always there.
void suggest(std::vector<Choice>& choices, const Suggestion& suggestion, const NeighbourSwaps& swaps)
{
    const auto& swap = suggestion.isHarder ? swaps.harder : swaps.easier;
    const auto isMeant = [&suggestion, &swap](const Choice& choice) {
        return choice.kind == suggestion.kind && (choice.kind != ChoiceKind::Swap || (swap && choice.exerciseKey == swap->exercise->key));
    };
    auto found = std::find_if(choices.begin(), choices.end(), isMeant);
    if (found == choices.end()) {
        found = std::find_if(choices.begin(), choices.end(), [](const Choice& choice) { return choice.kind == ChoiceKind::Hold; });
    }
    found->isSuggested = true;
    found->why = suggestion.why;
    std::rotate(choices.begin(), found, found + 1);
}

}  // namespace

NeighbourSwaps neighbourSwaps(const lifts::Catalogue& catalogue, const lifts::Exercise& exercise, std::span<const lifts::SwapOption> options)
{
    const auto firstOf = [&options](const std::vector<const lifts::Exercise*>& neighbours) -> std::optional<lifts::SwapOption> {
        const auto isOne = [&neighbours](const lifts::SwapOption& option) {
            return std::find(neighbours.begin(), neighbours.end(), option.exercise) != neighbours.end();
        };
        const auto found = std::find_if(options.begin(), options.end(), isOne);
        return found == options.end() ? std::nullopt : std::optional(*found);
    };
    return {firstOf(catalogue.easierThan(exercise)), firstOf(catalogue.harderThan(exercise))};
}

std::vector<Choice> choicesFor(const LiftMachine& machine, const LiftEvidence& evidence, const ClientSigns& client, const NeighbourSwaps& swaps,
                               base::Date day)
{
    ChoiceList list(machine, day);
    const bool isWorked = !evidence.isOnHold && progression::isLoaded(evidence.stage);
    const bool followsPlan = isWorked && machine.state().block && !progression::isBlockOver(day, machine.state());
    if (isWorked) {
        list.add(ChoiceKind::LighterWeek, progression::LighterWeek{});
    }
    list.add(ChoiceKind::Hold, true);
    if (isWorked && !followsPlan) {
        list.add(ChoiceKind::MoveOn, movingOn(machine, evidence.stage, day));
    }
    addSwap(list, swaps.easier);
    addSwap(list, swaps.harder);
    list.add(ChoiceKind::ByHand, false);
    addRescreen(list, evidence);
    if (followsPlan || isDirectionOpen(client, day)) {
        list.add(ChoiceKind::Direction, false);
    }
    Suggestion suggestion = suggestionFor(evidence, client, {swaps.easier.has_value(), swaps.harder.has_value()}, day);
    if (followsPlan && suggestion.kind == ChoiceKind::MoveOn) {
        suggestion.kind = ChoiceKind::Direction;  // a plan has no next stage: it is looked at instead
    }
    suggest(list.choices(), suggestion, swaps);
    for (Choice& choice : list.choices()) {
        choice.followsPlan = followsPlan;
    }
    return std::move(list.choices());
}

}  // namespace chalk::checkin
