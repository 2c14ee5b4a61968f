#include "core/base/date.h"
#include "tests/bench/child_process.h"
#include "tests/bench/goal.h"

#include <QFile>
#include <QTemporaryDir>

#include <array>

namespace chalk::bench {

namespace {

constexpr double kMostImportSeconds = 20;
constexpr double kMostImportMegabytes = 300;
constexpr int kListedClients = 500;
constexpr int kWeeks = 104;
constexpr int kDaysAWeek = 2;

/// Two years of 500 people as a list: two sessions a week of four lifts, a row for each, three sets in a row.
bool writeList(const QString& name)
{
    constexpr std::array<const char*, 4> kExercises{"Back squat", "Bench press", "Deadlift", "Bent-over row"};
    QFile file(name);
    if (!file.open(QIODevice::WriteOnly)) {
        return false;
    }
    const base::Date last = *base::Date::fromYmd(2026, 11, 24);
    file.write("Client,Date,Exercise,Load (kg),Reps,Sets,RIR,Rest\n");
    for (int client = 0; client < kListedClients; ++client) {
        for (int session = 0; session < kWeeks * kDaysAWeek; ++session) {
            const base::Date day = last - 7 * kWeeks + 7 * (session / kDaysAWeek) + 3 * (session % kDaysAWeek);
            for (const char* exercise : kExercises) {
                const double load = 40 + 2.5 * (session / 8 % 20);
                file.write(QByteArray("Person N") + QByteArray::number(client) + ',' + QByteArray::fromStdString(day.toString()) + ',' + exercise + ',' +
                           QByteArray::number(load) + ",8,3,2,120\n");
            }
        }
    }
    return true;
}

/// The whole process that takes the list into a studio.
void importTwoYears(benchmark::State& state)
{
    const QTemporaryDir folder;
    const std::string list = folder.filePath(QStringLiteral("list.csv")).toStdString();
    Goal seconds("seconds of CPU", kMostImportSeconds, "s");
    Goal memory("peak memory in MB", kMostImportMegabytes, "MB");
    int run = 0;
    for (auto _ : state) {
        const std::string studio = folder.filePath(QStringLiteral("studio%1.chalkrung").arg(run++)).toStdString();
        const std::string output = folder.filePath(QStringLiteral("out.txt")).toStdString();
        const bool isReady = writeList(QString::fromStdString(list)) && runToEnd({CHALKRUNG_PROGRAM, "demo", "--studio", studio, "--on", "2026-11-25"}, output).status == 0;
        const ProcessCost cost = runToEnd({CHALKRUNG_PROGRAM, "import", list, "--studio", studio, "--on", "2026-11-25", "--rest"}, output);
        QFile said(QString::fromStdString(output));
        const bool isTakenIn = said.open(QIODevice::ReadOnly) && said.readAll().contains("500 new clients");
        if (!isReady || cost.status != 0 || !isTakenIn) {
            state.SkipWithError("the list was not taken in whole");
            return;
        }
        state.SetIterationTime(cost.cpuSeconds);
        seconds.add(cost.cpuSeconds);
        memory.add(cost.peakMegabytes);
    }
    seconds.report(state, seconds.least());
    memory.report(state, memory.most());
}

BENCHMARK(importTwoYears)->Name("import of 500 clients and two years")->UseManualTime()->Unit(benchmark::kMillisecond)->Iterations(1);

}  // namespace

}  // namespace chalk::bench
