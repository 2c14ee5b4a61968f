#include "app/commands/open_files_command.h"

#include "app/commands/client_choice.h"
#include "app/commands/new_studio_file.h"
#include "app/commands/stop_request.h"
#include "app/commands/told_progress.h"
#include "core/store/open_files.h"

#include <QJsonDocument>
#include <QJsonObject>

namespace chalk::app {

namespace {

constexpr int kTellEvery = 50;

/// A studio that cannot be written is exported too; only the note of it in the history is missing then.
store::Result<std::unique_ptr<store::Database>> openForExport(const CommandContext& context)
{
    auto opened = context.openStudio(store::OpenMode::MustExist);
    return opened || opened.error().kind != store::StoreError::Kind::CannotWrite ? std::move(opened) : context.openStudio(store::OpenMode::ReadOnly);
}

int tell(const CommandContext& context, const QJsonObject& json, const QString& text)
{
    if (context.isJson()) {
        context.out << QJsonDocument(json).toJson(QJsonDocument::Compact) << '\n';
    } else {
        context.out << text << '\n';
    }
    return kDone;
}

QString clientsText(int count)
{
    return count == 1 ? QStringLiteral("1 client") : QStringLiteral("%1 clients").arg(count);
}

int runExport(const CommandContext& context)
{
    const QString folder = context.value(QStringLiteral("to"));
    if (folder.isEmpty()) {
        return context.refuse(QStringLiteral("--to FOLDER is needed: where the files go"));
    }
    const QString form = context.value(QStringLiteral("form"), QStringLiteral("both"));
    if (form != QLatin1String("csv") && form != QLatin1String("json") && form != QLatin1String("both")) {
        return context.refuse(QStringLiteral("--form must be csv, json or both"));
    }
    store::OpenFilesWish wish;
    wish.isJson = form != QLatin1String("csv");
    wish.isCsv = form != QLatin1String("json");
    const auto database = openForExport(context);
    if (!database) {
        return context.report(database.error());
    }
    if (context.has(QStringLiteral("client"))) {
        const auto client = chooseClient(context, **database, context.value(QStringLiteral("client")));
        if (!client) {
            return kWrongUse;
        }
        wish.client = *client;
    }
    const StopRequest stop;
    const auto written = store::writeOpenFiles(**database, folder, wish, context.today, toldProgress(context, QStringLiteral("clients"), kTellEvery));
    if (!written) {
        return context.report(written.error());
    }
    return tell(context, {{QStringLiteral("folder"), folder}, {QStringLiteral("clients"), *written}, {QStringLiteral("form"), form}},
                QStringLiteral("%1 in %2; health data is in plain text there, readable by you only").arg(clientsText(*written), folder));
}

int runOpenFiles(const CommandContext& context)
{
    const StopRequest stop;
    auto file = NewStudioFile::begin(context.studioFile);
    if (!file) {
        return context.refuse(file.error().message);
    }
    const auto read = store::readOpenFiles(file->database(), context.operands.front(), context.atUtc(), toldProgress(context, QStringLiteral("clients"), kTellEvery));
    if (!read) {
        return context.giveUp(read.error().message);
    }
    if (const auto finished = file->finish(); !finished) {
        return context.giveUp(finished.error().message);
    }
    return tell(context, {{QStringLiteral("studio"), context.studioFile}, {QStringLiteral("clients"), *read}},
                QStringLiteral("A studio of %1 is in %2").arg(clientsText(*read), context.studioFile));
}

}  // namespace

Command exportCommand()
{
    return {QStringLiteral("export"),
            QStringLiteral("write the studio, or one client, as open files"),
            {},
            0,
            0,
            {{QStringLiteral("to"), QStringLiteral("FOLDER"), QStringLiteral("where the files go; it is made where it is not there")},
             {QStringLiteral("form"), QStringLiteral("FORM"), QStringLiteral("json, csv, or both (as by itself)")},
             {QStringLiteral("client"), QStringLiteral("NAME"), QStringLiteral("only this client: a name, a part of one, or an id")}},
            QStringLiteral("JSON: studio.json and a file for each client, with a README.md that describes every field. CSV: the folder tables, a file for each\n"
                           "kind of thing, with a README.txt that describes every column and unit. Either holds everything but what is worked out from the log\n"
                           "and the history of changes (see chalkrung history). chalkrung open-files reads them again without loss. That an export was made is\n"
                           "written into the history."),
            runExport};
}

Command openFilesCommand()
{
    return {QStringLiteral("open-files"),
            QStringLiteral("make a new studio from open files"),
            QStringLiteral("FOLDER"),
            1,
            1,
            {},
            QStringLiteral("FOLDER is what chalkrung export wrote: JSON where there is studio.json, else tables of CSV. All of it is taken in, or nothing where\n"
                           "anything is wrong: the message names the file, the line and the column. --studio names the new file; one that is there is never\n"
                           "overwritten."),
            runOpenFiles};
}

}  // namespace chalk::app
