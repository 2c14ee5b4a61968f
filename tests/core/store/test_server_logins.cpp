#include "core/store/server_logins.h"

#include "core/exchange/catalogue_json.h"
#include "core/lifts/catalogue.h"
#include "core/store/act_reader.h"
#include "core/store/client_reader.h"
#include "core/store/migrations.h"
#include "core/store/record_writer.h"
#include "core/store/roster_reader.h"
#include "core/store/session_reader.h"
#include "core/store/session_writer.h"
#include "core/store/studio_reader.h"
#include "core/store/week_reader.h"
#include "core/store/week_settings.h"
#include "tests/support/lift_on_test.h"
#include "tests/support/small_studio.h"

#include <QCoreApplication>
#include <QSqlError>
#include <QSqlQuery>
#include <QThread>

#include <gtest/gtest.h>

#include <algorithm>

namespace chalk::store {

using Kind = StoreError::Kind;

namespace {

const QString& passwordOnTest()
{
    static const QString password = QStringLiteral("left'over$1");
    return password;
}

/// The SQLSTATE of a statement that goes to the server as it is; empty where it ran.
std::string sqlStateOf(Database& database, const QString& sql)
{
    QSqlQuery query(database.connection());
    return query.exec(sql) ? std::string() : query.lastError().nativeErrorCode().toStdString();
}

constexpr const char* kNotAllowed = "42501";

}  // namespace

/// The small studio on a server, with somebody of each role.
class ServerLoginsTest : public ::testing::Test {
protected:
    void SetUp() override
    {
        if (test::serverOnTest().isEmpty()) {
            GTEST_SKIP() << "there is no server";
        }
        m_owner = add(Role::Owner, "Marit");
        m_coach = add(Role::Coach, "Ines");
        m_desk = add(Role::FrontDesk, "Piet");
    }
    void TearDown() override
    {
        m_owner.reset();
        m_coach.reset();
        m_desk.reset();
        for (const QString& login : m_logins) {
            EXPECT_TRUE(ServerLogins(m_studio.database()).remove(login));
        }
    }

    std::unique_ptr<Database> add(Role role, const std::string& coach)
    {
        const QString login = QStringLiteral("t%1_%2").arg(QCoreApplication::applicationPid()).arg(QString::fromStdString(coach).toLower());
        const auto added = ServerLogins(m_studio.database()).add({login, role, coach}, passwordOnTest());
        if (!added) {
            throw std::runtime_error(added.error().message.toStdString());
        }
        m_logins.append(login);
        return open(login).value();
    }
    Result<std::unique_ptr<Database>> open(const QString& login)
    {
        Access access(QString(m_studio.file()).replace(QStringLiteral("chalk@"), login + QLatin1Char('@')));
        access.password = passwordOnTest();
        return Database::open(access, OpenMode::MustExist);
    }

    test::StudioOnTest m_studio;
    QStringList m_logins;
    std::unique_ptr<Database> m_owner;
    std::unique_ptr<Database> m_coach;
    std::unique_ptr<Database> m_desk;
};

TEST_F(ServerLoginsTest, AreKnownByTheirRoleAndWorkInACoachsName)
{
    EXPECT_EQ(m_owner->role(), Role::Owner);
    EXPECT_EQ(m_coach->role(), Role::Coach);
    EXPECT_EQ(m_desk->role(), Role::FrontDesk);
    EXPECT_EQ(m_coach->author(), base::CoachId(1)) << "there was an Ines";
    EXPECT_EQ(m_studio.rows(QStringLiteral("SELECT name FROM coach ORDER BY id")),
              QStringList({QStringLiteral("Ines"), QStringLiteral("Tobias"), QStringLiteral("Marit"), QStringLiteral("Piet")}));
    const auto list = ServerLogins(m_studio.database()).list().value();
    ASSERT_EQ(list.size(), 3U);
    EXPECT_EQ(list.front(), (ServerLogin{m_logins[1], Role::Coach, "Ines"}));
    EXPECT_EQ(ServerLogins(*m_coach).list().error().kind, Kind::NotAllowed);
}

TEST_F(ServerLoginsTest, WhoIsAtTheFrontDeskIsNoCoach)
{
    StudioReader reader(m_studio.database());
    const auto coaches = reader.coaches().value();
    const auto everybody = reader.everybody().value();
    EXPECT_EQ(everybody.size(), coaches.size() + 1);
    EXPECT_EQ(everybody.back().name, "Piet");
    EXPECT_EQ(everybody.back().id, m_desk->author()) << "what they do stands under their name";
    EXPECT_TRUE(std::none_of(coaches.begin(), coaches.end(), [](const clients::Coach& coach) { return coach.name == "Piet"; }));
    // Who takes sessions from now on is one.
    ASSERT_TRUE(ServerLogins(m_studio.database()).remove(m_logins[2]));
    m_logins.removeAt(2);
    const auto again = add(Role::Coach, "Piet");
    EXPECT_EQ(again->author(), everybody.back().id);
    EXPECT_EQ(reader.coaches().value().size(), everybody.size());
}

TEST_F(ServerLoginsTest, WhoIsConnectedIsKnownToTheOwner)
{
    const QStringList all = ServerLogins(m_studio.database()).connected().value();
    for (const QString& login : m_logins) {
        EXPECT_TRUE(all.contains(login)) << login.toStdString();
    }
    m_coach.reset();
    QStringList rest = all;
    rest.removeAll(m_logins[1]);
    // The server needs a moment to see that somebody went.
    for (int i = 0; i < 100 && ServerLogins(m_studio.database()).connected().value() != rest; ++i) {
        QThread::msleep(20);
    }
    EXPECT_EQ(ServerLogins(m_studio.database()).connected().value(), rest);
    EXPECT_EQ(ServerLogins(*m_desk).connected().error().kind, Kind::NotAllowed);
}

TEST_F(ServerLoginsTest, WhatIsNoLoginOrPasswordIsRefused)
{
    ServerLogins logins(m_studio.database());
    EXPECT_EQ(logins.add({QStringLiteral("Ines; DROP"), Role::Coach, "Ines"}, passwordOnTest()).error().kind, Kind::Refused);
    EXPECT_EQ(logins.add({QStringLiteral("new_one"), Role::Coach, "Ines"}, QStringLiteral("short")).error().kind, Kind::Refused);
    EXPECT_EQ(logins.add({m_logins[0], Role::Coach, "Ines"}, passwordOnTest()).error().kind, Kind::Refused) << "it is there";
    EXPECT_EQ(logins.remove(QStringLiteral("chalk")).error().kind, Kind::Refused) << "not one of the studio's";
}

TEST_F(ServerLoginsTest, WhoWasRemovedComesInNoMore)
{
    m_coach.reset();
    ASSERT_TRUE(ServerLogins(m_studio.database()).remove(m_logins[1]));
    EXPECT_EQ(open(m_logins[1]).error().kind, Kind::NotAllowed);
    m_logins.removeAt(1);
}

TEST_F(ServerLoginsTest, TheFrontDeskReadsNothingButNamesAndBookings)
{
    const QStringList open{QStringLiteral("studio"),  QStringLiteral("coach"), QStringLiteral("closure"),        QStringLiteral("week_quota"),
                           QStringLiteral("session"), QStringLiteral("act"),   QStringLiteral("session_change"), QStringLiteral("booking_change")};
    for (const QString& table : schemaTables()) {
        EXPECT_EQ(sqlStateOf(*m_desk, QStringLiteral("SELECT * FROM %1").arg(table)), open.contains(table) ? "" : kNotAllowed) << table.toStdString();
    }
    EXPECT_EQ(sqlStateOf(*m_desk, QStringLiteral("SELECT id, name, coach_id, planning FROM client")), "");
    for (const char* column : {"goal", "birth_day", "body_mass_centi"}) {
        EXPECT_EQ(sqlStateOf(*m_desk, QStringLiteral("SELECT %1 FROM client").arg(QLatin1String(column))), kNotAllowed) << column;
    }
    // Nor by the way of an answer to what it may write.
    EXPECT_EQ(sqlStateOf(*m_desk, QStringLiteral("UPDATE session SET state = state RETURNING (SELECT detail FROM form LIMIT 1)")), kNotAllowed);
}

TEST_F(ServerLoginsTest, TheFrontDeskWritesNothingButBookings)
{
    for (const QString& table : schemaTables()) {
        EXPECT_EQ(sqlStateOf(*m_desk, QStringLiteral("DELETE FROM %1").arg(table)), kNotAllowed) << table.toStdString();
        EXPECT_EQ(sqlStateOf(*m_desk, QStringLiteral("TRUNCATE %1 CASCADE").arg(table)), kNotAllowed) << table.toStdString();
    }
    for (const char* sql :
         {"UPDATE client SET name = 'x'", "UPDATE session SET code = 'x'", "UPDATE session SET client_id = 2", "UPDATE act SET kind = 'x'", "UPDATE coach SET name = 'x'",
          "INSERT INTO form (client_id, kind, day, is_finished, detail) VALUES (1, 'profile', 1, 0, '{}')", "INSERT INTO login (name) VALUES ('x')",
          "UPDATE studio SET settings = '{}'", "UPDATE server SET schema_version = 1", "CREATE TABLE chalkrung.mine (a integer)", "CREATE ROLE mine"}) {
        EXPECT_EQ(sqlStateOf(*m_desk, QLatin1String(sql)), kNotAllowed) << sql;
    }
    const QString base = m_studio.rows(QStringLiteral("SELECT role_base FROM server")).front();
    EXPECT_EQ(sqlStateOf(*m_desk, QStringLiteral("SET ROLE %1_owner").arg(base)), kNotAllowed);
    EXPECT_EQ(sqlStateOf(*m_desk, QStringLiteral("GRANT %1_owner TO %2").arg(base, m_logins[2])), kNotAllowed);
    EXPECT_EQ(sqlStateOf(*m_desk, QStringLiteral("UPDATE session SET state = 'missed'")), "");
}

TEST_F(ServerLoginsTest, ACoachAddsToTheLogAndTakesNothingFromIt)
{
    for (const char* table : {"act", "event", "event_set", "session_change", "report_change", "booking_change", "decision", "plan", "tested_maximum"}) {
        EXPECT_EQ(sqlStateOf(*m_coach, QStringLiteral("SELECT * FROM %1").arg(QLatin1String(table))), "") << table;
        EXPECT_EQ(sqlStateOf(*m_coach, QStringLiteral("DELETE FROM %1").arg(QLatin1String(table))), kNotAllowed) << table;
        EXPECT_EQ(sqlStateOf(*m_coach, QStringLiteral("TRUNCATE %1 CASCADE").arg(QLatin1String(table))), kNotAllowed) << table;
    }
    for (const char* sql : {"UPDATE event SET pain = 0", "UPDATE act SET at_utc = ''", "UPDATE event_set SET rir = 0", "UPDATE decision SET note = ''", "UPDATE plan SET note = ''",
                            "ALTER TABLE event DISABLE TRIGGER ALL", "DROP TRIGGER event_is_never_changed ON event", "DROP TABLE lift_state", "SET session_replication_role = replica"}) {
        EXPECT_EQ(sqlStateOf(*m_coach, QLatin1String(sql)), kNotAllowed) << sql;
    }
    EXPECT_EQ(sqlStateOf(*m_coach, QStringLiteral("INSERT INTO act (at_utc, kind, coach_id) VALUES ('2026-11-24T08:42:00Z', 'session', 2)")), "");
    EXPECT_EQ(m_studio.rows(QStringLiteral("SELECT coach_id FROM act ORDER BY id DESC LIMIT 1")), QStringList(QStringLiteral("1"))) << "in nobody's name but their own";
}

TEST_F(ServerLoginsTest, ACoachLeavesTheStudioToItsOwner)
{
    for (const char* sql : {"UPDATE studio SET settings = '{}'", "UPDATE coach SET name = 'x'", "INSERT INTO coach (name) VALUES ('x')", "DELETE FROM coach", "DELETE FROM studio_equipment",
                            "INSERT INTO login (name) VALUES ('x')", "UPDATE login SET coach_id = 2", "UPDATE server SET role_base = 'x'", "CREATE ROLE mine"}) {
        EXPECT_EQ(sqlStateOf(*m_coach, QLatin1String(sql)), kNotAllowed) << sql;
    }
    EXPECT_EQ(sqlStateOf(*m_coach, QStringLiteral("UPDATE coach SET work = '{}' WHERE id = 1")), "") << "hours are everybody's own matter";
    EXPECT_EQ(sqlStateOf(*m_owner, QStringLiteral("UPDATE studio SET settings = '{}'")), "");
    EXPECT_EQ(sqlStateOf(*m_owner, QStringLiteral("UPDATE act SET kind = 'x'")), "23001") << "the guard of the log holds for owners as well";
}

TEST_F(ServerLoginsTest, TheFrontDeskWorksWithoutWhatItMayNotSee)
{
    const auto roster = RosterReader(*m_desk).read(test::smallStudioDay());
    ASSERT_TRUE(roster) << roster.error().message.toStdString();
    ASSERT_EQ(roster->size(), 2U);
    EXPECT_EQ(roster->front().client.name, "Ada Lund");
    EXPECT_TRUE(roster->front().lifts.empty() && roster->front().cautions.empty() && roster->front().client.goal.empty());
    EXPECT_TRUE(roster->front().next);
    const auto file = ClientReader(*m_desk).read(base::ClientId(1), test::smallStudioDay());
    ASSERT_TRUE(file) << file.error().message.toStdString();
    const auto today = SessionReader(*m_desk).on(test::smallStudioDay());
    ASSERT_TRUE(today);
    EXPECT_TRUE(SessionReader(*m_desk).lifts(today->front().session.id).value().empty());
    EXPECT_TRUE(ActReader(*m_desk).latest(5));
    const base::Date monday = test::smallStudioDay() - test::smallStudioDay().weekday();
    const auto week = WeekReader(*m_desk, exchange::builtInCatalogue()).read(monday, test::smallStudioDay(), 0);
    ASSERT_TRUE(week) << week.error().message.toStdString();
    ASSERT_FALSE(week->clients.empty());
    EXPECT_TRUE(week->clients.front().free.covers(0, 7 * 60, 60)) << "nobody is outside of hours that are not read";
}

TEST_F(ServerLoginsTest, TheFrontDeskBooksAndTakesThatBack)
{
    sessions::Session session;
    session.client = base::ClientId(1);
    session.coach = base::CoachId(1);
    session.date = test::smallStudioDay();
    session.startMinute = 19 * 60;
    session.place = "Floor";
    const auto booked = SessionWriter(*m_desk, test::someMoment).book(session);
    ASSERT_TRUE(booked) << booked.error().message.toStdString();
    EXPECT_EQ(m_studio.rows(QStringLiteral("SELECT coach_id FROM act WHERE id = %1").arg(booked->act.value())), QStringList(QString::number(m_desk->author().value())));
    RecordWriter writer(*m_desk, test::someMoment);
    const auto undone = writer.undo(booked->act);
    ASSERT_TRUE(undone) << undone.error().message.toStdString();
    EXPECT_TRUE(writer.undo(undone->act)) << "and back again";
    const base::LiftId squat = test::liftOf(m_studio.database(), base::ClientId(1), lifts::Pattern::Squat);
    const auto recorded = RecordWriter(*m_coach, test::someMoment).record(base::ClientId(1), {}, {{squat, {test::smallStudioDay(), test::exposureOf({{45, 8, 2}})}}});
    ASSERT_TRUE(recorded) << recorded.error().message.toStdString();
    EXPECT_EQ(writer.undo(recorded->act).error().kind, Kind::NotAllowed) << "it is no booking";
    EXPECT_EQ(writer.record(base::ClientId(1), {}, {{squat, {test::smallStudioDay(), test::exposureOf({{45, 8, 2}})}}}).error().kind, Kind::NotAllowed);
}

}  // namespace chalk::store
