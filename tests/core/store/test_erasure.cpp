#include "core/store/erasure.h"

#include "core/exchange/catalogue_json.h"
#include "core/exchange/studio_json.h"
#include "core/store/client_writer.h"
#include "core/store/record_writer.h"
#include "core/store/studio_check.h"
#include "core/store/studio_export.h"
#include "tests/support/kept_client.h"
#include "tests/support/lift_on_test.h"
#include "tests/support/small_studio.h"

#include <QFile>

#include <gtest/gtest.h>

namespace chalk::store {

namespace {

constexpr const char* kPlanted[] = {"Ada Lund", "Carry the boat", "Quassel-Note", "Zwirbelknie", "555 0100"};

}  // namespace

class ErasureTest : public ::testing::Test {
protected:
    ErasureTest()
    {
        RecordWriter writer(m_studio.database(), test::someMoment);
        EXPECT_TRUE(writer.record(m_ada, {}, {{m_squat, {test::smallStudioDay(), test::exposureOf({{45, 8, 2}})}}}));
        clients::Profile profile;
        profile.contact.phone = "555 0100";
        profile.consentOn = test::smallStudioDay();
        ClientWriter clients(m_studio.database());
        EXPECT_TRUE(clients.saveProfile(m_ada, profile, test::smallStudioDay()));
        clients::Caution caution;
        caution.bodyPart = "Zwirbelknie";
        EXPECT_TRUE(clients.saveCaution(m_ada, caution, test::smallStudioDay()));
        m_studio.rows(QStringLiteral("UPDATE session_report SET note = 'Quassel-Note'"));
    }

    Result<Erased> erase(const std::string& name = "Ada Lund") { return eraseClient(m_studio.database(), m_ada, name, test::smallStudioDay()); }

    /// The raw bytes of the studio's files, each that is there.
    QByteArray bytes()
    {
        QByteArray all;
        for (const char* end : {"", "-wal", "-shm"}) {
            QFile file(m_studio.file() + QLatin1String(end));
            all += file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
        }
        return all;
    }

    static exchange::StudioDocument kept()
    {
        exchange::StudioDocument document = exchange::readStudio(exchange::writeStudio(test::smallStudio()), exchange::builtInCatalogue()).value();
        test::addKept(document);
        return document;
    }

    test::StudioOnTest m_studio{kept()};
    base::ClientId m_ada = test::clientNamed(m_studio.database(), "Ada Lund");
    base::LiftId m_squat = test::liftOf(m_studio.database(), m_ada, lifts::Pattern::Squat);
};

/// What looks into the file itself.
class FileOnlyErasureTest : public ErasureTest {};

TEST_F(ErasureTest, ThePreviewSaysWhatThereIs)
{
    const auto preview = previewErasure(m_studio.database(), m_ada, test::smallStudioDay()).value();
    EXPECT_EQ(preview.name, "Ada Lund");
    EXPECT_EQ(preview.lifts, 3);
    EXPECT_EQ(preview.entries, 8);
    EXPECT_EQ(preview.keptSessions, 3);
    EXPECT_EQ(preview.openSessions, 1);
    EXPECT_GT(preview.forms, 0);
    EXPECT_EQ(preview.letters, 2);
    EXPECT_FALSE(previewErasure(m_studio.database(), base::ClientId(99), test::smallStudioDay()));
}

TEST_F(FileOnlyErasureTest, TheWordsAreGoneFromTheRawBytes)
{
    const QByteArray before = bytes();
    for (const char* word : kPlanted) {
        ASSERT_TRUE(before.contains(word)) << word << " was not planted";
    }
    const auto erased = erase();
    ASSERT_TRUE(erased) << erased.error().message.toStdString();
    EXPECT_EQ(erased->wiped, Wiped::Done);
    const QByteArray after = bytes();
    for (const char* word : kPlanted) {
        EXPECT_FALSE(after.contains(word)) << word << " is still in the file";
    }
    EXPECT_TRUE(after.contains("Bo Arden"));
}

TEST_F(ErasureTest, WhatIsKeptIsForTheAccountsOnly)
{
    ASSERT_EQ(erase().value().number, 1);
    const auto document = exportStudio(m_studio.database(), test::smallStudioDay()).value();
    ASSERT_EQ(document.clients.size(), 1U);
    EXPECT_EQ(document.erasedOn, std::vector{test::smallStudioDay()});
    ASSERT_EQ(document.erasedSessions.size(), 3U);
    EXPECT_EQ(document.erasedSessions[0], (exchange::ErasedSession{1, base::CoachId(1), test::smallStudioDay() - 21, 540, 60, sessions::SessionKind::Training,
                                                                   sessions::SessionState::Recorded}));
    EXPECT_EQ(document.erasedSessions[1].state, sessions::SessionState::Missed);
}

TEST_F(ErasureTest, TheStudioIsSoundAfterwards)
{
    ASSERT_TRUE(erase());
    const auto check = checkStudio(m_studio.database());
    ASSERT_TRUE(check);
    EXPECT_TRUE(check->isSound()) << check->faults.front().message.toStdString();
    const QStringList caches = m_studio.cacheRows();
    m_studio.rebuildCaches();
    EXPECT_EQ(m_studio.cacheRows(), caches);
}

TEST_F(ErasureTest, OneLineOfTheAuditStaysWithoutTheName)
{
    m_studio.database().setAuthor(base::CoachId(2));
    ASSERT_TRUE(erase());
    EXPECT_EQ(m_studio.rows(QStringLiteral("SELECT what, after, coach_id, client_id IS NULL FROM audit")).size(), 1);
    EXPECT_TRUE(m_studio.rows(QStringLiteral("SELECT what FROM audit")).front().contains(QLatin1String("client_erased")));
    EXPECT_TRUE(m_studio.rows(QStringLiteral("SELECT 1 FROM erasing")).isEmpty());
}

TEST_F(ErasureTest, AnotherNameErasesNothing)
{
    const QStringList before = m_studio.rows(QStringLiteral("SELECT * FROM event"));
    const auto erased = erase("Ada Lunt");
    ASSERT_FALSE(erased);
    EXPECT_EQ(erased.error().kind, StoreError::Kind::Refused);
    EXPECT_EQ(m_studio.rows(QStringLiteral("SELECT * FROM event")), before);
    EXPECT_TRUE(m_studio.rows(QStringLiteral("SELECT * FROM erased_client")).isEmpty());
}

TEST_F(ErasureTest, TheLogOfOthersStaysAppendOnly)
{
    QSqlDatabase& connection = m_studio.database().connection();
    ASSERT_TRUE(QSqlQuery(connection).exec(QStringLiteral("INSERT INTO erasing (client_id) VALUES (%1)").arg(test::clientNamed(m_studio.database(), "Bo Arden").value())));
    for (const char* table : {"event", "event_set", "act"}) {
        EXPECT_FALSE(QSqlQuery(connection).exec(QStringLiteral("DELETE FROM %1").arg(QLatin1String(table)))) << table;
    }
    ASSERT_TRUE(QSqlQuery(connection).exec(QStringLiteral("DELETE FROM erasing")));
    for (const char* table : {"event", "event_set", "act", "audit"}) {
        EXPECT_FALSE(QSqlQuery(connection).exec(QStringLiteral("DELETE FROM %1").arg(QLatin1String(table)))) << table;
        EXPECT_FALSE(m_studio.rows(QStringLiteral("SELECT 1 FROM %1").arg(QLatin1String(table))).isEmpty()) << table;
    }
}

TEST_F(FileOnlyErasureTest, NoTableThatPointsToAClientIsLeftOut)
{
    ASSERT_TRUE(erase());
    const QStringList tables = m_studio.rows(QStringLiteral("SELECT name FROM sqlite_master WHERE type = 'table'"));
    for (const QString& table : tables) {
        for (const QString& column : m_studio.rows(QStringLiteral("SELECT name FROM pragma_table_info('%1')").arg(table))) {
            if (column == QLatin1String("client_id")) {
                const QString sql = QStringLiteral("SELECT * FROM %1 WHERE client_id = %2").arg(table).arg(m_ada.value());
                EXPECT_TRUE(m_studio.rows(sql).isEmpty()) << table.toStdString();
            }
        }
    }
}

TEST_F(ErasureTest, NumbersGoOn)
{
    ASSERT_EQ(erase().value().number, 1);
    EXPECT_EQ(eraseClient(m_studio.database(), test::clientNamed(m_studio.database(), "Bo Arden"), "Bo Arden", test::smallStudioDay()).value().number, 2);
    EXPECT_TRUE(m_studio.rows(QStringLiteral("SELECT 1 FROM client")).isEmpty());
}

}  // namespace chalk::store
