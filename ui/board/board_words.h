#pragma once

#include "ui/board/board_column.h"
#include "ui/board/client_case.h"
#include "ui/common/rule_words.h"

#include <QString>

namespace chalk::ui::board {

/// The lift as a column of the board.
[[nodiscard]] BoardColumn columnOf(const LiftCase& lift);
/// The same for a client who waits for clearance: where the lift stands, and nothing of what would come next.
[[nodiscard]] BoardColumn lockedColumnOf(const LiftCase& lift);
/// How far a pattern without a lift is.
enum class ScreenStanding : std::uint8_t {
    Open,   ///< nothing was judged yet
    Hurts,  ///< pain was named: no lift starts
    Judged  ///< looked at, and no lift was begun
};

/// A pattern that has no lift yet; `canScreen`: its screen can be opened from here.
[[nodiscard]] BoardColumn emptyColumnOf(lifts::Pattern pattern, ScreenStanding standing, bool canScreen);
/// Why there is nothing to prescribe for it.
[[nodiscard]] QString nothingToPrescribe(ScreenStanding standing);
[[nodiscard]] ScreenStanding standingOf(const ClientCase& client, lifts::Pattern pattern);
/// Every lift of the client, and each pattern without one, in the order of the patterns.
[[nodiscard]] BoardColumns columnsOf(const ClientCase& client);

/// How the lift's own loads are written: `77.5 kg`, `2 × 12 kg`, `+10 kg`.
[[nodiscard]] QString loadTextOf(const LiftCase& lift, base::Load load);
/// Sets and reps of a prescription: `3 × 8`, `2 × 5–10`, `3 × 32 m`.
[[nodiscard]] QString setsTextOf(const LiftCase& lift, const progression::Prescription& next);
/// Reps in the lift's measure: `8`, `24 s`.
[[nodiscard]] QString amountTextOf(const LiftCase& lift, base::Reps reps);
/// What the evidence aims at, as short as it goes: `2 × 12`, `5–6 reps`, `50 kg`, `Pauses`.
[[nodiscard]] QString needTitleOf(const LiftCase& lift);
/// What the rule sentences need to know about a lift; refers into it.
[[nodiscard]] common::RuleFacts ruleFactsOf(const LiftCase& lift);
/// The same with what one entry of the lift's log says.
[[nodiscard]] common::RuleFacts ruleFactsOf(const LiftCase& lift, const LogEntry& entry);

/// `Back squat, stage 5 Rep build, cycle 2, next 3 by 8 at 77.5 kilograms, needs 3 by 12`: the lift in one sentence.
[[nodiscard]] QString spokenOf(const LiftCase& lift);

}  // namespace chalk::ui::board
