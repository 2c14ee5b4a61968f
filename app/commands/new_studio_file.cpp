#include "app/commands/new_studio_file.h"

#include "core/store/server_target.h"

#include <QCoreApplication>
#include <QFile>
#include <QFileInfo>

namespace chalk::app {

namespace {

tl::unexpected<store::StoreError> isThereAlready(const QString& file)
{
    return store::storeError(store::StoreError::Kind::Refused,
                             QStringLiteral("%1 is there already: name another file by --studio FILE, or move that one away").arg(file));
}

}  // namespace

store::Result<NewStudioFile> NewStudioFile::begin(const QString& file)
{
    if (store::isServerTarget(file)) {
        return store::storeError(store::StoreError::Kind::Refused, QStringLiteral("This makes a file: a studio on a server is made by chalkrung server --init or chalkrung move"));
    }
    if (QFileInfo::exists(file) || QFileInfo(file).isSymLink()) {
        return isThereAlready(file);
    }
    NewStudioFile made(file, QStringLiteral("%1.part-%2").arg(file).arg(QCoreApplication::applicationPid()));
    auto database = store::Database::open(made.m_part, store::OpenMode::CreateIfMissing);
    if (!database) {
        database.error().message.replace(made.m_part, file);
        return tl::make_unexpected(database.error());
    }
    made.m_database = *std::move(database);
    return made;
}

NewStudioFile::~NewStudioFile()
{
    m_database.reset();
    for (const char* ending : {"", "-wal", "-shm", "-journal"}) {
        if (!m_part.isEmpty()) {
            QFile::remove(m_part + QLatin1String(ending));
        }
    }
}

store::Result<void> NewStudioFile::finish()
{
    m_database.reset();
    QFile part(m_part);
    if (part.rename(m_file)) {
        return {};
    }
    if (QFileInfo::exists(m_file)) {
        return isThereAlready(m_file);
    }
    return store::storeError(store::StoreError::Kind::CannotWrite, QStringLiteral("%1 cannot be made: %2").arg(m_file, part.errorString()));
}

}  // namespace chalk::app
