#include "ui/roster/attention_delegate.h"

#include "ui/common/icon_store.h"
#include "ui/common/look.h"
#include "ui/common/wrapped_text.h"
#include "ui/roster/attention_model.h"

#include <QAbstractItemView>
#include <QFontMetricsF>
#include <QPainter>

#include <cmath>

namespace chalk::ui::roster {

namespace {

using common::Theme;

// Pixels at a text size of 100 %.
constexpr double kItemTop = 11;
constexpr double kItemBottom = 12;
constexpr double kIconLeft = 16;
constexpr double kIconSide = 20;
constexpr double kTextLeft = 48;
constexpr double kItemRight = 14;
constexpr double kNameHeight = 20;
constexpr double kSentenceLine = 18;
constexpr double kActionTop = 3;
constexpr double kActionHeight = 20;
constexpr double kChevronSide = 14;
constexpr int kNumberedItems = 9;

QFont sentenceFont(const Theme& theme)
{
    return theme.font(common::TextStyle::Small);
}

double sentenceWidth(double itemWidth, const Theme& theme)
{
    return std::max(1.0, itemWidth - theme.scaled(kTextLeft + kItemRight));
}

double sentenceHeight(const AttentionItem& item, double itemWidth, const Theme& theme)
{
    return common::wrappedTextHeight(item.sentence, sentenceFont(theme), sentenceWidth(itemWidth, theme), theme.scaled(kSentenceLine));
}

QColor inkOf(const AttentionItem& item, const Theme& theme)
{
    return theme.signal(tagOf(item.flag).signal).ink;
}

void paintGround(QPainter& painter, const QStyleOptionViewItem& option, const Theme& theme)
{
    const QRectF cell(option.rect);
    const bool hasFocus = option.state.testFlag(QStyle::State_HasFocus);
    painter.fillRect(cell, hasFocus || option.state.testFlag(QStyle::State_MouseOver) ? theme.hover : theme.surface);
    painter.fillRect(QRectF(cell.left(), cell.bottom() - 1, cell.width(), 1), theme.line);
    if (hasFocus) {
        painter.setPen(QPen(theme.focus, 2));
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(cell.adjusted(1, 1, -1, -2));
    }
}

void paintHead(QPainter& painter, const QRectF& cell, const AttentionItem& item, int row, bool isNumbered, const Theme& theme)
{
    const QRectF line(cell.left() + theme.scaled(kTextLeft), cell.top() + theme.scaled(kItemTop),
                      sentenceWidth(cell.width(), theme) - theme.scaled(kChevronSide + 6), theme.scaled(kNameHeight));
    const double icon = theme.scaled(kIconSide);
    common::paintIcon(painter, QRectF(cell.left() + theme.scaled(kIconLeft), line.top(), icon, icon), tagOf(item.flag).icon, inkOf(item, theme), theme);
    const double chevron = theme.scaled(kChevronSide);
    const double right = cell.right() - theme.scaled(kItemRight);
    double nameWidth = line.width();
    if (isNumbered && row < kNumberedItems) {
        const common::KeyCapView cap{QString::number(row + 1)};
        const double width = common::keyCapWidth(cap, theme);
        common::paintKeyCap(painter, QRectF(right - width, line.top(), width, line.height()), cap, theme);
        nameWidth -= width;
    } else {
        common::paintIcon(painter, QRectF(right - chevron, line.top() + theme.scaled(3), chevron, chevron), QStringLiteral("right"), theme.ink3, theme);
    }
    const QFont font = theme.font(common::TextStyle::Strong);
    painter.setFont(font);
    painter.setPen(theme.ink);
    painter.drawText(QRectF(line.left(), line.top(), nameWidth, line.height()), Qt::AlignLeft | Qt::AlignVCenter,
                     QFontMetricsF(font).elidedText(item.name, Qt::ElideRight, nameWidth));
}

}  // namespace

AttentionDelegate::AttentionDelegate(const common::Look& look, QObject* parent) : QStyledItemDelegate(parent), m_look(look) {}

QSize AttentionDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const
{
    const AttentionItem* item = AttentionModel::itemAt(index);
    const auto* view = qobject_cast<const QAbstractItemView*>(option.widget);
    if (item == nullptr || view == nullptr) {
        return {};
    }
    const Theme& theme = m_look.theme();
    const int width = view->viewport()->width();
    const double height = theme.scaled(kItemTop + kNameHeight + kActionTop + kActionHeight + kItemBottom) + sentenceHeight(*item, width, theme);
    return {width, static_cast<int>(std::ceil(height))};
}

void AttentionDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const
{
    const AttentionItem* item = AttentionModel::itemAt(index);
    if (item == nullptr) {
        return;
    }
    const Theme& theme = m_look.theme();
    const QRectF cell(option.rect);
    painter->save();
    paintGround(*painter, option, theme);
    const bool isNumbered = option.widget != nullptr && option.widget->hasFocus();
    paintHead(*painter, cell, *item, index.row(), isNumbered, theme);
    const double left = cell.left() + theme.scaled(kTextLeft);
    const double width = sentenceWidth(cell.width(), theme);
    double top = cell.top() + theme.scaled(kItemTop + kNameHeight);
    painter->setPen(theme.ink2);
    common::paintWrappedText(*painter, {left, top}, item->sentence, sentenceFont(theme), width, theme.scaled(kSentenceLine));
    top += sentenceHeight(*item, cell.width(), theme) + theme.scaled(kActionTop);
    painter->setFont(theme.font(13, QFont::Medium));
    painter->setPen(theme.link);
    painter->drawText(QRectF(left, top, width, theme.scaled(kActionHeight)), Qt::AlignLeft | Qt::AlignVCenter, item->action);
    painter->restore();
}

}  // namespace chalk::ui::roster
