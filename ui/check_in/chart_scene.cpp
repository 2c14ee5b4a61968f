#include "ui/check_in/chart_scene.h"

#include "core/analysis/attendance.h"
#include "ui/common/check_in_words.h"
#include "ui/common/formats.h"
#include "ui/common/plateau_words.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>
#include <array>
#include <cmath>

namespace chalk::ui::check_in {

namespace {

using checkin::ClientEvidence;
using checkin::LiftEvidence;

constexpr int kSingleLines = 4;
constexpr int kVolumeLines = 2;
constexpr double kScaleLow = 1;   // of sleep and soreness
constexpr double kScaleHigh = 5;

QString chartText(const char* text)
{
    return QCoreApplication::translate("CheckInChart", text);
}

double valueOf(base::Mass mass, base::MassUnit unit)
{
    return static_cast<double>(mass.in(unit).centi()) / 100.0;
}

/// With one place behind the point at most.
QString roundedText(double value)
{
    return QString::number(std::round(value * 10) / 10, 'g', 6);
}

std::vector<ChartShade> shadesOf(const LiftEvidence& lift)
{
    std::vector<ChartShade> shades;
    for (const auto& days : lift.layoffs) {
        shades.push_back({ShadeKind::Layoff, days});
    }
    for (const auto& days : lift.lighterWeeks) {
        shades.push_back({ShadeKind::LighterWeek, days});
    }
    for (const checkin::PainMark& mark : lift.pain) {
        shades.push_back({ShadeKind::Pain, {mark.date, mark.date}});
    }
    return shades;
}

ChartScene sceneOf(const ClientEvidence& client, const LiftEvidence& lift, ChartStyle style, const QString& key, const char* title)
{
    ChartScene scene;
    scene.style = style;
    scene.key = key;
    scene.title = chartText(title);
    scene.days = client.days;
    scene.shades = shadesOf(lift);
    return scene;
}

void addFlat(ChartScene& scene, const LiftEvidence& lift)
{
    if (lift.flat) {
        scene.shades.insert(scene.shades.begin(), {ShadeKind::Flat, *lift.flat});
        const int weeks = (lift.flat->to - lift.flat->from) / 7;
        scene.flat = weeks > 0 ? chartText(QT_TRANSLATE_NOOP("CheckInChart", "%1 flat")).arg(common::weeksText(weeks)) : QString();
    }
}

QString lowered(const std::string& name)
{
    return common::qstring(name).toLower();
}

/// Why there is no line; the number of sessions that are missing where that is known.
QString missingSingle(const LiftEvidence& lift)
{
    if (lift.name.empty()) {
        return chartText(QT_TRANSLATE_NOOP("CheckInChart", "No lift yet."));
    }
    if (!progression::isLoaded(lift.stage)) {
        return chartText(QT_TRANSLATE_NOOP("CheckInChart", "No load yet at this stage: there is no single to estimate."));
    }
    if (lift.measure != lifts::Measure::Reps) {
        return chartText(QT_TRANSLATE_NOOP("CheckInChart", "Holds and carries have no estimated single."));
    }
    const QString shortage = common::shortageText(lift.evidence);
    return shortage.isEmpty() ? chartText(QT_TRANSLATE_NOOP("CheckInChart", "No set to estimate a single from in these weeks.")) : shortage + QLatin1Char('.');
}

QString sessionText(sessions::SessionState state)
{
    switch (state) {
    case sessions::SessionState::Recorded:
        return chartText(QT_TRANSLATE_NOOP("CheckInChart", "came"));
    case sessions::SessionState::Missed:
        return chartText(QT_TRANSLATE_NOOP("CheckInChart", "missed"));
    case sessions::SessionState::CancelledInTime:
        return chartText(QT_TRANSLATE_NOOP("CheckInChart", "called off in time"));
    case sessions::SessionState::CancelledLate:
        return chartText(QT_TRANSLATE_NOOP("CheckInChart", "called off late"));
    case sessions::SessionState::Planned:
    case sessions::SessionState::Printed:
        return chartText(QT_TRANSLATE_NOOP("CheckInChart", "not recorded"));
    case sessions::SessionState::Withdrawn:
        break;
    }
    return {};
}

/// 1 came, 0 did not, one half does not count.
double sessionValue(sessions::SessionState state)
{
    const auto isCame = analysis::wasComeTo(state);
    return !isCame ? 0.5 : *isCame ? 1 : 0;
}

QString effortText(const LiftEvidence& lift)
{
    QStringList said;
    if (const auto& missed = lift.evidence.missed) {
        said << chartText(QT_TRANSLATE_NOOP("CheckInChart", "%1: met %2 of the last %3 targets."))
                    .arg(common::qstring(lift.name))
                    .arg(missed->of - missed->misses)
                    .arg(missed->of);
    }
    if (lift.reserve) {
        const QString left = roundedText(*lift.reserve);
        said << (left == QLatin1String("1") ? chartText(QT_TRANSLATE_NOOP("CheckInChart", "About 1 rep in reserve after the first set."))
                                            : chartText(QT_TRANSLATE_NOOP("CheckInChart", "About %1 reps in reserve after the first set.")).arg(left));
    }
    return said.join(QLatin1Char(' '));
}

void addReadiness(ChartSeries& series, base::Date date, const std::optional<int>& value)
{
    if (value) {
        series.points.push_back({date, static_cast<double>(*value), {}, {},
                                 chartText(QT_TRANSLATE_NOOP("CheckInChart", "%1: %2 %3 of 5")).arg(common::dayText(date), series.name.toLower()).arg(*value)});
    }
}

/// Short enough for the edge of a chart: `H push`, `1-leg`.
QString rowName(lifts::Pattern pattern)
{
    QString name = common::patternName(pattern);
    name.replace(QLatin1String("Horizontal"), QLatin1String("H")).replace(QLatin1String("Vertical"), QLatin1String("V"));
    name.replace(QLatin1String("Single"), QLatin1String("1"));
    return pattern == lifts::Pattern::CarryBrace ? QStringLiteral("Carry") : name;
}

}  // namespace

ValueAxis valueAxisFor(double low, double high, int lines)
{
    if (high - low < 1e-6) {
        low -= 1;
        high += 1;
    }
    const double span = high - low;
    const double tens = std::pow(10, std::floor(std::log10(span / lines)));
    double step = 10 * tens;
    for (const double factor : std::array{1.0, 2.0, 2.5, 5.0}) {
        if (span / (factor * tens) <= lines) {
            step = factor * tens;
            break;
        }
    }
    ValueAxis axis{std::floor(low / step + 1e-9) * step, std::ceil(high / step - 1e-9) * step, step};
    if (axis.high <= axis.low) {
        axis.high = axis.low + step;
    }
    return axis;
}

ChartScene singleScene(const ClientEvidence& client, const LiftEvidence& lift)
{
    ChartScene scene = sceneOf(client, lift, ChartStyle::Band, QStringLiteral("estimated-single"), QT_TRANSLATE_NOOP("CheckInChart", "Estimated best single"));
    scene.unit = common::unitText(lift.unit);
    if (!lift.name.empty()) {
        scene.note = chartText(QT_TRANSLATE_NOOP("CheckInChart", "%1, %2, estimated, not tested, with likely range")).arg(lowered(lift.name), scene.unit);
    }
    addFlat(scene, lift);
    if (lift.estimates.empty()) {
        scene.missing = missingSingle(lift);
        return scene;
    }
    ChartSeries series{chartText(QT_TRANSLATE_NOOP("CheckInChart", "Estimated best single")), {}, false};
    double low = valueOf(lift.estimates.front().lowest, lift.unit);
    double high = low;
    for (const checkin::EstimatePoint& point : lift.estimates) {
        const double least = valueOf(point.lowest, lift.unit);
        const double most = valueOf(point.highest, lift.unit);
        const double median = valueOf(point.median, lift.unit);
        low = std::min(low, least);
        high = std::max(high, most);
        series.points.push_back({point.date, median, least, most,
                                 chartText(QT_TRANSLATE_NOOP("CheckInChart", "%1: %2 %5 estimated, likely %3 to %4 %5"))
                                     .arg(common::dayText(point.date), roundedText(median), roundedText(least), roundedText(most), scene.unit)});
    }
    const ChartPoint& end = series.points.back();
    scene.last = QStringLiteral("%1 %2").arg(std::lround(end.value)).arg(scene.unit);
    scene.lastRange = chartText(QT_TRANSLATE_NOOP("CheckInChart", "range %1–%2")).arg(std::lround(*end.low)).arg(std::lround(*end.high));
    scene.axis = valueAxisFor(low, high, kSingleLines);
    scene.series.push_back(std::move(series));
    return scene;
}

ChartScene volumeScene(const ClientEvidence& client, const LiftEvidence& lift)
{
    ChartScene scene = sceneOf(client, lift, ChartStyle::Bars, QStringLiteral("load-volume"), QT_TRANSLATE_NOOP("CheckInChart", "Load volume by week"));
    scene.unit = chartText(QT_TRANSLATE_NOOP("CheckInChart", "kg × reps"));
    scene.note = lift.name.empty() ? scene.unit : QStringLiteral("%1, %2").arg(scene.unit, lowered(lift.name));
    addFlat(scene, lift);
    ChartSeries series{scene.title, {}, false};
    double most = 0;
    for (const checkin::WeekVolume& week : lift.volume) {
        most = std::max(most, week.volume);
        series.points.push_back({week.monday, week.volume, {}, {},
                                 chartText(QT_TRANSLATE_NOOP("CheckInChart", "Week of %1: %2 kg × reps in %3 sets"))
                                     .arg(common::shortDayText(week.monday))
                                     .arg(std::lround(week.volume))
                                     .arg(week.sets)});
    }
    if (most <= 0) {
        scene.missing = chartText(QT_TRANSLATE_NOOP("CheckInChart", "No work with load in these weeks."));
        return scene;
    }
    scene.axis = valueAxisFor(0, most, kVolumeLines);
    scene.series.push_back(std::move(series));
    return scene;
}

ChartScene stagesScene(const ClientEvidence& client, const LiftEvidence& lift)
{
    ChartScene scene = sceneOf(client, lift, ChartStyle::Stages, QStringLiteral("stages"), QT_TRANSLATE_NOOP("CheckInChart", "Stages"));
    scene.note = common::weeksText((client.days.to - client.days.from + 1) / 7);
    for (const LiftEvidence& one : client.lifts) {
        ChartRow row{rowName(one.pattern), one.lift == lift.lift, one.stages};
        ChartSeries series{row.name, {}, false};
        for (const checkin::StageStretch& stretch : one.stages) {
            series.points.push_back({std::max(stretch.days.from, client.days.from), static_cast<double>(progression::numberOf(stretch.stage)), {}, {},
                                     chartText(QT_TRANSLATE_NOOP("CheckInChart", "%1: stage %2 %3, cycle %4, %5 to %6"))
                                         .arg(row.name)
                                         .arg(progression::numberOf(stretch.stage))
                                         .arg(common::stageName(stretch.stage))
                                         .arg(stretch.cycle)
                                         .arg(common::shortDayText(stretch.days.from), common::shortDayText(stretch.days.to))});
        }
        scene.series.push_back(std::move(series));
        scene.rows.push_back(std::move(row));
    }
    if (scene.rows.empty()) {
        scene.missing = chartText(QT_TRANSLATE_NOOP("CheckInChart", "No lift yet."));
    }
    return scene;
}

ChartScene readinessScene(const ClientEvidence& client, const LiftEvidence& lift)
{
    ChartScene scene = sceneOf(client, lift, ChartStyle::Lines, QStringLiteral("sleep-soreness"), QT_TRANSLATE_NOOP("CheckInChart", "Sleep and soreness"));
    scene.note = chartText(QT_TRANSLATE_NOOP("CheckInChart", "1 to 5"));
    ChartSeries sleep{chartText(QT_TRANSLATE_NOOP("CheckInChart", "Sleep")), {}, false};
    ChartSeries soreness{chartText(QT_TRANSLATE_NOOP("CheckInChart", "Soreness")), {}, true};
    for (const checkin::ReadinessPoint& point : client.readiness) {
        addReadiness(sleep, point.date, point.sleep);
        addReadiness(soreness, point.date, point.soreness);
    }
    scene.axis = {kScaleLow, kScaleHigh, 2};
    for (ChartSeries* series : {&sleep, &soreness}) {
        if (!series->points.empty()) {
            scene.series.push_back(std::move(*series));
        }
    }
    if (scene.series.empty()) {
        scene.missing = chartText(QT_TRANSLATE_NOOP("CheckInChart", "Nothing was asked of sleep or soreness in these weeks."));
    }
    return scene;
}

ChartScene sessionsScene(const ClientEvidence& client, const LiftEvidence& lift)
{
    ChartScene scene = sceneOf(client, lift, ChartStyle::Marks, QStringLiteral("sessions"), QT_TRANSLATE_NOOP("CheckInChart", "Sessions"));
    ChartSeries series{scene.title, {}, false};
    int came = 0;
    int counted = 0;
    for (const checkin::AttendanceMark& mark : client.attendance) {
        if (mark.date < client.days.from || mark.date > client.days.to) {
            continue;
        }
        if (const auto isCame = analysis::wasComeTo(mark.state)) {
            came += *isCame ? 1 : 0;
            ++counted;
        }
        series.points.push_back({mark.date, sessionValue(mark.state), {}, {},
                                 QStringLiteral("%1: %2").arg(common::dayText(mark.date), sessionText(mark.state))});
    }
    scene.note = chartText(QT_TRANSLATE_NOOP("CheckInChart", "%1 of %2 that count")).arg(came).arg(counted);
    scene.text = effortText(lift);
    if (series.points.empty()) {
        scene.note.clear();
        scene.missing = chartText(QT_TRANSLATE_NOOP("CheckInChart", "No session in these weeks."));
        return scene;
    }
    scene.series.push_back(std::move(series));
    return scene;
}

}  // namespace chalk::ui::check_in
