#pragma once

#include "core/base/load.h"

#include <optional>
#include <span>
#include <string>
#include <variant>
#include <vector>

#include <tl/expected.hpp>

namespace chalk::lifts {

/// A plate and how many pairs of it are on hand.
struct PlatePair {
    base::Load plate;  ///< the mass of one plate; above 0
    int pairs = 0;     ///< 0 to kMaxPairs

    bool operator==(const PlatePair&) const = default;
};

/// A bar with plates: bar + 2 × every subset of the pairs on hand.
struct Barbell {
    base::Load bar;
    std::vector<PlatePair> pairs;

    bool operator==(const Barbell&) const = default;
};

/// Things of a fixed mass (dumbbells, kettlebells, bags): the mass of one.
struct FixedSet {
    std::vector<base::Load> loads;

    bool operator==(const FixedSet&) const = default;
};

/// A pin-loaded stack.
struct Stack {
    base::Load from;
    base::Load to;
    base::Load step;

    bool operator==(const Stack&) const = default;
};

/// The body itself and what is added to it, 0 included; assistance is negative.
struct BodyAdded {
    std::vector<base::Load> loads;

    bool operator==(const BodyAdded&) const = default;
};

using Equipment = std::variant<Barbell, FixedSet, Stack, BodyAdded>;

/// The most pairs of one plate that a description may name.
inline constexpr int kMaxPairs = 50;
/// The heaviest load that a description may reach, in hundredths (5,000 kg or lb).
inline constexpr std::int32_t kMaxLoadCenti = 500'000;

/// What is wrong with a description of equipment: the field (`pairs[2]`, `step` …) and why.
struct EquipmentFault {
    std::string field;
    std::string reason;
};

/// The loads that a piece of equipment can really give, lightest first, no two the same. Never empty.
class LoadTable {
public:
    /// Fails where the description is empty, contradicts itself or leaves the ranges above.
    [[nodiscard]] static tl::expected<LoadTable, EquipmentFault> of(const Equipment& equipment);

    [[nodiscard]] std::span<const base::Load> loads() const { return m_loads; }
    [[nodiscard]] base::Load lightest() const { return m_loads.front(); }
    [[nodiscard]] base::Load heaviest() const { return m_loads.back(); }
    [[nodiscard]] bool canGive(base::Load load) const;
    /// The heaviest available load not above `load`; where none is, the lightest available.
    [[nodiscard]] base::Load atMost(base::Load load) const;
    /// The lightest available load above `load`; nothing where `load` is the equipment's limit.
    [[nodiscard]] std::optional<base::Load> nextAbove(base::Load load) const;
    /// The heaviest available load below `load`; nothing where there is none.
    [[nodiscard]] std::optional<base::Load> nextBelow(base::Load load) const;

private:
    explicit LoadTable(std::vector<base::Load> sorted) : m_loads(std::move(sorted)) {}
    std::vector<base::Load> m_loads;
};

/// The plates on one side of the bar for `load`, heaviest first, by the fewest plates; nothing where the bar cannot
/// carry that load with the pairs on hand. Empty for the bare bar. The description must be one that LoadTable::of takes.
[[nodiscard]] std::optional<std::vector<base::Load>> platesPerSide(const Barbell& barbell, base::Load load);

}  // namespace chalk::lifts
