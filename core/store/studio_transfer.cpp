#include "core/store/studio_transfer.h"

#include "core/store/server_target.h"
#include "core/store/studio_check.h"
#include "core/store/studio_move.h"
#include "core/store/unfinished_file.h"
#include "core/store/unfinished_server.h"

#include <QFileInfo>

namespace chalk::store {

namespace {

using Kind = StoreError::Kind;

using Checks = Result<StudioCheck> (*)(Database& database, const Progress& progress);

/// What verifying has against a copy; nothing where it is sound.
Result<void> verified(Checks checks, Database& copy, const Progress& progress)
{
    // The bar is full by now: what verifying tells of itself is another measure.
    const auto check = checks(copy, [&progress](int, int) { return !progress || progress(1, 1); });
    if (!check) {
        return tl::make_unexpected(check.error());
    }
    if (!check->isSound()) {
        return storeError(Kind::Damaged, QStringLiteral("The copy in %1 is not sound, and was thrown away: %2").arg(copy.target(), check->faults.front().message));
    }
    return {};
}

/// In one transaction, so that nobody at the server ever sees less than all of it.
Result<qint64> fillServer(Database& from, const Access& to, const Progress& progress)
{
    UnfinishedServer unfinished(to);
    auto filled = unfinished.make().and_then([&](const std::unique_ptr<Database>& server) {
        return copyRows(from, *server, progress, [&server, &progress] { return verified(checkTransaction, *server, progress); });
    });
    if (filled) {
        unfinished.finish();
    }
    return filled;
}

/// Into a file that has another name until it holds everything and is on the disk.
Result<qint64> fillFile(Database& from, const QString& file, const Progress& progress)
{
    UnfinishedFile unfinished(file);
    if (auto made = unfinished.make(); !made) {
        return tl::make_unexpected(made.error());
    }
    // Closed before it gets its name, so that nothing waits beside it.
    auto filled = Database::open(unfinished.path(), OpenMode::CreateIfMissing).and_then([&](const std::unique_ptr<Database>& to) {
        return copyRows(from, *to, progress).and_then([&](qint64 rows) { return verified(checkStudio, *to, progress).map([rows] { return rows; }); });
    });
    if (!filled) {
        filled.error().message.replace(unfinished.path(), file);
        return filled;
    }
    return unfinished.finish().map([&filled] { return *filled; });
}

}  // namespace

Result<qint64> transferStudio(Database& from, const Access& to, const Progress& progress)
{
    if (isServerTarget(to.target)) {
        return fillServer(from, to, progress);
    }
    if (QFileInfo::exists(to.target) || QFileInfo(to.target).isSymLink()) {
        return storeError(Kind::Refused, QStringLiteral("%1 is there already: name another file, or move that one away").arg(to.target));
    }
    if (const QString folder = QFileInfo(to.target).absolutePath(); !QFileInfo(folder).isDir()) {
        return storeError(Kind::CannotWrite, QStringLiteral("%1 cannot be made: there is no folder %2").arg(to.target, folder));
    }
    return fillFile(from, to.target, progress);
}

}  // namespace chalk::store
