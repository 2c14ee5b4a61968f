#include "ui/check_in/check_in_desk.h"

#include "tests/support/fake_clock.h"
#include "tests/ui/check_in/check_in_fixture.h"
#include "ui/common/act_history.h"

#include <QSignalSpy>
#include <QTest>

#include <gtest/gtest.h>

namespace chalk::ui::check_in {

class CheckInDeskTest : public ::testing::Test {
protected:
    /// Reads until nothing is under way.
    void settle()
    {
        ASSERT_TRUE(QTest::qWaitFor([this] { return !m_desk.isReading(); }, 5000));
    }
    void start()
    {
        m_desk.refresh();
        settle();
    }
    [[nodiscard]] static DecisionDraft draft()
    {
        return {checkin::ChoiceKind::Hold, base::LiftId(3), {}, "as agreed", test::checkInDay() + 7, QStringLiteral("held")};
    }

    tests::FakeClock m_clock;
    common::ActHistory m_acts{m_clock, [](base::ActId act) { return act; }};
    test::CheckInStudio m_studio;
    CheckInDesk m_desk{std::make_unique<test::FakeCheckInSource>(m_studio), m_clock, m_acts};
};

TEST_F(CheckInDeskTest, OpensTheFirstWhoIsNotDecidedWithTheLiftInQuestion)
{
    m_studio.queue[0].decided = checkin::Decision();
    start();
    ASSERT_NE(m_desk.page(), nullptr);
    EXPECT_EQ(m_desk.client(), base::ClientId(12));
    EXPECT_EQ(m_desk.page()->evidence.name, "Tomasz Wyre");
    EXPECT_EQ(m_desk.lift(), 1U) << "the bench press is what was found";
    EXPECT_EQ(m_desk.decidedCount(), 1);
}

TEST_F(CheckInDeskTest, ADecisionIsWrittenToldToTheHistoryAndTheNextIsOpened)
{
    start();
    EXPECT_EQ(m_desk.decide(draft()), QString());
    ASSERT_EQ(m_studio.decided.size(), 1U);
    const checkin::Decision& written = m_studio.decided.front();
    EXPECT_EQ(written.client, base::ClientId(11));
    EXPECT_EQ(written.about, checkin::FindingKind::Pain);
    EXPECT_EQ(written.day, test::checkInDay());
    EXPECT_EQ(written.note, "as agreed");
    EXPECT_EQ(m_acts.lastDone()->words, QStringLiteral("held"));
    EXPECT_EQ(m_desk.client(), base::ClientId(12));
    settle();
    EXPECT_EQ(m_desk.decidedCount(), 1);
}

TEST_F(CheckInDeskTest, SkippedClientsAreLeftForLaterAndTheQueueEnds)
{
    start();
    m_desk.skip();
    EXPECT_EQ(m_desk.client(), base::ClientId(12));
    settle();
    EXPECT_EQ(m_desk.decide(draft()), QString());
    settle();
    m_desk.skip();
    EXPECT_TRUE(m_desk.isAtEnd());
    EXPECT_TRUE(m_desk.client().isNone());
    EXPECT_EQ(m_desk.page(), nullptr);
    m_desk.go(base::ClientId(11));
    settle();
    EXPECT_FALSE(m_desk.isAtEnd());
    EXPECT_NE(m_desk.page(), nullptr);
}

TEST_F(CheckInDeskTest, OfQuickStepsOnlyTheLastPageIsShown)
{
    start();
    m_desk.step(1);
    m_desk.step(1);
    settle();
    ASSERT_TRUE(QTest::qWaitFor([this] { return m_desk.page() != nullptr; }, 5000));
    EXPECT_EQ(m_desk.page()->evidence.client, base::ClientId(13));
    m_desk.step(1);
    EXPECT_EQ(m_desk.client(), base::ClientId(13)) << "stays at the end";
}

TEST_F(CheckInDeskTest, WhatCannotBeWrittenChangesNothing)
{
    start();
    m_studio.writeFailure = QStringLiteral("The disk is full.");
    EXPECT_EQ(m_desk.decide(draft()), QStringLiteral("The disk is full."));
    EXPECT_EQ(m_desk.client(), base::ClientId(11));
    EXPECT_FALSE(m_acts.lastDone());
    EXPECT_EQ(m_desk.decidedCount(), 0);
}

TEST_F(CheckInDeskTest, SaysWhatCannotBeRead)
{
    QSignalSpy failed(&m_desk, &CheckInDesk::failed);
    m_studio.failure = QStringLiteral("No right to read.");
    start();
    ASSERT_EQ(failed.size(), 1);
    EXPECT_EQ(failed.front().front().toString(), QStringLiteral("No right to read."));
    EXPECT_FALSE(m_desk.hasQueue());
}

}  // namespace chalk::ui::check_in
