#pragma once

#include "core/base/quantity.h"

#include <cstdint>
#include <optional>
#include <string_view>
#include <vector>

namespace chalk::direction {

/// What a set is done for. The published ranges go by it.
enum class Aim : std::uint8_t {
    BasicStrength,  ///< the first weeks of a strength plan
    Strength,       ///< strength, and strength with power
    LightDay,       ///< a light or medium day of a main lift
    Muscle,         ///< hypertrophy
    Assistance,     ///< beside a main lift
    Upkeep          ///< lighter loads that keep strength up, local endurance
};

/// Both ends count.
struct NumberRange {
    int least = 0;
    int most = 0;

    bool operator==(const NumberRange&) const = default;
};

/// The published ranges of one aim. Shares in thousandths of the single, rests in seconds.
struct PublishedRange {
    NumberRange share;
    NumberRange reps;
    NumberRange sets;
    NumberRange rest;
    std::string_view shareSource;  ///< where the shares and repetitions are printed
    std::string_view setsSource;
    std::string_view restSource;
};

/// Sources are Haff and Triplett (eds.), Essentials of Strength Training and Conditioning, 4th ed. 2016: tables 21.2 (shares, sets and
/// repetitions of the phases of a year), 17.9 (hypertrophy and endurance), 17.11 (sets), 17.12 (rests), and the rule of chapter 17 that
/// assistance exercises are not loaded above what is good for 8 repetitions; light and medium days are 80 and 90 per cent of the heavy day's load
/// there, which of 80 to 95 per cent of the single makes 64 to 85.5. Rests between sets of hypertrophy are printed as 30 s to 1.5 min;
/// up to 3 min gave more with heavy lifts of several joints (Schoenfeld B. J. 2016, J Strength Cond Res 30:1805-1812), and so 3 min are inside.
/// The lower end of shares for assistance and upkeep, and the most repetitions of both, are common practice.
[[nodiscard]] PublishedRange publishedRange(Aim aim);

/// A number of a plan that the published ranges speak of.
enum class PlanFigure : std::uint8_t { Share, Reps, Sets, Rest };

/// A figure that lies outside of its published range.
struct Departure {
    PlanFigure figure = PlanFigure::Share;
    int value = 0;
    NumberRange range;
    std::string_view source;

    bool operator==(const Departure&) const = default;
};

/// The same sets again, at one share of the single.
struct SetScheme {
    base::Sets sets;
    base::Reps reps;
    base::Milli share;   ///< of the single, 1 to 1000
    base::Seconds rest;
    int reserve = 2;     ///< repetitions in reserve to stop at, 0 to 10

    bool operator==(const SetScheme&) const = default;
};

/// Which figures of a scheme leave the ranges of its aim, in the order share, repetitions, sets, rest. Empty where none does.
[[nodiscard]] std::vector<Departure> departuresOf(const SetScheme& scheme, Aim aim);

/// `basic_strength`, `strength`, `light_day`, `muscle`, `assistance`, `upkeep`.
[[nodiscard]] std::string_view keyOf(Aim aim);
[[nodiscard]] std::optional<Aim> aimOf(std::string_view key);

}  // namespace chalk::direction
