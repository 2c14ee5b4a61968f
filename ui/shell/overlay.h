#pragma once

#include <QPointer>
#include <QWidget>

namespace chalk::ui::common {
class Look;
}

namespace chalk::ui::shell {

/// A sheet that lies over the window while it is open: a card on top of the page, which stays as it is and is not dimmed. Esc or
/// a click beside the card closes it, and the focus goes back to where it was.
class Overlay : public QWidget {
    Q_OBJECT

public:
    Overlay(const common::Look& look, QWidget* window);

    /// Shows itself over the whole window and gives the focus to `focusTarget()`.
    void open();
    void close();

Q_SIGNALS:
    void closed();

protected:
    /// Where the card is, in the overlay's coordinates.
    [[nodiscard]] virtual QRect cardRect() const = 0;
    /// Lays out what is on the card; called when the window or the look changed.
    virtual void layCard() = 0;
    [[nodiscard]] virtual QWidget* focusTarget() { return this; }
    /// Lays itself over the window anew; for a card whose size changed.
    void fit();
    [[nodiscard]] const common::Look& look() const { return m_look; }

    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;
    bool focusNextPrevChild(bool next) override;

private:
    const common::Look& m_look;
    QPointer<QWidget> m_focusBefore;
};

}  // namespace chalk::ui::shell
