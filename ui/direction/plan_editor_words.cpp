#include "ui/direction/plan_editor_words.h"

#include "ui/common/direction_words.h"
#include "ui/common/formats.h"
#include "ui/decisions/number_entry.h"

#include <QCoreApplication>
#include <QLocale>
#include <QRegularExpression>

#include <algorithm>
#include <cmath>

namespace chalk::ui::direction {

namespace {

using chalk::direction::PlanDeparture;
using chalk::direction::PlannedWork;

constexpr int kOutside = -1;
constexpr int kMostTyped = 9999;
constexpr double kTenths = 10;

QString editorWords(const char* text)
{
    return QCoreApplication::translate("PlanEditor", text);
}

int wholeTyped(const QString& text)
{
    return decisions::wholeNumberOf(text, 0, kMostTyped).value_or(kOutside);
}

WorkEdit repsTyped(const QString& text)
{
    static const QRegularExpression range(QStringLiteral("^\\s*(\\d{1,4})\\s*[-\u2013]\\s*(\\d{1,4})\\s*$"));
    const QRegularExpressionMatch match = range.match(text);
    if (match.hasMatch()) {
        return {WorkField::Reps, match.captured(1).toInt(), match.captured(2).toInt()};
    }
    const int reps = wholeTyped(text);
    return {WorkField::Reps, reps, reps};
}

/// Per cent with one decimal at most, as thousandths.
int shareTyped(const QString& text)
{
    static const QRegularExpression share(QStringLiteral("^\\s*(\\d{1,3})(?:[.,](\\d))?\\s*%?\\s*$"));
    const QRegularExpressionMatch match = share.match(text);
    return match.hasMatch() ? match.captured(1).toInt() * 10 + match.captured(2).toInt() : kOutside;
}

/// Whether one of the list is the same departure a week later.
bool isNextOf(const PlanDeparture& last, const PlanDeparture& one)
{
    return one.week == last.week + 1 && one.lift == last.lift && one.exposure == last.exposure && one.departure == last.departure;
}

QString setsText(int halfSets)
{
    return QLocale::c().toString(halfSets / 2.0, 'f', halfSets % 2 == 0 ? 0 : 1);
}

}  // namespace

QString editFaultText(EditFault fault)
{
    switch (fault) {
    case EditFault::SetsRange: return editorWords("Sets are a whole number from 1 to 20.");
    case EditFault::RepsRange: return editorWords("Repetitions are a whole number from 1 to 100, or a range like 6–8.");
    case EditFault::RepsOrder: return editorWords("A range of repetitions goes from the smaller number to the larger one.");
    case EditFault::ShareRange: return editorWords("The share is above 0 and at most 100 per cent of the single.");
    case EditFault::RestRange: return editorWords("A rest is at most 30 minutes: 3:00, or seconds.");
    case EditFault::ReserveRange: return editorWords("Repetitions in reserve are a whole number from 0 to 10.");
    case EditFault::WeekIsOver: return editorWords("This week is over. What was planned for it stays.");
    case EditFault::NotThere: return editorWords("The plan has nothing there.");
    case EditFault::TestWeek: return editorWords("The test week stays. Whether there is one is a wish at the left.");
    }
    return {};
}

QString wishFaultText(const chalk::direction::WishFault& fault)
{
    if (fault.field == "start") {
        return editorWords("A plan starts on a Monday.");
    }
    if (fault.field == "lifts") {
        return editorWords("A plan has one lift at least.");
    }
    if (fault.field == "exposures") {
        return editorWords("A lift is done on one day of the week at least, and on no more days than there are sessions.");
    }
    return fault.field == "weeks" ? editorWords("A plan has 8 to 16 weeks.") : editorWords("A week has 1 to 7 sessions.");
}

QString originText(SingleOrigin origin)
{
    switch (origin) {
    case SingleOrigin::None: return editorWords("not known");
    case SingleOrigin::Estimated: return editorWords("estimated");
    case SingleOrigin::Tested: return editorWords("tested");
    case SingleOrigin::Typed: return editorWords("typed");
    }
    return {};
}

QString cellText(const PlannedWork& work, WorkField field)
{
    switch (field) {
    case WorkField::Sets: return QString::number(work.scheme.sets.value());
    case WorkField::Reps:
        return work.repsMost > work.scheme.reps ? QStringLiteral("%1–%2").arg(work.scheme.reps.value()).arg(work.repsMost.value())
                                                : QString::number(work.scheme.reps.value());
    case WorkField::Share: {
        const int share = work.scheme.share.value();
        return QLocale::c().toString(share / kTenths, 'f', share % 10 == 0 ? 0 : 1);
    }
    case WorkField::Rest: return common::restText(work.scheme.rest);
    case WorkField::Reserve: return QString::number(work.scheme.reserve);
    case WorkField::Pause:
    case WorkField::Test: return {};
    }
    return {};
}

WorkEdit typedEdit(WorkField field, const QString& text)
{
    switch (field) {
    case WorkField::Reps: return repsTyped(text);
    case WorkField::Share: return {field, shareTyped(text)};
    case WorkField::Rest: {
        const auto rest = decisions::restOf(text);
        return {field, rest ? rest->value() : kOutside};
    }
    case WorkField::Sets:
    case WorkField::Reserve:
    case WorkField::Pause:
    case WorkField::Test: break;
    }
    return {field, wholeTyped(text)};
}

QStringList departureLines(const PlanEditorModel& model)
{
    std::vector<PlanDeparture> left = model.departures();
    const auto order = [](const PlanDeparture& a, const PlanDeparture& b) {
        return std::tuple(a.lift, a.exposure, a.departure.figure, a.week) < std::tuple(b.lift, b.exposure, b.departure.figure, b.week);
    };
    std::sort(left.begin(), left.end(), order);
    QStringList lines;
    for (std::size_t i = 0; i < left.size();) {
        std::size_t last = i;
        while (last + 1 < left.size() && isNextOf(left[last], left[last + 1])) {
            ++last;
        }
        const QString weeks = last == i ? editorWords("week %1").arg(left[i].week + 1) : editorWords("weeks %1–%2").arg(left[i].week + 1).arg(left[last].week + 1);
        lines.append(editorWords("%1, %2, day %3: %4").arg(model.nameOf(left[i].lift), weeks).arg(left[i].exposure + 1).arg(common::departureText(left[i].departure)));
        i = last + 1;
    }
    return lines;
}

QStringList zoneLines(const PlanEditorModel& model, std::size_t week, std::size_t lift)
{
    QStringList lines;
    const auto& exposures = model.plan().plan.weeks[week].work[lift];
    for (std::size_t e = 0; e < exposures.size(); ++e) {
        if (exposures[e].isTest) {
            lines.append(editorWords("Day %1: the test.").arg(e + 1));
            continue;
        }
        for (const chalk::direction::ZoneTotal& total : totalsOf(exposures[e])) {
            QString line = editorWords("Day %1: %2").arg(e + 1).arg(common::zoneTotalText(total));
            if (total.zone && !total.isTotalInside) {
                line = editorWords("%1; total outside").arg(line);
            }
            if (total.zone && !total.areSetsInside) {
                line = editorWords("%1; a set is printed with %2–%3").arg(line).arg(total.zone->setLeast).arg(total.zone->setMost);
            }
            lines.append(line);
        }
    }
    return lines;
}

QStringList muscleLines(const PlanEditorModel& model, std::size_t week)
{
    std::vector<lifts::Pattern> patterns;
    for (std::size_t i = 0; i < model.wishes().lifts.size(); ++i) {
        const auto fact = model.factOf(i);
        patterns.push_back(fact ? model.facts().lifts[*fact].pattern : lifts::Pattern::CarryBrace);
    }
    QStringList lines;
    for (const auto& [group, halves] : muscleHalfSets(model.plan().plan.weeks[week], patterns)) {
        const QString line = editorWords("%1: %2 sets").arg(common::muscleGroupName(group), setsText(halves));
        lines.append(halves < 2 * chalk::direction::kManySets ? editorWords("%1, fewer than %2").arg(line).arg(chalk::direction::kManySets) : line);
    }
    return lines;
}

}  // namespace chalk::ui::direction
