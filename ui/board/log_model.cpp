#include "ui/board/log_model.h"

#include "ui/board/client_case.h"
#include "ui/board/log_row.h"

#include <algorithm>

namespace chalk::ui::board {

namespace {

QString joined(const QString& first, const QString& second)
{
    return second.isEmpty() ? first : QStringLiteral("%1, %2").arg(first, second);
}

QString mainText(const LogRow& row, int column)
{
    switch (static_cast<LogModel::Column>(column)) {
    case LogModel::Day:
        return row.day;
    case LogModel::Lift:
        return row.lift;
    case LogModel::What:
        return row.what;
    case LogModel::Decision:
        return row.decision;
    case LogModel::Next:
        return row.next;
    case LogModel::ColumnCount:
        break;
    }
    return {};
}

QString noteTextOf(const LogRow& row, int column)
{
    switch (static_cast<LogModel::Column>(column)) {
    case LogModel::Day:
        return row.dayNote;
    case LogModel::Lift:
        return row.isCorrected ? joined(row.stageText, LogModel::tr("corrected")) : row.stageText;
    case LogModel::What:
        return row.whatNote;
    case LogModel::Decision:
        return row.rules;
    case LogModel::Next:
        return row.nextNote;
    case LogModel::ColumnCount:
        break;
    }
    return {};
}

}  // namespace

LogModel::LogModel(QObject* parent) : QAbstractTableModel(parent)
{
}

LogModel::~LogModel() = default;

const LogRow& LogModel::row(int index) const
{
    return m_shown[static_cast<std::size_t>(index)];
}

void LogModel::setCase(const ClientCase& client)
{
    m_all = logRowsOf(client);
    filter();
}

void LogModel::setFilter(std::optional<lifts::Pattern> pattern, std::optional<progression::Stage> stage)
{
    m_pattern = pattern;
    m_stage = stage;
    filter();
}

void LogModel::filter()
{
    beginResetModel();
    m_shown.clear();
    std::copy_if(m_all.begin(), m_all.end(), std::back_inserter(m_shown),
                 [this](const LogRow& row) { return (!m_pattern || row.pattern == m_pattern) && (!m_stage || row.stage == m_stage); });
    endResetModel();
}

int LogModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_shown.size());
}

int LogModel::columnCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : ColumnCount;
}

QVariant LogModel::data(const QModelIndex& index, int role) const
{
    if (!index.isValid()) {
        return {};
    }
    const LogRow& shown = row(index.row());
    const QString text = mainText(shown, index.column());
    const QString note = noteTextOf(shown, index.column());
    switch (role) {
    case Qt::DisplayRole:
        return text;
    case NoteRole:
        return note;
    case Qt::ToolTipRole:
    case Qt::AccessibleTextRole:
        return text.isEmpty() ? note : joined(text, note);
    case RowRole:
        return static_cast<int>(shown.kind);
    default:
        return {};
    }
}

QVariant LogModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole) {
        return {};
    }
    switch (static_cast<Column>(section)) {
    case Day:
        return tr("Session");
    case Lift:
        return tr("Lift");
    case What:
        return tr("Done");
    case Decision:
        return tr("Decision");
    case Next:
        return tr("Then next");
    case ColumnCount:
        break;
    }
    return {};
}

}  // namespace chalk::ui::board
