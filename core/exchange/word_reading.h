#pragma once

#include "core/exchange/json_reading.h"
#include "core/lifts/exercise.h"

#include <string>
#include <vector>

namespace chalk::exchange {

/// A word of a fixed list; `find` answers nothing for an unknown one.
template <class Enum, class Find>
[[nodiscard]] Enum enumAt(ObjectReader& reader, const char* field, Find&& find)
{
    const auto value = find(reader.text(field));
    if (!value) {
        reader.fail(field, "is a word that is not known here");
    }
    return value.value_or(Enum{});
}

/// A list of texts.
[[nodiscard]] std::vector<std::string> textsAt(ObjectReader& reader, const char* field);

/// A list of cautions by their keys.
[[nodiscard]] std::vector<lifts::CautionTag> tagsAt(ObjectReader& reader, const char* field);

}  // namespace chalk::exchange
