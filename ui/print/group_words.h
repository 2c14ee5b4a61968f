#pragma once

#include "core/planning/group_session.h"
#include "ui/print/runs.h"

#include <QString>

namespace chalk::ui::print {

// What a group sheet says, in words.

/// `Rack`.
[[nodiscard]] QString stationName(lifts::Station station);
/// `Rack 2`, or `Rack` where the group uses one only.
[[nodiscard]] QString placeName(const planning::GroupPlace& place);
/// `A` for the first place, `B` for the next; `A2` after `Z`.
[[nodiscard]] QString placeLetter(std::size_t place);
/// `Tuesday 24 November, 09:00`.
[[nodiscard]] QString groupTitle(const planning::GroupSession& group);
/// `Ines · 3 clients · to about 10:04 · best order found, not proved`, and shorter ways to say it.
[[nodiscard]] std::vector<Runs> groupLines(const planning::GroupSession& group);
/// A card with the lifts of all: for what is said once for everybody.
[[nodiscard]] sessions::CardContent everybodysLifts(const planning::GroupSession& group);
/// `9:16`: when a turn begins by the clock. The first lifts begin after the easy minutes where a card asks for them.
[[nodiscard]] QString beginText(const planning::GroupSession& group, const planning::GroupTurn& turn);
/// What each client is called where room is short: the first name where that tells them apart.
[[nodiscard]] QStringList shortNames(const planning::GroupSession& group);
/// `Callum waits 2:30 before Bench press (C)`, one for each wait; `Nobody waits.` where there is none.
[[nodiscard]] QStringList waitTexts(const planning::GroupSession& group);

}  // namespace chalk::ui::print
