#pragma once

#include "core/sessions/card_content.h"
#include "ui/print/runs.h"

#include <QString>

namespace chalk::ui::print {

// What a card says of one lift, in words: what each line holds and how it gets shorter where room is short.

/// `Rep build, cycle 2`, or the week of a plan that leads.
[[nodiscard]] QString stageText(const sessions::CardLift& lift);
/// `5`, or `5/12` of a plan, where there is no room for the words.
[[nodiscard]] QString shortStageText(const sessions::CardLift& lift);
/// The large line: load, sets and reps, or what stands in their place.
[[nodiscard]] Runs largeLine(const sessions::CardLift& lift);
/// The line below it, from the longest way to say it to the shortest: rest, plates or equipment.
[[nodiscard]] std::vector<Runs> detailLines(const sessions::CardLift& lift, bool saysReserve);
/// Where rest and plates do not fit into one line: the rest alone, and the plates alone, the longer way first.
[[nodiscard]] Runs restLine(const sessions::CardLift& lift, bool saysReserve);
[[nodiscard]] std::vector<Runs> platesLines(const sessions::CardLift& lift);
/// The line below the numbers where there is only one and it is short, from the longest way to say it to the shortest: rest, a pause that is
/// asked for, plates or equipment; plates go before they are cut.
[[nodiscard]] std::vector<Runs> compactDetails(const sessions::CardLift& lift, bool saysReserve);
/// The warm-up from all sets to the heaviest alone, the longest way first; none where there is none.
[[nodiscard]] std::vector<Runs> warmUpLines(const sessions::CardLift& lift);
/// The last line, which goes first where room is short, from the longest way to say it to the shortest: the pause that is asked
/// for, else the warm-up, else cues. May be none.
[[nodiscard]] std::vector<Runs> lastLines(const sessions::CardLift& lift);

}  // namespace chalk::ui::print
