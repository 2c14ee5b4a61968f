#pragma once

#include "core/exchange/equipment_json.h"
#include "core/exchange/studio_document.h"
#include "core/lifts/exercise.h"

#include <string>
#include <string_view>
#include <variant>

namespace chalk::exchange {

// Fields of what a log has by the hundred thousand, for the forms that they are written in: `field(name, value)` is called in the order of
// the names, with a double, an int, a bool or a std::string_view. What is as by default is left out.

/// Of a set; it is counted in `measure`.
template <class Field>
void eachField(const progression::SetRecord& set, lifts::Measure measure, Field&& field)
{
    using progression::SetRecord;
    field("load", numberOf(set.load));
    if (measure == lifts::Measure::Metres) {
        field("metres", int{set.amount});
    } else if (measure == lifts::Measure::Reps) {
        field("reps", int{set.amount});
    }
    if (set.restSeconds != SetRecord::kNotRecorded) {
        field("rest_s", int{set.restSeconds});
    }
    if (set.rir != SetRecord::kNotRecorded) {
        field("rir", int{set.rir});
    }
    if (measure == lifts::Measure::Seconds) {
        field("seconds", int{set.amount});
    }
    if (set.steadiness != progression::Steadiness::Steady) {
        field("steadiness", std::string_view(progression::keyOf(set.steadiness)));
    }
    if (set.isWarmup) {
        field("warmup", true);
    }
}

/// Whether an entry is an exposure with sets that was never corrected, as nearly all of a log are.
[[nodiscard]] inline bool isPlainExposure(const DocumentEvent& entry)
{
    const auto* exposure = std::get_if<progression::Exposure>(&entry.event.body);
    return exposure != nullptr && !exposure->sets.empty() && entry.former.empty() && entry.sessionCode != std::string();
}

/// Of a plain exposure; `sets(list)` is called in the place of its sets.
template <class Field, class Sets>
void eachField(const DocumentEvent& entry, Field&& field, Sets&& sets)
{
    const auto& exposure = std::get<progression::Exposure>(entry.event.body);
    field("date", std::string_view(entry.event.date.toString()));
    if (exposure.pain > 0) {
        field("pain", exposure.pain);
    }
    if (entry.sessionCode) {
        field("session", std::string_view(*entry.sessionCode));
    }
    sets(exposure.sets);
    if (entry.isTakenBack) {
        field("taken_back", true);
    }
    field("type", std::string_view(progression::typeKeyOf(entry.event.body)));
}

}  // namespace chalk::exchange
