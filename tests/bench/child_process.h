#pragma once

#include <string>
#include <vector>

namespace chalk::bench {

/// What a program cost from its start to its end.
struct ProcessCost {
    double cpuSeconds = 0;       ///< user and system
    double elapsedSeconds = 0;
    double peakMegabytes = 0;    ///< the largest resident set, 10^6 bytes
    int status = -1;             ///< its exit status; -1 where it was ended by a signal
};

/// Runs a program with its output going to `output`, and waits for it. `program` is the first of `arguments`.
[[nodiscard]] ProcessCost runToEnd(const std::vector<std::string>& arguments, const std::string& output);

/// Runs a program with a window until it has used no CPU for a second, and ends it.
[[nodiscard]] ProcessCost runUntilQuiet(const std::vector<std::string>& arguments, const std::string& output);

}  // namespace chalk::bench
