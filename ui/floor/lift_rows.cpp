#include "ui/floor/lift_rows.h"

#include "ui/common/icon_store.h"
#include "ui/common/look.h"
#include "ui/common/stage_glyph.h"
#include "ui/floor/lift_boxes.h"

#include <QAbstractItemView>
#include <QPainter>
#include <QPainterPath>

#include <algorithm>

namespace chalk::ui::floor {

namespace {

using common::TextStyle;
using common::Theme;

constexpr double kRowHeight = 55;
constexpr double kRowWithNext = 80;

QString elided(const QString& text, const QFont& font, double width)
{
    return QFontMetricsF(font).elidedText(text, Qt::ElideRight, width);
}

/// `skipped today: no time`.
QString skippedText(const LiftRow& lift)
{
    return lift.skipWhy.isEmpty() ? LiftRowDelegate::tr("skipped today") : LiftRowDelegate::tr("skipped today: %1").arg(lift.skipWhy);
}

}  // namespace

void LiftRowsModel::setRows(std::vector<LiftRow> rows)
{
    if (rows.size() == m_rows.size()) {
        for (int i = 0; i < rowCount(); ++i) {
            setRow(i, std::move(rows[static_cast<std::size_t>(i)]));
        }
        return;
    }
    beginResetModel();
    m_rows = std::move(rows);
    endResetModel();
}

void LiftRowsModel::setRow(int at, LiftRow row)
{
    if (row == m_rows[static_cast<std::size_t>(at)]) {
        return;
    }
    m_rows[static_cast<std::size_t>(at)] = std::move(row);
    Q_EMIT dataChanged(index(at), index(at));
}

int LiftRowsModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

QVariant LiftRowsModel::data(const QModelIndex& at, int role) const
{
    if (!at.isValid()) {
        return {};
    }
    const LiftRow& lift = row(at.row());
    if (role == Qt::DisplayRole) {
        return lift.name;
    }
    if (role == Qt::AccessibleTextRole) {
        QStringList parts{lift.name, lift.due};
        for (const LiftRow::Box& box : lift.amounts) {
            if (box.isEntered) {
                parts.append(box.text);
            }
        }
        if (lift.isSaved) {
            parts.append(tr("saved"));
        }
        parts.append(lift.next);
        return parts.join(QStringLiteral(", "));
    }
    return {};
}

LiftRowDelegate::LiftRowDelegate(const common::Look& look, const LiftRowsModel& model, QObject* parent)
    : QStyledItemDelegate(parent), m_look(look), m_model(model)
{
}

QSize LiftRowDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const
{
    const Theme& theme = m_look.theme();
    const LiftRow& lift = m_model.row(index.row());
    const auto* view = qobject_cast<const QAbstractItemView*>(option.widget);
    const int width = view == nullptr ? option.rect.width() : view->viewport()->width();
    const double lower = liftColumnsFor(width, theme).isStacked && !lift.amounts.empty() ? kStackedBy : 0;
    return {option.rect.width(), qRound(theme.scaled((lift.next.isEmpty() ? kRowHeight : kRowWithNext) + lower))};
}

LiftCaptions::LiftCaptions(const common::Look& look, QWidget* parent) : QWidget(parent), m_look(look)
{
    setFixedHeight(qRound(look.theme().scaled(32)));
    connect(&look, &common::Look::changed, this, [this] { setFixedHeight(qRound(m_look.theme().scaled(32))); });
}

void LiftCaptions::paintEvent(QPaintEvent* /*event*/)
{
    const Theme& theme = m_look.theme();
    const LiftColumns columns = liftColumnsFor(width(), theme);
    QPainter painter(this);
    painter.setFont(theme.font(12, QFont::DemiBold));
    painter.setPen(theme.ink2);
    const auto caption = [&](double x, double width, const QString& text) {
        painter.drawText(QRectF(x, 0, width, height()), Qt::AlignVCenter, text);
    };
    if (!columns.isStacked) {
        caption(theme.scaled(kRowSide), columns.sets - theme.scaled(kRowSide), tr("Lift and target"));
    }
    caption(columns.sets, columns.setsWidth, tr("Reps, set by set"));
    caption(columns.left, columns.rest - columns.left, tr("Left"));
    caption(columns.rest, columns.felt - columns.rest, tr("Rest"));
    caption(columns.felt, columns.pain - columns.felt, tr("Felt"));
    caption(columns.pain, width() - columns.pain, tr("Pain"));
    for (const double y : {0.0, height() - 1.0}) {
        painter.fillRect(QRectF(0, y, width(), 1), theme.line);
    }
}

void LiftRowDelegate::paintBox(QPainter& painter, const QRectF& rect, const LiftRow::Box& box) const
{
    const Theme& theme = m_look.theme();
    painter.setPen(QPen(box.isLow ? theme.warn : box.isEntered ? theme.ctl : theme.line2, 1));
    painter.setBrush(box.isLow ? QBrush(theme.warnBg) : box.isEntered ? QBrush(theme.raised) : QBrush(Qt::NoBrush));
    painter.drawRoundedRect(rect.adjusted(0.5, 0.5, -0.5, -0.5), 5, 5);
    painter.setPen(box.isLow ? theme.warn : box.isEntered ? theme.ink : theme.ink3);
    const QFont font = theme.font(box.text.size() > 5 ? 12 : 15, box.isEntered ? QFont::DemiBold : QFont::Normal);
    painter.setFont(font);
    painter.drawText(rect, Qt::AlignCenter, elided(box.text, font, rect.width() - 4));
}

void LiftRowDelegate::paintFelt(QPainter& painter, const QRectF& rect, const LiftRow& lift) const
{
    const Theme& theme = m_look.theme();
    const QRectF frame = rect.adjusted(0.5, 0.5, -0.5, -0.5);
    const bool isSteady = lift.felt == progression::Steadiness::Steady;
    const QRectF halves[] = {QRectF(frame.topLeft(), QSizeF(frame.width() / 2, frame.height())),
                             QRectF(frame.center().x(), frame.top(), frame.width() / 2, frame.height())};
    painter.save();
    QPainterPath shape;
    shape.addRoundedRect(frame, 5, 5);
    painter.setClipPath(shape);
    if (lift.felt) {
        painter.fillRect(halves[isSteady ? 0 : 1], isSteady ? theme.okBg : theme.warnBg);
    }
    painter.fillRect(QRectF(frame.center().x(), frame.top(), 1, frame.height()), theme.line2);
    painter.restore();
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(lift.felt ? theme.ctl : theme.line2, 1));
    painter.drawRoundedRect(frame, 5, 5);
    const double side = theme.scaled(17);
    const QString second = lift.felt == progression::Steadiness::Lost ? QStringLiteral("cross") : QStringLiteral("shaky");
    const auto icon = [&](const QRectF& half, const QString& name, const QColor& ink) {
        common::paintIcon(painter, QRectF(half.center().x() - side / 2, half.center().y() - side / 2, side, side), name, ink, theme);
    };
    icon(halves[0], QStringLiteral("steady"), isSteady ? theme.ok : theme.ink3);
    icon(halves[1], second, lift.felt && !isSteady ? theme.warn : theme.ink3);
}

void LiftRowDelegate::paintBoxes(QPainter& painter, const QRectF& row, const LiftRow& lift) const
{
    const auto boxes = liftBoxesOf(row, static_cast<int>(lift.amounts.size()), m_look.theme());
    for (const LiftBox& box : boxes) {
        switch (box.field) {
        case LiftField::Load:
            break;  // written under the name
        case LiftField::Amount:
            paintBox(painter, box.rect, lift.amounts[static_cast<std::size_t>(box.set)]);
            break;
        case LiftField::Left:
            paintBox(painter, box.rect, lift.left);
            break;
        case LiftField::Rest:
            paintBox(painter, box.rect, lift.rest);
            break;
        case LiftField::Felt:
            paintFelt(painter, box.rect, lift);
            break;
        case LiftField::Pain:
            paintBox(painter, box.rect, lift.pain);
            break;
        }
    }
}

void LiftRowDelegate::paintNames(QPainter& painter, const QRectF& row, const LiftRow& lift) const
{
    const Theme& theme = m_look.theme();
    double left = row.left() + theme.scaled(kRowSide);
    const LiftColumns columns = liftColumnsFor(row.width(), theme);
    const bool isAlone = lift.amounts.empty() || columns.isStacked;
    const double end = isAlone ? row.width() - theme.scaled(kRowSide) : columns.sets - theme.scaled(8);
    const double right = row.left() + end;
    if (lift.isSaved) {
        const double side = theme.scaled(15);
        common::paintIcon(painter, QRectF(left, row.top() + theme.scaled(11), side, side), QStringLiteral("check"), theme.ok, theme);
        left += side + theme.scaled(5);
    }
    const QFont strong = theme.font(TextStyle::Strong);
    painter.setFont(strong);
    painter.setPen(lift.isSkipped ? theme.ink3 : theme.ink);
    painter.drawText(QRectF(left, row.top() + theme.scaled(8), right - left, theme.scaled(20)), Qt::AlignVCenter, elided(lift.name, strong, right - left));
    const double x = row.left() + theme.scaled(kRowSide);
    const double glyph = theme.scaled(11);
    painter.fillPath(common::stageGlyph(lift.stage, QRectF(x, row.top() + theme.scaled(32), glyph, glyph)), theme.stage(lift.stage));
    const QFont small = theme.font(12, QFont::Normal);
    painter.setFont(small);
    painter.setPen(theme.ink2);
    const double room = right - x - glyph - 5;
    painter.drawText(QRectF(x + glyph + 5, row.top() + theme.scaled(28), room, theme.scaled(18)), Qt::AlignVCenter,
                     elided(lift.isSkipped ? skippedText(lift) : lift.due, small, room));
}

void LiftRowDelegate::paintNext(QPainter& painter, const QRectF& row, const LiftRow& lift) const
{
    const Theme& theme = m_look.theme();
    const double side = theme.scaled(15);
    double x = row.left() + theme.scaled(kRowSide);
    const bool isStacked = !lift.amounts.empty() && liftColumnsFor(row.width(), theme).isStacked;
    const QRectF line(x, row.top() + theme.scaled(isStacked ? 52 + kStackedBy : 52), row.width() - theme.scaled(2 * kRowSide), theme.scaled(20));
    common::paintIcon(painter, QRectF(x, line.center().y() - side / 2, side, side), lift.isUp ? QStringLiteral("ready") : QStringLiteral("right"),
                      lift.isUp ? theme.ok : theme.ink3, theme);
    x += side + theme.scaled(8);
    const QFont strong = theme.font(13, QFont::DemiBold);
    const QFont plain = theme.font(13, QFont::Normal);
    painter.setFont(strong);
    painter.setPen(theme.ink);
    const QString next = elided(lift.next, strong, line.right() - x);
    painter.drawText(QRectF(x, line.top(), line.right() - x, line.height()), Qt::AlignVCenter, next);
    x += QFontMetricsF(strong).horizontalAdvance(next) + theme.scaled(6);
    if (line.right() - x > theme.scaled(60)) {
        painter.setFont(plain);
        painter.setPen(theme.ink2);
        painter.drawText(QRectF(x, line.top(), line.right() - x, line.height()), Qt::AlignVCenter, elided(lift.why, plain, line.right() - x));
    }
}

void LiftRowDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const
{
    const Theme& theme = m_look.theme();
    const LiftRow& lift = m_model.row(index.row());
    const QRectF row = option.rect;
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    if ((option.state & QStyle::State_Selected) != 0) {
        painter->fillRect(row, theme.wash);
        painter->fillRect(QRectF(row.left(), row.top(), 3, row.height()), theme.mark);
    }
    painter->fillRect(QRectF(row.left(), row.bottom() - 1, row.width(), 1), theme.line);
    paintNames(*painter, row, lift);
    if (!lift.amounts.empty()) {
        paintBoxes(*painter, row, lift);
    }
    if (!lift.next.isEmpty()) {
        paintNext(*painter, row, lift);
    }
    if ((option.state & QStyle::State_HasFocus) != 0) {
        painter->setPen(QPen(theme.focus, 2));
        painter->setBrush(Qt::NoBrush);
        painter->drawRoundedRect(row.adjusted(2, 2, -2, -3), 4, 4);
    }
    painter->restore();
}

}  // namespace chalk::ui::floor
