#include "ui/trends/trend_words.h"

#include "core/checkin/trend_figures.h"
#include "ui/common/formats.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace chalk::ui::trends {

namespace {

using checkin::LiftTrend;
using common::qstring;

QString words(const char* text)
{
    return QCoreApplication::translate("Trends", text);
}

/// The lift that reached Base load first.
const LiftTrend* firstLoaded(const checkin::Trends& trends)
{
    const LiftTrend* first = nullptr;
    for (const LiftTrend& lift : trends.lifts) {
        if (lift.loadedSince && (first == nullptr || *lift.loadedSince < *first->loadedSince)) {
            first = &lift;
        }
    }
    return first;
}

QString whyNoMonotony(checkin::NoMonotony why)
{
    switch (why) {
    case checkin::NoMonotony::NotOver:
        return words("the week is not over");
    case checkin::NoMonotony::NoSession:
        return words("no session took place");
    case checkin::NoMonotony::Unrated:
        return words("effort and minutes are not noted for every session");
    case checkin::NoMonotony::AllTheSame:
        return words("every day had the same load, so monotony has no end");
    }
    return {};
}

/// The last week that is over; nothing where none is.
const checkin::TrendWeek* lastFinished(const checkin::Trends& trends)
{
    const auto last = std::find_if(trends.weeks.rbegin(), trends.weeks.rend(), [](const checkin::TrendWeek& week) { return week.isOver; });
    return last == trends.weeks.rend() ? nullptr : &*last;
}

QString weekName(base::Date monday)
{
    return words("week %1").arg(monday.isoWeek().week);
}

}  // namespace

QString wholeText(double number)
{
    QString text = QString::number(std::llround(std::abs(number)));
    for (qsizetype at = text.size() - 3; at > 0; at -= 3) {
        text.insert(at, QChar(0x202F));
    }
    return std::llround(number) < 0 ? QChar(0x2212) + text : text;
}

QString rangeText(const checkin::DayRange& days)
{
    const int year = static_cast<int>(days.to.ymd().year());
    return QStringLiteral("%1 %2 %3 %4").arg(common::shortDayText(days.from), QChar(0x2013), common::shortDayText(days.to)).arg(year);
}

QString shortPatternName(lifts::Pattern pattern)
{
    switch (pattern) {
    case lifts::Pattern::Squat:
        return words("Squat");
    case lifts::Pattern::Hinge:
        return words("Hinge");
    case lifts::Pattern::HorizontalPush:
        return words("H push");
    case lifts::Pattern::HorizontalPull:
        return words("H pull");
    case lifts::Pattern::VerticalPush:
        return words("V push");
    case lifts::Pattern::VerticalPull:
        return words("V pull");
    case lifts::Pattern::SingleLeg:
        return words("1-leg");
    case lifts::Pattern::CarryBrace:
        return words("Carry");
    }
    return {};
}

GapWords volumeGapWords(const checkin::Trends& trends)
{
    const bool hasOne = trends.volumeGap && trends.volumeGap->have == 1;
    QString text = words("Bars appear when loaded sets are recorded in two weeks.");
    const LiftTrend* first = firstLoaded(trends);
    if (first != nullptr) {
        text += QStringLiteral(" ") + words("%1 reached Base load on %2.").arg(qstring(first->name), common::shortDayText(*first->loadedSince));
    } else {
        text += QStringLiteral(" ") + words("The first load comes with stage 3, Base load.");
    }
    return {hasOne ? words("One week so far") : words("No load in these weeks"), text};
}

GapWords studioVolumeGapWords()
{
    return {words("No load in these weeks"), words("Bars appear when anybody's loaded sets are recorded in two weeks.")};
}

GapWords singlesGapWords(const checkin::Trends& trends)
{
    const checkin::FigureGap gap = trends.singlesGap.value_or(checkin::FigureGap{0, checkin::kSinglesOfALine});
    const QString text = words("A line needs three loaded sessions of a lift in these weeks, with 1 to 12 reps to failure in a set.");
    if (!gap.lift || gap.have == 0) {
        return {words("No estimate yet"), text};
    }
    const int missing = gap.need - gap.have;
    const QString name = qstring(trends.lifts[*gap.lift].name);
    return {missing == 1 ? words("1 more session of %1").arg(name) : words("%1 more sessions of %2").arg(missing).arg(name), text};
}

GapWords targetsGapWords(const checkin::Trends& /*trends*/)
{
    return {words("Starts at Load build"), words("Reps and rest are held still until then.")};
}

GapWords monotonyGapWords(const checkin::Trends& trends)
{
    const checkin::FigureGap gap = trends.monotonyGap.value_or(checkin::FigureGap{0, checkin::kWeeksOfMonotony});
    const int missing = gap.need - gap.have;
    const QString headline = missing == 1 ? words("Needs 1 more full week") : words("Needs %1 more full weeks").arg(missing);
    QString text = words("Every session of a week needs its effort and minutes.");
    if (gap.firstOn) {
        text += QStringLiteral(" ") + words("If they are noted from now on, the line starts on %1.").arg(common::longDayText(*gap.firstOn));
    }
    return {headline, text};
}

QString monotonyNote(const checkin::Trends& trends)
{
    const checkin::TrendWeek* last = lastFinished(trends);
    if (last == nullptr) {
        return {};
    }
    if (last->load.why) {
        return words("Nothing for %1: %2.").arg(weekName(last->monday), whyNoMonotony(*last->load.why));
    }
    const QString number = QString::number(*last->load.monotony, 'f', 1);
    if (*last->load.monotony >= checkin::kTooMuchAlike) {
        return words("%1 in %2. If this week is planned alike, make one day lighter. The band from 2 is common practice after Foster 1998.")
            .arg(number, weekName(last->monday));
    }
    return words("%1 in %2, strain %3. The band from 2 is common practice after Foster 1998.").arg(number, weekName(last->monday), wholeText(*last->load.strain));
}

QString ratioNote(const checkin::Trends& trends)
{
    if (!trends.ratio) {
        return trends.ratio.error() == checkin::NoRatio::TooEarly
                   ? words("Acute to chronic load: needs four finished weeks, with a session in the first of them.")
                   : words("Acute to chronic load: needs effort and minutes of every session of the last four weeks.");
    }
    return words("Acute to chronic load %1 (week over the three before it; %2 over all four). Its critics advise to dismiss it: the second contains its own "
                 "numerator (Lolli 2017), and it told no more of injury than chance denominators did (Impellizzeri 2020). It forecasts nothing.")
        .arg(QString::number(trends.ratio->uncoupled, 'f', 2), QString::number(trends.ratio->coupled, 'f', 2));
}

QString carriesNote(const checkin::Trends& trends)
{
    const auto carry = std::find_if(trends.lifts.begin(), trends.lifts.end(), [](const LiftTrend& lift) { return lift.measure == lifts::Measure::Metres; });
    return carry == trends.lifts.end() ? QString() : words("Carries: %1 m count as one rep.").arg(carry->metresPerRep.value());
}

QString totalNote(const std::vector<checkin::TrendWeek>& weeks, std::size_t week, base::MassUnit unit)
{
    const double total = checkin::massIn(weeks[week].together().volume, unit);
    const double before = week == 0 ? 0 : checkin::massIn(weeks[week - 1].together().volume, unit);
    const QString text = words("Total %1").arg(wholeText(total));
    if (!weeks[week].isOver) {
        return text + words("; the week is not over.");
    }
    if (before <= 0) {
        return text + QStringLiteral(".");
    }
    const auto percent = static_cast<int>(std::lround((total / before - 1) * 100));
    const QString than = weekName(weeks[week - 1].monday);
    return text + (percent == 0  ? words(", as in %1.").arg(than)
                   : percent > 0 ? words(", up %1 % on %2.").arg(percent).arg(than)
                                 : words(", down %1 % on %2.").arg(-percent).arg(than));
}

QString attendanceText(const analysis::Attendance& attendance)
{
    const auto share = attendance.share();
    return share ? words("%1 % (%2 of %3)").arg(std::lround(*share * 100)).arg(attendance.came).arg(attendance.counted()) : words("none counted");
}

QString changeText(const checkin::LoadTrend& trend)
{
    switch (trend.kind) {
    case checkin::LoadTrend::Kind::None:
        return QChar(0x2013);
    case checkin::LoadTrend::Kind::New:
        return words("new");
    case checkin::LoadTrend::Kind::Back:
        return words("back");
    case checkin::LoadTrend::Kind::Change:
        return (trend.percent < 0 ? QString(QChar(0x2212)) : trend.percent > 0 ? QStringLiteral("+") : QString()) +
               QStringLiteral("%1 %").arg(std::abs(trend.percent));
    }
    return {};
}

QString targetText(const checkin::TargetStep& step)
{
    const QString reps = step.repsLow == step.repsHigh ? QString::number(step.repsLow.value())
                                                       : QStringLiteral("%1%2%3").arg(step.repsLow.value()).arg(QChar(0x2013)).arg(step.repsHigh.value());
    return QStringLiteral("%1 %2 %3").arg(step.sets.value()).arg(QChar(0x00D7)).arg(reps);
}

QString repsCourse(const checkin::LiftTrend& lift)
{
    const int first = lift.targets.front().repsLow.value();
    const int last = lift.targets.back().repsLow.value();
    return first == last ? QString::number(last) : QStringLiteral("%1%2%3").arg(first).arg(QChar(0x2192)).arg(last);
}

}  // namespace chalk::ui::trends
