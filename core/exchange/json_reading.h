#pragma once

#include <QByteArray>
#include <QJsonObject>
#include <QJsonValue>
#include <QString>

#include <cstdint>
#include <initializer_list>
#include <optional>
#include <string>

#include <tl/expected.hpp>

namespace chalk::exchange {

/// What is wrong with a JSON value: the path of the field (`sets[2].rir`) and why.
struct JsonFault {
    std::string field;
    std::string reason;

    bool operator==(const JsonFault&) const = default;
};

template <class T>
using JsonResult = tl::expected<T, JsonFault>;

[[nodiscard]] tl::unexpected<JsonFault> jsonFault(std::string field, std::string reason);

/// The object or array that a text of JSON is; where it is no JSON, the fault's field is the place: `line 3, column 7`. A field that is
/// there twice is a fault of that field.
[[nodiscard]] JsonResult<QJsonValue> parseJson(const QByteArray& text);

/// Reads the fields of one JSON object, strictly. The first thing that is wrong is kept as the fault, and every later read
/// answers something harmless: so a reader asks for its fields in a row and looks at the fault once, at the end.
class ObjectReader {
public:
    /// `path` is put before the names of fields: empty at the top, `sets[2]` inside.
    ObjectReader(const QJsonValue& value, std::string path);

    /// Fails on the first field that is none of these; none of them is there twice, and nullptr stands for none.
    void allowOnly(std::initializer_list<const char*> fields);
    [[nodiscard]] bool has(const char* field) const;

    /// The value of a field that must be there.
    [[nodiscard]] QJsonValue required(const char* field);
    [[nodiscard]] QJsonValue optional(const char* field) const;

    /// A whole number from `low` to `high`.
    [[nodiscard]] int wholeNumber(const char* field, int low, int high);
    [[nodiscard]] std::optional<int> optionalWholeNumber(const char* field, int low, int high);
    /// A number in units of 10^-decimals, exact: more decimals fail. `low` and `high` are in the same small units.
    [[nodiscard]] std::int32_t decimal(const char* field, int decimals, std::int64_t low, std::int64_t high);
    [[nodiscard]] std::optional<std::int32_t> optionalDecimal(const char* field, int decimals, std::int64_t low, std::int64_t high);
    /// A text that is not empty.
    [[nodiscard]] std::string text(const char* field);
    [[nodiscard]] std::optional<std::string> optionalText(const char* field);
    /// True or false; `fallback` where it is absent.
    [[nodiscard]] bool flag(const char* field, bool fallback);
    [[nodiscard]] QJsonArray array(const char* field);

    /// The path of a field of this object.
    [[nodiscard]] std::string pathOf(const char* field) const;
    void fail(const char* field, std::string reason);
    /// Takes over a fault found deeper; the first one counts.
    void take(const JsonFault& fault);

    [[nodiscard]] const std::optional<JsonFault>& fault() const { return m_fault; }
    [[nodiscard]] bool isSound() const { return !m_fault; }

private:
    std::string m_path;
    QJsonObject m_object;
    std::optional<JsonFault> m_fault;
};

/// A JSON number in units of 10^-decimals, exact; fails on anything else.
[[nodiscard]] JsonResult<std::int32_t> exactDecimal(const QJsonValue& value, const std::string& path, int decimals, std::int64_t low,
                                                    std::int64_t high);

/// The value of a reader that read soundly, or its fault.
template <class T>
[[nodiscard]] JsonResult<T> resultOf(const ObjectReader& reader, T value)
{
    if (reader.fault()) {
        return tl::make_unexpected(*reader.fault());
    }
    return value;
}

}  // namespace chalk::exchange
