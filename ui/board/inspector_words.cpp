#include "ui/board/inspector_words.h"

#include "core/progression/prescription.h"
#include "ui/board/board_text.h"
#include "ui/board/board_words.h"
#include "ui/board/log_words.h"
#include "ui/common/formats.h"
#include "ui/common/plan_week_text.h"

#include <QStringList>

#include <algorithm>

namespace chalk::ui::board {

namespace {

using common::Dial;
using progression::Lever;
using progression::Policy;
using progression::Prescription;
using progression::PrescriptionKind;
using progression::Stage;

QString movedText(const QString& before, const QString& after)
{
    return before.isEmpty() || before == after ? after : QStringLiteral("%1 → %2").arg(before, after);
}

/// The rest before the present one, of those that Rest cut goes through.
base::Seconds restBefore(base::Seconds rest, const Policy& policy)
{
    base::Seconds before = policy.baseRest;
    for (const base::Seconds step : policy.restSteps) {
        if (step > rest) {
            before = step;
        }
    }
    return before;
}

/// What the number that moves was before; empty where that is not known.
QString beforeText(const LiftCase& lift)
{
    const progression::LiftState& state = lift.machine.state();
    const Policy& policy = lift.machine.setup().policy;
    if (!lift.next.rules.isEmpty() || lift.next.block) {
        return {};  // a layoff stepped back, or the plan says what is due: nothing has moved on
    }
    switch (lift.next.stage) {
    case Stage::LoadBuild:
        return state.lastMade && !state.bridgeTarget && *state.lastMade < lift.next.load ? common::numberText(*state.lastMade) : QString();
    case Stage::RepBuild:
        return state.best.value() > 0 && state.best < lift.next.repsLow ? amountTextOf(lift, state.best) : QString();
    case Stage::SetBuild:
        return lift.next.sets > policy.baseSets ? QString::number(lift.next.sets.value() - 1) : QString();
    case Stage::RestCut:
        return common::restText(restBefore(lift.next.rest, policy));
    case Stage::Pattern:
    case Stage::Control:
    case Stage::BaseLoad:
        break;
    }
    return {};
}

QString barbellText(const lifts::Barbell& barbell, base::Load load, base::MassUnit unit)
{
    const QString bar = common::loadText(barbell.bar, unit);
    if (load == barbell.bar) {
        return BoardText::tr("the bare %1 bar").arg(bar);
    }
    return lifts::platesPerSide(barbell, load) ? BoardText::tr("each side of a %1 bar").arg(bar)
                                               : BoardText::tr("not to be made with the plates of a %1 bar").arg(bar);
}

/// What to set up for a load, equipment by equipment.
struct SetUpWriter {
    const LiftCase& lift;

    QString operator()(const lifts::Barbell& barbell) const { return barbellText(barbell, lift.next.load, lift.machine.setup().unit); }
    QString operator()(const lifts::FixedSet& /*fixed*/) const
    {
        return lift.exercise.pieces == 2 ? BoardText::tr("One of %1 in each hand").arg(one()) : BoardText::tr("One of %1").arg(one());
    }
    QString operator()(const lifts::Stack& /*stack*/) const { return BoardText::tr("Pin at %1").arg(one()); }
    QString operator()(const lifts::BodyAdded& /*body*/) const
    {
        if (lift.next.load == base::Load()) {
            return BoardText::tr("Nothing added");
        }
        return lift.next.load > base::Load() ? BoardText::tr("%1 added").arg(one()) : loadTextOf(lift, lift.next.load);
    }

    [[nodiscard]] QString one() const { return common::loadText(lift.next.load, lift.machine.setup().unit); }
};

}  // namespace

QString whenTextOf(const ClientCase& client)
{
    if (!client.nextSession) {
        return BoardText::tr("next time");
    }
    return client.nextSession->date == client.today ? BoardText::tr("today") : common::dayText(client.nextSession->date);
}

HeadlineView headlineOf(const LiftCase& lift, const QString& when)
{
    HeadlineView view;
    switch (lift.next.kind) {
    case PrescriptionKind::Hold:
        view.number = BoardText::tr("On hold");
        view.isPain = true;
        return view;
    case PrescriptionKind::Rehearse:
        view.number = BoardText::tr("Rehearse");
        view.when = when;
        return view;
    case PrescriptionKind::Work:
        break;
    }
    const QString unit = common::unitText(lift.machine.setup().unit);
    view.number = loadTextOf(lift, lift.next.load);
    if (view.number.endsWith(QLatin1Char(' ') + unit)) {
        view.number.chop(unit.size() + 1);
        view.unit = unit;
    }
    view.sets = setsTextOf(lift, lift.next);
    view.when = when;
    return view;
}

common::DialsView dialsOf(const LiftCase& lift)
{
    common::DialsView view;
    const Prescription& next = lift.next;
    view.stage = next.stage;
    if (next.kind != PrescriptionKind::Work) {
        return view;
    }
    const auto lever = movingLeverOf(next);
    const QString before = beforeText(lift);
    const auto dial = [&](const QString& caption, const QString& value, bool isMoving) {
        view.dials.push_back({caption, isMoving ? movedText(before, value) : value, isMoving});
    };
    const QString reps = common::targetText(next, lift.machine.kit().measure, lift.machine.setup().policy);
    dial(BoardText::tr("Load"), loadTextOf(lift, next.load), lever == Lever::Load || lever == Lever::FirstLoad);
    dial(BoardText::tr("Reps"), reps, lever == Lever::Reps);
    dial(BoardText::tr("Sets"), QString::number(next.sets.value()), lever == Lever::Sets);
    dial(BoardText::tr("Rest"), common::restText(next.rest), lever == Lever::Rest);
    return view;
}

std::optional<common::PlateStackView> platesOf(const LiftCase& lift)
{
    const auto* barbell = std::get_if<lifts::Barbell>(&lift.machine.kit().equipment);
    if (barbell == nullptr || lift.next.kind != PrescriptionKind::Work) {
        return std::nullopt;
    }
    auto plates = lifts::platesPerSide(*barbell, lift.next.load);
    if (!plates) {
        return std::nullopt;
    }
    common::PlateStackView view;
    view.plates = *std::move(plates);
    view.unit = lift.machine.setup().unit;
    return view;
}

QString setUpTextOf(const LiftCase& lift)
{
    return lift.next.kind == PrescriptionKind::Work ? std::visit(SetUpWriter{lift}, lift.machine.kit().equipment) : QString();
}

QString reserveHtmlOf(const LiftCase& lift)
{
    const Prescription& next = lift.next;
    if (next.kind == PrescriptionKind::Hold) {
        return BoardText::tr("No work on this lift until it is released.");
    }
    if (next.kind == PrescriptionKind::Rehearse) {
        const Policy& policy = lift.machine.setup().policy;
        return next.stage == Stage::Pattern ? BoardText::tr("The movement without load; judge every point.")
                                            : BoardText::tr("%1 reps, held <b>%2 s at the top, middle and bottom</b>.")
                                                  .arg(policy.controlReps.value())
                                                  .arg(policy.pauseMs / 1000.0, 0, 'g', 3);
    }
    QString stop = next.reserve == 1 ? BoardText::tr("Stop each set with <b>1 rep in reserve</b>.")
                                           : BoardText::tr("Stop each set with <b>%1 reps in reserve</b>.").arg(next.reserve);
    if (next.isPauseAsked) {
        stop += QLatin1Char(' ') + BoardText::tr("<b>Pause at the bottom</b> of each rep.");
    }
    if (next.isLighter()) {
        return QStringLiteral("<b>%1.</b> %2").arg(common::lighterWeekText(*next.lighterUntil), stop);
    }
    return next.block ? QStringLiteral("<b>%1.</b> %2").arg(common::planWeekText(*next.block), stop) : stop;
}

QString whyTextOf(const LiftCase& lift)
{
    const LogEntry* entry = decidingEntryOf(lift);
    return common::whyOf(lift.decided, lift.next, entry == nullptr ? ruleFactsOf(lift) : ruleFactsOf(lift, *entry));
}

QString whyRecordTextOf(const LiftCase& lift)
{
    const LogEntry* entry = decidingEntryOf(lift);
    if (entry == nullptr) {
        return {};
    }
    const LogLine line = logLineOf(*entry, lift);
    QStringList said{line.what, line.left, line.steadiness};
    if (!line.note.isEmpty()) {
        said.append(BoardText::tr("“%1”").arg(line.note));
    }
    said.removeAll(QString());
    return BoardText::tr("%1: %2").arg(common::dayText(entry->date), said.join(QLatin1String(", ")));
}

}  // namespace chalk::ui::board
