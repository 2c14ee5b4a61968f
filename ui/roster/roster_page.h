#pragma once

#include "ui/roster/roster_filter.h"
#include "ui/roster/roster_presenter.h"
#include "ui/roster/roster_reach.h"
#include "ui/shell/page.h"

namespace chalk::ui::common {
class ActionButton;
class Look;
class PageHeader;
class Panel;
class SearchField;
}

namespace chalk::ui::roster {

class AttentionList;
class AttentionModel;
class ClientPane;
class PeekPopup;

/// Everybody at a glance, and what needs attention today. Clients and lifts are opened by placeAsked, on the page `client`.
class RosterPage : public shell::Page {
    Q_OBJECT

public:
    /// Reads from `source` at once. `look` and `clock` outlive the page.
    RosterPage(const common::Look& look, const common::Clock& clock, std::unique_ptr<RosterSource> source, QWidget* parent = nullptr,
               RosterReach reach = RosterReach::Training);

    [[nodiscard]] QString title() const override;
    /// Selects the client of the place, and takes its text as the filter.
    void open(const shell::Place& place) override;
    /// With the selected client.
    [[nodiscard]] shell::Place place() const override;
    void refresh() override;
    [[nodiscard]] std::vector<shell::KeyHint> keyHints() const override;
    [[nodiscard]] bool canPrint() const override;
    /// Asks for the card of the selected client, as P does.
    void print() override;
    [[nodiscard]] QWidget* filterField() override;
    bool closeOrClear() override;
    void setRoom(bool isNarrow, bool isLow) override;

Q_SIGNALS:
    /// A session card of this client is wanted.
    void cardAsked(base::ClientId client);

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    void buildHeader();
    void buildBody();
    void addActions();
    void addTrainingActions();
    void addPageAction(const QString& text, const QKeySequence& key, void (RosterPage::*run)());
    void connectParts();
    void connectTraining();
    [[nodiscard]] bool isTrainingShown() const { return m_reach == RosterReach::Training; }
    void dress();
    void showView();
    void applyCriteria(const RosterCriteria& criteria);

    void openSelected();
    void askForCard();
    void readSelection();
    void peek();
    void chooseOrder();
    void chooseFilters();
    void goToAttention();
    void peekOn(int lines);
    void goToClient(base::ClientId client);
    void goToLift(base::ClientId client, lifts::Pattern pattern);
    void goToTrends(base::ClientId client);
    void showTrends();
    void goToImport();
    void goToDuplicates();
    void settleFlag(base::ClientId client, checkin::ClientFlag flag);
    void runItem(const AttentionItem& item);

    const common::Look& m_look;
    const RosterReach m_reach;
    RosterPresenter m_presenter;
    AttentionModel* m_attention;
    common::PageHeader* m_header;
    common::SearchField* m_field;
    common::ActionButton* m_filterButton;
    ClientPane* m_pane;
    common::Panel* m_attentionPanel;
    AttentionList* m_list;
    PeekPopup* m_peek;
    bool m_isNarrow = false;
    bool m_hasSelected = false;
};

}  // namespace chalk::ui::roster
