#include "ui/floor/maximum_test_desk.h"

#include "core/store/client_reader.h"
#include "core/store/history_reader.h"
#include "core/store/plan_reader.h"
#include "core/store/record_writer.h"
#include "tests/support/lift_on_test.h"
#include "tests/support/small_studio.h"

#include <gtest/gtest.h>

namespace chalk::ui::floor {

class MaximumTestDeskTest : public ::testing::Test {
protected:
    store::Result<TestedLift> read(lifts::Pattern pattern)
    {
        lifts::Exercise exercise;
        exercise.name = "Some lift";
        exercise.pattern = pattern;
        return m_desk.read({m_file.client, m_file.clearance, m_file.cautions}, test::liftOf(m_studio.database(), m_ada, pattern), exercise, m_day);
    }
    std::size_t entries(base::LiftId lift) { return store::HistoryReader(m_studio.database()).read(lift)->size(); }

    test::StudioOnTest m_studio;
    base::Date m_day = test::smallStudioDay();
    base::ClientId m_ada = test::clientNamed(m_studio.database(), "Ada Lund");
    store::ClientFile m_file = store::ClientReader(m_studio.database()).read(m_ada, m_day).value();
    MaximumTestDesk m_desk{m_studio.database(), test::someMoment};
};

TEST_F(MaximumTestDeskTest, ReadsWhatTheTestStartsFromAndWhatSpeaksAgainstIt)
{
    const auto squat = read(lifts::Pattern::Squat);
    ASSERT_TRUE(squat) << squat.error().message.toStdString();
    EXPECT_GT(squat->single, base::Load());
    EXPECT_FALSE(squat->isPlanTest);
    EXPECT_TRUE(squat->session.isNone());
    const auto hinge = read(lifts::Pattern::Hinge);
    ASSERT_TRUE(hinge);
    EXPECT_EQ(hinge->reason, chalk::direction::NoTest::OnHold);
}

TEST_F(MaximumTestDeskTest, KeepsATestAsOneActThatIsTakenBack)
{
    const TestedLift squat = *read(lifts::Pattern::Squat);
    const std::size_t before = entries(squat.lift);
    MaximumTestRun run(squat, TestKind::Single);
    while (run.next() && !run.best()) {
        run.record({run.next()->load, run.next()->repsLeast.value(), 0});
    }
    run.stop();
    const auto outcome = m_desk.keep(squat, run, "with a spotter");
    ASSERT_TRUE(outcome) << outcome.error().message.toStdString();
    const auto tests = store::PlanReader(m_studio.database()).tests(m_ada).value();
    ASSERT_EQ(tests.size(), 1U);
    EXPECT_EQ(tests.front().load, run.best()->load);
    EXPECT_EQ(tests.front().note, "with a spotter");
    EXPECT_EQ(entries(squat.lift), before + 1);
    ASSERT_TRUE(store::RecordWriter(m_studio.database(), test::someMoment).undo(outcome->act));
    EXPECT_TRUE(store::PlanReader(m_studio.database()).tests(m_ada).value().empty());
    EXPECT_EQ(entries(squat.lift), before);
}

TEST_F(MaximumTestDeskTest, WithoutAResultTheSetsAndThePainAreKept)
{
    const TestedLift squat = *read(lifts::Pattern::Squat);
    MaximumTestRun run(squat, TestKind::Single);
    EXPECT_FALSE(m_desk.keep(squat, run, {})) << "nothing was done";
    run.record({run.next()->load, 5, 3});
    ASSERT_TRUE(m_desk.keep(squat, run, {}));
    EXPECT_TRUE(store::PlanReader(m_studio.database()).tests(m_ada).value().empty());
    const auto history = store::HistoryReader(m_studio.database()).read(squat.lift).value();
    EXPECT_EQ(std::get<progression::Exposure>(history.back().event.body).pain, 3);
}

}  // namespace chalk::ui::floor
