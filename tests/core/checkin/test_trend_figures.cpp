#include "core/checkin/trend_figures.h"

#include <gtest/gtest.h>

#include <set>

namespace chalk::checkin {

namespace {

const base::Date kFigureMonday = *base::Date::fromYmd(2026, 11, 16);

base::Mass massOfKilograms(int kilograms)
{
    return base::Mass::of(base::Load::fromCenti(kilograms * 100), base::MassUnit::Kilogram);
}

Trends trendsOfOneWeek()
{
    Trends trends;
    trends.ratio = tl::make_unexpected(NoRatio::TooEarly);
    trends.weeks.resize(2);
    trends.weeks[0].monday = kFigureMonday - 7;
    trends.weeks[1].monday = kFigureMonday;
    TrendWeek& week = trends.weeks[1];
    week.work[static_cast<std::size_t>(lifts::Pattern::Hinge)].volume = massOfKilograms(1575);
    week.attendance = {2, 1, 0, 1};
    week.load.load = 700;
    week.load.rated = 2;
    return trends;
}

std::vector<TrendFigure> ofKind(const std::vector<TrendFigure>& figures, FigureKind kind)
{
    std::vector<TrendFigure> some;
    for (const TrendFigure& figure : figures) {
        if (figure.kind == kind) {
            some.push_back(figure);
        }
    }
    return some;
}

}  // namespace

TEST(TrendFigures, AreThoseOfTheWeeks)
{
    const auto figures = figuresOf(trendsOfOneWeek(), base::MassUnit::Kilogram);
    EXPECT_EQ(figures, (std::vector<TrendFigure>{{FigureKind::LoadVolume, kFigureMonday, lifts::Pattern::Hinge, {}, 1575, {}, {}},
                                                 {FigureKind::Came, kFigureMonday, {}, {}, 2, {}, {}},
                                                 {FigureKind::Counted, kFigureMonday, {}, {}, 3, {}, {}},
                                                 {FigureKind::SessionLoad, kFigureMonday, {}, {}, 700, {}, {}}}))
        << "what was not is no number";
}

TEST(TrendFigures, ALiftHasItsSinglesAndTargets)
{
    Trends trends = trendsOfOneWeek();
    trends.lifts.resize(1);
    trends.lifts[0].singles = {{kFigureMonday + 1, massOfKilograms(90), massOfKilograms(95), massOfKilograms(101)}};
    trends.lifts[0].targets = {{kFigureMonday, base::Sets(3), base::Reps(5), base::Reps(8), base::Seconds(150)},
                               {kFigureMonday + 3, base::Sets(3), base::Reps(8), base::Reps(8), base::Seconds(150)}};
    trends.ratio = LoadRatio{kFigureMonday, 2, 1.6};
    const auto figures = figuresOf(trends, base::MassUnit::Kilogram);
    EXPECT_EQ(ofKind(figures, FigureKind::EstimatedSingle),
              (std::vector<TrendFigure>{{FigureKind::EstimatedSingle, kFigureMonday + 1, lifts::Pattern::Squat, 0, 95, 90, 101}}));
    EXPECT_EQ(ofKind(figures, FigureKind::TargetReps),
              (std::vector<TrendFigure>{{FigureKind::TargetReps, kFigureMonday, lifts::Pattern::Squat, 0, 5, 5, 8},
                                        {FigureKind::TargetReps, kFigureMonday + 3, lifts::Pattern::Squat, 0, 8, {}, {}}}));
    EXPECT_EQ(ofKind(figures, FigureKind::TargetRest).back().value, 150);
    EXPECT_EQ(ofKind(figures, FigureKind::LoadRatio).front().value, 2);
    EXPECT_EQ(ofKind(figures, FigureKind::LoadRatioCoupled).front().value, 1.6);
}

TEST(TrendFigures, EverybodyIsInKilograms)
{
    StudioTrends trends;
    trends.weeks = trendsOfOneWeek().weeks;
    EXPECT_EQ(figuresOf(trends), figuresOf(trendsOfOneWeek(), base::MassUnit::Kilogram));
}

// The pound is exactly 0.45359237 kg (international yard and pound agreement, 1959).
TEST(TrendFigures, MassesAreInTheirUnit)
{
    EXPECT_DOUBLE_EQ(massIn(massOfKilograms(100), base::MassUnit::Kilogram), 100);
    EXPECT_NEAR(massIn(base::Mass::of(base::Load::fromCenti(22'500), base::MassUnit::Pound), base::MassUnit::Pound), 225, 1e-9);
}

TEST(TrendFigures, KeysAreApart)
{
    std::set<std::string_view> keys;
    for (const FigureKind kind : kFigureKinds) {
        keys.insert(keyOf(kind));
    }
    EXPECT_EQ(keys.size(), kFigureKinds.size());
    EXPECT_EQ(keyOf(FigureKind::LoadRatioCoupled), "load_ratio_coupled");
}

}  // namespace chalk::checkin
