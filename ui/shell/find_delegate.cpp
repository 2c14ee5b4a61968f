#include "ui/shell/find_delegate.h"

#include "ui/common/icon_store.h"
#include "ui/common/look.h"
#include "ui/common/tags.h"
#include "ui/shell/find_model.h"

#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>

namespace chalk::ui::shell {

namespace {

constexpr double kFindPadding = 18;
constexpr double kFindRowHeight = 48;
constexpr double kFindHeadingHeight = 32;
constexpr double kFindIconSide = 20;
constexpr double kFindTextAt = 56;

QFont partFont(FindWeight weight, const common::Theme& theme)
{
    switch (weight) {
    case FindWeight::Plain:
        return theme.font(14, QFont::Normal);
    case FindWeight::Bold:
        return theme.font(14, QFont::DemiBold);
    case FindWeight::Detail:
        return theme.font(13, QFont::Normal);
    case FindWeight::DetailBold:
        return theme.font(13, QFont::DemiBold);
    }
    return theme.font(14, QFont::Normal);
}

void paintHeading(QPainter& painter, const QRectF& rect, const QString& text, const common::Theme& theme)
{
    painter.setFont(theme.font(12, QFont::DemiBold));
    painter.setPen(theme.ink3);
    painter.drawText(rect.adjusted(theme.scaled(kFindPadding), 0, 0, -theme.scaled(4)), Qt::AlignLeft | Qt::AlignBottom, text);
}

void paintParts(QPainter& painter, const QRectF& rect, const FindItem& item, const common::Theme& theme)
{
    double x = rect.left();
    bool wasDetail = false;
    for (const FindPart& part : item.parts) {
        const QFont font = partFont(part.weight, theme);
        const QFontMetricsF metrics(font);
        if (isDetail(part.weight) && !wasDetail && x > rect.left()) {
            x += theme.scaled(6);
        }
        wasDetail = isDetail(part.weight);
        const double room = rect.right() - x;
        if (room < theme.scaled(20)) {
            return;
        }
        const QString shown = metrics.elidedText(part.text, Qt::ElideRight, room);
        painter.setFont(font);
        painter.setPen(isDetail(part.weight) ? theme.ink2 : theme.ink);
        painter.drawText(QRectF(x, rect.top(), room, rect.height()), Qt::AlignLeft | Qt::AlignVCenter, shown);
        x += metrics.horizontalAdvance(shown);
    }
}

}  // namespace

FindDelegate::FindDelegate(const common::Look& look, QObject* parent) : QStyledItemDelegate(parent), m_look(look) {}

void FindDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const
{
    const common::Theme& theme = m_look.theme();
    const auto* model = static_cast<const FindModel*>(index.model());
    const FindItem* item = model->itemAt(index.row());
    const QRectF rect(option.rect);
    painter->save();
    if (item == nullptr) {
        paintHeading(*painter, rect, index.data().toString(), theme);
        painter->restore();
        return;
    }
    const bool isChosen = option.state.testFlag(QStyle::State_Selected);
    if (isChosen) {
        painter->fillRect(rect, theme.wash);
        painter->fillRect(QRectF(rect.left(), rect.top(), 3, rect.height()), theme.mark);
    } else if (option.state.testFlag(QStyle::State_MouseOver)) {
        painter->fillRect(rect, theme.hover);
    }
    const double side = theme.scaled(kFindIconSide);
    common::paintIcon(*painter, QRectF(rect.left() + theme.scaled(kFindPadding), rect.center().y() - side / 2, side, side), item->icon,
                      theme.ink2, theme);
    QString keys = item->keys;
    if (keys.isEmpty() && isChosen) {
        keys = tr("Enter");
    }
    double right = rect.right() - theme.scaled(kFindPadding);
    if (!keys.isEmpty()) {
        const common::KeyCapView cap{common::keyCapTexts(keys).value(0)};
        const double width = common::keyCapWidth(cap, theme);
        common::paintKeyCap(*painter, QRectF(right - width, rect.top(), width + 1, rect.height()), cap, theme);
        right -= width + theme.scaled(8);
    }
    paintParts(*painter, QRectF(QPointF(rect.left() + theme.scaled(kFindTextAt), rect.top()), QPointF(right, rect.bottom())), *item,
               theme);
    painter->restore();
}

QSize FindDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const
{
    const auto* model = static_cast<const FindModel*>(index.model());
    const double height = model->itemAt(index.row()) == nullptr ? kFindHeadingHeight : kFindRowHeight;
    return {option.rect.width(), qRound(m_look.theme().scaled(height))};
}

}  // namespace chalk::ui::shell
