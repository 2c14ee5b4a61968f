#pragma once

#include "ui/common/theme.h"

#include <QWidget>

#include <functional>

namespace chalk::ui::common {
class Look;
}

namespace chalk::ui::board {

/// A widget around a free paint function: as high as its picture, and as wide as that or wider. It never takes the focus;
/// what it shows stands in its accessible name.
class Painted : public QWidget {
    Q_OBJECT

public:
    using Measure = std::function<QSizeF(const common::Theme&)>;
    using Paint = std::function<void(QPainter&, const QRectF&, const common::Theme&)>;

    /// `look` outlives the widget.
    explicit Painted(const common::Look& look, QWidget* parent = nullptr);

    /// Both are kept and called again when the look changes.
    void setPicture(Measure measure, Paint paint, const QString& words);

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    const common::Look& m_look;
    Measure m_measure;
    Paint m_paint;
};

}  // namespace chalk::ui::board
