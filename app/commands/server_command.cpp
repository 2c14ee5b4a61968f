#include "app/commands/server_command.h"

#include "app/commands/server_password.h"
#include "app/commands/stop_request.h"
#include "app/commands/told_progress.h"
#include "core/store/server_logins.h"
#include "core/store/server_target.h"
#include "core/store/studio_transfer.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

namespace chalk::app {

namespace {

using store::Role;
using store::ServerLogin;

QString roleText(Role role)
{
    const std::string_view key = store::keyOf(role);
    return QString::fromUtf8(key.data(), static_cast<qsizetype>(key.size()));
}

QString movedRowsText(qint64 rows)
{
    return rows == 1 ? QStringLiteral("1 row") : QStringLiteral("%1 rows").arg(rows);
}

void writeServerJson(const CommandContext& context, const QJsonObject& object)
{
    context.out << QJsonDocument(object).toJson(QJsonDocument::Indented);
}

int initServer(const CommandContext& context)
{
    const QString url = context.value(QStringLiteral("init"));
    if (!store::isServerTarget(url)) {
        return context.refuse(QStringLiteral("--init: a server's URL is postgresql://LOGIN@HOST/DATABASE"));
    }
    const auto studio = withPassword(url, [](const store::Access& way) { return store::Database::open(way, store::OpenMode::CreateIfMissing); });
    if (!studio) {
        return context.report(studio.error());
    }
    if (context.isJson()) {
        writeServerJson(context, {{QStringLiteral("studio"), (*studio)->target()}});
    } else {
        context.out << "A studio is ready in " << (*studio)->target() << '\n';
    }
    return kDone;
}

int listLogins(const CommandContext& context, store::Database& studio)
{
    const auto logins = store::ServerLogins(studio).list();
    if (!logins) {
        return context.report(logins.error());
    }
    QJsonArray list;
    for (const ServerLogin& login : *logins) {
        const QString coach = QString::fromStdString(login.coachName);
        list.append(QJsonObject{{QStringLiteral("login"), login.name}, {QStringLiteral("role"), roleText(login.role)}, {QStringLiteral("coach"), coach}});
        if (!context.isJson()) {
            context.out << login.name << "  " << roleText(login.role) << "  " << coach << '\n';
        }
    }
    if (context.isJson()) {
        writeServerJson(context, {{QStringLiteral("logins"), list}});
    } else if (logins->empty()) {
        context.out << "Nobody has a login yet\n";
    }
    return kDone;
}

int addLogin(const CommandContext& context, store::Database& studio)
{
    const auto role = store::roleOf(context.value(QStringLiteral("role"), QStringLiteral("coach")).toStdString());
    if (!role) {
        return context.refuse(QStringLiteral("--role: owner, coach or front-desk"));
    }
    if (!context.has(QStringLiteral("login")) || !context.has(QStringLiteral("password-file"))) {
        return context.refuse(QStringLiteral("--add-coach needs --login and --password-file"));
    }
    const auto password = context.readInput(context.value(QStringLiteral("password-file")));
    if (!password) {
        return kWrongUse;
    }
    // One line, whatever ends it.
    const QString line = QString::fromUtf8(*password).section(QLatin1Char('\n'), 0, 0).remove(QLatin1Char('\r'));
    const ServerLogin login{context.value(QStringLiteral("login")), *role, context.value(QStringLiteral("add-coach")).trimmed().toStdString()};
    if (const auto added = store::ServerLogins(studio).add(login, line); !added) {
        return context.report(added.error());
    }
    if (context.isJson()) {
        writeServerJson(context, {{QStringLiteral("added"), login.name}, {QStringLiteral("role"), roleText(login.role)}});
    } else {
        context.out << login.name << " may sign in as " << roleText(login.role) << '\n';
    }
    return kDone;
}

int removeLogin(const CommandContext& context, store::Database& studio)
{
    const QString login = context.value(QStringLiteral("remove-login"));
    if (const auto removed = store::ServerLogins(studio).remove(login); !removed) {
        return context.report(removed.error());
    }
    if (context.isJson()) {
        writeServerJson(context, {{QStringLiteral("removed"), login}});
    } else {
        context.out << login << " may sign in no more\n";
    }
    return kDone;
}

int runServer(const CommandContext& context)
{
    int asked = 0;
    for (const char* option : {"init", "list", "add-coach", "remove-login"}) {
        asked += context.has(QLatin1String(option)) ? 1 : 0;
    }
    if (asked != 1) {
        return context.refuse(QStringLiteral("one of --init, --list, --add-coach and --remove-login"));
    }
    if (context.has(QStringLiteral("init"))) {
        return initServer(context);
    }
    const auto studio = context.openStudio(store::OpenMode::MustExist);
    if (!studio) {
        return context.report(studio.error());
    }
    if (context.has(QStringLiteral("list"))) {
        return listLogins(context, **studio);
    }
    return context.has(QStringLiteral("add-coach")) ? addLogin(context, **studio) : removeLogin(context, **studio);
}

constexpr int kTellEveryRows = 5000;

int runMove(const CommandContext& context)
{
    const QString from = context.value(QStringLiteral("from"));
    const QString to = context.value(QStringLiteral("to"));
    if (from.isEmpty() || to.isEmpty()) {
        return context.refuse(QStringLiteral("--from and --to are needed, each a file or a server's URL"));
    }
    const StopRequest stop;
    CommandContext origin = context;
    origin.studioFile = from;
    const auto studio = origin.openStudio(store::OpenMode::MustExist);
    if (!studio) {
        return context.report(studio.error());
    }
    const QString place = store::withoutPasswordInTarget(to).target;
    const store::Progress progress = toldProgress(context, QStringLiteral("rows"), kTellEveryRows);
    const auto rows = withPassword(to, [&](const store::Access& way) { return store::transferStudio(**studio, way, progress); });
    if (!rows) {
        return context.report(rows.error());
    }
    if (context.isJson()) {
        writeServerJson(context, {{QStringLiteral("from"), (*studio)->target()}, {QStringLiteral("to"), place}, {QStringLiteral("rows"), *rows}});
    } else {
        context.out << "Copied, compared and verified " << movedRowsText(*rows) << " from " << (*studio)->target() << " to " << place << "\nWhat it came from is left as it is\n";
    }
    return kDone;
}

}  // namespace

Command serverCommand()
{
    return {QStringLiteral("server"),
            QStringLiteral("make a studio on a PostgreSQL server, and say who may sign in there"),
            QString(),
            0,
            0,
            {{QStringLiteral("init"), QStringLiteral("URL"), QStringLiteral("make an empty studio in this database, postgresql://LOGIN@HOST/DATABASE")},
             {QStringLiteral("list"), {}, QStringLiteral("tell who may sign in, and as what")},
             {QStringLiteral("add-coach"), QStringLiteral("NAME"), QStringLiteral("give a login to who works under this name; with --login and --password-file")},
             {QStringLiteral("login"), QStringLiteral("LOGIN"), QStringLiteral("the name to sign in with")},
             {QStringLiteral("role"), QStringLiteral("ROLE"), QStringLiteral("owner, coach or front-desk; else coach")},
             {QStringLiteral("password-file"), QStringLiteral("FILE"), QStringLiteral("the first line is the password; - for standard input")},
             {QStringLiteral("remove-login"), QStringLiteral("LOGIN"), QStringLiteral("take a login away; what was done by it stays")}},
            QStringLiteral("The studio is --studio URL. Its password is that of PGPASSFILE or ~/.pgpass, or is asked for. Logins are made by who may make roles on the server.\n"
                           "An owner may everything; a coach all but logins, erasure and the studio's settings; the front desk sees names and bookings\n"
                           "and books. The server itself holds everybody to it."),
            runServer};
}

Command moveCommand()
{
    return {QStringLiteral("move"),
            QStringLiteral("take a studio from a file to a server, or back"),
            QString(),
            0,
            0,
            {{QStringLiteral("from"), QStringLiteral("STUDIO"), QStringLiteral("where it is: a file, or postgresql://LOGIN@HOST/DATABASE")},
             {QStringLiteral("to"), QStringLiteral("STUDIO"), QStringLiteral("where it goes: a file or a database in which there is no studio yet")}},
            QStringLiteral("Every row goes over, with its history and undo, is read back and compared, and the whole is verified. All of it is there in the end,\n"
                           "or nothing. Where it came from is left as it is. Logins of a server are not taken along."),
            runMove};
}

}  // namespace chalk::app
