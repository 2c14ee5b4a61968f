#pragma once

#include "ui/roster/roster_filter.h"

#include <QString>

#include <cstdint>
#include <vector>

namespace chalk::ui::roster {

/// The groups of choices; two of one group take each other's place.
enum class ChoiceGroup : std::uint8_t { Everybody, Coach, Phase, Flag };

/// One thing to filter by.
struct FilterChoice {
    ChoiceGroup group = ChoiceGroup::Everybody;
    QString text;                       ///< `Learning, 1–3`
    base::CoachId coach = {};           ///< of group Coach
    checkin::Phase phase = {};          ///< of group Phase
    std::optional<checkin::ClientFlag> flag = {};  ///< of group Flag; nothing for any flag but Away
    bool isChip = true;                 ///< worth a chip; the others are in the menu alone

    /// Whether the criteria hold this choice; Everybody is held where nothing else is.
    [[nodiscard]] bool isOn(const RosterCriteria& criteria) const;
    /// The criteria with this choice in place of the others of its group; what is typed stays.
    [[nodiscard]] RosterCriteria on(RosterCriteria criteria) const;
    /// The criteria without anything of this choice's group.
    [[nodiscard]] RosterCriteria off(RosterCriteria criteria) const;
};

/// What a roster can be filtered by, in the order of the chips: everybody, each coach, each phase, flagged, away, each other flag.
[[nodiscard]] std::vector<FilterChoice> filterChoices(const std::vector<clients::Coach>& coaches);

}  // namespace chalk::ui::roster
