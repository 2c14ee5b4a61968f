#include "core/store/studio_check.h"

#include "tests/support/small_studio.h"

#include <QSqlQuery>

#include <gtest/gtest.h>

namespace chalk::store {

class StudioCheckTest : public ::testing::Test {
protected:
    void run(const char* sql) { ASSERT_TRUE(QSqlQuery(m_studio.database().connection()).exec(QString::fromLatin1(sql))) << sql; }
    StudioCheck check() { return checkStudio(m_studio.database()).value(); }
    std::string only()
    {
        const StudioCheck found = check();
        EXPECT_EQ(found.faults.size(), 1U);
        return found.faults.empty() ? std::string() : found.faults.front().message.toStdString();
    }

    test::StudioOnTest m_studio;
};

TEST_F(StudioCheckTest, AStudioIsSoundAndStaysAsItIs)
{
    const QStringList before = m_studio.cacheRows();
    const StudioCheck found = check();
    EXPECT_TRUE(found.isSound());
    EXPECT_EQ(found.lifts, 3);
    EXPECT_EQ(m_studio.cacheRows(), before);
}

TEST_F(StudioCheckTest, AStateThatItsLogDoesNotSayIsFound)
{
    run("UPDATE lift_state SET cycle = cycle + 1 WHERE lift_id = 2");
    EXPECT_EQ(only(), "the state of lift 2 is not what its log says");
    run("DELETE FROM lift_log WHERE lift_id = 1");
    EXPECT_EQ(check().faults.size(), 2U);
}

TEST_F(StudioCheckTest, WhatATransactionHasWrittenIsLookedAtInIt)
{
    {
        const Transaction transaction(m_studio.database());
        EXPECT_TRUE(checkTransaction(m_studio.database()).value().isSound());
        run("UPDATE lift_state SET cycle = cycle + 1 WHERE lift_id = 2");
        const StudioCheck found = checkTransaction(m_studio.database()).value();
        ASSERT_EQ(found.faults.size(), 1U);
        EXPECT_EQ(found.faults.front().message.toStdString(), "the state of lift 2 is not what its log says");
        EXPECT_EQ(checkTransaction(m_studio.database()).value().faults.size(), 1U) << "the replay was thrown away, what was written was not";
    }
    EXPECT_TRUE(check().isSound());
}

TEST_F(StudioCheckTest, AStageOrAWeekThatNobodyReachedIsFound)
{
    run("INSERT INTO stage_reached (lift_id, cycle, stage, day) VALUES (1, 7, 7, 20000)");
    EXPECT_EQ(only(), "a stage of lift 1 is kept though no log says so");
    run("DELETE FROM stage_reached WHERE cycle = 7");
    run("UPDATE client_week SET load_volume = load_volume + 1 WHERE monday = (SELECT max(monday) FROM client_week)");
    EXPECT_NE(only().find("a week of client 1 is not what its log says"), std::string::npos);
}

TEST_F(StudioCheckTest, ARowThatPointsToNothingIsFound)
{
    m_studio.letReferencesDangle();
    run("UPDATE lift SET client_id = 99 WHERE id = 3");
    const StudioCheck found = check();
    ASSERT_FALSE(found.isSound());
    EXPECT_EQ(found.faults.front().part, CheckPart::References);
    EXPECT_TRUE(found.faults.front().message.contains(QStringLiteral("lift points to nothing in client"))) << found.faults.front().message.toStdString();
}

// A server looks at its own schema otherwise.
using FileOnlyStudioCheckTest = StudioCheckTest;

TEST_F(FileOnlyStudioCheckTest, ASchemaThatNoStepMadeIsFound)
{
    run("CREATE TABLE visitor (id INTEGER PRIMARY KEY)");
    EXPECT_EQ(only(), "the table visitor is none of a studio's");
    run("DROP TABLE visitor");
    run("DROP INDEX event_by_lift");
    EXPECT_EQ(only(), "the index event_by_lift is missing");
    run("CREATE INDEX event_by_lift ON event (day, lift_id)");
    EXPECT_EQ(only(), "the index event_by_lift is not as it was made");
}

TEST_F(StudioCheckTest, ItCanBeStopped)
{
    const auto stopped = checkStudio(m_studio.database(), [](int step, int) { return step < 1; });
    ASSERT_FALSE(stopped);
    EXPECT_EQ(stopped.error().kind, StoreError::Kind::Cancelled);
}

TEST_F(StudioCheckTest, ManyFaultsAreCounted)
{
    m_studio.letReferencesDangle();
    for (int i = 0; i < 30; ++i) {
        run(("INSERT INTO stage_reached (lift_id, cycle, stage, day) VALUES (1, " + std::to_string(10 + i) + ", 7, 20000)").c_str());
    }
    const StudioCheck found = check();
    EXPECT_EQ(found.faults.size(), static_cast<std::size_t>(kMostCheckFaults) + 1);
    EXPECT_EQ(found.faults.back().message.toStdString(), "and 10 more");
}

}  // namespace chalk::store
