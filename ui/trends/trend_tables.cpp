#include "ui/trends/trend_tables.h"

#include "ui/common/look.h"
#include "ui/trends/sheet_model.h"

#include <QHeaderView>
#include <QLabel>
#include <QScrollBar>
#include <QTableView>
#include <QVBoxLayout>

#include <algorithm>

namespace chalk::ui::trends {

namespace {

constexpr int kTableRow = 30;
constexpr int kTablesEdge = 16;
constexpr int kTablesGap = 8;
constexpr int kColumnHeadRoom = 40;
constexpr int kCellRoom = 20;

QString selectedText(const QTableView& table)
{
    QModelIndexList cells = table.selectionModel()->selectedIndexes();
    std::sort(cells.begin(), cells.end());
    QString text;
    int row = -1;
    for (const QModelIndex& cell : cells) {
        if (row >= 0) {
            text += QLatin1Char(cell.row() == row ? '\t' : '\n');
        }
        row = cell.row();
        text += cell.data().toString();
    }
    return text;
}

/// Wide enough for its head and its cells.
void fitColumns(QTableView& table)
{
    const QFontMetrics heads(table.horizontalHeader()->font());
    const QFontMetrics cells(table.font());
    const QAbstractItemModel& model = *table.model();
    for (int column = 0; column < model.columnCount(); ++column) {
        int width = heads.horizontalAdvance(model.headerData(column, Qt::Horizontal).toString()) + kColumnHeadRoom;
        for (int row = 0; row < model.rowCount(); ++row) {
            width = std::max(width, cells.horizontalAdvance(model.index(row, column).data().toString()) + kCellRoom);
        }
        table.setColumnWidth(column, width);
    }
}

}  // namespace

TrendTables::TrendTables(const common::Look& look, QWidget* parent) : QScrollArea(parent), m_look(look), m_column(nullptr)
{
    setWidgetResizable(true);
    setFrameShape(QFrame::NoFrame);
    setFocusPolicy(Qt::NoFocus);
    connect(&look, &common::Look::changed, this, &TrendTables::dress);
}

void TrendTables::setSheets(const std::vector<TrendSheet>& sheets, const QStringList& notes)
{
    m_sheets = sheets;
    m_tables.clear();
    m_labels.clear();
    auto* content = new QWidget;
    m_column = new QVBoxLayout(content);
    m_column->setContentsMargins(kTablesEdge, kTablesEdge, kTablesEdge, kTablesEdge);
    m_column->setSpacing(kTablesGap);
    for (const TrendSheet& sheet : sheets) {
        addSheet(sheet);
    }
    for (const QString& note : notes) {
        addLabel(note, false);
    }
    m_column->addStretch(1);
    setWidget(content);
    dress();
}

void TrendTables::addLabel(const QString& text, bool isHead)
{
    auto* label = new QLabel(text);
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    label->setProperty("head", isHead);
    m_labels.push_back(label);
    m_column->addWidget(label);
}

void TrendTables::addSheet(const TrendSheet& sheet)
{
    addLabel(sheet.title, true);
    auto* table = new QTableView;
    table->setModel(new SheetModel(sheet, table));
    table->setAccessibleName(sheet.title);
    table->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table->setTabKeyNavigation(false);
    table->verticalHeader()->hide();
    table->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    table->horizontalHeader()->setHighlightSections(false);
    table->setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
    m_tables.push_back(table);
    m_column->addWidget(table);
}

void TrendTables::dress()
{
    const common::Theme& theme = m_look.theme();
    for (QLabel* label : m_labels) {
        label->setFont(theme.font(label->property("head").toBool() ? common::TextStyle::Section : common::TextStyle::Small));
    }
    for (QTableView* table : m_tables) {
        const auto row = static_cast<int>(theme.scaled(kTableRow));
        table->setFont(theme.font(common::TextStyle::Small));
        table->horizontalHeader()->setFont(theme.font(common::TextStyle::Micro));
        table->verticalHeader()->setDefaultSectionSize(row);
        table->horizontalHeader()->setFixedHeight(row);
        fitColumns(*table);
        const int bar = table->horizontalScrollBar()->sizeHint().height();
        table->setFixedHeight(row * (table->model()->rowCount() + 1) + 2 * table->frameWidth() + bar);
    }
}

QString TrendTables::copyText() const
{
    for (const QTableView* table : m_tables) {
        if (table->hasFocus() && table->selectionModel()->hasSelection()) {
            return selectedText(*table);
        }
    }
    QStringList all;
    for (const TrendSheet& sheet : m_sheets) {
        all.append(tabbedTextOf(sheet));
    }
    return all.join(QLatin1Char('\n'));
}

void TrendTables::focusFirst()
{
    if (!m_tables.empty()) {
        m_tables.front()->setFocus();
    }
}

}  // namespace chalk::ui::trends
