#include "core/exchange/trends_csv.h"

#include "core/checkin/trend_figures.h"
#include "core/exchange/bookings_csv.h"
#include "core/exchange/json_writing.h"

#include <QByteArrayList>

namespace chalk::exchange {

namespace {

using checkin::FigureKind;
using checkin::TrendFigure;

constexpr int kTrendDigits = 10;

QByteArray trendCell(double number)
{
    return QByteArray::number(number, 'g', kTrendDigits);
}

QByteArray trendCell(const std::optional<double>& number)
{
    return number ? trendCell(*number) : QByteArray();
}

QByteArray unitCell(FigureKind kind, base::MassUnit unit)
{
    const QByteArray mass = unit == base::MassUnit::Kilogram ? "kg" : "lb";
    switch (kind) {
    case FigureKind::LoadVolume:
        return mass + "*reps";
    case FigureKind::Came:
    case FigureKind::Counted:
        return "sessions";
    case FigureKind::SessionLoad:
    case FigureKind::Strain:
        return "au";
    case FigureKind::EstimatedSingle:
        return mass;
    case FigureKind::TargetSets:
        return "sets";
    case FigureKind::TargetReps:
        return "reps";
    case FigureKind::TargetRest:
        return "s";
    case FigureKind::Monotony:
    case FigureKind::LoadRatio:
    case FigureKind::LoadRatioCoupled:
        return {};
    }
    return {};
}

QByteArray trendRecord(const std::string& client, const TrendFigure& figure, const std::string& of, base::MassUnit unit)
{
    const QByteArrayList cells{csvField(textOf(client)), textOf(base::toString(figure.day.isoWeek())).toUtf8(), textOf(figure.day.toString()).toUtf8(),
                               textOf(checkin::keyOf(figure.kind)).toUtf8(), csvField(textOf(of)), trendCell(figure.value), trendCell(figure.low),
                               trendCell(figure.high), unitCell(figure.kind, unit)};
    return cells.join(',') + "\r\n";
}

std::string figureName(const TrendFigure& figure, const std::vector<checkin::LiftTrend>& lifts)
{
    return figure.lift ? lifts[*figure.lift].name : figure.pattern ? std::string(lifts::keyOf(*figure.pattern)) : std::string();
}

QByteArray trendsHeader()
{
    return "client,week,day,figure,of,value,low,high,unit\r\n";
}

void appendClient(QByteArray& text, const checkin::ClientTrend& client, const checkin::StudioTrends& trends)
{
    const auto append = [&](FigureKind kind, base::Date day, double value) {
        text += trendRecord(client.name, {kind, day, {}, {}, value, {}, {}}, {}, base::MassUnit::Kilogram);
    };
    append(FigureKind::LoadVolume, trends.days.from, client.volume.kilograms());
    append(FigureKind::Came, trends.days.from, client.attendance.came);
    append(FigureKind::Counted, trends.days.from, client.attendance.counted());
    if (client.monotony) {
        append(FigureKind::Monotony, trends.weeks.back().monday - 7, *client.monotony);
    }
}

}  // namespace

QByteArray trendsCsvOf(const checkin::Trends& trends, const std::string& client, base::MassUnit unit)
{
    QByteArray text = trendsHeader();
    for (const TrendFigure& figure : checkin::figuresOf(trends, unit)) {
        text += trendRecord(client, figure, figureName(figure, trends.lifts), figure.lift ? trends.lifts[*figure.lift].unit : unit);
    }
    return text;
}

QByteArray trendsCsvOf(const checkin::StudioTrends& trends)
{
    QByteArray text = trendsHeader();
    for (const TrendFigure& figure : checkin::figuresOf(trends)) {
        text += trendRecord({}, figure, figureName(figure, {}), base::MassUnit::Kilogram);
    }
    for (const checkin::ClientTrend& client : trends.clients) {
        appendClient(text, client, trends);
    }
    return text;
}

}  // namespace chalk::exchange
