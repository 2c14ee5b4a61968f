#include "app/commands/erase_command.h"

#include "app/commands/client_choice.h"
#include "core/store/erasure.h"
#include "ui/records/erasure_words.h"
#include "ui/common/formats.h"

#include <QJsonDocument>
#include <QJsonObject>
#include <QTextStream>

#include <cstdio>

namespace chalk::app {

namespace {

QJsonObject previewJson(const store::ErasurePreview& preview)
{
    return {{QStringLiteral("client"), ui::common::qstring(preview.name)}, {QStringLiteral("lifts"), preview.lifts},
            {QStringLiteral("entries"), preview.entries},                  {QStringLiteral("forms"), preview.forms},
            {QStringLiteral("letters"), preview.letters},                  {QStringLiteral("decisions"), preview.decisions},
            {QStringLiteral("kept_sessions"), preview.keptSessions},       {QStringLiteral("open_sessions"), preview.openSessions}};
}

/// The name as it is typed, or that of --yes.
QString typedName(const CommandContext& context, const store::ErasurePreview& preview)
{
    if (context.has(QStringLiteral("yes"))) {
        return context.value(QStringLiteral("yes"));
    }
    context.err << QStringLiteral("Type %1 to erase this client for good: ").arg(ui::common::qstring(preview.name)) << Qt::flush;
    return QTextStream(stdin).readLine();
}

int erase(const CommandContext& context, store::Database& database, base::ClientId client, const store::ErasurePreview& preview)
{
    if (typedName(context, preview) != ui::common::qstring(preview.name)) {
        return context.refuse(QStringLiteral("that is not the name of the client: nothing was erased"));
    }
    const auto erased = store::eraseClient(database, client, preview.name, context.today);
    if (!erased) {
        return context.report(erased.error());
    }
    if (context.isJson()) {
        QJsonObject json = previewJson(preview);
        json.remove(QStringLiteral("client"));
        json.insert(QStringLiteral("erased_client"), erased->number);
        json.insert(QStringLiteral("wiped"), erased->wiped == store::Wiped::Done);
        context.out << QJsonDocument(json).toJson(QJsonDocument::Compact) << '\n';
    } else {
        context.out << ui::records::erasedText(*erased) << '\n' << ui::records::erasureBackupsText() << '\n';
    }
    return kDone;
}

int runErase(const CommandContext& context)
{
    const auto database = context.openStudio(store::OpenMode::MustExist);
    if (!database) {
        return context.report(database.error());
    }
    const auto client = chooseClient(context, **database, context.operands.front());
    if (!client) {
        return kWrongUse;
    }
    const auto preview = store::previewErasure(**database, *client, context.today);
    if (!preview) {
        return context.report(preview.error());
    }
    const bool isOnlyPreview = context.has(QStringLiteral("preview"));
    if (!context.isJson()) {
        for (const QString& line : ui::records::erasurePreviewLines(*preview)) {
            context.out << line << '\n';
        }
        context.out << Qt::flush;
    } else if (isOnlyPreview) {
        context.out << QJsonDocument(previewJson(*preview)).toJson(QJsonDocument::Compact) << '\n';
    }
    return isOnlyPreview ? static_cast<int>(kDone) : erase(context, **database, *client, *preview);
}

}  // namespace

Command eraseCommand()
{
    return {QStringLiteral("erase"),
            QStringLiteral("take a client out of the studio for good"),
            QStringLiteral("CLIENT"),
            1,
            1,
            {{QStringLiteral("preview"), {}, QStringLiteral("only tell what would go and what would be kept")},
             {QStringLiteral("yes"), QStringLiteral("NAME"), QStringLiteral("the client's whole name, instead of typing it when asked")}},
            QStringLiteral("CLIENT is a name, a part of one, or an id. Everything goes: profile, health, lifts, log, decisions, plans, reports and history. Kept for\n"
                           "the accounts are day, time, minutes, coach, kind and state of past sessions, of an erased client with a number. The file is written\n"
                           "anew, so that nothing is left in it. Backups made before still hold the person, until they are removed or rotated away, at the latest\n"
                           "after 12 months. It cannot be undone."),
            runErase};
}

}  // namespace chalk::app
