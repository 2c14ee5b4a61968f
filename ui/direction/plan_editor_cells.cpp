#include "ui/direction/plan_editor_cells.h"

#include "ui/common/look.h"
#include "ui/common/style_sheet.h"
#include "ui/direction/plan_editor_sheet.h"

#include <QApplication>
#include <QKeyEvent>
#include <QLineEdit>
#include <QPainter>
#include <QPersistentModelIndex>
#include <QToolTip>

#include <algorithm>

namespace chalk::ui::direction {

namespace {

constexpr double kEditorRowHeight = 30;
constexpr double kCornerSide = 7;
constexpr int kOutsideLine = 2;
constexpr int kMarkMargin = 3;
constexpr double kMarkSide = 20;
constexpr const char* kCellProperty = "planCell";

void paintOutsideMark(QPainter& painter, const QRect& cell, const common::Theme& theme)
{
    const double side = theme.scaled(kCornerSide);
    const QPointF corner(cell.right() + 1.0, cell.top());
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(Qt::NoPen);
    painter.setBrush(theme.warn);
    painter.drawPolygon(QPolygonF({corner, corner - QPointF(side, 0), corner + QPointF(0, side)}));
    painter.fillRect(QRect(cell.left() + 4, cell.bottom() - kOutsideLine, cell.width() - 8, kOutsideLine), theme.warn);
    painter.restore();
}

/// The option of a cell that holds a mark alone, so that the mark stands in its middle.
QStyleOptionViewItem middled(QStyleOptionViewItem option, const QModelIndex& index, int indicator)
{
    if ((index.flags() & Qt::ItemIsUserCheckable) != 0 || index.data(Qt::CheckStateRole).isValid()) {
        option.rect.setLeft(option.rect.left() + std::max(0, (option.rect.width() - indicator) / 2 - kMarkMargin));
    }
    return option;
}

}  // namespace

PlanEditorCells::PlanEditorCells(const common::Look& look, PlanEditorSheet& sheet, QObject* parent) : QStyledItemDelegate(parent), m_look(look), m_sheet(sheet)
{
}

void PlanEditorCells::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const
{
    const common::Theme& theme = m_look.theme();
    QStyleOptionViewItem dressed = option;
    const bool isLoad = index.flags() == (Qt::ItemIsEnabled | Qt::ItemIsSelectable);
    dressed.palette.setColor(QPalette::Text, index.data(PlanEditorSheet::IsOverRole).toBool() ? theme.ink3 : isLoad ? theme.ink2 : theme.ink);
    if (index.data(PlanEditorSheet::IsOutsideRole).toBool()) {
        dressed.font.setWeight(QFont::DemiBold);
    }
    if (index.data(Qt::CheckStateRole).isValid()) {
        painter->fillRect(option.rect, (option.state & QStyle::State_Selected) != 0 ? theme.wash : theme.surface);
    }
    QStyledItemDelegate::paint(painter, middled(dressed, index, qRound(theme.scaled(kMarkSide))), index);
    if (index.data(PlanEditorSheet::IsFirstRole).toBool()) {
        painter->fillRect(QRect(option.rect.left(), option.rect.top(), 1, option.rect.height()), theme.line2);
    }
    if (index.data(PlanEditorSheet::IsOutsideRole).toBool()) {
        paintOutsideMark(*painter, option.rect, theme);
    }
    if ((option.state & QStyle::State_HasFocus) != 0) {
        painter->setBrush(Qt::NoBrush);
        painter->setPen(QPen(theme.focus, 2));
        painter->drawRect(option.rect.adjusted(1, 1, -1, -1));
    }
}

QSize PlanEditorCells::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const
{
    return {QStyledItemDelegate::sizeHint(option, index).width(), qRound(m_look.theme().scaled(kEditorRowHeight))};
}

QWidget* PlanEditorCells::createEditor(QWidget* parent, const QStyleOptionViewItem& /*option*/, const QModelIndex& index) const
{
    auto* line = new QLineEdit(parent);
    line->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
    line->setProperty("sizing", QStringLiteral("figure"));
    line->setAccessibleName(m_sheet.headerData(index.column(), Qt::Horizontal, Qt::AccessibleTextRole).toString());
    line->setProperty(kCellProperty, QVariant::fromValue(QPersistentModelIndex(index)));
    connect(line, &QLineEdit::textEdited, line, [line] {
        line->setProperty("invalid", false);
        common::restyle(*line);
    });
    return line;
}

bool PlanEditorCells::editorEvent(QEvent* event, QAbstractItemModel* model, const QStyleOptionViewItem& option, const QModelIndex& index)
{
    return QStyledItemDelegate::editorEvent(event, model, middled(option, index, qRound(m_look.theme().scaled(kMarkSide))), index);
}

void PlanEditorCells::updateEditorGeometry(QWidget* editor, const QStyleOptionViewItem& option, const QModelIndex& /*index*/) const
{
    editor->setGeometry(option.rect);
}

bool PlanEditorCells::keep(QWidget& editor)
{
    auto* line = qobject_cast<QLineEdit*>(&editor);
    const QModelIndex index = editor.property(kCellProperty).value<QPersistentModelIndex>();
    if (line == nullptr || !index.isValid()) {
        return false;
    }
    const QString refusal = m_sheet.refusalOf(index, line->text());
    if (refusal.isEmpty()) {
        Q_EMIT commitData(line);
        Q_EMIT closeEditor(line, QAbstractItemDelegate::NoHint);
        return true;
    }
    line->setProperty("invalid", true);
    common::restyle(*line);
    line->selectAll();
    QToolTip::showText(line->mapToGlobal(QPoint(0, line->height())), refusal, line);
    Q_EMIT refused(refusal);
    return false;
}

bool PlanEditorCells::eventFilter(QObject* watched, QEvent* event)
{
    auto* editor = qobject_cast<QLineEdit*>(watched);
    if (editor == nullptr) {
        return QStyledItemDelegate::eventFilter(watched, event);
    }
    if (event->type() == QEvent::KeyPress) {
        const auto* key = static_cast<QKeyEvent*>(event);
        switch (key->key()) {
        case Qt::Key_Return:
        case Qt::Key_Enter:
            if (keep(*editor)) {
                Q_EMIT downAsked();
            }
            return true;
        case Qt::Key_Tab:
        case Qt::Key_Backtab:
            if (keep(*editor)) {
                Q_EMIT acrossAsked(key->key() == Qt::Key_Backtab);
            }
            return true;
        default: break;
        }
    }
    if (event->type() == QEvent::FocusOut && !m_sheet.refusalOf(editor->property(kCellProperty).value<QPersistentModelIndex>(), editor->text()).isEmpty()) {
        Q_EMIT refused(m_sheet.refusalOf(editor->property(kCellProperty).value<QPersistentModelIndex>(), editor->text()));
        Q_EMIT closeEditor(editor, QAbstractItemDelegate::RevertModelCache);
        return false;
    }
    return QStyledItemDelegate::eventFilter(watched, event);
}

}  // namespace chalk::ui::direction
