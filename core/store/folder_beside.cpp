#include "core/store/folder_beside.h"

#include <QDir>
#include <QDirIterator>
#include <QFile>
#include <QFileInfo>

namespace chalk::store {

namespace {

constexpr auto kOwnFolder = QFileDevice::ReadOwner | QFileDevice::WriteOwner | QFileDevice::ExeOwner;

StoreError folderError(const QString& folder)
{
    return {StoreError::Kind::CannotWrite, QStringLiteral("%1 cannot be written to").arg(folder)};
}

/// The uppermost folder on the way to `folder` that is not there; empty where all are.
QString firstMissing(const QString& folder)
{
    QString missing;
    for (QString above = folder; !QFileInfo::exists(above); above = QFileInfo(above).path()) {
        missing = above;
    }
    return missing;
}

}  // namespace

FolderBeside::FolderBeside(const QString& folder) : m_folder(QDir::cleanPath(QDir(folder).absolutePath())) {}

FolderBeside::~FolderBeside()
{
    m_beside.reset();
    m_before.reset();
    for (QString made = m_folder; !m_firstMade.isEmpty() && made.size() >= m_firstMade.size(); made = QFileInfo(made).path()) {
        QDir().rmdir(made);  // which refuses one that holds something
    }
}

Result<void> FolderBeside::begin()
{
    m_firstMade = firstMissing(m_folder);
    if (!QDir().mkpath(m_folder) || (!m_firstMade.isEmpty() && !QFile::setPermissions(m_folder, kOwnFolder))) {
        return tl::make_unexpected(StoreError{StoreError::Kind::CannotWrite, QStringLiteral("%1 cannot be made").arg(m_folder)});
    }
    m_beside = std::make_unique<QTemporaryDir>(m_folder + QStringLiteral("/.chalkrung-new-XXXXXX"));
    m_before = std::make_unique<QTemporaryDir>(m_folder + QStringLiteral("/.chalkrung-old-XXXXXX"));
    return m_beside->isValid() && m_before->isValid() ? Result<void>() : tl::make_unexpected(folderError(m_folder));
}

bool FolderBeside::move(const QString& from, const QString& to)
{
    if (!QDir().mkpath(QFileInfo(to).path()) || !QFile::rename(from, to)) {
        return false;
    }
    m_moved.push_back({from, to});
    return true;
}

bool FolderBeside::exchange(const QString& name)
{
    const QString place = m_folder + QLatin1Char('/') + name;
    const bool isFree = !QFileInfo::exists(place) || move(place, m_before->filePath(name));
    return isFree && move(m_beside->filePath(name), place);
}

void FolderBeside::goBack()
{
    for (auto moved = m_moved.rbegin(); moved != m_moved.rend(); ++moved) {
        if (!QFile::rename(moved->to, moved->from)) {
            m_before->setAutoRemove(false);  // better found there than lost
        }
    }
    m_moved.clear();
}

Result<void> FolderBeside::keep()
{
    QStringList names;
    for (QDirIterator each(m_beside->path(), QDir::Files | QDir::Hidden, QDirIterator::Subdirectories); each.hasNext();) {
        names.append(QDir(m_beside->path()).relativeFilePath(each.next()));
    }
    for (const QString& name : names) {
        if (!exchange(name)) {
            goBack();
            return tl::make_unexpected(folderError(m_folder + QLatin1Char('/') + name));
        }
    }
    m_firstMade.clear();
    return {};
}

}  // namespace chalk::store
