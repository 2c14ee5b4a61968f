#include "tests/support/lift_on_test.h"

#include <stdexcept>

namespace chalk::test {

using progression::CoachSet;
using progression::EventBody;
using progression::Exposure;
using progression::Kit;
using progression::LiftMachine;
using progression::LiftSetup;
using progression::Rehearsal;
using progression::RuleList;
using progression::SetRecord;
using progression::Stage;

Kit barbellKit()
{
    const auto pair = [](double plate, int count) { return lifts::PlatePair{kilos(plate), count}; };
    return {lifts::Barbell{kilos(20), {pair(25, 2), pair(15, 1), pair(10, 1), pair(5, 1), pair(2.5, 1), pair(1.25, 1)}}, {}, {}, {}, {}};
}

Kit fixedKit(std::initializer_list<int> loads)
{
    lifts::FixedSet fixed;
    for (const int load : loads) {
        fixed.loads.push_back(kilos(load));
    }
    return {fixed, {}, {}, {}, {}};
}

LiftSetup lowerLift(Kit kit)
{
    LiftSetup setup;
    setup.kit = std::move(kit);
    setup.policy = progression::Policy::defaultsFor(setup.unit);
    return setup;
}

Exposure exposureOf(const std::vector<Work>& sets, int pain)
{
    Exposure exposure;
    exposure.pain = pain;
    for (const Work& work : sets) {
        SetRecord record;
        record.load = kilos(work.load);
        record.amount = work.reps;
        record.rir = static_cast<std::int16_t>(work.rir);
        record.restSeconds = static_cast<std::int16_t>(work.rest);
        record.steadiness = work.steadiness;
        exposure.sets.push_back(record);
    }
    return exposure;
}

Rehearsal goodRehearsal()
{
    Rehearsal rehearsal;
    rehearsal.criteria = {{"depth", progression::Verdict::Met}, {"heels", progression::Verdict::Met}};
    rehearsal.reps = base::Reps(5);
    rehearsal.pauses = {1000, 1000, 1000};
    return rehearsal;
}

LiftOnTest::LiftOnTest(LiftSetup setup) : m_machine(LiftMachine::create(std::move(setup)).value()), m_day(*base::Date::parse("2026-03-02")) {}

std::string LiftOnTest::apply(const EventBody& body)
{
    if (const auto fault = m_machine.faultOf(body)) {
        throw std::invalid_argument(fault->field + " " + fault->reason);
    }
    const RuleList rules = m_machine.apply(m_day, body);
    m_day = m_day + 2;
    return namesOf(rules);
}

std::string LiftOnTest::work(int sets, double load, int reps, int rir)
{
    return work(std::vector<Work>(static_cast<std::size_t>(sets), Work{load, reps, rir}));
}

std::string LiftOnTest::set(CoachSet set)
{
    set.reason = "because";
    return apply(set);
}

std::string LiftOnTest::set(Stage stage, double load)
{
    CoachSet event;
    event.stage = stage;
    event.load = kilos(load);
    return set(event);
}

std::string namesOf(const RuleList& rules)
{
    std::string names;
    for (const progression::Rule rule : rules) {
        names.append(names.empty() ? "" : " ").append(progression::nameOf(rule));
    }
    return names;
}

}  // namespace chalk::test
