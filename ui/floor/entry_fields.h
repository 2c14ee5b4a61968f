#pragma once

#include "ui/floor/floor_case.h"
#include "ui/floor/lift_boxes.h"

#include <tl/expected.hpp>

#include <QString>

namespace chalk::ui::floor {

/// What stands in a field of the lift, to be typed over; empty where nothing was said.
[[nodiscard]] QString fieldText(const FloorLift& lift, LiftField field, int set);

/// The lift's line with one field typed anew; what the line does not say is as planned, and a note stays. An empty amount takes its set away.
/// Else why the text makes no sense.
[[nodiscard]] tl::expected<QString, QString> lineWithField(const FloorLift& lift, LiftField field, int set, const QString& text);

}  // namespace chalk::ui::floor
