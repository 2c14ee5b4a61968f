#include "ui/board/client_page.h"

#include "core/exchange/catalogue_json.h"
#include "core/store/client_reader.h"
#include "core/store/record_writer.h"
#include "tests/support/accessible_audit.h"
#include "tests/support/fake_clock.h"
#include "tests/support/scripted_dialogs.h"
#include "tests/support/small_studio.h"
#include "ui/board/board_tab.h"
#include "ui/board/client_case.h"
#include "ui/decisions/coach_editor.h"
#include "ui/board/lift_inspector.h"
#include "ui/board/stage_board.h"
#include "ui/common/act_history.h"
#include "ui/common/banner.h"
#include "ui/common/look.h"

#include <QAction>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTabBar>
#include <QTest>

#include <gtest/gtest.h>

namespace chalk::ui::board {

using progression::Stage;

class ClientPageTest : public ::testing::Test {
protected:
    ClientPageTest() { m_page.resize(1360, 856); }

    void open(const std::string& name, const QString& tab = {})
    {
        shell::Place place;
        const auto names = store::ClientReader(m_studio.database()).names();
        ASSERT_TRUE(names);
        for (const auto& [id, known] : *names) {
            if (known.rfind(name, 0) == 0) {
                place.client = id;
            }
        }
        place.tab = tab;
        m_page.open(place);
        m_page.show();
    }

    BoardTab& board() { return *m_page.findChild<BoardTab*>(); }
    const LiftCase& lift() { return *board().selectedLift(); }
    decisions::CoachEditor* editor() { return m_page.findChild<decisions::CoachEditor*>(); }
    QAction* action(const QString& text)
    {
        for (QAction* one : m_page.actions()) {
            if (one->text() == text) {
                return one;
            }
        }
        return nullptr;
    }
    void decide(const QString& text, const QString& words)
    {
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);  // an editor that was closed before
        action(text)->trigger();
        ASSERT_NE(editor(), nullptr);
        for (QLineEdit* field : editor()->findChildren<QLineEdit*>()) {
            if (field->maxLength() == 200) {
                field->setText(words);
                QTest::keyClick(field, Qt::Key_Return);
                return;
            }
        }
    }

    test::StudioOnTest m_studio;
    const lifts::Catalogue m_catalogue = exchange::builtInCatalogue();
    const common::Look m_look;
    const tests::FakeClock m_clock;
    tests::ScriptedDialogs m_dialogs;
    common::ActHistory m_acts{m_clock, [this](base::ActId act) -> tl::expected<base::ActId, QString> {
                                  auto outcome = store::RecordWriter(m_studio.database(), test::someMoment).undo(act);
                                  return outcome ? tl::expected<base::ActId, QString>(outcome->act)
                                                 : tl::make_unexpected(outcome.error().message);
                              }};
    ClientPage m_page{{m_studio.database(), m_catalogue, m_look, m_clock, m_acts, test::someMoment, m_dialogs}};
};

TEST_F(ClientPageTest, ShowsTheClientAndKeepsItsPlace)
{
    open("Ada", QStringLiteral("sessions"));
    EXPECT_TRUE(m_page.title().startsWith(QStringLiteral("Ada")));
    EXPECT_EQ(m_page.place().tab, QStringLiteral("sessions"));
    EXPECT_TRUE(m_page.openClient());
    EXPECT_TRUE(m_page.canPrint());
}

TEST_F(ClientPageTest, TheCautionHasRoomAsSoonAsThePageIsOpen)
{
    m_page.show();
    open("Bo");
    const auto banners = m_page.findChildren<common::Banner*>();
    ASSERT_FALSE(banners.empty());
    EXPECT_TRUE(banners.front()->isVisible());
    QCoreApplication::sendPostedEvents(nullptr, QEvent::LayoutRequest);
    EXPECT_GE(banners.front()->height(), banners.front()->heightForWidth(banners.front()->width()));
}

TEST_F(ClientPageTest, HoldHereKeepsTheNumbersAndCanBeUndone)
{
    open("Ada");
    board().selectPattern(lifts::Pattern::Squat);
    const progression::Prescription before = lift().next;
    const std::size_t entries = lift().log.size();
    const QSignalSpy changed(&m_page, &shell::Page::studioChanged);
    decide(QStringLiteral("Hold here"), QStringLiteral("a hard week at work"));
    EXPECT_EQ(changed.count(), 1);
    EXPECT_EQ(lift().log.size(), entries + 1);
    EXPECT_EQ(lift().next.load, before.load);
    EXPECT_EQ(std::get<progression::CoachSet>(lift().log.back().body).reason, "a hard week at work");
    EXPECT_FALSE(board().inspector()->isEditing());
    ASSERT_TRUE(m_acts.lastDone());
    EXPECT_TRUE(m_acts.lastDone()->words.contains(QStringLiteral("held at")));
    m_acts.undo();
    m_page.refresh();
    EXPECT_EQ(lift().log.size(), entries);
    m_acts.redo();
    m_page.refresh();
    ASSERT_EQ(lift().log.size(), entries + 1);
    EXPECT_TRUE(lift().log.back().earlier.empty()) << "done again as it was, that is no correction";
}

TEST_F(ClientPageTest, NothingIsWrittenWithoutAReason)
{
    open("Ada");
    board().selectPattern(lifts::Pattern::Squat);
    const std::size_t entries = lift().log.size();
    decide(QStringLiteral("Hold here"), QString());
    EXPECT_TRUE(board().inspector()->isEditing());
    m_page.refresh();
    EXPECT_TRUE(board().inspector()->isEditing());
    EXPECT_EQ(lift().log.size(), entries);
    EXPECT_TRUE(m_page.closeOrClear());
    EXPECT_FALSE(board().inspector()->isEditing());
    EXPECT_FALSE(m_acts.lastDone());
}

TEST_F(ClientPageTest, AChoiceOnALiftThatSomebodyElseWroteToIsShownFirst)
{
    open("Ada");
    board().selectPattern(lifts::Pattern::Squat);
    const std::size_t entries = lift().log.size();
    const auto second = store::Database::open(m_studio.file(), store::OpenMode::MustExist).value();
    const auto recordElsewhere = [&](int reps) {
        const progression::Exposure work{0, {{base::Load::fromCenti(5000), reps, 2}}};
        return store::RecordWriter(*second, test::someMoment).record(m_page.place().client, {}, {{lift().id, {lift().day, work}}}).has_value();
    };
    ASSERT_TRUE(recordElsewhere(8));
    decide(QStringLiteral("Hold here"), QStringLiteral("a hard week at work"));
    ASSERT_EQ(m_dialogs.asked.size(), 1U);
    EXPECT_EQ(m_dialogs.asked[0].answers.front(), QStringLiteral("Leave mine out"));
    EXPECT_TRUE(m_dialogs.asked[0].headline.contains(QStringLiteral("Ada Lund, squat"))) << m_dialogs.asked[0].headline.toStdString();
    EXPECT_FALSE(board().inspector()->isEditing());
    EXPECT_EQ(lift().log.size(), entries + 1) << "theirs is on show, and nothing else was written";
    EXPECT_FALSE(m_acts.lastDone());

    ASSERT_TRUE(recordElsewhere(7));
    m_dialogs.answers = {1};
    decide(QStringLiteral("Hold here"), QStringLiteral("a hard week at work"));
    EXPECT_EQ(m_dialogs.asked.size(), 2U);
    EXPECT_EQ(lift().log.size(), entries + 3) << "theirs, and the choice after it";
    EXPECT_TRUE(m_acts.lastDone());
    decide(QStringLiteral("Hold here"), QStringLiteral("once more"));
    EXPECT_EQ(m_dialogs.asked.size(), 2U) << "nobody wrote in between";
}

TEST_F(ClientPageTest, ALiftOnHoldIsReleasedWithANote)
{
    open("Ada");
    board().selectPattern(lifts::Pattern::Hinge);
    ASSERT_EQ(lift().next.kind, progression::PrescriptionKind::Hold);
    EXPECT_FALSE(action(QStringLiteral("Change what is next"))->isEnabled());
    EXPECT_FALSE(action(QStringLiteral("Hold here"))->isEnabled());
    decide(QStringLiteral("Release the lift"), QStringLiteral("seen by the physio"));
    EXPECT_EQ(lift().next.kind, progression::PrescriptionKind::Rehearse);
    EXPECT_EQ(lift().next.stage, Stage::Control);
    EXPECT_FALSE(action(QStringLiteral("Release the lift"))->isEnabled());
}

TEST_F(ClientPageTest, ASwapGoesBackToBaseLoad)
{
    open("Ada");
    board().selectPattern(lifts::Pattern::Squat);
    const std::string before = lift().exercise.key;
    action(QStringLiteral("Swap the exercise"))->trigger();
    ASSERT_NE(editor(), nullptr);
    QTest::mouseClick(editor()->findChildren<QPushButton*>().front(), Qt::LeftButton);
    EXPECT_NE(lift().exercise.key, before);
    EXPECT_EQ(lift().exercise.pattern, lifts::Pattern::Squat);
    EXPECT_EQ(lift().next.stage, Stage::BaseLoad);
}

TEST_F(ClientPageTest, ABlockedClientCanBeReadAndNotBeChanged)
{
    open("Bo");
    EXPECT_FALSE(m_page.canPrint());
    for (const char* text : {"Record session", "Change what is next", "Hold here", "Swap the exercise", "Release the lift"}) {
        EXPECT_FALSE(action(QLatin1String(text))->isEnabled()) << text;
    }
    EXPECT_TRUE(board().board()->isEnabled());
    const auto labels = board().inspector()->findChildren<QLabel*>();
    EXPECT_TRUE(std::any_of(labels.begin(), labels.end(), [](const QLabel* label) {
        return label->isVisible() && label->text().startsWith(QStringLiteral("Waiting for Bo"));
    }));
    EXPECT_FALSE(m_page.findChildren<common::Banner*>().empty());
}

TEST_F(ClientPageTest, TheKeysOfTheTabsWork)
{
    open("Ada");
    auto* tabs = m_page.findChild<QTabBar*>();
    m_page.activateWindow();
    action(QStringLiteral("Health"))->trigger();
    EXPECT_EQ(tabs->currentIndex(), 2);
    EXPECT_EQ(action(QStringLiteral("Health"))->shortcut(), QKeySequence(Qt::ALT | Qt::Key_3));
    action(QStringLiteral("Board"))->trigger();
    EXPECT_EQ(tabs->currentIndex(), 0);
    QTest::keyClick(board().board(), Qt::Key_Return);
    EXPECT_EQ(tabs->currentIndex(), 1);
}

TEST_F(ClientPageTest, PrintingMeansThePlanWhereOneIsShown)
{
    open("Ada", QStringLiteral("direction"));
    const QSignalSpy cards(&m_page, &ClientPage::cardAsked);
    const QSignalSpy plans(&m_page, &ClientPage::planAsked);
    m_page.print();
    EXPECT_EQ(cards.count(), 1);
    for (QPushButton* button : m_page.findChildren<QPushButton*>()) {
        if (button->text().startsWith(QStringLiteral("Start strength"))) {
            button->click();
        }
    }
    m_page.print();
    EXPECT_EQ(cards.count(), 1);
    EXPECT_EQ(plans.count(), 1);
    EXPECT_EQ(m_page.place().tab, QStringLiteral("direction"));
    open("Ada", QStringLiteral("board"));
    m_page.print();
    EXPECT_EQ(cards.count(), 2);
}

TEST_F(ClientPageTest, RecordGoesToTheFloor)
{
    open("Ada");
    shell::Place asked;
    QObject::connect(&m_page, &shell::Page::placeAsked, &m_page, [&asked](const shell::Place& place) { asked = place; });
    action(QStringLiteral("Record session"))->trigger();
    EXPECT_EQ(asked.page, QStringLiteral("floor"));
    EXPECT_FALSE(asked.client.isNone());
}

TEST_F(ClientPageTest, AClientThatIsNotThereIsSaidSo)
{
    shell::Place place;
    place.client = base::ClientId(999);
    m_page.open(place);
    m_page.show();
    const auto labels = m_page.findChildren<QLabel*>();
    EXPECT_TRUE(std::any_of(labels.begin(), labels.end(), [](const QLabel* label) {
        return label->isVisible() && label->text() == QStringLiteral("This client cannot be shown");
    }));
}

TEST_F(ClientPageTest, EverythingThatTakesTheFocusHasAName)
{
    for (const char* tab : {"board", "sessions", "health", "direction"}) {
        open("Ada", QLatin1String(tab));
        EXPECT_GT(tests::focusableCount(m_page), 3);
        EXPECT_EQ(tests::unnamedFocusables(m_page), QStringList()) << tab;
    }
    open("Ada");
    board().selectPattern(lifts::Pattern::Squat);
    action(QStringLiteral("Change what is next"))->trigger();
    EXPECT_EQ(tests::unnamedFocusables(m_page), QStringList());
}

}  // namespace chalk::ui::board
