#include "tests/bench/child_process.h"
#include "tests/bench/goal.h"

#include <QFile>
#include <QTemporaryDir>

namespace chalk::bench {

namespace {

constexpr double kMostSeconds = 0.5;
constexpr double kMostMegabytes = 250;
constexpr int kClients = 500;

const std::string kProgram = CHALKRUNG_PROGRAM;
const std::string kStudio = CHALKRUNG_LARGE_STUDIO;
const std::string kDay = CHALKRUNG_LARGE_STUDIO_DAY;

bool hasStudio(benchmark::State& state)
{
    if (QFile::exists(QString::fromStdString(kStudio))) {
        return true;
    }
    state.SkipWithError((kStudio + " is not there: tests/bench/run makes it").c_str());
    return false;
}

int linesIn(const QString& file)
{
    QFile in(file);
    return in.open(QIODevice::ReadOnly) ? static_cast<int>(in.readAll().count('\n')) : 0;
}

/// The whole process that lists everybody and where all lifts stand.
void openRoster(benchmark::State& state)
{
    if (!hasStudio(state)) {
        return;
    }
    const QTemporaryDir folder;
    const QString output = folder.filePath(QStringLiteral("roster.txt"));
    Goal seconds("seconds of CPU", kMostSeconds, "s");
    Goal memory("peak memory in MB", kMostMegabytes, "MB");
    for (auto _ : state) {
        const ProcessCost cost = runToEnd({kProgram, "roster", "--studio", kStudio, "--on", kDay}, output.toStdString());
        if (cost.status != 0 || linesIn(output) != kClients + 1) {
            state.SkipWithError("the roster does not show everybody");
            return;
        }
        state.SetIterationTime(cost.cpuSeconds);
        seconds.add(cost.cpuSeconds);
        memory.add(cost.peakMegabytes);
    }
    seconds.report(state, seconds.least());
    memory.report(state, memory.most());
}

/// The window with the roster in it, painted, without a display.
void openWindow(benchmark::State& state)
{
    if (!hasStudio(state)) {
        return;
    }
    const QTemporaryDir home;
    for (const char* name : {"HOME", "XDG_CONFIG_HOME", "XDG_STATE_HOME", "XDG_DATA_HOME", "XDG_RUNTIME_DIR"}) {
        qputenv(name, home.path().toUtf8());
    }
    qputenv("QT_QPA_PLATFORM", "offscreen");
    Goal seconds("seconds of CPU", kMostSeconds, "s");
    Goal memory("peak memory in MB", kMostMegabytes, "MB");
    for (auto _ : state) {
        const ProcessCost cost = runUntilQuiet({kProgram, "--studio", kStudio, "--on", kDay}, home.filePath(QStringLiteral("output.txt")).toStdString());
        if (cost.status > 0) {
            state.SkipWithError("the window does not open");
            return;
        }
        state.SetIterationTime(cost.cpuSeconds);
        seconds.add(cost.cpuSeconds);
        memory.add(cost.peakMegabytes);
    }
    seconds.report(state, seconds.least());
    memory.report(state, memory.most());
}

BENCHMARK(openRoster)->Name("roster of 500 clients and 2 years")->Iterations(5)->UseManualTime()->Unit(benchmark::kMillisecond);
BENCHMARK(openWindow)->Name("window on 500 clients and 2 years")->Iterations(3)->UseManualTime()->Unit(benchmark::kMillisecond);

}  // namespace

}  // namespace chalk::bench
