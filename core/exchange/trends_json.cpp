#include "core/exchange/trends_json.h"

#include "core/checkin/trend_figures.h"
#include "core/exchange/json_writing.h"

#include <QJsonArray>

namespace chalk::exchange {

namespace {

using checkin::massIn;

QJsonValue trendDayJson(base::Date day)
{
    return textOf(day.toString());
}

QJsonValue realOrNull(const std::optional<double>& number)
{
    return number ? QJsonValue(*number) : QJsonValue();
}

QString unitKey(base::MassUnit unit)
{
    return unit == base::MassUnit::Kilogram ? QStringLiteral("kg") : QStringLiteral("lb");
}

QJsonObject patternVolumesJson(const checkin::TrendWeek& week, base::MassUnit unit)
{
    QJsonObject volume{{QLatin1String("total"), massIn(week.together().volume, unit)}};
    for (const lifts::Pattern pattern : lifts::kPatterns) {
        volume.insert(textOf(lifts::keyOf(pattern)), massIn(week.work[static_cast<std::size_t>(pattern)].volume, unit));
    }
    return volume;
}

QJsonArray weeksJson(const std::vector<checkin::TrendWeek>& weeks, base::MassUnit unit)
{
    QJsonArray all;
    for (const checkin::TrendWeek& week : weeks) {
        QJsonObject one;
        put(one, "week", textOf(base::toString(week.monday.isoWeek())));
        put(one, "monday", trendDayJson(week.monday));
        put(one, "over", week.isOver);
        put(one, "load_volume", patternVolumesJson(week, unit));
        put(one, "lighter_lifts", week.lighterLifts);
        put(one, "came", week.attendance.came);
        put(one, "counted", week.attendance.counted());
        put(one, "cancelled_in_time", week.attendance.cancelledInTime);
        put(one, "session_load", week.load.load);
        put(one, "rated", week.load.rated);
        put(one, "unrated", week.load.unrated);
        put(one, "monotony", realOrNull(week.load.monotony));
        put(one, "strain", realOrNull(week.load.strain));
        put(one, "no_monotony", week.load.why ? QJsonValue(textOf(checkin::keyOf(*week.load.why))) : QJsonValue());
        all.append(one);
    }
    return all;
}

QJsonArray singlesJson(const checkin::LiftTrend& lift)
{
    QJsonArray all;
    for (const checkin::EstimatePoint& point : lift.singles) {
        all.append(QJsonObject{{QLatin1String("date"), trendDayJson(point.date)},
                               {QLatin1String("low"), massIn(point.lowest, lift.unit)},
                               {QLatin1String("median"), massIn(point.median, lift.unit)},
                               {QLatin1String("high"), massIn(point.highest, lift.unit)}});
    }
    return all;
}

QJsonArray targetsJson(const checkin::LiftTrend& lift)
{
    QJsonArray all;
    for (const checkin::TargetStep& step : lift.targets) {
        all.append(QJsonObject{{QLatin1String("from"), trendDayJson(step.from)},
                               {QLatin1String("sets"), step.sets.value()},
                               {QLatin1String("reps_low"), step.repsLow.value()},
                               {QLatin1String("reps_high"), step.repsHigh.value()},
                               {QLatin1String("rest"), step.rest.value()}});
    }
    return all;
}

QJsonArray liftsJson(const std::vector<checkin::LiftTrend>& lifts)
{
    QJsonArray all;
    for (const checkin::LiftTrend& lift : lifts) {
        QJsonObject one;
        put(one, "name", textOf(lift.name));
        put(one, "exercise", textOf(lift.exerciseKey));
        put(one, "pattern", textOf(lifts::keyOf(lift.pattern)));
        put(one, "stage", textOf(progression::keyOf(lift.stage)));
        put(one, "measure", textOf(lifts::keyOf(lift.measure)));
        put(one, "unit", unitKey(lift.unit));
        put(one, "estimated_singles", singlesJson(lift));
        put(one, "targets", targetsJson(lift));
        all.append(one);
    }
    return all;
}

QJsonObject ratioJson(const tl::expected<checkin::LoadRatio, checkin::NoRatio>& ratio)
{
    if (!ratio) {
        return {{QLatin1String("none"), textOf(checkin::keyOf(ratio.error()))}};
    }
    return {{QLatin1String("monday"), trendDayJson(ratio->monday)},
            {QLatin1String("uncoupled"), ratio->uncoupled},
            {QLatin1String("coupled"), ratio->coupled},
            {QLatin1String("criticism"), QJsonArray{QStringLiteral("Lolli L. et al. 2017, Br J Sports Med"),
                                                    QStringLiteral("Impellizzeri F.M. et al. 2020, Sports Med 51:581-592")}}};
}

QJsonValue gapJson(const std::optional<checkin::FigureGap>& gap, const std::vector<checkin::LiftTrend>& lifts)
{
    if (!gap) {
        return {};
    }
    return QJsonObject{{QLatin1String("have"), gap->have},
                       {QLatin1String("need"), gap->need},
                       {QLatin1String("first_on"), gap->firstOn ? trendDayJson(*gap->firstOn) : QJsonValue()},
                       {QLatin1String("lift"), gap->lift ? QJsonValue(textOf(lifts[*gap->lift].name)) : QJsonValue()}};
}

QJsonObject missingJson(const checkin::Trends& trends)
{
    QJsonObject missing;
    put(missing, "load_volume", gapJson(trends.volumeGap, trends.lifts));
    put(missing, "estimated_singles", gapJson(trends.singlesGap, trends.lifts));
    put(missing, "targets", gapJson(trends.targetsGap, trends.lifts));
    put(missing, "monotony", gapJson(trends.monotonyGap, trends.lifts));
    return missing;
}

QJsonValue changeJson(const checkin::LoadTrend& trend)
{
    return trend.kind == checkin::LoadTrend::Kind::Change ? QJsonValue(trend.percent) : QJsonValue();
}

}  // namespace

QJsonObject toJson(const checkin::Trends& trends, const std::string& client, base::MassUnit unit)
{
    QJsonObject object;
    put(object, "client", textOf(client));
    put(object, "unit", unitKey(unit));
    put(object, "from", trendDayJson(trends.days.from));
    put(object, "to", trendDayJson(trends.days.to));
    put(object, "weeks", weeksJson(trends.weeks, unit));
    put(object, "lifts", liftsJson(trends.lifts));
    put(object, "load_ratio", ratioJson(trends.ratio));
    put(object, "missing", missingJson(trends));
    put(object, "is_learning", trends.isLearning);
    return object;
}

QJsonObject toJson(const checkin::StudioTrends& trends)
{
    QJsonArray clients;
    for (const checkin::ClientTrend& client : trends.clients) {
        QJsonObject one;
        put(one, "name", textOf(client.name));
        put(one, "load_volume", client.volume.kilograms());
        put(one, "load_change", changeJson(client.load));
        put(one, "came", client.attendance.came);
        put(one, "counted", client.attendance.counted());
        put(one, "monotony", realOrNull(client.monotony));
        clients.append(one);
    }
    QJsonObject object;
    put(object, "unit", unitKey(base::MassUnit::Kilogram));
    put(object, "from", trendDayJson(trends.days.from));
    put(object, "to", trendDayJson(trends.days.to));
    put(object, "weeks", weeksJson(trends.weeks, base::MassUnit::Kilogram));
    put(object, "clients", clients);
    return object;
}

}  // namespace chalk::exchange
