#include "core/store/backup.h"
#include "core/store/studio_check.h"
#include "tests/bench/goal.h"

#include <QFile>
#include <QTemporaryDir>

namespace chalk::bench {

namespace {

constexpr double kMostBackupSeconds = 2;
constexpr double kMostVerifySeconds = 20;

const QString& largeStudio()
{
    static const QString file = QStringLiteral(CHALKRUNG_LARGE_STUDIO);
    return file;
}

std::unique_ptr<store::Database> openLargeStudio(benchmark::State& state)
{
    auto opened = store::Database::open(largeStudio(), store::OpenMode::MustExist);
    if (!opened) {
        state.SkipWithError((opened.error().message + QStringLiteral(": tests/bench/run makes it")).toUtf8().constData());
        return nullptr;
    }
    return *std::move(opened);
}

/// One backup, copied, synced, opened and verified.
void backUpStudio(benchmark::State& state)
{
    const auto database = openLargeStudio(state);
    const QTemporaryDir folder;
    Goal seconds("seconds of CPU", kMostBackupSeconds, "s");
    for (auto _ : state) {
        const QString copy = folder.filePath(QStringLiteral("copy.chalkrung"));
        QFile::remove(copy);
        const double before = cpuSeconds();
        const bool isMade = database != nullptr && store::copyStudio(*database, copy).has_value();
        const double used = cpuSeconds() - before;
        if (!isMade) {
            state.SkipWithError("no backup was made");
            return;
        }
        state.SetIterationTime(used);
        seconds.add(used);
    }
    seconds.report(state, seconds.least());
}

/// Structure, references, and every lift replayed.
void verifyStudio(benchmark::State& state)
{
    const auto database = openLargeStudio(state);
    Goal seconds("seconds of CPU", kMostVerifySeconds, "s");
    for (auto _ : state) {
        const double before = cpuSeconds();
        const auto check = database != nullptr ? store::checkStudio(*database) : store::Result<store::StudioCheck>();
        const double used = cpuSeconds() - before;
        if (!check || !check->isSound() || check->lifts == 0) {
            state.SkipWithError("the studio is not sound");
            return;
        }
        state.SetIterationTime(used);
        seconds.add(used);
    }
    seconds.report(state, seconds.least());
}

BENCHMARK(backUpStudio)->Name("backup of 500 clients and 2 years")->Iterations(3)->UseManualTime()->Unit(benchmark::kMillisecond);
BENCHMARK(verifyStudio)->Name("full check of 500 clients and 2 years")->Iterations(1)->UseManualTime()->Unit(benchmark::kMillisecond);

}  // namespace

}  // namespace chalk::bench
