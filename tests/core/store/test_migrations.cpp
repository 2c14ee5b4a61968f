#include "core/store/migrations.h"

#include "core/exchange/catalogue_json.h"
#include "core/exchange/studio_folder.h"
#include "core/store/act_reader.h"
#include "core/store/history_reader.h"
#include "core/store/record_writer.h"
#include "core/store/roster_reader.h"
#include "core/store/session_reader.h"
#include "core/store/session_writer.h"
#include "core/store/studio_export.h"
#include "core/store/week_settings.h"
#include "tests/support/lift_on_test.h"
#include "tests/support/small_studio.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QSqlQuery>

#include <gtest/gtest.h>

namespace chalk::store {

namespace {

QString samplesFolder()
{
    return QStringLiteral(CHALKRUNG_TEST_DATA "/studios/");
}

/// One for each version of the schema that was ever given out: `v1.chalkrung`, and in the folder `v1` the same in the open format.
QStringList samples()
{
    return QDir(samplesFolder()).entryList({QStringLiteral("v*.chalkrung")}, QDir::Files, QDir::Name);
}

QString copyOfSample(const QString& name, const QTemporaryDir& folder)
{
    const QString copy = folder.filePath(name);
    QFile::copy(samplesFolder() + name, copy);
    QFile::setPermissions(copy, QFile::ReadOwner | QFile::WriteOwner);
    return copy;
}

/// Does every kind of act to a small studio: what there is to be brought up to a later version.
void liveADay(Database& database)
{
    RecordWriter writer(database, test::someMoment, base::CoachId(1));
    const base::ClientId ada = test::clientNamed(database, "Ada Lund");
    const auto lift = [&](lifts::Pattern pattern) { return test::liftOf(database, ada, pattern); };
    const base::Date today = test::smallStudioDay();
    const auto session = SessionReader(database).on(today).value().front().session.id;
    const base::LiftId squat = lift(lifts::Pattern::Squat);
    (void)writer.record(ada, session, {{squat, {today, test::exposureOf({{50, 8, 2}, {50, 8, 1}})}}}).value();
    const base::EventId entry = HistoryReader(database).read(squat).value().back().id;
    const base::ActId corrected = writer.correct(entry, {today, test::exposureOf({{47.5, 8, 2}, {47.5, 7, 1}})}).value().act;
    const base::ActId undone = writer.undo(corrected).value().act;
    (void)writer.undo(undone).value();
    (void)writer.record(ada, {}, {{lift(lifts::Pattern::Hinge), {today, progression::Release{"seen by the physio"}}}}).value();
    progression::CoachSet set;
    set.reason = "came from another coach";
    set.stage = progression::Stage::SetBuild;
    set.load = test::kilos(8);
    const base::LiftId press = lift(lifts::Pattern::HorizontalPush);
    (void)writer.record(ada, {}, {{press, {today, set}}}).value();
    progression::Swap swap;
    swap.equipment = test::fixedKit({8, 12, 16}).equipment;
    (void)writer.record(ada, {}, {{press, {today, swap}}}).value();
    (void)writer.record(ada, {}, {{press, {today, test::exposureOf({{8, 12, 3}})}}}).value();
    (void)writer.takeBack(HistoryReader(database).read(press).value().back().id).value();
    (void)writer.setSessionState(SessionReader(database).withCode("S0").value()->session.id, sessions::SessionState::CancelledLate).value();
}

/// What a version has learnt to keep since the first one: reports, lifts that are left out, bookings and withdrawals.
void liveAnEvening(Database& database)
{
    RecordWriter records(database, test::someMoment, base::CoachId(1));
    SessionWriter sessions(database, test::someMoment, [] { return std::string("EVENING1"); });
    const base::ClientId ada = test::clientNamed(database, "Ada Lund");
    const base::Date today = test::smallStudioDay();
    sessions::Session evening;
    evening.client = ada;
    evening.coach = base::CoachId(1);
    evening.date = today + 1;
    evening.startMinute = 19 * 60;
    evening.place = "Floor";
    (void)sessions.book(evening).value();
    const base::SessionId booked = SessionReader(database).withCode("EVENING1").value()->session.id;
    ASSERT_TRUE(sessions.setLifts(booked, {{test::liftOf(database, ada, lifts::Pattern::Hinge), {}}, {test::liftOf(database, ada, lifts::Pattern::Squat), "no time"}}));
    const base::SessionId morning = SessionReader(database).withCode("S3").value()->session.id;
    sessions::SessionReport report;
    report.effortTenths = 75;
    report.minutes = 55;
    report.note = "Back squat: left knee in";
    (void)records.saveReport(morning, report).value();
    report.minutes = 50;
    (void)records.saveReport(morning, report).value();
    SessionWriter more(database, test::someMoment, [] { return std::string("EVENING2"); });
    evening.date = today + 2;
    (void)more.book(evening).value();
    (void)more.withdraw(SessionReader(database).withCode("EVENING2").value()->session.id).value();
}

/// What weeks are planned from, and a booking that was moved and locked.
void liveAWeek(Database& database)
{
    WeekSettings settings(database);
    const base::ClientId ada = test::clientNamed(database, "Ada Lund");
    const base::Date today = test::smallStudioDay();
    week::StudioWeek studio;
    studio.weights.gapPer15 = 5;
    ASSERT_TRUE(settings.setStudioWeek(studio));
    ASSERT_TRUE(settings.setCoachWork(base::CoachId(2), {studio.open, 2, 300}));
    week::ClientPlanning planning;
    planning.priority = 3;
    planning.standing = {{2, 600, base::CoachId(1)}};
    ASSERT_TRUE(settings.setPlanning(ada, planning));
    ASSERT_TRUE(settings.addClosure({today + 3, today + 3, 720, week::kDayMinutes, {}, {}, 0, "Harbour lights"}));
    const base::SessionId booked = SessionReader(database).withCode("EVENING1").value()->session.id;
    (void)SessionWriter(database, test::someMoment).move(booked, {base::CoachId(2), today + 1, 18 * 60, 60, "Floor", 1, true}).value();
}

std::vector<std::string> actsOf(Database& database)
{
    std::vector<std::string> acts;
    const std::vector<ActRecord> latest = ActReader(database).latest(99).value();
    for (const ActRecord& act : latest) {
        acts.emplace(acts.begin(), keyOf(act.kind));
    }
    return acts;
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

TEST(Migrations, EveryVersionBeforeThePresentHasAFrozenSample)
{
    EXPECT_GE(samples().size(), presentSchemaVersion() - 1);
}

// Run by hand when a version is given out: `store_tests --gtest_also_run_disabled_tests --gtest_filter=*FreezesASample`.
TEST(Migrations, DISABLED_FreezesASampleOfThePresentVersion)
{
    const QString name = QStringLiteral("v%1").arg(presentSchemaVersion());
    ASSERT_FALSE(QFileInfo::exists(samplesFolder() + name)) << "it is frozen already";
    ASSERT_TRUE(QDir().mkpath(samplesFolder() + name + QStringLiteral("/clients")));
    test::StudioOnTest studio;
    liveADay(studio.database());
    liveAnEvening(studio.database());
    liveAWeek(studio.database());
    for (const auto& [path, text] : exchange::writeStudio(exportStudio(studio.database(), test::smallStudioDay()).value())) {
        QFile file(samplesFolder() + name + QLatin1Char('/') + path);
        ASSERT_TRUE(file.open(QIODevice::WriteOnly) && file.write(text) == text.size()) << path.toStdString();
    }
    studio.close();
    EXPECT_TRUE(QFile::copy(studio.file(), samplesFolder() + name + QStringLiteral(".chalkrung")));
}

TEST(Migrations, EverySampleIsBroughtUpToThePresentVersionWithAllThatIsInIt)
{
    const QTemporaryDir folder;
    for (const QString& sample : samples()) {
        const auto opened = Database::open(copyOfSample(sample, folder), OpenMode::MustExist);
        ASSERT_TRUE(opened) << opened.error().message.toStdString();
        Database& database = **opened;
        EXPECT_EQ(database.engine().schemaVersion(database.connection(), database.target()).value(), presentSchemaVersion());
        EXPECT_EQ(schemaFaults(database.connection(), database.engine()), QStringList()) << "it is as if it had been made now";
        const auto expected = exchange::studioFilesIn(samplesFolder() + QFileInfo(sample).baseName()).and_then(
            [](const exchange::StudioFiles& files) { return exchange::readStudio(files, exchange::builtInCatalogue()); });
        ASSERT_TRUE(expected) << expected.error().message().toStdString();
        const auto found = exportStudio(database, expected->today).value();
        EXPECT_EQ(found.clients, expected->clients);
        EXPECT_EQ(found, *expected);
        std::vector<std::string> acts = actsOf(database);
        const std::vector<std::string> firstActs{"import", "record", "correct", "undo", "redo", "release", "set", "swap", "record", "take_back", "session"};
        ASSERT_GE(acts.size(), firstActs.size());
        const auto later = acts.begin() + static_cast<std::ptrdiff_t>(firstActs.size());
        EXPECT_EQ(std::vector<std::string>(acts.begin(), later), firstActs);
        const bool hasReports = sample > QLatin1String("v2.chalkrung");
        std::vector<std::string> laterActs = hasReports ? std::vector<std::string>{"session", "report", "report", "session", "session"} : std::vector<std::string>();
        if (sample > QLatin1String("v3.chalkrung")) {
            laterActs.emplace_back("session");
        }
        EXPECT_EQ(std::vector<std::string>(later, acts.end()), laterActs);
    }
}

TEST(Migrations, EverySampleHasItsRosterAndItsFormerVersions)
{
    const QTemporaryDir folder;
    for (const QString& sample : samples()) {
        const auto database = Database::open(copyOfSample(sample, folder), OpenMode::MustExist).value();
        const auto roster = RosterReader(*database).read(test::smallStudioDay()).value();
        ASSERT_EQ(roster.size(), 2U);
        ASSERT_EQ(roster[0].lifts.size(), 3U);
        EXPECT_EQ(roster[0].lifts[0].stage, progression::Stage::RepBuild);
        EXPECT_EQ(roster[0].lifts[1].stage, progression::Stage::Control) << "released";
        EXPECT_EQ(roster[0].lifts[2].stage, progression::Stage::BaseLoad) << "swapped";
        EXPECT_EQ(roster[0].lastSession, test::smallStudioDay());
        const auto last = HistoryReader(*database).read(roster[0].lifts[0].id).value().back();
        EXPECT_EQ(last.event.body, progression::EventBody(test::exposureOf({{47.5, 8, 2}, {47.5, 7, 1}})));
        EXPECT_EQ(HistoryReader(*database).versions(last.id).value().size(), 4U);
    }
}

TEST(Migrations, TheFourthSampleHasItsWeek)
{
    const QTemporaryDir folder;
    const auto database = Database::open(copyOfSample(QStringLiteral("v4.chalkrung"), folder), OpenMode::MustExist).value();
    WeekSettings settings(*database);
    EXPECT_EQ(settings.studioWeek()->weights.gapPer15, 5);
    EXPECT_EQ(settings.coachWork()->at(base::CoachId(2)).softMaxMinutes, 300);
    EXPECT_EQ(settings.planning(test::clientNamed(*database, "Ada Lund"))->priority, 3);
    ASSERT_EQ(settings.closures(test::smallStudioDay())->size(), 1U);
    EXPECT_EQ(settings.closures(test::smallStudioDay())->front().closure.why, "Harbour lights");
    const auto evening = SessionReader(*database).withCode("EVENING1").value();
    ASSERT_TRUE(evening);
    EXPECT_TRUE(evening->session.isLocked);
    EXPECT_EQ(evening->session.startMinute, 18 * 60);
}

TEST(Migrations, TheThirdSampleHasItsReportsItsLiftsLeftOutAndItsWithdrawal)
{
    const QTemporaryDir folder;
    const auto database = Database::open(copyOfSample(QStringLiteral("v3.chalkrung"), folder), OpenMode::MustExist).value();
    SessionReader sessions(*database);
    const auto morning = sessions.withCode("S3").value();
    ASSERT_TRUE(morning);
    const auto report = sessions.report(morning->session.id).value();
    EXPECT_EQ(report.effortTenths, 75);
    EXPECT_EQ(report.minutes, 50);
    EXPECT_EQ(report.note, "Back squat: left knee in");
    const auto evening = sessions.withCode("EVENING1").value();
    ASSERT_TRUE(evening);
    const auto lifts = sessions.lifts(evening->session.id).value();
    ASSERT_EQ(lifts.size(), 2U);
    EXPECT_EQ(lifts[0].leftOut, std::nullopt);
    EXPECT_EQ(lifts[1].leftOut, "no time");
    EXPECT_TRUE(sessions.on(test::smallStudioDay() + 2).value().empty()) << "it was withdrawn";
    RecordWriter records(*database, test::someMoment);
    const ActRecord withdrawal = ActReader(*database).latest(1).value().front();
    ASSERT_TRUE(records.undo(withdrawal.id)) << "an act of an older version can be taken back";
    EXPECT_EQ(sessions.on(test::smallStudioDay() + 2).value().size(), 1U);
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

TEST(Migrations, WhatIsOpenForReadingIsNotCompleted)
{
    for (const char* table : {"lift_state", "stage_reached", "lift_log"}) {
        test::StudioOnTest studio;
        studio.rows(QStringLiteral("DELETE FROM ") + QLatin1String(table));
        studio.close();
        const auto opened = Database::open(studio.file(), OpenMode::ReadOnly);
        ASSERT_FALSE(opened) << table;
        EXPECT_EQ(opened.error().kind, StoreError::Kind::Older);
        EXPECT_TRUE(opened.error().message.startsWith(studio.file()));
        ASSERT_TRUE(Database::open(studio.file(), OpenMode::MustExist));
        EXPECT_TRUE(Database::open(studio.file(), OpenMode::ReadOnly)) << "once is enough";
    }
}

TEST(Migrations, CachesThatAMigrationEmptiedAreBuiltWhenOpened)
{
    test::StudioOnTest studio;
    const QStringList before = studio.cacheRows();
    for (const char* table : {"lift_state", "stage_reached", "client_week", "lift_log"}) {
        QSqlQuery(studio.database().connection()).exec(QStringLiteral("DELETE FROM ") + QLatin1String(table));
    }
    studio.close();
    studio.open();
    EXPECT_EQ(studio.cacheRows(), before);
}

}  // namespace chalk::store
