#include "tests/bench/goal.h"
#include "tests/ui/print/card_fixture.h"
#include "ui/common/theme.h"
#include "ui/print/card_printing.h"

#include <QDate>
#include <QGuiApplication>

#include <stdexcept>

namespace chalk::bench {

namespace {

constexpr double kMostSecondsForCards = 2;
constexpr std::size_t kCards = 200;

/// Fonts need an application, on no display. It is never destroyed: that would be at exit, after what it needs.
void haveFonts()
{
    static int count = 1;
    static char name[] = "bench_printing";
    static char* arguments[] = {name, nullptr};
    qputenv("QT_QPA_PLATFORM", "offscreen");
    static const auto* const application = new QGuiApplication(count, arguments);
    static_cast<void>(application);
    ui::common::loadFonts();
}

/// A busy week's cards, no two alike.
std::vector<sessions::CardContent> manyCards()
{
    std::vector<sessions::CardContent> cards;
    for (std::size_t i = 0; i < kCards; ++i) {
        cards.push_back(test::ferroCard());
        cards.back().clientName += ' ' + std::to_string(i);
        cards.back().sessionCode = "K7QM" + std::to_string(100000 + i);
        for (sessions::CardLift& lift : cards.back().lifts) {
            lift.load += base::Load::fromCenti(static_cast<std::int32_t>(250 * (i % 20)));
        }
    }
    return cards;
}

void printCardsOfAWeek(benchmark::State& state)
{
    haveFonts();
    const std::vector<sessions::CardContent> cards = manyCards();
    Goal cpu("seconds of CPU", kMostSecondsForCards, "s");
    for (auto _ : state) {
        const double before = cpuSeconds();
        const QByteArray pdf = ui::print::cardsPdf(cards, ui::print::PaperSize::A5, QDate(2026, 11, 24));
        cpu.add(cpuSeconds() - before);
        state.SetIterationTime(cpuSeconds() - before);
        if (pdf.size() < 100'000) {
            throw std::runtime_error("the PDF does not hold 200 cards");
        }
    }
    cpu.report(state, cpu.least());
}

BENCHMARK(printCardsOfAWeek)->Name("200 cards as PDF")->Iterations(5)->UseManualTime()->Unit(benchmark::kSecond);

}  // namespace

}  // namespace chalk::bench
