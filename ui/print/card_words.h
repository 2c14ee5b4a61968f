#pragma once

#include "core/sessions/card_content.h"
#include "ui/print/runs.h"

#include <QString>

namespace chalk::ui::print {

// What a card says above and below its lifts, in words.

/// `Tue 24 Nov 2026, 09:00 · Ines · Rack 1`.
[[nodiscard]] QString whenAndWhere(const sessions::CardContent& card);
/// `Stop with 2 reps left. The framed number moves today.`, and the shorter ways to say it; none for a card without lifts.
[[nodiscard]] std::vector<Runs> instructions(const sessions::CardContent& card);
/// Whether the loaded lifts of the card do not stop at the same reps in reserve, so that each must say its own.
[[nodiscard]] bool hasMixedReserves(const sessions::CardContent& card);
/// `5 min easy, bodyweight squat × 8`; empty where there is no drill.
[[nodiscard]] QString drillText(const sessions::CardContent& card);
/// `card 1 of 2`.
[[nodiscard]] QString countText(int sheet, int sheets);
/// `session 58`, with ` · card 1 of 2` where there is more than one.
[[nodiscard]] QString sessionText(const sessions::CardContent& card, int sheet, int sheets);

}  // namespace chalk::ui::print
