#pragma once

namespace chalk::plateau {

/// How likely it is that a lift does not progress, as measured on simulated histories where 29 % of the judged check-ins were stalls.
struct Confidence {
    double isSlow = 0;     ///< that the true gain is below 0.5 % a week, 0 to 1: the one to show
    double isStopped = 0;  ///< that it has stopped, 0 to 1
};

/// By the two witnesses together, see Judgement. Linear between the nodes of a table, level beyond its ends.
[[nodiscard]] Confidence confidenceOf(double z, bool hasNewBest);

/// The share of stalls that `isStopped` takes for granted.
inline constexpr double kUsualStallShare = 0.29;

/// `isStopped` where another share of the lifts, more than 0 and less than 1, stalls.
[[nodiscard]] double stoppedAmong(double isStopped, double stallShare);

}  // namespace chalk::plateau
