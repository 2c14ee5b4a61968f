#include "core/exchange/catalogue_json.h"
#include "core/store/check_in_reader.h"
#include "core/store/client_reader.h"
#include "tests/bench/goal.h"

#include <QFile>

namespace chalk::bench {

namespace {

constexpr double kMostQueueSeconds = 1;
constexpr double kMostPageMilliseconds = 30;
constexpr std::size_t kPages = 50;
constexpr double kMillisecondsInSecond = 1000;

/// The large studio, for reading; nothing, and an error in the state, where it is not there.
std::unique_ptr<store::Database> openLargeStudio(benchmark::State& state)
{
    auto database = store::Database::open(QStringLiteral(CHALKRUNG_LARGE_STUDIO), store::OpenMode::ReadOnly);
    if (!database) {
        state.SkipWithError((std::string(CHALKRUNG_LARGE_STUDIO) + " cannot be opened: tests/bench/run makes it").c_str());
        return nullptr;
    }
    return *std::move(database);
}

base::Date largeStudioDay()
{
    return *base::Date::parse(CHALKRUNG_LARGE_STUDIO_DAY);
}

/// Who of everybody is to be looked at, every lift of theirs judged.
void readQueue(benchmark::State& state)
{
    const auto database = openLargeStudio(state);
    if (!database) {
        return;
    }
    const lifts::Catalogue catalogue = exchange::builtInCatalogue();
    Goal seconds("seconds of CPU", kMostQueueSeconds, "s");
    for (auto _ : state) {
        const double start = cpuSeconds();
        const auto queue = store::CheckInReader(*database, catalogue).queue(largeStudioDay());
        const double spent = cpuSeconds() - start;
        if (!queue || queue->empty()) {
            state.SkipWithError("nobody is in the queue");
            return;
        }
        state.SetIterationTime(spent);
        seconds.add(spent);
    }
    seconds.report(state, seconds.least());
}

/// The pages of the first clients, one after the other; the goal is for one.
void readPages(benchmark::State& state)
{
    const auto database = openLargeStudio(state);
    const auto names = database ? store::ClientReader(*database).names() : tl::expected<std::vector<std::pair<base::ClientId, std::string>>, store::StoreError>();
    if (!database || !names || names->size() < kPages) {
        state.SkipWithError("the large studio has too few clients");
        return;
    }
    const lifts::Catalogue catalogue = exchange::builtInCatalogue();
    Goal milliseconds("milliseconds of CPU a page", kMostPageMilliseconds, "ms");
    for (auto _ : state) {
        const double start = cpuSeconds();
        for (std::size_t i = 0; i < kPages; ++i) {
            if (!store::CheckInReader(*database, catalogue).page((*names)[i].first, largeStudioDay())) {
                state.SkipWithError("a page cannot be read");
                return;
            }
        }
        const double spent = (cpuSeconds() - start) / static_cast<double>(kPages);
        state.SetIterationTime(spent);
        milliseconds.add(spent * kMillisecondsInSecond);
    }
    milliseconds.report(state, milliseconds.least());
}

BENCHMARK(readQueue)->Name("check-in of 500 clients and 2 years")->Iterations(5)->UseManualTime()->Unit(benchmark::kMillisecond);
BENCHMARK(readPages)->Name("page of a client at a check-in")->Iterations(3)->UseManualTime()->Unit(benchmark::kMillisecond);

}  // namespace

}  // namespace chalk::bench
