#pragma once

#include "core/sessions/card_content.h"
#include "ui/print/sheet.h"

namespace chalk::ui::print {

// The parts that a card is laid out from, top to bottom. Lengths in millimetres.

/// The least height of a lift's row, and the height from which it takes its last line and its full size.
inline constexpr double kLeastRowHeight = 17.5;
inline constexpr double kFullRowHeight = 27;
inline constexpr double kFootHeight = 13;

/// What stands above the lifts: name, when and where, code, cautions, drills. Answers where the lifts can begin.
double addHead(Sheet& sheet, const sessions::CardContent& card, const QRectF& area, bool withDrills);
/// One lift: what to do at the left, boxes to write in at the right. `number` is counted from 1 over the whole card.
void addLiftRow(Sheet& sheet, const sessions::CardLift& lift, int number, const QRectF& row, bool saysReserve);
/// Lines to write on, where the rows leave room.
void addNotes(Sheet& sheet, const QRectF& area);
/// How it felt, pain, and which session it is. `session` may be empty.
void addFoot(Sheet& sheet, const QString& session, const QRectF& area);

/// How a client felt, for a sheet of several: the name in `nameWidth` millimetres, words to ring, pain, a line to write on.
void addFeltRow(Sheet& sheet, const QString& name, double nameWidth, const QRectF& line);
/// A rule over the whole width of `area` at `y`.
void addRule(Sheet& sheet, const QRectF& area, double y);

}  // namespace chalk::ui::print
