#pragma once

#include "ui/shell/place.h"

#include <optional>

class QSettings;
class QWidget;

namespace chalk::ui::common {
class Look;
}

namespace chalk::ui::shell {

/// What the window remembers from one run to the next: size and position, theme, text size and the last place. Settings that make
/// no sense are passed over.
class WindowMemory {
public:
    /// The settings outlive it; nothing of the studio is written into them.
    explicit WindowMemory(QSettings& settings) : m_settings(settings) {}

    void rememberWindow(const QWidget& window);
    /// False where nothing was remembered.
    bool restoreWindow(QWidget& window) const;

    void rememberLook(const common::Look& look);
    void restoreLook(common::Look& look) const;

    void rememberPlace(const Place& place);
    [[nodiscard]] std::optional<Place> place() const;

private:
    QSettings& m_settings;
};

}  // namespace chalk::ui::shell
