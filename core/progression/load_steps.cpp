#include "core/progression/load_steps.h"

#include <algorithm>
#include <limits>

namespace chalk::progression {

namespace {

using base::Load;

constexpr std::int64_t kEffectivePerCenti = 1000;
constexpr int kMostCapacity = 20;

std::int64_t floorDivide(std::int64_t a, std::int64_t b)
{
    const std::int64_t quotient = a / b;
    return a % b != 0 && (a < 0) != (b < 0) ? quotient - 1 : quotient;
}

}  // namespace

LoadSteps::LoadSteps(const LiftSetup& setup, const Kit& kit, const lifts::LoadTable& loads)
    : m_setup(setup),
      m_kit(kit),
      m_loads(loads),
      m_bodyPart(std::int64_t{kit.bodyShare.value()} * setup.bodyMass.value_or(Load()).centi())
{
}

std::int64_t LoadSteps::effective(Load load) const
{
    return load.centi() * kEffectivePerCenti + m_bodyPart;
}

Load LoadSteps::heaviestWithin(std::int64_t limit, std::int64_t denominator) const
{
    const std::int64_t centi = floorDivide(floorDivide(limit, denominator) - m_bodyPart, kEffectivePerCenti);
    using Limits = std::numeric_limits<std::int32_t>;
    const auto clamped = std::clamp<std::int64_t>(centi, Limits::min(), Limits::max());
    return m_loads.atMost(Load::fromCenti(static_cast<std::int32_t>(clamped)));
}

Load LoadSteps::cut(Load x, base::Milli fraction) const
{
    return std::min(heaviestWithin(effective(x) * (1000 - fraction.value()), 1000), m_loads.atMost(x));
}

Step LoadSteps::stepUp(Load x) const
{
    const auto above = m_loads.nextAbove(x);
    if (!above) {
        return {Step::Kind::EquipmentLimit, x};
    }
    const Load step = m_setup.region == lifts::Region::Upper ? m_setup.policy.stepUpper : m_setup.policy.stepLower;
    if (const Load wanted = x + step; *above <= wanted) {
        return {Step::Kind::Plain, m_loads.atMost(wanted)};
    }
    const bool isInsideCap = effective(*above) * 1000 <= effective(x) * (1000 + m_setup.policy.jumpCap.value());
    return {isInsideCap ? Step::Kind::Plain : Step::Kind::Bridge, *above};
}

Load LoadSteps::forCapacity(Load x, int capacity, int twiceWanted) const
{
    return heaviestWithin(effective(x) * 2 * (30 + std::min(capacity, kMostCapacity)), 60 + twiceWanted);
}

Load LoadSteps::effectiveLoad(Load load) const
{
    const std::int64_t thousandths = effective(load);
    const std::int64_t half = thousandths < 0 ? -kEffectivePerCenti / 2 : kEffectivePerCenti / 2;
    return Load::fromCenti(static_cast<std::int32_t>((thousandths + half) / kEffectivePerCenti));
}

Load LoadSteps::atShare(Load single, base::Milli share) const
{
    return heaviestWithin(std::int64_t{single.centi()} * kEffectivePerCenti * share.value(), 1000);
}

Load LoadSteps::startLoad() const
{
    return m_kit.startLoad.value_or(m_loads.lightest());
}

}  // namespace chalk::progression
