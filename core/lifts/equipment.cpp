#include "core/lifts/equipment.h"

#include <algorithm>
#include <limits>
#include <numeric>

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

/// The largest mass, in hundredths, that every plate is a whole number of; 1 where there are no plates.
std::int32_t commonUnit(const std::vector<PlatePair>& pairs)
{
    std::int32_t unit = 0;
    for (const PlatePair& pair : pairs) {
        unit = std::gcd(unit, pair.plate.centi());
    }
    return std::max(unit, 1);
}

/// A plate in units, and how many of it one side can take.
struct PlateCount {
    std::size_t plate = 1;
    std::size_t count = 0;
};

std::vector<PlateCount> countsOf(const std::vector<PlatePair>& pairs, std::int32_t unit)
{
    std::vector<PlateCount> counts;
    for (const PlatePair& pair : pairs) {
        counts.push_back({static_cast<std::size_t>(pair.plate.centi() / unit), static_cast<std::size_t>(pair.pairs)});
    }
    return counts;
}

/// For each number of units up to `most`: whether some of the plates weigh just that.
std::vector<bool> reachableSums(const std::vector<PlateCount>& kinds, std::size_t most)
{
    std::vector<bool> canReach(most + 1, false);
    canReach[0] = true;
    std::vector<std::size_t> used(most + 1);  // how many plates of the present kind a sum took
    for (const auto& [plate, count] : kinds) {
        std::fill(used.begin(), used.end(), 0U);
        for (std::size_t sum = plate; sum <= most; ++sum) {
            if (!canReach[sum] && canReach[sum - plate] && used[sum - plate] < count) {
                canReach[sum] = true;
                used[sum] = used[sum - plate] + 1;
            }
        }
    }
    return canReach;
}

constexpr int kCannotBeMade = std::numeric_limits<int>::max() / 2;

/// fewest[k][s]: the fewest plates of the kinds from k on that make s units.
std::vector<std::vector<int>> fewestPlates(const std::vector<PlateCount>& kinds, std::size_t most)
{
    std::vector<std::vector<int>> fewest(kinds.size() + 1, std::vector<int>(most + 1, kCannotBeMade));
    fewest[kinds.size()][0] = 0;
    for (std::size_t k = kinds.size(); k-- > 0;) {
        for (std::size_t s = 0; s <= most; ++s) {
            for (std::size_t n = 0; n <= kinds[k].count && n * kinds[k].plate <= s; ++n) {
                fewest[k][s] = std::min(fewest[k][s], fewest[k + 1][s - n * kinds[k].plate] + static_cast<int>(n));
            }
        }
    }
    return fewest;
}

/// The mass of all plates of one side, in hundredths.
std::int64_t everyPlate(const std::vector<PlatePair>& pairs)
{
    std::int64_t side = 0;
    for (const PlatePair& pair : pairs) {
        side += std::int64_t{pair.plate.centi()} * pair.pairs;
    }
    return side;
}

Loads loadsOf(const Barbell& barbell)
{
    if (barbell.bar.centi() < 0 || !isInRange(barbell.bar)) {
        return fault("bar", "must be 0 to 5000");
    }
    for (std::size_t i = 0; i < barbell.pairs.size(); ++i) {
        const PlatePair& pair = barbell.pairs[i];
        if (pair.plate.centi() <= 0 || !isInRange(pair.plate) || pair.pairs < 0 || pair.pairs > kMaxPairs) {
            return fault(fmt::format("pairs[{}]", i), "needs a plate above 0 and 0 to 50 pairs of it");
        }
    }
    const std::int64_t side = everyPlate(barbell.pairs);
    if (barbell.bar.centi() + 2 * side > kMaxLoadCenti) {
        return fault("pairs", "add up to more than 5000 with the bar");
    }
    const std::int32_t unit = commonUnit(barbell.pairs);
    const std::vector<bool> canReach = reachableSums(countsOf(barbell.pairs, unit), static_cast<std::size_t>(side / unit));
    std::vector<Load> loads;
    for (std::size_t sum = 0; sum < canReach.size(); ++sum) {
        if (canReach[sum]) {
            loads.push_back(barbell.bar + Load::fromCenti(2 * unit * static_cast<std::int32_t>(sum)));
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
    const std::int64_t both = std::int64_t{load.centi()} - barbell.bar.centi();
    const std::int32_t unit = commonUnit(barbell.pairs);
    if (both < 0 || both > 2 * everyPlate(barbell.pairs) || both % (2 * unit) != 0) {
        return std::nullopt;
    }
    std::vector<PlateCount> kinds = countsOf(barbell.pairs, unit);
    std::sort(kinds.begin(), kinds.end(), [](const PlateCount& a, const PlateCount& b) { return a.plate > b.plate; });
    auto left = static_cast<std::size_t>(both / 2 / unit);
    const auto fewest = fewestPlates(kinds, left);
    if (fewest[0][left] >= kCannotBeMade) {
        return std::nullopt;
    }
    std::vector<Load> plates;
    for (std::size_t k = 0; k < kinds.size(); ++k) {
        const std::size_t plate = kinds[k].plate;
        auto n = std::min(kinds[k].count, left / plate);
        while (fewest[k + 1][left - n * plate] + static_cast<int>(n) != fewest[k][left]) {
            --n;
        }
        plates.insert(plates.end(), n, Load::fromCenti(static_cast<std::int32_t>(plate) * unit));
        left -= n * plate;
    }
    return plates;
}

}  // namespace chalk::lifts
