#pragma once

#ifndef Q_MOC_RUN  // moc stumbles over the standard library behind it
#include "ui/week/offer_search.h"
#include "ui/week/week_desk.h"
#include "ui/week/week_filling.h"
#include "ui/week/week_sending.h"
#endif
#include "ui/shell/page.h"
#include "ui/week/proposal_bar.h"

class QLabel;
class QListView;
class QStackedLayout;

namespace chalk::ui::common {
class ActionButton;
class Banner;
class Dialogs;
class EmptyState;
class Look;
class PageHeader;
class Panel;
class SegmentedChoice;
}  // namespace chalk::ui::common

namespace chalk::ui::week {

class LeftOverModel;
class MonthGrid;
class MonthStrip;
class WeekGrid;
class WeekLegend;
struct ConflictWords;
struct SlotActs;

/// What the page works with. Everything outlives the page.
struct WeekServices {
    const common::Look& look;
    WeekStudio studio;
    common::Dialogs& dialogs;
    FillSearch fill = searchForFill;
};

/// A week of the studio: who comes when, to whom, and what is left over. Filling it only proposes; each change that is saved is undone by Ctrl+Z.
class WeekPage : public shell::Page {
    Q_OBJECT

public:
    explicit WeekPage(const WeekServices& services, QWidget* parent = nullptr);
    ~WeekPage() override;

    [[nodiscard]] QString title() const override { return tr("Week"); }
    void open(const shell::Place& place) override;
    void refresh() override;
    [[nodiscard]] std::vector<shell::KeyHint> keyHints() const override;
    [[nodiscard]] bool canPrint() const override { return true; }
    void print() override;
    bool closeOrClear() override;
    void setRoom(bool isNarrow, bool isLow) override;

    [[nodiscard]] const WeekDesk& desk() const { return m_desk; }
    [[nodiscard]] WeekGrid* grid() const { return m_grid; }
    [[nodiscard]] bool isFilling() const { return m_filling.isRunning(); }
    /// Whether it is still being worked out what would help with what is left over.
    [[nodiscard]] bool isLookingForOffers() const { return m_offers.isRunning(); }

Q_SIGNALS:
    /// The week on show is wanted on paper, without what is proposed.
    void weekPaperAsked(const chalk::ui::print::RosterWeek& week);
    /// The cards of a day are wanted, with those of its week offered.
    void weekCardsAsked(base::Date day);
    /// The sheet of the group with that session is wanted.
    void groupAsked(base::Date day, base::SessionId session);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void build();
    void buildHeader();
    void buildWeek(QWidget* left);
    void buildTray();
    void buildActions();
    void addPageAction(const QString& text, const QList<QKeySequence>& keys, std::function<void()> act);

    /// `isFocusMoved`: the focus goes to where work goes on.
    void showWeek(bool isFocusMoved);
    void showItems();
    void showHeader();
    void showBar();
    void showEmpty();
    /// After an act: tells the others where it was done, and shows what came of it.
    void settle(bool isDone);

    void goTo(base::Date day);
    /// To the week before or after, or to the month.
    void step(int by);
    void offerPapers();
    void printCards();
    void showMonth(bool isMonth);
    void openBlock(int index, const QPoint& at);
    [[nodiscard]] SlotActs actsOf(const WeekBlock& block);
    void addSession();
    void editHours();
    void toggleLock();
    void takeAway();
    void move();
    void beginMove(const Wishes& wishes, const QString& names);
    void keepAll();
    void fill();
    void copyLastWeek();
    void takeOffer(int row);
    void openPlace(const QString& page, base::ClientId client, const QString& tab);
    [[nodiscard]] ConflictWords conflictOf(std::size_t block) const;
    /// Whether whoever works here may see and change training, wishes and hours too, and not only book.
    [[nodiscard]] bool isTrainingShown() const;
    /// Without the offers of what whoever works here may not do.
    [[nodiscard]] std::vector<LeftOverItem> doable(std::vector<LeftOverItem> items) const;
    /// The row of the tray that speaks of a block's first conflict; nothing where it has none.
    [[nodiscard]] std::optional<int> conflictRow(std::size_t block) const;
    void mend();
    void takeFound(const chalk::week::WeekPlan& plan);
    void endSearch();
    void say(const ProposalWords& news);
    /// Of those whose bookings a proposal changes, before it is kept.
    [[nodiscard]] ProposalWords changeWords() const;
    /// Keeps what is proposed, or copies the words for those who have to be told.
    void goOn();
    [[nodiscard]] QString wordsToSend() const;
    [[nodiscard]] WeekToSend weekToSend() const;
    void sayOf(const SendingOutcome& outcome);
    void sendCalendar(const WeekRecipient& recipient);
    void sendTable();
    void copyWeek(const WeekRecipient& recipient);

    WeekServices m_services;
    WeekDesk m_desk;
    WeekFilling m_filling;
    OfferSearch m_offers;
    bool m_isNarrow = false;
    bool m_isMonth = false;
    bool m_isMending = false;  ///< the search that is under way mends the week
    ProposalWords m_news;      ///< what was done last, until something else is on the bar
    QString m_toSend;          ///< words for those who have to be told of what was kept
    QString m_movingWhere;
    QString m_movingReason;

    common::PageHeader* m_header = nullptr;
    common::SegmentedChoice* m_span = nullptr;
    common::ActionButton* m_hours = nullptr;
    common::ActionButton* m_print = nullptr;
    common::ActionButton* m_fill = nullptr;
    MonthStrip* m_strip = nullptr;
    ProposalBar* m_bar = nullptr;
    common::Banner* m_trouble = nullptr;
    QStackedLayout* m_stack = nullptr;
    WeekGrid* m_grid = nullptr;
    MonthGrid* m_month = nullptr;
    common::EmptyState* m_empty = nullptr;
    common::ActionButton* m_copy = nullptr;
    common::Panel* m_tray = nullptr;
    LeftOverModel* m_items = nullptr;
    QListView* m_list = nullptr;
    QLabel* m_hint = nullptr;
    WeekLegend* m_legend = nullptr;
};

}  // namespace chalk::ui::week
