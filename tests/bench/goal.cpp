#include "tests/bench/goal.h"

#include <algorithm>
#include <cstdio>
#include <numeric>

#include <time.h>

namespace chalk::bench {

double cpuSeconds()
{
    timespec now{};
    ::clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &now);
    return static_cast<double>(now.tv_sec) + static_cast<double>(now.tv_nsec) / 1e9;
}

double Goal::least() const
{
    return m_values.empty() ? 0 : *std::min_element(m_values.begin(), m_values.end());
}

double Goal::mean() const
{
    return m_values.empty() ? 0 : std::accumulate(m_values.begin(), m_values.end(), 0.0) / static_cast<double>(m_values.size());
}

double Goal::most() const
{
    return m_values.empty() ? 0 : *std::max_element(m_values.begin(), m_values.end());
}

void Goal::report(benchmark::State& state, double judged) const
{
    std::printf("%s: %.4g %s at least, %.4g on average, %.4g at most, of %zu; the goal is %.4g %s\n", m_name.c_str(), least(), m_unit.c_str(), mean(), most(),
                m_values.size(), m_most, m_unit.c_str());
    state.counters[m_name] = judged;
    if (m_values.empty() || judged > m_most) {
        state.SkipWithError((m_name + " is over its goal").c_str());
    }
}

}  // namespace chalk::bench
