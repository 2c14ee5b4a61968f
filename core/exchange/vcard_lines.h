#pragma once

#include <QByteArray>

#include <optional>
#include <vector>

namespace chalk::exchange {

/// One parameter of a line: `TYPE=home`. A bare word of older cards is a TYPE.
struct VCardParameter {
    QByteArray name;                 ///< upper case
    std::vector<QByteArray> values;  ///< without quotes

    bool operator==(const VCardParameter&) const = default;
};

/// A content line, unfolded (RFC 6350, 3.2 and 3.3).
struct VCardLine {
    QByteArray group;                ///< `item1` of `item1.TEL`; empty without one
    QByteArray name;                 ///< upper case; empty where the line is none
    std::vector<VCardParameter> parameters;
    QByteArray value;                ///< as it stands, escapes and all; quoted-printable and charsets are undone
    int line = 1;                    ///< where it begins in the text
    int valueColumn = 1;             ///< in characters

    /// Whether one of the values of a parameter is that word, in any case.
    [[nodiscard]] bool has(const char* parameter, const char* value) const;
    /// The first value of a parameter; nothing where it is not there.
    [[nodiscard]] std::optional<QByteArray> first(const char* parameter) const;
};

/// The lines of a text, in UTF-8; empty ones are left out. Lines end by CRLF, LF or CR.
[[nodiscard]] std::vector<VCardLine> vcardLines(const QByteArray& text);

/// The text of a value without its escapes: `\n` is a line end, `\,` a comma, `\;` a semicolon, `\\` a backslash (RFC 6350, 3.4).
[[nodiscard]] QByteArray unescaped(const QByteArray& value);
/// The components of a value, parted by semicolons that are not escaped; the escapes are still there.
[[nodiscard]] std::vector<QByteArray> componentsOf(const QByteArray& value);

}  // namespace chalk::exchange
