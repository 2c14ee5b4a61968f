#include "ui/board/stage_board.h"

#include "ui/board/board_text.h"
#include "ui/board/stage_board_accessible.h"
#include "ui/common/formats.h"
#include "ui/common/look.h"

#include <QAccessible>
#include <QHelpEvent>
#include <QKeyEvent>
#include <QPainter>
#include <QScrollBar>
#include <QToolTip>
#include <QVariantAnimation>
#include <QWheelEvent>

#include <algorithm>

namespace chalk::ui::board {

namespace {

using progression::Stage;

constexpr int kGlideMs = 180;
constexpr int kScrollBarHeight = 10;

bool isPointable(BoardPart part)
{
    return part != BoardPart::Nothing && part != BoardPart::Column;
}

}  // namespace

StageBoard::StageBoard(const common::Look& look, QWidget* parent)
    : QWidget(parent), m_look(look), m_glide(new QVariantAnimation(this)), m_scroll(new QScrollBar(Qt::Horizontal, this))
{
    installBoardAccessibility();
    setFocusPolicy(Qt::StrongFocus);
    setMouseTracking(true);
    setAccessibleName(tr("Stage board"));
    m_glide->setDuration(kGlideMs);
    m_glide->setEasingCurve(QEasingCurve::OutCubic);
    m_scroll->setFocusPolicy(Qt::NoFocus);
    m_scroll->hide();
    connect(m_glide, &QVariantAnimation::valueChanged, this, [this](const QVariant& value) {
        m_focus.washAt = value.toDouble();
        update();
    });
    connect(m_scroll, &QScrollBar::valueChanged, this, qOverload<>(&StageBoard::update));
    connect(&m_look, &common::Look::changed, this, [this] {
        updateGeometry();
        placeScrollBar();
        update();
    });
}

void StageBoard::setColumns(BoardColumns columns)
{
    const base::LiftId before = m_focus.selected >= 0 ? m_columns[static_cast<std::size_t>(m_focus.selected)].lift : base::LiftId();
    m_columns = std::move(columns);
    const auto same = std::find_if(m_columns.begin(), m_columns.end(),
                                   [before](const BoardColumn& column) { return !before.isNone() && column.lift == before; });
    m_focus.selected = -1;
    m_focus.rung.reset();
    placeScrollBar();
    if (!m_columns.empty()) {
        select(same == m_columns.end() ? 0 : static_cast<int>(same - m_columns.begin()));
    }
    QAccessibleEvent changed(this, QAccessible::ObjectReorder);
    QAccessible::updateAccessibility(&changed);
    updateGeometry();
    update();
}

BoardGeometry StageBoard::geometryNow() const
{
    const double scrollBar = m_scroll->isVisibleTo(this) ? kScrollBarHeight : 0;
    return {QSizeF(width(), height() - scrollBar), static_cast<int>(m_columns.size()), m_look.theme().scaled(1),
            static_cast<double>(m_scroll->value())};
}

QSize StageBoard::sizeHint() const
{
    return {qRound(m_look.theme().scaled(900)), qRound(m_look.theme().scaled(640))};
}

QSize StageBoard::minimumSizeHint() const
{
    return {qRound(m_look.theme().scaled(400)), qRound(m_look.theme().scaled(86 + 7 * 46 + 6))};
}

void StageBoard::select(int column)
{
    if (column < 0 || column >= static_cast<int>(m_columns.size())) {
        return;
    }
    m_scroll->setValue(qRound(geometryNow().scrollToShow(column)));
    if (column == m_focus.selected) {
        return;
    }
    const bool isFirst = m_focus.selected < 0;
    m_focus.selected = column;
    setRung(std::nullopt);
    if (isFirst || !m_hasMotion || !isVisible()) {
        m_glide->stop();
        m_focus.washAt = column;
    } else {
        moveWash(column);
    }
    update();
    QAccessibleEvent focused(this, QAccessible::Focus);
    focused.setChild(column);
    QAccessible::updateAccessibility(&focused);
    Q_EMIT selectionChanged(column);
}

void StageBoard::moveWash(double to)
{
    m_glide->stop();
    m_glide->setStartValue(m_focus.washAt);
    m_glide->setEndValue(to);
    m_glide->start();
}

void StageBoard::setRung(std::optional<Stage> stage)
{
    if (stage != m_focus.rung) {
        m_focus.rung = stage;
        update();
        Q_EMIT rungRead(stage);
    }
}

void StageBoard::readRung(int step)
{
    if (m_focus.selected < 0 || m_columns[static_cast<std::size_t>(m_focus.selected)].isEmpty()) {
        return;
    }
    const Stage from = m_focus.rung.value_or(m_columns[static_cast<std::size_t>(m_focus.selected)].stage);
    const int number = progression::numberOf(from) + (m_focus.rung ? step : 0);
    setRung(static_cast<Stage>(std::clamp(number, 1, progression::numberOf(Stage::RestCut))));
}

bool StageBoard::stopReading()
{
    const bool wasReading = m_focus.rung.has_value();
    setRung(std::nullopt);
    return wasReading;
}

void StageBoard::openSelected()
{
    if (m_focus.selected < 0) {
        return;
    }
    const BoardColumn& column = m_columns[static_cast<std::size_t>(m_focus.selected)];
    if (column.isEmpty()) {
        if (column.canScreen) {
            Q_EMIT screenAsked(column.pattern);
        }
    } else {
        Q_EMIT sessionsAsked(m_focus.selected, m_focus.rung);
    }
}

void StageBoard::activate(const BoardBox& box)
{
    if (box.part == BoardPart::Nothing) {
        return;
    }
    select(box.column);
    switch (box.part) {
    case BoardPart::Date:
        Q_EMIT sessionsAsked(box.column, box.stage);
        break;
    case BoardPart::Need:
        Q_EMIT evidenceAsked(box.column);
        break;
    case BoardPart::Screen:
        Q_EMIT screenAsked(m_columns[static_cast<std::size_t>(box.column)].pattern);
        break;
    case BoardPart::Block:
    case BoardPart::Head:
    case BoardPart::Column:
        setRung(std::nullopt);
        break;
    case BoardPart::Nothing:
        break;
    }
}

void StageBoard::paintEvent(QPaintEvent* /*event*/)
{
    QPainter painter(this);
    paintBoard(painter, geometryNow(), m_columns, m_focus, m_look.theme());
}

void StageBoard::keyPressEvent(QKeyEvent* event)
{
    if (event->modifiers() != Qt::NoModifier && event->modifiers() != Qt::KeypadModifier) {
        return QWidget::keyPressEvent(event);
    }
    switch (event->key()) {  // a switch over a number, not over an enum: other keys go on to the page
    case Qt::Key_Left:
        return select(m_focus.selected - 1);
    case Qt::Key_Right:
        return select(m_focus.selected + 1);
    case Qt::Key_Home:
        return select(0);
    case Qt::Key_End:
        return select(static_cast<int>(m_columns.size()) - 1);
    case Qt::Key_Up:
        return readRung(1);
    case Qt::Key_Down:
        return readRung(-1);
    case Qt::Key_Return:
    case Qt::Key_Enter:
        return openSelected();
    case Qt::Key_Escape:
        if (stopReading()) {
            return;
        }
        break;
    default:
        break;
    }
    QWidget::keyPressEvent(event);
}

void StageBoard::mousePressEvent(QMouseEvent* event)
{
    if (event->button() == Qt::LeftButton) {
        activate(geometryNow().boxAt(event->position(), m_columns));
    }
}

void StageBoard::mouseMoveEvent(QMouseEvent* event)
{
    const BoardPart part = geometryNow().boxAt(event->position(), m_columns).part;
    setCursor(isPointable(part) ? Qt::PointingHandCursor : Qt::ArrowCursor);
}

void StageBoard::wheelEvent(QWheelEvent* event)
{
    const QPoint turned = event->angleDelta();
    const int by = turned.x() != 0 ? turned.x() : turned.y();
    if (!m_scroll->isVisible() || by == 0) {
        return event->ignore();
    }
    m_scroll->setValue(m_scroll->value() - by / 2);
    event->accept();
}

void StageBoard::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    placeScrollBar();
}

void StageBoard::focusInEvent(QFocusEvent* event)
{
    m_focus.hasRing =
        event->reason() == Qt::TabFocusReason || event->reason() == Qt::BacktabFocusReason || event->reason() == Qt::ShortcutFocusReason;
    QWidget::focusInEvent(event);
    update();
}

void StageBoard::focusOutEvent(QFocusEvent* event)
{
    m_focus.hasRing = false;
    QWidget::focusOutEvent(event);
    update();
}

void StageBoard::placeScrollBar()
{
    const BoardGeometry geometry(QSizeF(width(), height()), static_cast<int>(m_columns.size()), m_look.theme().scaled(1), 0);
    const int range = qCeil(geometry.scrollRange());
    const QRectF area = geometry.columnsArea();
    m_scroll->setRange(0, range);
    m_scroll->setPageStep(qRound(area.width()));
    m_scroll->setSingleStep(qRound(geometry.columnWidth()));
    m_scroll->setGeometry(qRound(area.x()), height() - kScrollBarHeight, qRound(area.width()), kScrollBarHeight);
    m_scroll->setVisible(range > 0);
    if (m_focus.selected >= 0) {
        m_scroll->setValue(qRound(geometryNow().scrollToShow(m_focus.selected)));
    }
}

QString StageBoard::toolTipAt(QPoint point) const
{
    const BoardBox box = geometryNow().boxAt(point, m_columns);
    if (box.column < 0) {
        return {};
    }
    const BoardColumn& column = m_columns[static_cast<std::size_t>(box.column)];
    return box.part == BoardPart::Date ? tr("%1 since %2").arg(common::stageName(box.stage), column.dateOf(box.stage).text) : column.spoken;
}

bool StageBoard::event(QEvent* event)
{
    if (event->type() == QEvent::ToolTip) {
        const auto* help = static_cast<QHelpEvent*>(event);
        QToolTip::showText(help->globalPos(), toolTipAt(help->pos()), this);
        return true;
    }
    return QWidget::event(event);
}

}  // namespace chalk::ui::board
