#include "core/exchange/caution_json.h"

#include "core/exchange/studio_fields.h"

#include <QJsonArray>

#include <algorithm>

#include <fmt/core.h>

namespace chalk::exchange {

clients::Caution cautionOf(ObjectReader& reader)
{
    reader.allowOnly({"body_part", "text", "short", "tags", "until"});
    clients::Caution caution{{}, labelAt(reader, "body_part"), proseAt(reader, "text"), labelAt(reader, "short"), {}, optionalDayAt(reader, "until")};
    const QJsonArray tags = reader.array("tags");
    for (qsizetype i = 0; i < tags.size(); ++i) {
        const auto tag = lifts::cautionTagOf(tags[i].toString().toStdString());
        const std::string place = fmt::format("{}[{}]", reader.pathOf("tags"), i);
        if (!tag) {
            reader.take({place, "is no caution that is known here"});
        } else if (std::find(caution.tags.begin(), caution.tags.end(), *tag) != caution.tags.end()) {
            reader.take({place, "is named twice"});
        } else {
            caution.tags.push_back(*tag);
        }
    }
    return caution;
}

}  // namespace chalk::exchange
