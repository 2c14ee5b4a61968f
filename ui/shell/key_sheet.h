#pragma once

#include "ui/shell/overlay.h"
#include "ui/shell/page.h"

class QGridLayout;

namespace chalk::ui::shell {

/// A heading and the keys below it.
struct KeySection {
    QString heading;
    std::vector<KeyHint> keys;
};

/// F1: the keys of this page and of the window, on a card.
class KeySheet : public Overlay {
    Q_OBJECT

public:
    KeySheet(const common::Look& look, QWidget* window);

    /// Opens with these sections, side by side.
    void start(const std::vector<KeySection>& sections);

protected:
    [[nodiscard]] QRect cardRect() const override;
    void layCard() override;

private:
    void addSection(const KeySection& section, int column);

    QWidget* m_body;
};

}  // namespace chalk::ui::shell
