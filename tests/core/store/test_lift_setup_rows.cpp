#include "core/store/lift_setup_rows.h"

#include "tests/support/small_studio.h"

#include <gtest/gtest.h>

namespace chalk::store {

namespace {

std::optional<progression::LiftSetup> setupOfSquat(Database& database)
{
    Statement row(database, QStringLiteral("SELECT id, unit, region, body_mass_centi, kit, start_stage, policy FROM lift WHERE pattern = 'squat'"));
    row.run();
    return row.next() ? setupIn(row, 1) : std::nullopt;
}

}  // namespace

TEST(LiftSetupRows, ALiftIsReadAsItWasSetUp)
{
    exchange::StudioDocument document = test::smallStudio();
    progression::LiftSetup& setup = document.clients[0].lifts[1].setup;
    setup.bodyMass = base::Load::fromCenti(7150);
    setup.policy.metresPerRep = base::Metres(10);
    test::StudioOnTest studio(document);
    const auto read = setupOfSquat(studio.database());
    ASSERT_TRUE(read);
    EXPECT_EQ(read->bodyMass, setup.bodyMass);
    EXPECT_EQ(read->policy.metresPerRep, base::Metres(10));
    EXPECT_EQ(read->kit.measure, setup.kit.measure);
    EXPECT_EQ(read->kit.equipment, setup.kit.equipment);
    EXPECT_EQ(read->startStage, setup.startStage);
}

TEST(LiftSetupRows, WhatCannotBeReadIsNothing)
{
    test::StudioOnTest studio;
    studio.rows(QStringLiteral("UPDATE lift SET start_stage = 'flying' WHERE pattern = 'squat'"));
    EXPECT_FALSE(setupOfSquat(studio.database()));
}

}  // namespace chalk::store
