#include "ui/check_in/queue_model.h"

#include <algorithm>

namespace chalk::ui::check_in {

using checkin::FindingKind;

QString iconOf(FindingKind kind)
{
    switch (kind) {
    case FindingKind::Pain:
        return QStringLiteral("pain");
    case FindingKind::Clearance:
        return QStringLiteral("clearance");
    case FindingKind::Plateau:
        return QStringLiteral("plateau");
    case FindingKind::Direction:
        return QStringLiteral("direction");
    case FindingKind::Attendance:
        return QStringLiteral("phone");
    case FindingKind::Rescreen:
        return QStringLiteral("rescreen");
    case FindingKind::OnCourse:
        return QStringLiteral("steady");
    }
    return {};
}

common::Signal signalOf(FindingKind kind)
{
    switch (kind) {
    case FindingKind::Pain:
    case FindingKind::Clearance:
        return common::Signal::Pain;
    case FindingKind::Plateau:
    case FindingKind::Attendance:
        return common::Signal::Warn;
    case FindingKind::Direction:
    case FindingKind::OnCourse:
        return common::Signal::Ok;
    case FindingKind::Rescreen:
        return common::Signal::Info;
    }
    return common::Signal::Muted;
}

void QueueModel::setRows(std::vector<QueueRow> rows)
{
    const bool isSameClients = std::ranges::equal(rows, m_rows, {}, &QueueRow::client, &QueueRow::client);
    if (!isSameClients) {
        beginResetModel();
        m_rows = std::move(rows);
        endResetModel();
        return;
    }
    m_rows = std::move(rows);
    if (!m_rows.empty()) {
        Q_EMIT dataChanged(index(0), index(rowCount() - 1));
    }
}

int QueueModel::rowOf(base::ClientId client) const
{
    const auto at = std::ranges::find(m_rows, client, &QueueRow::client);
    return at == m_rows.end() ? -1 : static_cast<int>(at - m_rows.begin());
}

int QueueModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

QVariant QueueModel::data(const QModelIndex& index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) {
        return {};
    }
    const QueueRow& row = m_rows[static_cast<std::size_t>(index.row())];
    switch (role) {
    case Qt::DisplayRole:
        return row.name;
    case Qt::AccessibleTextRole: {
        const QString state = row.isDecided ? tr(", decided") : row.isSkipped ? tr(", skipped") : QString();
        return QStringLiteral("%1, %2, %3%4").arg(row.name, row.finding, row.why, state);
    }
    case Qt::ToolTipRole:
        return QStringLiteral("%1: %2").arg(row.finding, row.why);
    default:
        return {};
    }
}

}  // namespace chalk::ui::check_in
