#pragma once

#include <QJsonObject>
#include <QString>

#include <string_view>

namespace chalk::exchange {

[[nodiscard]] inline QString textOf(std::string_view text)
{
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

inline void put(QJsonObject& object, const char* field, const QJsonValue& value)
{
    object.insert(QLatin1String(field), value);
}

}  // namespace chalk::exchange
