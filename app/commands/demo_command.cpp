#include "app/commands/demo_command.h"

#include "app/commands/new_studio_file.h"
#include "app/commands/stop_request.h"
#include "core/exchange/catalogue_json.h"
#include "core/exchange/screen_json.h"
#include "core/exchange/studio_folder.h"
#include "core/simulation/harbour_studio.h"
#include "core/simulation/simulated_crowd.h"
#include "core/store/studio_import.h"

#include <QJsonDocument>
#include <QJsonObject>

namespace chalk::app {

namespace {

int report(const CommandContext& context, int clients)
{
    if (context.isJson()) {
        context.out << QJsonDocument(QJsonObject{{QStringLiteral("studio"), context.studioFile}, {QStringLiteral("clients"), clients}})
                           .toJson(QJsonDocument::Compact)
                    << '\n';
    } else {
        context.out << "A studio of " << clients << " clients is in " << context.studioFile << '\n';
    }
    return kDone;
}

/// What came of filling a studio's file, once the file has its name.
int conclude(const CommandContext& context, NewStudioFile& file, const store::Result<void>& filled, int clients)
{
    const auto finished = filled ? file.finish() : filled;
    return finished ? report(context, clients) : context.giveUp(finished.error().message);
}

/// A wish for a large studio.
struct CrowdSize {
    int clients = 1;
    int years = 1;
    int seed = 1;
};

store::Result<void> fillWithCrowd(store::Database& database, const CommandContext& context, const CrowdSize& size)
{
    const lifts::Catalogue catalogue = exchange::builtInCatalogue();
    const simulation::SimulatedCrowd crowd(catalogue, 52 * size.years, context.today, static_cast<std::uint64_t>(size.seed));
    store::StudioImport import(database, "Large Studio", crowd.coaches(), crowd.equipment(), context.atUtc());
    for (int number = 1; number <= size.clients && !import.hasFailed(); ++number) {
        if (StopRequest::isMade()) {
            return store::storeError(store::StoreError::Kind::Cancelled, QStringLiteral("Stopped: nothing was made"));
        }
        import.add(crowd.client(number));
        if (number % 50 == 0) {
            context.err << number << " of " << size.clients << " clients\n" << Qt::flush;
        }
    }
    return import.finish();
}

int makeCrowd(const CommandContext& context, const CrowdSize& size)
{
    const StopRequest stop;
    auto file = NewStudioFile::begin(context.studioFile);
    return file ? conclude(context, *file, fillWithCrowd(file->database(), context, size), size.clients) : context.refuse(file.error().message);
}

int makeDemo(const CommandContext& context)
{
    const StopRequest stop;
    const QString folder = context.value(QStringLiteral("from"), QStringLiteral(":/demo"));
    auto document = exchange::studioFilesIn(folder).and_then(
        [](const exchange::StudioFiles& files) { return exchange::readStudio(files, exchange::builtInCatalogue()); });
    if (!document) {
        return context.refuse(folder + QLatin1Char('/') + document.error().message());
    }
    simulation::openOn(*document, context.today);
    auto file = NewStudioFile::begin(context.studioFile);
    if (!file) {
        return context.refuse(file.error().message);
    }
    const auto imported = store::importStudio(file->database(), *document, context.atUtc(), [](int, int) { return !StopRequest::isMade(); });
    return conclude(context, *file, imported, static_cast<int>(document->clients.size()));
}

int writeFiles(const CommandContext& context)
{
    const QString folder = context.value(QStringLiteral("write"));
    const lifts::Catalogue catalogue = exchange::builtInCatalogue();
    const auto files = exchange::writeStudio(simulation::harbourStudio(catalogue, exchange::builtInScreenCatalogue(catalogue)));
    if (const auto written = exchange::writeFilesInto(folder, files); !written) {
        return context.giveUp(folder + QLatin1Char('/') + written.error().message());
    }
    context.out << "The demo studio's files are in " << folder << '\n';
    return kDone;
}

int runDemo(const CommandContext& context)
{
    if (context.has(QStringLiteral("write"))) {
        return writeFiles(context);
    }
    if (!context.has(QStringLiteral("clients"))) {
        const bool isMeantLarge = context.has(QStringLiteral("years")) || context.has(QStringLiteral("seed"));
        return isMeantLarge ? context.refuse(QStringLiteral("--years and --seed go with --clients")) : makeDemo(context);
    }
    const auto clients = context.wholeNumber(QStringLiteral("clients"), 1, 1, 2000);
    const auto years = context.wholeNumber(QStringLiteral("years"), 1, 1, 10);
    const auto seed = context.wholeNumber(QStringLiteral("seed"), 1, 0, 1'000'000);
    return clients && years && seed ? makeCrowd(context, {*clients, *years, *seed}) : kWrongUse;
}

}  // namespace

Command demoCommand()
{
    return {QStringLiteral("demo"),
            QStringLiteral("make the demo studio, or a large simulated one"),
            {},
            0,
            0,
            {{QStringLiteral("from"), QStringLiteral("DIR"), QStringLiteral("take the studio's files from DIR")},
             {QStringLiteral("write"), QStringLiteral("DIR"), QStringLiteral("write the demo studio's files into DIR and do nothing else")},
             {QStringLiteral("clients"), QStringLiteral("N"), QStringLiteral("simulate a studio of N clients instead")},
             {QStringLiteral("years"), QStringLiteral("Y"), QStringLiteral("with Y years of history (1)")},
             {QStringLiteral("seed"), QStringLiteral("S"), QStringLiteral("and this seed of chance (1)")}},
            QStringLiteral("Without --studio it becomes your own studio, where there is none yet. Dates slide by whole weeks, so that the studio's today is\n"
                           "today, or the day of --on. A file that is there is never overwritten."),
            runDemo};
}

}  // namespace chalk::app
