#pragma once

#include "core/base/date.h"
#include "core/base/load.h"
#include "core/lifts/pattern.h"
#include "core/planning/session_contents.h"
#include "core/planning/session_days.h"
#include "core/progression/screen_start.h"

#include <array>
#include <optional>
#include <string>
#include <vector>

namespace chalk::planning {

/// What the coach wants otherwise for one lift than the plan suggests. Nothing, or empty: as suggested.
struct LiftWish {
    std::optional<progression::StartChoice> start;  ///< another starting stage, with its reason
    std::string exerciseKey;                        ///< of the catalogue
    std::string equipmentKey;                       ///< of the studio
    std::optional<base::Load> firstLoad;            ///< in the client's unit
    bool isLeftOut = false;
    std::string whyLeftOut;                         ///< in the coach's words; may be empty

    [[nodiscard]] bool isEmpty() const { return !start && exerciseKey.empty() && equipmentKey.empty() && !firstLoad && !isLeftOut && whyLeftOut.empty(); }
    bool operator==(const LiftWish& other) const;
};

/// The coach's part of a starting plan, kept while it is made: the suggestion is worked out anew, this is laid over it.
struct PlanDraft {
    std::string templateKey;                                  ///< empty: by the sessions a week
    std::array<LiftWish, lifts::kPatterns.size()> wishes;     ///< by pattern
    SessionContents contents;                                 ///< which lifts in which session, in their order; empty: as the template has it
    std::vector<WeekSlot> slots;                              ///< days and times set by hand; empty: as suggested
    std::optional<base::Date> firstDay;                       ///< nothing: today

    [[nodiscard]] const LiftWish& of(lifts::Pattern pattern) const { return wishes[static_cast<std::size_t>(pattern)]; }
    [[nodiscard]] LiftWish& of(lifts::Pattern pattern) { return wishes[static_cast<std::size_t>(pattern)]; }
    bool operator==(const PlanDraft&) const = default;
};

}  // namespace chalk::planning
