#pragma once

#include "core/exchange/csv_reading.h"

#include <QByteArray>

#include <cstdint>
#include <optional>
#include <string_view>

namespace chalk::exchange {

/// How a file of text is written. Windows1252 is ISO 8859-1 (Latin-1) for every character that prints.
enum class TextEncoding : std::uint8_t { Utf8, Utf16Little, Utf16Big, Windows1252 };

[[nodiscard]] std::string_view keyOf(TextEncoding encoding);
/// Nothing where the key is unknown: `utf-8`, `utf-16le`, `utf-16be`, `windows-1252`.
[[nodiscard]] std::optional<TextEncoding> textEncodingOf(std::string_view key);

/// By the byte order mark; else UTF-16 where every other byte of a sample is zero, UTF-8 where all is sound UTF-8, and Windows-1252 where it is not.
[[nodiscard]] TextEncoding encodingOf(const QByteArray& bytes);

/// The text in UTF-8, without a byte order mark. Fails at the first place that the encoding cannot say.
[[nodiscard]] CsvResult<QByteArray> decoded(const QByteArray& bytes, TextEncoding encoding);

/// The first byte that is no sound UTF-8 (RFC 3629: no overlong forms, no surrogates, nothing above U+10FFFF); the size where all is.
[[nodiscard]] qsizetype firstUnsoundByte(const QByteArray& bytes);

}  // namespace chalk::exchange
