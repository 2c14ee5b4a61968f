#include "core/clients/screening.h"

#include "core/base/enum_keys.h"

namespace chalk::clients {

namespace {

constexpr std::array<std::string_view, 3> kIntensityKeys{"light", "moderate", "vigorous"};
constexpr std::array<std::string_view, 7> kAdviceKeys{"start_lightly",           "continue_or_progress",     "continue",      "clear_before_starting",
                                                      "clear_then_start_lightly", "clear_before_vigorous", "stop_and_clear"};

ScreeningAdvice adviceForNewcomer(const ScreeningFacts& facts)
{
    if (facts.hasSignsOrSymptoms) {
        return ScreeningAdvice::ClearBeforeStarting;
    }
    return facts.hasKnownDisease ? ScreeningAdvice::ClearThenStartLightly : ScreeningAdvice::StartLightly;
}

ScreeningAdvice adviceForRegular(const ScreeningFacts& facts)
{
    if (facts.hasSignsOrSymptoms) {
        return ScreeningAdvice::StopAndClear;
    }
    if (!facts.hasKnownDisease) {
        return ScreeningAdvice::ContinueOrProgress;
    }
    return facts.intended == Intensity::Vigorous ? ScreeningAdvice::ClearBeforeVigorous : ScreeningAdvice::Continue;
}

}  // namespace

ScreeningAdvice adviceFor(const ScreeningFacts& facts)
{
    return facts.isRegularExerciser ? adviceForRegular(facts) : adviceForNewcomer(facts);
}

bool isClearanceAdvised(ScreeningAdvice advice)
{
    switch (advice) {
    case ScreeningAdvice::StartLightly:
    case ScreeningAdvice::ContinueOrProgress:
    case ScreeningAdvice::Continue:
        return false;
    case ScreeningAdvice::ClearBeforeStarting:
    case ScreeningAdvice::ClearThenStartLightly:
    case ScreeningAdvice::ClearBeforeVigorous:
    case ScreeningAdvice::StopAndClear:
        return true;
    }
    return true;
}

std::string_view keyOf(Intensity intensity)
{
    return base::keyIn(kIntensityKeys, intensity);
}

std::string_view keyOf(ScreeningAdvice advice)
{
    return base::keyIn(kAdviceKeys, advice);
}

std::optional<Intensity> intensityOf(std::string_view key)
{
    return base::enumOf<Intensity>(kIntensityKeys, key);
}

}  // namespace chalk::clients
