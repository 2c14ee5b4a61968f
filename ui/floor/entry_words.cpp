#include "ui/floor/entry_words.h"

#include "ui/common/formats.h"
#include "ui/common/rule_words.h"

#include <QCoreApplication>

#include <algorithm>

namespace chalk::ui::floor {

namespace {

using progression::EventBody;
using progression::Exposure;
using progression::Prescription;
using progression::PrescriptionKind;
using progression::Rehearsal;
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

/// A value where all sets agree on it.
template <class Value>
std::optional<Value> commonOf(const std::vector<SetRecord>& sets, Value SetRecord::*field)
{
    const bool isOne = std::all_of(sets.begin(), sets.end(), [&](const SetRecord& set) { return set.*field == sets.front().*field; });
    return isOne && !sets.empty() ? std::optional(sets.front().*field) : std::nullopt;
}

QString amountsText(const std::vector<SetRecord>& sets)
{
    QStringList amounts;
    for (const SetRecord& set : sets) {
        amounts.append(QString::number(set.amount));
    }
    return amounts.join(QStringLiteral(", "));
}

QString leftText(const std::vector<SetRecord>& sets)
{
    QStringList left;
    for (const SetRecord& set : sets) {
        left.append(set.rir == SetRecord::kNotRecorded ? QStringLiteral("–") : QString::number(set.rir));
    }
    return commonOf(sets, &SetRecord::rir) ? left.front() : left.join(QStringLiteral(", "));
}

Steadiness worstOf(const std::vector<SetRecord>& sets)
{
    Steadiness worst = Steadiness::Steady;
    for (const SetRecord& set : sets) {
        worst = std::max(worst, set.steadiness);
    }
    return worst;
}

QString rehearsalRecordText(const Rehearsal& rehearsal)
{
    const auto met = std::count_if(rehearsal.criteria.begin(), rehearsal.criteria.end(),
                                   [](const progression::Criterion& point) { return point.verdict == progression::Verdict::Met; });
    return floorText("%1 of %2 points met, %3").arg(met).arg(rehearsal.criteria.size()).arg(feltText(rehearsal.steadiness));
}

}  // namespace

std::vector<SetRecord> workingSets(const Exposure& exposure)
{
    std::vector<SetRecord> sets;
    std::copy_if(exposure.sets.begin(), exposure.sets.end(), std::back_inserter(sets), [](const SetRecord& set) { return !set.isWarmup; });
    return sets;
}

QString loadOf(base::Load load, const FloorLift& lift)
{
    return common::loadText(load, lift.machine.setup().unit, lift.machine.kit().pieces, isAdded(lift));
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

QString dueText(const Prescription& due, const FloorLift& lift)
{
    switch (due.kind) {
    case PrescriptionKind::Hold:
        return floorText("On hold");
    case PrescriptionKind::Rehearse:
        return floorText("Rehearse: %1").arg(common::stageName(due.stage));
    case PrescriptionKind::Work:
        break;
    }
    const QString target = common::targetText(due, lift.machine.kit().measure, lift.machine.setup().policy);
    QString work = floorText("%1 × %2 at %3").arg(QString::number(due.sets.value()), target, loadOf(due.load, lift));
    if (due.stage == progression::Stage::RestCut || due.block) {
        work = floorText("%1, rest %2").arg(work, common::restText(due.rest));
    }
    if (due.block && due.isPauseAsked) {
        work = floorText("%1, pause").arg(work);
    }
    if (due.block && due.block->isTest) {
        return floorText("%1, test").arg(work);
    }
    return due.isLighter() || (due.block && due.block->isLighter) ? floorText("%1, lighter").arg(work) : work;
}

std::vector<EntryChip> chipsOf(const Exposure& exposure, const sessions::EntryLine& line, const FloorLift& lift)
{
    const std::vector<SetRecord> sets = workingSets(exposure);
    if (sets.empty()) {
        return {};
    }
    const lifts::Measure measure = lift.machine.kit().measure;
    const QString what = measure == lifts::Measure::Reps ? floorText("reps") : measure == lifts::Measure::Seconds ? floorText("seconds") : floorText("metres");
    const auto load = commonOf(sets, &SetRecord::load);
    const auto rir = commonOf(sets, &SetRecord::rir);
    const bool isPlanned = load == lift.due.load && !line.load;
    const bool isNoted = rir != SetRecord::kNotRecorded;
    const auto rest = commonOf(sets, &SetRecord::restSeconds);
    const Steadiness felt = worstOf(sets);
    return {{what, amountsText(sets), {}},
            {floorText("load"), load ? loadOf(*load, lift) : floorText("differs"), isPlanned ? floorText("as planned") : QString()},
            isNoted ? EntryChip{{}, leftText(sets), floorText("left")} : EntryChip{floorText("left"), QStringLiteral("–"), floorText("not noted")},
            {floorText("rest"), rest && *rest >= 0 ? common::restText(base::Seconds(*rest)) : floorText("differs"), {}},
            {feltText(felt), {}, {}, felt == Steadiness::Steady, felt != Steadiness::Steady},
            {floorText("pain"), QString::number(exposure.pain), {}, false, exposure.pain > 0}};
}

QString nextShortText(const Preview& preview, const FloorLift& lift)
{
    const QString due = dueText(preview.next, lift);
    const bool isNewStage = preview.next.stage != lift.due.stage && preview.next.kind == PrescriptionKind::Work;
    return isNewStage ? QStringLiteral("%1: %2").arg(common::stageName(preview.next.stage), due) : due;
}

QString nextTimeText(const Preview& preview, const FloorLift& lift)
{
    const QString what = nextShortText(preview, lift);
    return dueText(preview.next, lift) == dueText(lift.due, lift) ? floorText("Next time %1, again.").arg(what) : floorText("Next time %1.").arg(what);
}

QString whyText(const Preview& preview, const EventBody& body, const FloorLift& lift, base::Date day)
{
    const progression::LiftSetup& setup = lift.machine.setup();
    const progression::Kit& kit = lift.machine.kit();
    common::RuleFacts facts{setup.policy, setup.unit, kit.measure, kit.pieces, isAdded(lift)};
    facts.record = common::decidedRecordOf(day, body, kit.measure, setup.policy);
    facts.today = day;
    return common::whyOf(preview.rules, preview.next, facts);
}

QString presentText(const Preview& preview, const FloorLift& lift)
{
    return preview.present ? floorText("With what was recorded later, %1 is due now.").arg(dueText(*preview.present, lift)) : QString();
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

QString recordText(const EventBody& body, const FloorLift& lift)
{
    QStringList parts;
    if (const auto* rehearsal = std::get_if<Rehearsal>(&body)) {
        parts.append(rehearsalRecordText(*rehearsal));
    }
    if (const auto* exposure = std::get_if<Exposure>(&body)) {
        const std::vector<SetRecord> sets = workingSets(*exposure);
        const auto load = commonOf(sets, &SetRecord::load);
        parts.append(load ? floorText("%1 at %2").arg(amountsText(sets), loadOf(*load, lift)) : amountsText(sets));
        if (commonOf(sets, &SetRecord::rir) != SetRecord::kNotRecorded) {
            parts.append(floorText("%1 left").arg(leftText(sets)));
        }
        if (worstOf(sets) != Steadiness::Steady) {
            parts.append(feltText(worstOf(sets)));
        }
    }
    if (painOf(body) > 0) {
        parts.append(floorText("pain %1").arg(painOf(body)));
    }
    return parts.join(QStringLiteral(", "));
}

QString correctionText(const EventBody& before, const EventBody& after, const store::ActOutcome& outcome, const FloorLift& lift)
{
    QStringList sentences{floorText("Was %1; is %2.").arg(recordText(before, lift), recordText(after, lift))};
    for (const store::LiftOutcome& one : outcome.lifts) {
        const QString now = dueText(one.after, lift);
        const QString then = dueText(one.before, lift);
        sentences.append(now == then ? floorText("%1 stays due.").arg(now) : floorText("Due now %1, before %2.").arg(now, then));
    }
    if (outcome.changed.empty()) {
        sentences.append(floorText("No other decision is different."));
        return sentences.join(QLatin1Char(' '));
    }
    QStringList days;
    for (const store::ChangedDecision& one : outcome.changed) {
        days.append(floorText("%1 led to %2, before %3").arg(common::dayText(one.date), dueText(one.dueAfter, lift), dueText(one.dueBefore, lift)));
    }
    sentences.append(QCoreApplication::translate("Floor", "%n later decision(s) changed: %1.", nullptr, static_cast<int>(days.size())).arg(days.join(QStringLiteral("; "))));
    return sentences.join(QLatin1Char(' '));
}

QString takeBackText(const FloorLift& lift, base::Date day)
{
    const auto taken = takenBackOf(lift, day);
    if (!taken) {
        return floorText("What came later cannot stand without it, or nothing is saved.");
    }
    QStringList parts;
    const QString with = dueText(taken->present, lift);
    const QString without = dueText(taken->without, lift);
    parts.append(with == without ? floorText("%1 is due either way.").arg(with) : floorText("Without it %1 is due, not %2.").arg(without, with));
    if (taken->laterDecisions > 0) {
        parts.append(taken->laterDecisions == 1 ? floorText("One later decision comes out otherwise.")
                                                : floorText("%1 later decisions come out otherwise.").arg(taken->laterDecisions));
    }
    parts.append(floorText("Once more deletes it; undo brings it back."));
    return parts.join(QLatin1Char(' '));
}

int painOf(const EventBody& body)
{
    if (const auto* exposure = std::get_if<Exposure>(&body)) {
        return exposure->pain;
    }
    const auto* rehearsal = std::get_if<Rehearsal>(&body);
    return rehearsal == nullptr ? 0 : rehearsal->pain;
}

}  // namespace chalk::ui::floor
