#include "ui/week/left_over_tray.h"

#include "ui/common/icon_store.h"
#include "ui/common/look.h"
#include "ui/common/wrapped_text.h"
#include "ui/week/week_grid.h"

#include <QAbstractItemView>
#include <QMimeData>
#include <QPainter>

namespace chalk::ui::week {

namespace {

using common::Theme;

// Pixels at a text size of 100 %.
constexpr double kItemPadding = 12;
constexpr double kItemTop = 11;
constexpr double kIconColumn = 24;
constexpr double kItemIcon = 16;
constexpr double kItemName = 20;
constexpr double kReasonLine = 18;
constexpr double kOfferGap = 3;

double textWidth(double width, const Theme& theme)
{
    return width - theme.scaled(2 * kItemPadding + kIconColumn);
}

}  // namespace

void LeftOverModel::setItems(const std::vector<LeftOverItem>& items)
{
    if (items == m_items) {
        return;
    }
    if (items.size() == m_items.size() && !items.empty()) {  // who is chosen stays so
        m_items = items;
        Q_EMIT dataChanged(index(0), index(rowCount() - 1));
        return;
    }
    beginResetModel();
    m_items = items;
    endResetModel();
}

int LeftOverModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_items.size());
}

QVariant LeftOverModel::data(const QModelIndex& at, int role) const
{
    if (!at.isValid() || (role != Qt::DisplayRole && role != Qt::AccessibleTextRole && role != Qt::ToolTipRole)) {
        return {};
    }
    const LeftOverItem& one = item(at.row());
    const QString said = tr("%1, %2. %3").arg(one.name, one.which, one.reason);
    return one.offer.isEmpty() ? said : said + QLatin1Char(' ') + one.offer;
}

Qt::ItemFlags LeftOverModel::flags(const QModelIndex& at) const
{
    const Qt::ItemFlags usual = QAbstractListModel::flags(at);
    return at.isValid() && item(at.row()).wish ? usual | Qt::ItemIsDragEnabled : usual;
}

QStringList LeftOverModel::mimeTypes() const
{
    return {QLatin1String(kWishMime)};
}

QMimeData* LeftOverModel::mimeData(const QModelIndexList& indexes) const
{
    if (indexes.isEmpty() || !item(indexes.front().row()).wish) {
        return nullptr;
    }
    auto* mime = new QMimeData;
    mime->setData(QLatin1String(kWishMime), QByteArray::number(static_cast<qulonglong>(*item(indexes.front().row()).wish)));
    mime->setText(item(indexes.front().row()).name.section(QLatin1Char(' '), 0, 0));
    return mime;
}

LeftOverDelegate::LeftOverDelegate(const common::Look& look, const LeftOverModel& model, QObject* parent) : QStyledItemDelegate(parent), m_look(look), m_model(model) {}

QSize LeftOverDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const
{
    const Theme& theme = m_look.theme();
    const auto* view = qobject_cast<const QAbstractItemView*>(option.widget);
    const double width = view == nullptr ? option.rect.width() : view->viewport()->width();
    const LeftOverItem& item = m_model.item(index.row());
    const QFont font = theme.font(common::TextStyle::Small);
    const double reason = common::wrappedTextHeight(item.reason, font, textWidth(width, theme), theme.scaled(kReasonLine));
    const double offer = item.offer.isEmpty() ? 0 : common::wrappedTextHeight(item.offer, font, textWidth(width, theme), theme.scaled(kReasonLine)) + kOfferGap;
    return {qRound(width), qRound(theme.scaled(2 * kItemTop + kItemName) + reason + offer + 1)};
}

void LeftOverDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const
{
    const Theme& theme = m_look.theme();
    const LeftOverItem& item = m_model.item(index.row());
    const QRectF row = option.rect;
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    if ((option.state & QStyle::State_MouseOver) != 0) {
        painter->fillRect(row, theme.hover);
    }
    painter->fillRect(QRectF(row.left(), row.bottom(), row.width(), 1), theme.line);
    const double left = row.left() + theme.scaled(kItemPadding);
    const double x = left + theme.scaled(kIconColumn);
    const double top = row.top() + theme.scaled(kItemTop);
    const double side = theme.scaled(kItemIcon);
    const double name = theme.scaled(kItemName);
    if (item.wish && !item.isConflict) {
        common::paintIcon(*painter, QRectF(left, top + 2, side, side), QStringLiteral("grip"), theme.ink3, theme);
    }
    common::paintIcon(*painter, QRectF(left, top + name + 1, side, side), item.icon, theme.signal(item.signal).ink, theme);
    const double width = textWidth(row.width(), theme);
    painter->setFont(theme.font(12, QFont::Normal));
    const double which = QFontMetricsF(painter->font()).horizontalAdvance(item.which) + 2;
    painter->setPen(theme.ink2);
    painter->drawText(QRectF(x + width - which, top, which, name), Qt::AlignRight | Qt::AlignVCenter, item.which);
    painter->setFont(theme.font(14, QFont::DemiBold));
    painter->setPen(theme.ink);
    painter->drawText(QRectF(x, top, width - which - 6, name), Qt::AlignLeft | Qt::AlignVCenter, QFontMetricsF(painter->font()).elidedText(item.name, Qt::ElideRight, width - which - 6));
    const QFont font = theme.font(common::TextStyle::Small);
    const double line = theme.scaled(kReasonLine);
    painter->setPen(theme.ink2);
    common::paintWrappedText(*painter, {x, top + name}, item.reason, font, width, line);
    painter->setPen(theme.link);
    const double reason = common::wrappedTextHeight(item.reason, font, width, line);
    common::paintWrappedText(*painter, {x, top + name + reason + kOfferGap}, item.offer, font, width, line);
    if ((option.state & QStyle::State_HasFocus) != 0) {
        painter->setPen(QPen(theme.focus, 2));
        painter->setBrush(Qt::NoBrush);
        painter->drawRoundedRect(row.adjusted(2, 2, -2, -3), 4, 4);
    }
    painter->restore();
}

}  // namespace chalk::ui::week
