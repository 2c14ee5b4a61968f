#include "core/store/backup.h"

#include "core/store/migrations.h"
#include "core/store/sealed_copy.h"
#include "core/store/sqlite_file.h"
#include "core/store/studio_move.h"
#include "core/store/unfinished_file.h"

#include <QFile>
#include <QFileInfo>
#include <QSqlDriver>

#include <memory>

#include <sqlite3.h>

namespace chalk::store {

namespace {

using Kind = StoreError::Kind;

constexpr int kPagesAStep = 256;
constexpr int kBusyMilliseconds = 5000;
constexpr int kStepsBetweenQuestions = 100'000;  // of SQLite's machine: some milliseconds
constexpr int kVerifying = 1;                    // all of one: written, being looked at

struct SqliteCloser {
    void operator()(sqlite3* connection) const { sqlite3_close_v2(connection); }
};
using SqliteConnection = std::unique_ptr<sqlite3, SqliteCloser>;

StoreError errorOf(sqlite3* connection, const QString& file, const char* doing)
{
    const int code = sqlite3_errcode(connection) & 0xFF;
    if (code == SQLITE_INTERRUPT) {
        return {Kind::Cancelled, QStringLiteral("Stopped")};
    }
    const Kind kind = code == SQLITE_CORRUPT || code == SQLITE_NOTADB ? Kind::Damaged : code == SQLITE_BUSY || code == SQLITE_LOCKED ? Kind::Busy : Kind::CannotWrite;
    return {kind, QStringLiteral("%1 %2: %3").arg(file, QLatin1String(doing), QString::fromUtf8(sqlite3_errmsg(connection)))};
}

Result<SqliteConnection> openFile(const QString& file, int flags)
{
    sqlite3* raw = nullptr;
    const int code = sqlite3_open_v2(QFile::encodeName(file).constData(), &raw, flags, nullptr);
    SqliteConnection connection(raw);
    if (code != SQLITE_OK) {
        return tl::make_unexpected(errorOf(raw, file, "cannot be opened"));
    }
    sqlite3_busy_timeout(raw, kBusyMilliseconds);
    return connection;
}

/// The rows of a statement as text, the columns of each joined by spaces; stops after `most`.
Result<QStringList> answersOf(sqlite3* connection, const QString& file, const char* sql, int most)
{
    sqlite3_stmt* raw = nullptr;
    if (sqlite3_prepare_v2(connection, sql, -1, &raw, nullptr) != SQLITE_OK) {
        return tl::make_unexpected(errorOf(connection, file, "cannot be read"));
    }
    const std::unique_ptr<sqlite3_stmt, int (*)(sqlite3_stmt*)> statement(raw, sqlite3_finalize);
    QStringList answers;
    int code = SQLITE_ROW;
    while (answers.size() < most && (code = sqlite3_step(raw)) == SQLITE_ROW) {
        QStringList columns;
        for (int column = 0; column < sqlite3_column_count(raw); ++column) {
            columns.append(QString::fromUtf8(reinterpret_cast<const char*>(sqlite3_column_text(raw, column))));
        }
        answers.append(columns.join(QLatin1Char(' ')));
    }
    if (code != SQLITE_ROW && code != SQLITE_DONE) {
        return tl::make_unexpected(errorOf(connection, file, "cannot be read"));
    }
    return answers;
}

/// SQLite asks now and then, while it looks at a file, whether it is to stop.
int isToStop(void* progress)
{
    return (*static_cast<const Progress*>(progress))(kVerifying, kVerifying) ? 0 : 1;
}

/// Structure and references of a file that nobody else writes.
Result<void> verifyFile(const QString& file, Progress progress)
{
    if (progress && !progress(kVerifying, kVerifying)) {  // a small one is done before SQLite asks
        return storeError(Kind::Cancelled, QStringLiteral("Stopped"));
    }
    const auto connection = openFile(file, SQLITE_OPEN_READONLY);
    if (!connection) {
        return tl::make_unexpected(connection.error());
    }
    if (progress) {
        sqlite3_progress_handler(connection->get(), kStepsBetweenQuestions, isToStop, &progress);
    }
    const auto structure = answersOf(connection->get(), file, "PRAGMA integrity_check(1)", 1);
    if (!structure) {
        return tl::make_unexpected(structure.error());
    }
    if (*structure != QStringList{QStringLiteral("ok")}) {
        return storeError(Kind::Damaged, QStringLiteral("%1 is damaged: %2").arg(file, structure->join(QString())));
    }
    const auto references = answersOf(connection->get(), file, "PRAGMA foreign_key_check", 1);
    if (!references) {
        return tl::make_unexpected(references.error());
    }
    return references->isEmpty() ? Result<void>()
                                 : storeError(Kind::Damaged, QStringLiteral("%1 is damaged: a row points to nothing: %2").arg(file, references->first()));
}

/// All pages of a connection into a file that is there and empty.
Result<void> copyPages(sqlite3* from, const QString& file, const Progress& progress)
{
    const auto to = openFile(file, SQLITE_OPEN_READWRITE);
    if (!to) {
        return tl::make_unexpected(to.error());
    }
    sqlite3_backup* backup = sqlite3_backup_init(to->get(), "main", from, "main");
    if (backup == nullptr) {
        return tl::make_unexpected(errorOf(to->get(), file, "cannot be written"));
    }
    int code = SQLITE_OK;
    bool isStopped = false;
    while (!isStopped && (code == SQLITE_OK || code == SQLITE_BUSY || code == SQLITE_LOCKED)) {
        code = sqlite3_backup_step(backup, kPagesAStep);
        if (code == SQLITE_BUSY || code == SQLITE_LOCKED) {
            sqlite3_sleep(20);
        }
        const int pages = sqlite3_backup_pagecount(backup);
        isStopped = code != SQLITE_DONE && progress && !progress(pages - sqlite3_backup_remaining(backup), pages);
    }
    sqlite3_backup_finish(backup);
    if (isStopped) {
        return storeError(Kind::Cancelled, QStringLiteral("Stopped"));
    }
    if (code != SQLITE_DONE) {
        return tl::make_unexpected(errorOf(to->get(), file, "cannot be written"));
    }
    // A backup is one file: no log stands beside it.
    const auto mode = answersOf(to->get(), file, "PRAGMA journal_mode=DELETE", 1);
    return mode ? Result<void>() : tl::make_unexpected(mode.error());
}

Result<void> copyConnection(sqlite3* from, const QString& file, const std::optional<seal::FileKey>& key, const Progress& progress)
{
    if (QFileInfo::exists(file)) {
        return storeError(Kind::Refused, QStringLiteral("%1 is there already").arg(file));
    }
    UnfinishedFile unfinished(file);
    return unfinished.make()
        .and_then([&] { return copyPages(from, unfinished.path(), progress); })
        .and_then([&] { return verifyFile(unfinished.path(), progress); })
        .and_then([&] { return key ? sealCopy(unfinished.path(), *key, progress) : Result<void>(); })
        .and_then([&] { return unfinished.finish(); });
}

/// The number that a statement answers; 0 where the table is not there yet.
int countIn(sqlite3* connection, const QString& file, const char* sql)
{
    const auto answers = answersOf(connection, file, sql, 1);
    return answers && !answers->isEmpty() ? answers->first().toInt() : 0;
}

/// Holds a studio so that nobody else can; Busy where somebody does, another kind where the file itself is not sound.
Result<SqliteConnection> holdAlone(const QString& studio)
{
    auto connection = openFile(studio, SQLITE_OPEN_READWRITE);
    if (!connection) {
        return connection;
    }
    // Out of the mode with a log beside it: that needs every other connection to be gone.
    sqlite3_busy_timeout(connection->get(), 0);
    const auto mode = answersOf(connection->get(), studio, "PRAGMA journal_mode=DELETE", 1);
    if (!mode && mode.error().kind != Kind::Busy) {
        return tl::make_unexpected(mode.error());
    }
    if (!mode || *mode != QStringList{QStringLiteral("delete")}) {
        return storeError(Kind::Busy, QStringLiteral("%1 is open in another program").arg(studio));
    }
    if (sqlite3_exec(connection->get(), "BEGIN EXCLUSIVE", nullptr, nullptr, nullptr) != SQLITE_OK) {
        return storeError(Kind::Busy, QStringLiteral("%1 is open in another program").arg(studio));
    }
    return connection;
}

/// A log that waits beside a studio belongs to what is replaced: SQLite would play it into what comes in its place. It is kept with what it belongs to.
Result<void> takeLogsAway(const QString& studio, const QString& kept)
{
    for (const char* ending : {"-wal", "-journal"}) {
        const QString log = studio + QLatin1String(ending);
        if (QFileInfo(log).size() > 0) {
            if (auto copied = copyWholeFile(log, kept + QLatin1String(ending)); !copied) {
                return copied;
            }
        }
    }
    for (const char* ending : {"-wal", "-journal", "-shm"}) {
        const QString log = studio + QLatin1String(ending);
        if (QFileInfo::exists(log) && !QFile::remove(log)) {
            return storeError(Kind::CannotWrite, QStringLiteral("%1 cannot be taken away: nothing was restored").arg(log));
        }
    }
    return {};
}

}  // namespace

Result<StudioContents> contentsOf(const QString& file)
{
    if (auto checked = checkSqliteFile(file, OpenMode::ReadOnly); !checked) {
        return tl::make_unexpected(checked.error());
    }
    const auto connection = openFile(file, SQLITE_OPEN_READONLY);
    if (!connection) {
        return tl::make_unexpected(connection.error());
    }
    sqlite3* raw = connection->get();
    StudioContents contents;
    contents.bytes = QFileInfo(file).size();
    contents.schema = countIn(raw, file, "PRAGMA user_version");
    if (contents.schema > presentSchemaVersion()) {
        return storeError(Kind::Newer, QStringLiteral("%1 was written by a newer version of Chalkrung").arg(file));
    }
    const auto name = answersOf(raw, file, "SELECT name FROM studio", 1);
    const auto lastAct = answersOf(raw, file, "SELECT at_utc FROM act ORDER BY id DESC LIMIT 1", 1);
    if (!name || !lastAct) {
        return tl::make_unexpected(name ? lastAct.error() : name.error());
    }
    contents.name = name->join(QString());
    contents.lastActAtUtc = lastAct->join(QString());
    contents.clients = countIn(raw, file, "SELECT count(*) FROM client");
    contents.lifts = countIn(raw, file, "SELECT count(*) FROM lift");
    contents.sessions = countIn(raw, file, "SELECT count(*) FROM session");
    contents.entries = countIn(raw, file, "SELECT count(*) FROM event");
    return contents;
}

Result<void> copyStudio(Database& studio, const QString& file, const Progress& progress)
{
    const QVariant handle = studio.connection().driver()->handle();
    if (!handle.isValid() || qstrcmp(handle.typeName(), "sqlite3*") != 0) {
        return copyRowsToFile(studio, file, progress).map([](qint64) {});
    }
    const auto key = studio.vault().fileKey();
    if (studio.vault().isSealed() && !key) {
        return storeError(Kind::Locked, QStringLiteral("%1 is locked: a backup of it needs its passphrase").arg(studio.target()));
    }
    return copyConnection(*static_cast<sqlite3* const*>(handle.constData()), file, key, progress);
}

Result<StudioContents> verifyBackup(const QString& file, const Progress& progress, const KeyRing* keys)
{
    const KeyRing none{};
    return OpenedCopy::of(file, keys != nullptr ? *keys : none, {}, progress).and_then([&progress](const OpenedCopy& copy) {
        return contentsOf(copy.path()).and_then([&](const StudioContents& contents) { return verifyFile(copy.path(), progress).map([&contents] { return contents; }); });
    });
}

Result<void> restoreStudio(const QString& backup, const QString& studio, const QString& kept, const Progress& progress)
{
    if (auto sound = verifyBackup(backup, progress); !sound) {
        return tl::make_unexpected(sound.error());
    }
    const auto source = openFile(backup, SQLITE_OPEN_READONLY);
    if (!source) {
        return tl::make_unexpected(source.error());
    }
    UnfinishedFile restored(studio);
    auto copied = restored.make()
                      .and_then([&] { return copyPages(source->get(), restored.path(), progress); })
                      .and_then([&] { return verifyFile(restored.path(), progress); });
    if (!copied) {
        return copied;
    }
    if (!QFileInfo::exists(studio)) {
        return takeLogsAway(studio, kept).and_then([&] { return restored.finish(); });
    }
    // Where its head is damaged SQLite is not let near it: it would play a log that waits into it.
    const auto looked = checkSqliteFile(studio, OpenMode::MustExist);
    if (!looked && looked.error().kind == Kind::CannotWrite) {
        return looked;
    }
    const bool isLegible = looked || (looked.error().kind != Kind::Damaged && looked.error().kind != Kind::NotAStudio);
    const auto held = isLegible ? holdAlone(studio) : Result<SqliteConnection>();
    if (!held && held.error().kind == Kind::Busy) {
        return tl::make_unexpected(held.error());
    }
    // What is there now is kept as it is, even where it is damaged: a plain copy, not one of SQLite's.
    return copyWholeFile(studio, kept).and_then([&] { return takeLogsAway(studio, kept); }).and_then([&] { return restored.finish(); });
}

}  // namespace chalk::store
