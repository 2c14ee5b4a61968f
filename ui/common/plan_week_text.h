#pragma once

#include "core/progression/lift_state.h"

#include <QString>

namespace chalk::ui::common {

/// `Plan week 5 of 12`, `Plan week 4 of 12, lighter`, `Plan week 12 of 12, test`.
[[nodiscard]] QString planWeekText(const progression::BlockMark& week);
/// The same inside a sentence: `plan week 5 of 12`.
[[nodiscard]] QString planWeekInSentence(const progression::BlockMark& week);

}  // namespace chalk::ui::common
