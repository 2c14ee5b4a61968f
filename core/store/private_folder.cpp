#include "core/store/private_folder.h"

#include <QDir>
#include <QFile>

namespace chalk::store {

bool makePrivateFolder(const QString& folder)
{
    return QDir(folder).exists() || (QDir().mkpath(folder) && QFile::setPermissions(folder, QFile::ReadOwner | QFile::WriteOwner | QFile::ExeOwner));
}

}  // namespace chalk::store
