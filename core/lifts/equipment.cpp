#include "core/lifts/equipment.h"

#include <algorithm>
#include <limits>

#include <fmt/core.h>

namespace chalk::lifts {

namespace {

using base::Load;
using Loads = tl::expected<std::vector<Load>, EquipmentFault>;

tl::unexpected<EquipmentFault> fault(std::string field, std::string reason)
{
    return tl::make_unexpected(EquipmentFault{std::move(field), std::move(reason)});
}

bool isInRange(Load load)
{
    return load.centi() >= -kMaxLoadCenti && load.centi() <= kMaxLoadCenti;
}

Loads loadsOf(const Barbell& barbell)
{
    if (barbell.bar.centi() < 0 || !isInRange(barbell.bar)) {
        return fault("bar", "must be 0 to 5000");
    }
    std::int64_t heaviest = barbell.bar.centi();
    for (std::size_t i = 0; i < barbell.pairs.size(); ++i) {
        const PlatePair& pair = barbell.pairs[i];
        if (pair.plate.centi() <= 0 || !isInRange(pair.plate) || pair.pairs < 0 || pair.pairs > kMaxPairs) {
            return fault(fmt::format("pairs[{}]", i), "needs a plate above 0 and 0 to 50 pairs of it");
        }
        heaviest += 2LL * pair.plate.centi() * pair.pairs;
    }
    if (heaviest > kMaxLoadCenti) {
        return fault("pairs", "add up to more than 5000 with the bar");
    }
    std::vector<bool> canReach(static_cast<std::size_t>(heaviest) + 1, false);
    canReach[static_cast<std::size_t>(barbell.bar.centi())] = true;
    for (const PlatePair& pair : barbell.pairs) {
        const auto step = static_cast<std::size_t>(2 * pair.plate.centi());
        for (int n = 0; n < pair.pairs; ++n) {  // from the top down, so that this pair counts once a round
            for (std::size_t load = canReach.size(); load-- > step;) {
                canReach[load] = canReach[load] || canReach[load - step];
            }
        }
    }
    std::vector<Load> loads;
    for (std::size_t load = 0; load < canReach.size(); ++load) {
        if (canReach[load]) {
            loads.push_back(Load::fromCenti(static_cast<std::int32_t>(load)));
        }
    }
    return loads;
}

Loads loadsOf(const FixedSet& fixed)
{
    for (std::size_t i = 0; i < fixed.loads.size(); ++i) {
        if (fixed.loads[i].centi() < 0 || !isInRange(fixed.loads[i])) {
            return fault(fmt::format("loads[{}]", i), "must be 0 to 5000");
        }
    }
    return fixed.loads;
}

Loads loadsOf(const Stack& stack)
{
    if (stack.from.centi() < 0 || !isInRange(stack.from)) {
        return fault("from", "must be 0 to 5000");
    }
    if (stack.to < stack.from || !isInRange(stack.to)) {
        return fault("to", "must not be below from, and at most 5000");
    }
    if (stack.step.centi() <= 0 || !isInRange(stack.step)) {
        return fault("step", "must be above 0");
    }
    std::vector<Load> loads;
    for (Load load = stack.from; load <= stack.to; load += stack.step) {
        loads.push_back(load);
    }
    return loads;
}

Loads loadsOf(const BodyAdded& body)
{
    for (std::size_t i = 0; i < body.loads.size(); ++i) {
        if (!isInRange(body.loads[i])) {
            return fault(fmt::format("loads[{}]", i), "must be -5000 to 5000");
        }
    }
    if (std::find(body.loads.begin(), body.loads.end(), Load()) == body.loads.end()) {
        return fault("loads", "must include 0");
    }
    return body.loads;
}

}  // namespace

tl::expected<LoadTable, EquipmentFault> LoadTable::of(const Equipment& equipment)
{
    Loads loads = std::visit([](const auto& kind) { return loadsOf(kind); }, equipment);
    if (!loads) {
        return tl::make_unexpected(loads.error());
    }
    if (loads->empty()) {
        return fault("loads", "must name at least one load");
    }
    std::sort(loads->begin(), loads->end());
    loads->erase(std::unique(loads->begin(), loads->end()), loads->end());
    return LoadTable(std::move(*loads));
}

bool LoadTable::canGive(Load load) const
{
    return std::binary_search(m_loads.begin(), m_loads.end(), load);
}

Load LoadTable::atMost(Load load) const
{
    const auto above = std::upper_bound(m_loads.begin(), m_loads.end(), load);
    return above == m_loads.begin() ? m_loads.front() : *std::prev(above);
}

std::optional<Load> LoadTable::nextAbove(Load load) const
{
    const auto above = std::upper_bound(m_loads.begin(), m_loads.end(), load);
    return above == m_loads.end() ? std::nullopt : std::optional(*above);
}

std::optional<Load> LoadTable::nextBelow(Load load) const
{
    const auto notBelow = std::lower_bound(m_loads.begin(), m_loads.end(), load);
    return notBelow == m_loads.begin() ? std::nullopt : std::optional(*std::prev(notBelow));
}

std::optional<std::vector<Load>> platesPerSide(const Barbell& barbell, Load load)
{
    const std::int32_t both = (load - barbell.bar).centi();
    if (both < 0 || both % 2 != 0) {
        return std::nullopt;
    }
    std::vector<PlatePair> pairs = barbell.pairs;
    std::sort(pairs.begin(), pairs.end(), [](const PlatePair& a, const PlatePair& b) { return a.plate > b.plate; });

    // fewest[k][s]: the fewest plates of the kinds from k on that make s, so that the heaviest are taken first.
    const auto side = static_cast<std::size_t>(both / 2);
    constexpr int kCannot = std::numeric_limits<int>::max() / 2;
    std::vector<std::vector<int>> fewest(pairs.size() + 1, std::vector<int>(side + 1, kCannot));
    fewest[pairs.size()][0] = 0;
    for (std::size_t k = pairs.size(); k-- > 0;) {
        const auto plate = static_cast<std::size_t>(pairs[k].plate.centi());
        for (std::size_t s = 0; s <= side; ++s) {
            for (std::size_t n = 0; n <= static_cast<std::size_t>(pairs[k].pairs) && n * plate <= s; ++n) {
                fewest[k][s] = std::min(fewest[k][s], fewest[k + 1][s - n * plate] + static_cast<int>(n));
            }
        }
    }
    if (fewest[0][side] >= kCannot) {
        return std::nullopt;
    }
    std::vector<Load> plates;
    std::size_t left = side;
    for (std::size_t k = 0; k < pairs.size(); ++k) {
        const auto plate = static_cast<std::size_t>(pairs[k].plate.centi());
        auto n = std::min<std::size_t>(static_cast<std::size_t>(pairs[k].pairs), left / plate);
        while (fewest[k + 1][left - n * plate] + static_cast<int>(n) != fewest[k][left]) {
            --n;
        }
        plates.insert(plates.end(), n, pairs[k].plate);
        left -= n * plate;
    }
    return plates;
}

}  // namespace chalk::lifts
