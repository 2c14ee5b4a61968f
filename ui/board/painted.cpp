#include "ui/board/painted.h"

#include "ui/common/look.h"

#include <QPainter>
#include <QtMath>

namespace chalk::ui::board {

Painted::Painted(const common::Look& look, QWidget* parent) : QWidget(parent), m_look(look)
{
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
    connect(&look, &common::Look::changed, this, [this] {
        updateGeometry();
        update();
    });
}

void Painted::setPicture(Measure measure, Paint paint, const QString& words)
{
    m_measure = std::move(measure);
    m_paint = std::move(paint);
    setAccessibleName(words);
    updateGeometry();
    update();
}

QSize Painted::sizeHint() const
{
    if (!m_measure) {
        return {0, 0};
    }
    const QSizeF size = m_measure(m_look.theme());
    return {qCeil(size.width()), qCeil(size.height())};
}

QSize Painted::minimumSizeHint() const
{
    return {0, sizeHint().height()};
}

void Painted::paintEvent(QPaintEvent* /*event*/)
{
    if (m_paint) {
        QPainter painter(this);
        painter.setRenderHint(QPainter::Antialiasing);
        m_paint(painter, QRectF(rect()), m_look.theme());
    }
}

}  // namespace chalk::ui::board
