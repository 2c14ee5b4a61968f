#pragma once

#include "core/exchange/json_reading.h"
#include "core/exchange/studio_document.h"

#include <QByteArray>
#include <QString>

#include <map>

namespace chalk::exchange {

/// A fault in a studio's files: the file, the place in it (`lifts[2].events[14].sets[0].rir`, or a line and column where the text is no
/// JSON) and why.
struct StudioFault {
    QString file;
    JsonFault fault;

    [[nodiscard]] QString message() const;
};

/// The files of a studio by name: `studio.json`, and one for each client, `clients/01-joaquin-ferro.json` and so on.
using StudioFiles = std::map<QString, QByteArray>;

/// Writes a studio as files in the open format; the same bytes for the same document.
[[nodiscard]] StudioFiles writeStudio(const StudioDocument& document);

/// Reads what writeStudio writes, strictly: unknown fields and words, impossible numbers and days, references to nothing are faults.
[[nodiscard]] tl::expected<StudioDocument, StudioFault> readStudio(const StudioFiles& files);

/// The files of a folder, or of a folder of the program's resources (`:/demo`). Empty where there is no studio.json.
[[nodiscard]] StudioFiles studioFilesIn(const QString& folder);

}  // namespace chalk::exchange
