#include "ui/floor/floor_page.h"

#include "tests/support/accessible_audit.h"
#include "tests/ui/floor/floor_fixture.h"
#include "ui/common/action_button.h"
#include "ui/common/banner.h"
#include "ui/common/empty_state.h"
#include "ui/common/look.h"
#include "ui/floor/card_pane.h"
#include "ui/floor/client_tabs.h"
#include "ui/floor/entry_field.h"
#include "ui/floor/lift_table.h"
#include "ui/floor/next_time_bar.h"
#include "ui/floor/rehearsal_sheet.h"
#include "ui/floor/report_strip.h"
#include "ui/floor/run_list.h"

#include <QApplication>
#include <QLineEdit>
#include <QListView>
#include <QSignalSpy>
#include <QTest>
#include <QTimer>

#include <algorithm>

namespace chalk::ui::floor {

class FloorPageTest : public test::FloorTest {
protected:
    FloorPageTest()
    {
        m_page.resize(1360, 856);
        m_page.show();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&m_page));
        m_page.open({});
    }

    const FloorDesk& desk() const { return m_page.desk(); }
    EntryField& field() { return *m_page.findChild<EntryField*>(); }
    RehearsalSheet& sheet() { return *m_page.findChild<RehearsalSheet*>(); }
    common::EmptyState& empty() { return *m_page.findChild<common::EmptyState*>(); }
    QListView& run() { return *m_page.findChild<RunModel*>()->parent()->findChild<QListView*>(); }
    QString says() { return m_page.findChild<NextTimeBar*>()->accessibleName(); }
    std::string lift() const { return desk().lift()->exercise.key; }
    /// Keys go where they would go: to what has the focus.
    void press(int key, Qt::KeyboardModifiers modifiers = Qt::NoModifier)
    {
        QWidget* target = QApplication::focusWidget();
        QTest::keyClick(target == nullptr ? &m_page : target, static_cast<Qt::Key>(key), modifiers);
    }
    void type(const QString& text) { QTest::keyClicks(QApplication::focusWidget(), text); }

    const common::Look m_look;
    FloorPage m_page{{m_look, m_clock, m_acts, m_presenter}};
};

TEST_F(FloorPageTest, TheFocusIsWhereWorkStarts)
{
    EXPECT_EQ(QApplication::focusWidget(), &field());
    EXPECT_EQ(lift(), "back_squat");
    EXPECT_TRUE(m_page.canPrint());
    EXPECT_FALSE(m_page.findChild<SetUpView*>()->caption().isEmpty());
}

TEST_F(FloorPageTest, TypingSaysWhatFollowsAndEnterSaves)
{
    const QSignalSpy changed(&m_page, &shell::Page::studioChanged);
    const base::LiftId squat = desk().lift()->id;
    type(QStringLiteral("8 8 r2"));
    EXPECT_TRUE(says().startsWith(QStringLiteral("Next time 2 × 5–10 at 55 kg."))) << says().toStdString();
    EXPECT_EQ(changed.count(), 0);
    press(Qt::Key_Return);
    EXPECT_EQ(changed.count(), 1);
    EXPECT_EQ(entriesOf(squat), 6U);
    EXPECT_EQ(lift(), "dumbbell_bench_press");
    EXPECT_TRUE(field().text().isEmpty());
    EXPECT_EQ(QApplication::focusWidget(), &field());
}

TEST_F(FloorPageTest, CtrlZIsTheWindowsAsSoonAsALineIsSaved)
{
    type(QStringLiteral("8 8 r2"));
    EXPECT_TRUE(field().isUndoAvailable());
    press(Qt::Key_Return);
    EXPECT_FALSE(field().isUndoAvailable());
    QKeyEvent undo(QEvent::ShortcutOverride, Qt::Key_Z, Qt::ControlModifier);
    undo.ignore();
    QApplication::sendEvent(&field(), &undo);
    EXPECT_FALSE(undo.isAccepted());
}

TEST_F(FloorPageTest, AFaultIsUnderlinedAndChosenByEnter)
{
    type(QStringLiteral("8 rx 8"));
    EXPECT_EQ(field().faultBegin(), 2);
    EXPECT_EQ(field().faultLength(), 2);
    EXPECT_EQ(field().text(), QStringLiteral("8 rx 8")) << "the underline changes nothing";
    press(Qt::Key_Return);
    EXPECT_EQ(field().selectedText(), QStringLiteral("rx"));
    type(QStringLiteral("8"));
    EXPECT_EQ(field().text(), QStringLiteral("8 8 8"));
    EXPECT_EQ(field().faultLength(), 0);
}

TEST_F(FloorPageTest, UpAndDownMoveBetweenLiftsAndEscClears)
{
    press(Qt::Key_Down);
    EXPECT_EQ(lift(), "trap_bar_deadlift");
    EXPECT_FALSE(field().isEnabled());
    EXPECT_TRUE(says().startsWith(QStringLiteral("On hold."))) << says().toStdString();
    press(Qt::Key_Up);
    EXPECT_EQ(lift(), "back_squat");
    type(QStringLiteral("8"));
    EXPECT_TRUE(m_page.closeOrClear());
    EXPECT_TRUE(field().text().isEmpty());
    EXPECT_FALSE(m_page.closeOrClear());
}

TEST_F(FloorPageTest, ARehearsalIsJudgedByDigitsAndSavedByEnter)
{
    press(Qt::Key_Up);
    m_page.open({});
    for (int i = 0; i < 3; ++i) {
        press(Qt::Key_Down);
    }
    ASSERT_EQ(lift(), "split_squat");
    EXPECT_TRUE(sheet().isVisible());
    EXPECT_FALSE(field().isVisible());
    for (const int key : {Qt::Key_1, Qt::Key_1, Qt::Key_3, Qt::Key_1, Qt::Key_1, Qt::Key_1}) {
        press(key);
    }
    EXPECT_EQ(sheet().draft().verdicts[2], progression::Verdict::NotMet);
    for (int i = 0; i < 4; ++i) {
        press(Qt::Key_Up);
    }
    press(Qt::Key_1);
    EXPECT_EQ(sheet().draft().verdicts[2], progression::Verdict::Met);
    for (int i = 0; i < 3; ++i) {
        press(Qt::Key_Down);
    }
    press(Qt::Key_Tab);
    for (int i = 0; i < 3; ++i) {
        type(QStringLiteral("1"));
        press(Qt::Key_Tab);
    }
    EXPECT_EQ(sheet().draft().pauses[2], QStringLiteral("1"));
    EXPECT_TRUE(says().contains(QStringLiteral("Base load"))) << says().toStdString();
    const base::LiftId split = desk().lift()->id;
    press(Qt::Key_Return);
    EXPECT_EQ(entriesOf(split), 1U);
}

TEST_F(FloorPageTest, EnterInAnUnfinishedRehearsalGoesToTheOpenPoint)
{
    for (int i = 0; i < 3; ++i) {
        press(Qt::Key_Down);
    }
    press(Qt::Key_Down);
    press(Qt::Key_1);
    press(Qt::Key_Return);
    EXPECT_TRUE(says().contains(QStringLiteral("Point 1"))) << says().toStdString();
    press(Qt::Key_2);
    EXPECT_EQ(sheet().draft().verdicts[0], progression::Verdict::Partly);
}

TEST_F(FloorPageTest, CtrlEnterSavesAndADayBeforeCanBeCorrected)
{
    press(Qt::Key_PageUp, Qt::ControlModifier);
    EXPECT_FALSE(desk().isToday());
    EXPECT_TRUE(empty().isVisible());
    press(Qt::Key_Home, Qt::ControlModifier);
    EXPECT_TRUE(desk().isToday());
    type(QStringLiteral("8 8 r2"));
    const base::LiftId squat = desk().lift()->id;
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_EQ(entriesOf(squat), 6U);
}

TEST_F(FloorPageTest, OpensAtASessionOfAnotherDay)
{
    shell::Place place;
    place.client = desk().client()->client.id;
    const auto earlier = m_presenter.run(test::smallStudioDay() - 21);
    place.session = earlier->front().sessions.front().id;
    m_page.open(place);
    EXPECT_EQ(desk().day(), test::smallStudioDay() - 21);
    EXPECT_EQ(field().text(), QStringLiteral("8 8 r2"));
    place = {};
    place.client = desk().client()->client.id;
    place.text = QStringLiteral("7 7");
    m_page.open(place);
    EXPECT_TRUE(desk().isToday());
    EXPECT_EQ(field().text(), QStringLiteral("7 7"));
}

TEST_F(FloorPageTest, ClearanceIsALockThatLeadsToTheHealthPage)
{
    press(Qt::Key_Down, Qt::AltModifier);
    ASSERT_EQ(desk().slotIndex(), 1);
    EXPECT_TRUE(empty().isVisible());
    EXPECT_FALSE(field().isVisible());
    EXPECT_FALSE(m_page.canPrint());
    const QSignalSpy asked(&m_page, &shell::Page::placeAsked);
    press(Qt::Key_Space);
    ASSERT_EQ(asked.count(), 1);
    EXPECT_EQ(asked.front().front().value<shell::Place>().tab, QStringLiteral("health"));
}

TEST_F(FloorPageTest, WhoWaitsForClearanceCanStillSayHowTheSessionFelt)
{
    press(Qt::Key_Down, Qt::AltModifier);
    ASSERT_TRUE(desk().client()->isBlocked);
    auto& strip = *m_page.findChild<ReportStrip*>();
    EXPECT_TRUE(strip.isVisible());
    EXPECT_FALSE(m_page.findChild<LiftTable*>()->isVisible());
    press(Qt::Key_E, Qt::AltModifier);
    ASSERT_TRUE(strip.isAncestorOf(QApplication::focusWidget()));
    Q_EMIT strip.told(desk().client()->session.id, {{}, {}, {}, {}, {}, "Talked about the letter."});
    EXPECT_EQ(desk().client()->report.note, "Talked about the letter.");
    Q_EMIT strip.left();
    EXPECT_EQ(QApplication::focusWidget(), empty().findChild<common::ActionButton*>());
}

TEST_F(FloorPageTest, OwnWordsAreAReasonToSkipALift)
{
    QTimer menus;
    QTimer dialogs;  // of its own: a timer does not fire inside of what it started
    QObject::connect(&menus, &QTimer::timeout, &m_page, [&menus] {
        if (QWidget* menu = QApplication::activePopupWidget()) {
            menus.stop();
            QTest::keyClick(menu, Qt::Key_A);
        }
    });
    QObject::connect(&dialogs, &QTimer::timeout, &m_page, [&dialogs] {
        if (QWidget* dialog = QApplication::activeModalWidget()) {
            dialogs.stop();
            QTest::keyClicks(dialog->findChild<QLineEdit*>(), QStringLiteral("slept badly"));
            QTest::keyClick(dialog->findChild<QLineEdit*>(), Qt::Key_Return);
        }
    });
    menus.start(5);
    dialogs.start(5);
    press(Qt::Key_X, Qt::AltModifier);
    const auto& lifts = desk().client()->lifts;
    const auto squat = std::find_if(lifts.begin(), lifts.end(), [](const FloorLift& one) { return one.exercise.key == "back_squat"; });
    EXPECT_TRUE(squat->isSkipped);
    EXPECT_EQ(squat->skipWhy, "slept badly");
}

TEST_F(FloorPageTest, WhoCanBeBookedCannotBeReadAndThatIsSaid)
{
    m_studio.rows(QStringLiteral("ALTER TABLE coach RENAME TO coach_away"));
    press(Qt::Key_S, Qt::AltModifier);
    EXPECT_EQ(QApplication::activeModalWidget(), nullptr);
    const auto banners = m_page.findChildren<common::Banner*>();
    EXPECT_TRUE(std::any_of(banners.begin(), banners.end(), [](const common::Banner* one) {
        return one->isVisible() && one->accessibleName().contains(QStringLiteral("Who can be booked could not be read"));
    }));
}

TEST_F(FloorPageTest, TheRunIsMovedThroughByItsOwnKeys)
{
    run().setFocus();
    QTest::keyClick(&run(), Qt::Key_Down);
    EXPECT_EQ(desk().slotIndex(), 1);
    QTest::keyClick(&run(), Qt::Key_Up);
    EXPECT_EQ(desk().slotIndex(), 0);
    EXPECT_EQ(lift(), "back_squat");
    QTest::keyClick(&run(), Qt::Key_Return);
    EXPECT_EQ(QApplication::focusWidget(), &field());
    QTest::mouseClick(run().viewport(), Qt::LeftButton, {}, run().visualRect(run().model()->index(1, 0)).center());
    EXPECT_EQ(desk().slotIndex(), 1);
}

TEST_F(FloorPageTest, EverythingThatTakesTheFocusHasAName)
{
    EXPECT_GT(tests::focusableCount(m_page), 5);
    EXPECT_EQ(tests::unnamedFocusables(m_page), QStringList());
    for (int i = 0; i < 3; ++i) {
        press(Qt::Key_Down);
    }
    EXPECT_EQ(tests::unnamedFocusables(m_page), QStringList());
}

TEST_F(FloorPageTest, FieldsAreTypedByKeysAndTheLineFollows)
{
    press(Qt::Key_F2);
    EXPECT_EQ(QApplication::focusWidget()->accessibleName(), QStringLiteral("Set 1"));
    type(QStringLiteral("9"));
    press(Qt::Key_Tab);
    EXPECT_EQ(QApplication::focusWidget()->accessibleName(), QStringLiteral("Set 2"));
    EXPECT_EQ(field().text(), QStringLiteral("9 8 r2"));
    type(QStringLiteral("twelve"));
    press(Qt::Key_Tab);
    EXPECT_EQ(QApplication::focusWidget()->accessibleName(), QStringLiteral("Set 2")) << "it makes no sense";
    EXPECT_EQ(field().text(), QStringLiteral("9 8 r2"));
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_A, Qt::ControlModifier);
    type(QStringLiteral("7"));
    press(Qt::Key_Return);
    EXPECT_EQ(field().text(), QStringLiteral("9 7 r2"));
    EXPECT_EQ(QApplication::focusWidget(), &field());
    press(Qt::Key_Return);
    EXPECT_EQ(lift(), "dumbbell_bench_press") << "Enter in the line saves";
}

TEST_F(FloorPageTest, AClickOpensTheBoxUnderIt)
{
    auto& table = *m_page.findChild<LiftTable*>();
    const QModelIndex row = table.model()->index(desk().liftIndex(), 0);
    const auto boxes = liftBoxesOf(table.visualRect(row), 2, m_look.theme());
    for (const LiftBox& box : boxes) {
        if (box.field == LiftField::Pain) {
            QTest::mouseClick(table.viewport(), Qt::LeftButton, {}, box.rect.center().toPoint());
        }
    }
    EXPECT_TRUE(table.isEditing());
    EXPECT_EQ(QApplication::focusWidget()->accessibleName(), QStringLiteral("Pain out of 10"));
    type(QStringLiteral("4"));
    press(Qt::Key_Return);
    EXPECT_EQ(field().text(), QStringLiteral("8 8 r2 p4"));
    for (const LiftBox& box : boxes) {
        if (box.field == LiftField::Felt) {
            QTest::mouseClick(table.viewport(), Qt::LeftButton, {}, box.rect.center().toPoint() + QPoint(8, 0));
        }
    }
    EXPECT_EQ(field().text(), QStringLiteral("8 8 r2 p4 s"));
}

TEST_F(FloorPageTest, ARecordIsDeletedByItsSecondKey)
{
    type(QStringLiteral("8 8 r2"));
    press(Qt::Key_Return);
    press(Qt::Key_Up);
    press(Qt::Key_Up);
    ASSERT_EQ(lift(), "back_squat");
    const base::LiftId squat = desk().lift()->id;
    press(Qt::Key_Delete, Qt::AltModifier);
    EXPECT_TRUE(says().contains(QStringLiteral("Delete this record?"))) << says().toStdString();
    EXPECT_EQ(entriesOf(squat), 6U);
    press(Qt::Key_Delete, Qt::AltModifier);
    EXPECT_EQ(entriesOf(squat), 5U);
}

TEST_F(FloorPageTest, AFieldThatIsStillOpenIsSavedWithItsOwnLift)
{
    const base::LiftId squat = desk().lift()->id;
    press(Qt::Key_F2);
    type(QStringLiteral("9"));
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_EQ(entriesOf(squat), 6U);
    for (const FloorLift& one : desk().client()->lifts) {
        EXPECT_TRUE(one.id == squat || one.line.isEmpty()) << one.exercise.key;
    }
}

}  // namespace chalk::ui::floor
