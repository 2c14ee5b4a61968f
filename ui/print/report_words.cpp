#include "ui/print/report_words.h"

#include "ui/common/formats.h"
#include "ui/common/plan_week_text.h"

#include <QCoreApplication>

#include <algorithm>

namespace chalk::ui::print {

namespace {

using checkin::ProgressReport;
using checkin::ReportLift;
using checkin::WorkDone;
using common::qstring;

constexpr std::size_t kMostFigures = 4;

QString reportText(const char* text)
{
    return QCoreApplication::translate("Report", text);
}

/// In the middle of a sentence.
QString inSentence(const std::string& name)
{
    QString text = qstring(name);
    text.replace(0, 1, text.left(1).toLower());
    return text;
}

QString amountOf(int amount, lifts::Measure measure)
{
    switch (measure) {
    case lifts::Measure::Reps:
        return QString::number(amount);
    case lifts::Measure::Seconds:
        return QStringLiteral("%1 s").arg(amount);
    case lifts::Measure::Metres:
        return QStringLiteral("%1 m").arg(amount);
    }
    return {};
}

QString setsText(const ReportLift& lift, const WorkDone& work)
{
    return QStringLiteral("%1 × %2").arg(work.sets).arg(amountOf(work.amount, lift.measure));
}

ReportFigure figureOf(const ReportLift& lift)
{
    const WorkDone& then = lift.work.front();
    const WorkDone& now = lift.work.back();
    ReportFigure figure{workLoadText(lift, now.load), {QStringLiteral("%1, %2").arg(inSentence(lift.name), setsText(lift, now))}};
    if (lift.work.size() > 1) {
        figure.below.append(reportText(QT_TRANSLATE_NOOP("Report", "was %1, %2")).arg(workLoadText(lift, then.load), setsText(lift, then)));
    }
    return figure;
}

/// The week of a plan that leads, behind a comma; empty where none does.
QString planText(const progression::Prescription& next)
{
    return next.block ? QStringLiteral(", ") + common::planWeekInSentence(*next.block) : QString();
}

QString nextText(const ReportLift& lift, const progression::Prescription& next)
{
    const QString name = qstring(lift.name);
    switch (next.kind) {
    case progression::PrescriptionKind::Rehearse:
        return reportText(QT_TRANSLATE_NOOP("Report", "%1: the movement first, without a load.")).arg(name);
    case progression::PrescriptionKind::Hold:
        return reportText(QT_TRANSLATE_NOOP("Report", "%1: rests until your coach has looked at it.")).arg(name);
    case progression::PrescriptionKind::Work:
        return QStringLiteral("%1: %2, %3 × %4%5.")
            .arg(name, workLoadText(lift, next.load), QString::number(next.sets.value()), amountOf(lift.nextAmount, lift.measure), planText(next));
    }
    return {};
}

}  // namespace

QString workLoadText(const ReportLift& lift, base::Load load)
{
    const bool isOnBody = lift.equipment == lifts::EquipmentKind::None || lift.equipment == lifts::EquipmentKind::AddedToBody;
    return common::loadText(load, lift.unit, lift.pieces, isOnBody);
}

QString reportSpan(const ProgressReport& report)
{
    QStringList parts{QStringLiteral("%1 – %2 %3").arg(common::shortDayText(report.from), common::shortDayText(report.to)).arg(static_cast<int>(report.to.ymd().year())),
                      reportText(QT_TRANSLATE_NOOP("Report", "%1 weeks")).arg(report.weeks.size())};
    if (!report.coachName.empty()) {
        parts.append(reportText(QT_TRANSLATE_NOOP("Report", "prepared by %1")).arg(qstring(report.coachName)));
    }
    return parts.join(QStringLiteral(" · "));
}

QString reportSentence(const ProgressReport& report)
{
    QStringList sentences;
    if (report.counted() > 0) {
        sentences.append(reportText(QT_TRANSLATE_NOOP("Report", "You came to %1 of %2 sessions.")).arg(report.came()).arg(report.counted()));
    }
    const auto order = report.byRise();
    if (!order.empty() && report.lifts[order.front()].riseMilli().value_or(0) > 0) {
        const ReportLift& best = report.lifts[order.front()];
        const QString rise = reportText(QT_TRANSLATE_NOOP("Report", "Your %1 went from %2 to %3"))
                                 .arg(inSentence(best.name), workLoadText(best, best.work.front().load), workLoadText(best, best.work.back().load));
        sentences.append(report.mostPain ? reportText(QT_TRANSLATE_NOOP("Report", "%1, with no pain above %2 of 10.")).arg(rise).arg(*report.mostPain)
                                         : rise + QLatin1Char('.'));
    }
    return sentences.isEmpty() ? reportText(QT_TRANSLATE_NOOP("Report", "Nothing is recorded for these weeks yet.")) : sentences.join(QLatin1Char(' '));
}

std::vector<ReportFigure> reportFigures(const ProgressReport& report)
{
    std::vector<std::size_t> order = report.byRise();
    for (std::size_t i = 0; i < report.lifts.size(); ++i) {
        if (!report.lifts[i].work.empty() && std::find(order.begin(), order.end(), i) == order.end()) {
            order.push_back(i);
        }
    }
    std::vector<ReportFigure> figures;
    for (const std::size_t lift : order) {
        if (figures.size() < kMostFigures) {
            figures.push_back(figureOf(report.lifts[lift]));
        }
    }
    return figures;
}

QStringList nextTexts(const ProgressReport& report)
{
    QStringList texts;
    for (const ReportLift& lift : report.lifts) {
        if (lift.next) {
            texts.append(nextText(lift, *lift.next));
        }
    }
    return texts;
}

QString riseText(const ReportLift& lift)
{
    return QStringLiteral("%1 → %2").arg(common::numberText(lift.work.front().load), workLoadText(lift, lift.work.back().load));
}

}  // namespace chalk::ui::print
