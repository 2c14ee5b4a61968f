#include "tests/ui/board/client_fixture.h"

#include <algorithm>

namespace chalk::test {

namespace {

using base::Load;
using progression::EventBody;
using progression::Exposure;
using progression::LiftMachine;
using progression::LiftSetup;
using progression::Prescription;
using progression::PrescriptionKind;
using progression::Rehearsal;
using progression::SetRecord;
using progression::Stage;
using progression::Verdict;
using ui::board::ClientCase;
using ui::board::LiftCase;
using ui::board::LogEntry;

Load kilogramsOf(double value)
{
    return Load::fromCenti(static_cast<std::int32_t>(value * 100));
}

Rehearsal rehearsalOf(bool isGood)
{
    Rehearsal rehearsal;
    rehearsal.criteria = {{"depth", Verdict::Met}, {"heels", Verdict::Met}, {"knees", isGood ? Verdict::Met : Verdict::Partly}};
    rehearsal.reps = base::Reps(5);
    rehearsal.pauses = {1200, 1000, 1500};
    return rehearsal;
}

/// Reps with two in reserve that this person has in them.
int repsOf(const Prescription& next, double hardAt)
{
    const double hardNow = hardAt * (1 + 0.1 * (next.cycle - 1));
    if (next.stage == Stage::LoadBuild) {
        return next.load < kilogramsOf(hardNow) ? std::max(8, next.repsLow.value()) : 6;
    }
    return next.stage == Stage::BaseLoad ? 8 : next.repsLow.value();
}

Exposure exposureOf(const Prescription& next, const FixtureLift& how, const progression::Policy& policy)
{
    SetRecord set;
    set.load = next.load;
    set.amount = amountFor(base::Reps(repsOf(next, how.hardAt)), how.measure, policy);
    set.rir = next.stage == Stage::BaseLoad ? 5 : 2;
    set.restSeconds = static_cast<std::int16_t>(next.rest.value());
    return {0, std::vector<SetRecord>(static_cast<std::size_t>(next.sets.value()), set)};
}

LiftSetup setupOf(const FixtureLift& how)
{
    LiftSetup setup;
    setup.region = how.region;
    setup.kit.equipment = how.equipment;
    setup.kit.measure = how.measure;
    setup.kit.startLoad = lifts::LoadTable::of(how.equipment).value().atMost(kilogramsOf(how.hardAt * 0.6));
    setup.policy = progression::Policy::defaultsFor(base::MassUnit::Kilogram);
    return setup;
}

EventBody eventFor(const LiftMachine& machine, base::Date day, const FixtureLift& how, int session)
{
    const Prescription next = machine.prescriptionOn(day);
    if (next.kind == PrescriptionKind::Rehearse) {
        return rehearsalOf(how.rehearsals > 0 && session + 1 >= how.rehearsals);
    }
    Exposure exposure = exposureOf(next, how, machine.setup().policy);
    if (session % 11 == 7) {
        exposure.sets.back().steadiness = progression::Steadiness::Shaky;
    }
    exposure.pain = session + 1 == how.sessions ? how.painAtEnd : 0;
    return exposure;
}

}  // namespace

base::Date fixtureDay()
{
    return *base::Date::parse("2026-11-24");
}

LiftCase trainedLift(const FixtureLift& how, std::int64_t id)
{
    const base::Date start = fixtureDay() - how.sessions * 7 / 2 - 1;
    LiftCase lift(LiftMachine::create(setupOf(how)).value());
    lift.id = base::LiftId(id);
    lift.pattern = how.pattern;
    lift.startedOn = start;
    lift.exercise.key = how.name;
    lift.exercise.name = how.name;
    lift.exercise.pattern = how.pattern;
    lift.exercise.pieces = how.pieces;
    lift.exercise.measure = how.measure;
    for (int session = 0; session < how.sessions; ++session) {
        const base::Date day = start + session * 7 / 2;
        EventBody body = eventFor(lift.machine, day, how, session);
        LogEntry entry{base::EventId(id * 1000 + session), day, std::move(body), {}, {}, how.measure};
        entry.rules = lift.machine.apply(day, entry.body);
        entry.after = lift.machine.prescriptionOn(day);
        lift.decided = entry.rules;
        lift.log.push_back(std::move(entry));
    }
    settle(lift, fixtureDay());
    return lift;
}

ClientCase ferro()
{
    using lifts::Pattern;
    using lifts::Region;
    const std::vector<FixtureLift> lifts{
        {Pattern::Squat, "Back squat", Region::Lower, fixtureBar(), 75, 60},
        {Pattern::Hinge, "Trap-bar deadlift", Region::Lower, fixtureBar(), 100, 42},
        {Pattern::HorizontalPush, "Bench press", Region::Upper, fixtureBar(), 60, 26},
        {Pattern::HorizontalPull, "Chest-supported row", Region::Upper, fixtureStack(), 50, 26},
        {Pattern::VerticalPush, "Overhead press", Region::Upper, fixtureBar(), 40, 20, 1, lifts::Measure::Reps, 5},
        {Pattern::VerticalPull, "Pulldown", Region::Upper, fixtureStack(), 55, 15},
        {Pattern::SingleLeg, "Split squat", Region::Lower, fixtureDumbbells(), 14, 3, 2},
        {Pattern::CarryBrace, "Suitcase carry", Region::Lower, fixtureDumbbells(), 24, 8, 1, lifts::Measure::Metres},
    };
    ClientCase ferro;
    ferro.client.id = base::ClientId(1);
    ferro.client.name = "Joaquin Ferro";
    ferro.client.birthDate = base::Date::parse("1981-03-04");
    ferro.client.goal = "Strong, back-safe";
    ferro.client.startedOn = *base::Date::parse("2026-05-04");
    ferro.coachName = "Ines";
    ferro.today = fixtureDay();
    ferro.cautions = {{base::CautionId(1),
                       "Lower back",
                       "Disc irritation 2024. Cleared with limits by his doctor, 12 Aug 2026: no loaded rounding, hinge stays "
                       "under 120 kg until the re-screen on 12 Feb.",
                       "No loaded rounding",
                       {lifts::CautionTag::LowerBack},
                       {}}};
    for (std::size_t i = 0; i < lifts.size(); ++i) {
        ferro.lifts.push_back(trainedLift(lifts[i], static_cast<std::int64_t>(i) + 1));
    }
    sessions::Session next;
    next.date = fixtureDay();
    next.startMinute = 9 * 60;
    next.place = "Rack 1";
    next.placeCapacity = 4;
    ferro.nextSession = next;
    ferro.nextSessionTaken = 3;
    return ferro;
}

ClientCase clientWithLifts(int count)
{
    ClientCase client = ferro();
    LiftCase longName = client.lifts.front();
    longName.id = base::LiftId(90);
    longName.exercise.name = "Rear-foot-elevated split squat with a safety bar";
    client.lifts.insert(client.lifts.begin() + 1, longName);
    longName.id = base::LiftId(91);
    longName.exercise.name = "Kniebeugenvorübungsschlittenschub";
    client.lifts.insert(client.lifts.begin() + 2, longName);
    client.lifts.erase(client.lifts.begin() + std::min(count, 10), client.lifts.end());
    return client;
}

lifts::Equipment fixtureBar()
{
    return lifts::Barbell{kilogramsOf(20),
                          {{kilogramsOf(25), 2},
                           {kilogramsOf(20), 1},
                           {kilogramsOf(10), 1},
                           {kilogramsOf(5), 1},
                           {kilogramsOf(2.5), 1},
                           {kilogramsOf(1.25), 1}}};
}

lifts::Equipment fixtureDumbbells()
{
    lifts::FixedSet dumbbells;
    for (int kilograms = 4; kilograms <= 40; kilograms += 2) {
        dumbbells.loads.push_back(kilogramsOf(kilograms));
    }
    return dumbbells;
}

lifts::Equipment fixtureStack()
{
    return lifts::Stack{kilogramsOf(5), kilogramsOf(100), kilogramsOf(2.5)};
}

}  // namespace chalk::test
