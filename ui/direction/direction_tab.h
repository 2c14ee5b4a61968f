#pragma once

#include "core/store/act.h"
#include "core/store/database.h"
#include "ui/direction/direction_case.h"
#include "ui/shell/page.h"

#include <QWidget>

#include <array>
#include <functional>
#include <memory>
#include <optional>

class QAction;
class QLabel;
class QStackedLayout;

namespace chalk::lifts {
class Catalogue;
}

namespace chalk::ui::common {
class ActHistory;
class ActionButton;
class Dialogs;
class EmptyState;
class Look;
class SegmentedChoice;
}  // namespace chalk::ui::common

namespace chalk::ui::direction {

class DirectionCards;
class DirectionDesk;
class DirectionSide;
class MonthsView;
class PlanComparison;
class PlanOutcome;
class PlanPanel;

/// What the tab works with. Everything outlives it.
struct DirectionServices {
    store::Database& database;
    const lifts::Catalogue& catalogue;
    const common::Look& look;
    common::ActHistory& acts;
    common::Dialogs& dialogs;
    std::function<QString()> atUtc;  ///< the moment of an act, ISO 8601
};

/// Where a client goes after the beginner months: the talk, the three directions and their plans; while a plan runs, that plan.
class DirectionTab : public QWidget {
    Q_OBJECT

public:
    explicit DirectionTab(DirectionServices services, QWidget* parent = nullptr);
    ~DirectionTab() override;

    /// The client as of a day. Read when the tab is seen, at once where it is.
    void setClient(base::ClientId client, base::Date today);
    void setRoom(bool isNarrow, bool isLow);
    /// Whether its keys are to be heard: those of its actions().
    void setInFront(bool isInFront);
    [[nodiscard]] std::vector<shell::KeyHint> keyHints() const;
    /// What is on show; null before anything was read, and where it could not be.
    [[nodiscard]] const DirectionCase* shown() const { return m_case.get(); }
    /// Whether there is a plan to be printed.
    [[nodiscard]] bool canPrint() const { return m_case && m_case->running; }

Q_SIGNALS:
    /// Something was written: the client is to be read again.
    void written();
    /// The plan of the client is wanted on paper.
    void planAsked(base::ClientId client);
    /// keyHints() or which of actions() can be used are different now.
    void keysChanged();

protected:
    void showEvent(QShowEvent* event) override;

private:
    static constexpr int kPlanPart = 0;   ///< answers of what is shown in the middle
    static constexpr int kDonePart = 1;
    static constexpr int kMonthsPart = 2;

    void makeParts();
    void makeButtons();
    [[nodiscard]] common::ActionButton* addButton(QWidget* parent, const QString& text);
    [[nodiscard]] QWidget* offerFoot();
    [[nodiscard]] QWidget* runningFoot();
    void connectParts();
    void makeKeys();
    void read();
    void showCase();
    void showOffer();
    void showRunning();
    void showPart();
    /// What is in the middle while plans are shown: the plan, the review of one that is over, or why there is none.
    [[nodiscard]] QWidget* planPart() const;
    /// Whether the plan that is over is to be looked at before another one is chosen.
    [[nodiscard]] bool isReviewFirst() const { return m_case->over && !m_isNextAsked; }
    void enableKeys();
    void choose(chalk::direction::Direction direction);
    void start();
    void oneMoreCycle();
    void takeUp();
    void edit();
    /// Puts what the coach changed in the place of what was offered.
    void takeEdits();
    void missWeeks();
    void end();
    /// Announces a write, or says why there was none.
    [[nodiscard]] store::Result<store::ActOutcome> change(const chalk::direction::ClientPlan& plan);
    void finish(const store::Result<store::ActOutcome>& outcome, const QString& words);

    DirectionServices m_services;
    std::unique_ptr<DirectionDesk> m_desk;
    std::unique_ptr<DirectionCase> m_case;
    base::ClientId m_client;
    base::Date m_today;
    bool m_isStale = false;
    bool m_isInFront = true;
    bool m_isNextAsked = false;   ///< the review of the last plan was looked at
    std::array<std::optional<chalk::direction::ClientPlan>, 3> m_edited;   ///< offers as the coach changed them, by direction

    QStackedLayout* m_pages = nullptr;
    common::EmptyState* m_failure = nullptr;
    QLabel* m_talk = nullptr;
    common::SegmentedChoice* m_part = nullptr;
    DirectionCards* m_cards = nullptr;
    QStackedLayout* m_middle = nullptr;
    PlanPanel* m_plan = nullptr;
    PlanComparison* m_comparison = nullptr;
    PlanOutcome* m_outcome = nullptr;
    MonthsView* m_months = nullptr;
    common::EmptyState* m_nothing = nullptr;  ///< in place of a plan
    DirectionSide* m_side = nullptr;
    QWidget* m_offerFoot = nullptr;
    QWidget* m_runningFoot = nullptr;
    common::ActionButton* m_start = nullptr;
    common::ActionButton* m_cycle = nullptr;
    common::ActionButton* m_editOffer = nullptr;
    common::ActionButton* m_takeUp = nullptr;
    std::array<QAction*, 3> m_keys{};
};

}  // namespace chalk::ui::direction
