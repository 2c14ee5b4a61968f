#pragma once

#include <cstdint>

namespace chalk::simulation {

/// A small source of chance, the same on every machine for the same seed (SplitMix64; Steele, Lea and Flood 2014).
class Chance {
public:
    explicit Chance(std::uint64_t seed) : m_state(seed) {}

    std::uint64_t next()
    {
        m_state += 0x9E3779B97F4A7C15U;
        std::uint64_t z = m_state;
        z = (z ^ (z >> 30U)) * 0xBF58476D1CE4E5B9U;
        z = (z ^ (z >> 27U)) * 0x94D049BB133111EBU;
        return z ^ (z >> 31U);
    }
    /// 0 to n − 1.
    int below(int n) { return static_cast<int>(next() % static_cast<std::uint64_t>(n)); }
    /// 0 to just below 1.
    double unit() { return static_cast<double>(next() >> 11U) * 0x1p-53; }
    /// True `percent` times in a hundred.
    bool happens(int percent) { return below(100) < percent; }
    /// About normal, mean 0, deviation 1: the sum of twelve uniform numbers less six, exact arithmetic everywhere.
    double normal()
    {
        double sum = -6;
        for (int i = 0; i < 12; ++i) {
            sum += unit();
        }
        return sum;
    }

private:
    std::uint64_t m_state;
};

}  // namespace chalk::simulation
