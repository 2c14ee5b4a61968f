#pragma once

#include "core/lifts/pattern.h"
#include "core/progression/stage.h"

#include <QWidget>

#include <optional>

class QComboBox;
class QLabel;
class QStackedLayout;
class QTableView;

namespace chalk::ui::common {
class EmptyState;
class Look;
}  // namespace chalk::ui::common

namespace chalk::ui::board {

class LogModel;
struct ClientCase;

/// All sessions of a client: what was done, what was decided and by which rule, and what corrections replaced.
class SessionsTab : public QWidget {
    Q_OBJECT

public:
    /// `look` outlives the tab.
    explicit SessionsTab(const common::Look& look, QWidget* parent = nullptr);

    /// Reads the case now; nothing of it is kept.
    void setCase(const ClientCase& client);
    /// Shows only one pattern, only one stage of it; nothing shows all.
    void setFilter(std::optional<lifts::Pattern> pattern, std::optional<progression::Stage> stage);
    /// True where a filter was set and is taken away now.
    bool clearFilter();
    void takeFocus();

private:
    void applyFilter();
    void fit();
    void tell();

    const common::Look& m_look;
    LogModel* m_model;
    QComboBox* m_lift;
    QComboBox* m_stage;
    QLabel* m_count;
    QTableView* m_table;
    common::EmptyState* m_empty;
    QStackedLayout* m_pages;
};

}  // namespace chalk::ui::board
