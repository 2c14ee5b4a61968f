#pragma once

#include "ui/common/theme.h"

#include <QObject>

class QApplication;

namespace chalk::ui::common {

/// The look of the program as it is now. Made once, handed by reference to whatever paints, and it says when it changed.
/// A widget reads `theme()` in its paintEvent and connects `changed` to its update.
class Look : public QObject {
    Q_OBJECT

public:
    static constexpr int kLeastTextPercent = 90;
    static constexpr int kMostTextPercent = 150;

    explicit Look(QObject* parent = nullptr);

    [[nodiscard]] const Theme& theme() const { return m_theme; }
    /// The black and white theme for paper, at 100 %.
    [[nodiscard]] Theme printTheme() const;

    /// Paper or Slate.
    void setTone(Tone tone);
    /// The other of Paper and Slate.
    void toggleTone();
    /// Kept between the bounds above.
    void setTextPercent(int percent);

Q_SIGNALS:
    void changed();

private:
    std::shared_ptr<const IconStore> m_icons;
    Theme m_theme;
};

/// Dresses every standard widget: Fusion, palette, style sheet (see style_sheet.h) and the font.
void applyTheme(QApplication& application, const Theme& theme);

}  // namespace chalk::ui::common
