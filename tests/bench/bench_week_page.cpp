#include "core/exchange/catalogue_json.h"
#include "core/store/record_writer.h"
#include "core/store/week_settings.h"
#include "tests/bench/child_process.h"
#include "tests/bench/goal.h"
#include "tests/support/fake_clock.h"
#include "tests/support/scripted_dialogs.h"
#include "ui/common/look.h"
#include "ui/week/week_page.h"

#include <QAction>
#include <QApplication>
#include <QElapsedTimer>
#include <QTemporaryDir>

#include <ctime>

namespace chalk::bench {

namespace {

constexpr double kMostMilliseconds = 50;
constexpr qint64 kFillMilliseconds = 6000;
constexpr int kClients = 150;

/// CPU milliseconds of this thread alone: the search beside it does not count, nor do others on the machine.
double threadMilliseconds()
{
    std::timespec time{};
    clock_gettime(CLOCK_THREAD_CPUTIME_ID, &time);
    return static_cast<double>(time.tv_sec) * 1e3 + static_cast<double>(time.tv_nsec) / 1e6;
}

/// Handles what waits, and notes how long the window was away for it.
void handleEvents(Goal& stall)
{
    const double before = threadMilliseconds();
    QApplication::processEvents();
    stall.add(threadMilliseconds() - before);
}

void actOn(const ui::week::WeekPage& page, Qt::Key key)
{
    for (QAction* action : page.actions()) {
        if (action->shortcut() == QKeySequence(key)) {
            action->trigger();
        }
    }
}

/// The window while its week is filled: each time that it handles events, from the first plan to the ways out of what is left over.
void fillInWindow(benchmark::State& state)
{
    int count = 0;
    QByteArray name("bench");
    char* arguments[] = {name.data(), nullptr};
    qputenv("QT_QPA_PLATFORM", "offscreen");
    const QApplication application(count = 1, arguments);
    const QTemporaryDir folder;
    const QString file = folder.filePath(QStringLiteral("studio.chalkrung"));
    const std::string clients = std::to_string(kClients);
    if (runToEnd({CHALKRUNG_PROGRAM, "demo", "--studio", file.toStdString(), "--clients", clients, "--on", "2026-11-24"}, "/dev/null").status != 0) {
        state.SkipWithError("the studio could not be made");
        return;
    }
    auto database = store::Database::open(file, store::OpenMode::MustExist);
    // A coach is away for the rest of the week, so that there are conflicts and more is wanted than fits.
    const base::Date away = *base::Date::fromYmd(2026, 12, 2);
    if (!store::WeekSettings(**database).addClosure({away, away + 4, 0, week::kDayMinutes, base::CoachId(1), {}, 0, "away"})) {
        state.SkipWithError("the closure could not be kept");
        return;
    }
    const lifts::Catalogue catalogue = exchange::builtInCatalogue();
    const tests::FakeClock clock;
    ui::common::ActHistory acts(clock, [](base::ActId) -> tl::expected<base::ActId, QString> { return tl::make_unexpected(QString()); });
    const ui::common::Look look;
    tests::ScriptedDialogs dialogs;
    ui::week::WeekPage page({look, {**database, catalogue, clock, acts, [] { return QStringLiteral("2026-11-24T08:42:00Z"); }}, dialogs});
    page.resize(1360, 856);
    page.show();
    Goal stall("milliseconds away", kMostMilliseconds, "ms");
    page.open({});
    actOn(page, Qt::Key_PageDown);
    QApplication::processEvents();
    for (auto _ : state) {
        const double before = threadMilliseconds();
        actOn(page, Qt::Key_F);
        stall.add(threadMilliseconds() - before);
        QElapsedTimer time;
        time.start();
        while (page.isFilling() && time.elapsed() < kFillMilliseconds) {
            handleEvents(stall);
        }
        const double stopping = threadMilliseconds();
        page.closeOrClear();
        stall.add(threadMilliseconds() - stopping);
        while (page.isLookingForOffers()) {
            handleEvents(stall);
        }
        handleEvents(stall);
        state.SetIterationTime(stall.most() / 1e3);
    }
    state.counters["conflicts"] = static_cast<double>(page.desk().scene().faults.size());
    state.counters["placed"] = page.desk().placed();
    state.counters["wanted"] = page.desk().wanted();
    stall.report(state, stall.most());
}

BENCHMARK(fillInWindow)->Name("the window while the week of 150 clients is filled")->Iterations(1)->UseManualTime()->Unit(benchmark::kMillisecond);

}  // namespace

}  // namespace chalk::bench
