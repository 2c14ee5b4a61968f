#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <span>
#include <string_view>

namespace chalk::progression {

/// The rules of progression, each by the name that decisions carry.
enum class Rule : std::uint8_t {
    P1, P2, P3, P4, P5,
    V1,
    K1, K2, K3,
    C1, C2, C3,
    U1, U2, U3,
    B1, B2, B3, B4, B5, B6, B7,
    A2,
    L1, L2, L3, L4, L5, L6, L7, L8,
    R1, R2, R3, R4, R5,
    S1, S2, S3, S4,
    T1, T2, T3, T4,
    G1, G2, G3,
    O1,
    X1,
    D1, D2, D3, D4,
    N1, N2, N3, N4, N5
};

inline constexpr int kRuleCount = static_cast<int>(Rule::N5) + 1;

/// `P-1`.
[[nodiscard]] std::string_view nameOf(Rule rule);
/// Nothing where the name is unknown.
[[nodiscard]] std::optional<Rule> ruleOf(std::string_view name);

/// The rules that fired for one event, in the order in which they did. At most kMost; no event fires more.
class RuleList {
public:
    static constexpr std::size_t kMost = 6;

    constexpr RuleList() = default;
    constexpr void add(Rule rule)
    {
        if (m_count < kMost) {
            m_rules[m_count++] = rule;
        }
    }
    [[nodiscard]] constexpr std::span<const Rule> rules() const { return {m_rules.data(), m_count}; }
    [[nodiscard]] constexpr bool isEmpty() const { return m_count == 0; }
    [[nodiscard]] constexpr bool has(Rule rule) const
    {
        for (const Rule r : rules()) {
            if (r == rule) {
                return true;
            }
        }
        return false;
    }
    [[nodiscard]] constexpr auto begin() const { return rules().begin(); }
    [[nodiscard]] constexpr auto end() const { return rules().end(); }
    bool operator==(const RuleList& other) const;

private:
    std::array<Rule, kMost> m_rules{};
    std::size_t m_count = 0;
};

/// What a lift carries until a rule takes it away.
enum class Flag : std::uint8_t { NeedsLighterOption, Rescreen, Stalled };

/// A set of flags.
class Flags {
public:
    constexpr Flags() = default;
    [[nodiscard]] static constexpr Flags fromBits(std::uint8_t bits) { Flags flags; flags.m_bits = bits & 7U; return flags; }
    constexpr void raise(Flag flag) { m_bits |= bit(flag); }
    constexpr void clear(Flag flag) { m_bits &= static_cast<std::uint8_t>(~bit(flag)); }
    constexpr void clearAll() { m_bits = 0; }
    [[nodiscard]] constexpr bool has(Flag flag) const { return (m_bits & bit(flag)) != 0; }
    [[nodiscard]] constexpr bool isEmpty() const { return m_bits == 0; }
    [[nodiscard]] constexpr std::uint8_t bits() const { return m_bits; }
    constexpr bool operator==(const Flags&) const = default;

private:
    static constexpr std::uint8_t bit(Flag flag) { return static_cast<std::uint8_t>(1U << static_cast<unsigned>(flag)); }
    std::uint8_t m_bits = 0;
};

inline constexpr std::array kFlags{Flag::NeedsLighterOption, Flag::Rescreen, Flag::Stalled};
/// `needs_lighter_option`, `rescreen`, `stalled`.
[[nodiscard]] std::string_view keyOf(Flag flag);

}  // namespace chalk::progression
