#include "ui/direction/plan_editor_table.h"

#include "ui/common/look.h"
#include "ui/direction/plan_editor_cells.h"
#include "ui/direction/plan_editor_heads.h"
#include "ui/direction/plan_editor_sheet.h"

#include <QKeyEvent>
#include <QMouseEvent>

#include <algorithm>
#include <array>

namespace chalk::ui::direction {

namespace {

constexpr double kPhaseWidth = 50;
constexpr double kKindWidth = 52;
constexpr double kWeekRow = 29;
constexpr double kLoadWithUnitWidth = 76;
constexpr std::array kWorkWidths{40.0, 46.0, 44.0, 52.0, 44.0, 36.0, 48.0, 40.0};

bool canStopAt(const QModelIndex& index)
{
    return (index.flags() & (Qt::ItemIsEditable | Qt::ItemIsUserCheckable)) != 0;
}

}  // namespace

PlanEditorTable::PlanEditorTable(const common::Look& look, PlanEditorSheet& sheet, QWidget* parent)
    : QTableView(parent), m_look(look), m_sheet(sheet), m_cells(new PlanEditorCells(look, sheet, this))
{
    setAccessibleName(tr("Weeks of the plan"));
    setItemDelegate(m_cells);
    setHorizontalHeader(new PlanEditorHeads(look, Qt::Horizontal, this));
    setVerticalHeader(new PlanEditorHeads(look, Qt::Vertical, this));
    setModel(&sheet);
    setSelectionMode(QAbstractItemView::SingleSelection);
    setEditTriggers(QAbstractItemView::AnyKeyPressed | QAbstractItemView::EditKeyPressed | QAbstractItemView::DoubleClicked);
    setWordWrap(false);
    setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
    setCornerButtonEnabled(false);
    connect(m_cells, &PlanEditorCells::downAsked, this, [this] { goDown(1); });
    connect(m_cells, &PlanEditorCells::acrossAsked, this, &PlanEditorTable::goAcross);
    connect(m_cells, &PlanEditorCells::refused, this, &PlanEditorTable::refused);
    connect(&sheet, &PlanEditorSheet::refused, this, &PlanEditorTable::refused);
    connect(&sheet, &QAbstractItemModel::dataChanged, this, &PlanEditorTable::readCell);
    connect(&sheet, &QAbstractItemModel::modelReset, this, [this] {
        fitColumns();
        settle();
    });
    connect(&look, &common::Look::changed, this, &PlanEditorTable::fitColumns);
    fitColumns();
    settle();
}

void PlanEditorTable::fitColumns()
{
    const common::Theme& theme = m_look.theme();
    horizontalHeader()->setMinimumSectionSize(1);
    verticalHeader()->setMinimumSectionSize(qRound(theme.scaled(kWeekRow)));
    verticalHeader()->setDefaultSectionSize(qRound(theme.scaled(kWeekRow)));
    setColumnWidth(PlanEditorSheet::PhaseColumn, qRound(theme.scaled(kPhaseWidth)));
    setColumnWidth(PlanEditorSheet::KindColumn, qRound(theme.scaled(kKindWidth)));
    for (int column = PlanEditorSheet::FirstWorkColumn; column < m_sheet.columnCount(); ++column) {
        const auto part = static_cast<std::size_t>((column - PlanEditorSheet::FirstWorkColumn) % PlanEditorSheet::WorkColumns);
        const bool hasUnit = part == PlanEditorSheet::LoadColumn && !m_sheet.lift();
        setColumnWidth(column, qRound(theme.scaled(hasUnit ? kLoadWithUnitWidth : kWorkWidths[part])));
    }
}

void PlanEditorTable::settle()
{
    for (int row = 0; row < m_sheet.rowCount(); ++row) {
        const QModelIndex first = m_sheet.index(row, PlanEditorSheet::FirstWorkColumn);
        if (canStopAt(first)) {
            setCurrentIndex(first);
            return;
        }
    }
}

void PlanEditorTable::readCell()
{
    Q_EMIT cellRead(currentIndex().data(Qt::StatusTipRole).toString());
}

void PlanEditorTable::currentChanged(const QModelIndex& current, const QModelIndex& previous)
{
    QTableView::currentChanged(current, previous);
    readCell();
}

void PlanEditorTable::goDown(int rows)
{
    const QModelIndex at = currentIndex();
    const int row = std::clamp(at.row() + rows, 0, m_sheet.rowCount() - 1);
    setCurrentIndex(m_sheet.index(row, at.column()));
    setFocus(Qt::OtherFocusReason);
}

bool PlanEditorTable::goAcross(bool isBackward)
{
    const int columns = m_sheet.columnCount();
    const int step = isBackward ? -1 : 1;
    for (int cell = currentIndex().row() * columns + currentIndex().column() + step; cell >= 0 && cell < m_sheet.rowCount() * columns; cell += step) {
        const QModelIndex index = m_sheet.index(cell / columns, cell % columns);
        if (canStopAt(index)) {
            setCurrentIndex(index);
            setFocus(Qt::OtherFocusReason);
            return true;
        }
    }
    return false;
}

bool PlanEditorTable::focusNextPrevChild(bool isNext)
{
    return goAcross(!isNext) || QWidget::focusNextPrevChild(isNext);
}

void PlanEditorTable::keyPressEvent(QKeyEvent* event)
{
    const QModelIndex at = currentIndex();
    if (!at.isValid()) {
        return QTableView::keyPressEvent(event);
    }
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
        return goDown((event->modifiers() & Qt::ShiftModifier) != 0 ? -1 : 1);
    }
    if (event->key() == Qt::Key_D && event->modifiers() == Qt::ControlModifier) {
        return m_sheet.copyDown(at.row());
    }
    if (event->key() == Qt::Key_Space && at.column() == PlanEditorSheet::KindColumn) {
        return m_sheet.toggleKind(at.row());
    }
    QTableView::keyPressEvent(event);
}

void PlanEditorTable::mouseDoubleClickEvent(QMouseEvent* event)
{
    const QModelIndex at = indexAt(event->position().toPoint());
    if (at.isValid() && at.column() == PlanEditorSheet::KindColumn) {
        return m_sheet.toggleKind(at.row());
    }
    QTableView::mouseDoubleClickEvent(event);
}

}  // namespace chalk::ui::direction
