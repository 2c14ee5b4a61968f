#include "core/store/pending_write.h"

#include "core/store/conflict.h"
#include "core/store/session_reader.h"
#include "tests/support/pending_writes.h"
#include "tests/support/small_studio.h"

#include <gtest/gtest.h>

namespace chalk::store {

TEST(PendingWrite, OneOfTheSameThingTakesThePlaceOfAnother)
{
    const auto writes = test::everyPendingWrite();
    for (std::size_t i = 0; i < writes.size(); ++i) {
        for (std::size_t j = 0; j < writes.size(); ++j) {
            EXPECT_EQ(isSameThing(writes[i], writes[j]), i == j) << i << " and " << j;
        }
    }
    EXPECT_FALSE(isSameThing(StateWrite{base::SessionId(1)}, StateWrite{base::SessionId(2)}));
    BookingChanges one;
    one.withdrawn = {base::SessionId(1)};
    BookingChanges other;
    other.moved = {{base::SessionId(1), {}, {}}};
    EXPECT_TRUE(isSameThing(one, other)) << "both are about the same booking";
}

class PendingWriteTest : public ::testing::Test {
protected:
    sessions::Session session() { return SessionReader(m_studio.database()).on(test::smallStudioDay())->front().session; }
    qsizetype acts() { return m_studio.rows(QStringLiteral("SELECT id FROM act")).size(); }

    test::StudioOnTest m_studio;
};

TEST_F(PendingWriteTest, IsDoneUnderItsTokenOnce)
{
    const StateWrite write{session().id, sessions::SessionState::Missed, {}};
    ASSERT_TRUE(perform(m_studio.database(), write, test::someMoment, QStringLiteral("one")));
    const qsizetype before = acts();
    const auto again = perform(m_studio.database(), write, test::someMoment, QStringLiteral("one"));
    ASSERT_FALSE(again);
    EXPECT_EQ(again.error().kind, StoreError::Kind::Conflict);
    EXPECT_EQ(acts(), before);
    EXPECT_TRUE(perform(m_studio.database(), write, test::someMoment, QStringLiteral("two")));
}

TEST_F(PendingWriteTest, ATokenThatWasNotUsedIsNotLeftForTheNextAct)
{
    const BookingChanges nothing;
    ASSERT_FALSE(perform(m_studio.database(), nothing, test::someMoment, QStringLiteral("unused")));
    ASSERT_TRUE(RecordWriter(m_studio.database(), test::someMoment).setSessionState(session().id, sessions::SessionState::Missed));
    EXPECT_TRUE(m_studio.rows(QStringLiteral("SELECT token FROM act WHERE token = 'unused'")).isEmpty());
}

TEST_F(PendingWriteTest, GoesOverAConflictOnceItWasSeen)
{
    const sessions::SessionState before = session().state;
    ASSERT_TRUE(RecordWriter(m_studio.database(), test::someMoment).setSessionState(session().id, sessions::SessionState::Missed));
    PendingWrite write = StateWrite{session().id, sessions::SessionState::CancelledLate, before};
    const auto refused = perform(m_studio.database(), write, test::someMoment, QStringLiteral("one"));
    ASSERT_FALSE(refused);
    ASSERT_NE(refused.error().conflict, nullptr);
    write = overConflict(write, *refused.error().conflict, {});
    EXPECT_TRUE(perform(m_studio.database(), write, test::someMoment, QStringLiteral("two")));
    EXPECT_EQ(session().state, sessions::SessionState::CancelledLate);
}

TEST_F(PendingWriteTest, AReportGoesOverWithBothWhereThatIsChosen)
{
    sessions::SessionReport theirs;
    theirs.effortTenths = 70;
    ASSERT_TRUE(RecordWriter(m_studio.database(), test::someMoment).saveReport(session().id, theirs));
    sessions::SessionReport yours;
    yours.note = "Slow";
    PendingWrite write = ReportWrite{session().id, yours, sessions::SessionReport()};
    const auto refused = perform(m_studio.database(), write, test::someMoment, QStringLiteral("one"));
    ASSERT_FALSE(refused);
    const Conflict& conflict = *refused.error().conflict;
    ASSERT_TRUE(perform(m_studio.database(), overConflict(write, conflict, bothOf(conflict)), test::someMoment, QStringLiteral("two")));
    const auto report = SessionReader(m_studio.database()).report(session().id).value();
    EXPECT_EQ(report.effortTenths, 70);
    EXPECT_EQ(report.note, "Slow");
}

}  // namespace chalk::store
