#pragma once

#include "core/exchange/json_reading.h"
#include "core/exchange/line_writer.h"
#include "core/exchange/studio_document.h"
#include "core/lifts/catalogue.h"

#include <string>
#include <vector>

namespace chalk::exchange {

/// What a lift in a studio's files refers to.
struct LiftSurroundings {
    const StudioDocument& studio;  ///< its equipment and its day
    const lifts::Catalogue& catalogue;
    const std::vector<sessions::Session>& sessions;  ///< of the client
};

/// Reads a lift of a client and judges its whole history, so that an event that cannot be is a fault with its place.
[[nodiscard]] JsonResult<DocumentLift> readLift(const QJsonValue& value, const std::string& path, const LiftSurroundings& surroundings);

/// What the sets of each entry of a lift are counted in: the swaps before it by date decide.
[[nodiscard]] std::vector<lifts::Measure> measuresOf(const DocumentLift& lift);
/// An entry of a log, written; its sets are counted in `measure`.
[[nodiscard]] QJsonObject toJson(const DocumentEvent& entry, lifts::Measure measure);
/// A lift, written; its events are in the text alone. `depth` is how deep it lies in its file.
[[nodiscard]] WrittenObject writtenLift(const DocumentLift& lift, int depth);

}  // namespace chalk::exchange
