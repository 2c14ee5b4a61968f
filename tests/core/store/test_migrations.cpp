#include "core/store/migrations.h"

#include "core/store/client_reader.h"
#include "core/store/history_reader.h"
#include "tests/support/small_studio.h"

#include <QDir>
#include <QFile>
#include <QSqlQuery>

#include <gtest/gtest.h>

namespace chalk::store {

namespace {

/// A copy of a frozen sample, one for each version of the schema that was ever given out.
QString copyOfSample(const QString& name, const QTemporaryDir& folder)
{
    const QString copy = folder.filePath(name);
    QFile::copy(QStringLiteral(CHALKRUNG_TEST_DATA "/studios/") + name, copy);
    QFile::setPermissions(copy, QFile::ReadOwner | QFile::WriteOwner);
    return copy;
}

QStringList samples()
{
    return QDir(QStringLiteral(CHALKRUNG_TEST_DATA "/studios")).entryList({QStringLiteral("v*.chalkrung")}, QDir::Files, QDir::Name);
}

}  // namespace

TEST(Migrations, SplitStatementsKeepTriggersWhole)
{
    const QStringList statements = statementsOf(QStringLiteral("-- about\nCREATE TABLE a (\n  b INTEGER\n);\n\nCREATE TRIGGER t BEFORE UPDATE ON a\n"
                                                               "BEGIN SELECT 1; SELECT 2; END;\nCREATE INDEX i ON a (b);\n"));
    ASSERT_EQ(statements.size(), 3);
    EXPECT_TRUE(statements[1].startsWith(QLatin1String("CREATE TRIGGER")));
    EXPECT_TRUE(statements[1].endsWith(QLatin1String("END;")));
}

TEST(Migrations, EveryVersionHasAFrozenSample)
{
    EXPECT_EQ(samples().size(), presentSchemaVersion());
}

TEST(Migrations, EverySampleOpensAndReadsAsTheStudioThatItWasMadeOf)
{
    const QTemporaryDir folder;
    for (const QString& sample : samples()) {
        const auto opened = Database::open(copyOfSample(sample, folder), OpenMode::MustExist);
        ASSERT_TRUE(opened) << opened.error().message.toStdString();
        Database& database = **opened;
        const base::ClientId ada = test::clientNamed(database, "Ada Lund");
        const auto file = ClientReader(database).read(ada, test::smallStudioDay()).value();
        EXPECT_EQ(file.client.bodyMass, base::Load::fromCenti(7150));
        ASSERT_EQ(file.lifts.size(), 3U);
        EXPECT_EQ(file.lifts[0].lift.machine.state().stage, progression::Stage::LoadBuild);
        EXPECT_EQ(HistoryReader(database).read(file.lifts[0].lift.id).value().size(), 5U);
        EXPECT_EQ(database.engine().schemaVersion(database.connection(), database.target()).value(), presentSchemaVersion());
    }
}

TEST(Migrations, TablesAreAsTheNewestSampleHasThem)
{
    // A schema that was given out is never changed: a new step is added instead.
    const QTemporaryDir folder;
    test::StudioOnTest fresh;
    const auto sample = Database::open(copyOfSample(samples().last(), folder), OpenMode::MustExist);
    ASSERT_TRUE(sample);
    const auto schemaOf = [](Database& database) {
        QStringList schema;
        QSqlQuery query(database.connection());
        query.exec(QStringLiteral("SELECT sql FROM sqlite_master WHERE sql IS NOT NULL ORDER BY name"));
        while (query.next()) {
            schema.append(query.value(0).toString());
        }
        return schema;
    };
    EXPECT_EQ(schemaOf(**sample), schemaOf(fresh.database()));
}

TEST(Migrations, EveryTableIsStrict)
{
    test::StudioOnTest studio;
    EXPECT_EQ(studio.rows(QStringLiteral("SELECT name FROM pragma_table_list WHERE schema = 'main' AND type = 'table' AND strict = 0 AND name NOT LIKE 'sqlite_%'")),
              QStringList());
}

TEST(Migrations, CachesThatAMigrationEmptiedAreBuiltWhenOpened)
{
    test::StudioOnTest studio;
    const QStringList before = studio.cacheRows();
    for (const char* table : {"lift_state", "stage_reached", "client_week"}) {
        QSqlQuery(studio.database().connection()).exec(QStringLiteral("DELETE FROM ") + QLatin1String(table));
    }
    studio.close();
    studio.open();
    EXPECT_EQ(studio.cacheRows(), before);
}

}  // namespace chalk::store
