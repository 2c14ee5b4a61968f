#pragma once

#include "core/sessions/entry_line.h"
#include "ui/floor/floor_case.h"

#include <QString>

#include <optional>

namespace chalk::ui::floor {

/// An entry as a line that reads back as the same: for a correction.
[[nodiscard]] QString lineOf(const progression::Exposure& exposure, const FloorLift& lift);
/// The record that a line stands for. A correction keeps what the line cannot say: the warm-up, and rests that differ.
[[nodiscard]] std::optional<progression::EventBody> exposureOf(const sessions::EntryLine& line, const FloorLift& lift);

}  // namespace chalk::ui::floor
