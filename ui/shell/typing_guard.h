#pragma once

class QWidget;

namespace chalk::ui::shell {

/// Whether the person is in the middle of something that reading the page again could take away: words that are typed and not kept yet, a dialog,
/// a menu. What stands in `filter`, the field that filters the page, is no such thing.
[[nodiscard]] bool isInTheMiddle(const QWidget* filter);

}  // namespace chalk::ui::shell
