#include "app/commands/new_studio_file.h"

#include "core/store/private_folder.h"
#include "core/store/server_target.h"

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
    NewStudioFile made(file);
    if (!store::makePrivateFolder(QFileInfo(file).absolutePath())) {
        return store::storeError(store::StoreError::Kind::CannotWrite, QStringLiteral("%1 cannot be made: its folder cannot be made").arg(file));
    }
    if (const auto part = made.m_part->make(); !part) {
        return tl::make_unexpected(part.error());
    }
    auto database = store::Database::open(made.m_part->path(), store::OpenMode::CreateIfMissing);
    if (!database) {
        database.error().message.replace(made.m_part->path(), file);
        return tl::make_unexpected(database.error());
    }
    made.m_database = *std::move(database);
    return made;
}

NewStudioFile::NewStudioFile(const QString& file) : m_file(file), m_part(std::make_unique<store::UnfinishedFile>(file))
{
}

store::Result<void> NewStudioFile::finish()
{
    m_database.reset();
    return QFileInfo::exists(m_file) ? store::Result<void>(isThereAlready(m_file)) : m_part->finish();
}

}  // namespace chalk::app
