#pragma once

#include "core/progression/event.h"
#include "core/progression/lift_state.h"

#include <span>
#include <string>
#include <vector>

#include <tl/expected.hpp>

namespace chalk::progression {

/// What a lift was set up with, or an event asked for, that cannot be.
struct LiftFault {
    std::string field;
    std::string reason;
};

/// The state machine of one lift: pure, and the same history always gives the same state.
class LiftMachine {
public:
    /// Fails where the equipment, the policy or the body mass make no sense, or the start load cannot be set up.
    [[nodiscard]] static tl::expected<LiftMachine, LiftFault> create(LiftSetup setup);
    /// Goes on from a state that this machine gave earlier, with the kit that was in use then.
    [[nodiscard]] static tl::expected<LiftMachine, LiftFault> resume(LiftSetup setup, Kit kit, LiftState state);

    /// Whether the event could be judged now; its fields are in range already (see event ranges in event.h), here it is
    /// about the equipment and the stage. Nothing where it can.
    [[nodiscard]] std::optional<LiftFault> faultOf(const EventBody& body) const;
    /// Judges an event, no earlier than any before it, and says which rules fired. The event has no fault.
    RuleList apply(base::Date date, const EventBody& body);

    /// What the lift is to do on `day`, no earlier than the last event; layoffs up to that day are applied.
    [[nodiscard]] Prescription prescriptionOn(base::Date day) const;
    /// The same lift as it would stand had no lighter week begun: what it prescribes is what is usual.
    [[nodiscard]] LiftMachine withoutLighterWeek() const;

    [[nodiscard]] const LiftState& state() const { return m_state; }
    [[nodiscard]] const LiftSetup& setup() const { return m_setup; }
    [[nodiscard]] const Kit& kit() const { return m_kit; }
    [[nodiscard]] const lifts::LoadTable& loads() const { return m_loads; }

private:
    LiftMachine(LiftSetup setup, Kit kit, lifts::LoadTable loads, LiftState state);

    LiftSetup m_setup;
    Kit m_kit;
    lifts::LoadTable m_loads;
    LiftState m_state;
};

/// One event's decision and what the lift was to do next after it.
struct Decision {
    std::size_t index = 0;  ///< of the event, in the order given
    base::Date date;
    RuleList rules;
    Prescription after;
};

/// A fault and the index of the event that it is in, if it is in one.
struct ReplayFault {
    std::optional<std::size_t> index;
    LiftFault fault;
};

/// Judges a whole history: by date, events of one day in the order given.
[[nodiscard]] tl::expected<std::vector<Decision>, ReplayFault> replay(LiftMachine& machine, std::span<const Event> events);

}  // namespace chalk::progression
