#pragma once

#include "ui/roster/roster_filter.h"
#include "ui/roster/roster_reach.h"

#include <QWidget>

class QMenu;
class QStackedWidget;

namespace chalk::ui::common {
class Banner;
class EmptyState;
class LoadingRows;
class Look;
}

namespace chalk::ui::roster {

class FilterBar;
class RosterModel;
class RosterTable;

/// The left part of the roster: chips, a banner where something is wrong, and the table of clients or what stands in its place.
class ClientPane : public QWidget {
    Q_OBJECT

public:
    /// `look` outlives the pane.
    ClientPane(const common::Look& look, RosterReach reach, QWidget* parent = nullptr);

    /// Shows another roster; the selected client stays selected where they still are.
    void setView(const RosterView& view);
    /// Says what went wrong above the rows that were read last; an empty message takes it away.
    void setFailure(const QString& message);
    /// Nothing has been read yet: grey rows after a moment.
    void beginLoading();

    void setCriteria(const RosterCriteria& criteria);
    [[nodiscard]] const RosterCriteria& criteria() const;
    [[nodiscard]] RosterTable& table() const { return *m_table; }
    [[nodiscard]] QMenu* filterMenu() const;
    /// Opens the menu of orders.
    void chooseOrder();
    /// Selects a client as soon as they are there.
    void selectClient(base::ClientId client);

Q_SIGNALS:
    void criteriaChanged(const chalk::ui::roster::RosterCriteria& criteria);
    void retryAsked();
    void newClientAsked();
    void importAsked();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void buildEmptyStates();
    void apply(const RosterCriteria& criteria);
    void keepSelection(base::ClientId client);
    void showWhatIsThere();
    void describeNoMatch();
    void followLink(const QString& link);

    const RosterReach m_reach;
    RosterModel* m_model;
    RosterFilter* m_filter;
    FilterBar* m_bar;
    common::Banner* m_banner;
    QStackedWidget* m_stack;
    RosterTable* m_table;
    common::EmptyState* m_noMatch;
    common::EmptyState* m_noClients;
    common::LoadingRows* m_loading;
    base::ClientId m_wanted;
    bool m_hasView = false;
};

}  // namespace chalk::ui::roster
