#include "app/commands/demo_command.h"

#include "core/exchange/catalogue_json.h"
#include "core/exchange/studio_folder.h"
#include "core/simulation/harbour_studio.h"
#include "core/simulation/simulated_crowd.h"
#include "core/store/studio_import.h"

#include <QFileInfo>
#include <QJsonDocument>
#include <QJsonObject>

namespace chalk::app {

namespace {

/// A whole number of an option; nothing, and a message, where it is none or out of range.
std::optional<int> numberOption(const CommandContext& context, const QString& option, int fallback, int low, int high)
{
    bool isNumber = true;
    const int value = context.has(option) ? context.value(option).toInt(&isNumber) : fallback;
    if (!isNumber || value < low || value > high) {
        context.refuse(QStringLiteral("--%1 must be a whole number from %2 to %3").arg(option).arg(low).arg(high));
        return std::nullopt;
    }
    return value;
}

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

/// Opens a new file for a studio; a file that is there already is not touched.
store::Result<std::unique_ptr<store::Database>> newStudio(const CommandContext& context)
{
    if (QFileInfo::exists(context.studioFile)) {
        return store::storeError(store::StoreError::Kind::Refused, QStringLiteral("%1 is there already").arg(context.studioFile));
    }
    return store::Database::open(context.studioFile, store::OpenMode::CreateIfMissing);
}

int makeCrowd(const CommandContext& context, int clients, int years, int seed)
{
    auto database = newStudio(context);
    if (!database) {
        return context.refuse(database.error().message);
    }
    const lifts::Catalogue catalogue = exchange::builtInCatalogue();
    const simulation::SimulatedCrowd crowd(catalogue, 52 * years, context.today, static_cast<std::uint64_t>(seed));
    store::StudioImport import(**database, "Large Studio", crowd.coaches(), crowd.equipment(), context.atUtc());
    for (int number = 1; number <= clients && !import.hasFailed(); ++number) {
        import.add(crowd.client(number));
        if (number % 50 == 0) {
            context.err << number << " of " << clients << " clients\n" << Qt::flush;
        }
    }
    const auto finished = import.finish();
    return finished ? report(context, clients) : context.giveUp(finished.error().message);
}

int makeDemo(const CommandContext& context)
{
    const QString folder = context.value(QStringLiteral("from"), QStringLiteral(":/demo"));
    auto document = exchange::studioFilesIn(folder).and_then(
        [](const exchange::StudioFiles& files) { return exchange::readStudio(files, exchange::builtInCatalogue()); });
    if (!document) {
        return context.refuse(folder + QLatin1Char('/') + document.error().message());
    }
    exchange::slideTo(*document, context.today);
    auto database = newStudio(context);
    if (!database) {
        return context.refuse(database.error().message);
    }
    const auto imported = store::importStudio(**database, *document, context.atUtc());
    return imported ? report(context, static_cast<int>(document->clients.size())) : context.giveUp(imported.error().message);
}

int writeFiles(const CommandContext& context)
{
    const QString folder = context.value(QStringLiteral("write"));
    const auto files = exchange::writeStudio(simulation::harbourStudio(exchange::builtInCatalogue()));
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
    if (!context.has(QStringLiteral("studio"))) {
        return context.refuse(QStringLiteral("--studio FILE says where the demo studio goes"));
    }
    if (!context.has(QStringLiteral("clients"))) {
        const bool isMeantLarge = context.has(QStringLiteral("years")) || context.has(QStringLiteral("seed"));
        return isMeantLarge ? context.refuse(QStringLiteral("--years and --seed go with --clients")) : makeDemo(context);
    }
    const auto clients = numberOption(context, QStringLiteral("clients"), 1, 1, 2000);
    const auto years = numberOption(context, QStringLiteral("years"), 1, 1, 10);
    const auto seed = numberOption(context, QStringLiteral("seed"), 1, 0, 1'000'000);
    return clients && years && seed ? makeCrowd(context, *clients, *years, *seed) : kWrongUse;
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
            QStringLiteral("Dates slide by whole weeks, so that the studio's today is today, or the day of --on. A file that is there is never overwritten."),
            runDemo};
}

}  // namespace chalk::app
