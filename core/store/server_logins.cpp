#include "core/store/server_logins.h"

#include "core/store/postgresql_schema.h"
#include "core/store/scram_secret.h"
#include "core/store/statement.h"

#include <QRandomGenerator>
#include <QRegularExpression>
#include <QSqlError>
#include <QSqlQuery>

#include <algorithm>
#include <array>

namespace chalk::store {

namespace {

using Kind = StoreError::Kind;

constexpr int kSaltBytes = 16;
constexpr int kShortestPassword = 8;

QString groupOf(const QString& base, Role role)
{
    return base + QLatin1Char('_') + QString::fromUtf8(keyOf(role).data(), static_cast<qsizetype>(keyOf(role).size())).replace(QLatin1Char('-'), QLatin1Char('_'));
}

/// Names are letters, digits and a few signs: so a quoted one is itself.
bool isLoginName(const QString& name)
{
    static const QRegularExpression form(QStringLiteral("^[a-z][a-z0-9_.-]{0,39}$"));
    return form.match(name).hasMatch() && !name.startsWith(QLatin1String("pg_"));
}

bool isPassword(const QString& password)
{
    return password.size() >= kShortestPassword && std::all_of(password.begin(), password.end(), [](QChar c) { return c.unicode() >= 0x20 && c.unicode() < 0x7F; });
}

QByteArray freshSalt()
{
    std::array<quint32, kSaltBytes / sizeof(quint32)> words{};
    QRandomGenerator::system()->fillRange(words.data(), static_cast<qsizetype>(words.size()));
    return {reinterpret_cast<const char*>(words.data()), kSaltBytes};
}

}  // namespace

Result<void> ServerLogins::check()
{
    if (!m_database.isOnServer()) {
        return storeError(Kind::Refused, QStringLiteral("%1 is a file: it has no logins").arg(m_database.target()));
    }
    if (!m_database.may(Right::SeeLogins)) {
        return storeError(Kind::NotAllowed, QStringLiteral("Only an owner sees and changes who signs in at %1").arg(m_database.target()));
    }
    return {};
}

Result<std::vector<ServerLogin>> ServerLogins::list()
{
    if (const auto checked = check(); !checked) {
        return tl::make_unexpected(checked.error());
    }
    const Snapshot snapshot(m_database);
    std::vector<ServerLogin> logins;
    Statement rows(m_database, QStringLiteral("SELECT l.name, coalesce(c.name, ''), pg_has_role(l.name, s.role_base || '_owner', 'member'), "
                                              "pg_has_role(l.name, s.role_base || '_coach', 'member') "
                                              "FROM login l LEFT JOIN coach c ON c.id = l.coach_id CROSS JOIN server s "
                                              "WHERE EXISTS (SELECT 1 FROM pg_roles r WHERE r.rolname = l.name) ORDER BY l.name"));
    rows.run();
    while (rows.next()) {
        const Role role = rows.number(2) != 0 ? Role::Owner : rows.number(3) != 0 ? Role::Coach : Role::FrontDesk;
        logins.push_back({rows.qtext(0), role, rows.text(1)});
    }
    return m_database.resultOf(std::move(logins));
}

Result<QStringList> ServerLogins::connected()
{
    if (const auto checked = check(); !checked) {
        return tl::make_unexpected(checked.error());
    }
    const Snapshot snapshot(m_database);
    QStringList logins;
    Statement rows(m_database, QStringLiteral("SELECT DISTINCT CAST(usename AS text) FROM pg_stat_activity WHERE datname = current_database() AND "
                                              "application_name = 'chalkrung' ORDER BY 1"));
    rows.run();
    while (rows.next()) {
        logins.append(rows.qtext(0));
    }
    return m_database.resultOf(std::move(logins));
}

void ServerLogins::run(const QString& statement)
{
    // What changes roles cannot be prepared.
    QSqlQuery query(m_database.connection());
    if (!m_database.failure() && !query.exec(statement)) {
        m_database.failWith(query.lastError());
    }
}

base::CoachId ServerLogins::coachNamed(const std::string& name, Role role)
{
    if (name.empty()) {
        return {};
    }
    Statement known(m_database, QStringLiteral("SELECT id FROM coach WHERE name = ? ORDER BY id LIMIT 1"));
    const bool isCoaching = role != Role::FrontDesk;
    if (!known.run(name) || !known.next()) {
        return base::CoachId(Statement(m_database, QStringLiteral("INSERT INTO coach (name, is_coaching) VALUES (?, ?) RETURNING id")).runForId(name, isCoaching));
    }
    const base::CoachId coach(known.integer(0));
    if (isCoaching) {
        Statement(m_database, QStringLiteral("UPDATE coach SET is_coaching = 1 WHERE id = ?")).run(coach);
    }
    return coach;
}

Result<void> ServerLogins::add(const ServerLogin& login, const QString& password)
{
    if (const auto checked = check(); !checked) {
        return checked;
    }
    if (!isLoginName(login.name)) {
        return storeError(Kind::Refused, QStringLiteral("A login is small letters, digits, dots, dashes and underscores, beginning with a letter: \"%1\" is none").arg(login.name));
    }
    if (!isPassword(password)) {
        return storeError(Kind::Refused, QStringLiteral("A password is %1 or more letters, digits and signs of the English keyboard").arg(kShortestPassword));
    }
    Transaction transaction(m_database);
    Statement taken(m_database, QStringLiteral("SELECT 1 FROM pg_roles WHERE rolname = ?"));
    if (taken.run(login.name) && taken.next()) {
        m_database.fail({Kind::Refused, QStringLiteral("There is a login %1 on the server already: it is left as it is").arg(login.name)});
    }
    const base::CoachId coach = coachNamed(login.coachName, login.role);
    const QString base = roleBaseOf(m_database.connection());
    run(QStringLiteral("CREATE ROLE \"%1\" LOGIN INHERIT NOSUPERUSER NOCREATEDB NOCREATEROLE PASSWORD '%2'").arg(login.name, scramVerifier(password, freshSalt())));
    run(QStringLiteral("GRANT \"%1\" TO \"%2\"").arg(groupOf(base, login.role), login.name));
    Statement(m_database, QStringLiteral("INSERT INTO login (name, coach_id) VALUES (?, ?)")).run(login.name, coach);
    return transaction.commit();
}

Result<void> ServerLogins::remove(const QString& name)
{
    if (const auto checked = check(); !checked) {
        return checked;
    }
    Transaction transaction(m_database);
    Statement known(m_database, QStringLiteral("DELETE FROM login WHERE name = ? RETURNING name"));
    if (known.run(name) && !known.next()) {
        m_database.fail({Kind::Refused, QStringLiteral("There is no login %1 in this studio").arg(name)});
    }
    run(QStringLiteral("DROP ROLE \"%1\"").arg(QString(name).replace(QLatin1Char('"'), QLatin1String("\"\""))));
    return transaction.commit();
}

}  // namespace chalk::store
