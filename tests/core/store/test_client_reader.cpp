#include "core/store/client_reader.h"

#include "tests/support/small_studio.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace chalk::store {

using progression::Stage;
using ::testing::ElementsAre;
using ::testing::Pair;

TEST(ClientReader, ReadsEverythingAboutOneClient)
{
    test::StudioOnTest studio;
    const auto file = ClientReader(studio.database()).read(test::clientNamed(studio.database(), "Ada Lund"), test::smallStudioDay()).value();
    exchange::DocumentClient ada = test::smallStudio().clients[0];
    ada.client.id = file.client.id;
    EXPECT_EQ(file.client, ada.client);
    EXPECT_EQ(file.coachName, "Ines");
    EXPECT_EQ(file.clearance, ada.clearance);
    ASSERT_EQ(file.cautions.size(), 1U) << "one is over";
    EXPECT_EQ(file.cautions[0].tags, ada.cautions[0].tags);
    ASSERT_TRUE(file.next.session);
    EXPECT_EQ(file.next.session->code, "S3");
    EXPECT_EQ(file.next.taken, 1);
}

TEST(ClientReader, LiftsComeByPatternWithTheWayTheyCame)
{
    test::StudioOnTest studio;
    const auto lifts = ClientReader(studio.database()).read(test::clientNamed(studio.database(), "Ada Lund"), test::smallStudioDay()).value().lifts;
    ASSERT_EQ(lifts.size(), 3U);
    EXPECT_EQ(lifts[0].lift.pattern, lifts::Pattern::Squat);
    EXPECT_EQ(lifts[1].lift.pattern, lifts::Pattern::Hinge);
    EXPECT_EQ(lifts[2].lift.pattern, lifts::Pattern::HorizontalPush);
    EXPECT_EQ(lifts[2].lift.machine.kit().pieces, 2);
    const base::Date start = test::smallStudioDay() - 40;
    EXPECT_THAT(lifts[0].reached, ElementsAre(StageReached{1, Stage::Pattern, start}, StageReached{1, Stage::Control, start},
                                              StageReached{1, Stage::BaseLoad, start}, StageReached{1, Stage::LoadBuild, start + 5}));
    EXPECT_EQ(lifts[0].lift.machine.prescriptionOn(test::smallStudioDay()).load, base::Load::fromCenti(5000));
    EXPECT_EQ(lifts[0].lift.firstWork, start + 5);
    EXPECT_TRUE(lifts[1].lift.machine.state().isOnHold);
    EXPECT_EQ(lifts[1].lift.holdPain, 5);
}

TEST(ClientReader, AClientWithoutAnythingReadsToo)
{
    test::StudioOnTest studio;
    const auto bo = ClientReader(studio.database()).read(test::clientNamed(studio.database(), "Bo Arden"), test::smallStudioDay()).value();
    EXPECT_TRUE(bo.lifts.empty());
    EXPECT_FALSE(bo.next.session);
    EXPECT_TRUE(clients::isBlocked(bo.clearance, test::smallStudioDay()));
    EXPECT_FALSE(bo.client.birthDate);
}

TEST(ClientReader, NobodyIsAnError)
{
    test::StudioOnTest studio;
    const auto nobody = ClientReader(studio.database()).read(base::ClientId(99), test::smallStudioDay());
    ASSERT_FALSE(nobody);
    EXPECT_EQ(nobody.error().kind, StoreError::Kind::Refused);
    EXPECT_EQ(nobody.error().message, QStringLiteral("There is no client 99"));
}

TEST(ClientReader, NamesComeInOrder)
{
    test::StudioOnTest studio;
    EXPECT_THAT(ClientReader(studio.database()).names().value(), ElementsAre(Pair(base::ClientId(1), "Ada Lund"), Pair(base::ClientId(2), "Bo Arden")));
}

TEST(ClientReader, ACacheThatCannotBeReadIsReplacedByTheLog)
{
    test::StudioOnTest studio;
    const auto ada = test::clientNamed(studio.database(), "Ada Lund");
    const auto before = ClientReader(studio.database()).read(ada, test::smallStudioDay()).value();
    studio.rows(QStringLiteral("UPDATE lift_state SET state = '{\"stage\": 6}'"));
    const auto after = ClientReader(studio.database()).read(ada, test::smallStudioDay()).value();
    for (std::size_t i = 0; i < before.lifts.size(); ++i) {
        EXPECT_EQ(before.lifts[i].lift.machine.state(), after.lifts[i].lift.machine.state());
    }
}

TEST(ClientReader, ALiftThatCannotBeReadIsDamage)
{
    test::StudioOnTest studio;
    studio.rows(QStringLiteral("UPDATE lift SET kit = 'x'"));
    const auto file = ClientReader(studio.database()).read(base::ClientId(1), test::smallStudioDay());
    ASSERT_FALSE(file);
    EXPECT_EQ(file.error().kind, StoreError::Kind::Damaged);
    EXPECT_TRUE(file.error().message.contains(studio.file()));
}

}  // namespace chalk::store
