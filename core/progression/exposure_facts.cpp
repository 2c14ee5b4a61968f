#include "core/progression/exposure_facts.h"

#include <algorithm>

namespace chalk::progression {

namespace {

/// The load of most working sets, on a tie the heavier. Sessions have few sets: counting each again is the quickest.
base::Load workingLoadOf(const std::vector<SetRecord>& sets)
{
    base::Load best;
    std::ptrdiff_t most = 0;
    for (const SetRecord& set : sets) {
        if (set.isWarmup || (most > 0 && set.load == best)) {
            continue;
        }
        const auto count = std::count_if(sets.begin(), sets.end(), [&set](const SetRecord& other) {
            return !other.isWarmup && other.load == set.load;
        });
        if (count > most || (count == most && set.load > best)) {
            best = set.load;
            most = count;
        }
    }
    return best;
}

void keepLeast(std::optional<int>& least, int value)
{
    least = least ? std::min(*least, value) : value;
}

void countSet(ExposureFacts& facts, const SetRecord& set, int reps, int reserve)
{
    const bool hasRir = set.rir != SetRecord::kNotRecorded;
    const int adjusted = hasRir ? reps + set.rir - reserve : reps;
    const bool isFirst = facts.counted == 0;
    facts.adjustedReps = isFirst ? adjusted : std::min(facts.adjustedReps, adjusted);
    facts.leastReps = isFirst ? reps : std::min(facts.leastReps, reps);
    if (hasRir) {
        keepLeast(facts.capacity, reps + set.rir);
        keepLeast(facts.leastRir, set.rir);
    }
    if (!isFirst && set.restSeconds != SetRecord::kNotRecorded) {
        facts.longestRest = std::max(facts.longestRest.value_or(0), int{set.restSeconds});
    }
    ++facts.counted;
}

}  // namespace

int repsOf(std::int32_t amount, lifts::Measure measure, const Policy& policy)
{
    switch (measure) {
    case lifts::Measure::Reps:
        return amount;
    case lifts::Measure::Seconds:
        return amount / policy.secondsPerRep.value();
    case lifts::Measure::Metres:
        return amount / policy.metresPerRep.value();
    }
    return amount;
}

ExposureFacts factsOf(const Exposure& exposure, lifts::Measure measure, const Policy& policy)
{
    ExposureFacts facts;
    facts.workingLoad = workingLoadOf(exposure.sets);
    for (const SetRecord& set : exposure.sets) {
        if (set.isWarmup) {
            continue;
        }
        ++facts.workingSets;
        facts.isLost = facts.isLost || set.steadiness == Steadiness::Lost;
        facts.isShaky = facts.isShaky || set.steadiness == Steadiness::Shaky;
        if (set.load == facts.workingLoad) {
            countSet(facts, set, repsOf(set.amount, measure, policy), policy.reserve);
        }
    }
    return facts;
}

}  // namespace chalk::progression
