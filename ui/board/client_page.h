#pragma once

#include "ui/shell/page.h"

#include <QString>

#include <functional>
#include <memory>

class QLabel;
class QStackedLayout;
class QTabBar;
class QVBoxLayout;

namespace chalk::lifts {
class Catalogue;
}

namespace chalk::store {
class Database;
}

namespace chalk::ui::common {
class ActHistory;
class ActionButton;
class Clock;
class Dialogs;
class EmptyState;
class Look;
class PageHeader;
}  // namespace chalk::ui::common

namespace chalk::ui::direction {
class DirectionTab;
}

namespace chalk::ui::history {
class HistoryTab;
}

namespace chalk::ui::board {

class BoardTab;
class ClientPresenter;
class HealthTab;
class LiftDecisions;
class Painted;
class SessionsTab;
struct ClientCase;

/// What the client page works with. Everything outlives the page.
struct ClientPageServices {
    store::Database& database;
    const lifts::Catalogue& catalogue;
    const common::Look& look;
    const common::Clock& clock;
    common::ActHistory& acts;
    std::function<QString()> atUtc;  ///< the moment of an act, ISO 8601
    common::Dialogs& dialogs;
};

/// One client: the stage board, all sessions, health, the direction, the history of changes. What the coach decides about a lift is written here and can be undone.
class ClientPage : public shell::Page {
    Q_OBJECT

public:
    explicit ClientPage(ClientPageServices services, QWidget* parent = nullptr);
    ~ClientPage() override;

    [[nodiscard]] QString title() const override;
    /// Shows the client of the place; its tab is `board`, `sessions`, `health`, `direction` or `history`, its lift is selected.
    void open(const shell::Place& place) override;
    [[nodiscard]] shell::Place place() const override;
    void refresh() override;
    [[nodiscard]] std::vector<shell::KeyHint> keyHints() const override;
    [[nodiscard]] std::optional<shell::OpenClient> openClient() const override;
    [[nodiscard]] bool canPrint() const override;
    void print() override;
    bool closeOrClear() override;
    void setRoom(bool isNarrow, bool isLow) override;

Q_SIGNALS:
    /// A session card of this client is wanted.
    void cardAsked(base::ClientId client);
    /// A progress report of this client is wanted.
    void reportAsked(base::ClientId client);
    /// The plan that this client follows is wanted on paper.
    void planAsked(base::ClientId client);
    /// All that is kept of this client is wanted as files.
    void dossierAsked(base::ClientId client);
    /// This client asks to be erased.
    void erasureAsked(base::ClientId client);

private:
    enum class Tab { Board, Sessions, Health, Direction, History };

    void makeHeader();
    void makeBody();
    void makeActions();
    void makeRecordActions();
    QAction* addPageAction(const QString& text, const QKeySequence& key, std::function<void()> does);
    void showCase();
    void showFailure(const QString& message);
    void showBanners();
    void showTab(int tab);
    void readActions();
    /// Whether Ctrl+P means the plan of the client.
    [[nodiscard]] bool isPlanInFront() const;

    void record();
    void askForReport();
    void goToStep(const QString& step);
    void readAfterWriting();

    ClientPageServices m_services;
    std::unique_ptr<ClientPresenter> m_presenter;
    std::unique_ptr<ClientCase> m_case;
    base::ClientId m_client;

    common::PageHeader* m_header;
    Painted* m_initials;
    QLabel* m_nextSession;
    common::ActionButton* m_report;
    common::ActionButton* m_card;
    common::ActionButton* m_record;
    QTabBar* m_tabs;
    QWidget* m_bannerBox;
    QVBoxLayout* m_banners;
    QStackedLayout* m_pages;
    BoardTab* m_board;
    SessionsTab* m_sessions;
    HealthTab* m_health;
    direction::DirectionTab* m_direction;
    history::HistoryTab* m_history;
    LiftDecisions* m_decisions;
    common::EmptyState* m_failure;
    QAction* m_changeAction = nullptr;
    QAction* m_holdAction = nullptr;
    QAction* m_swapAction = nullptr;
    QAction* m_releaseAction = nullptr;
    QAction* m_testAction = nullptr;
    QAction* m_recordAction = nullptr;
    QAction* m_reportAction = nullptr;
};

}  // namespace chalk::ui::board
