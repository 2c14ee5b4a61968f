#include "ui/roster/roster_model.h"

#include <algorithm>

namespace chalk::ui::roster {

namespace {

QString flagsText(const RosterRow& row)
{
    QStringList words;
    for (const checkin::ClientFlag flag : row.flags) {
        words.append(tagOf(flag).text);
    }
    return words.join(QStringLiteral(", "));
}

/// A column in words.
QString columnText(const RosterRow& row, RosterColumn column)
{
    switch (column) {
    case RosterColumn::Client:
        return row.name + QStringLiteral(", ") + row.detail;
    case RosterColumn::Next:
        return row.where.isEmpty() ? row.when : row.when + QStringLiteral(", ") + row.where;
    case RosterColumn::Lifts:
        return common::liftStripText(row.strip);
    case RosterColumn::Sessions:
        return common::attendanceText(row.attendance);
    case RosterColumn::Load:
        return row.load.change;
    case RosterColumn::Flags:
        return flagsText(row);
    }
    return {};
}

}  // namespace

void RosterModel::setRows(std::vector<RosterRow> rows)
{
    beginResetModel();
    m_rows = std::move(rows);
    endResetModel();
}

const RosterRow* RosterModel::rowAt(const QModelIndex& index)
{
    return index.data(kRowRole).value<const RosterRow*>();
}

int RosterModel::rowOf(base::ClientId client) const
{
    const auto found = std::find_if(m_rows.begin(), m_rows.end(), [client](const RosterRow& row) { return row.client == client; });
    return found == m_rows.end() ? -1 : static_cast<int>(found - m_rows.begin());
}

void RosterModel::setSessionsShown(int count)
{
    if (m_sessionsShown != count) {
        m_sessionsShown = count;
        const int column = static_cast<int>(RosterColumn::Sessions);
        Q_EMIT headerDataChanged(Qt::Horizontal, column, column);
    }
}

int RosterModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

int RosterModel::columnCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : kRosterColumns;
}

QVariant RosterModel::data(const QModelIndex& index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid | CheckIndexOption::ParentIsInvalid)) {
        return {};
    }
    const RosterRow& row = m_rows[static_cast<std::size_t>(index.row())];
    switch (role) {
    case kRowRole:
        return QVariant::fromValue(&row);
    case Qt::DisplayRole:
    case Qt::AccessibleTextRole:
        return columnText(row, static_cast<RosterColumn>(index.column()));
    default:
        return {};
    }
}

QVariant RosterModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole || section < 0 || section >= kRosterColumns) {
        return {};
    }
    switch (static_cast<RosterColumn>(section)) {
    case RosterColumn::Client:
        return tr("Client");
    case RosterColumn::Next:
        return tr("Next session");
    case RosterColumn::Lifts:
        return tr("Lifts");
    case RosterColumn::Sessions:
        return m_sessionsShown > 6 ? tr("Last %1 sessions").arg(m_sessionsShown) : tr("Last %1").arg(m_sessionsShown);
    case RosterColumn::Load:
        return tr("Load, 8 weeks");
    case RosterColumn::Flags:
        return tr("Flags");
    }
    return {};
}

}  // namespace chalk::ui::roster
