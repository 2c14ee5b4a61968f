#pragma once

#include "ui/board/client_case.h"
#include "ui/board/headline.h"
#include "ui/common/dials.h"
#include "ui/common/plate_stack.h"

#include <QString>

#include <optional>

namespace chalk::ui::board {

/// When the next exposure is: `today`, `Thu 26 Nov`, `next time`.
[[nodiscard]] QString whenTextOf(const ClientCase& client);
[[nodiscard]] HeadlineView headlineOf(const LiftCase& lift, const QString& when);
/// Load, reps, sets and rest of work; empty for a rehearsal or a hold.
[[nodiscard]] common::DialsView dialsOf(const LiftCase& lift);
/// The plates for the next load; nothing where the lift has no bar, or the bar cannot carry it.
[[nodiscard]] std::optional<common::PlateStackView> platesOf(const LiftCase& lift);
/// `each side of a 20 kg bar`, `one in each hand`, `pin at 47.5 kg`: what to set up.
[[nodiscard]] QString setUpTextOf(const LiftCase& lift);
/// What to mind while it is done, rich text: `Stop each set with <b>2 reps in reserve</b>.`
[[nodiscard]] QString reserveHtmlOf(const LiftCase& lift);
/// Why this is next, one or two sentences.
[[nodiscard]] QString whyTextOf(const LiftCase& lift);
/// The record that decided it: `Thu 19 Nov: 3, 4 at 72.5, 1 left, steady`. Empty where none did.
[[nodiscard]] QString whyRecordTextOf(const LiftCase& lift);

}  // namespace chalk::ui::board
