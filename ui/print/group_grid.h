#pragma once

#include "core/planning/group_session.h"
#include "ui/print/sheet.h"

namespace chalk::ui::print {

// The grid of a group sheet: a column for each client, a row for each turn.

/// Heads of the columns: name and cautions. Answers how high they are; `area` begins at their top and is as wide as the grid.
double addGroupHeads(Sheet& sheet, const planning::GroupSession& group, const QRectF& area);
/// The most turns that anybody has.
[[nodiscard]] std::size_t turnRows(const planning::GroupSession& group);
/// The least height of a row of turns in a grid of `width` millimetres.
[[nodiscard]] double groupRowHeight(const planning::GroupSession& group, std::size_t row, double width);
/// One row of turns in `area`, which is at least as high as that.
void addGroupRow(Sheet& sheet, const planning::GroupSession& group, std::size_t row, const QRectF& area);
/// The lines between the columns, from `area`'s top to its bottom.
void addGroupColumns(Sheet& sheet, const planning::GroupSession& group, const QRectF& area);

}  // namespace chalk::ui::print
