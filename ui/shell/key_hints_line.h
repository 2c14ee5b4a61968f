#pragma once

#include "ui/shell/page.h"

#include <QWidget>

#include <vector>

namespace chalk::ui::common {
class Look;
}

namespace chalk::ui::shell {

/// The keys of the page in the ledge, drawn from the right; those that do not fit are left out, the last first.
class KeyHintsLine : public QWidget {
    Q_OBJECT

public:
    explicit KeyHintsLine(const common::Look& look, QWidget* parent = nullptr);

    void setHints(std::vector<KeyHint> hints);
    [[nodiscard]] QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    [[nodiscard]] double hintWidth(const KeyHint& hint) const;

    const common::Look& m_look;
    std::vector<KeyHint> m_hints;
};

}  // namespace chalk::ui::shell
