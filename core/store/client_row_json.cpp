#include "core/store/client_row_json.h"

#include "core/exchange/json_writing.h"
#include "core/store/lift_codec.h"
#include "core/store/profile_rows.h"

namespace chalk::store {

namespace {

constexpr double kCentiPerUnit = 100.0;

void putOptionalDay(QJsonObject& object, const char* field, const std::optional<base::Date>& day)
{
    if (day) {
        exchange::put(object, field, exchange::textOf(day->toString()));
    }
}

std::optional<base::Date> dayIn(const QJsonObject& object, const char* field)
{
    const auto day = base::Date::parse(object.value(QLatin1String(field)).toString().toStdString());
    return day ? std::optional(*day) : std::nullopt;
}

}  // namespace

QJsonObject rowJson(const clients::Client& client)
{
    QJsonObject row;
    exchange::put(row, "name", exchange::textOf(client.name));
    putOptionalDay(row, "birth_date", client.birthDate);
    exchange::put(row, "goal", exchange::textOf(client.goal));
    exchange::put(row, "coach", static_cast<qint64>(client.coach.value()));
    exchange::put(row, "unit", textOfUnit(client.unit));
    if (client.bodyMass) {
        exchange::put(row, "body_mass", client.bodyMass->centi() / kCentiPerUnit);
    }
    putOptionalDay(row, "started_on", client.startedOn);
    exchange::put(row, "sessions_per_week", client.sessionsPerWeek);
    putOptionalDay(row, "away_until", client.awayUntil);
    return row;
}

clients::Client clientIn(const QJsonObject& row, const clients::Client& whose)
{
    clients::Client client = whose;
    client.name = row.value(QLatin1String("name")).toString().toStdString();
    client.birthDate = dayIn(row, "birth_date");
    client.goal = row.value(QLatin1String("goal")).toString().toStdString();
    client.coach = base::CoachId(row.value(QLatin1String("coach")).toInteger());
    client.unit = unitOf(row.value(QLatin1String("unit")).toString());
    const QJsonValue mass = row.value(QLatin1String("body_mass"));
    client.bodyMass = mass.isDouble() ? std::optional(base::Load::fromCenti(qRound(mass.toDouble() * kCentiPerUnit))) : std::nullopt;
    client.startedOn = dayIn(row, "started_on").value_or(whose.startedOn);
    client.sessionsPerWeek = row.value(QLatin1String("sessions_per_week")).toInt();
    client.awayUntil = dayIn(row, "away_until");
    return client;
}

QJsonObject rowJson(const clients::Caution& caution)
{
    QJsonObject row;
    exchange::put(row, "body_part", exchange::textOf(caution.bodyPart));
    exchange::put(row, "text", exchange::textOf(caution.text));
    exchange::put(row, "short", exchange::textOf(caution.shortText));
    exchange::put(row, "tags", textOfTags(caution.tags));
    putOptionalDay(row, "until", caution.until);
    return row;
}

clients::Caution cautionIn(const QJsonObject& row, const clients::Caution& whose)
{
    clients::Caution caution;
    caution.id = whose.id;
    caution.bodyPart = row.value(QLatin1String("body_part")).toString().toStdString();
    caution.text = row.value(QLatin1String("text")).toString().toStdString();
    caution.shortText = row.value(QLatin1String("short")).toString().toStdString();
    for (const QString& key : row.value(QLatin1String("tags")).toString().split(QLatin1Char(' '), Qt::SkipEmptyParts)) {
        if (const auto tag = lifts::cautionTagOf(key.toStdString())) {
            caution.tags.push_back(*tag);
        }
    }
    caution.until = dayIn(row, "until");
    return caution;
}

}  // namespace chalk::store
