#include "core/exchange/studio_fields.h"

#include "core/lifts/equipment.h"

#include <QString>

#include <algorithm>

namespace chalk::exchange {

namespace {

constexpr qsizetype kMostLabel = 200;
constexpr qsizetype kMostProse = 4000;

bool isControl(QChar letter)
{
    return letter.category() == QChar::Other_Control;
}

}  // namespace

base::Date dayAt(ObjectReader& reader, const char* field)
{
    const auto day = base::Date::parse(reader.text(field));
    const auto first = *base::Date::fromYmd(1900, 1, 1);
    if (!day) {
        reader.fail(field, "must be a day, YYYY-MM-DD");
    } else if (*day < first || *day > *base::Date::fromYmd(2199, 12, 31)) {
        reader.fail(field, "must lie in the years 1900 to 2199");
    }
    return day.value_or(first);
}

std::optional<base::Date> optionalDayAt(ObjectReader& reader, const char* field)
{
    return reader.has(field) ? std::optional(dayAt(reader, field)) : std::nullopt;
}

std::string proseAt(ObjectReader& reader, const char* field)
{
    const QJsonValue value = reader.required(field);
    const QString text = value.toString();
    if (!value.isString()) {
        reader.fail(field, "must be a text");
    } else if (text.size() > kMostProse) {
        reader.fail(field, fmt::format("must have at most {} characters", kMostProse));
    }
    return text.toStdString();
}

std::string labelAt(ObjectReader& reader, const char* field)
{
    const std::string label = reader.text(field);
    const QString text = QString::fromStdString(label);
    if (text.size() > kMostLabel) {
        reader.fail(field, fmt::format("must have at most {} characters", kMostLabel));
    } else if (std::any_of(text.begin(), text.end(), isControl)) {
        reader.fail(field, "must be one line");
    }
    return label;
}

std::string keyAt(ObjectReader& reader, const char* field)
{
    const std::string key = labelAt(reader, field);
    const auto isAllowed = [](char c) { return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '_'; };
    if (!std::all_of(key.begin(), key.end(), isAllowed)) {
        reader.fail(field, "must be small letters, digits and underscores");
    }
    return key;
}

base::MassUnit unitAt(ObjectReader& reader)
{
    const std::string unit = reader.text("unit");
    if (unit != "kg" && unit != "lb") {
        reader.fail("unit", "must be kg or lb");
    }
    return unit == "lb" ? base::MassUnit::Pound : base::MassUnit::Kilogram;
}

std::optional<base::Load> optionalMassAt(ObjectReader& reader, const char* field)
{
    const auto centi = reader.optionalDecimal(field, 2, 1, lifts::kMaxLoadCenti);
    return centi ? std::optional(base::Load::fromCenti(*centi)) : std::nullopt;
}

}  // namespace chalk::exchange
