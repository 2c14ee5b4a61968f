#include "core/store/profile_rows.h"

#include "core/store/lift_codec.h"

namespace chalk::store {

namespace {

std::vector<lifts::CautionTag> tagsOf(const QString& text)
{
    std::vector<lifts::CautionTag> tags;
    for (const QString& key : text.split(QLatin1Char(' '), Qt::SkipEmptyParts)) {
        if (const auto tag = lifts::cautionTagOf(key.toStdString())) {
            tags.push_back(*tag);
        }
    }
    return tags;
}

}  // namespace

const QString& clientColumns()
{
    static const QString columns = QStringLiteral(
        "c.id, c.name, c.birth_day, c.goal, c.coach_id, c.unit, c.body_mass_centi, c.started_day, c.sessions_per_week, c.away_until_day");
    return columns;
}

clients::Client clientOf(const Statement& row, int first)
{
    clients::Client client;
    client.id = base::ClientId(row.integer(first));
    client.name = row.text(first + 1);
    client.birthDate = row.optionalDate(first + 2);
    client.goal = row.text(first + 3);
    client.coach = base::CoachId(row.integer(first + 4));
    client.unit = unitOf(row.qtext(first + 5));
    client.bodyMass = row.optionalLoad(first + 6);
    client.startedOn = row.date(first + 7);
    client.sessionsPerWeek = row.number(first + 8);
    client.awayUntil = row.optionalDate(first + 9);
    return client;
}

const QString& sessionColumns()
{
    static const QString columns = QStringLiteral(
        "s.id, s.client_id, s.coach_id, s.day, s.start_minute, s.minutes, s.place, s.place_capacity, s.kind, s.state, s.code");
    return columns;
}

sessions::Session sessionOf(const Statement& row, int first)
{
    sessions::Session session;
    session.id = base::SessionId(row.integer(first));
    session.client = base::ClientId(row.integer(first + 1));
    session.coach = base::CoachId(row.integer(first + 2));
    session.date = row.date(first + 3);
    session.startMinute = row.number(first + 4);
    session.minutes = row.number(first + 5);
    session.place = row.text(first + 6);
    session.placeCapacity = row.number(first + 7);
    session.kind = sessions::sessionKindOf(row.text(first + 8)).value_or(sessions::SessionKind::Training);
    session.state = sessions::sessionStateOf(row.text(first + 9)).value_or(sessions::SessionState::Planned);
    session.code = row.text(first + 10);
    return session;
}

clients::Clearance readClearance(Database& database, base::ClientId client)
{
    clients::Clearance clearance;
    Statement row(database, QStringLiteral("SELECT state, reason, asked_day, granted_day, valid_until_day, limits FROM clearance WHERE client_id = ?"));
    if (row.run(client) && row.next()) {
        // What cannot be read blocks rather than lets pass.
        clearance.state = clients::clearanceStateOf(row.text(0)).value_or(clients::ClearanceState::Recommended);
        clearance.reason = row.text(1);
        clearance.askedOn = row.optionalDate(2);
        clearance.grantedOn = row.optionalDate(3);
        clearance.validUntil = row.optionalDate(4);
        clearance.limits = row.text(5);
    }
    return clearance;
}

std::vector<clients::Caution> readCautions(Database& database, base::ClientId client, base::Date day)
{
    std::vector<clients::Caution> cautions;
    Statement row(database, QStringLiteral("SELECT id, body_part, text, short_text, tags, until_day FROM caution "
                                           "WHERE client_id = ? AND (until_day IS NULL OR until_day >= ?) ORDER BY id"));
    row.run(client, day);
    while (row.next()) {
        cautions.push_back({base::CautionId(row.integer(0)), row.text(1), row.text(2), row.text(3), tagsOf(row.qtext(4)), row.optionalDate(5)});
    }
    return cautions;
}

NextSession readNextSession(Database& database, base::ClientId client, base::Date day)
{
    NextSession next;
    Statement row(database, QStringLiteral("SELECT ") + sessionColumns() +
                                QStringLiteral(", (SELECT count(*) FROM session o WHERE o.day = s.day AND o.start_minute = s.start_minute AND "
                                               "o.coach_id = s.coach_id AND o.state NOT IN ('cancelled_in_time', 'cancelled_late')) FROM session s "
                                               "WHERE s.client_id = ? AND s.day >= ? AND s.state IN ('planned', 'printed') "
                                               "ORDER BY s.day, s.start_minute LIMIT 1"));
    if (row.run(client, day) && row.next()) {
        next.session = sessionOf(row);
        next.taken = row.number(kSessionColumns);
    }
    return next;
}

}  // namespace chalk::store
