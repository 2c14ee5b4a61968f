#pragma once

#include <QAbstractButton>

class QMenu;

namespace chalk::ui::common {
class Look;
}

namespace chalk::ui::roster {

/// A word that opens a menu, with an arrow behind it: what is chosen now.
class MenuButton : public QAbstractButton {
    Q_OBJECT

public:
    /// `look` outlives the button.
    explicit MenuButton(const common::Look& look, QWidget* parent = nullptr);

    /// Opens under the right end of the button. The button does not own it.
    void setMenu(QMenu* menu) { m_menu = menu; }
    [[nodiscard]] QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;
    void enterEvent(QEnterEvent* event) override;
    void leaveEvent(QEvent* event) override;

private:
    void openMenu();

    const common::Look& m_look;
    QMenu* m_menu = nullptr;
};

}  // namespace chalk::ui::roster
