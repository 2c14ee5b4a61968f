#include "ui/floor/lift_rows.h"

#include "ui/common/look.h"
#include "ui/common/stage_glyph.h"

#include <QPainter>

#include <algorithm>

namespace chalk::ui::floor {

namespace {

using common::TextStyle;
using common::Theme;

constexpr double kRowHeight = 54;
constexpr double kRowWithNext = 80;
constexpr double kBox = 36;

QString elided(const QString& text, const QFont& font, double width)
{
    return QFontMetricsF(font).elidedText(text, Qt::ElideRight, width);
}

}  // namespace

void LiftRowsModel::setRows(std::vector<LiftRow> rows)
{
    beginResetModel();
    m_rows = std::move(rows);
    endResetModel();
}

void LiftRowsModel::setRow(int at, LiftRow row)
{
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
    const bool hasNext = !m_model.row(index.row()).next.isEmpty();
    return {option.rect.width(), qRound(m_look.theme().scaled(hasNext ? kRowWithNext : kRowHeight))};
}

LiftRowDelegate::Columns LiftRowDelegate::columnsFor(double width) const
{
    const Theme& theme = m_look.theme();
    Columns columns;
    columns.pain = width - theme.scaled(16 + 42);
    columns.felt = columns.pain - theme.scaled(10 + 64);
    columns.rest = columns.felt - theme.scaled(10 + 58);
    columns.left = columns.rest - theme.scaled(10 + 46);
    columns.sets = columns.left - theme.scaled(10 + 232);
    return columns;
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

void LiftRowDelegate::paintBoxes(QPainter& painter, const QRectF& row, const LiftRow& lift) const
{
    const Theme& theme = m_look.theme();
    const Columns columns = columnsFor(row.width());
    const double height = theme.scaled(kBox);
    const double top = row.top() + theme.scaled(9);
    const auto boxAt = [&](double x, double width, const LiftRow::Box& box) {
        paintBox(painter, QRectF(row.left() + x, top, width, height), box);
    };
    const auto count = static_cast<double>(std::max<std::size_t>(lift.amounts.size(), 1));
    const double room = columns.left - columns.sets - theme.scaled(10);
    const double width = std::min(theme.scaled(38), (room - 5 * (count - 1)) / count);
    double x = columns.sets;
    for (const LiftRow::Box& box : lift.amounts) {
        boxAt(x, width, box);
        x += width + 5;
    }
    boxAt(columns.left, theme.scaled(46), lift.left);
    boxAt(columns.rest, theme.scaled(58), lift.rest);
    boxAt(columns.felt, theme.scaled(64), lift.felt);
    boxAt(columns.pain, theme.scaled(42), lift.pain);
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
    const double left = row.left() + theme.scaled(16);
    const double width = columnsFor(row.width()).sets - theme.scaled(24);
    const QFont strong = theme.font(TextStyle::Strong);
    painter->setFont(strong);
    painter->setPen(lift.isSkipped ? theme.ink3 : theme.ink);
    const QString mark = lift.isSaved ? QStringLiteral("✓ ") : QString();
    painter->drawText(QRectF(left, row.top() + theme.scaled(8), width, theme.scaled(20)), Qt::AlignVCenter, elided(mark + lift.name, strong, width));
    const double glyph = theme.scaled(11);
    painter->fillPath(common::stageGlyph(lift.stage, QRectF(left, row.top() + theme.scaled(32), glyph, glyph)), theme.stage(lift.stage));
    const QFont small = theme.font(12, QFont::Normal);
    painter->setFont(small);
    painter->setPen(theme.ink2);
    painter->drawText(QRectF(left + glyph + 5, row.top() + theme.scaled(28), width - glyph - 5, theme.scaled(18)), Qt::AlignVCenter,
                      elided(lift.isSkipped ? tr("skipped today") : lift.due, small, width - glyph - 5));
    if (!lift.amounts.empty()) {
        paintBoxes(*painter, row, lift);
    }
    if (!lift.next.isEmpty()) {
        const QFont next = theme.font(TextStyle::Small);
        painter->setFont(next);
        painter->setPen(theme.ink2);
        const double full = row.width() - theme.scaled(32);
        painter->drawText(QRectF(left, row.top() + theme.scaled(52), full, theme.scaled(20)), Qt::AlignVCenter, elided(lift.next, next, full));
    }
    painter->restore();
}

}  // namespace chalk::ui::floor
