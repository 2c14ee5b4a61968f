#include "core/store/change_history.h"

#include "core/store/client_writer.h"
#include "core/store/decision_writer.h"
#include "core/store/record_writer.h"
#include "tests/support/lift_on_test.h"
#include "tests/support/small_studio.h"

#include <gtest/gtest.h>

namespace chalk::store {

namespace {

bool isAct(const ChangeEntry& entry)
{
    return std::holds_alternative<ActRecord>(entry.did);
}

}  // namespace

TEST(ChangeHistory, TellsActsAndTheAuditTogether)
{
    test::StudioOnTest studio;
    const base::ClientId ada = test::clientNamed(studio.database(), "Ada Lund");
    const base::ClientId bo = test::clientNamed(studio.database(), "Bo Arden");
    const base::LiftId squat = test::liftOf(studio.database(), ada, lifts::Pattern::Squat);
    studio.database().setAuthor(base::CoachId(1));
    ASSERT_TRUE(RecordWriter(studio.database(), test::someMoment).record(ada, {}, {{squat, {test::smallStudioDay(), test::exposureOf({{45, 8, 2}})}}}));
    clients::Profile profile;
    profile.contact.phone = "555 0100";
    ASSERT_TRUE(ClientWriter(studio.database()).saveProfile(ada, profile, test::smallStudioDay()));
    profile.contact.phone = "555 0199";
    ASSERT_TRUE(ClientWriter(studio.database()).saveProfile(bo, profile, test::smallStudioDay()));

    ChangeHistory history(studio.database());
    const auto ofAda = history.of(ada).value();
    ASSERT_EQ(ofAda.size(), 2U);
    EXPECT_EQ(std::count_if(ofAda.begin(), ofAda.end(), isAct), 1);
    for (const ChangeEntry& entry : ofAda) {
        EXPECT_EQ(entry.client, ada);
        EXPECT_EQ(entry.clientName, "Ada Lund");
        EXPECT_EQ(entry.coachName, "Ines");
    }
    EXPECT_EQ(history.of(bo).value().size(), 1U);
    const auto all = history.all().value();
    EXPECT_EQ(all.size(), 4U) << "with the import";
    EXPECT_TRUE(std::is_sorted(all.begin(), all.end(), [](const ChangeEntry& a, const ChangeEntry& b) { return a.atUtc > b.atUtc; }));
    EXPECT_EQ(history.all(2).value().size(), 2U);
}

TEST(ChangeHistory, AWordThatNobodyKnowsIsDamage)
{
    test::StudioOnTest studio;
    studio.rows(QStringLiteral("INSERT INTO audit (at_utc, what, before, after) VALUES ('2026-11-24T08:00:00Z', 'magic', '{}', '{}')"));
    const auto history = ChangeHistory(studio.database()).all();
    ASSERT_FALSE(history);
    EXPECT_EQ(history.error().kind, StoreError::Kind::Damaged);
}

class ToldLiftsTest : public ::testing::Test {
protected:
    base::ActId record(base::LiftId lift, const progression::EventBody& body) { return m_writer.record(m_ada, {}, {{lift, {test::smallStudioDay(), body}}}).value().act; }
    static progression::CoachSet handSet(double load, const char* reason)
    {
        progression::CoachSet set;
        set.load = test::kilos(load);
        set.reason = reason;
        return set;
    }
    std::vector<ToldLift> told(base::ActId act)
    {
        return liftsOf(ChangeHistory(m_studio.database()).of(m_ada).value(), act);
    }
    static std::vector<ToldLift> liftsOf(const std::vector<ChangeEntry>& entries, base::ActId act)
    {
        const auto found = std::find_if(entries.begin(), entries.end(), [act](const ChangeEntry& entry) { return isAct(entry) && std::get<ActRecord>(entry.did).id == act; });
        return found == entries.end() ? std::vector<ToldLift>() : found->lifts;
    }

    test::StudioOnTest m_studio;
    RecordWriter m_writer{m_studio.database(), test::someMoment, base::CoachId(1)};
    base::ClientId m_ada = test::clientNamed(m_studio.database(), "Ada Lund");
    base::LiftId m_squat = test::liftOf(m_studio.database(), m_ada, lifts::Pattern::Squat);
};

TEST_F(ToldLiftsTest, AHandSetLiftHasItsExerciseWhatWasSetAndWhy)
{
    const std::vector<ToldLift> lifts = told(record(m_squat, handSet(50, "back from a cold")));
    ASSERT_EQ(lifts.size(), 1U);
    EXPECT_EQ(lifts[0].id, m_squat);
    EXPECT_EQ(lifts[0].pattern, lifts::Pattern::Squat);
    ASSERT_EQ(lifts[0].sets.size(), 1U);
    EXPECT_EQ(lifts[0].sets[0].set, handSet(50, "back from a cold"));
    EXPECT_EQ(lifts[0].sets[0].setup.unit, base::MassUnit::Kilogram);
}

TEST_F(ToldLiftsTest, ALiftIsNamedByWhatItWasDoneWithThen)
{
    const base::ActId before = record(m_squat, test::exposureOf({{45, 8, 2}}));
    const std::string first = told(before).at(0).exerciseKey;
    const base::ActId swapped = record(m_squat, progression::Swap{test::fixedKit({20, 24}).equipment, test::kilos(20), {}, {}, "goblet_squat", 1});
    EXPECT_NE(first, "goblet_squat");
    EXPECT_EQ(told(before).at(0).exerciseKey, first);
    EXPECT_EQ(told(swapped).at(0).exerciseKey, "goblet_squat");
}

TEST_F(ToldLiftsTest, ADecisionNamesTheLiftThatItIsAbout)
{
    checkin::Decision decision;
    decision.client = m_ada;
    decision.lift = m_squat;
    decision.day = test::smallStudioDay();
    decision.nextReview = test::smallStudioDay() + 7;
    const auto kept = DecisionWriter(m_studio.database(), test::someMoment, base::CoachId(1)).decide(decision, handSet(40, "too heavy"));
    ASSERT_TRUE(kept);
    const std::vector<ToldLift> lifts = told(kept->act);
    ASSERT_EQ(lifts.size(), 1U);
    EXPECT_EQ(lifts[0].id, m_squat);
    ASSERT_EQ(lifts[0].sets.size(), 1U) << "once, though event and decision name it";
    EXPECT_EQ(lifts[0].sets[0].set.reason, "too heavy");
}

TEST_F(ToldLiftsTest, WhatWasTakenBackIsNotSetAgainButBringingItBackIs)
{
    const base::ActId set = record(m_squat, handSet(50, "why"));
    const base::ActId undone = m_writer.undo(set).value().act;
    const base::ActId redone = m_writer.undo(undone).value().act;
    ASSERT_EQ(told(undone).size(), 1U);
    EXPECT_TRUE(told(undone)[0].sets.empty());
    ASSERT_EQ(told(redone).size(), 1U);
    ASSERT_EQ(told(redone)[0].sets.size(), 1U);
    EXPECT_EQ(told(redone)[0].sets[0].set.reason, "why");
}

TEST_F(ToldLiftsTest, AreToldOfTheWholeStudioToo)
{
    const base::ActId act = record(m_squat, handSet(50, "why"));
    const auto all = ChangeHistory(m_studio.database()).all().value();
    ASSERT_EQ(liftsOf(all, act).size(), 1U);
    EXPECT_EQ(liftsOf(all, act)[0].sets.size(), 1U);
    EXPECT_EQ(std::count_if(all.begin(), all.end(), [](const ChangeEntry& entry) { return !entry.lifts.empty(); }), 1) << "the import names none";
}

TEST_F(ToldLiftsTest, ASetThatCannotBeReadIsDamage)
{
    const base::ActId act = record(m_squat, handSet(50, "why"));
    m_studio.rows(QStringLiteral("INSERT INTO event (lift_id, day, act_id, is_void, type, pain, detail) SELECT lift_id, day, act_id, 0, 'set', 0, 'none' FROM event WHERE act_id = %1")
                      .arg(act.value()));
    const auto history = ChangeHistory(m_studio.database()).of(m_ada);
    ASSERT_FALSE(history);
    EXPECT_EQ(history.error().kind, StoreError::Kind::Damaged);
}

}  // namespace chalk::store
