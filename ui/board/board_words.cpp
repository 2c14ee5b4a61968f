#include "ui/board/board_words.h"

#include "ui/board/board_text.h"
#include "ui/common/formats.h"

#include <QStringList>

#include <algorithm>

namespace chalk::ui::board {

namespace {

using common::qstring;
using progression::CheckKind;
using progression::Evidence;
using progression::EvidenceTarget;
using progression::Flag;
using progression::Prescription;
using progression::PrescriptionKind;
using progression::Stage;

bool isAddedToBody(const LiftCase& lift)
{
    return std::holds_alternative<lifts::BodyAdded>(lift.machine.kit().equipment);
}

QString rangeText(const LiftCase& lift, base::Reps low, base::Reps high)
{
    Prescription range;
    range.repsLow = low;
    range.repsHigh = high;
    return common::targetText(range, lift.machine.kit().measure, lift.machine.setup().policy);
}

/// `12–15 reps`, `15–18 s`.
QString repsText(const LiftCase& lift, base::Reps low, base::Reps high)
{
    const QString range = rangeText(lift, low, high);
    return lift.machine.kit().measure == lifts::Measure::Reps ? BoardText::tr("%1 reps").arg(range) : range;
}

QString timesText(base::Sets sets, const QString& reps)
{
    return QStringLiteral("%1 × %2").arg(sets.value()).arg(reps);
}

QString loadBuildTitle(const LiftCase& lift, const EvidenceTarget& target)
{
    if (checkOf(lift.evidence, CheckKind::BridgeCrossed) != nullptr) {
        return loadTextOf(lift, target.load);
    }
    if (target.isOpenAbove) {
        return BoardText::tr("%1 or more").arg(amountTextOf(lift, target.repsLow));
    }
    return repsText(lift, target.repsLow, target.repsHigh);
}

BoardTag tagOf(const LiftCase& lift)
{
    if (lift.next.kind == PrescriptionKind::Hold) {
        return BoardTag::Pain;
    }
    if (lift.next.flags.has(Flag::NeedsLighterOption)) {
        return BoardTag::LighterOption;
    }
    if (lift.next.flags.has(Flag::Stalled)) {
        return BoardTag::Plateau;
    }
    return lift.next.flags.has(Flag::Rescreen) ? BoardTag::Rescreen : BoardTag::None;
}

/// What stands below the sets: the week of a plan, a lighter one or the pause.
QString footOf(const Prescription& next, const QString& otherwise)
{
    if (next.isLighter()) {
        return BoardText::tr("lighter");
    }
    if (next.block) {
        return next.block->isTest      ? BoardText::tr("test")
               : next.block->isLighter ? BoardText::tr("lighter")
                                       : QStringLiteral("%1/%2").arg(next.block->week).arg(next.block->weeks);
    }
    return next.isPauseAsked ? BoardText::tr("with pause") : otherwise;
}

void describeBlock(BoardColumn& column, const LiftCase& lift)
{
    const Prescription& next = lift.next;
    column.stage = next.stage;
    column.cycle = next.cycle;
    column.foot = next.cycle > 1 ? BoardText::tr("cycle %1").arg(next.cycle) : QString();
    switch (next.kind) {
    case PrescriptionKind::Hold: {
        const progression::Check& held = lift.evidence.checks.front();
        column.isOutlined = true;
        column.title = BoardText::tr("On hold");
        column.sub = held.date ? common::shortDayText(*held.date) : QString();
        column.foot = held.value > 0 ? BoardText::tr("pain %1").arg(held.value) : QString();
        break;
    }
    case PrescriptionKind::Rehearse:
        column.title = BoardText::tr("Rehearse");
        column.sub = next.stage == Stage::Pattern ? BoardText::tr("no load") : BoardText::tr("3 pauses");
        break;
    case PrescriptionKind::Work:
        column.title = loadTextOf(lift, next.load);
        column.sub = next.stage == Stage::RestCut && !next.block ? BoardText::tr("rest %1").arg(common::restText(next.rest)) : setsTextOf(lift, next);
        column.foot = footOf(next, column.foot);
        break;
    }
}

void describeNeed(BoardColumn& column, const LiftCase& lift)
{
    const Evidence& evidence = lift.evidence;
    if (!evidence.next || evidence.next == evidence.stage) {
        return;
    }
    BoardNeed need;
    need.stage = *evidence.next;
    need.title = needTitleOf(lift);
    need.done = evidence.progress.done;
    need.needed = evidence.progress.needed;
    need.note = need.needed == 0 ? BoardText::tr("not judged") : QString();
    need.isWarned = lift.next.flags.has(Flag::Stalled) || lift.next.flags.has(Flag::NeedsLighterOption);
    need.isNextCycle = evidence.stage == Stage::RestCut;
    column.need = need;
}

void describeDates(BoardColumn& column, const LiftCase& lift)
{
    const auto reached = reachedOn(lift);
    for (std::size_t i = 0; i < reached.size(); ++i) {
        if (reached[i]) {
            column.dates[i] = {common::shortDayText(*reached[i]), true};
        }
    }
}

}  // namespace

QString loadTextOf(const LiftCase& lift, base::Load load)
{
    return common::loadText(load, lift.machine.setup().unit, lift.exercise.pieces, isAddedToBody(lift));
}

QString amountTextOf(const LiftCase& lift, base::Reps reps)
{
    return common::amountText(reps, lift.machine.kit().measure, lift.machine.setup().policy);
}

QString setsTextOf(const LiftCase& lift, const Prescription& next)
{
    return timesText(next.sets, common::targetText(next, lift.machine.kit().measure, lift.machine.setup().policy));
}

common::RuleFacts ruleFactsOf(const LiftCase& lift)
{
    return {lift.machine.setup().policy, lift.machine.setup().unit, lift.machine.kit().measure, lift.exercise.pieces, isAddedToBody(lift)};
}

common::RuleFacts ruleFactsOf(const LiftCase& lift, const LogEntry& entry)
{
    common::RuleFacts facts = ruleFactsOf(lift);
    facts.measure = entry.measure;
    facts.record = common::decidedRecordOf(entry.date, entry.body, entry.measure, facts.policy);
    facts.today = lift.day;
    return facts;
}

QString needTitleOf(const LiftCase& lift)
{
    const Evidence& evidence = lift.evidence;
    if (!evidence.target) {
        return {};
    }
    const EvidenceTarget& target = *evidence.target;
    switch (evidence.stage) {
    case Stage::Pattern:
        return BoardText::tr("All met");
    case Stage::Control:
        return BoardText::tr("Pauses");
    case Stage::BaseLoad:
        return repsText(lift, *target.capacityMin, target.capacityMax.value_or(*target.capacityMin));
    case Stage::LoadBuild:
        return loadBuildTitle(lift, target);
    case Stage::RepBuild:
    case Stage::SetBuild:
        return timesText(target.sets, amountTextOf(lift, target.repsLow));
    case Stage::RestCut:
        return evidence.arrival ? loadTextOf(lift, evidence.arrival->load) : BoardText::tr("rest %1").arg(common::restText(*target.rest));
    }
    return {};
}

BoardColumn columnOf(const LiftCase& lift)
{
    BoardColumn column;
    column.lift = lift.id;
    column.pattern = lift.pattern;
    column.name = qstring(lift.exercise.name);
    column.spoken = spokenOf(lift);
    column.tag = tagOf(lift);
    describeBlock(column, lift);
    describeNeed(column, lift);
    describeDates(column, lift);
    return column;
}

BoardColumn emptyColumnOf(lifts::Pattern pattern, ScreenStanding standing, bool canScreen)
{
    BoardColumn column;
    column.pattern = pattern;
    column.name = common::patternName(pattern);
    column.canScreen = canScreen;
    switch (standing) {
    case ScreenStanding::Open:
        column.spoken = BoardText::tr("%1, not screened yet").arg(column.name);
        column.title = canScreen ? BoardText::tr("Screen this lift") : BoardText::tr("Not screened yet");
        break;
    case ScreenStanding::Hurts:
        column.spoken = BoardText::tr("%1, on hold: pain in the screen").arg(column.name);
        column.title = BoardText::tr("On hold: pain in the screen");
        break;
    case ScreenStanding::Judged:
        column.spoken = BoardText::tr("%1, screened, no lift begun").arg(column.name);
        column.title = BoardText::tr("Screened, no lift begun");
        break;
    }
    return column;
}

QString nothingToPrescribe(ScreenStanding standing)
{
    switch (standing) {
    case ScreenStanding::Open:
        return BoardText::tr("This movement has not been screened yet, so there is nothing to prescribe.");
    case ScreenStanding::Hurts:
        return BoardText::tr("Pain was named in the movement screen. Nothing is trained here before a new screen is free of pain; where it stays, a physician looks first.");
    case ScreenStanding::Judged:
        return BoardText::tr("This movement was screened, and no lift was begun for it.");
    }
    return {};
}

ScreenStanding standingOf(const ClientCase& client, lifts::Pattern pattern)
{
    if (!client.screen) {
        return ScreenStanding::Open;
    }
    const screens::PatternScreen& screen = client.screen->of(pattern);
    if (screen.pain) {
        return ScreenStanding::Hurts;
    }
    const bool isJudged = std::any_of(screen.points.begin(), screen.points.end(), [](const screens::PointMark& point) { return point.mark != screens::Mark::NotJudged; });
    return isJudged ? ScreenStanding::Judged : ScreenStanding::Open;
}

BoardColumn lockedColumnOf(const LiftCase& lift)
{
    BoardColumn column = columnOf(lift);
    column.need.reset();
    if (lift.next.kind == PrescriptionKind::Hold) {
        return column;
    }
    column.spoken = BoardText::tr("%1, stage %2 %3, waits for clearance")
                        .arg(column.name, QString::number(progression::numberOf(column.stage)), common::stageName(column.stage));
    column.isOutlined = true;
    column.title = BoardText::tr("Waits");
    column.sub = BoardText::tr("for clearance");
    column.foot.clear();
    return column;
}

BoardColumns columnsOf(const ClientCase& client)
{
    BoardColumns columns;
    for (const lifts::Pattern pattern : lifts::kPatterns) {
        const std::size_t before = columns.size();
        for (const LiftCase& lift : client.lifts) {
            if (lift.pattern == pattern) {
                columns.push_back(client.isBlocked() ? lockedColumnOf(lift) : columnOf(lift));
            }
        }
        if (columns.size() == before) {
            columns.push_back(emptyColumnOf(pattern, standingOf(client, pattern), !client.isBlocked()));
        }
    }
    return columns;
}

}  // namespace chalk::ui::board
