#include "core/sessions/card_content.h"

#include <algorithm>
#include <array>

namespace chalk::sessions {

namespace {

using lifts::Exercise;
using progression::Prescription;
using progression::PrescriptionKind;

constexpr std::size_t kMostDrills = 2;

int amountOf(base::Reps reps, lifts::Measure measure, const progression::Policy& policy)
{
    switch (measure) {
    case lifts::Measure::Reps:
        return reps.value();
    case lifts::Measure::Seconds:
        return reps.value() * policy.secondsPerRep.value();
    case lifts::Measure::Metres:
        return reps.value() * policy.metresPerRep.value();
    }
    return reps.value();
}

/// The numbers of a loaded lift.
void addWork(CardLift& lift, const Prescription& next, const progression::LiftMachine& machine, WarmUpLength length)
{
    const progression::Kit& kit = machine.kit();
    const progression::Policy& policy = machine.setup().policy;
    lift.load = next.load;
    lift.sets = next.sets.value();
    lift.amountLow = amountOf(next.repsLow, kit.measure, policy);
    lift.amountHigh = amountOf(next.repsHigh, kit.measure, policy);
    lift.rest = next.rest;
    lift.reserve = next.reserve;
    lift.isPauseAsked = next.isPauseAsked;
    lift.lighterUntil = next.lighterUntil;
    lift.plan = next.block;
    if (const auto* barbell = std::get_if<lifts::Barbell>(&kit.equipment)) {
        const auto plates = lifts::platesPerSide(*barbell, next.load);
        lift.isOnBar = plates.has_value();
        lift.platesPerSide = plates.value_or(std::vector<base::Load>());
    }
    for (const WarmUpSet& set : warmUpRamp(kit.equipment, kit.measure, next.load, length)) {
        lift.warmUp.push_back({set.load, amountOf(set.reps, kit.measure, policy)});
    }
}

/// The numbers of an unloaded trial.
void addRehearsal(CardLift& lift, const Prescription& next, const progression::LiftMachine& machine)
{
    const progression::Policy& policy = machine.setup().policy;
    lift.amountLow = amountOf(policy.controlReps, lift.measure, policy);
    lift.amountHigh = lift.amountLow;
    lift.pauseMs = next.stage == progression::Stage::Control ? policy.pauseMs : 0;
}

/// `isWarm` by region: a loaded lift of it came before.
CardLift liftOf(const LiftDue& due, base::Date day, std::array<bool, 2>& isWarm)
{
    const progression::LiftMachine& machine = *due.machine;
    const Prescription next = machine.prescriptionOn(day);
    CardLift lift;
    lift.name = due.exercise->name;
    lift.kind = next.kind;
    lift.stage = next.stage;
    lift.cycle = next.cycle;
    lift.lever = next.block ? progression::Lever::Load : progression::leverOf(next.stage);
    lift.unit = machine.setup().unit;
    lift.measure = machine.kit().measure;
    lift.equipment = due.exercise->equipment;
    lift.pattern = due.exercise->pattern;
    lift.station = due.exercise->station;
    lift.pieces = machine.kit().pieces;
    lift.cues = due.exercise->cues;
    switch (next.kind) {
    case PrescriptionKind::Rehearse:
        addRehearsal(lift, next, machine);
        break;
    case PrescriptionKind::Work: {
        bool& isRegionWarm = isWarm[static_cast<std::size_t>(machine.setup().region)];
        addWork(lift, next, machine, isRegionWarm ? WarmUpLength::Short : WarmUpLength::Full);
        isRegionWarm = true;
        break;
    }
    case PrescriptionKind::Hold:
        break;
    }
    return lift;
}

/// The hardest unloaded exercises of the first patterns of the session that no caution rules out or asks care for.
std::vector<std::string> drillsFor(const CardRequest& request, std::span<const lifts::CautionTag> cautions)
{
    std::vector<std::string> drills;
    for (const LiftDue& due : request.lifts) {
        const auto exercises = request.catalogue.of(due.exercise->pattern);
        const auto drill = std::find_if(exercises.rbegin(), exercises.rend(), [&cautions](const Exercise* exercise) {
            return exercise->equipment == lifts::EquipmentKind::None && !isRuledOut(*exercise, cautions) && caresOf(*exercise, cautions).empty();
        });
        if (drill != exercises.rend() && drills.size() < kMostDrills) {
            drills.push_back((*drill)->name);
        }
    }
    return drills;
}

}  // namespace

CardContent cardContentOf(const CardRequest& request)
{
    CardContent content;
    content.client = request.client.id;
    content.clientName = request.client.name;
    content.date = request.session.date;
    content.startMinute = request.session.startMinute;
    content.coachName = request.coachName;
    content.place = request.session.place;
    content.sessionCode = request.session.code;
    content.sessionNumber = request.sessionNumber;
    std::vector<lifts::CautionTag> tags;
    for (const clients::Caution& caution : request.cautions) {
        if (!caution.until || *caution.until >= content.date) {
            content.cautions.push_back({caution.bodyPart, caution.shortText.empty() ? caution.text : caution.shortText});
            tags.insert(tags.end(), caution.tags.begin(), caution.tags.end());
        }
    }
    content.drills = drillsFor(request, tags);
    std::array<bool, 2> isWarm{};
    for (const LiftDue& due : request.lifts) {
        content.lifts.push_back(liftOf(due, content.date, isWarm));
    }
    return content;
}

CardContent withInitials(CardContent card)
{
    card.clientName = clients::dottedInitialsOf(card.clientName);
    return card;
}

}  // namespace chalk::sessions
