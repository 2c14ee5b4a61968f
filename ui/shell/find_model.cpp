#include "ui/shell/find_model.h"

#include <QAccessible>

namespace chalk::ui::shell {

namespace {

QString wordsOfParts(const FindItem& item)
{
    QString words;
    bool wasDetail = false;
    for (const FindPart& part : item.parts) {
        if (isDetail(part.weight) && !wasDetail && !words.isEmpty()) {
            words += QLatin1Char(' ');
        }
        wasDetail = isDetail(part.weight);
        words += part.text;
    }
    return words;
}

}  // namespace

void FindModel::setItems(std::vector<FindItem> items)
{
    beginResetModel();
    m_items = std::move(items);
    m_rows.clear();
    for (std::size_t i = 0; i < m_items.size(); ++i) {
        if (i == 0 || m_items[i].group != m_items[i - 1].group) {
            m_rows.push_back({std::nullopt, m_items[i].group == FindGroup::Do ? tr("Do") : tr("Go to")});
        }
        m_rows.push_back({i, {}});
    }
    endResetModel();
}

int FindModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

QVariant FindModel::data(const QModelIndex& index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) {
        return {};
    }
    if (role != Qt::DisplayRole && role != Qt::AccessibleTextRole) {
        return {};
    }
    const FindItem* item = itemAt(index.row());
    return item == nullptr ? m_rows[static_cast<std::size_t>(index.row())].text : wordsOfParts(*item);
}

Qt::ItemFlags FindModel::flags(const QModelIndex& index) const
{
    if (!index.isValid() || itemAt(index.row()) == nullptr) {
        return Qt::NoItemFlags;
    }
    return Qt::ItemIsEnabled | Qt::ItemIsSelectable;
}

const FindItem* FindModel::itemAt(int row) const
{
    if (row < 0 || row >= rowCount()) {
        return nullptr;
    }
    const Row& entry = m_rows[static_cast<std::size_t>(row)];
    return entry.item ? &m_items[*entry.item] : nullptr;
}

int FindModel::resultRow(int row, int step) const
{
    for (int at = row; at >= 0 && at < rowCount(); at += step) {
        if (itemAt(at) != nullptr) {
            return at;
        }
    }
    return -1;
}

}  // namespace chalk::ui::shell
