#include "ui/common/loading_rows.h"

#include "ui/common/lift_strip.h"
#include "ui/common/look.h"

#include <QPainter>
#include <QTimer>

namespace chalk::ui::common {

namespace {

constexpr double kLoadingRowHeight = 52;
constexpr double kLoadingWidths[] = {130, 104, 142, 118};

}  // namespace

LoadingRows::LoadingRows(const Look& look, QWidget* parent) : QWidget(parent), m_look(look), m_patience(new QTimer(this))
{
    setAccessibleName(tr("Loading"));
    m_patience->setSingleShot(true);
    m_patience->setInterval(300);
    connect(m_patience, &QTimer::timeout, this, &QWidget::show);
    connect(&look, &Look::changed, this, qOverload<>(&QWidget::update));
    hide();
}

void LoadingRows::begin()
{
    m_patience->start();
}

void LoadingRows::end()
{
    m_patience->stop();
    hide();
}

void LoadingRows::paintEvent(QPaintEvent* /*event*/)
{
    Theme pale = m_look.theme();  // a ladder on which every rung is still to come
    pale.line2 = pale.line;
    const double row = pale.scaled(kLoadingRowHeight);
    const double stripLeft = width() - liftStripSize(pale).width() - pale.scaled(16);
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillRect(rect(), pale.surface);
    std::size_t index = 0;
    for (double top = 0; top < height(); top += row, index = (index + 1) % std::size(kLoadingWidths)) {
        painter.setPen(Qt::NoPen);
        painter.setBrush(pale.sunken);
        const double left = pale.scaled(16);
        painter.drawRoundedRect(QRectF(left, top + pale.scaled(13), pale.scaled(kLoadingWidths[index]), pale.scaled(10)), 5, 5);
        painter.drawRoundedRect(QRectF(left, top + pale.scaled(30), pale.scaled(84), pale.scaled(8)), 4, 4);
        paintUnclimbedStrip(painter, QRectF(stripLeft, top, liftStripSize(pale).width(), row), pale);
        painter.fillRect(QRectF(0, top + row - 1, width(), 1), pale.line);
    }
}

}  // namespace chalk::ui::common
