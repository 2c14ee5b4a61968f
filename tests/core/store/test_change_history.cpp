#include "core/store/change_history.h"

#include "core/store/client_writer.h"
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

}  // namespace chalk::store
