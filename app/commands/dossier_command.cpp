#include "app/commands/dossier_command.h"

#include "app/commands/client_choice.h"
#include "core/exchange/catalogue_json.h"
#include "ui/common/theme.h"
#include "ui/records/dossier.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

namespace chalk::app {

namespace {

int runDossier(const CommandContext& context)
{
    const QString folder = context.value(QStringLiteral("to"));
    if (folder.isEmpty()) {
        return context.refuse(QStringLiteral("--to FOLDER is needed: where the files go"));
    }
    const auto database = context.openStudio(store::OpenMode::MustExist);
    if (!database) {
        return context.report(database.error());
    }
    const auto client = chooseClient(context, **database, context.operands.front());
    if (!client) {
        return kWrongUse;
    }
    ui::common::loadFonts();
    const lifts::Catalogue catalogue = exchange::builtInCatalogue();
    const auto files = ui::records::writeDossier(**database, catalogue, *client, context.today, folder);
    if (!files) {
        return context.report(files.error());
    }
    if (context.isJson()) {
        context.out << QJsonDocument(QJsonObject{{QStringLiteral("folder"), folder}, {QStringLiteral("files"), QJsonArray::fromStringList(*files)}}).toJson(QJsonDocument::Compact)
                    << '\n';
    } else {
        context.out << "In " << folder << ": " << files->join(QStringLiteral(", ")) << '\n';
    }
    return kDone;
}

}  // namespace

Command dossierCommand()
{
    return {QStringLiteral("dossier"),
            QStringLiteral("write all that is kept of one client, for a request of theirs"),
            QStringLiteral("CLIENT"),
            1,
            1,
            {{QStringLiteral("to"), QStringLiteral("FOLDER"), QStringLiteral("where the files go; it is made where it is not there")}},
            QStringLiteral("CLIENT is a name, a part of one, or an id. Written are the client in the open format, history.json and history.csv with who changed what,\n"
                           "the copies of letters, and dossier.pdf in plain words on A4. All are readable by you only. That a dossier was made is written into the\n"
                           "history."),
            runDossier,
            Painting::Always};
}

}  // namespace chalk::app
