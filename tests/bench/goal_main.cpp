#include <benchmark/benchmark.h>

namespace {

/// Remembers whether any benchmark reported an error.
class JudgingReporter : public benchmark::ConsoleReporter {
public:
    void ReportRuns(const std::vector<Run>& runs) override
    {
        for (const Run& run : runs) {
            m_hasFailed = m_hasFailed || run.error_occurred;
        }
        ConsoleReporter::ReportRuns(runs);
    }
    [[nodiscard]] bool hasFailed() const { return m_hasFailed; }

private:
    bool m_hasFailed = false;
};

}  // namespace

int main(int argc, char** argv)
{
    benchmark::Initialize(&argc, argv);
    if (benchmark::ReportUnrecognizedArguments(argc, argv)) {
        return 2;
    }
    JudgingReporter reporter;
    benchmark::RunSpecifiedBenchmarks(&reporter);
    return reporter.hasFailed() ? 1 : 0;
}
