#include "ui/onboarding/measure_words.h"

#include "ui/common/day_entry.h"
#include "ui/common/formats.h"

#include <QCoreApplication>
#include <QRegularExpression>
#include <QStringList>

#include <algorithm>
#include <cmath>

namespace chalk::ui::onboarding {

namespace {

QString measureText(const char* text)
{
    return QCoreApplication::translate("Measures", text);
}

QString bmiClassName(clients::BmiClass bmiClass)
{
    switch (bmiClass) {
    case clients::BmiClass::Under:
        return measureText(QT_TRANSLATE_NOOP("Measures", "underweight"));
    case clients::BmiClass::Normal:
        return measureText(QT_TRANSLATE_NOOP("Measures", "normal range"));
    case clients::BmiClass::Over:
        return measureText(QT_TRANSLATE_NOOP("Measures", "pre-obese"));
    case clients::BmiClass::ObeseOne:
        return measureText(QT_TRANSLATE_NOOP("Measures", "obese class I"));
    case clients::BmiClass::ObeseTwo:
        return measureText(QT_TRANSLATE_NOOP("Measures", "obese class II"));
    case clients::BmiClass::ObeseThree:
        return measureText(QT_TRANSLATE_NOOP("Measures", "obese class III"));
    }
    return {};
}

QString waistClassName(clients::WaistClass waistClass)
{
    switch (waistClass) {
    case clients::WaistClass::NotRaised:
        return measureText(QT_TRANSLATE_NOOP("Measures", "not raised"));
    case clients::WaistClass::Raised:
        return measureText(QT_TRANSLATE_NOOP("Measures", "raised"));
    case clients::WaistClass::High:
        return measureText(QT_TRANSLATE_NOOP("Measures", "high"));
    }
    return {};
}

QString noSexText()
{
    return measureText(QT_TRANSLATE_NOOP("Measures", "no class without a sex for norms"));
}

template <class Has>
const clients::BodyMeasures* newestWith(const std::vector<clients::BodyMeasures>& days, Has has)
{
    const auto found = std::find_if(days.rbegin(), days.rend(), has);
    return found == days.rend() ? nullptr : &*found;
}

QString massText(base::Mass mass, base::MassUnit unit)
{
    return common::loadText(mass.in(unit), unit);
}

void addBmi(std::vector<MeasureLine>& lines, const clients::BodyMeasures* mass, const clients::BodyMeasures* height)
{
    if (mass != nullptr && height != nullptr) {
        lines.push_back({measureText(QT_TRANSLATE_NOOP("Measures", "Body mass index")), QString::number(clients::bmiOf(*mass->mass, *height->height), 'f', 1),
                         bmiClassName(clients::bmiClassOf(*mass->mass, *height->height))});
    }
}

void addFat(std::vector<MeasureLine>& lines, const clients::BodyMeasures& day, const clients::Client& client, const clients::Profile& profile)
{
    MeasureLine line{measureText(QT_TRANSLATE_NOOP("Measures", "Body fat, 3 sites")), {}, {}};
    if (profile.sex == clients::NormSex::NotGiven) {
        line.note = measureText(QT_TRANSLATE_NOOP("Measures", "no figure without a sex for norms"));
    } else if (!client.birthDate) {
        line.note = measureText(QT_TRANSLATE_NOOP("Measures", "no figure without a birth date"));
    } else if (const auto density = clients::densityOf(*day.skinfolds, base::ageOn(*client.birthDate, day.date), profile.sex)) {
        line.value = QStringLiteral("%1 %").arg(clients::siriFatPercent(*density), 0, 'f', 1);
        line.note = measureText(QT_TRANSLATE_NOOP("Measures", "an estimate, about ± 4 points"));
    } else {
        line.note = measureText(QT_TRANSLATE_NOOP("Measures", "the formula was not made for this age"));
    }
    lines.push_back(line);
}

void addResting(std::vector<MeasureLine>& lines, const clients::BodyMeasures& day, const clients::RestingLimits& limits)
{
    const clients::RestingWarning warning = clients::warningFor({day.heartRate, day.systolic, day.diastolic}, limits);
    if (day.heartRate) {
        lines.push_back({measureText(QT_TRANSLATE_NOOP("Measures", "Resting heart rate")), measureText(QT_TRANSLATE_NOOP("Measures", "%1/min")).arg(*day.heartRate),
                         warning.isHeartRateHigh ? measureText(QT_TRANSLATE_NOOP("Measures", "above the limit of %1")).arg(limits.heartRate) : common::shortDayText(day.date),
                         warning.isHeartRateHigh});
    }
    if (day.systolic && day.diastolic) {
        const bool isHigh = warning.isSystolicHigh || warning.isDiastolicHigh;
        lines.push_back({measureText(QT_TRANSLATE_NOOP("Measures", "Blood pressure")), QStringLiteral("%1/%2").arg(*day.systolic).arg(*day.diastolic),
                         isHigh ? measureText(QT_TRANSLATE_NOOP("Measures", "above the limit of %1/%2")).arg(limits.systolic).arg(limits.diastolic)
                                : common::shortDayText(day.date),
                         isHigh});
    }
}

/// A number with one decimal at most, in tenths.
std::optional<int> tenthsOf(const QString& text)
{
    static const QRegularExpression number(QStringLiteral("^(\\d{1,4})(?:[.,](\\d))?$"));
    const auto match = number.match(text.trimmed());
    if (!match.hasMatch()) {
        return std::nullopt;
    }
    return match.captured(1).toInt() * 10 + match.captured(2).toInt();
}

MeasuresFault badField(const char* field)
{
    const QString key = QLatin1String(field);
    if (key == QLatin1String("date")) {
        return {key, measureText(QT_TRANSLATE_NOOP("Measures", "No such day, or it is still to come."))};
    }
    if (key == QLatin1String("mass")) {
        return {key, measureText(QT_TRANSLATE_NOOP("Measures", "A mass of 20 to 400 kg, like 82.4."))};
    }
    if (key == QLatin1String("height")) {
        return {key, measureText(QT_TRANSLATE_NOOP("Measures", "Centimetres, 50 to 260."))};
    }
    if (key == QLatin1String("waist")) {
        return {key, measureText(QT_TRANSLATE_NOOP("Measures", "Centimetres, 30 to 250."))};
    }
    if (key == QLatin1String("skinfolds")) {
        return {key, measureText(QT_TRANSLATE_NOOP("Measures", "Three folds in millimetres, 1 to 100, like 12 24.5 18."))};
    }
    if (key == QLatin1String("heart_rate")) {
        return {key, measureText(QT_TRANSLATE_NOOP("Measures", "Beats a minute, 20 to 250."))};
    }
    return {QStringLiteral("pressure"), measureText(QT_TRANSLATE_NOOP("Measures", "Both numbers, the larger first, like 128/82."))};
}

bool readFolds(const QString& text, clients::BodyMeasures& measures)
{
    const QStringList parts = text.split(QRegularExpression(QStringLiteral("[\\s/;]+")), Qt::SkipEmptyParts);
    std::vector<int> folds;
    for (const QString& part : parts) {
        folds.push_back(tenthsOf(part).value_or(0));
    }
    if (folds.size() != 3) {
        return false;
    }
    measures.skinfolds = clients::Skinfolds{folds[0], folds[1], folds[2]};
    return true;
}

bool readPressure(const QString& text, clients::BodyMeasures& measures)
{
    const auto pressure = pressureOf(text);
    if (pressure) {
        measures.systolic = pressure->systolic;
        measures.diastolic = pressure->diastolic;
    }
    return pressure.has_value();
}

}  // namespace

std::optional<clients::Millimetres> centimetresOf(const QString& text)
{
    const auto millimetres = tenthsOf(text);
    return millimetres ? std::optional(clients::Millimetres(*millimetres)) : std::nullopt;
}

QString centimetresText(clients::Millimetres length)
{
    return QStringLiteral("%1 cm").arg(common::numberText(base::Load::fromCenti(length.value() * 10)));
}

std::optional<TypedPressure> pressureOf(const QString& text)
{
    static const QRegularExpression kPair(QStringLiteral("^(\\d{2,3})\\s*(?:/|over|\\s)\\s*(\\d{2,3})$"));
    const auto match = kPair.match(text.trimmed());
    return match.hasMatch() ? std::optional(TypedPressure{match.captured(1).toInt(), match.captured(2).toInt()}) : std::nullopt;
}

std::vector<MeasureLine> measureLinesOf(const std::vector<clients::BodyMeasures>& days, const clients::Client& client, const clients::Profile& profile,
                                        const clients::RestingLimits& limits)
{
    std::vector<MeasureLine> lines;
    const auto* mass = newestWith(days, [](const clients::BodyMeasures& day) { return day.mass.has_value(); });
    const auto* height = newestWith(days, [](const clients::BodyMeasures& day) { return day.height.has_value(); });
    if (mass != nullptr) {
        lines.push_back({measureText(QT_TRANSLATE_NOOP("Measures", "Body mass")), massText(*mass->mass, client.unit), common::shortDayText(mass->date)});
    }
    if (height != nullptr) {
        lines.push_back({measureText(QT_TRANSLATE_NOOP("Measures", "Height")), centimetresText(*height->height), common::shortDayText(height->date)});
    }
    addBmi(lines, mass, height);
    if (const auto* waist = newestWith(days, [](const clients::BodyMeasures& day) { return day.waist.has_value(); })) {
        const auto waistClass = clients::waistClassOf(*waist->waist, profile.sex);
        lines.push_back({measureText(QT_TRANSLATE_NOOP("Measures", "Waist")), centimetresText(*waist->waist), waistClass ? waistClassName(*waistClass) : noSexText()});
    }
    if (const auto* folds = newestWith(days, [](const clients::BodyMeasures& day) { return day.skinfolds.has_value(); })) {
        addFat(lines, *folds, client, profile);
    }
    if (const auto* resting = newestWith(days, [](const clients::BodyMeasures& day) { return day.heartRate || day.systolic; })) {
        addResting(lines, *resting, limits);
    }
    return lines;
}

QString dayLineOf(const clients::BodyMeasures& day, base::MassUnit unit)
{
    QStringList parts;
    if (day.mass) {
        parts.append(massText(*day.mass, unit));
    }
    if (day.height) {
        parts.append(centimetresText(*day.height));
    }
    if (day.waist) {
        parts.append(measureText(QT_TRANSLATE_NOOP("Measures", "waist %1")).arg(centimetresText(*day.waist)));
    }
    if (day.skinfolds) {
        parts.append(measureText(QT_TRANSLATE_NOOP("Measures", "folds %1 mm")).arg(day.skinfolds->sumMillimetres()));
    }
    if (day.heartRate) {
        parts.append(measureText(QT_TRANSLATE_NOOP("Measures", "%1/min")).arg(*day.heartRate));
    }
    if (day.systolic && day.diastolic) {
        parts.append(QStringLiteral("%1/%2").arg(*day.systolic).arg(*day.diastolic));
    }
    return QStringLiteral("%1: %2").arg(common::entryOfDay(day.date), parts.join(QStringLiteral(", ")));
}

tl::expected<clients::BodyMeasures, MeasuresFault> measuresOf(const MeasuresTyped& typed, base::MassUnit unit, base::Date today)
{
    clients::BodyMeasures measures;
    const auto day = common::dayOfEntry(typed.day);
    if (!day) {
        return tl::make_unexpected(badField("date"));
    }
    measures.date = *day;
    if (!typed.mass.isEmpty()) {
        const auto mass = tenthsOf(typed.mass);
        if (!mass) {
            return tl::make_unexpected(badField("mass"));
        }
        measures.mass = base::Mass::of(base::Load::fromCenti(*mass * 10), unit);
    }
    if (!typed.height.isEmpty() && !(measures.height = centimetresOf(typed.height))) {
        return tl::make_unexpected(badField("height"));
    }
    if (!typed.waist.isEmpty() && !(measures.waist = centimetresOf(typed.waist))) {
        return tl::make_unexpected(badField("waist"));
    }
    if (!typed.folds.isEmpty() && !readFolds(typed.folds, measures)) {
        return tl::make_unexpected(badField("skinfolds"));
    }
    if (!typed.heartRate.isEmpty()) {
        bool isNumber = false;
        measures.heartRate = typed.heartRate.toInt(&isNumber);
        if (!isNumber) {
            return tl::make_unexpected(badField("heart_rate"));
        }
    }
    if (!typed.pressure.isEmpty() && !readPressure(typed.pressure, measures)) {
        return tl::make_unexpected(badField("pressure"));
    }
    if (const auto fault = clients::faultOf(measures, today)) {
        return tl::make_unexpected(badField(fault->field.c_str()));
    }
    return measures;
}

}  // namespace chalk::ui::onboarding
