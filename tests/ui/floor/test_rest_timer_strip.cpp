#include "ui/floor/rest_timer_strip.h"

#include "tests/support/accessible_audit.h"
#include "ui/common/look.h"
#include "ui/floor/rest_tile.h"
#include "ui/floor/rest_watch.h"

#include <QApplication>
#include <QPushButton>
#include <QSettings>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>
#include <QVBoxLayout>

#include <gtest/gtest.h>

namespace chalk::ui::floor {

class RestTimerStripTest : public ::testing::Test {
protected:
    RestTimerStripTest()
    {
        auto* column = new QVBoxLayout(&m_page);
        column->setContentsMargins(0, 0, 0, 0);
        column->addWidget(&m_strip);
        column->addWidget(&m_work, 1);
        m_page.resize(1200, 700);
        m_page.show();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&m_page, 5000));
        m_wall.resize(1200, 700);
        m_wall.show();
    }
    ~RestTimerStripTest() override
    {
        m_strip.setParent(nullptr);
        m_work.setParent(nullptr);
    }

    RestServices services()
    {
        return {&m_settings, [this] { return m_now; }, [this] { ++m_beeps; }};
    }
    void start(int client, const QString& name, int seconds, const QString& lift = QStringLiteral("Back squat"))
    {
        m_watch.start({base::ClientId(client), name, lift, base::Seconds(seconds)});
    }
    void pass(int seconds)
    {
        m_now += std::chrono::seconds(seconds);
        m_watch.look();
        QCoreApplication::processEvents();
    }
    QStringList names(const RestTimerStrip& strip) const
    {
        QStringList names;
        for (const RestTile* tile : strip.shownTiles()) {
            names.append(tile->rest().plan.firstName);
        }
        return names;
    }
    RestTile& tile(int at = 0) { return *m_strip.shownTiles().at(static_cast<std::size_t>(at)); }
    QPushButton* button(const QString& name)
    {
        for (QPushButton* one : m_strip.findChildren<QPushButton*>()) {
            if (one->accessibleName() == name && one->isVisible()) {
                return one;
            }
        }
        ADD_FAILURE() << "no button " << name.toStdString();
        return nullptr;
    }

    QTemporaryDir m_folder;
    QSettings m_settings{m_folder.filePath(QStringLiteral("settings.ini")), QSettings::IniFormat};
    RestTimers::Moment m_now{};
    int m_beeps = 0;
    common::Look m_look;
    RestWatch m_watch{services()};
    QWidget m_page;
    QWidget m_work;
    RestTimerStrip m_strip{m_look, m_watch, RestShape::Row};
    RestTimerStrip m_wall{m_look, m_watch, RestShape::Wall};
};

TEST_F(RestTimerStripTest, TakesNoRoomWhileNoneRuns)
{
    EXPECT_FALSE(m_strip.isVisible());
    EXPECT_EQ(m_work.height(), 700);
    start(1, QStringLiteral("Ada"), 150);
    QCoreApplication::processEvents();
    EXPECT_TRUE(m_strip.isVisible());
    m_watch.stop(base::ClientId(1));
    QCoreApplication::processEvents();
    EXPECT_FALSE(m_strip.isVisible());
    EXPECT_EQ(m_work.height(), 700);
}

TEST_F(RestTimerStripTest, CountsDownThenSaysThatItIsOver)
{
    start(1, QStringLiteral("Ada"), 150);
    EXPECT_EQ(tile().digits(), QStringLiteral("2:30"));
    EXPECT_EQ(tile().word(), QStringLiteral("of 2:30"));
    EXPECT_EQ(tile().accessibleName(), QStringLiteral("Ada, Back squat: rest of 2:30"));
    pass(71);
    EXPECT_EQ(tile().digits(), QStringLiteral("1:19"));
    const QColor running = tile().grab().toImage().pixelColor(6, 4);
    pass(91);
    EXPECT_EQ(tile().digits(), QStringLiteral("0:12"));
    EXPECT_EQ(tile().word(), QStringLiteral("over by"));
    EXPECT_EQ(tile().accessibleName(), QStringLiteral("Ada, Back squat: rest over"));
    EXPECT_EQ(tile().grab().toImage().pixelColor(6, 4), m_look.theme().chalk);
    EXPECT_NE(running, m_look.theme().chalk);
}

TEST_F(RestTimerStripTest, TheDigitsAreLargeAndLargerAlone)
{
    start(1, QStringLiteral("Ada"), 150);
    QCoreApplication::processEvents();
    const double alone = tile().digitsPx();
    m_strip.setTight(true);
    QCoreApplication::processEvents();
    EXPECT_GE(tile().digitsPx(), 48);
    EXPECT_LT(tile().digitsPx(), alone);
    m_strip.setTight(false);
    start(2, QStringLiteral("Bo"), 60);
    QCoreApplication::processEvents();
    EXPECT_GE(tile().digitsPx(), 48);
    EXPECT_GT(alone, tile().digitsPx());
    EXPECT_GT(m_wall.shownTiles().front()->digitsPx(), 100);
    const double normal = tile().digitsPx();
    m_look.setTextPercent(150);
    QCoreApplication::processEvents();
    EXPECT_GT(tile().digitsPx(), 1.4 * normal);
}

TEST_F(RestTimerStripTest, AShortRowShowsTheMostPressingEachInItsPlace)
{
    start(1, QStringLiteral("Ada"), 60);
    start(2, QStringLiteral("Bo"), 300);
    start(3, QStringLiteral("Cy"), 30);
    start(4, QStringLiteral("Di"), 90);
    start(5, QStringLiteral("Ed"), 45);
    QCoreApplication::processEvents();
    EXPECT_EQ(names(m_strip), (QStringList{QStringLiteral("Ada"), QStringLiteral("Cy"), QStringLiteral("Ed")}));
    EXPECT_EQ(m_strip.moreText(), QStringLiteral("2 more"));
    EXPECT_EQ(names(m_wall).size(), 5);
    for (const RestTile* one : m_strip.shownTiles()) {
        EXPECT_LE(one->geometry().right(), m_strip.width());
        EXPECT_GE(one->digitsPx(), 48) << "as many as there is room for, not smaller ones";
    }
    m_page.resize(2400, 700);
    QCoreApplication::processEvents();
    EXPECT_EQ(names(m_strip).size(), 5);
    EXPECT_TRUE(m_strip.moreText().isEmpty());
}

TEST_F(RestTimerStripTest, ButtonsHoldRestartAndStop)
{
    start(1, QStringLiteral("Ada"), 60);
    pass(10);
    button(QStringLiteral("Hold the rest of Ada"))->click();
    pass(10);
    EXPECT_EQ(tile().digits(), QStringLiteral("0:50"));
    EXPECT_EQ(tile().word(), QStringLiteral("held"));
    EXPECT_EQ(tile().accessibleName(), QStringLiteral("Ada, Back squat: rest of 1:00, held"));
    button(QStringLiteral("Let the rest of Ada go on"))->click();
    pass(10);
    EXPECT_EQ(tile().digits(), QStringLiteral("0:40"));
    button(QStringLiteral("Start the rest of Ada again"))->click();
    EXPECT_EQ(tile().digits(), QStringLiteral("1:00"));
    const QSignalSpy lost(&m_strip, &RestTimerStrip::focusLost);
    QPushButton* stop = button(QStringLiteral("Stop the rest of Ada"));
    stop->setFocus();
    QTest::keyClick(stop, Qt::Key_Space);
    EXPECT_EQ(lost.count(), 1);
    EXPECT_TRUE(m_watch.timers().isEmpty());
}

TEST_F(RestTimerStripTest, IsSilentUntilABeepIsWantedAndRemembersThat)
{
    start(1, QStringLiteral("Ada"), 60);
    pass(60);
    EXPECT_EQ(m_beeps, 0);
    button(QStringLiteral("The end of a rest is silent; let it be heard, Alt+B"))->click();
    start(1, QStringLiteral("Ada"), 60);
    pass(59);
    EXPECT_EQ(m_beeps, 0);
    pass(1);
    pass(1);
    EXPECT_EQ(m_beeps, 1);
    EXPECT_TRUE(RestWatch(services()).isHeard());
    button(QStringLiteral("The end of a rest is heard; make it silent, Alt+B"))->click();
    EXPECT_FALSE(RestWatch(services()).isHeard());
}

TEST_F(RestTimerStripTest, TheWatchLooksByItself)
{
    RestWatch watch;
    const QSignalSpy changed(&watch, &RestWatch::changed);
    watch.start({base::ClientId(1), QStringLiteral("Ada"), QStringLiteral("Back squat"), base::Seconds(60)});
    EXPECT_EQ(changed.count(), 1);
    EXPECT_TRUE(QTest::qWaitFor([&changed] { return changed.count() > 1; }, 3000));
    watch.stop(base::ClientId(1));
    const auto count = changed.count();
    QTest::qWait(1100);
    EXPECT_EQ(changed.count(), count) << "nothing wakes up while none runs";
}

TEST_F(RestTimerStripTest, EverythingThatTakesTheFocusHasAName)
{
    start(1, QStringLiteral("Ada"), 60);
    EXPECT_GE(tests::focusableCount(m_strip), 5);
    EXPECT_EQ(tests::unnamedFocusables(m_strip), QStringList());
    EXPECT_EQ(tests::unnamedFocusables(m_wall), QStringList());
}

}  // namespace chalk::ui::floor
