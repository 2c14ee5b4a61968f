#pragma once

#include "ui/common/tags.h"

#include <QWidget>

namespace chalk::ui::common {

class Look;

/// One key drawn as a cap, as a widget: it is as large as it has to be and never takes the focus.
class KeyCap : public QWidget {
    Q_OBJECT

public:
    KeyCap(const Look& look, KeyCapView view, QWidget* parent = nullptr);

    [[nodiscard]] QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void fit();

    const Look& m_look;
    KeyCapView m_view;
};

}  // namespace chalk::ui::common
