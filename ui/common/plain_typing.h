#pragma once

class QKeyEvent;

namespace chalk::ui::common {

/// Whether the key only writes a character: a letter, a digit or a sign, with Shift or without. An editor accepts such a key's
/// QEvent::ShortcutOverride, so that it is no shortcut of the page or the window while the editor has the focus.
[[nodiscard]] bool isPlainTyping(const QKeyEvent& key);

}  // namespace chalk::ui::common
