#include "ui/check_in/check_in_page.h"

#include "core/exchange/catalogue_json.h"
#include "tests/support/accessible_audit.h"
#include "tests/support/fake_clock.h"
#include "tests/support/scripted_dialogs.h"
#include "tests/ui/check_in/check_in_fixture.h"
#include "ui/check_in/decision_form.h"
#include "ui/check_in/evidence_chart.h"
#include "ui/check_in/evidence_pane.h"
#include "ui/check_in/queue_model.h"
#include "ui/common/act_history.h"
#include "ui/common/empty_state.h"
#include "ui/common/look.h"

#include <QClipboard>
#include <QGuiApplication>
#include <QLabel>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>

#include <gtest/gtest.h>

namespace chalk::ui::check_in {

class CheckInPageTest : public ::testing::Test {
protected:
    void open()
    {
        m_page = std::make_unique<CheckInPage>(CheckInServices{m_look, m_clock, m_acts, m_dialogs, m_catalogue},
                                               std::make_unique<test::FakeCheckInSource>(m_studio));
        m_page->resize(1360, 820);
        m_page->show();
        m_page->activateWindow();
        settle();
    }
    void settle()
    {
        ASSERT_TRUE(QTest::qWaitFor([this] { return !m_page->desk().isReading(); }, 5000));
    }
    void press(int key, Qt::KeyboardModifiers modifiers = Qt::NoModifier)
    {
        QTest::keyClick(m_page->focusWidget() == nullptr ? m_page.get() : m_page->focusWidget(), static_cast<Qt::Key>(key), modifiers);
        settle();
    }
    [[nodiscard]] bool says(const QString& words) const
    {
        const auto labels = m_page->findChildren<QLabel*>();
        return std::any_of(labels.begin(), labels.end(), [&words](const QLabel* label) { return label->isVisible() && label->text().contains(words); });
    }

    common::Look m_look;
    tests::FakeClock m_clock;
    common::ActHistory m_acts{m_clock, [](base::ActId act) { return act; }};
    tests::ScriptedDialogs m_dialogs;
    const lifts::Catalogue m_catalogue = exchange::builtInCatalogue();
    test::CheckInStudio m_studio;
    std::unique_ptr<CheckInPage> m_page;
};

TEST_F(CheckInPageTest, ShowsTheQueueAsItIsGivenAndTheFirstClient)
{
    open();
    ASSERT_EQ(m_page->queueModel().rows().size(), 3U);
    EXPECT_EQ(m_page->queueModel().rows()[1].why, QStringLiteral("Bench press, 4 weeks without a new best"));
    EXPECT_TRUE(says(QStringLiteral("Week 48 · 0 of 3 decided")));
    EXPECT_TRUE(says(QStringLiteral("Hanne Skov-Adler")));
    EXPECT_EQ(m_page->openClient()->id, base::ClientId(11));
}

TEST_F(CheckInPageTest, KeysGoThroughClientsAndLifts)
{
    open();
    press(Qt::Key_J);
    EXPECT_EQ(m_page->desk().client(), base::ClientId(12));
    press(Qt::Key_K);
    EXPECT_EQ(m_page->desk().client(), base::ClientId(11));
    press(Qt::Key_Down, Qt::AltModifier);
    EXPECT_EQ(m_page->desk().client(), base::ClientId(12));
    press(Qt::Key_BracketLeft);
    EXPECT_EQ(m_page->desk().lift(), 0U);
    EXPECT_TRUE(m_page->evidence()->charts()[0]->scene().missing.contains(QStringLiteral("4 more sessions")));
    press(Qt::Key_BracketRight);
    EXPECT_EQ(m_page->desk().lift(), 1U);
}

TEST_F(CheckInPageTest, DigitsChooseAndCtrlEnterDecides)
{
    open();
    QSignalSpy changed(m_page.get(), &shell::Page::studioChanged);
    press(Qt::Key_2);
    press(Qt::Key_Return, Qt::ControlModifier);
    ASSERT_EQ(m_studio.decided.size(), 1U);
    EXPECT_EQ(m_studio.decided.front().choice, checkin::ChoiceKind::Hold);
    EXPECT_TRUE(m_studio.events.front().has_value());
    EXPECT_EQ(changed.size(), 1);
    EXPECT_EQ(m_page->desk().client(), base::ClientId(12));
    EXPECT_TRUE(m_page->queueModel().rows()[0].isDecided);
    EXPECT_TRUE(says(QStringLiteral("1 of 3 decided")));
    EXPECT_EQ(m_acts.lastDone()->words, QStringLiteral("Bench press: hold one more week decided for Hanne"));
}

TEST_F(CheckInPageTest, DecidingToOpenThePlanLeadsToTheDirection)
{
    m_studio.isInPlan = true;
    open();
    QSignalSpy places(m_page.get(), &shell::Page::placeAsked);
    press(Qt::Key_1);
    press(Qt::Key_Return, Qt::ControlModifier);
    ASSERT_EQ(m_studio.decided.size(), 1U);
    EXPECT_EQ(m_studio.decided.front().choice, checkin::ChoiceKind::Direction);
    ASSERT_EQ(places.size(), 1);
    const auto place = places.front().front().value<shell::Place>();
    EXPECT_EQ(place.page, QStringLiteral("client"));
    EXPECT_EQ(place.client, base::ClientId(11));
    EXPECT_EQ(place.tab, QStringLiteral("direction"));
    EXPECT_EQ(m_acts.lastDone()->words, QStringLiteral("Bench press: open the plan decided for Hanne"));
}

TEST_F(CheckInPageTest, TheEndCountsAndOffersTheReports)
{
    open();
    std::vector<base::ClientId> reports;
    QObject::connect(m_page.get(), &CheckInPage::reportsAsked, m_page.get(), [&reports](const std::vector<base::ClientId>& clients) { reports = clients; });
    press(Qt::Key_Return, Qt::ControlModifier);
    press(Qt::Key_J, Qt::ControlModifier);
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_TRUE(says(QStringLiteral("2 of 3 decided, 1 skipped.")));
    EXPECT_FALSE(m_page->form()->isVisible()) << "nothing is left to decide";
    auto* empty = m_page->findChild<common::EmptyState*>();
    auto* button = empty->findChild<QPushButton*>();
    ASSERT_TRUE(button->isVisible());
    button->click();
    EXPECT_EQ(reports, (std::vector{base::ClientId(11), base::ClientId(13)}));
}

TEST_F(CheckInPageTest, NobodyIsDue)
{
    m_studio.queue.clear();
    open();
    EXPECT_TRUE(says(QStringLiteral("Nobody is due.")));
    EXPECT_FALSE(m_page->canPrint());
}

TEST_F(CheckInPageTest, SaysWhatCannotBeReadAndReadsAgain)
{
    m_studio.failure = QStringLiteral("No right to read.");
    open();
    EXPECT_TRUE(says(QStringLiteral("No right to read.")));
    m_studio.failure.clear();
    m_page->refresh();
    settle();
    EXPECT_FALSE(says(QStringLiteral("No right to read.")));
    EXPECT_TRUE(says(QStringLiteral("Hanne Skov-Adler")));
}

TEST_F(CheckInPageTest, ADecisionThatIsNotWrittenStays)
{
    open();
    m_studio.writeFailure = QStringLiteral("The disk is full.");
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_TRUE(says(QStringLiteral("The disk is full.")));
    EXPECT_EQ(m_page->desk().client(), base::ClientId(11));
}

TEST_F(CheckInPageTest, CopiesAShortMessage)
{
    open();
    press(Qt::Key_J);
    press(Qt::Key_C, Qt::ControlModifier | Qt::ShiftModifier);
    const QString words = QGuiApplication::clipboard()->text();
    EXPECT_TRUE(words.startsWith(QStringLiteral("Hello Tomasz, this is your check-in of Tuesday 24 November."))) << words.toStdString();
    EXPECT_TRUE(words.contains(QStringLiteral("a lighter week with 2 × 5 at 60 kg")));
    EXPECT_TRUE(words.contains(QStringLiteral("Tuesday 8 December")));
}

TEST_F(CheckInPageTest, NumbersByHandOpenTheEditorAndEscLeavesIt)
{
    open();
    press(Qt::Key_5);
    EXPECT_TRUE(m_page->form()->isEditing());
    EXPECT_TRUE(m_page->closeOrClear());
    EXPECT_FALSE(m_page->form()->isEditing());
    EXPECT_FALSE(m_page->closeOrClear());
}

TEST_F(CheckInPageTest, EverythingThatTakesTheFocusHasAName)
{
    open();
    EXPECT_EQ(tests::unnamedFocusables(*m_page), QStringList());
    EXPECT_GT(tests::focusableCount(*m_page), 15);
}

TEST_F(CheckInPageTest, FitsTheSmallestWindowAtEveryTextSize)
{
    open();
    for (const int percent : {90, 100, 125}) {
        m_look.setTextPercent(percent);
        m_page->setRoom(true, true);
        EXPECT_LE(m_page->minimumSizeHint().width(), 1200) << percent;
    }
}

}  // namespace chalk::ui::check_in
