#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string_view>

namespace chalk::analysis {

/// Published equations between a load, the repetitions to failure with it and the load of a single. w is the load, r the repetitions:
/// Epley (Epley B., Poundage Chart, 1985): w (1 + r / 30). Brzycki (Brzycki M. 1993, JOPERD 64(1):88-90): w / (1.0278 - 0.0278 r).
/// Lander (Lander J. 1985, NSCA Journal 6(6):60-61): 100 w / (101.3 - 2.67123 r). Lombardi (Lombardi V.P., Beginning Weight Training,
/// 1989): w r^0.10. Mayhew (Mayhew J.L. et al. 1992, J Appl Sport Sci Res 6(4):200-206): 100 w / (52.2 + 41.9 e^(-0.055 r)).
/// O'Conner (O'Conner B. et al., Weight Training Today, 1989): w (1 + 0.025 r). Wathan (Wathen D., in Baechle (ed.), Essentials of
/// Strength Training and Conditioning, 1994, 435-439): 100 w / (48.8 + 53.8 e^(-0.075 r)).
enum class Formula : std::uint8_t { Epley, Brzycki, Lander, Lombardi, Mayhew, OConner, Wathan };

inline constexpr std::array kFormulas{Formula::Epley,  Formula::Brzycki, Formula::Lander, Formula::Lombardi,
                                      Formula::Mayhew, Formula::OConner, Formula::Wathan};

/// `epley`, `brzycki`, `lander`, `lombardi`, `mayhew`, `oconner`, `wathan`.
[[nodiscard]] std::string_view keyOf(Formula formula);
/// Nothing where the key is unknown.
[[nodiscard]] std::optional<Formula> formulaOf(std::string_view key);

/// The most repetitions that an estimate by the formula should be used for: 10 for Epley, Brzycki, Lander and O'Conner, which are linear
/// in r (Reynolds J.M. et al. 2006, J Strength Cond Res 20:584-592: no more than 10); 12 for Lombardi, Mayhew and Wathan (common practice).
[[nodiscard]] int highestReps(Formula formula);

/// The first whole number of repetitions at or past the formula's pole: 37 for Brzycki, 38 for Lander; nothing where it has none.
[[nodiscard]] std::optional<int> poleOf(Formula formula);

/// The share of the single that a load for `reps` repetitions is, by the equation as printed: 0.75 is 75 per cent. One repetition is not
/// treated apart, so only Brzycki and Lombardi give 1 there. `reps` above 0; 0 or less comes out past a pole.
[[nodiscard]] double publishedShare(double reps, Formula formula);

/// The repetitions that a share of the single allows by the equation as printed; below 1 for some shares near 1. `share` above 0. Nothing
/// where the equation allows any number: shares up to 0.522 (Mayhew) and 0.488 (Wathan).
[[nodiscard]] std::optional<double> publishedReps(double share, Formula formula);

}  // namespace chalk::analysis
