#pragma once

#include "core/store/people_merge.h"

#include <QString>

namespace chalk::ui::people {

/// What goes where when two clients become one, a line for each thing.
[[nodiscard]] QString mergeText(const store::MergePlan& plan);

}  // namespace chalk::ui::people
