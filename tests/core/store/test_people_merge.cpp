#include "core/store/people_merge.h"

#include "core/exchange/catalogue_json.h"
#include "core/exchange/table_file.h"
#include "core/store/client_reader.h"
#include "core/store/client_writer.h"
#include "core/store/erasure.h"
#include "core/store/people_reader.h"
#include "core/store/record_writer.h"
#include "core/store/studio_check.h"
#include "tests/support/small_studio.h"

#include <gtest/gtest.h>

namespace chalk::store {
namespace {

using lifts::Pattern;
using test::smallStudioDay;

/// The small studio with a second record of Ada, brought by a list.
class MergeOnTest {
public:
    MergeOnTest()
    {
        const auto file = exchange::inspectTable("Client,Goal,Phone,Date,Exercise,Load,Reps\n"
                                                 "Ada Lundh,Row,01632 960001,2026-10-01,Front squat,40,8\n"
                                                 "Ada Lundh,,,2026-10-01,Pull-up,0,5\n"
                                                 "Ada Lundh,,,2026-11-05,Back squat,42.5,8\n");
        const lifts::Catalogue catalogue = exchange::builtInCatalogue();
        tables::TableContent content;
        EXPECT_TRUE(exchange::readTable(*file, file->layout, content, 0, smallStudioDay()));
        auto proposal = PeopleReader(studio.database()).proposal(content, catalogue, smallStudioDay());
        proposal->people.persons[0] = {};
        EXPECT_TRUE(importPeople(studio.database(), proposal->people, test::someMoment()));
        ada = test::clientNamed(studio.database(), "Ada Lund");
        other = test::clientNamed(studio.database(), "Ada Lundh");
    }

    int faults()
    {
        const auto check = checkStudio(studio.database());
        return check ? static_cast<int>(check->faults.size()) : -1;
    }

    test::StudioOnTest studio;
    base::ClientId ada;
    base::ClientId other;
};

TEST(PeopleMerge, SaysWhatGoesWhere)
{
    MergeOnTest merge;
    const auto plan = planMerge(merge.studio.database(), merge.ada, merge.other, smallStudioDay());
    ASSERT_TRUE(plan) << plan.error().message.toStdString();
    EXPECT_EQ(plan->liftsMoved, (std::vector<Pattern>{Pattern::VerticalPull}));
    EXPECT_EQ(plan->liftsJoined, (std::vector<Pattern>{Pattern::Squat}));
    EXPECT_EQ(plan->sessions, 2);
    EXPECT_EQ(plan->filled, (std::vector<std::string>{"phone"}));  // Ada has a goal of her own
}

TEST(PeopleMerge, MakesTwoOneAndTwoAgain)
{
    MergeOnTest merge;
    const QStringList before = merge.studio.cacheRows();
    const auto merged = mergeClients(merge.studio.database(), merge.ada, merge.other, test::someMoment(), smallStudioDay());
    ASSERT_TRUE(merged) << merged.error().message.toStdString();
    EXPECT_FALSE(ClientReader(merge.studio.database()).read(merge.other, smallStudioDay()));
    const auto file = ClientReader(merge.studio.database()).read(merge.ada, smallStudioDay());
    ASSERT_TRUE(file);
    EXPECT_EQ(file->lifts.size(), 4U);
    EXPECT_EQ(merge.studio.rows(QStringLiteral("SELECT count(*) FROM session WHERE client_id = %1 AND state = 'recorded'").arg(merge.ada.value())), QStringList(QStringLiteral("4")));
    EXPECT_EQ(merge.studio.rows(QStringLiteral("SELECT count(*) FROM client_week WHERE client_id = %1").arg(merge.other.value())), QStringList(QStringLiteral("0")));
    EXPECT_EQ(merge.faults(), 0);
    RecordWriter writer(merge.studio.database(), [] { return test::someMoment(); });
    const auto undone = writer.undo(merged->act);
    ASSERT_TRUE(undone) << undone.error().message.toStdString();
    EXPECT_EQ(merge.studio.cacheRows(), before);
    EXPECT_TRUE(ClientReader(merge.studio.database()).read(merge.other, smallStudioDay()));
    EXPECT_EQ(merge.faults(), 0);
    ASSERT_TRUE(writer.undo(undone->act));
    EXPECT_EQ(ClientReader(merge.studio.database()).read(merge.ada, smallStudioDay())->lifts.size(), 4U);
    EXPECT_EQ(merge.faults(), 0);
}

TEST(PeopleMerge, RefusesWhatWouldLoseSomething)
{
    MergeOnTest merge;
    store::Database& database = merge.studio.database();
    EXPECT_FALSE(planMerge(database, merge.ada, merge.ada, smallStudioDay()));
    EXPECT_EQ(planMerge(database, merge.other, merge.ada, smallStudioDay()).error().message,
              QStringLiteral("Ada Lund has sessions to come: keep that record, or take them away first"));
    EXPECT_FALSE(planMerge(database, merge.ada, base::ClientId(99), smallStudioDay()));
    merge.studio.rows(QStringLiteral("INSERT INTO form (client_id, kind, day, is_finished, detail) VALUES (%1, 'field_tests', 20000, 1, '{}')").arg(merge.other.value()));
    EXPECT_EQ(mergeClients(database, merge.ada, merge.other, test::someMoment(), smallStudioDay()).error().message,
              QStringLiteral("Ada Lundh has health forms that the other does not have: keep that record"));
}

TEST(PeopleMerge, IsNotTakenBackOnceALiftThatWentOverHasGoneOn)
{
    MergeOnTest merge;
    const auto merged = mergeClients(merge.studio.database(), merge.ada, merge.other, test::someMoment(), smallStudioDay());
    ASSERT_TRUE(merged);
    RecordWriter writer(merge.studio.database(), [] { return test::someMoment(); });
    const auto pull = test::liftOf(merge.studio.database(), merge.ada, Pattern::VerticalPull);
    ASSERT_TRUE(writer.record(merge.ada, {}, {{pull, {smallStudioDay(), progression::Exposure{0, {{base::Load(), 6, 2}}}}}}));
    const auto refused = writer.undo(merged->act);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().message, QStringLiteral("A lift has gone on since: take that back first"));
}

TEST(PeopleMerge, LeavesNothingBehindWhereTheOneIsErased)
{
    test::StudioOnTest studio;
    clients::Client client;
    client.name = "Ada Lundh";
    client.coach = base::CoachId(1);
    client.startedOn = smallStudioDay();
    const auto other = ClientWriter(studio.database()).add(client, smallStudioDay());  // nothing goes over but the record itself
    const auto ada = test::clientNamed(studio.database(), "Ada Lund");
    ASSERT_TRUE(other && mergeClients(studio.database(), ada, *other, test::someMoment(), smallStudioDay()));
    const auto erased = eraseClient(studio.database(), ada, "Ada Lund", smallStudioDay());
    ASSERT_TRUE(erased) << erased.error().message.toStdString();
    EXPECT_EQ(studio.rows(QStringLiteral("SELECT count(*) FROM client WHERE name LIKE 'Ada%'")), QStringList(QStringLiteral("0")));
}

}  // namespace
}  // namespace chalk::store
