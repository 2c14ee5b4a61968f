#pragma once

#include "core/base/load.h"
#include "core/base/quantity.h"
#include "core/lifts/equipment.h"
#include "core/progression/lift_state.h"

namespace chalk::progression {

/// Where the next step up from a load leads.
struct Step {
    enum class Kind : std::uint8_t { Plain, Bridge, EquipmentLimit };
    Kind kind = Kind::EquipmentLimit;
    base::Load load;  ///< the load above: of a plain step, or the far side of a bridge; the same load at the limit
};

/// The moves between the loads that a lift's equipment can give. Percentages are of the effective load, load + body share ×
/// body mass, and are compared in whole numbers, so that nothing rounds on a border.
class LoadSteps {
public:
    /// Keeps references to both.
    LoadSteps(const LiftSetup& setup, const Kit& kit, const lifts::LoadTable& loads);

    /// The effective load in hundred-thousandths of the lift's unit.
    [[nodiscard]] std::int64_t effective(base::Load load) const;

    /// The heaviest available load y, not above x, with E(y) ≤ E(x) × (1 − fraction); the lightest available where none is.
    [[nodiscard]] base::Load cut(base::Load x, base::Milli fraction) const;

    /// The heaviest available load within the region's step above x; else the next one above where it is inside the jump cap;
    /// else a bridge to it.
    [[nodiscard]] Step stepUp(base::Load x) const;

    /// The heaviest available load that should give `2m / 2` repetitions to failure to somebody who had `capacity` in them at x;
    /// the lightest available where even that is too heavy. Epley's equation (Epley B., Poundage Chart, 1985): a load that is
    /// good for r repetitions is the one-repetition maximum / (1 + r / 30). Capacities above 20 count as 20.
    [[nodiscard]] base::Load forCapacity(base::Load x, int capacity, int twiceWanted) const;

    /// The effective load to the nearest hundredth, a half away from zero.
    [[nodiscard]] base::Load effectiveLoad(base::Load load) const;

    /// The heaviest available load y with E(y) ≤ single × share; the lightest available where none is. `single` is an effective load.
    [[nodiscard]] base::Load atShare(base::Load single, base::Milli share) const;

    /// The start load of the kit; the lightest available where it has none.
    [[nodiscard]] base::Load startLoad() const;

    [[nodiscard]] const lifts::LoadTable& loads() const { return m_loads; }

private:
    /// The heaviest available load with E(y) × denominator ≤ limit; the lightest available where none is.
    [[nodiscard]] base::Load heaviestWithin(std::int64_t limit, std::int64_t denominator) const;

    const LiftSetup& m_setup;
    const Kit& m_kit;
    const lifts::LoadTable& m_loads;
    std::int64_t m_bodyPart;  ///< body share × body mass, in hundred-thousandths
};

}  // namespace chalk::progression
