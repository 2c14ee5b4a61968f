#include "core/store/lift_codec.h"

#include "tests/support/journey.h"
#include "tests/support/lift_on_test.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace chalk::store {

RC_GTEST_PROP(LiftCodec, EveryStateThatALifeLeadsToReadsBack, ())
{
    test::Journey journey(test::lowerLift(*rc::gen::element(test::barbellKit(), test::kettlebellKit())));
    for (const std::uint32_t whim : *rc::gen::container<std::vector<std::uint32_t>>(rc::gen::arbitrary<std::uint32_t>())) {
        journey.live(whim);
        RC_ASSERT(stateOf(textOfState(journey.state())) == std::optional(journey.state()));
    }
    for (const progression::JudgedEvent& event : journey.history()) {
        RC_ASSERT(rulesOf(textOfRules(event.rules)) == event.rules);
        const auto* exposure = std::get_if<progression::Exposure>(event.body);
        const auto body = bodyOf(QString::fromUtf8(progression::typeKeyOf(*event.body).data()), textOfBody(*event.body), exposure == nullptr ? 0 : exposure->pain);
        RC_ASSERT(body.has_value());
        if (exposure != nullptr) {  // its sets stand in rows of their own
            RC_ASSERT(std::get<progression::Exposure>(*body).pain == exposure->pain);
        } else {
            RC_ASSERT(*body == *event.body);
        }
    }
}

TEST(LiftCodec, ALighterWeekReadsBack)
{
    test::LiftOnTest lift;
    lift.set(progression::Stage::RepBuild, 60);
    lift.apply(progression::LighterWeek{"tired"});
    ASSERT_TRUE(lift.state().lighterUntil);
    EXPECT_EQ(stateOf(textOfState(lift.state())), lift.state());
    for (const char* note : {"tired", ""}) {
        const progression::EventBody body = progression::LighterWeek{note};
        EXPECT_EQ(bodyOf(QStringLiteral("lighter"), textOfBody(body), 0), body);
    }
}

TEST(LiftCodec, KitsReadBack)
{
    for (const lifts::Equipment& equipment :
         {lifts::Equipment(std::get<lifts::Barbell>(test::barbellKit().equipment)), lifts::Equipment(lifts::FixedSet{{test::kilos(8), test::kilos(12.5)}}),
          lifts::Equipment(lifts::Stack{test::kilos(5), test::kilos(100), test::kilos(2.5)}),
          lifts::Equipment(lifts::BodyAdded{{test::kilos(-20), test::kilos(0), test::kilos(2.5)}})}) {
        const progression::Kit kit{equipment, base::Milli(640), lifts::Measure::Seconds, test::kilos(12.5), "some_exercise", 2};
        EXPECT_EQ(kitOf(textOfKit(kit)), kit);
    }
    EXPECT_FALSE(kitOf(QStringLiteral("{}")));
    EXPECT_FALSE(kitOf(QStringLiteral("no JSON")));
}

TEST(LiftCodec, PoliciesKeepWhatDiffers)
{
    progression::Policy policy = progression::Policy::defaultsFor(base::MassUnit::Pound);
    EXPECT_EQ(textOfPolicy(policy, base::MassUnit::Pound), QStringLiteral("{}"));
    policy.repGoal = base::Reps(15);
    policy.restSteps = {base::Seconds(120), base::Seconds(60)};
    policy.layoffCuts[1] = base::Milli(250);
    policy.lighterDays = 10;
    policy.lighterSets = base::Milli(600);
    policy.lighterCut = base::Milli(150);
    EXPECT_EQ(policyOf(textOfPolicy(policy, base::MassUnit::Pound), base::MassUnit::Pound), policy);
    EXPECT_FALSE(policyOf(QStringLiteral("{\"rep_floor\": 99}"), base::MassUnit::Pound));
}

TEST(LiftCodec, WhatMakesNoSenseIsNoState)
{
    EXPECT_FALSE(stateOf(QStringLiteral("")));
    EXPECT_FALSE(stateOf(QStringLiteral("{\"stage\": 8}")));
    EXPECT_FALSE(stateOf(QStringLiteral("{\"stage\": 4}"))) << "a loaded stage has a load";
    EXPECT_FALSE(stateOf(QStringLiteral("{\"stage\": 2, \"return_stage\": 9}")));
}

}  // namespace chalk::store
