#include "ui/common/forecast_words.h"

#include "ui/common/check_in_words.h"
#include "ui/common/formats.h"

#include <QCoreApplication>
#include <QStringList>

namespace chalk::ui::common {

namespace {

using checkin::NoForecast;

constexpr std::size_t kSaidWeeks = 4;  // every so many are said

QString forecastWords(const char* text)
{
    return QCoreApplication::translate("Forecast", text);
}

/// `Load build, 3 × 5 at 75 kg`.
QString pointText(const checkin::ForecastPoint& point, const checkin::LiftEvidence& lift, const lifts::Catalogue& catalogue)
{
    if (!progression::isLoaded(point.stage)) {
        return stageName(point.stage);
    }
    progression::Prescription next;
    next.repsLow = next.repsHigh = point.reps;
    const lifts::Exercise* exercise = catalogue.find(lift.exerciseKey);
    const bool isAddedToBody = exercise != nullptr && exercise->equipment == lifts::EquipmentKind::AddedToBody;
    return QStringLiteral("%1, %2 × %3, %4")
        .arg(stageName(point.stage))
        .arg(point.sets.value())
        .arg(targetText(next, lift.measure, progression::Policy::defaultsFor(lift.unit)), loadText(point.load, lift.unit, lift.pieces, isAddedToBody));
}

}  // namespace

QString forecastText(const checkin::Forecast& forecast, const checkin::LiftEvidence& lift, const lifts::Catalogue& catalogue)
{
    QStringList lines{forecastWords(QT_TRANSLATE_NOOP("Forecast", "A forecast from the last weeks, not a promise. It holds if training goes on as it has."))};
    for (std::size_t week = kSaidWeeks; week <= forecast.weeks.size(); week += kSaidWeeks) {
        const checkin::ForecastWeek& then = forecast.weeks[week - 1];
        const QString slow = pointText(then.slow, lift, catalogue);
        const QString fast = pointText(then.fast, lift, catalogue);
        const QString expected = pointText(then.expected, lift, catalogue);
        lines << (slow == fast ? forecastWords(QT_TRANSLATE_NOOP("Forecast", "In %1: %2.")).arg(weeksText(static_cast<int>(week)), expected)
                               : forecastWords(QT_TRANSLATE_NOOP("Forecast", "In %1: %2. Slow: %3. Fast: %4."))
                                     .arg(weeksText(static_cast<int>(week)), expected, slow, fast));
    }
    return lines.join(QLatin1Char('\n'));
}

QString forecastLackText(const checkin::ForecastLack& lack)
{
    switch (lack.why) {
    case NoForecast::OnHold:
        return forecastWords(QT_TRANSLATE_NOOP("Forecast", "No forecast while the lift is on hold."));
    case NoForecast::NotLoaded:
        return forecastWords(QT_TRANSLATE_NOOP("Forecast", "No forecast while the movement is learned."));
    case NoForecast::NoSingle:
        return forecastWords(QT_TRANSLATE_NOOP("Forecast", "No forecast without an estimated single."));
    case NoForecast::FewExposures:
        return lack.missing == 1 ? forecastWords(QT_TRANSLATE_NOOP("Forecast", "No forecast yet: 1 more session."))
                                 : forecastWords(QT_TRANSLATE_NOOP("Forecast", "No forecast yet: %1 more sessions.")).arg(lack.missing);
    case NoForecast::Away:
        return forecastWords(QT_TRANSLATE_NOOP("Forecast", "No forecast: the last session is more than two weeks ago."));
    }
    return {};
}

}  // namespace chalk::ui::common
