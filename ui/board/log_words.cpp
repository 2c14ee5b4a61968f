#include "ui/board/log_words.h"

#include "ui/board/board_text.h"
#include "ui/board/board_words.h"
#include "ui/common/formats.h"

#include <QStringList>

#include <algorithm>

namespace chalk::ui::board {

namespace {

using lifts::Measure;
using progression::Exposure;
using progression::Rehearsal;
using progression::SetRecord;
using progression::Stage;
using progression::Steadiness;

QString unitOf(Measure measure)
{
    return measure == Measure::Reps ? QString() : measure == Measure::Seconds ? QStringLiteral(" s") : QStringLiteral(" m");
}

/// `3 × 7` where all are alike, else `8, 8, 7`.
QString amountsText(const std::vector<const SetRecord*>& sets, Measure measure)
{
    const bool isAlike =
        std::all_of(sets.begin(), sets.end(), [&sets](const SetRecord* set) { return set->amount == sets.front()->amount; });
    if (isAlike) {
        return QStringLiteral("%1 × %2%3").arg(sets.size()).arg(sets.front()->amount).arg(unitOf(measure));
    }
    QStringList amounts;
    for (const SetRecord* set : sets) {
        amounts.append(QString::number(set->amount));
    }
    return amounts.join(QLatin1String(", ")) + unitOf(measure);
}

/// `3 × 7 at 60`, `missed at 130`.
QString setsAtText(const std::vector<const SetRecord*>& sets, Measure measure)
{
    const QString load = common::numberText(sets.front()->load);
    if (std::any_of(sets.begin(), sets.end(), [](const SetRecord* set) { return set->amount != 0; })) {
        return BoardText::tr("%1 at %2").arg(amountsText(sets, measure), load);
    }
    return sets.size() == 1 ? BoardText::tr("missed at %1").arg(load) : BoardText::tr("%1 times missed at %2").arg(sets.size()).arg(load);
}

/// The working sets, load by load in the order done.
QString workText(const Exposure& exposure, Measure measure)
{
    QStringList parts;
    std::vector<const SetRecord*> alike;
    const auto close = [&parts, &alike, measure] {
        if (!alike.empty()) {
            parts.append(setsAtText(alike, measure));
            alike.clear();
        }
    };
    for (const SetRecord& set : exposure.sets) {
        if (set.isWarmup) {
            continue;
        }
        if (!alike.empty() && alike.front()->load != set.load) {
            close();
        }
        alike.push_back(&set);
    }
    close();
    return parts.isEmpty() ? BoardText::tr("no working set") : parts.join(QLatin1String(", "));
}

QString leftText(const Exposure& exposure)
{
    int least = SetRecord::kNotRecorded;
    for (const SetRecord& set : exposure.sets) {
        if (!set.isWarmup && set.rir != SetRecord::kNotRecorded && (least == SetRecord::kNotRecorded || set.rir < least)) {
            least = set.rir;
        }
    }
    return least == SetRecord::kNotRecorded ? QString() : BoardText::tr("%1 left").arg(least);
}

QString steadinessText(Steadiness steadiness, int pain)
{
    if (pain > 0) {
        return BoardText::tr("pain %1").arg(pain);
    }
    switch (steadiness) {
    case Steadiness::Steady:
        return BoardText::tr("steady");
    case Steadiness::Shaky:
        return BoardText::tr("shaky");
    case Steadiness::Lost:
        return BoardText::tr("lost");
    }
    return {};
}

Steadiness worstOf(const Exposure& exposure)
{
    Steadiness worst = Steadiness::Steady;
    for (const SetRecord& set : exposure.sets) {
        worst = set.isWarmup ? worst : std::max(worst, set.steadiness);
    }
    return worst;
}

/// Puts one body into a line whose date is known.
struct LineWriter {
    LogLine& line;
    Measure measure;
    const LiftCase& lift;

    void operator()(const Exposure& exposure) const
    {
        line.what = workText(exposure, measure);
        line.left = leftText(exposure);
        line.steadiness = steadinessText(worstOf(exposure), exposure.pain);
    }

    void operator()(const Rehearsal& rehearsal) const
    {
        const auto met = std::count_if(rehearsal.criteria.begin(), rehearsal.criteria.end(), [](const progression::Criterion& criterion) {
            return criterion.verdict == progression::Verdict::Met;
        });
        line.what = rehearsal.criteria.empty() ? BoardText::tr("rehearsed")
                                               : BoardText::tr("rehearsed, %1 of %2 met").arg(met).arg(rehearsal.criteria.size());
        line.steadiness = steadinessText(rehearsal.steadiness, rehearsal.pain);
    }

    void operator()(const progression::Release& release) const
    {
        line.what = BoardText::tr("released");
        line.note = common::qstring(release.note);
    }

    void operator()(const progression::CoachSet& set) const
    {
        line.what = set.load ? BoardText::tr("set to %1").arg(loadTextOf(lift, *set.load)) : BoardText::tr("set by the coach");
        if (set.stage) {
            line.what += BoardText::tr(", %1").arg(common::stageName(*set.stage));
        }
        line.note = common::qstring(set.reason);
    }

    void operator()(const progression::Swap& /*swap*/) const { line.what = BoardText::tr("swapped"); }

    void operator()(const progression::Block& block) const
    {
        line.what = block.weeks.empty() ? BoardText::tr("plan ended") : BoardText::tr("plan of %n weeks", nullptr, static_cast<int>(block.weeks.size()));
        line.note = common::qstring(block.note);
    }

    void operator()(const progression::LighterWeek& lighter) const
    {
        line.what = BoardText::tr("lighter week");
        line.note = common::qstring(lighter.note);
    }
};

bool isDone(const LogEntry& entry)
{
    return std::holds_alternative<Exposure>(entry.body) || std::holds_alternative<Rehearsal>(entry.body);
}

}  // namespace

LogLine logLineOf(const progression::EventBody& body, base::Date date, Measure measure, const LiftCase& lift)
{
    LogLine line;
    line.date = date;
    std::visit(LineWriter{line, measure, lift}, body);
    return line;
}

LogLine logLineOf(const LogEntry& entry, const LiftCase& lift)
{
    return logLineOf(entry.body, entry.date, entry.measure, lift);
}

std::vector<LogLine> lastLinesOf(const LiftCase& lift, std::size_t most)
{
    std::vector<LogLine> lines;
    for (auto entry = lift.log.rbegin(); entry != lift.log.rend() && lines.size() < most; ++entry) {
        if (isDone(*entry)) {
            lines.push_back(logLineOf(*entry, lift));
        }
    }
    return lines;
}

std::vector<LogLine> linesOfStage(const LiftCase& lift, Stage stage, std::size_t most)
{
    std::vector<LogLine> lines;
    for (std::size_t i = lift.log.size(); i-- > 0 && lines.size() < most;) {
        const Stage before = i > 0 ? lift.log[i - 1].after.stage : lift.machine.setup().startStage;
        if (before == stage) {
            lines.push_back(logLineOf(lift.log[i], lift));
        }
    }
    return lines;
}

}  // namespace chalk::ui::board
