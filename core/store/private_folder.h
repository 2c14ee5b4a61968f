#pragma once

#include <QString>

namespace chalk::store {

/// Whether `folder` is there, or could be made, with those on the way to it: then it is readable by its owner only (0700).
[[nodiscard]] bool makePrivateFolder(const QString& folder);

}  // namespace chalk::store
