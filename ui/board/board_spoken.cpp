#include "ui/board/board_text.h"
#include "ui/board/board_words.h"
#include "ui/common/formats.h"
#include "ui/common/plan_week_text.h"

#include <QStringList>

namespace chalk::ui::board {

namespace {

using progression::Flag;
using progression::Prescription;
using progression::PrescriptionKind;
using progression::Stage;

QString spokenUnit(const LiftCase& lift)
{
    return lift.machine.setup().unit == base::MassUnit::Kilogram ? BoardText::tr("kilograms") : BoardText::tr("pounds");
}

QString spokenLoad(const LiftCase& lift, base::Load load)
{
    QString text = loadTextOf(lift, load);
    const QString unit = common::unitText(lift.machine.setup().unit);
    return text.replace(QLatin1Char(' ') + unit, QLatin1Char(' ') + spokenUnit(lift)).replace(QChar(0x00D7), BoardText::tr("times"));
}

QString spokenNext(const LiftCase& lift)
{
    const Prescription& next = lift.next;
    switch (next.kind) {
    case PrescriptionKind::Hold:
        return BoardText::tr("on hold because of pain");
    case PrescriptionKind::Rehearse:
        return next.stage == Stage::Pattern ? BoardText::tr("next a rehearsal without load")
                                            : BoardText::tr("next a rehearsal with pauses");
    case PrescriptionKind::Work:
        break;
    }
    QString text = BoardText::tr("next %1 by %2 at %3")
                       .arg(next.sets.value())
                       .arg(common::targetText(next, lift.machine.kit().measure, lift.machine.setup().policy)
                                .replace(QChar(0x2013), BoardText::tr(" to ")),
                            spokenLoad(lift, next.load));
    if (next.stage == Stage::RestCut || next.block) {
        text += BoardText::tr(" with %1 rest").arg(common::restText(next.rest));
    }
    if (next.block) {
        text += QStringLiteral(", ") + common::planWeekInSentence(*next.block);
    }
    if (next.isLighter()) {
        text += BoardText::tr(" in a lighter week to %1").arg(common::dayText(*next.lighterUntil));
    }
    return text;
}

}  // namespace

QString spokenOf(const LiftCase& lift)
{
    QStringList parts{common::qstring(lift.exercise.name),
                      BoardText::tr("stage %1 %2").arg(progression::numberOf(lift.next.stage)).arg(common::stageName(lift.next.stage))};
    if (lift.next.cycle > 1) {
        parts.append(BoardText::tr("cycle %1").arg(lift.next.cycle));
    }
    parts.append(spokenNext(lift));
    if (lift.next.flags.has(Flag::Stalled)) {
        parts.append(BoardText::tr("stalled"));
    }
    if (lift.next.flags.has(Flag::NeedsLighterOption)) {
        parts.append(BoardText::tr("needs a lighter option"));
    }
    if (lift.next.flags.has(Flag::Rescreen)) {
        parts.append(BoardText::tr("screen again"));
    }
    const progression::EvidenceProgress& progress = lift.evidence.progress;
    if (lift.evidence.next && progress.needed > 0) {
        parts.append(
            BoardText::tr("%1 of %2 towards %3").arg(progress.done).arg(progress.needed).arg(common::stageName(*lift.evidence.next)));
    }
    return parts.join(QLatin1String(", "));
}

}  // namespace chalk::ui::board
