#include "core/progression/evidence_records.h"

#include <algorithm>

namespace chalk::progression {

namespace {

bool hasWorkingSet(const Exposure& exposure)
{
    return std::any_of(exposure.sets.begin(), exposure.sets.end(), [](const SetRecord& set) { return !set.isWarmup; });
}

/// One record, of whichever kind.
struct PlainRecord {
    int pain = 0;
    bool isSteady = true;
};

std::optional<PlainRecord> recordOf(const EventBody& body)
{
    if (const auto* rehearsal = std::get_if<Rehearsal>(&body)) {
        return PlainRecord{rehearsal->pain, rehearsal->steadiness == Steadiness::Steady};
    }
    const auto* exposure = std::get_if<Exposure>(&body);
    if (exposure == nullptr || !hasWorkingSet(*exposure)) {
        return std::nullopt;
    }
    const bool isSteady = std::all_of(exposure->sets.begin(), exposure->sets.end(), [](const SetRecord& set) {
        return set.isWarmup || set.steadiness == Steadiness::Steady;
    });
    return PlainRecord{exposure->pain, isSteady};
}

void readStreaks(std::span<const JudgedEvent> history, RecordFacts& facts)
{
    bool isPainFree = true;
    bool isSteady = true;
    for (auto event = history.rbegin(); event != history.rend() && (isPainFree || isSteady); ++event) {
        const auto record = recordOf(*event->body);
        if (!record) {
            continue;
        }
        if (!facts.lastDate) {
            facts.lastDate = event->date;
            facts.lastPain = record->pain;
        }
        isPainFree = isPainFree && record->pain == 0;
        isSteady = isSteady && record->isSteady;
        facts.painFreeInARow += isPainFree ? 1 : 0;
        facts.steadyInARow += isSteady ? 1 : 0;
    }
}

void readHold(std::span<const JudgedEvent> history, RecordFacts& facts)
{
    const auto held =
        std::find_if(history.rbegin(), history.rend(), [](const JudgedEvent& e) { return e.rules.has(Rule::P1); });
    if (held == history.rend()) {
        return;
    }
    facts.heldOn = held->date;
    if (const auto record = recordOf(*held->body)) {
        facts.heldPain = record->pain;
    } else if (const auto* exposure = std::get_if<Exposure>(held->body)) {
        facts.heldPain = exposure->pain;
    }
}

/// The first event that belongs to the present stage.
std::size_t beginOfStage(std::span<const JudgedEvent> history, Stage stage, Stage startStage)
{
    std::size_t begin = history.size();
    while (begin > 0) {
        const JudgedEvent& event = history[begin - 1];
        const Stage before = begin > 1 ? history[begin - 2].stageAfter : startStage;
        if (event.stageAfter != stage || event.rules.has(Rule::X1)) {
            break;
        }
        if (before != stage) {
            // A rehearsal that leads from Pattern to Control is judged for both.
            return event.rules.has(Rule::U1) ? begin - 1 : begin;
        }
        --begin;
    }
    return begin;
}

}  // namespace

RecordFacts recordFactsOf(std::span<const JudgedEvent> history, Stage stage, Stage startStage)
{
    RecordFacts facts;
    readStreaks(history, facts);
    readHold(history, facts);
    const std::size_t begin = beginOfStage(history, stage, startStage);
    for (const JudgedEvent& event : history.subspan(begin)) {
        if (const auto* rehearsal = std::get_if<Rehearsal>(event.body)) {
            facts.rehearsal = rehearsal;
            facts.rehearsalDate = event.date;
        } else if (const auto* exposure = std::get_if<Exposure>(event.body);
                   exposure && hasWorkingSet(*exposure) && !event.rules.has(Rule::D2)) {
            facts.exposure = exposure;
            facts.exposureDate = event.date;
        }
    }
    return facts;
}

}  // namespace chalk::progression
