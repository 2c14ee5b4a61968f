#pragma once

#include "ui/week/week_geometry.h"

class QPainter;

namespace chalk::ui::week {

/// What is about to be moved, and where it would lie.
struct MoveGhost {
    chalk::week::Slot slot;
    int minutes = 60;
    QString names;
    bool isLegal = true;
    std::vector<chalk::week::Slot> closed;  ///< quarters of an hour where it may not begin; drawn grey
};

/// A conflict in words, and what would help.
struct ConflictWords {
    QString why;
    QString offer;  ///< may be empty
};

/// All that is drawn of a week.
struct WeekPicture {
    const WeekScene& scene;
    const WeekGeometry& geometry;
    const common::Theme& theme;
    int selected = -1;           ///< a block
    bool hasFocus = false;
    const MoveGhost* ghost = nullptr;
    ConflictWords conflict;      ///< said beside the block of the first fault, where there is room
};

/// Draws everything below the head.
void paintWeek(QPainter& painter, const WeekPicture& picture);
/// Draws the days and the coaches over what is scrolled below them.
void paintWeekHead(QPainter& painter, const WeekPicture& picture);
/// Draws one block.
void paintWeekBlock(QPainter& painter, const WeekPicture& picture, const WeekBlock& block);
/// The lines of a block of `lines`: names, the kind of a session that is no training, and `+2` for those that do not fit.
[[nodiscard]] QStringList blockLines(const WeekBlock& block, int lines);

}  // namespace chalk::ui::week
