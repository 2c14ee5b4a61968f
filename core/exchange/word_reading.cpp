#include "core/exchange/word_reading.h"

#include <QJsonArray>

namespace chalk::exchange {

std::vector<std::string> textsAt(ObjectReader& reader, const char* field)
{
    std::vector<std::string> texts;
    for (const QJsonValue& value : reader.array(field)) {
        if (!value.isString()) {
            reader.fail(field, "must be a list of texts");
        }
        texts.push_back(value.toString().toStdString());
    }
    return texts;
}

std::vector<lifts::CautionTag> tagsAt(ObjectReader& reader, const char* field)
{
    std::vector<lifts::CautionTag> tags;
    for (const std::string& key : textsAt(reader, field)) {
        if (const auto tag = lifts::cautionTagOf(key)) {
            tags.push_back(*tag);
        } else {
            reader.fail(field, key + " is no caution that is known here");
        }
    }
    return tags;
}

}  // namespace chalk::exchange
