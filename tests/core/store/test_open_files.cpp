#include "core/store/open_files.h"

#include "core/exchange/catalogue_json.h"
#include "core/exchange/studio_folder.h"
#include "core/simulation/simulated_crowd.h"
#include "core/store/change_history.h"
#include "core/store/studio_export.h"
#include "tests/support/kept_client.h"
#include "tests/support/small_studio.h"

#include <QDirIterator>
#include <QTemporaryDir>

#include <gtest/gtest.h>

#include <map>

namespace chalk::store {

namespace {

using Texts = std::map<QString, QByteArray>;

constexpr OpenFilesWish kBoth{true, true, {}};
constexpr OpenFilesWish kOnlyTables{false, true, {}};

Texts filesUnder(const QString& folder)
{
    Texts texts;
    QDirIterator each(folder, QDir::Files | QDir::Hidden, QDirIterator::Subdirectories);
    while (each.hasNext()) {
        QFile file(each.next());
        EXPECT_TRUE(file.open(QIODevice::ReadOnly));
        EXPECT_EQ(file.permissions() & (QFile::ReadGroup | QFile::ReadOther), QFile::Permissions()) << file.fileName().toStdString();
        texts[QDir(folder).relativeFilePath(file.fileName())] = file.readAll();
    }
    return texts;
}

/// Writes a studio, reads it into a fresh one, and writes that.
void expectTheSameBytesAgain(Database& database, base::Date day, const OpenFilesWish& wish)
{
    const QTemporaryDir folder;
    const QString first = folder.filePath(QStringLiteral("first"));
    const QString second = folder.filePath(QStringLiteral("second"));
    const auto written = writeOpenFiles(database, first, wish, day);
    ASSERT_TRUE(written) << written.error().message.toStdString();
    const auto fresh = Database::open(folder.filePath(QStringLiteral("fresh")), OpenMode::CreateIfMissing).value();
    const auto read = readOpenFiles(*fresh, first, test::someMoment());
    ASSERT_TRUE(read) << read.error().message.toStdString();
    EXPECT_EQ(*read, *written);
    ASSERT_TRUE(writeOpenFiles(*fresh, second, wish, day));
    const Texts before = filesUnder(first);
    const Texts after = filesUnder(second);
    EXPECT_EQ(before.size(), after.size());
    for (const auto& [name, text] : before) {
        EXPECT_TRUE(after.count(name) == 1 && after.at(name) == text) << name.toStdString() << " is not the same file";
    }
}

exchange::StudioDocument keptStudio()
{
    exchange::StudioDocument document = exchange::readStudio(exchange::writeStudio(test::smallStudio()), exchange::builtInCatalogue()).value();
    test::addKept(document);
    document.coaches.push_back({base::CoachId(3), "Front desk"});
    document.deskOnly = {base::CoachId(3)};
    document.erasedOn = {test::smallStudioDay() - 9, test::smallStudioDay()};
    document.erasedSessions = {{1, base::CoachId(2), test::smallStudioDay() - 50, 600, 45, sessions::SessionKind::Trial, sessions::SessionState::Missed}};
    return document;
}

/// Every table of a studio: what it becomes in open files.
const std::map<QString, QString>& tablesOfStudio()
{
    static const QString taken = QStringLiteral("taken");
    static const QString cache = QStringLiteral("worked out from the log");
    static const QString history = QStringLiteral("history of changes, which stays with its studio");
    static const std::map<QString, QString> tables{
        {QStringLiteral("studio"), taken}, {QStringLiteral("coach"), taken}, {QStringLiteral("studio_equipment"), taken}, {QStringLiteral("client"), taken},
        {QStringLiteral("caution"), taken}, {QStringLiteral("clearance"), taken}, {QStringLiteral("lift"), taken}, {QStringLiteral("session"), taken},
        {QStringLiteral("event"), taken}, {QStringLiteral("event_set"), taken}, {QStringLiteral("form"), taken}, {QStringLiteral("letter"), taken},
        {QStringLiteral("plan_template"), taken}, {QStringLiteral("session_lift"), taken}, {QStringLiteral("session_report"), taken},
        {QStringLiteral("closure"), taken}, {QStringLiteral("decision"), taken}, {QStringLiteral("week_quota"), taken}, {QStringLiteral("plan"), taken},
        {QStringLiteral("tested_maximum"), taken}, {QStringLiteral("erased_client"), taken}, {QStringLiteral("erased_session"), taken},
        {QStringLiteral("lift_state"), cache}, {QStringLiteral("stage_reached"), cache}, {QStringLiteral("client_week"), cache}, {QStringLiteral("lift_log"), cache},
        {QStringLiteral("act"), history}, {QStringLiteral("audit"), history}, {QStringLiteral("session_change"), history}, {QStringLiteral("report_change"), history},
        {QStringLiteral("booking_change"), history}, {QStringLiteral("import_source"), history}, {QStringLiteral("client_change"), history},
        {QStringLiteral("owner_change"), history}, {QStringLiteral("sealing"), QStringLiteral("the passphrase of its file")},
        {QStringLiteral("sealed_version"), QStringLiteral("the passphrase of its file")}, {QStringLiteral("erasing"), QStringLiteral("empty outside of an erasure")}};
    return tables;
}

}  // namespace

TEST(FileOnlyOpenFiles, EveryTableIsAccountedFor)
{
    test::StudioOnTest studio;
    for (const QString& name : studio.rows(QStringLiteral("SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE 'sqlite%'"))) {
        EXPECT_EQ(tablesOfStudio().count(name), 1U) << name.toStdString() << ": say what becomes of it in open files";
    }
}

TEST(OpenFiles, TheDemoStudioComesBackAsTheSameBytes)
{
    const exchange::StudioFiles files = exchange::studioFilesIn(QStringLiteral(CHALKRUNG_SOURCE "/demo_clients")).value();
    const auto document = exchange::readStudio(files, exchange::builtInCatalogue()).value();
    test::StudioOnTest studio(document);
    expectTheSameBytesAgain(studio.database(), document.today, kBoth);
    expectTheSameBytesAgain(studio.database(), document.today, kOnlyTables);
    const QTemporaryDir folder;
    ASSERT_TRUE(writeOpenFiles(studio.database(), folder.path(), {true, false, {}}, document.today));
    for (const auto& [name, text] : files) {
        EXPECT_TRUE(filesUnder(folder.path()).at(name) == text) << name.toStdString();
    }
}

TEST(OpenFiles, WhatOnboardingKeepsAndWhoWasErasedComeBack)
{
    test::StudioOnTest studio(keptStudio());
    expectTheSameBytesAgain(studio.database(), test::smallStudioDay(), kBoth);
    expectTheSameBytesAgain(studio.database(), test::smallStudioDay(), kOnlyTables);
    EXPECT_EQ(exportStudio(studio.database(), test::smallStudioDay()).value(), keptStudio());
}

TEST(OpenFiles, SimulatedStudiosComeBackAsTheSameBytes)
{
    const lifts::Catalogue catalogue = exchange::builtInCatalogue();
    for (int seed = 1; seed <= 8; ++seed) {
        const simulation::SimulatedCrowd crowd(catalogue, 3 * seed, test::smallStudioDay(), static_cast<std::uint64_t>(seed));
        exchange::StudioDocument document;
        document.name = "Crowd, \"the\" large";
        document.coaches = crowd.coaches();
        document.equipment = crowd.equipment();
        document.today = test::smallStudioDay();
        for (int number = 1; number <= 3; ++number) {
            document.clients.push_back(crowd.client(number));
        }
        test::StudioOnTest studio(document);
        expectTheSameBytesAgain(studio.database(), document.today, kBoth);
        expectTheSameBytesAgain(studio.database(), document.today, kOnlyTables);
        ASSERT_FALSE(::testing::Test::HasFailure()) << "seed " << seed;
    }
}

TEST(OpenFiles, OfOneClientNobodyElseIsWritten)
{
    test::StudioOnTest studio;
    const QTemporaryDir folder;
    const base::ClientId bo = test::clientNamed(studio.database(), "Bo Arden");
    ASSERT_EQ(writeOpenFiles(studio.database(), folder.path(), {true, true, bo}, test::smallStudioDay()).value(), 1);
    for (const auto& [name, text] : filesUnder(folder.path())) {
        EXPECT_FALSE(text.contains("Ada Lund")) << name.toStdString();
    }
    EXPECT_FALSE(writeOpenFiles(studio.database(), folder.path(), {true, true, base::ClientId(99)}, test::smallStudioDay()));
}

TEST(OpenFiles, AnExportIsWrittenDown)
{
    test::StudioOnTest studio;
    const QTemporaryDir folder;
    studio.database().setAuthor(base::CoachId(2));
    ASSERT_TRUE(writeOpenFiles(studio.database(), folder.path(), kBoth, test::smallStudioDay()));
    const auto history = ChangeHistory(studio.database()).all().value();
    const auto* record = std::get_if<AuditRecord>(&history.front().did);
    ASSERT_NE(record, nullptr);
    EXPECT_EQ(record->what, AuditWhat::StudioExported);
    EXPECT_EQ(history.front().coachName, "Tobias");
}

TEST(OpenFiles, WhatIsStoppedLeavesNothing)
{
    test::StudioOnTest studio;
    const QTemporaryDir folder;
    const auto stopped = writeOpenFiles(studio.database(), folder.path(), kBoth, test::smallStudioDay(), [](int done, int) { return done < 1; });
    ASSERT_FALSE(stopped);
    EXPECT_EQ(stopped.error().kind, StoreError::Kind::Cancelled);
    EXPECT_TRUE(filesUnder(folder.path()).empty());
}

TEST(OpenFiles, WhatIsStoppedLeavesAnOlderExportAsItWas)
{
    test::StudioOnTest studio;
    const QTemporaryDir folder;
    const base::Date day = test::smallStudioDay();
    ASSERT_TRUE(writeOpenFiles(studio.database(), folder.path(), kBoth, day - 7));
    const Texts before = filesUnder(folder.path());
    ASSERT_FALSE(writeOpenFiles(studio.database(), folder.path(), kBoth, day, [](int done, int) { return done < 1; }));
    EXPECT_TRUE(filesUnder(folder.path()) == before);
    ASSERT_TRUE(writeOpenFiles(studio.database(), folder.path(), kBoth, day));
    EXPECT_FALSE(filesUnder(folder.path()) == before) << "the test tells nothing: both days give the same files";
}

TEST(OpenFiles, AFaultInATableNamesItsPlaceAndNothingIsTakenIn)
{
    test::StudioOnTest studio;
    const QTemporaryDir folder;
    ASSERT_TRUE(writeOpenFiles(studio.database(), folder.path(), kOnlyTables, test::smallStudioDay()));
    QFile sessions(folder.filePath(QStringLiteral("tables/sessions.csv")));
    ASSERT_TRUE(sessions.open(QIODevice::ReadWrite));
    QByteArray text = sessions.readAll();
    text.replace("missed", "mossed");
    sessions.seek(0);
    sessions.write(text);
    sessions.close();
    const auto fresh = Database::open(folder.filePath(QStringLiteral("fresh")), OpenMode::CreateIfMissing).value();
    const auto read = readOpenFiles(*fresh, folder.path(), test::someMoment());
    ASSERT_FALSE(read);
    EXPECT_TRUE(read.error().message.contains(QLatin1String("sessions.csv, line 3, column 1: state must be"))) << read.error().message.toStdString();
    EXPECT_TRUE(importStudio(*fresh, test::smallStudio(), test::someMoment())) << "something was left behind";
}

TEST(OpenFiles, AFolderWithoutAStudioIsRefused)
{
    const QTemporaryDir folder;
    const auto fresh = Database::open(folder.filePath(QStringLiteral("fresh")), OpenMode::CreateIfMissing).value();
    EXPECT_FALSE(readOpenFiles(*fresh, folder.path(), test::someMoment()));
}

}  // namespace chalk::store
