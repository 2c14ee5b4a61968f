#pragma once

#include <cstdint>
#include <optional>
#include <string_view>

namespace chalk::clients {

/// How hard the client means to train: light is up to 39 % of the heart-rate reserve, moderate 40 to 59 %, vigorous from 60 %
/// (ACSM, in Riebe et al. 2015).
enum class Intensity : std::uint8_t { Light, Moderate, Vigorous };

/// What the preparticipation algorithm asks for.
struct ScreeningFacts {
    bool isRegularExerciser = false;   ///< 30 min or more of at least moderate exercise, 3 days a week, for 3 months
    bool hasKnownDisease = false;      ///< cardiovascular, metabolic or renal
    bool hasSignsOrSymptoms = false;   ///< that suggest such a disease
    Intensity intended = Intensity::Moderate;

    bool operator==(const ScreeningFacts&) const = default;
};

/// What the algorithm says.
enum class ScreeningAdvice : std::uint8_t {
    StartLightly,          ///< clearance is not necessary: light to moderate first, then on
    ContinueOrProgress,    ///< not necessary: go on as before, or on from there
    Continue,              ///< not necessary: go on as before
    ClearBeforeStarting,   ///< clearance is recommended before starting
    ClearThenStartLightly, ///< the same; afterwards light to moderate first
    ClearBeforeVigorous,   ///< clearance is recommended before vigorous exercise
    StopAndClear           ///< stop, and seek clearance
};

/// The preparticipation algorithm, all 24 cases. Source: Riebe D. et al. 2015, Med Sci Sports Exerc 47(11):2473-2479.
[[nodiscard]] ScreeningAdvice adviceFor(const ScreeningFacts& facts);

/// Whether nothing loaded is to be done until a letter is on file.
[[nodiscard]] bool isClearanceAdvised(ScreeningAdvice advice);

[[nodiscard]] std::string_view keyOf(Intensity intensity);
[[nodiscard]] std::string_view keyOf(ScreeningAdvice advice);
/// Nothing where the key is unknown.
[[nodiscard]] std::optional<Intensity> intensityOf(std::string_view key);

}  // namespace chalk::clients
