#pragma once

#include <QByteArray>

#include <string>

namespace chalk::exchange {

/// Where in a text something stands, both counted from 1. Columns are characters.
struct JsonPlace {
    int line = 1;
    int column = 1;

    bool operator==(const JsonPlace&) const = default;
};

/// The place of a byte of a UTF-8 text.
[[nodiscard]] JsonPlace placeAt(const QByteArray& text, qsizetype offset);

/// Where the value stands that a path (`lifts[2].events[14].sets[0].rir`) names in a JSON text; of the nearest one around it that is
/// there, where it is not. The text is sound JSON.
[[nodiscard]] JsonPlace placeOf(const QByteArray& text, const std::string& path);

}  // namespace chalk::exchange
