#pragma once

#include <QObject>

class QMenuBar;

namespace chalk::ui::shell {

/// Keeps a menu bar out of sight until Alt is pressed and let go on its own, and puts it away again when it is left.
class MenuReveal : public QObject {
    Q_OBJECT

public:
    /// The menu bar outlives it; it watches the keys of the bar's window.
    explicit MenuReveal(QMenuBar* bar);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    [[nodiscard]] bool isForOurWindow(QObject* watched) const;
    void toggle();

    QMenuBar* m_bar;
    bool m_isAltAlone = false;
};

}  // namespace chalk::ui::shell
