#pragma once

#include "core/base/id.h"
#include "core/lifts/pattern.h"
#include "core/progression/stage.h"

#include <QString>

#include <array>
#include <cstdint>
#include <optional>
#include <vector>

namespace chalk::ui::board {

/// The small sign at the corner of a block.
enum class BoardTag : std::uint8_t { None, Pain, Plateau, LighterOption, Rescreen };

/// The dashed box: what is still needed before a stage.
struct BoardNeed {
    progression::Stage stage = progression::Stage::Control;
    QString title;  ///< `3 × 12`
    QString note;   ///< shown in place of the pips where nothing is counted
    int done = 0;
    int needed = 0;            ///< 0: nothing is counted
    bool isWarned = false;     ///< amber: a coach's decision is due first
    bool isNextCycle = false;  ///< the way there leads round and down
};

/// A rung that the lift has stood on, and since when.
struct BoardDate {
    QString text;  ///< `2 Nov`; empty where the day is not known
    bool isReached = false;
};

/// One lift as the stage board shows it: words and places, ready to paint.
struct BoardColumn {
    base::LiftId lift;  ///< none for a pattern that has no lift yet
    lifts::Pattern pattern = lifts::Pattern::Squat;
    QString name;
    QString spoken;  ///< the whole column in one sentence, for screen readers
    progression::Stage stage = progression::Stage::Pattern;
    int cycle = 1;
    QString title;            ///< first line of the block: `77.5 kg`
    QString sub;              ///< second line: `3 × 8`
    QString foot;             ///< beside the stage's shape: `cycle 2`
    bool canScreen = false;   ///< a pattern without a lift: its box opens the screen
    bool isOutlined = false;  ///< on hold: the block is an outline
    BoardTag tag = BoardTag::None;
    std::optional<BoardNeed> need;
    std::array<BoardDate, progression::kStages.size()> dates;  ///< by stage number - 1

    [[nodiscard]] bool isEmpty() const { return lift.isNone(); }
    [[nodiscard]] const BoardDate& dateOf(progression::Stage s) const
    {
        return dates[static_cast<std::size_t>(progression::numberOf(s) - 1)];
    }
    /// Whether a date is written on the rung: not where the block or the dashed box stands.
    [[nodiscard]] bool isDateShown(progression::Stage s) const { return s != stage && dateOf(s).isReached && !(need && need->stage == s); }
};

using BoardColumns = std::vector<BoardColumn>;

}  // namespace chalk::ui::board
