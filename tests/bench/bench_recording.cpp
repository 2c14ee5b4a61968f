#include "core/store/client_reader.h"
#include "core/store/record_writer.h"
#include "core/store/session_reader.h"
#include "tests/bench/goal.h"

#include <QFile>
#include <QTemporaryDir>

#include <chrono>
#include <stdexcept>

namespace chalk::bench {

namespace {

using store::Database;

constexpr double kMostMilliseconds = 15;
constexpr int kSets = 10;

QString someMoment()
{
    return QStringLiteral("2026-11-02T08:00:00Z");
}

/// A large studio to write in: a copy, which goes away again.
class LargeStudio {
public:
    LargeStudio()
    {
        const QString file = m_folder.filePath(QStringLiteral("studio.chalkrung"));
        if (!QFile::copy(QStringLiteral(CHALKRUNG_LARGE_STUDIO), file)) {
            throw std::runtime_error(CHALKRUNG_LARGE_STUDIO " is not there: tests/bench/run makes it");
        }
        m_database = Database::open(file, store::OpenMode::MustExist).value();
    }
    [[nodiscard]] Database& database() { return *m_database; }

private:
    QTemporaryDir m_folder{QStringLiteral(CHALKRUNG_LARGE_STUDIO "-recording-")};  // on the same disk
    std::unique_ptr<Database> m_database;
};

/// Everything that a client does in one session: each lift that is due for work, ten sets of it.
std::vector<store::NewRecord> sessionOf(const store::ClientFile& file, base::Date day)
{
    std::vector<store::NewRecord> records;
    for (const store::ClientLift& lift : file.lifts) {
        const progression::Prescription due = lift.lift.machine.prescriptionOn(day);
        if (due.kind == progression::PrescriptionKind::Work) {
            const progression::SetRecord set{due.load, due.repsLow.value(), 2, static_cast<std::int16_t>(due.rest.value())};
            records.push_back({lift.lift.id, {day, progression::Exposure{0, std::vector<progression::SetRecord>(kSets, set)}}});
        }
    }
    return records;
}

struct RecordingCost {
    double cpuMilliseconds = 0;
    double wallMilliseconds = 0;
};

RecordingCost recordOne(store::RecordWriter& writer, base::ClientId client, const std::vector<store::NewRecord>& records)
{
    const auto wallBefore = std::chrono::steady_clock::now();
    const double cpuBefore = cpuSeconds();
    const auto outcome = writer.record(client, {}, records);
    if (!outcome) {
        throw std::runtime_error(outcome.error().message.toStdString());
    }
    const std::chrono::duration<double, std::milli> wall = std::chrono::steady_clock::now() - wallBefore;
    return {(cpuSeconds() - cpuBefore) * 1000, wall.count()};
}

/// A session of four or more lifts for one client after the other, as the floor page writes it.
void recordSession(benchmark::State& state)
{
    LargeStudio studio;
    store::RecordWriter writer(studio.database(), someMoment);
    Goal cpu("milliseconds of CPU", kMostMilliseconds, "ms");
    double wall = 0;
    std::int64_t client = 0;
    const base::Date day = base::Date::parse(CHALKRUNG_LARGE_STUDIO_DAY).value();
    for (auto _ : state) {
        std::vector<store::NewRecord> records;
        while (records.size() < 4) {
            ++client;
            records = sessionOf(store::ClientReader(studio.database()).read(base::ClientId(client), day).value(), day);
        }
        const RecordingCost cost = recordOne(writer, base::ClientId(client), records);
        cpu.add(cost.cpuMilliseconds);
        wall += cost.wallMilliseconds;
        state.SetIterationTime(cost.cpuMilliseconds / 1000);
    }
    state.counters["wall_ms_with_sync"] = benchmark::Counter(wall, benchmark::Counter::kAvgIterations);
    cpu.report(state, cpu.most());
}

/// A correction in the middle of a long history, which is replayed.
void correctEntry(benchmark::State& state)
{
    LargeStudio studio;
    store::RecordWriter writer(studio.database(), someMoment);
    Goal cpu("milliseconds of CPU", kMostMilliseconds, "ms");
    std::int64_t client = 0;
    const base::Date day = base::Date::parse(CHALKRUNG_LARGE_STUDIO_DAY).value();
    for (auto _ : state) {
        const auto file = store::ClientReader(studio.database()).read(base::ClientId(++client), day).value();
        store::EventLog log(studio.database());
        const auto entries = log.presentEntries(file.lifts.front().lift.id);
        const store::LogEntry& old = entries[entries.size() / 2];
        const double before = cpuSeconds();
        if (!writer.correct(old.id, old.event)) {
            throw std::runtime_error("the correction was refused");
        }
        cpu.add((cpuSeconds() - before) * 1000);
        state.SetIterationTime(cpuSeconds() - before);
    }
    cpu.report(state, cpu.most());
}

BENCHMARK(recordSession)->Name("recording a session")->Iterations(100)->UseManualTime()->Unit(benchmark::kMillisecond);
BENCHMARK(correctEntry)->Name("correcting an entry of two years back")->Iterations(50)->UseManualTime()->Unit(benchmark::kMillisecond);

}  // namespace

}  // namespace chalk::bench
