#pragma once

#include "core/planning/group_session.h"
#include "ui/print/sheet.h"

namespace chalk::ui::print {

/// Below the grid of a group sheet: who is where, who waits, how each felt. Laid out from the top of `area`; answers how high it is, and may
/// be higher than `area`.
double addGroupFoot(Sheet& sheet, const planning::GroupSession& group, const QRectF& area);

}  // namespace chalk::ui::print
