#pragma once

#include "core/exchange/studio_json.h"

#include <QStringList>

namespace chalk::exchange {

/// The files of a studio in a folder, or in a folder of the program's resources (`:/demo`): `studio.json` and `clients/*.json`;
/// others are left alone. Fails where there is no studio.json, and on a file that cannot be read or has more than 64 MB.
[[nodiscard]] StudioResult<StudioFiles> studioFilesIn(const QString& folder);

/// The names of the clients' files in a folder, in the order in which they are read.
[[nodiscard]] QStringList clientFilesIn(const QString& folder);
/// The text of one of a studio's files. Fails where it cannot be read or has more than 64 MB.
[[nodiscard]] StudioResult<QByteArray> studioTextIn(const QString& folder, const QString& name);

/// Writes the files of a studio into a folder, which is made where it is not there. Fails, and may leave some files, where one cannot
/// be written. Files of other clients that are there already are a fault too: they would be read as of this studio.
[[nodiscard]] StudioResult<void> writeFilesInto(const QString& folder, const StudioFiles& files);

}  // namespace chalk::exchange
