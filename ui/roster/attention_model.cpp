#include "ui/roster/attention_model.h"

namespace chalk::ui::roster {

void AttentionModel::setItems(std::vector<AttentionItem> items)
{
    beginResetModel();
    m_items = std::move(items);
    endResetModel();
}

const AttentionItem* AttentionModel::itemAt(const QModelIndex& index)
{
    return index.data(kItemRole).value<const AttentionItem*>();
}

int AttentionModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_items.size());
}

QVariant AttentionModel::data(const QModelIndex& index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid | CheckIndexOption::ParentIsInvalid)) {
        return {};
    }
    const AttentionItem& item = m_items[static_cast<std::size_t>(index.row())];
    switch (role) {
    case kItemRole:
        return QVariant::fromValue(&item);
    case Qt::DisplayRole:
        return item.name;
    case Qt::AccessibleTextRole:
        return tr("%1, %2: %3 %4").arg(item.name, tagOf(item.flag).text, item.sentence, item.action);
    default:
        return {};
    }
}

}  // namespace chalk::ui::roster
