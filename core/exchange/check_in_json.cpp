#include "core/exchange/check_in_json.h"

#include "core/exchange/event_json.h"
#include "core/exchange/json_writing.h"
#include "core/exchange/lift_history_json.h"
#include "core/exchange/plateau_json.h"

#include <QJsonArray>

namespace chalk::exchange {

namespace {

using checkin::LiftEvidence;

QString checkInDayJson(base::Date day)
{
    return textOf(day.toString());
}

template <class Id>
QJsonValue idJson(const std::optional<Id>& id)
{
    return id ? QJsonValue(static_cast<qint64>(id->value())) : QJsonValue();
}

template <class Number>
QJsonValue numberJson(const std::optional<Number>& number)
{
    return number ? QJsonValue(*number) : QJsonValue();
}

QJsonValue textOrNull(const std::string& text)
{
    return text.empty() ? QJsonValue() : QJsonValue(QString::fromStdString(text));
}

QJsonValue nextJson(const std::optional<progression::Prescription>& next)
{
    return next ? QJsonValue(toJson(*next, {})) : QJsonValue();
}

QJsonObject findingJson(const checkin::Finding& finding)
{
    QJsonObject object;
    put(object, "kind", textOf(keyOf(finding.kind)));
    put(object, "lift", idJson(finding.lift));
    put(object, "flat_weeks", finding.flatWeeks);
    put(object, "plan_end", finding.planEnd ? QJsonValue(checkInDayJson(*finding.planEnd)) : QJsonValue());
    return object;
}

QJsonObject daysJson(const checkin::DayRange& days)
{
    return {{QLatin1String("from"), checkInDayJson(days.from)}, {QLatin1String("to"), checkInDayJson(days.to)}};
}

QJsonArray rangesJson(const std::vector<checkin::DayRange>& ranges)
{
    QJsonArray array;
    for (const checkin::DayRange& range : ranges) {
        array.append(daysJson(range));
    }
    return array;
}

QJsonArray estimatesJson(const LiftEvidence& lift)
{
    QJsonArray array;
    for (const checkin::EstimatePoint& point : lift.estimates) {
        array.append(QJsonObject{{QLatin1String("date"), checkInDayJson(point.date)},
                                 {QLatin1String("lowest"), point.lowest.kilograms()},
                                 {QLatin1String("median"), point.median.kilograms()},
                                 {QLatin1String("highest"), point.highest.kilograms()}});
    }
    return array;
}

QJsonArray weekVolumeJson(const LiftEvidence& lift)
{
    QJsonArray array;
    for (const checkin::WeekVolume& week : lift.volume) {
        array.append(QJsonObject{{QLatin1String("monday"), checkInDayJson(week.monday)}, {QLatin1String("volume"), week.volume}, {QLatin1String("sets"), week.sets}});
    }
    return array;
}

QJsonArray stagesJson(const LiftEvidence& lift)
{
    QJsonArray array;
    for (const checkin::StageStretch& stretch : lift.stages) {
        QJsonObject one = daysJson(stretch.days);
        put(one, "stage", textOf(progression::keyOf(stretch.stage)));
        put(one, "cycle", stretch.cycle);
        array.append(one);
    }
    return array;
}

QJsonArray painJson(const LiftEvidence& lift)
{
    QJsonArray array;
    for (const checkin::PainMark& mark : lift.pain) {
        array.append(QJsonObject{{QLatin1String("date"), checkInDayJson(mark.date)}, {QLatin1String("pain"), mark.pain}});
    }
    return array;
}

/// An event without its day: it is written on the day of the decision.
QJsonValue eventJson(const std::optional<progression::EventBody>& body, base::Date day, lifts::Measure measure)
{
    if (!body) {
        return {};
    }
    QJsonObject event = toJson(progression::Event{day, *body}, measure);
    event.remove(QLatin1String("date"));
    return event;
}

QJsonArray choicesJson(const LiftEvidence& lift, base::Date day)
{
    QJsonArray array;
    for (const checkin::Choice& choice : lift.choices) {
        QJsonObject one;
        put(one, "kind", textOf(keyOf(choice.kind)));
        put(one, "suggested", choice.isSuggested);
        put(one, "why", choice.isSuggested ? QJsonValue(textOf(keyOf(choice.why))) : QJsonValue());
        put(one, "exercise", textOrNull(choice.exerciseKey));
        put(one, "event", eventJson(choice.event, day, lift.measure));
        put(one, "next", nextJson(choice.next));
        put(one, "later", nextJson(choice.later));
        array.append(one);
    }
    return array;
}

QJsonObject verdictJson(const checkin::ClientEvidence& page, const LiftEvidence& lift, base::Date day)
{
    return toJson(JudgedCheck{{{page.name, std::string(lifts::keyOf(lift.pattern))}, {day, 0, 0}}, lift.judgement, lift.evidence}, false);
}

QJsonObject liftJson(const checkin::ClientEvidence& page, const LiftEvidence& lift, base::Date day)
{
    QJsonObject object;
    put(object, "id", static_cast<qint64>(lift.lift.value()));
    put(object, "pattern", textOf(lifts::keyOf(lift.pattern)));
    put(object, "exercise", QString::fromStdString(lift.exerciseKey));
    put(object, "unit", QLatin1String(lift.unit == base::MassUnit::Kilogram ? "kg" : "lb"));
    put(object, "stage", textOf(progression::keyOf(lift.stage)));
    put(object, "cycle", lift.cycle);
    put(object, "on_hold", lift.isOnHold);
    put(object, "next", nextJson(lift.next));
    put(object, "estimates", estimatesJson(lift));
    put(object, "volume", weekVolumeJson(lift));
    put(object, "stages", stagesJson(lift));
    put(object, "pain", painJson(lift));
    put(object, "lighter_weeks", rangesJson(lift.lighterWeeks));
    put(object, "layoffs", rangesJson(lift.layoffs));
    put(object, "flat", lift.flat ? QJsonValue(daysJson(*lift.flat)) : QJsonValue());
    put(object, "reserve", numberJson(lift.reserve));
    put(object, "weeks_per_step", numberJson(lift.weeksPerStep));
    put(object, "verdict", verdictJson(page, lift, day));
    put(object, "choices", choicesJson(lift, day));
    return object;
}

QJsonArray readinessJson(const checkin::ClientEvidence& page)
{
    QJsonArray array;
    for (const checkin::ReadinessPoint& point : page.readiness) {
        array.append(QJsonObject{{QLatin1String("date"), checkInDayJson(point.date)}, {QLatin1String("sleep"), numberJson(point.sleep)},
                                 {QLatin1String("soreness"), numberJson(point.soreness)}, {QLatin1String("stress"), numberJson(point.stress)}});
    }
    return array;
}

QJsonArray attendanceJson(const checkin::ClientEvidence& page)
{
    QJsonArray array;
    for (const checkin::AttendanceMark& mark : page.attendance) {
        array.append(QJsonObject{{QLatin1String("date"), checkInDayJson(mark.date)}, {QLatin1String("state"), textOf(sessions::keyOf(mark.state))}});
    }
    return array;
}

double unitsOf(base::Load load)
{
    constexpr double kCentis = 100;
    return load.centi() / kCentis;
}

QJsonObject paceJson(const checkin::ForecastPace& pace)
{
    return {{QLatin1String("exposures_per_week"), pace.exposuresPerWeek}, {QLatin1String("made_share"), pace.madeShare}, {QLatin1String("weekly_percent"), pace.weeklyPercent}};
}

QJsonObject pointJson(const checkin::ForecastPoint& point)
{
    return {{QLatin1String("stage"), textOf(progression::keyOf(point.stage))}, {QLatin1String("cycle"), point.cycle},
            {QLatin1String("load"), unitsOf(point.load)}, {QLatin1String("sets"), point.sets.value()},
            {QLatin1String("reps"), point.reps.value()}, {QLatin1String("rest_s"), point.rest.value()},
            {QLatin1String("single"), point.single.kilograms()}};
}

}  // namespace

QJsonObject toJson(const checkin::Decision& decision)
{
    QJsonObject object;
    put(object, "day", checkInDayJson(decision.day));
    put(object, "lift", idJson(decision.lift));
    put(object, "about", textOf(keyOf(decision.about)));
    put(object, "choice", textOf(keyOf(decision.choice)));
    put(object, "note", QString::fromStdString(decision.note));
    put(object, "next_review", checkInDayJson(decision.nextReview));
    return object;
}

QJsonObject toJson(const checkin::QueueEntry& entry)
{
    QJsonObject object;
    put(object, "id", static_cast<qint64>(entry.client.value()));
    put(object, "name", QString::fromStdString(entry.name));
    put(object, "finding", findingJson(entry.finding));
    put(object, "exercise", textOrNull(entry.exerciseKey));
    put(object, "came", entry.came);
    put(object, "of", entry.of);
    put(object, "decided", entry.decided ? QJsonValue(toJson(*entry.decided)) : QJsonValue());
    return object;
}

QJsonObject toJson(const checkin::ClientEvidence& page, base::Date day)
{
    QJsonObject object;
    put(object, "id", static_cast<qint64>(page.client.value()));
    put(object, "name", QString::fromStdString(page.name));
    put(object, "age", numberJson(page.age));
    put(object, "goal", QString::fromStdString(page.goal));
    put(object, "coach", QString::fromStdString(page.coachName));
    put(object, "from", checkInDayJson(page.days.from));
    put(object, "to", checkInDayJson(page.days.to));
    put(object, "finding", findingJson(page.finding));
    put(object, "next_review", checkInDayJson(page.nextReview));
    put(object, "attendance", attendanceJson(page));
    put(object, "readiness", readinessJson(page));
    QJsonArray history;
    for (const checkin::Decision& decision : page.history) {
        history.append(toJson(decision));
    }
    put(object, "history", history);
    QJsonArray lifts;
    for (const LiftEvidence& lift : page.lifts) {
        lifts.append(liftJson(page, lift, day));
    }
    put(object, "lifts", lifts);
    return object;
}

QJsonObject toJson(const checkin::Forecast& forecast)
{
    QJsonObject object;
    put(object, "single", forecast.single.kilograms());
    put(object, "paces", QJsonObject{{QLatin1String("slow"), paceJson(forecast.slow)}, {QLatin1String("expected"), paceJson(forecast.expected)},
                                     {QLatin1String("fast"), paceJson(forecast.fast)}});
    QJsonArray weeks;
    for (const checkin::ForecastWeek& week : forecast.weeks) {
        weeks.append(QJsonObject{{QLatin1String("monday"), checkInDayJson(week.monday)}, {QLatin1String("slow"), pointJson(week.slow)},
                                 {QLatin1String("expected"), pointJson(week.expected)}, {QLatin1String("fast"), pointJson(week.fast)}});
    }
    put(object, "weeks", weeks);
    return object;
}

QJsonObject toJson(const checkin::ForecastLack& lack)
{
    QJsonObject object;
    put(object, "why", textOf(keyOf(lack.why)));
    put(object, "missing", lack.missing);
    return object;
}

}  // namespace chalk::exchange
