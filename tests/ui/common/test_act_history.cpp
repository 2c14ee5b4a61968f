#include "tests/support/fake_clock.h"
#include "ui/common/act_history.h"

#include <QSignalSpy>

#include <gtest/gtest.h>

namespace chalk::ui::common {

class ActHistoryTest : public ::testing::Test {
protected:
    ActHistoryTest()
        : m_history(m_clock, [this](base::ActId act) -> tl::expected<base::ActId, QString> {
              m_undone.push_back(act.value());
              if (!m_refusal.isEmpty()) {
                  return tl::unexpected(m_refusal);
              }
              return base::ActId(++m_lastAct);
          })
    {
    }

    void add(const char* words) { m_history.add(base::ActId(++m_lastAct), QString::fromUtf8(words)); }

    tests::FakeClock m_clock;
    std::int64_t m_lastAct = 100;
    std::vector<std::int64_t> m_undone;
    QString m_refusal;
    ActHistory m_history;
};

TEST_F(ActHistoryTest, TakesBackTheLastActAndDoesItAgain)
{
    add("first");
    add("second");
    const QSignalSpy studio(&m_history, &ActHistory::studioChanged);
    EXPECT_EQ(m_history.lastDone()->words, QStringLiteral("second"));
    m_history.undo();
    EXPECT_EQ(m_history.lastDone()->words, QStringLiteral("first"));
    EXPECT_EQ(m_history.lastTakenBack()->words, QStringLiteral("second"));
    m_history.redo();
    EXPECT_EQ(m_history.lastDone()->words, QStringLiteral("second"));
    EXPECT_FALSE(m_history.lastTakenBack());
    EXPECT_EQ(studio.count(), 2);
    // The undo of act 102 is act 103; doing it again undoes 103, which is act 104.
    EXPECT_EQ(m_undone, (std::vector<std::int64_t>{102, 103}));
    m_history.undo();
    EXPECT_EQ(m_undone.back(), 104);
}

TEST_F(ActHistoryTest, ANewActForgetsWhatWasTakenBack)
{
    add("first");
    m_history.undo();
    add("second");
    EXPECT_FALSE(m_history.lastTakenBack());
    m_history.redo();
    EXPECT_EQ(m_undone.size(), 1U);
}

TEST_F(ActHistoryTest, ARefusedUndoLeavesEverythingAsItWas)
{
    add("first");
    m_refusal = QStringLiteral("A later result builds on it.");
    QSignalSpy failed(&m_history, &ActHistory::failed);
    const QSignalSpy studio(&m_history, &ActHistory::studioChanged);
    m_history.undo();
    ASSERT_EQ(failed.count(), 1);
    EXPECT_EQ(failed.takeFirst().constFirst().toString(), m_refusal);
    EXPECT_EQ(studio.count(), 0);
    EXPECT_EQ(m_history.lastDone()->words, QStringLiteral("first"));
}

TEST_F(ActHistoryTest, KeepsWhatIsDoneWhileALongUndoIsWaitedFor)
{
    ActHistory* waited = nullptr;
    ActHistory history(m_clock, [&waited](base::ActId act) -> tl::expected<base::ActId, QString> {
        waited->add(base::ActId(7), QStringLiteral("meanwhile"));
        return base::ActId(act.value() + 100);
    });
    waited = &history;
    history.add(base::ActId(1), QStringLiteral("first"));
    history.undo();
    EXPECT_EQ(history.lastDone()->words, QStringLiteral("meanwhile"));
    EXPECT_EQ(history.lastTakenBack()->act, base::ActId(101));
}

TEST_F(ActHistoryTest, DoesNothingWithNothingToTakeBack)
{
    const QSignalSpy changed(&m_history, &ActHistory::changed);
    m_history.undo();
    m_history.redo();
    EXPECT_EQ(changed.count(), 0);
    EXPECT_TRUE(m_undone.empty());
    EXPECT_FALSE(m_history.savedMinute());
}

TEST_F(ActHistoryTest, RemembersWhenItWasSaved)
{
    m_clock.setMinute(500);
    add("first");
    EXPECT_EQ(m_history.savedMinute(), 500);
    m_clock.setMinute(507);
    m_history.undo();
    EXPECT_EQ(m_history.savedMinute(), 507);
    EXPECT_EQ(m_history.lastTakenBack()->minuteOfDay, 507);
}

}  // namespace chalk::ui::common
