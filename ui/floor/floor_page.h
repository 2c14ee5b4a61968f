#pragma once

#ifndef Q_MOC_RUN  // moc stumbles over the standard library behind it
#include "ui/floor/floor_desk.h"
#include "ui/floor/lift_boxes.h"
#include "ui/floor/rest_watch.h"
#endif
#include "ui/shell/page.h"

class QLabel;
class QListView;
class QStackedLayout;

namespace chalk::ui::common {
class ActionButton;
class Banner;
class EmptyState;
class Look;
class PageHeader;
class Panel;
}  // namespace chalk::ui::common

namespace chalk::ui::floor {

class CardPane;
class ClientTabs;
class EntryPane;
class LiftRowsModel;
class LiftTable;
class ReportStrip;
class RestTimerStrip;
class RunModel;

/// What the page works with. Everything outlives the page.
struct FloorServices {
    const common::Look& look;
    const common::Clock& clock;
    common::ActHistory& acts;
    FloorPresenter& presenter;
    RestServices rests = {};
};

/// A day's run, and the results of its sessions typed in a line a lift: what follows next time is said at every key, Enter saves
/// and goes to the next lift, Ctrl+Enter to the next client. Earlier days are there to be corrected.
class FloorPage : public shell::Page {
    Q_OBJECT

public:
    explicit FloorPage(const FloorServices& services, QWidget* parent = nullptr);
    ~FloorPage() override;

    [[nodiscard]] QString title() const override { return tr("Floor"); }
    /// Shows the session or the client of the place; its text is typed in the line of the first open lift.
    void open(const shell::Place& place) override;
    [[nodiscard]] shell::Place place() const override;
    void refresh() override;
    [[nodiscard]] std::vector<shell::KeyHint> keyHints() const override;
    [[nodiscard]] bool canPrint() const override;
    void print() override;
    bool closeOrClear() override;
    bool showNextClient() override;
    void setRoom(bool isNarrow, bool isLow) override;

    [[nodiscard]] const FloorDesk& desk() const { return m_desk; }

Q_SIGNALS:
    /// The card of the client on show is wanted.
    void cardAsked(const chalk::ui::floor::FloorClient& client);
    /// All cards of a day are wanted.
    void dayCardsAsked(base::Date day);
    /// A rest ended while the page is not on show: to be said elsewhere, in these words.
    void restEnded(const QString& words);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    /// What can be done about the lift on show.
    struct LiftActions {
        QAction* skip = nullptr;
        QAction* swap = nullptr;
        QAction* test = nullptr;
        QAction* earlier = nullptr;
        QAction* later = nullptr;
        QAction* remove = nullptr;
    };

    void build();
    void buildHeader();
    void buildRun();
    void buildRecording();
    QWidget* buildFoot(QWidget* parent);
    /// To the line of the lift, or to what can be done where there is none.
    void focusWork();
    void buildActions();
    QAction* addPageAction(const QString& text, const QKeySequence& keys, std::function<void()> act);
    void buildRests();
    void addRestActions();
    /// Whether the page is too narrow for its text size to show the card beside the results.
    [[nodiscard]] bool isTight() const;
    void fitColumns();

    /// Shows what is on the desk; `isFocusMoved`: the focus goes to where work goes on.
    void showDesk(bool isFocusMoved);
    void showRun();
    void showTabs();
    void showRows();
    void showCard();
    void showEmpty();
    void buildReport(QWidget* parent);
    [[nodiscard]] bool hasEntry() const;

    void save(bool goesToNextClient);
    void goToDay(base::Date day);
    void moveLift(int by);
    void moveClient(int by);
    void moveSlot(int by);
    void skipLift();
    /// Offers the reasons for leaving a lift out.
    void offerReasons();
    /// Leaves the lift out; for another reason own words are asked for.
    void skipFor(sessions::SkipReason reason);
    void shiftLift(int by);
    /// Lets another exercise take the place of the lift's.
    void swapLift();
    /// Guides a test of the lift's maximum.
    void testLift();
    /// What can be done about the lift of a row, at a place of the screen.
    void offerLiftMenu(int row, const QPoint& at);
    void buildTable();
    void typeField(LiftField field, int set, const QString& text);
    /// Deletes what is saved for the lift, after saying what that changes.
    void deleteRecord();
    void addSession();
    /// What can become of the sessions of a slot, at a place of the screen.
    void offerStates(int slot, const QPoint& at);
    [[nodiscard]] QWidget* buildRunFoot();
    void offerLifts();
    void emptyAction();

    /// The rest that is due for the client on show: of the lift that was saved last, once; else of the lift on show.
    [[nodiscard]] std::optional<PlannedRest> dueRest() const;
    void startOrStopRest();
    void startRest();
    void holdRest();
    void showWall(bool isShown);
    [[nodiscard]] bool isWallShown() const;

    FloorServices m_services;
    FloorDesk m_desk;
    base::SessionId m_cardOf;  ///< whose card is in the pane
    bool m_isNarrow = false;
    bool m_hasNextClient = false;
    std::pair<base::SessionId, base::LiftId> m_justSaved;  ///< none once its rest was started or work went on elsewhere

    common::PageHeader* m_header = nullptr;
    common::Panel* m_runPanel = nullptr;
    RunModel* m_runModel = nullptr;
    QListView* m_runList = nullptr;
    ClientTabs* m_tabs = nullptr;
    QWidget* m_recording = nullptr;
    EntryPane* m_entry = nullptr;
    LiftRowsModel* m_rows = nullptr;
    LiftTable* m_table = nullptr;
    QWidget* m_reportBox = nullptr;
    ReportStrip* m_report = nullptr;
    QWidget* m_foot = nullptr;
    common::Banner* m_trouble = nullptr;
    common::EmptyState* m_empty = nullptr;
    common::ActionButton* m_emptyAction = nullptr;
    common::ActionButton* m_today = nullptr;
    common::ActionButton* m_states = nullptr;
    common::ActionButton* m_skip = nullptr;
    common::ActionButton* m_swap = nullptr;
    common::ActionButton* m_test = nullptr;  ///< in a plan's test week
    common::ActionButton* m_delete = nullptr;
    common::ActionButton* m_add = nullptr;
    common::ActionButton* m_next = nullptr;
    QLabel* m_nextHint = nullptr;
    CardPane* m_card = nullptr;
    RestWatch* m_rests = nullptr;
    RestTimerStrip* m_strip = nullptr;
    RestTimerStrip* m_wall = nullptr;
    QStackedLayout* m_stack = nullptr;
    LiftActions m_liftActions;
    QList<QAction*> m_workActions;  ///< of the floor, which rest while the wall is shown
};

}  // namespace chalk::ui::floor
