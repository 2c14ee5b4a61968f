#include "core/exchange/json_reading.h"

#include "core/exchange/json_places.h"
#include "core/exchange/json_text.h"

#include <QJsonArray>

#include <algorithm>
#include <cassert>
#include <cmath>
#include <set>
#include <string_view>

#include <fmt/core.h>

namespace chalk::exchange {

namespace {

/// `0 to 10`, or `0.01 to 5000` for small units.
std::string rangeText(std::int64_t low, std::int64_t high, int decimals)
{
    const double unit = std::pow(10.0, decimals);
    return fmt::format("must be {:g} to {:g}", static_cast<double>(low) / unit, static_cast<double>(high) / unit);
}

[[maybe_unused]] bool areDistinct(std::initializer_list<const char*> fields)
{
    std::set<std::string_view> names;
    return std::all_of(fields.begin(), fields.end(), [&names](const char* field) { return field == nullptr || names.insert(field).second; });
}

}  // namespace

tl::unexpected<JsonFault> jsonFault(std::string field, std::string reason)
{
    return tl::make_unexpected(JsonFault{std::move(field), std::move(reason)});
}

JsonResult<QJsonValue> parseJson(const QByteArray& text)
{
    return parseJsonText(text).map_error([&text](const JsonTextFault& fault) {
        const JsonPlace place = placeAt(text, fault.offset);
        return JsonFault{fault.field.empty() ? fmt::format("line {}, column {}", place.line, place.column) : fault.field, fault.reason};
    });
}

JsonResult<std::int32_t> exactDecimal(const QJsonValue& value, const std::string& path, int decimals, std::int64_t low, std::int64_t high)
{
    if (!value.isDouble()) {
        return jsonFault(path, "must be a number");
    }
    const double unit = std::pow(10.0, decimals);
    const double given = value.toDouble();
    const double scaled = std::nearbyint(given * unit);
    if (!(scaled >= static_cast<double>(low) && scaled <= static_cast<double>(high))) {
        return jsonFault(path, rangeText(low, high, decimals));
    }
    // A number with few enough decimals is the double nearest to its whole number of small units.
    if (scaled / unit != given) {
        return jsonFault(path, decimals == 0 ? "must be a whole number" : fmt::format("must have at most {} decimals", decimals));
    }
    return static_cast<std::int32_t>(scaled);
}

ObjectReader::ObjectReader(const QJsonValue& value, std::string path) : m_path(std::move(path)), m_object(value.toObject())
{
    if (!value.isObject()) {
        m_fault = JsonFault{m_path.empty() ? "input" : m_path, "must be an object"};
    }
}

std::string ObjectReader::pathOf(const char* field) const
{
    return m_path.empty() ? std::string(field) : m_path + "." + field;
}

void ObjectReader::fail(const char* field, std::string reason)
{
    take({pathOf(field), std::move(reason)});
}

void ObjectReader::take(const JsonFault& fault)
{
    if (!m_fault) {
        m_fault = fault;
    }
}

void ObjectReader::allowOnly(std::initializer_list<const char*> fields)
{
    assert(areDistinct(fields));
    // Asking for the names that may be there is quicker than making those that are.
    const auto known = std::count_if(fields.begin(), fields.end(), [this](const char* field) { return field != nullptr && has(field); });
    if (known == m_object.size()) {
        return;
    }
    for (auto it = m_object.constBegin(); it != m_object.constEnd(); ++it) {
        const bool isKnown = std::any_of(fields.begin(), fields.end(), [&it](const char* field) { return field != nullptr && it.key() == QLatin1String(field); });
        if (!isKnown) {
            fail(it.key().toUtf8().constData(), "is not a field that is known here");
            return;
        }
    }
}

bool ObjectReader::has(const char* field) const
{
    return m_object.contains(QLatin1String(field));
}

QJsonValue ObjectReader::required(const char* field)
{
    const QJsonValue value = optional(field);
    if (value.isUndefined()) {
        fail(field, "is required");
    }
    return value;
}

QJsonValue ObjectReader::optional(const char* field) const
{
    return m_object.value(QLatin1String(field));
}

std::int32_t ObjectReader::decimal(const char* field, int decimals, std::int64_t low, std::int64_t high)
{
    const QJsonValue value = required(field);
    const auto number = exactDecimal(value, {}, decimals, low, high);
    if (!number) {
        fail(field, number.error().reason);
        return static_cast<std::int32_t>(low);
    }
    return *number;
}

std::optional<std::int32_t> ObjectReader::optionalDecimal(const char* field, int decimals, std::int64_t low, std::int64_t high)
{
    return has(field) ? std::optional(decimal(field, decimals, low, high)) : std::nullopt;
}

int ObjectReader::wholeNumber(const char* field, int low, int high)
{
    return decimal(field, 0, low, high);
}

std::optional<int> ObjectReader::optionalWholeNumber(const char* field, int low, int high)
{
    return optionalDecimal(field, 0, low, high);
}

std::string ObjectReader::text(const char* field)
{
    const QJsonValue value = required(field);
    if (!value.isString()) {
        fail(field, "must be a text");
    } else if (value.toString().trimmed().isEmpty()) {
        fail(field, "must not be empty");
    }
    return value.toString().toStdString();
}

std::optional<std::string> ObjectReader::optionalText(const char* field)
{
    return has(field) ? std::optional(text(field)) : std::nullopt;
}

bool ObjectReader::flag(const char* field, bool fallback)
{
    if (!has(field)) {
        return fallback;
    }
    const QJsonValue value = optional(field);
    if (!value.isBool()) {
        fail(field, "must be true or false");
    }
    return value.toBool(fallback);
}

QJsonArray ObjectReader::array(const char* field)
{
    const QJsonValue value = required(field);
    if (!value.isArray()) {
        fail(field, "must be a list");
    }
    return value.toArray();
}

}  // namespace chalk::exchange
