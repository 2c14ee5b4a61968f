#include "ui/board/evidence_words.h"

#include "ui/board/board_text.h"
#include "ui/board/board_words.h"
#include "ui/common/formats.h"

namespace chalk::ui::board {

namespace {

using progression::Check;
using progression::CheckKind;
using progression::EvidenceTarget;
using progression::Shortfall;
using progression::Stage;

QString dateText(const Check& check)
{
    return check.date ? common::shortDayText(*check.date) : BoardText::tr("not yet");
}

QString inARow(const Check& check)
{
    return check.count == 1 ? dateText(check) : BoardText::tr("%1 sessions").arg(check.count);
}

QString pauseFact(const Check& check)
{
    if (check.value < 0) {
        return check.date ? BoardText::tr("not tried") : BoardText::tr("not yet");
    }
    return BoardText::tr("%1 s").arg(check.value / 1000.0, 0, 'g', 3);
}

QString pauseText(const Check& check, const QString& place)
{
    return BoardText::tr("%1 s pause at %2").arg(check.needed / 1000.0, 0, 'g', 3).arg(place);
}

QString verdictText(const Check& check)
{
    switch (static_cast<progression::Verdict>(check.value)) {
    case progression::Verdict::Met:
        return BoardText::tr("met");
    case progression::Verdict::Partly:
        return BoardText::tr("partly met");
    case progression::Verdict::NotMet:
        return BoardText::tr("not met");
    }
    return {};
}

QString setsAndReps(const LiftCase& lift, const EvidenceTarget& target)
{
    return QStringLiteral("%1 × %2").arg(target.sets.value()).arg(amountTextOf(lift, target.repsLow));
}

QString loadBuildTarget(const LiftCase& lift, const EvidenceTarget& target)
{
    const QString load = loadTextOf(lift, target.load);
    if (target.isOpenAbove) {
        return BoardText::tr("%1 or more at %2, all steady").arg(setsAndReps(lift, target), load);
    }
    return BoardText::tr("%1 is hard at %2 to %3")
        .arg(load, QString::number(amountFor(target.repsLow, lift.machine.kit().measure, lift.machine.setup().policy)),
             amountTextOf(lift, target.repsHigh));
}

QString targetTextOf(const LiftCase& lift)
{
    const EvidenceTarget& target = *lift.evidence.target;
    switch (lift.evidence.stage) {
    case Stage::Pattern:
        return BoardText::tr("Every point met, without pain");
    case Stage::Control:
        return BoardText::tr("%1 reps with every pause, steady").arg(target.repsLow.value());
    case Stage::BaseLoad:
        return target.capacityMax
                   ? BoardText::tr("%1 is good for %2 to %3")
                         .arg(loadTextOf(lift, target.load),
                              QString::number(amountFor(*target.capacityMin, lift.machine.kit().measure, lift.machine.setup().policy)),
                              amountTextOf(lift, *target.capacityMax))
                   : BoardText::tr("%1 is good for %2 or more").arg(loadTextOf(lift, target.load), amountTextOf(lift, *target.capacityMin));
    case Stage::LoadBuild:
        return loadBuildTarget(lift, target);
    case Stage::RepBuild:
    case Stage::SetBuild:
        return BoardText::tr("%1 at %2, all steady").arg(setsAndReps(lift, target), loadTextOf(lift, target.load));
    case Stage::RestCut:
        return BoardText::tr("%1 with %2 rest, all steady").arg(setsAndReps(lift, target), common::restText(*target.rest));
    }
    return {};
}

QString targetFact(const LiftCase& lift, const Check& check)
{
    if (lift.evidence.stage == Stage::RepBuild && lift.evidence.progress.done > 0) {
        return BoardText::tr("best %1").arg(amountTextOf(lift, base::Reps(lift.evidence.progress.done)));
    }
    if (check.value < 0 || !check.date) {
        return BoardText::tr("not yet");
    }
    return BoardText::tr("last %1").arg(amountTextOf(lift, base::Reps(check.value)));
}

EvidenceLine lineOf(const LiftCase& lift, const Check& check)
{
    const auto line = [&check](const QString& text, const QString& fact) { return EvidenceLine{check.isMet, text, fact, false}; };
    switch (check.kind) {
    case CheckKind::Released:
        return line(BoardText::tr("The coach releases the lift"),
                    check.date ? BoardText::tr("pain %1, %2").arg(check.value).arg(dateText(check)) : QString());
    case CheckKind::Rescreened:
        return line(BoardText::tr("Screened again after the break"), BoardText::tr("not yet"));
    case CheckKind::LighterOption:
        return line(BoardText::tr("A lighter option is found"), BoardText::tr("not yet"));
    case CheckKind::Criterion:
        return line(criterionText(check.key), verdictText(check));
    case CheckKind::PauseTop:
        return line(pauseText(check, BoardText::tr("the top")), pauseFact(check));
    case CheckKind::PauseMiddle:
        return line(pauseText(check, BoardText::tr("the middle")), pauseFact(check));
    case CheckKind::PauseBottom:
        return line(pauseText(check, BoardText::tr("the bottom")), pauseFact(check));
    case CheckKind::ControlReps:
        return line(BoardText::tr("%1 reps in a row").arg(check.needed), QString::number(check.value));
    case CheckKind::PainFree:
        return line(BoardText::tr("No pain"),
                    check.isMet ? inARow(check) : BoardText::tr("pain %1, %2").arg(check.value).arg(dateText(check)));
    case CheckKind::Steady:
        return line(BoardText::tr("Every set steady"), check.isMet ? inARow(check) : BoardText::tr("not on %1").arg(dateText(check)));
    case CheckKind::RirRecorded:
        return line(BoardText::tr("Reps left are noted"), dateText(check));
    case CheckKind::FullSets:
        return line(BoardText::tr("%1 sets of %2 or more").arg(check.needed).arg(amountTextOf(lift, lift.machine.setup().policy.repFloor)),
                    check.date ? BoardText::tr("%1 done").arg(check.value) : BoardText::tr("not yet"));
    case CheckKind::ReserveKept:
        return line(BoardText::tr("%1 in reserve on every set").arg(check.needed),
                    check.isMet || check.value < 0 ? dateText(check) : BoardText::tr("%1 left").arg(check.value));
    case CheckKind::BridgeCrossed:
        return line(BoardText::tr("%1 here, then %2").arg(amountTextOf(lift, base::Reps(check.needed)), loadTextOf(lift, check.load)),
                    BoardText::tr("%1 so far").arg(amountTextOf(lift, base::Reps(check.value))));
    case CheckKind::SetsReached:
        return line(BoardText::tr("Up to %1 sets").arg(check.needed), check.isMet ? QString() : BoardText::tr("now %1").arg(check.value));
    case CheckKind::RestReached:
        return line(BoardText::tr("Rest down to %1").arg(common::restText(base::Seconds(check.needed))),
                    check.isMet ? QString() : BoardText::tr("now %1").arg(common::restText(base::Seconds(check.value))));
    case CheckKind::Target: {
        EvidenceLine target = line(targetTextOf(lift), targetFact(lift, check));
        target.isTarget = true;
        return target;
    }
    }
    return {};
}

QString endText(const LiftCase& lift, const Shortfall& shortfall)
{
    switch (shortfall.end) {
    case Shortfall::End::SettleLoad:
        return BoardText::tr("reps build at %1").arg(loadTextOf(lift, shortfall.load));
    case Shortfall::End::CutLoad:
        return BoardText::tr("the load steps back");
    case Shortfall::End::MoveOnWithReps:
        return BoardText::tr("sets build with %1").arg(amountTextOf(lift, shortfall.reps));
    case Shortfall::End::MoveOnWithSets:
        return BoardText::tr("rests get shorter with %1 sets").arg(shortfall.sets.value());
    case Shortfall::End::RestFound:
        return BoardText::tr("it goes round again, heavier");
    }
    return {};
}

}  // namespace

QString criterionText(const std::string& key)
{
    QString text = common::qstring(key).replace(QLatin1Char('_'), QLatin1Char(' '));
    if (!text.isEmpty()) {
        text[0] = text[0].toUpper();
    }
    return text;
}

QString evidenceTitleOf(const LiftCase& lift)
{
    if (lift.next.kind == progression::PrescriptionKind::Hold) {
        return BoardText::tr("Before it goes on");
    }
    if (lift.evidence.isPlanLed) {
        return BoardText::tr("The plan leads");
    }
    if (!lift.evidence.next) {
        return BoardText::tr("Asked for");
    }
    if (lift.evidence.stage == Stage::RestCut) {
        return BoardText::tr("Before the next cycle");
    }
    return BoardText::tr("Before %1").arg(common::stageName(*lift.evidence.next));
}

std::vector<EvidenceLine> evidenceLinesOf(const LiftCase& lift)
{
    std::vector<EvidenceLine> lines;
    for (const Check& check : lift.evidence.checks) {
        lines.push_back(lineOf(lift, check));
    }
    return lines;
}

QString shortfallTextOf(const LiftCase& lift)
{
    if (lift.evidence.isPlanLed) {
        return BoardText::tr("Results move the single that its loads are shares of. The stages go on when the plan is over.");
    }
    const auto& shortfall = lift.evidence.shortfall;
    if (!shortfall || shortfall->misses == 0) {
        return {};
    }
    const int left = shortfall->limit - shortfall->misses;
    const QString then = endText(lift, *shortfall);
    return left == 1 ? BoardText::tr("Fell short %1 of %2 times. Once more and %3.").arg(shortfall->misses).arg(shortfall->limit).arg(then)
                     : BoardText::tr("Fell short %1 of %2 times. At %2 %3.").arg(shortfall->misses).arg(shortfall->limit).arg(then);
}

}  // namespace chalk::ui::board
