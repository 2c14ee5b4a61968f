#include "app/commands/lift_text.h"

#include "ui/common/formats.h"

namespace chalk::app {

QString nameOfLift(const progression::LiftMachine& machine, const lifts::Catalogue& catalogue)
{
    const auto* exercise = catalogue.find(machine.kit().exerciseKey);
    return ui::common::qstring(exercise == nullptr ? machine.kit().exerciseKey : exercise->name);
}

ui::common::RuleFacts factsOfLift(const progression::LiftMachine& machine)
{
    return {machine.setup().policy, machine.setup().unit, machine.kit().measure, machine.kit().pieces,
            std::holds_alternative<lifts::BodyAdded>(machine.kit().equipment)};
}

bool isWithheld(const progression::Prescription& next, bool isBlocked)
{
    return isBlocked && progression::isLoaded(next.stage);
}

QString dueTextOf(const progression::Prescription& next, const progression::LiftMachine& machine, bool isBlocked)
{
    if (isWithheld(next, isBlocked)) {
        return QStringLiteral("waiting for clearance");
    }
    if (next.kind != progression::PrescriptionKind::Work) {
        return next.kind == progression::PrescriptionKind::Hold ? QStringLiteral("on hold") : QStringLiteral("rehearse without load");
    }
    const auto facts = factsOfLift(machine);
    const QString work = QStringLiteral("%1 × %2 at %3, rest %4, stop with %5 left")
        .arg(QString::number(next.sets.value()), ui::common::targetText(next, facts.measure, facts.policy),
             ui::common::loadText(next.load, facts.unit, facts.pieces, facts.isAddedToBody), ui::common::restText(next.rest),
             QString::number(next.reserve));
    if (next.block) {
        return QStringLiteral("%1, plan week %2 of %3%4")
            .arg(work)
            .arg(next.block->week)
            .arg(next.block->weeks)
            .arg(next.block->isTest ? QStringLiteral(", test") : next.block->isLighter ? QStringLiteral(", lighter") : QString());
    }
    return next.isLighter() ? QStringLiteral("%1, lighter week to %2").arg(work, ui::common::dayText(*next.lighterUntil)) : work;
}

}  // namespace chalk::app
