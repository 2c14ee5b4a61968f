#include "ui/common/forecast_words.h"

#include "core/exchange/catalogue_json.h"

#include <QStringList>

#include <gtest/gtest.h>

namespace chalk::ui::common {

class ForecastWords : public ::testing::Test {
protected:
    static checkin::ForecastPoint at(int kilograms)
    {
        checkin::ForecastPoint point;
        point.stage = progression::Stage::LoadBuild;
        point.load = base::Load::fromCenti(100 * kilograms);
        point.sets = base::Sets(3);
        point.reps = base::Reps(5);
        return point;
    }

    const lifts::Catalogue m_catalogue = exchange::builtInCatalogue();
};

TEST_F(ForecastWords, SaysThatItIsAForecastAndHasARange)
{
    checkin::Forecast forecast;
    for (int week = 0; week < checkin::kForecastWeeks; ++week) {
        forecast.weeks.push_back({base::Date(), at(70), at(70 + week), at(70 + 2 * week)});
    }
    checkin::LiftEvidence lift;
    lift.exerciseKey = "bench_press";
    const QStringList lines = forecastText(forecast, lift, m_catalogue).split(QLatin1Char('\n'));
    ASSERT_EQ(lines.size(), 4);
    EXPECT_TRUE(lines[0].contains(QStringLiteral("not a promise")));
    EXPECT_EQ(lines[1], QStringLiteral("In 4 weeks: Load build, 3 × 5, 73 kg. Slow: Load build, 3 × 5, 70 kg. Fast: Load build, 3 × 5, 76 kg."));
    EXPECT_TRUE(lines[3].startsWith(QStringLiteral("In 12 weeks: Load build, 3 × 5, 81 kg.")));
}

TEST_F(ForecastWords, SaysHowManySessionsAreMissing)
{
    EXPECT_EQ(forecastLackText({checkin::NoForecast::FewExposures, 3}), QStringLiteral("No forecast yet: 3 more sessions."));
    EXPECT_EQ(forecastLackText({checkin::NoForecast::FewExposures, 1}), QStringLiteral("No forecast yet: 1 more session."));
    for (const auto why : {checkin::NoForecast::OnHold, checkin::NoForecast::NotLoaded, checkin::NoForecast::NoSingle, checkin::NoForecast::Away}) {
        EXPECT_TRUE(forecastLackText({why, 0}).startsWith(QStringLiteral("No forecast")));
    }
}

}  // namespace chalk::ui::common
