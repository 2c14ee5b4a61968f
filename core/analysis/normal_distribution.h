#pragma once

namespace chalk::analysis {

/// The chance that a standard normal variable is above `z`.
[[nodiscard]] double normalUpperTail(double z);

/// The z that a standard normal variable is above with the chance `tail`, 0 < tail < 1: 1.96 for 0.025. By Newton's steps on the tail, to the
/// last digits of a double for tails of 1e-300 to 1 - 1e-15. Not a number where `tail` is not in between 0 and 1.
[[nodiscard]] double normalUpperQuantile(double tail);

}  // namespace chalk::analysis
