#pragma once

#include "core/lifts/pattern.h"
#include "core/progression/stage.h"

#include <QAbstractTableModel>

#include <optional>
#include <vector>

namespace chalk::ui::board {

struct ClientCase;
struct LogRow;

/// All that was done and decided with a client, the newest first; a lift and a stage can be picked out of it.
class LogModel : public QAbstractTableModel {
    Q_OBJECT

public:
    enum Column { Day, Lift, What, Decision, Next, ColumnCount };
    enum Role { RowRole = Qt::UserRole + 1, NoteRole };

    explicit LogModel(QObject* parent = nullptr);
    ~LogModel() override;

    /// Reads the case now; nothing of it is kept.
    void setCase(const ClientCase& client);
    /// Shows only one pattern, only one stage of it; nothing shows all.
    void setFilter(std::optional<lifts::Pattern> pattern, std::optional<progression::Stage> stage);

    [[nodiscard]] const LogRow& row(int index) const;
    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    void filter();

    std::vector<LogRow> m_all;
    std::vector<LogRow> m_shown;
    std::optional<lifts::Pattern> m_pattern;
    std::optional<progression::Stage> m_stage;
};

}  // namespace chalk::ui::board
