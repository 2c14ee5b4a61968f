#pragma once

#include "core/progression/lift_machine.h"

#include <cstdint>
#include <random>
#include <vector>

namespace chalk::bench {

/// One lift and everything that was done on it.
struct TrainingLife {
    progression::LiftSetup setup;
    std::vector<progression::Event> events;  ///< by date
    int exposures = 0;
};

/// Invents lives: people who mostly do what they are told, at times do less, feel pain, lose control, stay away or change
/// equipment. The same seed gives the same lives.
class TrainingLives {
public:
    explicit TrainingLives(std::uint32_t seed) : m_random(seed) {}

    /// A life of `exposures` exposures, each of ten sets of which some are warm-ups.
    [[nodiscard]] TrainingLife next(int exposures);

private:
    [[nodiscard]] int below(int n) { return static_cast<int>(m_random() % static_cast<std::uint32_t>(n)); }
    [[nodiscard]] bool isChance(int perMille) { return below(1000) < perMille; }
    [[nodiscard]] progression::LiftSetup someSetup();
    [[nodiscard]] progression::EventBody answer(const progression::LiftMachine& machine, const progression::Prescription& due);
    [[nodiscard]] progression::Exposure work(const progression::LiftMachine& machine, const progression::Prescription& due);
    [[nodiscard]] progression::Rehearsal rehearse();
    /// Three weeks of a plan from the week of `day` on, or the end of one.
    [[nodiscard]] progression::Block block(base::Date day);

    std::mt19937 m_random;
    int m_fresh = 14;  ///< repetitions to failure with hardly any load
};

}  // namespace chalk::bench
