#pragma once

#include "ui/shell/overlay.h"
#include "ui/shell/page.h"

class QGridLayout;
class QScrollArea;

namespace chalk::ui::shell {

/// A heading and the keys below it.
struct KeySection {
    QString heading;
    std::vector<KeyHint> keys;  ///< one without keys is listed all the same
};

/// F1: every action of this page and of the window with its keys, on a card. Arrows scroll it where the window is small.
class KeySheet : public Overlay {
    Q_OBJECT

public:
    KeySheet(const common::Look& look, QWidget* window);

    /// Opens with these sections: the first in a column of its own, the others in two more.
    void start(const std::vector<KeySection>& sections);

protected:
    [[nodiscard]] QRect cardRect() const override;
    void layCard() override;
    [[nodiscard]] QWidget* focusTarget() override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    [[nodiscard]] int addSection(QGridLayout& grid, const KeySection& section, int row, int column);

    QScrollArea* m_scroll;
    QWidget* m_body = nullptr;
};

}  // namespace chalk::ui::shell
