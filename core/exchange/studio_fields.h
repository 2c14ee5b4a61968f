#pragma once

#include "core/base/date.h"
#include "core/base/load.h"
#include "core/exchange/json_reading.h"

#include <QJsonArray>

#include <optional>
#include <string>
#include <type_traits>
#include <utility>

#include <fmt/core.h>

namespace chalk::exchange {

// Fields that several parts of a studio's files have. Each reads one field; what is wrong becomes the fault of the reader.

/// A day, YYYY-MM-DD, of the years 1900 to 2199.
[[nodiscard]] base::Date dayAt(ObjectReader& reader, const char* field);
[[nodiscard]] std::optional<base::Date> optionalDayAt(ObjectReader& reader, const char* field);
/// Free text of at most 4000 characters; it may be empty.
[[nodiscard]] std::string proseAt(ObjectReader& reader, const char* field);
/// One line of at most 200 characters, not empty.
[[nodiscard]] std::string labelAt(ObjectReader& reader, const char* field);
/// A word of small letters, digits and underscores: `light_bar`.
[[nodiscard]] std::string keyAt(ObjectReader& reader, const char* field);
/// `unit`: kg or lb.
[[nodiscard]] base::MassUnit unitAt(ObjectReader& reader);
/// A load of 0.01 or more, where it is there.
[[nodiscard]] std::optional<base::Load> optionalMassAt(ObjectReader& reader, const char* field);

/// The value that `find` has for the word of a field; `expected` completes `must be …`.
template <class Find>
[[nodiscard]] auto wordAt(ObjectReader& reader, const char* field, Find&& find, const char* expected)
{
    const auto value = find(reader.text(field));
    if (!value) {
        reader.fail(field, std::string("must be ") + expected);
    }
    return value.value_or(typename std::decay_t<decltype(value)>::value_type{});
}

/// What was read deeper; its fault becomes that of the reader.
template <class T>
[[nodiscard]] T taken(ObjectReader& reader, JsonResult<T> result)
{
    if (!result) {
        reader.take(result.error());
        return T{};
    }
    return *std::move(result);
}

/// Reads every item of a list by a reader of its own, until something is wrong.
template <class Read>
void eachOf(ObjectReader& reader, const char* field, Read&& read)
{
    const QJsonArray array = reader.array(field);
    for (qsizetype i = 0; i < array.size() && reader.isSound(); ++i) {
        ObjectReader item(array[i], fmt::format("{}[{}]", reader.pathOf(field), i));
        read(item);
        if (item.fault()) {
            reader.take(*item.fault());
        }
    }
}

}  // namespace chalk::exchange
