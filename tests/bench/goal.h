#pragma once

#include <benchmark/benchmark.h>

#include <string>
#include <vector>

namespace chalk::bench {

/// CPU seconds that this process has used so far.
[[nodiscard]] double cpuSeconds();

/// Measured values of one kind, held against a goal that they must not pass. Others who use the machine only ever make a
/// measurement larger.
class Goal {
public:
    /// `unit` is for reading.
    Goal(std::string name, double most, std::string unit) : m_name(std::move(name)), m_most(most), m_unit(std::move(unit)) {}

    void add(double value) { m_values.push_back(value); }
    [[nodiscard]] double least() const;
    [[nodiscard]] double mean() const;
    [[nodiscard]] double most() const;

    /// Puts least, mean and most among the counters of `state` and reports an error where `judged` is above the goal.
    void report(benchmark::State& state, double judged) const;

private:
    std::string m_name;
    double m_most;
    std::string m_unit;
    std::vector<double> m_values;
};

}  // namespace chalk::bench
