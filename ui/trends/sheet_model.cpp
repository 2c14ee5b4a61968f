#include "ui/trends/sheet_model.h"

namespace chalk::ui::trends {

int SheetModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_sheet.rows.size());
}

int SheetModel::columnCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_sheet.heads.size());
}

QVariant SheetModel::data(const QModelIndex& index, int role) const
{
    if (!index.isValid()) {
        return {};
    }
    if (role == Qt::DisplayRole) {
        return m_sheet.rows[static_cast<std::size_t>(index.row())][index.column()];
    }
    if (role == Qt::TextAlignmentRole) {
        return QVariant::fromValue(Qt::AlignVCenter | (index.column() < m_sheet.textColumns ? Qt::AlignLeft : Qt::AlignRight));
    }
    return {};
}

QVariant SheetModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal) {
        return {};
    }
    if (role == Qt::DisplayRole) {
        return m_sheet.heads[section];
    }
    if (role == Qt::TextAlignmentRole) {
        return QVariant::fromValue(Qt::AlignVCenter | (section < m_sheet.textColumns ? Qt::AlignLeft : Qt::AlignRight));
    }
    return {};
}

}  // namespace chalk::ui::trends
