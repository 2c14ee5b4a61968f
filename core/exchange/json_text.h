#pragma once

#include <QByteArray>
#include <QJsonValue>

#include <string>

#include <tl/expected.hpp>

namespace chalk::exchange {

/// Why a text is not taken for JSON, and at which byte.
struct JsonTextFault {
    qsizetype offset = 0;
    std::string field;  ///< the path of the field that is there twice (`events[2].pain`); empty where the text is no JSON
    std::string reason;
};

/// The object or list that a text of JSON is, read by the letter of RFC 8259. Besides what the parser refuses: a field that an
/// object has twice (a parser keeps one of the two and says nothing), escapes and numbers that JSON does not know, and control
/// characters inside strings. A byte order mark at the start is passed over.
[[nodiscard]] tl::expected<QJsonValue, JsonTextFault> parseJsonText(const QByteArray& text);

}  // namespace chalk::exchange
