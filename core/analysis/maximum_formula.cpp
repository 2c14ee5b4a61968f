#include "core/analysis/maximum_formula.h"

#include "core/base/enum_keys.h"

#include <cmath>

namespace chalk::analysis {

namespace {

constexpr std::array<std::string_view, 7> kFormulaKeys{"epley", "brzycki", "lander", "lombardi", "mayhew", "oconner", "wathan"};

/// An equation of the form 100 w / (floor + span × e^(-decay × r)).
struct Decay {
    double floor;
    double span;
    double perRep;

    [[nodiscard]] double share(double reps) const { return (floor + span * std::exp(-perRep * reps)) / 100; }
    [[nodiscard]] std::optional<double> reps(double share) const
    {
        const double left = (100 * share - floor) / span;
        return left > 0 ? std::optional(-std::log(left) / perRep) : std::nullopt;
    }
};

constexpr Decay kMayhew{52.2, 41.9, 0.055};
constexpr Decay kWathan{48.8, 53.8, 0.075};

}  // namespace

std::string_view keyOf(Formula formula)
{
    return base::keyIn(kFormulaKeys, formula);
}

std::optional<Formula> formulaOf(std::string_view key)
{
    return base::enumOf<Formula>(kFormulaKeys, key);
}

int highestReps(Formula formula)
{
    switch (formula) {
    case Formula::Epley:
    case Formula::Brzycki:
    case Formula::Lander:
    case Formula::OConner:
        return 10;
    case Formula::Lombardi:
    case Formula::Mayhew:
    case Formula::Wathan:
        return 12;
    }
    return 0;
}

std::optional<int> poleOf(Formula formula)
{
    switch (formula) {
    case Formula::Brzycki:
        return 37;
    case Formula::Lander:
        return 38;
    case Formula::Epley:
    case Formula::Lombardi:
    case Formula::Mayhew:
    case Formula::OConner:
    case Formula::Wathan:
        return std::nullopt;
    }
    return std::nullopt;
}

double publishedShare(double reps, Formula formula)
{
    switch (formula) {
    case Formula::Epley:
        return 1 / (1 + reps / 30);
    case Formula::Brzycki:
        return 1.0278 - 0.0278 * reps;
    case Formula::Lander:
        return (101.3 - 2.67123 * reps) / 100;
    case Formula::Lombardi:
        return std::pow(reps, -0.10);
    case Formula::Mayhew:
        return kMayhew.share(reps);
    case Formula::OConner:
        return 1 / (1 + 0.025 * reps);
    case Formula::Wathan:
        return kWathan.share(reps);
    }
    return 0;
}

std::optional<double> publishedReps(double share, Formula formula)
{
    switch (formula) {
    case Formula::Epley:
        return 30 * (1 / share - 1);
    case Formula::Brzycki:
        return (1.0278 - share) / 0.0278;
    case Formula::Lander:
        return (101.3 - 100 * share) / 2.67123;
    case Formula::Lombardi:
        return std::pow(share, -10);
    case Formula::Mayhew:
        return kMayhew.reps(share);
    case Formula::OConner:
        return 40 * (1 / share - 1);
    case Formula::Wathan:
        return kWathan.reps(share);
    }
    return std::nullopt;
}

}  // namespace chalk::analysis
