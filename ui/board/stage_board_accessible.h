#pragma once

namespace chalk::ui::board {

/// Makes screen readers see a StageBoard as a list with one item per lift, each a whole sentence. May be called any number
/// of times.
void installBoardAccessibility();

}  // namespace chalk::ui::board
