#include "app/commands/history_command.h"

#include "app/commands/client_choice.h"
#include "core/exchange/catalogue_json.h"
#include "core/store/change_history.h"
#include "ui/common/formats.h"
#include "ui/history/history_words.h"

namespace chalk::app {

namespace {

constexpr int kMostHistory = 10'000'000;

void writeLine(const CommandContext& context, const store::ChangeEntry& entry, const lifts::Catalogue& catalogue)
{
    const QString detail = ui::history::historyDetail(entry, catalogue);
    context.out << ui::history::momentText(entry.atUtc) << "  " << ui::history::historyAuthor(entry) << "  "
                << (entry.clientName.empty() ? QStringLiteral("studio") : ui::common::qstring(entry.clientName)) << "  " << ui::history::historyTitle(entry, catalogue)
                << (detail.isEmpty() ? QString() : QStringLiteral(" (%1)").arg(detail)) << '\n';
}

int runHistory(const CommandContext& context)
{
    const auto count = context.wholeNumber(QStringLiteral("last"), kMostHistory, 1, kMostHistory);
    if (!count) {
        return kWrongUse;
    }
    if (context.isJson() && context.has(QStringLiteral("csv"))) {
        return context.refuse(QStringLiteral("--json and --csv do not go together"));
    }
    const auto database = context.openStudio(store::OpenMode::ReadOnly);
    if (!database) {
        return context.report(database.error());
    }
    base::ClientId client;
    if (context.has(QStringLiteral("client"))) {
        const auto chosen = chooseClient(context, **database, context.value(QStringLiteral("client")));
        if (!chosen) {
            return kWrongUse;
        }
        client = *chosen;
    }
    store::ChangeHistory history(**database);
    const auto entries = client.isNone() ? history.all(*count) : history.of(client, *count);
    if (!entries) {
        return context.report(entries.error());
    }
    const lifts::Catalogue catalogue = exchange::builtInCatalogue();
    if (context.isJson()) {
        context.out << QString::fromUtf8(ui::history::historyJsonOf(*entries, catalogue));
    } else if (context.has(QStringLiteral("csv"))) {
        context.out << QString::fromUtf8(ui::history::historyCsvOf(*entries, catalogue));
    } else {
        for (const store::ChangeEntry& entry : *entries) {
            writeLine(context, entry, catalogue);
        }
    }
    return kDone;
}

}  // namespace

Command historyCommand()
{
    return {QStringLiteral("history"),
            QStringLiteral("tell who changed what and when, the latest first"),
            {},
            0,
            0,
            {{QStringLiteral("client"), QStringLiteral("NAME"), QStringLiteral("only of this client: a name, a part of one, or an id")},
             {QStringLiteral("last"), QStringLiteral("N"), QStringLiteral("only the latest N")},
             {QStringLiteral("csv"), {}, QStringLiteral("as CSV: at_utc, who, client, topic, what, detail")}},
            QStringLiteral("Everything that was recorded, decided, planned or undone, and every change of a profile, health answers, wishes and the studio's settings,\n"
                           "with who was at work. Of health only the fields that changed are named. Nothing of it is ever changed or deleted, but with a client\n"
                           "who is erased."),
            runHistory};
}

}  // namespace chalk::app
