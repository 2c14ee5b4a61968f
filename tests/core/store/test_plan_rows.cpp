#include "core/store/plan_rows.h"

#include "core/store/plan_reader.h"
#include "core/store/plan_writer.h"
#include "tests/support/lift_on_test.h"
#include "tests/support/small_studio.h"

#include <QSqlQuery>

#include <gtest/gtest.h>

namespace chalk::store {

class PlanRowsTest : public ::testing::Test {
protected:
    void begin()
    {
        const base::LiftId squat = test::liftOf(m_studio.database(), m_ada, lifts::Pattern::Squat);
        direction::ClientPlan plan;
        plan.client = m_ada;
        plan.begunOn = test::smallStudioDay();
        plan.plan = direction::planFor({direction::Direction::Strength, direction::Wave::Linear, 8, 2, true, test::smallStudioDay() + 6,
                                        {{squat, direction::LiftRole::Main, 2}}});
        plan.singles = {{test::kilos(60), false}};
        ASSERT_TRUE(PlanWriter(m_studio.database(), test::someMoment).begin(plan));
    }
    bool doesRun(const char* sql) { return QSqlQuery(m_studio.database().connection()).exec(QString::fromLatin1(sql)); }

    test::StudioOnTest m_studio;
    base::ClientId m_ada = test::clientNamed(m_studio.database(), "Ada Lund");
};

TEST_F(PlanRowsTest, RowsAreOnlyEverAdded)
{
    begin();
    EXPECT_FALSE(doesRun("UPDATE plan SET note = 'x'"));
    EXPECT_FALSE(doesRun("DELETE FROM plan"));
    EXPECT_FALSE(doesRun("INSERT INTO tested_maximum (act_id, is_void, client_id, lift_id, day, load_centi, reps, ending, note) VALUES (1, 0, 1, 1, 1, 1, 9, 'found', '')"))
        << "nine repetitions are no test";
}

TEST_F(PlanRowsTest, AContentThatCannotBeReadIsNamed)
{
    begin();
    ASSERT_TRUE(doesRun(m_studio.database().isOnServer() ? "DROP TRIGGER plan_is_never_changed ON plan" : "DROP TRIGGER plan_is_never_changed"));
    ASSERT_TRUE(doesRun("UPDATE plan SET content = '{\"plan\": 3}'"));
    const auto history = PlanReader(m_studio.database()).history(m_ada);
    ASSERT_FALSE(history);
    EXPECT_EQ(history.error().kind, StoreError::Kind::Damaged);
    EXPECT_TRUE(history.error().message.contains(QStringLiteral("plan 1"))) << history.error().message.toStdString();
    EXPECT_FALSE(PlanReader(m_studio.database()).running(m_ada, test::smallStudioDay()));
}

}  // namespace chalk::store
