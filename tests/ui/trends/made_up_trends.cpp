#include "tests/ui/trends/made_up_trends.h"

#include <QPainter>

namespace chalk::ui::trends {

namespace {

using checkin::TrendWeek;

std::vector<TrendWeek> fourWeeks()
{
    const checkin::DayRange days = checkin::trendDays(madeUpDay(), 4);
    std::vector<TrendWeek> weeks(4);
    for (int i = 0; i < 4; ++i) {
        weeks[static_cast<std::size_t>(i)].monday = days.from + 7 * i;
        weeks[static_cast<std::size_t>(i)].isOver = i < 3;
    }
    return weeks;
}

void setVolume(TrendWeek& week, lifts::Pattern pattern, int kilogramReps)
{
    week.work[static_cast<std::size_t>(pattern)].volume = madeUpMass(kilogramReps);
}

checkin::LiftTrend liftTrend(const char* name, lifts::Pattern pattern, int kilograms, progression::Stage stage)
{
    checkin::LiftTrend lift;
    lift.name = name;
    lift.pattern = pattern;
    lift.stage = stage;
    const base::Date from = checkin::trendDays(madeUpDay(), 4).from;
    for (int week = 0; week < 3; ++week) {
        const int median = kilograms + 2 * week;
        lift.singles.push_back({from + 7 * week + 1, madeUpMass(median - 3), madeUpMass(median), madeUpMass(median + 4)});
    }
    lift.estimates = 5;
    lift.loadedSince = from - 60;
    lift.buildSince = from - 30;
    lift.targets = {{from, base::Sets(3), base::Reps(5), base::Reps(8), base::Seconds(150)},
                    {from + 9, base::Sets(3), base::Reps(8), base::Reps(8), base::Seconds(135)}};
    return lift;
}

checkin::WeekLoad loadOf(double monotony)
{
    return {1400, 3, 0, monotony, 1400 * monotony, {}};
}

}  // namespace

base::Date madeUpDay()
{
    return *base::Date::fromYmd(2026, 11, 25);
}

base::Mass madeUpMass(int kilograms)
{
    return base::Mass::of(base::Load::fromCenti(kilograms * 100), base::MassUnit::Kilogram);
}

store::ClientTrends madeUpClient()
{
    store::ClientTrends client{base::ClientId(1), "Joaquin Ferro", base::MassUnit::Kilogram, {}};
    checkin::Trends& trends = client.trends;
    trends.days = checkin::trendDays(madeUpDay(), 4);
    trends.weeks = fourWeeks();
    for (int i = 0; i < 3; ++i) {
        TrendWeek& week = trends.weeks[static_cast<std::size_t>(i)];
        setVolume(week, lifts::Pattern::Squat, 3000 + 30 * i);
        setVolume(week, lifts::Pattern::HorizontalPull, 1500);
        week.attendance = {2, i == 1 ? 1 : 0, 0, 0};
        week.load = loadOf(1.5 + 0.3 * i);
    }
    trends.weeks[3].load.why = checkin::NoMonotony::NotOver;
    trends.lifts = {liftTrend("Back squat", lifts::Pattern::Squat, 95, progression::Stage::RepBuild),
                    liftTrend("Chest row", lifts::Pattern::HorizontalPull, 58, progression::Stage::RestCut)};
    trends.ratio = checkin::LoadRatio{trends.weeks[2].monday, 1.2, 1.1};
    return client;
}

store::ClientTrends madeUpBeginner()
{
    store::ClientTrends client{base::ClientId(2), "Dmitri Oake", base::MassUnit::Kilogram, {}};
    checkin::Trends& trends = client.trends;
    trends.days = checkin::trendDays(madeUpDay(), 4);
    trends.weeks = fourWeeks();
    trends.lifts.resize(1);
    trends.lifts[0].name = "Chest row";
    trends.ratio = tl::make_unexpected(checkin::NoRatio::TooEarly);
    trends.volumeGap = checkin::FigureGap{0, 2};
    trends.singlesGap = checkin::FigureGap{0, 3, {}, 0};
    trends.targetsGap = checkin::FigureGap{0, 1, {}, 0};
    trends.monotonyGap = checkin::FigureGap{0, 2, madeUpDay() + 12};
    trends.isLearning = true;
    return client;
}

checkin::StudioTrends madeUpStudio()
{
    checkin::StudioTrends studio;
    studio.days = checkin::trendDays(madeUpDay(), 4);
    studio.weeks = madeUpClient().trends.weeks;
    for (TrendWeek& week : studio.weeks) {
        week.load.monotony.reset();
        week.load.strain.reset();
    }
    using checkin::LoadTrend;
    studio.clients = {{base::ClientId(2), "Dmitri Oake", {}, {}, {}, {}},
                      {base::ClientId(1), "Joaquin Ferro", {LoadTrend::Kind::Change, 8, false}, madeUpMass(13'590), {6, 1, 0, 0}, 2.1},
                      {base::ClientId(3), "Tove Lind", {LoadTrend::Kind::Change, -12, true}, madeUpMass(9000), {2, 2, 0, 0}, 1.4}};
    return studio;
}

TrendsView viewOf(store::ClientTrends client)
{
    TrendsView view;
    view.ask = {client.client, madeUpDay(), 4};
    view.clients = {{base::ClientId(2), QStringLiteral("Dmitri Oake")}, {base::ClientId(1), QStringLiteral("Joaquin Ferro")}};
    view.trends = std::move(client);
    return view;
}

TrendsView viewOf(checkin::StudioTrends studio)
{
    TrendsView view = viewOf(madeUpClient());
    view.ask.client = {};
    view.trends = std::move(studio);
    return view;
}

store::Result<TrendsView> MadeUpTrends::read(const TrendsAsk& ask)
{
    ++readings;
    lastWeeks = ask.weeks;
    if (isBroken) {
        return tl::make_unexpected(store::StoreError{store::StoreError::Kind::Damaged, QStringLiteral("the disk is gone")});
    }
    return ask.client.isNone() ? viewOf(madeUpStudio()) : viewOf(ask.client == base::ClientId(1) ? madeUpClient() : madeUpBeginner());
}

int PaintedChart::inked(const common::Theme& theme) const
{
    int count = 0;
    for (int y = 0; y < image.height(); ++y) {
        for (int x = 0; x < image.width(); ++x) {
            count += image.pixelColor(x, y) == theme.surface ? 0 : 1;
        }
    }
    return count;
}

PaintedChart painted(const ChartPaint& paint, const common::Theme& theme, QSize size)
{
    PaintedChart chart{QImage(size, QImage::Format_RGB32), {}};
    chart.image.fill(theme.surface);
    QPainter painter(&chart.image);
    painter.setRenderHint(QPainter::Antialiasing);
    chart.spots = paint(painter, QRectF(QPointF(), QSizeF(size)), theme);
    return chart;
}

}  // namespace chalk::ui::trends
