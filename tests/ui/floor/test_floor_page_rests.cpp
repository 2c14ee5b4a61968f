#include "tests/ui/floor/floor_fixture.h"
#include "ui/common/look.h"
#include "ui/floor/entry_field.h"
#include "ui/floor/floor_page.h"
#include "ui/floor/rest_tile.h"
#include "ui/floor/rest_timer_strip.h"

#include <QAction>
#include <QApplication>
#include <QSignalSpy>
#include <QTest>

#include <algorithm>

namespace chalk::ui::floor {

class FloorPageRestsTest : public test::FloorTest {
protected:
    FloorPageRestsTest()
    {
        m_page.resize(1360, 856);
        m_page.show();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&m_page));
        m_page.open({});
    }

    EntryField& field() { return *m_page.findChild<EntryField*>(); }
    RestWatch& watch() { return *m_page.findChild<RestWatch*>(); }
    std::vector<Rest> rests() { return watch().timers().rests(); }
    RestTimerStrip& wall() { return named(QStringLiteral("Rests on the whole page")); }
    RestTimerStrip& strip() { return named(QStringLiteral("Rests")); }
    RestTimerStrip& named(const QString& name)
    {
        const auto all = m_page.findChildren<RestTimerStrip*>();
        return **std::find_if(all.begin(), all.end(), [&name](const RestTimerStrip* one) { return one->accessibleName() == name; });
    }
    void press(int key, Qt::KeyboardModifiers modifiers = Qt::NoModifier)
    {
        QWidget* target = QApplication::focusWidget();
        QTest::keyClick(target == nullptr ? &m_page : target, static_cast<Qt::Key>(key), modifiers);
    }
    void type(const QString& text) { QTest::keyClicks(QApplication::focusWidget(), text); }

    RestTimers::Moment m_now{};
    const common::Look m_look;
    FloorPage m_page{{m_look, m_clock, m_acts, m_presenter, {nullptr, [this] { return m_now; }, {}}}};
};

TEST_F(FloorPageRestsTest, AKeyStartsThePlannedRestAndStopsIt)
{
    EXPECT_FALSE(strip().isVisible());
    press(Qt::Key_R, Qt::ControlModifier);
    ASSERT_EQ(rests().size(), 1U);
    EXPECT_EQ(rests().front().plan, (PlannedRest{m_page.desk().client()->client.id, QStringLiteral("Ada"), QStringLiteral("Back squat"),
                                                  m_page.desk().lift()->due.rest}));
    EXPECT_TRUE(strip().isVisible());
    EXPECT_EQ(QApplication::focusWidget(), &field());
    type(QStringLiteral("8"));
    EXPECT_EQ(field().text(), QStringLiteral("8"));
    press(Qt::Key_R, Qt::ControlModifier);
    EXPECT_TRUE(rests().empty());
    EXPECT_FALSE(strip().isVisible());
}

TEST_F(FloorPageRestsTest, AfterALiftIsSavedItIsThatLiftsRestOnce)
{
    type(QStringLiteral("8 8 r2"));
    press(Qt::Key_Return);
    ASSERT_NE(m_page.desk().lift()->exercise.key, "back_squat");
    press(Qt::Key_R, Qt::ControlModifier);
    EXPECT_EQ(rests().front().plan.lift, QStringLiteral("Back squat"));
    press(Qt::Key_R, Qt::ControlModifier);
    press(Qt::Key_R, Qt::ControlModifier);
    EXPECT_EQ(rests().front().plan.lift, QString::fromStdString(m_page.desk().lift()->exercise.name));
}

TEST_F(FloorPageRestsTest, WorkThatWentOnHasItsOwnRest)
{
    type(QStringLiteral("8 8 r2"));
    press(Qt::Key_Return);
    type(QStringLiteral("8"));
    press(Qt::Key_R, Qt::ControlModifier);
    EXPECT_EQ(rests().front().plan.lift, QString::fromStdString(m_page.desk().lift()->exercise.name));
}

TEST_F(FloorPageRestsTest, GoesOnWhateverIsOnShow)
{
    press(Qt::Key_R, Qt::ControlModifier);
    m_now += std::chrono::seconds(20);
    press(Qt::Key_Down, Qt::AltModifier);
    press(Qt::Key_PageUp, Qt::ControlModifier);
    m_page.hide();
    m_now += std::chrono::seconds(20);
    m_page.refresh();
    m_page.show();
    ASSERT_EQ(rests().size(), 1U);
    EXPECT_EQ(rests().front().left, rests().front().plan.planned - base::Seconds(40));
}

TEST_F(FloorPageRestsTest, HoldsAndStartsAgainByKeys)
{
    press(Qt::Key_R, Qt::AltModifier);
    EXPECT_TRUE(rests().empty());
    press(Qt::Key_R, Qt::ControlModifier);
    press(Qt::Key_R, Qt::AltModifier);
    m_now += std::chrono::seconds(20);
    EXPECT_TRUE(rests().front().isHeld);
    EXPECT_EQ(rests().front().left, rests().front().plan.planned);
    press(Qt::Key_R, Qt::AltModifier);
    m_now += std::chrono::seconds(20);
    EXPECT_LT(rests().front().left, rests().front().plan.planned);
    press(Qt::Key_R, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_EQ(rests().front().left, rests().front().plan.planned);
}

TEST_F(FloorPageRestsTest, WhoIsBlockedHasNoRest)
{
    press(Qt::Key_Down, Qt::AltModifier);
    ASSERT_TRUE(m_page.desk().client()->isBlocked);
    press(Qt::Key_R, Qt::ControlModifier);
    EXPECT_TRUE(rests().empty());
}

TEST_F(FloorPageRestsTest, TheWallFillsThePageAndWorkWaits)
{
    press(Qt::Key_F11);
    EXPECT_FALSE(wall().isVisible()) << "there is nothing to show";
    type(QStringLiteral("8 8 r2"));
    press(Qt::Key_R, Qt::ControlModifier);
    press(Qt::Key_F11);
    EXPECT_TRUE(wall().isVisible());
    EXPECT_EQ(wall().size(), m_page.size());
    EXPECT_FALSE(field().isVisible());
    const base::LiftId squat = m_page.desk().lift()->id;
    const std::size_t before = entriesOf(squat);
    press(Qt::Key_Return, Qt::ControlModifier);
    press(Qt::Key_Down);
    EXPECT_EQ(entriesOf(squat), before);
    EXPECT_EQ(m_page.desk().lift()->id, squat);
    EXPECT_TRUE(m_page.closeOrClear());
    EXPECT_TRUE(field().isVisible());
    EXPECT_EQ(field().text(), QStringLiteral("8 8 r2"));
    EXPECT_EQ(QApplication::focusWidget(), &field());
    press(Qt::Key_F11);
    press(Qt::Key_R, Qt::ControlModifier);
    EXPECT_TRUE(field().isVisible()) << "the last rest takes the wall with it";
}

TEST_F(FloorPageRestsTest, NoTwoActionsShareAKey)
{
    QSet<QString> keys;
    for (const QAction* action : m_page.actions()) {
        for (const QKeySequence& key : action->shortcuts()) {
            EXPECT_FALSE(keys.contains(key.toString())) << key.toString().toStdString();
            keys.insert(key.toString());
        }
    }
    EXPECT_TRUE(keys.contains(QStringLiteral("F11")));
}

TEST_F(FloorPageRestsTest, TheEndOfARestIsSaidElsewhereWhileThePageIsAway)
{
    const QSignalSpy said(&m_page, &FloorPage::restEnded);
    const auto passRest = [this] {
        watch().start({base::ClientId(1), QStringLiteral("Ada"), QStringLiteral("Back squat"), base::Seconds(90)});
        m_now += std::chrono::seconds(91);
        watch().look();
        watch().look();
    };
    passRest();
    EXPECT_EQ(said.count(), 0) << "the strip shows it";
    m_page.hide();
    passRest();
    ASSERT_EQ(said.count(), 1) << "once";
    EXPECT_EQ(said.front().front().toString(), QStringLiteral("Ada’s rest is over: Back squat"));
}

}  // namespace chalk::ui::floor
