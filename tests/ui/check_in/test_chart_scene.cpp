#include "ui/check_in/chart_scene.h"

#include "tests/ui/check_in/check_in_fixture.h"

#include <gtest/gtest.h>

namespace chalk::ui::check_in {

class ChartSceneTest : public ::testing::Test {
protected:
    const CheckInCase m_page = test::tomasz();
    const checkin::ClientEvidence& m_client = m_page.evidence;
    const checkin::LiftEvidence& m_squat = m_client.lifts[0];
    const checkin::LiftEvidence& m_bench = m_client.lifts[1];
};

TEST_F(ChartSceneTest, TheAxisHasRoundLinesAroundAllValues)
{
    EXPECT_EQ(valueAxisFor(76, 87, 4), (ValueAxis{75, 90, 5}));
    EXPECT_EQ(valueAxisFor(0, 2130, 2), (ValueAxis{0, 4000, 2000}));
    EXPECT_EQ(valueAxisFor(0, 3, 4), (ValueAxis{0, 3, 1}));
    const ValueAxis flat = valueAxisFor(80, 80, 4);
    EXPECT_LT(flat.low, 80);
    EXPECT_GT(flat.high, 80);
}

TEST_F(ChartSceneTest, TheSingleIsCalledEstimatedAndHasItsRange)
{
    const ChartScene scene = singleScene(m_client, m_bench);
    EXPECT_TRUE(scene.note.contains(QStringLiteral("estimated, not tested")));
    ASSERT_EQ(scene.series.size(), 1U);
    const ChartPoint& first = scene.series.front().points.front();
    EXPECT_DOUBLE_EQ(first.value, 78);
    EXPECT_DOUBLE_EQ(*first.low, 76);
    EXPECT_DOUBLE_EQ(*first.high, 80);
    EXPECT_EQ(first.spoken, QStringLiteral("Tue 8 Sep: 78 kg estimated, likely 76 to 80 kg"));
    EXPECT_EQ(scene.last, QStringLiteral("85 kg"));
    EXPECT_EQ(scene.lastRange, QStringLiteral("range 83–87"));
    EXPECT_EQ(scene.flat, QStringLiteral("4 weeks flat"));
    EXPECT_LE(scene.axis.low, 76);
    EXPECT_GE(scene.axis.high, 87);
}

TEST_F(ChartSceneTest, PoundsStayPounds)
{
    checkin::LiftEvidence lift = m_bench;
    lift.unit = base::MassUnit::Pound;
    const auto mass = base::Mass::of(base::Load::fromCenti(20000), base::MassUnit::Pound);
    lift.estimates = {{test::checkInDay(), mass, mass, mass}};
    EXPECT_EQ(singleScene(m_client, lift).last, QStringLiteral("200 lb"));
}

TEST_F(ChartSceneTest, WithTooLittleItSaysHowManySessionsAreMissing)
{
    const ChartScene scene = singleScene(m_client, m_squat);
    EXPECT_TRUE(scene.series.empty());
    EXPECT_EQ(scene.missing, QStringLiteral("4 more sessions before this says anything."));
    checkin::LiftEvidence unloaded = m_squat;
    unloaded.stage = progression::Stage::Control;
    EXPECT_TRUE(singleScene(m_client, unloaded).missing.startsWith(QStringLiteral("No load yet")));
    EXPECT_FALSE(volumeScene(m_client, m_squat).missing.isEmpty());
}

TEST_F(ChartSceneTest, EveryChartHasTheSameWeeksAndShadesTheSameDays)
{
    const auto isShaded = [](const ChartScene& scene, ShadeKind kind) {
        return std::any_of(scene.shades.begin(), scene.shades.end(), [kind](const ChartShade& shade) { return shade.kind == kind; });
    };
    for (const auto& make : {singleScene, volumeScene, stagesScene, readinessScene, sessionsScene}) {
        const ChartScene scene = make(m_client, m_bench);
        EXPECT_EQ(scene.days, m_client.days);
        EXPECT_TRUE(isShaded(scene, ShadeKind::LighterWeek)) << scene.key.toStdString();
        EXPECT_TRUE(isShaded(scene, ShadeKind::Pain)) << scene.key.toStdString();
        EXPECT_FALSE(isShaded(scene, ShadeKind::Layoff));
    }
}

TEST_F(ChartSceneTest, StagesHaveARowPerLift)
{
    const ChartScene scene = stagesScene(m_client, m_bench);
    ASSERT_EQ(scene.rows.size(), 2U);
    EXPECT_FALSE(scene.rows[0].isChosen);
    EXPECT_TRUE(scene.rows[1].isChosen);
    EXPECT_EQ(scene.rows[1].name, QStringLiteral("H push"));
    EXPECT_TRUE(scene.series[1].points[1].spoken.startsWith(QStringLiteral("H push: stage 4 Load build, cycle 2,")));
}

TEST_F(ChartSceneTest, CountsOnlySessionsThatCount)
{
    const ChartScene scene = sessionsScene(m_client, m_bench);
    EXPECT_EQ(scene.note, QStringLiteral("1 of 2 that count"));
    ASSERT_EQ(scene.series.front().points.size(), 3U);
    EXPECT_DOUBLE_EQ(scene.series.front().points[1].value, 0.5);
    EXPECT_EQ(scene.text, QStringLiteral("Bench press: met 0 of the last 4 targets. About 1.5 reps in reserve after the first set."));
}

TEST_F(ChartSceneTest, OneRepIsOne)
{
    checkin::LiftEvidence lift = m_bench;
    lift.reserve = 1.0;
    EXPECT_TRUE(sessionsScene(m_client, lift).text.endsWith(QStringLiteral("About 1 rep in reserve after the first set.")));
}

TEST_F(ChartSceneTest, ReadinessThatNobodyAskedForIsNotDrawn)
{
    EXPECT_EQ(readinessScene(m_client, m_bench).series.size(), 2U);
    checkin::ClientEvidence silent = m_client;
    silent.readiness.clear();
    EXPECT_FALSE(readinessScene(silent, m_bench).missing.isEmpty());
}

}  // namespace chalk::ui::check_in
