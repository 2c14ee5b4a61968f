#include "ui/direction/direction_tab.h"

#include "core/exchange/catalogue_json.h"
#include "core/store/record_writer.h"
#include "tests/support/accessible_audit.h"
#include "tests/support/fake_clock.h"
#include "tests/support/scripted_dialogs.h"
#include "tests/support/small_studio.h"
#include "ui/common/act_history.h"
#include "ui/common/action_button.h"
#include "ui/common/look.h"
#include "ui/common/segmented_choice.h"
#include "ui/direction/direction_cards.h"
#include "ui/direction/direction_side.h"
#include "ui/direction/missed_weeks.h"
#include "ui/direction/plan_comparison.h"
#include "ui/direction/plan_editor.h"
#include "ui/direction/plan_outcome.h"

#include <QAction>
#include <QApplication>
#include <QListWidget>
#include <QSignalSpy>
#include <QTest>
#include <QTimer>

#include <gtest/gtest.h>

namespace chalk::ui::direction {

using chalk::direction::Direction;

class DirectionTabTest : public ::testing::Test {
protected:
    DirectionTabTest() { m_tab.resize(1300, 700); }

    void open(const std::string& name)
    {
        m_tab.setClient(test::clientNamed(m_studio.database(), name), test::smallStudioDay());
        m_tab.show();
    }
    void press(Qt::Key key)
    {
        for (QAction* action : m_tab.actions()) {
            if (action->shortcut() == QKeySequence(key)) {
                ASSERT_TRUE(action->isEnabled());
                action->trigger();
            }
        }
    }
    common::ActionButton* button(const QString& start)
    {
        for (auto* one : m_tab.findChildren<common::ActionButton*>()) {
            if (one->text().startsWith(start) && !one->isHidden()) {
                return one;
            }
        }
        return nullptr;
    }
    /// Does something to the dialog that opens next.
    template <class Dialog>
    void answer(void (*does)(Dialog&))
    {
        QTimer::singleShot(0, &m_tab, [does] {
            auto* dialog = qobject_cast<Dialog*>(QApplication::activeModalWidget());
            ASSERT_NE(dialog, nullptr);
            does(*dialog);
        });
    }
    const DirectionCards& cards() { return *m_tab.findChild<DirectionCards*>(); }
    const DirectionSideView& side() { return m_tab.findChild<DirectionSide*>()->view(); }

    test::StudioOnTest m_studio;
    const lifts::Catalogue m_catalogue = exchange::builtInCatalogue();
    const common::Look m_look;
    const tests::FakeClock m_clock;
    tests::ScriptedDialogs m_dialogs;
    common::ActHistory m_acts{m_clock, [this](base::ActId act) -> tl::expected<base::ActId, QString> {
                                  auto outcome = store::RecordWriter(m_studio.database(), test::someMoment).undo(act);
                                  return outcome ? tl::expected<base::ActId, QString>(outcome->act) : tl::make_unexpected(outcome.error().message);
                              }};
    DirectionTab m_tab{{m_studio.database(), m_catalogue, m_look, m_acts, m_dialogs, test::someMoment}};
};

TEST_F(DirectionTabTest, TheKeysCompareTheDirections)
{
    open("Ada Lund");
    press(Qt::Key_3);
    EXPECT_EQ(cards().chosen(), Direction::Movement);
    EXPECT_NE(button(QStringLiteral("Start movement")), nullptr);
    press(Qt::Key_2);
    EXPECT_EQ(cards().chosen(), Direction::Physique);
    EXPECT_NE(button(QStringLiteral("Start physique on 30 Nov")), nullptr);
    m_tab.setInFront(false);
    EXPECT_FALSE(m_tab.actions().front()->isEnabled());
}

TEST_F(DirectionTabTest, StartsThePlanThatIsShownAndSaysSo)
{
    open("Ada Lund");
    press(Qt::Key_3);
    const QSignalSpy written(&m_tab, &DirectionTab::written);
    button(QStringLiteral("Start movement"))->click();
    EXPECT_EQ(written.count(), 1);
    ASSERT_TRUE(m_acts.lastDone());
    EXPECT_TRUE(m_acts.lastDone()->words.startsWith(QStringLiteral("Movement, 12 weeks begun for Ada")));
    open("Ada Lund");
    ASSERT_TRUE(m_tab.shown()->running);
    EXPECT_EQ(m_tab.shown()->running->plan.wishes.direction, Direction::Movement);
    m_acts.undo();
    open("Ada Lund");
    EXPECT_FALSE(m_tab.shown()->running);
}

TEST_F(DirectionTabTest, OneMoreCycleIsWrittenAndTakenBack)
{
    open("Ada Lund");
    button(QStringLiteral("One more cycle"))->click();
    open("Ada Lund");
    EXPECT_TRUE(m_tab.shown()->decided);
    m_acts.undo();
    open("Ada Lund");
    EXPECT_FALSE(m_tab.shown()->decided);
}

TEST_F(DirectionTabTest, TheFocusStaysInTheTabWhenWhatHadItGoes)
{
    open("Ada Lund");
    ASSERT_TRUE(QTest::qWaitForWindowActive(&m_tab));
    auto* start = button(QStringLiteral("Start strength"));
    start->setFocus();
    start->click();
    open("Ada Lund");
    auto* focused = QApplication::focusWidget();
    ASSERT_NE(focused, nullptr);
    EXPECT_NE(focused, start);
    EXPECT_EQ(focused, m_tab.focusProxy()) << focused->metaObject()->className();
    EXPECT_TRUE(focused->isVisible());
}

TEST_F(DirectionTabTest, ARunningPlanIsShownInPlaceOfTheCards)
{
    open("Ada Lund");
    button(QStringLiteral("Start strength"))->click();
    open("Ada Lund");
    EXPECT_FALSE(cards().isVisible());
    EXPECT_TRUE(side().title.startsWith(QStringLiteral("What is next")));
    EXPECT_FALSE(m_tab.actions().front()->isEnabled());
    EXPECT_TRUE(m_tab.canPrint());
    for (const char* text : {"Edit the plan", "Missed weeks", "Print", "End the plan"}) {
        EXPECT_NE(button(QLatin1String(text)), nullptr) << text;
    }
    const QSignalSpy asked(&m_tab, &DirectionTab::planAsked);
    button(QStringLiteral("Print"))->click();
    EXPECT_EQ(asked.count(), 1);
}

TEST_F(DirectionTabTest, TheReviewOfAPlanThatIsOverComesFirst)
{
    open("Ada Lund");
    button(QStringLiteral("Start strength"))->click();
    open("Ada Lund");
    button(QStringLiteral("End the plan"))->click();
    open("Ada Lund");
    ASSERT_TRUE(m_tab.shown()->over);
    EXPECT_FALSE(cards().isVisible());
    auto* outcome = m_tab.findChild<PlanOutcome*>();
    EXPECT_TRUE(outcome->isVisible());
    Q_EMIT outcome->nextPlanAsked();
    EXPECT_TRUE(cards().isVisible());
    EXPECT_FALSE(outcome->isVisible());
    m_acts.undo();
    open("Ada Lund");
    EXPECT_TRUE(m_tab.shown()->running);
}

TEST_F(DirectionTabTest, AnEditedPlanThatRunsIsWrittenAndOneThatIsLeftIsNot)
{
    open("Ada Lund");
    button(QStringLiteral("Start strength"))->click();
    open("Ada Lund");
    const QString begun = m_acts.lastDone()->words;
    answer<PlanEditor>([](PlanEditor& editor) { editor.reject(); });
    button(QStringLiteral("Edit the plan"))->click();
    EXPECT_EQ(m_acts.lastDone()->words, begun);
    answer<PlanEditor>([](PlanEditor& editor) { editor.accept(); });
    button(QStringLiteral("Edit the plan"))->click();
    EXPECT_EQ(m_acts.lastDone()->words, QStringLiteral("Plan of Ada edited"));
}

TEST_F(DirectionTabTest, MissedWeeksShiftThePlanAndCanBeTakenBack)
{
    open("Ada Lund");
    button(QStringLiteral("Start strength"))->click();
    open("Ada Lund");
    const base::Date end = m_tab.shown()->running->plan.weeks.back().monday;
    answer<MissedWeeksDialog>([](MissedWeeksDialog& dialog) {
        dialog.findChild<QListWidget*>()->item(1)->setCheckState(Qt::Checked);
        dialog.accept();
    });
    button(QStringLiteral("Missed weeks"))->click();
    open("Ada Lund");
    EXPECT_EQ(m_tab.shown()->running->plan.weeks.back().monday, end + 7);
    m_acts.undo();
    open("Ada Lund");
    EXPECT_EQ(m_tab.shown()->running->plan.weeks.back().monday, end);
}

TEST_F(DirectionTabTest, BackToTheCycleSettlesAPlanThatIsOver)
{
    open("Ada Lund");
    button(QStringLiteral("Start strength"))->click();
    open("Ada Lund");
    button(QStringLiteral("End the plan"))->click();
    open("Ada Lund");
    Q_EMIT m_tab.findChild<PlanOutcome*>()->backAsked();
    open("Ada Lund");
    EXPECT_FALSE(m_tab.shown()->over);
    EXPECT_TRUE(m_tab.shown()->decided);
    EXPECT_TRUE(cards().isVisible());
}

TEST_F(DirectionTabTest, AnotherClientIsShownFromThePlanOn)
{
    open("Ada Lund");
    auto* part = m_tab.findChild<common::SegmentedChoice*>();
    part->setChosen(2);
    open("Ada Lund");
    EXPECT_EQ(part->chosen(), 2);
    open("Bo Arden");
    EXPECT_EQ(part->chosen(), 0);
}

TEST_F(DirectionTabTest, TTurnsPlannedAndDoneIntoATableWhereverTheFocusIs)
{
    open("Ada Lund");
    press(Qt::Key_3);
    button(QStringLiteral("Start movement"))->click();
    open("Ada Lund");
    ASSERT_TRUE(m_tab.shown()->running);
    auto* part = m_tab.findChild<common::SegmentedChoice*>();
    auto* comparison = m_tab.findChild<PlanComparison*>();
    QSignalSpy keys(&m_tab, &DirectionTab::keysChanged);
    part->setChosen(1);
    Q_EMIT part->choiceMade(1);
    EXPECT_GE(keys.count(), 1);
    EXPECT_EQ(m_tab.keyHints().front().keys, QStringLiteral("T"));
    ASSERT_TRUE(QTest::qWaitForWindowActive(&m_tab));
    part->setFocus();
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_T);
    EXPECT_TRUE(comparison->isTable());
}

TEST_F(DirectionTabTest, WhoMayNotTrainIsToldWhyNothingBegins)
{
    open("Bo Arden");
    EXPECT_FALSE(button(QStringLiteral("Start strength"))->isEnabled());
    EXPECT_TRUE(side().bar.contains(QStringLiteral("Bo"))) << side().bar.toStdString();
    EXPECT_TRUE(side().bar.endsWith(QStringLiteral("No plan can begin until then.")));
}

TEST_F(DirectionTabTest, NothingIsCutInANarrowWindow)
{
    open("Ada Lund");
    m_tab.setRoom(true, true);
    m_tab.resize(1180, 560);
    QCoreApplication::sendPostedEvents(nullptr, QEvent::LayoutRequest);
    for (const Direction direction : chalk::direction::kDirections) {
        const DirectionCard* card = cards().card(direction);
        EXPECT_GE(card->height(), card->heightForWidth(card->width()));
    }
    const QRect inside(QPoint(), m_tab.size());
    for (const common::ActionButton* one : m_tab.findChildren<common::ActionButton*>()) {
        if (one->isVisible()) {
            EXPECT_TRUE(inside.contains(QRect(one->mapTo(&m_tab, QPoint()), one->size()))) << one->text().toStdString();
            EXPECT_GE(one->width(), one->minimumSizeHint().width()) << one->text().toStdString();
        }
    }
}

TEST_F(DirectionTabTest, EverythingThatTakesTheFocusHasAName)
{
    open("Ada Lund");
    EXPECT_GT(tests::focusableCount(m_tab), 4);
    EXPECT_EQ(tests::unnamedFocusables(m_tab), QStringList());
}

}  // namespace chalk::ui::direction
