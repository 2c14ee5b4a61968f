#include "core/store/engine.h"

#include "core/store/act_reader.h"
#include "core/store/client_reader.h"
#include "core/store/record_writer.h"
#include "core/store/roster_reader.h"
#include "core/store/session_reader.h"
#include "core/store/statement.h"
#include "tests/support/lift_on_test.h"
#include "tests/support/small_studio.h"

#include <QFile>
#include <QFileInfo>

#include <gtest/gtest.h>

#include <csignal>

#include <sys/resource.h>

namespace chalk::store {

namespace {

/// While it lives, no file of this process grows beyond `bytes`: as on a disk that is full.
class FullDisk {
public:
    explicit FullDisk(qint64 bytes) : m_signal(std::signal(SIGXFSZ, SIG_IGN))
    {
        ::getrlimit(RLIMIT_FSIZE, &m_before);
        const rlimit small{static_cast<rlim_t>(bytes), m_before.rlim_max};
        ::setrlimit(RLIMIT_FSIZE, &small);
    }
    ~FullDisk()
    {
        ::setrlimit(RLIMIT_FSIZE, &m_before);
        std::signal(SIGXFSZ, m_signal);
    }
    FullDisk(const FullDisk&) = delete;
    FullDisk& operator=(const FullDisk&) = delete;

private:
    rlimit m_before{};
    void (*m_signal)(int);
};

std::size_t entriesOfSquat(Database& database)
{
    EventLog log(database);
    return log.presentEntries(test::liftOf(database, base::ClientId(1), lifts::Pattern::Squat)).size();
}

}  // namespace

TEST(SqliteEngine, WhatAPersonEnteredIsOnTheDiskAndReferencesHold)
{
    test::StudioOnTest studio;
    EXPECT_EQ(studio.rows(QStringLiteral("PRAGMA journal_mode")), QStringList(QStringLiteral("wal")));
    EXPECT_EQ(studio.rows(QStringLiteral("PRAGMA synchronous")), QStringList(QStringLiteral("2"))) << "FULL";
    EXPECT_EQ(studio.rows(QStringLiteral("PRAGMA foreign_keys")), QStringList(QStringLiteral("1")));
    EXPECT_EQ(studio.rows(QStringLiteral("PRAGMA trusted_schema")), QStringList(QStringLiteral("0")));
    EXPECT_EQ(studio.rows(QStringLiteral("PRAGMA foreign_key_check")), QStringList());
    EXPECT_EQ(studio.rows(QStringLiteral("PRAGMA integrity_check")), QStringList(QStringLiteral("ok")));
}

TEST(SqliteEngine, AReferenceToNothingIsRefused)
{
    test::StudioOnTest studio;
    Transaction transaction(studio.database());
    Statement(studio.database(), QStringLiteral("INSERT INTO clearance (client_id, state, reason, limits) VALUES (99, 'cleared', '', '')")).run();
    const auto committed = transaction.commit();
    ASSERT_FALSE(committed);
    EXPECT_EQ(committed.error().kind, StoreError::Kind::Refused);
    EXPECT_TRUE(committed.error().message.contains(QLatin1String("FOREIGN KEY"))) << committed.error().message.toStdString();
}

TEST(SqliteEngine, AFullDiskIsToldAndNothingIsLost)
{
    test::StudioOnTest studio;
    RecordWriter writer(studio.database(), test::someMoment);
    const base::LiftId squat = test::liftOf(studio.database(), base::ClientId(1), lifts::Pattern::Squat);
    const std::vector<NewRecord> records{{squat, {test::smallStudioDay(), test::exposureOf({{45, 8, 2}, {45, 8, 2}})}}};
    const std::size_t before = entriesOfSquat(studio.database());
    {
        const FullDisk disk(QFileInfo(studio.file() + QStringLiteral("-wal")).size() + 100);
        const auto outcome = writer.record(base::ClientId(1), {}, records);
        ASSERT_FALSE(outcome);
        EXPECT_EQ(outcome.error().kind, StoreError::Kind::CannotWrite) << outcome.error().message.toStdString();
        EXPECT_TRUE(outcome.error().message.contains(studio.file()));
        EXPECT_EQ(entriesOfSquat(studio.database()), before);
    }
    ASSERT_TRUE(writer.record(base::ClientId(1), {}, records)) << "the same studio goes on once there is space";
    EXPECT_EQ(entriesOfSquat(studio.database()), before + 1);
    EXPECT_EQ(studio.rows(QStringLiteral("PRAGMA integrity_check")), QStringList(QStringLiteral("ok")));
}

TEST(SqliteEngine, AfterACrashThereIsWhatWasCommittedAndNothingElse)
{
    test::StudioOnTest studio;
    RecordWriter writer(studio.database(), test::someMoment);
    const base::LiftId squat = test::liftOf(studio.database(), base::ClientId(1), lifts::Pattern::Squat);
    ASSERT_TRUE(writer.record(base::ClientId(1), {}, {{squat, {test::smallStudioDay(), test::exposureOf({{45, 8, 2}})}}}));
    const std::size_t committed = entriesOfSquat(studio.database());
    const QString crashed = studio.folder() + QStringLiteral("/crashed.chalkrung");
    {
        const Transaction transaction(studio.database());
        Statement(studio.database(), QStringLiteral("PRAGMA cache_size = 1")).run();  // so that the unfinished goes to the file
        Statement noise(studio.database(), QStringLiteral("INSERT INTO coach (name) VALUES (?)"));
        for (int i = 0; i < 500; ++i) {
            noise.run(std::string(1000, 'x'));
        }
        // What the disk would hold if this process ended here.
        ASSERT_TRUE(QFile::copy(studio.file(), crashed));
        ASSERT_TRUE(QFile::copy(studio.file() + QStringLiteral("-wal"), crashed + QStringLiteral("-wal")));
        ASSERT_GT(QFileInfo(crashed + QStringLiteral("-wal")).size(), 100'000);
    }
    const auto again = Database::open(crashed, OpenMode::MustExist);
    ASSERT_TRUE(again) << again.error().message.toStdString();
    EXPECT_EQ(entriesOfSquat(**again), committed);
    Statement coaches(**again, QStringLiteral("SELECT count(*) FROM coach"));
    ASSERT_TRUE(coaches.run() && coaches.next());
    EXPECT_EQ(coaches.number(0), 2);
}

TEST(SqliteEngine, ANameWithAMeaningOfItsOwnIsNoStudio)
{
    // SQLite would take the first for a database in memory, and the program for one of its own resources: all would be lost.
    for (const char* name : {":memory:", ":/demo/studio.json", ""}) {
        for (const OpenMode mode : {OpenMode::MustExist, OpenMode::CreateIfMissing, OpenMode::ReadOnly}) {
            EXPECT_FALSE(Database::open(QString(QLatin1String(name)), mode)) << name;
        }
        EXPECT_FALSE(QFile::exists(QStringLiteral("./") + QLatin1String(name)) && *name == ':') << name;
    }
}

TEST(SqliteEngine, AVersionThatNeverWasIsDamage)
{
    for (const char* version : {"0", "-1", "-2147483648"}) {
        test::StudioOnTest studio;
        studio.rows(QStringLiteral("PRAGMA user_version = ") + QLatin1String(version));
        studio.close();
        const auto opened = Database::open(studio.file(), OpenMode::CreateIfMissing);
        ASSERT_FALSE(opened) << version;
        EXPECT_EQ(opened.error().kind, StoreError::Kind::Damaged) << opened.error().message.toStdString();
        EXPECT_TRUE(opened.error().message.contains(studio.file()) && opened.error().message.contains(QLatin1String(version)));
    }
}

TEST(SqliteEngine, ATableThatIsMissingIsDamage)
{
    test::StudioOnTest studio;
    studio.rows(QStringLiteral("DROP TABLE client_week"));
    const auto roster = RosterReader(studio.database()).read(test::smallStudioDay());
    ASSERT_FALSE(roster);
    EXPECT_EQ(roster.error().kind, StoreError::Kind::Damaged);
    EXPECT_TRUE(roster.error().message.startsWith(studio.file() + QStringLiteral(" is damaged: no such table: client_week"))) << roster.error().message.toStdString();
    studio.rows(QStringLiteral("DROP TABLE lift_state"));
    studio.close();
    const auto opened = Database::open(studio.file(), OpenMode::MustExist);
    ASSERT_FALSE(opened);
    EXPECT_EQ(opened.error().kind, StoreError::Kind::Damaged);
}

TEST(SqliteEngine, AWordThatNobodyKnowsIsDamageAtAPlace)
{
    const char* const kStatements[] = {"UPDATE session SET state = 'vanished' WHERE id = 1", "UPDATE session SET kind = 'swim' WHERE code = 'S3'",
                                       "UPDATE lift_state SET stage = 'flying'", "UPDATE lift SET pattern = 'jump'",
                                       "UPDATE caution SET tags = 'lower_back toe'", "UPDATE clearance SET state = 'perhaps'"};
    for (const char* sql : kStatements) {
        test::StudioOnTest studio;
        studio.rows(QLatin1String(sql));
        const auto roster = RosterReader(studio.database()).read(test::smallStudioDay());
        ASSERT_FALSE(roster) << sql;
        EXPECT_EQ(roster.error().kind, StoreError::Kind::Damaged);
        const QString message = roster.error().message;
        EXPECT_TRUE(message.startsWith(studio.file() + QStringLiteral(" is damaged: ")) && message.endsWith(QLatin1String("\" has no meaning"))) << message.toStdString();
    }
}

}  // namespace chalk::store
