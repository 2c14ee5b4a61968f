#pragma once

#include "ui/roster/roster_row.h"

#include <QAbstractTableModel>

namespace chalk::ui::roster {

/// The columns of the roster, from left to right.
enum class RosterColumn { Client, Next, Lifts, Sessions, Load, Flags };
inline constexpr int kRosterColumns = 6;

/// The clients of the roster, one to a row, by name.
class RosterModel : public QAbstractTableModel {
    Q_OBJECT

public:
    /// The row ready to be painted, a `const RosterRow*` that lives until the model changes. On every column.
    static constexpr int kRowRole = Qt::UserRole;

    using QAbstractTableModel::QAbstractTableModel;

    /// Resets the model: who keeps a selection keeps the client, not the index.
    void setRows(std::vector<RosterRow> rows);
    [[nodiscard]] const std::vector<RosterRow>& rows() const { return m_rows; }
    /// The row of an index of this model or of a proxy of it; nothing for none.
    [[nodiscard]] static const RosterRow* rowAt(const QModelIndex& index);
    /// -1 where the client is not there.
    [[nodiscard]] int rowOf(base::ClientId client) const;
    /// How many sessions the column of the last ones has room for, for its title.
    void setSessionsShown(int count);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    /// Texts and accessible texts of every column; what is drawn is in words there.
    [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role = Qt::DisplayRole) const override;

private:
    std::vector<RosterRow> m_rows;
    int m_sessionsShown = 12;
};

}  // namespace chalk::ui::roster

Q_DECLARE_METATYPE(const chalk::ui::roster::RosterRow*)
