#include "core/store/profile_rows.h"

#include "core/store/lift_codec.h"
#include "core/store/session_states.h"

namespace chalk::store {

namespace {

std::vector<lifts::CautionTag> tagsOf(const Statement& row, int column, const SealedRow& sealed)
{
    std::vector<lifts::CautionTag> tags;
    for (const QString& key : row.opened(column, sealed, "tags").split(QLatin1Char(' '), Qt::SkipEmptyParts)) {
        tags.push_back(row.known(lifts::cautionTagOf(key.toStdString()), column, "caution", 0));
    }
    return tags;
}

template <class Key>
QString textOfKeys(const std::vector<Key>& items)
{
    QStringList keys;
    for (const Key item : items) {
        keys.append(qstringOf(keyOf(item)));
    }
    return keys.join(QLatin1Char(' '));
}

}  // namespace

QString textOfTags(const std::vector<lifts::CautionTag>& tags)
{
    return textOfKeys(tags);
}

QString textOfMarks(const std::vector<clients::HealthMark>& marks)
{
    return textOfKeys(marks);
}

std::vector<clients::HealthMark> marksOf(const QString& text)
{
    std::vector<clients::HealthMark> marks;
    for (const QString& key : text.split(QLatin1Char(' '), Qt::SkipEmptyParts)) {
        if (const auto mark = clients::healthMarkOf(key.toStdString())) {
            marks.push_back(*mark);
        }
    }
    return marks;
}

const QString& clientColumns()
{
    static const QString columns = QStringLiteral(
        "c.id, c.name, c.birth_day, c.goal, c.coach_id, c.unit, c.body_mass_centi, c.started_day, c.sessions_per_week, c.away_until_day");
    return columns;
}

const QString& clientColumnsFor(const Database& database)
{
    static const QString plain = QStringLiteral("c.id, c.name, NULL, '', c.coach_id, c.unit, NULL, c.started_day, c.sessions_per_week, c.away_until_day");
    return database.may(Right::SeeHealth) ? clientColumns() : plain;
}

clients::Client clientOf(const Statement& row, int first)
{
    clients::Client client;
    client.id = base::ClientId(row.integer(first));
    client.name = row.text(first + 1);
    client.birthDate = row.optionalDate(first + 2);
    client.goal = row.openedText(first + 3, row.sealedRow("client", client.id), "goal");
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
        "s.id, s.client_id, s.coach_id, s.day, s.start_minute, s.minutes, s.place, s.place_capacity, s.kind, s.state, s.code, s.is_locked");
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
    session.kind = row.known(sessions::sessionKindOf(row.text(first + 8)), first + 8, "session", first);
    session.state = row.known(sessions::sessionStateOf(row.text(first + 9)), first + 9, "session", first);
    session.code = row.text(first + 10);
    session.isLocked = row.number(first + 11) == 1;
    return session;
}

const QString& clearanceColumns()
{
    static const QString columns =
        QStringLiteral("q.state, q.reason, q.asked_day, q.granted_day, q.valid_until_day, q.limits, q.client_id, q.granted_by, q.remind_day");
    return columns;
}

clients::Clearance clearanceOf(const Statement& row, int first)
{
    clients::Clearance clearance;
    if (!row.isNull(first)) {
        clearance.state = row.known(clients::clearanceStateOf(row.text(first)), first, "clearance of client", first + 6);
        const SealedRow sealed = row.sealedRow("clearance", row.integer(first + 6));
        clearance.reason = row.openedText(first + 1, sealed, "reason");
        clearance.askedOn = row.optionalDate(first + 2);
        clearance.grantedOn = row.optionalDate(first + 3);
        clearance.validUntil = row.optionalDate(first + 4);
        clearance.limits = row.openedText(first + 5, sealed, "limits");
        clearance.grantedBy = row.openedText(first + 7, sealed, "granted_by");
        clearance.remindOn = row.optionalDate(first + 8);
    }
    return clearance;
}

clients::Clearance readClearance(Database& database, base::ClientId client)
{
    if (!database.may(Right::SeeHealth)) {
        return {};
    }
    Statement row(database, QStringLiteral("SELECT ") + clearanceColumns() + QStringLiteral(" FROM clearance q WHERE q.client_id = ?"));
    return row.run(client) && row.next() ? clearanceOf(row) : clients::Clearance();
}

const QString& cautionColumns()
{
    static const QString columns = QStringLiteral("id, body_part, text, short_text, tags, until_day");
    return columns;
}

clients::Caution cautionOf(const Statement& row)
{
    const SealedRow sealed = row.sealedRow("caution", row.integer(0));
    return {base::CautionId(row.integer(0)),
            row.openedText(1, sealed, "body_part"),
            row.openedText(2, sealed, "text"),
            row.openedText(3, sealed, "short_text"),
            tagsOf(row, 4, sealed),
            row.optionalDate(5)};
}

std::vector<clients::Caution> readCautions(Database& database, base::ClientId client, std::optional<base::Date> day)
{
    std::vector<clients::Caution> cautions;
    if (!database.may(Right::SeeHealth)) {
        return cautions;
    }
    Statement rows(database, QStringLiteral("SELECT ") + cautionColumns() + QStringLiteral(" FROM caution WHERE client_id = ? ORDER BY id"));
    rows.run(client);
    while (rows.next()) {
        cautions.push_back(cautionOf(rows));
    }
    std::erase_if(cautions, [day](const clients::Caution& caution) { return day && caution.until && *caution.until < *day; });
    return cautions;
}

NextSessionSearch::NextSessionSearch(Database& database)
    : m_next(database, QStringLiteral("SELECT ") + sessionColumns() +
                           QStringLiteral(" FROM session s WHERE s.client_id = ? AND s.day >= ? AND s.state IN ") + statesWhere(sessions::isOpen) +
                           QStringLiteral(" ORDER BY s.day, s.start_minute LIMIT 1")),
      m_taken(database, QStringLiteral("SELECT count(*) FROM session WHERE day = ? AND start_minute = ? AND coach_id = ? "
                                       "AND state IN ") + statesWhere(sessions::takesTime))
{
}

NextSession NextSessionSearch::find(base::ClientId client, base::Date day)
{
    NextSession next;
    if (m_next.run(client, day) && m_next.next()) {
        next.session = sessionOf(m_next);
        const sessions::Session& found = *next.session;
        next.taken = m_taken.run(found.date, found.startMinute, found.coach) && m_taken.next() ? m_taken.number(0) : 0;
    }
    return next;
}

}  // namespace chalk::store
