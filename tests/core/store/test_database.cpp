#include "core/store/database.h"

#include "core/store/migrations.h"
#include "core/store/statement.h"
#include "core/store/studio_import.h"
#include "tests/support/small_studio.h"

#include <QFile>
#include <QFileInfo>
#include <QSqlQuery>

#include <gtest/gtest.h>

#include <unistd.h>

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
    EXPECT_EQ(read(file).size(), before.size());
}

TEST(Database, RefusesANewerStudioAndLeavesItAlone)
{
    test::StudioOnTest studio;
    {
        QSqlQuery query(studio.database().connection());
        ASSERT_TRUE(query.exec(QStringLiteral("PRAGMA user_version = %1").arg(presentSchemaVersion() + 1)));
    }
    studio.close();
    expectRefused(studio.file(), StoreError::Kind::Newer);
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

TEST(Database, AReadOnlyFolderIsNamed)
{
    if (::geteuid() == 0) {
        GTEST_SKIP() << "root may write everywhere";
    }
    test::StudioOnTest studio;
    studio.close();
    QFile::setPermissions(studio.folder(), QFile::ReadOwner | QFile::ExeOwner);
    const StoreError error = errorOfOpening(studio.folder() + QStringLiteral("/new"), OpenMode::CreateIfMissing);
    QFile::setPermissions(studio.folder(), QFile::ReadOwner | QFile::WriteOwner | QFile::ExeOwner);
    EXPECT_EQ(error.kind, StoreError::Kind::CannotWrite) << error.message.toStdString();
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

TEST(StudioWriter, TakesAStudioOnlyOnceAndStopsWhenAsked)
{
    test::StudioOnTest studio;
    const auto again = importStudio(studio.database(), test::smallStudio(), test::someMoment());
    ASSERT_FALSE(again);
    EXPECT_EQ(again.error().kind, StoreError::Kind::Refused);

    QTemporaryDir folder;
    const auto database = Database::open(folder.filePath(QStringLiteral("new")), OpenMode::CreateIfMissing).value();
    const auto stopped = importStudio(*database, test::smallStudio(), test::someMoment(), [](int done, int) { return done < 1; });
    ASSERT_FALSE(stopped);
    EXPECT_EQ(stopped.error().kind, StoreError::Kind::Cancelled);
    EXPECT_TRUE(importStudio(*database, test::smallStudio(), test::someMoment())) << "nothing was left behind";
}

TEST(Migrations, SplitStatementsKeepTriggersWhole)
{
    const QStringList statements = statementsOf(QStringLiteral("-- about\nCREATE TABLE a (\n  b INTEGER\n);\n\nCREATE TRIGGER t BEFORE UPDATE ON a\n"
                                                               "BEGIN SELECT 1; SELECT 2; END;\nCREATE INDEX i ON a (b);\n"));
    ASSERT_EQ(statements.size(), 3);
    EXPECT_TRUE(statements[1].startsWith(QLatin1String("CREATE TRIGGER")));
    EXPECT_TRUE(statements[1].endsWith(QLatin1String("END;")));
}

}  // namespace chalk::store
