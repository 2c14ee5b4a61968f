#include "ui/print/lift_words.h"

#include "ui/common/formats.h"
#include "ui/common/plan_week_text.h"

#include <QCoreApplication>

#include <algorithm>

namespace chalk::ui::print {

namespace {

using common::numberText;
using common::qstring;
using lifts::EquipmentKind;
using progression::Lever;
using progression::PrescriptionKind;
using sessions::CardLift;

constexpr double kLargePoints = 29;
constexpr double kUnitPoints = 12;
constexpr double kWordPoints = 16;
constexpr double kLastPoints = 8.5;

QString liftText(const char* text)
{
    return QCoreApplication::translate("Card", text);
}

Run large(QString text, bool isFramed, double gap)
{
    return {std::move(text), kLargePoints, QFont::Bold, true, isFramed, gap};
}

Run bold(QString text, double gap, bool isFramed = false)
{
    return {std::move(text), 9.5, QFont::Bold, false, isFramed, gap};
}

Run plain(QString text, double gap = 0)
{
    return {std::move(text), 9.5, QFont::Medium, false, false, gap};
}

constexpr double kSpace = 0.95;  ///< between the words of a line of 9.5 pt

QString measureUnit(lifts::Measure measure)
{
    switch (measure) {
    case lifts::Measure::Reps:
        return {};
    case lifts::Measure::Seconds:
        return QStringLiteral(" s");
    case lifts::Measure::Metres:
        return QStringLiteral(" m");
    }
    return {};
}

QString amountText(const CardLift& lift)
{
    const QString high = QString::number(lift.amountHigh) + measureUnit(lift.measure);
    return lift.amountLow == lift.amountHigh ? high : QString::number(lift.amountLow) + QChar(0x2013) + high;
}

bool isOnBody(EquipmentKind kind)
{
    return kind == EquipmentKind::None || kind == EquipmentKind::AddedToBody;
}

/// Whether this is the number that moves today. In a lighter week none does.
bool moves(const CardLift& lift, Lever lever)
{
    return lift.lever == lever && !lift.lighterUntil && !(lift.plan && lift.plan->isLighter);
}

void addLoad(Runs& runs, const CardLift& lift)
{
    const bool isFramed = moves(lift, Lever::Load) || moves(lift, Lever::FirstLoad);
    if (isOnBody(lift.equipment) && lift.load == base::Load()) {
        runs.push_back({liftText(QT_TRANSLATE_NOOP("Card", "bodyweight")), kWordPoints, QFont::DemiBold, false, isFramed, 0});
        return;
    }
    const bool isHelp = lift.load < base::Load();
    const QString sign = isOnBody(lift.equipment) && !isHelp ? QStringLiteral("+") : QString();
    const QString pair = lift.pieces == 2 ? QStringLiteral("2 × ") : QString();
    const base::Load shown = isHelp ? -1 * lift.load : lift.load;
    const QString unit = common::unitText(lift.unit);
    runs.push_back(large(pair + sign + numberText(shown), isFramed, 0));
    runs.push_back({isHelp ? liftText(QT_TRANSLATE_NOOP("Card", "%1 help")).arg(unit) : unit, kUnitPoints, QFont::Bold, false, false, isFramed ? 1.1 : 0.8});
}

Runs workLine(const CardLift& lift)
{
    Runs runs;
    addLoad(runs, lift);
    runs.push_back(large(QString::number(lift.sets), moves(lift, Lever::Sets), 2.8));
    runs.push_back({QStringLiteral("×"), kLargePoints, QFont::DemiBold, true, false, 1.8});
    runs.push_back(large(amountText(lift), moves(lift, Lever::Reps), 1.8));
    return runs;
}

Runs rehearsalLine(const CardLift& lift)
{
    Runs runs{{liftText(QT_TRANSLATE_NOOP("Card", "no load")), kWordPoints, QFont::DemiBold, false, false, 0}, large(amountText(lift), false, 2.8)};
    if (lift.measure == lifts::Measure::Reps) {
        runs.push_back({liftText(QT_TRANSLATE_NOOP("Card", "reps")), kUnitPoints, QFont::Bold, false, false, 0.8});
    }
    return runs;
}

/// How plates are written, from the longest form to the shortest.
enum class PlateForm : std::uint8_t { Spelled, Grouped, Tight };

QString platesText(const std::vector<base::Load>& plates, PlateForm form)
{
    QStringList parts;
    for (std::size_t i = 0; i < plates.size();) {
        const auto end = std::find_if(plates.begin() + static_cast<std::ptrdiff_t>(i), plates.end(), [&](base::Load plate) { return plate != plates[i]; });
        const auto count = static_cast<std::size_t>(end - plates.begin()) - i;
        const QString times = form == PlateForm::Tight ? QStringLiteral("%1×").arg(count) : QStringLiteral("%1 × ").arg(count);
        const bool isGrouped = form != PlateForm::Spelled && count > 1;
        for (std::size_t n = 0; n < (isGrouped ? 1 : count); ++n) {
            parts.append((isGrouped ? times : QString()) + numberText(plates[i]));
        }
        i += count;
    }
    return parts.join(form == PlateForm::Tight ? QStringLiteral("+") : QStringLiteral(" + "));
}

QString equipmentText(EquipmentKind kind)
{
    switch (kind) {
    case EquipmentKind::None:
    case EquipmentKind::AddedToBody:
        return {};
    case EquipmentKind::Barbell:
    case EquipmentKind::TrapBar:
        return liftText(QT_TRANSLATE_NOOP("Card", "bar"));
    case EquipmentKind::Dumbbell:
        return liftText(QT_TRANSLATE_NOOP("Card", "dumbbell"));
    case EquipmentKind::DumbbellPair:
        return liftText(QT_TRANSLATE_NOOP("Card", "dumbbells"));
    case EquipmentKind::Kettlebell:
        return liftText(QT_TRANSLATE_NOOP("Card", "kettlebell"));
    case EquipmentKind::KettlebellPair:
        return liftText(QT_TRANSLATE_NOOP("Card", "kettlebells"));
    case EquipmentKind::Bag:
        return liftText(QT_TRANSLATE_NOOP("Card", "bag"));
    case EquipmentKind::Stack:
        return liftText(QT_TRANSLATE_NOOP("Card", "stack"));
    }
    return {};
}

Runs restRuns(const CardLift& lift, bool saysReserve)
{
    Runs runs{plain(liftText(QT_TRANSLATE_NOOP("Card", "rest"))), bold(common::restText(lift.rest), kSpace, moves(lift, Lever::Rest))};
    if (saysReserve) {
        runs.push_back(plain(QStringLiteral("·"), kSpace));
        runs.push_back(bold(liftText(QT_TRANSLATE_NOOP("Card", "%1 left")).arg(lift.reserve), kSpace));
    }
    return runs;
}

Runs with(Runs runs, const QString& word, const QString& figure)
{
    runs.push_back(plain(QStringLiteral("·"), kSpace));
    if (!word.isEmpty()) {
        runs.push_back(plain(word, kSpace));
    }
    runs.push_back(bold(figure, kSpace));
    return runs;
}

QString eachSideText()
{
    return liftText(QT_TRANSLATE_NOOP("Card", "each side"));
}

std::vector<Runs> plateLines(const Runs& rest, const std::vector<base::Load>& plates)
{
    if (plates.empty()) {
        return {with(rest, {}, liftText(QT_TRANSLATE_NOOP("Card", "bar alone")))};
    }
    const QString side = liftText(QT_TRANSLATE_NOOP("Card", "side"));
    return {with(rest, eachSideText(), platesText(plates, PlateForm::Spelled)), with(rest, eachSideText(), platesText(plates, PlateForm::Grouped)),
            with(rest, side, platesText(plates, PlateForm::Grouped)), with(rest, side, platesText(plates, PlateForm::Tight))};
}

/// The shortest way to say the rest, a pause where one is asked for, and a lighter or a test week.
Runs compactRest(const CardLift& lift, bool saysReserve)
{
    Runs runs = restRuns(lift, saysReserve);
    if (lift.isPauseAsked) {
        runs.push_back(plain(QStringLiteral("·"), kSpace));
        runs.push_back(bold(liftText(QT_TRANSLATE_NOOP("Card", "pause")), kSpace));
    }
    if (lift.lighterUntil || (lift.plan && lift.plan->isLighter)) {
        runs.push_back(plain(QStringLiteral("·"), kSpace));
        runs.push_back(bold(liftText(QT_TRANSLATE_NOOP("Card", "lighter")), kSpace));
    }
    if (lift.plan && lift.plan->isTest) {
        runs.push_back(plain(QStringLiteral("·"), kSpace));
        runs.push_back(bold(liftText(QT_TRANSLATE_NOOP("Card", "test")), kSpace));
    }
    return runs;
}

QString secondsText(int milliseconds)
{
    return QString::number(milliseconds / 1000.0, 'g', 4) + QStringLiteral(" s");
}

std::vector<Runs> rehearsalDetails(const CardLift& lift)
{
    if (lift.stage == progression::Stage::Pattern) {
        return {{plain(liftText(QT_TRANSLATE_NOOP("Card", "every point met, no pain")))}};
    }
    const Runs hold{plain(liftText(QT_TRANSLATE_NOOP("Card", "hold"))), bold(secondsText(lift.pauseMs), kSpace, true)};
    Runs spelled = hold;
    spelled.push_back(plain(liftText(QT_TRANSLATE_NOOP("Card", "at top, middle and bottom")), kSpace));
    Runs brief = hold;
    brief.push_back(plain(liftText(QT_TRANSLATE_NOOP("Card", "top, middle, bottom")), kSpace));
    return {spelled, brief};
}

Run lastRun(QString text, QFont::Weight weight, double gap)
{
    return {std::move(text), kLastPoints, weight, false, false, gap};
}

/// All cues first; then without the last ones.
std::vector<Runs> cueLines(const CardLift& lift)
{
    QStringList cues;
    for (const std::string& cue : lift.cues) {
        cues.append(qstring(cue));
    }
    std::vector<Runs> lines;
    for (; !cues.isEmpty(); cues.removeLast()) {
        lines.push_back({lastRun(cues.join(QStringLiteral(" · ")), QFont::Medium, 0)});
    }
    return lines;
}

/// What to see to in a test, from the longest way to say it to the shortest.
std::vector<Runs> testLines()
{
    return {{lastRun(liftText(QT_TRANSLATE_NOOP("Card", "Test: guided on the floor; spotter or safeties set; any pain ends it")), QFont::Bold, 0)},
            {lastRun(liftText(QT_TRANSLATE_NOOP("Card", "Test: spotter or safeties set; any pain ends it")), QFont::Bold, 0)},
            {lastRun(liftText(QT_TRANSLATE_NOOP("Card", "Test: any pain ends it")), QFont::Bold, 0)}};
}

}  // namespace

QString shortStageText(const CardLift& lift)
{
    return lift.plan ? QStringLiteral("%1/%2").arg(lift.plan->week).arg(lift.plan->weeks) : QString::number(progression::numberOf(lift.stage));
}

QString stageText(const CardLift& lift)
{
    if (lift.plan) {
        return common::planWeekText(*lift.plan);
    }
    const QString stage = common::stageName(lift.stage);
    return lift.cycle > 1 ? liftText(QT_TRANSLATE_NOOP("Card", "%1, cycle %2")).arg(stage).arg(lift.cycle) : stage;
}

Runs largeLine(const CardLift& lift)
{
    switch (lift.kind) {
    case PrescriptionKind::Work:
        return workLine(lift);
    case PrescriptionKind::Rehearse:
        return rehearsalLine(lift);
    case PrescriptionKind::Hold:
        return {{liftText(QT_TRANSLATE_NOOP("Card", "On hold")), 20, QFont::Bold, true, false, 0}};
    }
    return {};
}

std::vector<Runs> detailLines(const CardLift& lift, bool saysReserve)
{
    if (lift.kind == PrescriptionKind::Hold) {
        return {{plain(liftText(QT_TRANSLATE_NOOP("Card", "no work until the coach releases it")))},
                {plain(liftText(QT_TRANSLATE_NOOP("Card", "no work until released")))}};
    }
    if (lift.kind == PrescriptionKind::Rehearse) {
        return rehearsalDetails(lift);
    }
    const Runs rest = restRuns(lift, saysReserve);
    if (lift.isOnBar) {
        return plateLines(rest, lift.platesPerSide);
    }
    const QString equipment = equipmentText(lift.equipment);
    return {equipment.isEmpty() ? rest : with(rest, {}, equipment)};
}

std::vector<Runs> compactDetails(const CardLift& lift, bool saysReserve)
{
    if (lift.kind != PrescriptionKind::Work) {
        return detailLines(lift, saysReserve);
    }
    const Runs rest = compactRest(lift, saysReserve);
    std::vector<Runs> ways;
    if (lift.isOnBar) {
        ways = plateLines(rest, lift.platesPerSide);
        if (!lift.platesPerSide.empty()) {
            ways.push_back(with(rest, {}, platesText(lift.platesPerSide, PlateForm::Tight)));
        }
    } else if (const QString equipment = equipmentText(lift.equipment); !equipment.isEmpty()) {
        ways = {with(rest, {}, equipment)};
    }
    ways.push_back(rest);
    return ways;
}

Runs restLine(const CardLift& lift, bool saysReserve)
{
    return compactRest(lift, saysReserve);
}

std::vector<Runs> platesLines(const CardLift& lift)
{
    return {{plain(eachSideText()), bold(platesText(lift.platesPerSide, PlateForm::Grouped), kSpace)},
            {plain(eachSideText()), bold(platesText(lift.platesPerSide, PlateForm::Tight), kSpace)}};
}

std::vector<Runs> warmUpLines(const CardLift& lift)
{
    QStringList sets;
    for (const sessions::CardWarmUp& set : lift.warmUp) {
        const bool isBody = isOnBody(lift.equipment) && set.load == base::Load();
        const QString load = isBody ? liftText(QT_TRANSLATE_NOOP("Card", "bodyweight")) : numberText(set.load);
        sets.append(QStringLiteral("%1 × %2%3").arg(load).arg(set.amount).arg(measureUnit(lift.measure)));
    }
    std::vector<Runs> lines;
    for (; !sets.isEmpty(); sets.removeFirst()) {
        lines.push_back({lastRun(liftText(QT_TRANSLATE_NOOP("Card", "warm up")), QFont::Medium, 0),
                         lastRun(sets.join(QStringLiteral(", ")), QFont::Medium, 0.9)});
    }
    return lines;
}

std::vector<Runs> lastLines(const CardLift& lift)
{
    if (lift.lighterUntil) {
        const QString lighter = common::lighterWeekText(*lift.lighterUntil);
        const QString both = liftText(QT_TRANSLATE_NOOP("Card", "%1. Pause at the bottom")).arg(lighter);
        return {{lastRun(lift.isPauseAsked ? both : lighter, QFont::Bold, 0)}};
    }
    if (lift.plan && lift.plan->isTest) {
        return testLines();
    }
    if (lift.isPauseAsked) {
        return {{lastRun(liftText(QT_TRANSLATE_NOOP("Card", "Pause at the bottom of each rep")), QFont::Bold, 0)}};
    }
    if (!lift.warmUp.empty()) {
        return warmUpLines(lift);
    }
    return lift.kind == PrescriptionKind::Rehearse ? cueLines(lift) : std::vector<Runs>();
}

}  // namespace chalk::ui::print
