#pragma once

#include "core/exchange/json_places.h"
#include "core/exchange/json_reading.h"
#include "core/exchange/line_writer.h"
#include "core/exchange/studio_document.h"
#include "core/lifts/catalogue.h"

#include <QByteArray>
#include <QString>

#include <map>
#include <optional>
#include <set>
#include <string>

namespace chalk::exchange {

// The open format of a studio: a folder with `studio.json` and a file for each client in `clients/`. demo_clients/README.md
// describes it field by field.

/// The format that is written, and the only one that is read.
inline constexpr int kStudioFormat = 1;

/// A fault in a studio's files. `fault.field` is the path of the value (`lifts[2].events[14].sets[0].rir`), empty where it is about
/// the whole file.
struct StudioFault {
    QString file;
    std::optional<JsonPlace> place;  ///< nothing where the file could not be read at all
    JsonFault fault;

    /// `clients/01-ada-lund.json, line 14, column 9: lifts[0].started must be a day, YYYY-MM-DD`.
    [[nodiscard]] QString message() const;
};

template <class T>
using StudioResult = tl::expected<T, StudioFault>;

/// The files of a studio by name: `studio.json`, and one for each client, `clients/01-joaquin-ferro.json` and so on.
using StudioFiles = std::map<QString, QByteArray>;

/// Writes a studio as files in the open format: the same bytes for the same document on every machine. Every session and client has
/// a coach of the document.
[[nodiscard]] StudioFiles writeStudio(const StudioDocument& document);

/// The name of the file of the studio's own things.
[[nodiscard]] QString studioFileName();
/// `clients/01-joaquin-ferro.json`: of a client by its number, from 1, of `last`, so that names sort as the clients do.
[[nodiscard]] QString clientFileName(std::size_t number, std::size_t last, const std::string& clientName);
/// The studio's own file, for who writes client by client with writtenClient.
[[nodiscard]] WrittenObject writtenStudio(const StudioDocument& document);

/// What the studio's own file says, without clients; for who reads client by client.
[[nodiscard]] JsonResult<StudioDocument> readStudioHeader(const QJsonValue& value, const lifts::Catalogue& catalogue);
[[nodiscard]] StudioResult<StudioDocument> readStudioFile(const QByteArray& text, const lifts::Catalogue& catalogue);
/// A client's file; `codes` as with readClient.
[[nodiscard]] StudioResult<DocumentClient> readClientFile(const QString& name, const QByteArray& text, const StudioDocument& studio,
                                                          const lifts::Catalogue& catalogue, std::set<std::string>& codes);

/// Reads what writeStudio writes, strictly: unknown fields and words, fields that are there twice, impossible numbers and days,
/// references to nothing, and events that a lift's rules cannot judge are faults. Exercises are those of the catalogue. Clients come
/// in the order of their files' names.
[[nodiscard]] StudioResult<StudioDocument> readStudio(const StudioFiles& files, const lifts::Catalogue& catalogue);

}  // namespace chalk::exchange
