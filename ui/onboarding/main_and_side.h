#pragma once

#include <QWidget>

class QBoxLayout;

namespace chalk::ui::common {
class Look;
}

namespace chalk::ui::onboarding {

/// A step's work, and beside it what follows from it. Where there is no room for both, the side goes below the work.
class MainAndSide : public QWidget {
    Q_OBJECT

public:
    /// Takes both.
    MainAndSide(const common::Look& look, QWidget* main, QWidget* side, QWidget* parent);

    void setNarrow(bool isNarrow);
    /// The height in sight. Beside each other the parts are no higher and scroll by themselves; below each other the whole scrolls.
    void setViewHeight(int height);

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void arrange();
    [[nodiscard]] bool isBelow() const;

    const common::Look& m_look;
    QWidget* m_main;
    QWidget* m_side;
    QBoxLayout* m_row;
    int m_viewHeight = QWIDGETSIZE_MAX;
    bool m_isNarrow = false;
};

}  // namespace chalk::ui::onboarding
