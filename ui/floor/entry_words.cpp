#include "ui/floor/entry_words.h"

#include "ui/common/formats.h"

#include <QCoreApplication>

#include <algorithm>

namespace chalk::ui::floor {

namespace {

using progression::Exposure;
using progression::SetRecord;
using progression::Steadiness;

QString floorText(const char* text)
{
    return QCoreApplication::translate("Floor", text);
}

bool isAdded(const FloorLift& lift)
{
    return std::holds_alternative<lifts::BodyAdded>(lift.machine.kit().equipment);
}

QString loadOf(base::Load load, const FloorLift& lift)
{
    return common::loadText(load, lift.machine.setup().unit, lift.machine.kit().pieces, isAdded(lift));
}

common::RuleFacts factsOf(const FloorLift& lift)
{
    return {lift.machine.setup().policy, lift.machine.setup().unit, lift.machine.kit().measure, lift.machine.kit().pieces, isAdded(lift)};
}

QString feltText(Steadiness felt)
{
    switch (felt) {
    case Steadiness::Steady:
        return floorText("steady");
    case Steadiness::Shaky:
        return floorText("shaky");
    case Steadiness::Lost:
        return floorText("lost");
    }
    return {};
}

QString listOf(const Exposure& exposure)
{
    QStringList amounts;
    for (const SetRecord& set : exposure.sets) {
        amounts.append(QString::number(set.amount));
    }
    return amounts.join(QStringLiteral(", "));
}

QStringList chipsOfExposure(const Exposure& exposure, const sessions::EntryLine& line, const FloorLift& lift)
{
    const SetRecord& first = exposure.sets.front();
    const char* const unit = lift.machine.kit().measure == lifts::Measure::Reps      ? QT_TRANSLATE_NOOP("Floor", "reps %1")
                             : lift.machine.kit().measure == lifts::Measure::Seconds ? QT_TRANSLATE_NOOP("Floor", "seconds %1")
                                                                                     : QT_TRANSLATE_NOOP("Floor", "metres %1");
    QStringList chips{floorText(unit).arg(listOf(exposure))};
    chips.append(line.load ? loadOf(first.load, lift) : floorText("%1 as planned").arg(loadOf(first.load, lift)));
    chips.append(first.rir == SetRecord::kNotRecorded ? floorText("left not noted") : floorText("%1 left").arg(first.rir));
    chips.append(floorText("rest %1").arg(common::restText(base::Seconds(first.restSeconds))));
    chips.append(feltText(first.steadiness));
    chips.append(floorText("pain %1").arg(exposure.pain));
    return chips;
}

QStringList chipsOfRehearsal(const progression::Rehearsal& rehearsal)
{
    const auto pause = [](const char* name, const std::optional<int>& ms) {
        return floorText(name).arg(ms ? QStringLiteral("%1 s").arg(*ms / 1000.0) : QStringLiteral("–"));
    };
    const char* const verdicts[] = {QT_TRANSLATE_NOOP("Floor", "points met"), QT_TRANSLATE_NOOP("Floor", "partly met"), QT_TRANSLATE_NOOP("Floor", "not met")};
    return {floorText(verdicts[static_cast<int>(rehearsal.criteria.front().verdict)]), floorText("reps %1").arg(rehearsal.reps.value()),
            pause("top %1", rehearsal.pauses.topMs), pause("middle %1", rehearsal.pauses.middleMs), pause("bottom %1", rehearsal.pauses.bottomMs),
            feltText(rehearsal.steadiness), floorText("pain %1").arg(rehearsal.pain)};
}

}  // namespace

QString dueText(const progression::Prescription& due, const FloorLift& lift)
{
    switch (due.kind) {
    case progression::PrescriptionKind::Hold:
        return floorText("On hold");
    case progression::PrescriptionKind::Rehearse:
        return floorText("Rehearse: %1").arg(common::stageName(due.stage));
    case progression::PrescriptionKind::Work:
        break;
    }
    const QString target = common::targetText(due, lift.machine.kit().measure, lift.machine.setup().policy);
    const QString work = floorText("%1 × %2 at %3").arg(QString::number(due.sets.value()), target, loadOf(due.load, lift));
    return due.stage == progression::Stage::RestCut ? floorText("%1, rest %2").arg(work, common::restText(due.rest)) : work;
}

QStringList chipsOf(const progression::EventBody& body, const sessions::EntryLine& line, const FloorLift& lift)
{
    if (const auto* rehearsal = std::get_if<progression::Rehearsal>(&body)) {
        return chipsOfRehearsal(*rehearsal);
    }
    const auto* exposure = std::get_if<Exposure>(&body);
    return exposure == nullptr || exposure->sets.empty() ? QStringList() : chipsOfExposure(*exposure, line, lift);
}

QString nextTimeText(const Preview& preview, const FloorLift& lift)
{
    const bool isSame = preview.next == lift.due;
    const QString due = dueText(preview.next, lift);
    const bool isNewStage = preview.next.stage != lift.due.stage && preview.next.kind == progression::PrescriptionKind::Work;
    const QString what = isNewStage ? QStringLiteral("%1: %2").arg(common::stageName(preview.next.stage), due) : due;
    return isSame ? floorText("Next time %1, again.").arg(what) : floorText("Next time %1.").arg(what);
}

QString whyText(const Preview& preview, const FloorLift& lift)
{
    return common::whyOf(preview.rules, preview.next, factsOf(lift));
}

QString doubtText(sessions::EntryDoubt doubt, const FloorLift& lift)
{
    switch (doubt) {
    case sessions::EntryDoubt::LoadFarOff:
        return floorText("The load is far from the %1 planned. Enter once more to keep it.").arg(loadOf(lift.due.load, lift));
    case sessions::EntryDoubt::LoadInOtherUnit:
        return floorText("That looks like kg for lb, or lb for kg: %1 was planned. Enter once more to keep it.").arg(loadOf(lift.due.load, lift));
    case sessions::EntryDoubt::ManyReps:
        return floorText("That is a great many reps. Enter once more to keep them.");
    case sessions::EntryDoubt::LoadNotOnHand:
        return floorText("The equipment of this lift cannot give that load. Enter once more to keep it.");
    }
    return {};
}

QString lineOf(const progression::EventBody& body, const FloorLift& lift)
{
    const auto* exposure = std::get_if<Exposure>(&body);
    if (exposure == nullptr || exposure->sets.empty()) {
        return {};
    }
    QStringList words;
    const SetRecord* last = nullptr;
    for (const SetRecord& set : exposure->sets) {
        if (!set.isWarmup) {
            words.append(QString::number(set.amount));
            last = &set;
        }
    }
    if (last == nullptr) {
        return {};
    }
    if (last->load != lift.due.load) {
        words.append(QLatin1Char('@') + common::numberText(last->load).replace(QChar(0x2212), QLatin1Char('-')));
    }
    if (last->rir != SetRecord::kNotRecorded) {
        words.append(QStringLiteral("r%1").arg(last->rir));
    }
    if (last->restSeconds != SetRecord::kNotRecorded && last->restSeconds != lift.due.rest.value()) {
        words.append(common::restText(base::Seconds(last->restSeconds)));
    }
    if (exposure->pain > 0) {
        words.append(QStringLiteral("p%1").arg(exposure->pain));
    }
    if (last->steadiness != Steadiness::Steady) {
        words.append(last->steadiness == Steadiness::Shaky ? QStringLiteral("s") : QStringLiteral("lost"));
    }
    return words.join(QLatin1Char(' '));
}

}  // namespace chalk::ui::floor
