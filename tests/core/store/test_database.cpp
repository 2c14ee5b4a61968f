#include "core/store/database.h"

#include "core/store/client_reader.h"
#include "core/store/migrations.h"
#include "core/store/statement.h"
#include "core/store/studio_reader.h"
#include "tests/support/small_studio.h"

#include <QFile>
#include <QFileInfo>
#include <QSqlQuery>

#include <gtest/gtest.h>

#include <stdexcept>

namespace chalk::store {

namespace {

StoreError errorOfOpening(const QString& file, OpenMode mode = OpenMode::MustExist)
{
    const auto opened = Database::open(file, mode);
    return opened ? StoreError{StoreError::Kind::Other, QStringLiteral("it opened")} : opened.error();
}

void expectRefused(const QString& file, StoreError::Kind kind, OpenMode mode = OpenMode::MustExist)
{
    const StoreError error = errorOfOpening(file, mode);
    EXPECT_EQ(error.kind, kind) << error.message.toStdString();
    EXPECT_TRUE(error.message.contains(file)) << "names the file: " << error.message.toStdString();
}

void write(const QString& file, const QByteArray& bytes)
{
    QFile out(file);
    ASSERT_TRUE(out.open(QIODevice::WriteOnly));
    out.write(bytes);
}

QByteArray read(const QString& file)
{
    QFile in(file);
    return in.open(QIODevice::ReadOnly) ? in.readAll() : QByteArray();
}

}  // namespace

TEST(Database, OpensWhatItMade)
{
    test::StudioOnTest studio;
    studio.close();
    EXPECT_TRUE(Database::open(studio.file(), OpenMode::MustExist));
    EXPECT_TRUE(Database::open(studio.file(), OpenMode::ReadOnly));
    EXPECT_EQ(QFileInfo(studio.file()).permissions() & (QFile::ReadGroup | QFile::ReadOther | QFile::WriteOther), QFile::Permissions());
}

TEST(Database, RefusesWhatIsNoStudio)
{
    QTemporaryDir folder;
    expectRefused(folder.filePath(QStringLiteral("none")), StoreError::Kind::NotThere);
    expectRefused(folder.path(), StoreError::Kind::NotThere, OpenMode::CreateIfMissing);
    write(folder.filePath(QStringLiteral("text")), "name,load\nAda,60\n");
    expectRefused(folder.filePath(QStringLiteral("text")), StoreError::Kind::NotAStudio, OpenMode::CreateIfMissing);
    write(folder.filePath(QStringLiteral("empty")), "");
    expectRefused(folder.filePath(QStringLiteral("empty")), StoreError::Kind::NotAStudio);
}

TEST(Database, RefusesAForeignDatabase)
{
    QTemporaryDir folder;
    const QString file = folder.filePath(QStringLiteral("foreign"));
    {
        QSqlDatabase other = QSqlDatabase::addDatabase(QStringLiteral("QSQLITE"), QStringLiteral("foreign"));
        other.setDatabaseName(file);
        ASSERT_TRUE(other.open());
        QSqlQuery query(other);
        ASSERT_TRUE(query.exec(QStringLiteral("CREATE TABLE letters (a)")));
        other.close();
    }
    QSqlDatabase::removeDatabase(QStringLiteral("foreign"));
    const QByteArray before = read(file);
    expectRefused(file, StoreError::Kind::NotAStudio, OpenMode::CreateIfMissing);
    EXPECT_EQ(read(file), before) << "it is left as it is";
}

TEST(Database, RefusesTheFileOfAnotherProgram)
{
    test::StudioOnTest studio;
    {
        QSqlQuery query(studio.database().connection());
        ASSERT_TRUE(query.exec(QStringLiteral("PRAGMA application_id = 252006673")));
    }
    studio.close();
    const QByteArray before = read(studio.file());
    expectRefused(studio.file(), StoreError::Kind::NotAStudio);
    EXPECT_EQ(read(studio.file()), before);
}

TEST(Database, RefusesANewerStudioAndLeavesItAlone)
{
    test::StudioOnTest studio;
    {
        QSqlQuery query(studio.database().connection());
        ASSERT_TRUE(query.exec(QStringLiteral("PRAGMA user_version = %1").arg(presentSchemaVersion() + 1)));
    }
    studio.close();
    const QByteArray before = read(studio.file());
    expectRefused(studio.file(), StoreError::Kind::Newer);
    expectRefused(studio.file(), StoreError::Kind::Newer, OpenMode::ReadOnly);
    EXPECT_EQ(read(studio.file()), before);
}

TEST(Database, FindsAStudioCutShort)
{
    test::StudioOnTest studio;
    studio.close();
    const QByteArray whole = read(studio.file());
    ASSERT_GT(whole.size(), 8192);
    const QString cut = studio.folder() + QStringLiteral("/cut");
    for (const qsizetype size : {whole.size() - 1, whole.size() / 2, qsizetype{50}}) {
        write(cut, whole.left(size));
        expectRefused(cut, StoreError::Kind::Damaged);
    }
}

TEST(Database, FindsADamagedPage)
{
    test::StudioOnTest studio;
    studio.close();
    QByteArray bytes = read(studio.file());
    // Every page but the first: whatever is read is broken.
    bytes.replace(4096, bytes.size() - 4096, QByteArray(bytes.size() - 4096, '\xA5'));
    write(studio.file(), bytes);
    const auto opened = Database::open(studio.file(), OpenMode::MustExist);
    if (!opened) {
        EXPECT_EQ(opened.error().kind, StoreError::Kind::Damaged) << opened.error().message.toStdString();
        return;
    }
    const auto names = ClientReader(**opened).names();
    ASSERT_FALSE(names);
    EXPECT_EQ(names.error().kind, StoreError::Kind::Damaged);
    EXPECT_TRUE(names.error().message.contains(studio.file()));
}

TEST(Database, AnotherConnectionSeesWhatWasCommittedAndNothingElse)
{
    test::StudioOnTest studio;
    const auto other = Database::open(studio.file(), OpenMode::MustExist).value();
    const auto coaches = [&other] { return StudioReader(*other).coaches().value().size(); };
    {
        Transaction transaction(studio.database());
        Statement(studio.database(), QStringLiteral("INSERT INTO coach (name) VALUES (?)")).run(std::string("Mara"));
        EXPECT_EQ(coaches(), 2U);
        ASSERT_TRUE(transaction.commit());
    }
    EXPECT_EQ(coaches(), 3U);
}

TEST(Snapshot, SeesOneStateThroughout)
{
    test::StudioOnTest studio;
    const auto other = Database::open(studio.file(), OpenMode::MustExist).value();
    {
        const Snapshot snapshot(*other);
        EXPECT_EQ(StudioReader(*other).coaches().value().size(), 2U);
        Transaction transaction(studio.database());
        Statement(studio.database(), QStringLiteral("INSERT INTO coach (name) VALUES (?)")).run(std::string("Mara"));
        ASSERT_TRUE(transaction.commit());
        EXPECT_EQ(StudioReader(*other).coaches().value().size(), 2U);
    }
    EXPECT_EQ(StudioReader(*other).coaches().value().size(), 3U);
}

TEST(Database, WhatIsOpenForReadingIsNotWritten)
{
    test::StudioOnTest studio;
    const auto reading = Database::open(studio.file(), OpenMode::ReadOnly).value();
    Transaction transaction(*reading);
    Statement(*reading, QStringLiteral("INSERT INTO coach (name) VALUES (?)")).run(std::string("Mara"));
    const auto committed = transaction.commit();
    ASSERT_FALSE(committed);
    EXPECT_EQ(committed.error().kind, StoreError::Kind::CannotWrite) << committed.error().message.toStdString();
}

TEST(Database, TheDefaultFileIsInTheDataFolder)
{
    EXPECT_TRUE(QFileInfo(defaultStudioFile()).isAbsolute());
    EXPECT_TRUE(defaultStudioFile().endsWith(QLatin1String("/chalkrung/studio.chalkrung")));
}

TEST(Transaction, RollsBackUnlessCommitted)
{
    test::StudioOnTest studio;
    const auto coaches = [&studio] {
        const Snapshot snapshot(studio.database());
        Statement count(studio.database(), QStringLiteral("SELECT count(*) FROM coach"));
        return count.run() && count.next() ? count.number(0) : -1;
    };
    {
        const Transaction transaction(studio.database());
        Statement(studio.database(), QStringLiteral("INSERT INTO coach (name) VALUES (?)")).run(std::string("Mara"));
    }
    EXPECT_EQ(coaches(), 2);
    Transaction transaction(studio.database());
    Statement(studio.database(), QStringLiteral("INSERT INTO coach (name) VALUES (?)")).run(std::string("Mara"));
    Statement(studio.database(), QStringLiteral("INSERT INTO coach (name) VALUES (?)")).run(std::string());
    Statement(studio.database(), QStringLiteral("INSERT INTO coach (name) VALUES (?)")).run(std::string("Noor"));
    const auto committed = transaction.commit();
    ASSERT_FALSE(committed);
    EXPECT_EQ(committed.error().kind, StoreError::Kind::Refused);
    EXPECT_EQ(coaches(), 2);
}

TEST(Transaction, OneInsideOfAnotherIsADefect)
{
    test::StudioOnTest studio;
    const Transaction outer(studio.database());
    EXPECT_THROW(Transaction{studio.database()}, std::logic_error);
}

TEST(Transaction, ReadingInsideSeesWhatWasWritten)
{
    test::StudioOnTest studio;
    const Transaction transaction(studio.database());
    Statement(studio.database(), QStringLiteral("INSERT INTO coach (name) VALUES (?)")).run(std::string("Mara"));
    EXPECT_EQ(StudioReader(studio.database()).coaches().value().size(), 3U);
    Statement(studio.database(), QStringLiteral("INSERT INTO coach (name) VALUES (?)")).run(std::string());
    EXPECT_FALSE(StudioReader(studio.database()).coaches()) << "what failed before is not forgotten in the middle";
}

TEST(Statement, ValuesKeepTheirKind)
{
    test::StudioOnTest studio;
    const Snapshot snapshot(studio.database());
    Statement row(studio.database(), QStringLiteral("SELECT ?, ?, ?, ?, ?, ?, ?"));
    ASSERT_TRUE(row.run(std::int64_t{1} << 60, std::optional<base::Date>(), base::Date::fromDays(-3), QString(), std::string("Ünï"), base::CoachId(),
                        base::Load::fromCenti(-250)));
    ASSERT_TRUE(row.next());
    EXPECT_EQ(row.integer(0), std::int64_t{1} << 60);
    EXPECT_FALSE(row.optionalDate(1));
    EXPECT_EQ(row.date(2), base::Date::fromDays(-3));
    EXPECT_FALSE(row.isNull(3)) << "an empty text is no missing one";
    EXPECT_EQ(row.text(4), "Ünï");
    EXPECT_TRUE(row.isNull(5));
    EXPECT_EQ(row.optionalLoad(6), base::Load::fromCenti(-250));
    EXPECT_FALSE(row.next());
}

TEST(Statement, AWrongOneFailsOnceAndNamesTheFile)
{
    test::StudioOnTest studio;
    const Snapshot snapshot(studio.database());
    Statement wrong(studio.database(), QStringLiteral("SELECT x FROM nowhere"));
    EXPECT_FALSE(wrong.run());
    EXPECT_FALSE(wrong.next());
    ASSERT_TRUE(studio.database().failure());
    EXPECT_TRUE(studio.database().failure()->message.contains(studio.file()));
}

}  // namespace chalk::store
