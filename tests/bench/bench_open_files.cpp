#include "tests/bench/child_process.h"
#include "tests/bench/goal.h"

#include <QDir>
#include <QFile>
#include <QTemporaryDir>

#include <utility>

namespace chalk::bench {

namespace {

constexpr double kMostExportSeconds = 10;
constexpr double kMostOpenSeconds = 20;
constexpr double kMostOpenFilesMegabytes = 300;
constexpr int kExportedClients = 500;

const std::string kExporter = CHALKRUNG_PROGRAM;
const std::string kExportedStudio = CHALKRUNG_LARGE_STUDIO;
const std::string kExportDay = CHALKRUNG_LARGE_STUDIO_DAY;

/// Goals of a whole process. Export is held to CPU; taking in is done by two threads, and held to the time that a person waits.
struct OpenFilesGoals {
    OpenFilesGoals(std::string name, double mostSeconds) : seconds(std::move(name), mostSeconds, "s") {}

    void add(benchmark::State& state, const ProcessCost& cost, double time)
    {
        state.SetIterationTime(time);
        state.counters["cpu_s"] = cost.cpuSeconds;
        state.counters["elapsed_s"] = cost.elapsedSeconds;
        seconds.add(time);
        memory.add(cost.peakMegabytes);
    }
    void report(benchmark::State& state) const
    {
        seconds.report(state, seconds.least());
        memory.report(state, memory.most());
    }

    Goal seconds;
    Goal memory{"peak memory in MB", kMostOpenFilesMegabytes, "MB"};
};

/// Everything as JSON and as tables at once.
void exportStudio(benchmark::State& state)
{
    if (!QFile::exists(QString::fromStdString(kExportedStudio))) {
        state.SkipWithError((kExportedStudio + " is not there: tests/bench/run makes it").c_str());
        return;
    }
    OpenFilesGoals goals("seconds of CPU", kMostExportSeconds);
    for (auto _ : state) {
        const QTemporaryDir folder;
        const std::string to = folder.filePath(QStringLiteral("out")).toStdString();
        const ProcessCost cost = runToEnd({kExporter, "export", "--to", to, "--studio", kExportedStudio, "--on", kExportDay}, folder.filePath(QStringLiteral("said.txt")).toStdString());
        if (cost.status != 0 || QDir(QString::fromStdString(to + "/clients")).entryList(QDir::Files).size() != kExportedClients) {
            state.SkipWithError("not everybody was exported");
            return;
        }
        goals.add(state, cost, cost.cpuSeconds);
    }
    goals.report(state);
}

/// A new studio from one of the two forms.
void openStudioFrom(benchmark::State& state, const std::string& form)
{
    const QTemporaryDir folder;
    const auto path = [&folder](const char* name) { return folder.filePath(QLatin1String(name)).toStdString(); };
    if (runToEnd({kExporter, "export", "--to", path("out"), "--form", form, "--studio", kExportedStudio, "--on", kExportDay}, path("said.txt")).status != 0) {
        state.SkipWithError("there is nothing to read");
        return;
    }
    OpenFilesGoals goals("seconds", kMostOpenSeconds);
    for (auto _ : state) {
        QFile::remove(QString::fromStdString(path("new.chalkrung")));
        const ProcessCost cost = runToEnd({kExporter, "open-files", path("out"), "--studio", path("new.chalkrung")}, path("said.txt"));
        if (cost.status != 0) {
            state.SkipWithError("the files were not taken in");
            return;
        }
        goals.add(state, cost, cost.elapsedSeconds);
    }
    goals.report(state);
}

BENCHMARK(exportStudio)->Name("export of 500 clients and 2 years")->Iterations(2)->UseManualTime()->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(openStudioFrom, json, "json")->Name("a studio of 500 clients from JSON")->Iterations(1)->UseManualTime()->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(openStudioFrom, csv, "csv")->Name("a studio of 500 clients from tables")->Iterations(1)->UseManualTime()->Unit(benchmark::kMillisecond);

}  // namespace

}  // namespace chalk::bench
