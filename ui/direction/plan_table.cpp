#include "ui/direction/plan_table.h"

#include "ui/common/look.h"

#include <QHeaderView>
#include <QStandardItemModel>
#include <QStyledItemDelegate>

#include <algorithm>
#include <numeric>

namespace chalk::ui::direction {

namespace {

constexpr int kPlanRowHeight = 29;
constexpr int kPlanCellRoom = 18;
constexpr int kPlanFirstRoom = 30;
constexpr int kPlanCellPad = 4;
constexpr int kPlanFirstPad = 13;

/// Text that stands under the text of its head.
class PlanCellDelegate : public QStyledItemDelegate {
public:
    using QStyledItemDelegate::QStyledItemDelegate;

    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override
    {
        QStyleOptionViewItem padded = option;
        padded.rect.adjust(index.column() == 0 ? kPlanFirstPad : kPlanCellPad, 0, 0, 0);
        QStyledItemDelegate::paint(painter, padded, index);
    }
};

}  // namespace

PlanTable::PlanTable(const common::Look& look, const QString& name, int mostRows, QWidget* parent)
    : QTableView(parent), m_look(look), m_model(new QStandardItemModel(this)), m_mostRows(mostRows)
{
    setModel(m_model);
    setAccessibleName(name);
    setShowGrid(false);
    setFrameShape(QFrame::NoFrame);
    setSelectionBehavior(QAbstractItemView::SelectRows);
    setSelectionMode(QAbstractItemView::SingleSelection);
    setEditTriggers(QAbstractItemView::NoEditTriggers);
    setTabKeyNavigation(false);
    setWordWrap(false);
    setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
    setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Maximum);
    setItemDelegate(new PlanCellDelegate(this));
    setHorizontalScrollBarPolicy(Qt::ScrollBarAsNeeded);
    horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    verticalHeader()->hide();
    verticalHeader()->setMinimumSectionSize(1);
    horizontalHeader()->setHighlightSections(false);
    horizontalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    connect(&look, &common::Look::changed, this, &PlanTable::fit);
    fit();
}

void PlanTable::setContent(const QStringList& heads, const std::vector<QStringList>& rows)
{
    m_model->clear();
    m_model->setHorizontalHeaderLabels(heads);
    for (const QStringList& row : rows) {
        QList<QStandardItem*> items;
        for (const QString& cell : row) {
            auto* item = new QStandardItem(cell);
            item->setEditable(false);
            items.append(item);
        }
        items.front()->setFont(m_look.theme().font(13, QFont::DemiBold));
        m_model->appendRow(items);
    }
    fit();
}

QString PlanTable::text(int row, int column) const
{
    return m_model->index(row, column).data().toString();
}

void PlanTable::setMostRows(int rows)
{
    m_mostRows = rows;
    updateGeometry();
}

int PlanTable::rowHeightNow() const
{
    return qRound(m_look.theme().scaled(kPlanRowHeight));
}

QSize PlanTable::sizeHint() const
{
    const int rows = std::clamp(m_model->rowCount(), 1, m_mostRows);
    return {400, horizontalHeader()->sizeHint().height() + rows * rowHeightNow() + 4};
}

QSize PlanTable::minimumSizeHint() const
{
    const int rows = std::clamp(m_model->rowCount(), 1, 2);
    return {200, horizontalHeader()->sizeHint().height() + rows * rowHeightNow() + 4};
}

void PlanTable::resizeEvent(QResizeEvent* event)
{
    QTableView::resizeEvent(event);
    fit();
}

/// Each column has what its words need; what is left over is shared out.
void PlanTable::fit()
{
    const common::Theme& theme = m_look.theme();
    const QFont body = theme.font(common::TextStyle::Small);
    setFont(body);
    const QFontMetrics cells(theme.font(13, QFont::DemiBold));
    const QFontMetrics heads(theme.font(12, QFont::DemiBold));
    std::vector<int> widths;
    for (int column = 0; column < m_model->columnCount(); ++column) {
        const int room = qRound(theme.scaled(column == 0 ? kPlanFirstRoom : kPlanCellRoom));
        int width = heads.horizontalAdvance(m_model->headerData(column, Qt::Horizontal).toString()) + room;
        for (int row = 0; row < m_model->rowCount(); ++row) {
            width = std::max(width, (column == 0 ? cells : QFontMetrics(body)).horizontalAdvance(text(row, column)) + room);
        }
        widths.push_back(width);
    }
    const int left = viewport()->width() - std::accumulate(widths.begin(), widths.end(), 0);
    for (int column = 0; column < m_model->columnCount(); ++column) {
        setColumnWidth(column, widths[static_cast<std::size_t>(column)] + std::max(0, left) / m_model->columnCount());
    }
    verticalHeader()->setDefaultSectionSize(rowHeightNow());
    updateGeometry();
}

}  // namespace chalk::ui::direction
