#pragma once

#include <cstdint>

namespace chalk::week {

/// Chance for a search: quick, and the same for the same seed (xorshift64*; Vigna 2016).
class Draw {
public:
    explicit Draw(std::uint64_t seed) : m_state((seed + 1) * 0x9E3779B97F4A7C15U | 1U)
    {
        for (int i = 0; i < 8; ++i) {
            next();
        }
    }

    std::uint32_t next()
    {
        m_state ^= m_state >> 12U;
        m_state ^= m_state << 25U;
        m_state ^= m_state >> 27U;
        return static_cast<std::uint32_t>((m_state * 0x2545F4914F6CDD1DU) >> 32U);
    }
    /// 0 to n − 1; n is at least 1.
    int below(int n) { return static_cast<int>((std::uint64_t{next()} * static_cast<std::uint64_t>(n)) >> 32U); }
    /// Above 0, at most 1.
    double unit() { return (static_cast<double>(next()) + 1.0) * 0x1p-32; }
    /// True `perMille` times in a thousand.
    bool happens(int perMille) { return below(1000) < perMille; }

private:
    std::uint64_t m_state;
};

}  // namespace chalk::week
