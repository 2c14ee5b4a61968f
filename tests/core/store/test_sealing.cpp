#include "core/store/sealing.h"

#include "core/exchange/catalogue_json.h"
#include "core/exchange/screen_json.h"
#include "core/simulation/harbour_studio.h"
#include "core/store/backup.h"
#include "core/store/client_forms.h"
#include "core/store/client_writer.h"
#include "core/store/decision_reader.h"
#include "core/store/decision_writer.h"
#include "core/store/key_ring.h"
#include "core/store/record_writer.h"
#include "core/store/roster_reader.h"
#include "core/store/sealed_copy.h"
#include "core/store/sealed_tables.h"
#include "core/store/session_reader.h"
#include "core/store/studio_check.h"
#include "core/store/studio_export.h"
#include "tests/support/kept_client.h"
#include "tests/support/lift_on_test.h"
#include "tests/support/small_studio.h"

#include <QFile>
#include <QSqlQuery>

#include <gtest/gtest.h>

namespace chalk::store {

namespace {

const char* const kSecretWord = "Nachtigall";

exchange::StudioDocument keptStudio()
{
    exchange::StudioDocument document = test::smallStudio();
    test::addKept(document);
    return document;
}

exchange::StudioDocument harbourOnTest()
{
    const lifts::Catalogue catalogue = exchange::builtInCatalogue();
    return simulation::harbourStudio(catalogue, exchange::builtInScreenCatalogue(catalogue));
}

}  // namespace

/// A studio in a file; the cheapest passphrases.
class FileOnlySealing : public ::testing::Test {
protected:
    explicit FileOnlySealing(const exchange::StudioDocument& document = keptStudio()) : m_studio(document) {}

    Sealing sealing() { return Sealing(m_studio.database(), seal::KeyCost::least()); }
    Result<std::unique_ptr<Database>> openWith(const char* passphrase, OpenMode mode = OpenMode::MustExist) const
    {
        Access access(m_studio.file());
        access.keys = std::make_shared<KeyRing>(seal::Passphrase(QString::fromUtf8(passphrase)));
        return Database::open(access, mode);
    }
    exchange::StudioDocument document(Database& database) { return exportStudio(database, test::smallStudioDay()).value(); }
    exchange::StudioDocument document() { return document(m_studio.database()); }
    /// The studio's file and the log beside it.
    QByteArray fileBytes() const
    {
        QByteArray bytes;
        for (const char* ending : {"", "-wal"}) {
            QFile file(m_studio.file() + QLatin1String(ending));
            bytes += file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
        }
        return bytes;
    }
    /// What stands in the sealed columns now, as far as it is long enough not to be there by chance.
    QStringList keptTexts()
    {
        QStringList texts;
        for (const SealedTable& table : sealedTables()) {
            for (const QString& column : table.texts) {
                for (const QString& text : m_studio.rows(QStringLiteral("SELECT %1 FROM %2 WHERE length(%1) > 11").arg(column, table.name))) {
                    texts.append(text);
                }
            }
        }
        return texts;
    }
    std::string faultAfter(const QString& sql)
    {
        QSqlQuery query(m_studio.database().connection());
        EXPECT_TRUE(query.exec(sql)) << sql.toStdString();
        const auto read = exportStudio(m_studio.database(), test::smallStudioDay());
        EXPECT_FALSE(read) << "it was not found: " << sql.toStdString();
        EXPECT_TRUE(read || read.error().kind == StoreError::Kind::Damaged);
        return read ? std::string() : read.error().message.toStdString();
    }

    const seal::Passphrase m_passphrase{QStringLiteral("three quiet mornings")};
    test::StudioOnTest m_studio;
};

/// The demo studio, which has everything.
class FileOnlySealingOfTheDemo : public FileOnlySealing {
protected:
    FileOnlySealingOfTheDemo() : FileOnlySealing(harbourOnTest()) {}
};

TEST_F(FileOnlySealingOfTheDemo, NoTextStaysInTheFileAndAllIsReadAsBefore)
{
    const QStringList texts = keptTexts();
    ASSERT_GT(texts.size(), 100);
    const auto before = document();
    const QByteArray plain = fileBytes();
    EXPECT_TRUE(plain.contains(texts.first().toUtf8()));
    ASSERT_TRUE(sealing().set(m_passphrase));
    const QByteArray sealed = fileBytes();
    for (const QString& text : texts) {
        ASSERT_FALSE(sealed.contains(text.toUtf8())) << text.toStdString();
    }
    EXPECT_EQ(document(), before);
    const auto check = checkStudio(m_studio.database());
    ASSERT_TRUE(check) << check.error().message.toStdString();
    EXPECT_TRUE(check->isSound()) << check->faults.front().message.toStdString();
    EXPECT_TRUE(RosterReader(m_studio.database()).read(test::smallStudioDay()));
    EXPECT_EQ(document(**openWith("three quiet mornings")), before);
}

TEST_F(FileOnlySealingOfTheDemo, WhatIsTakenAwayLeavesTheRowsAsTheyWere)
{
    const QStringList before = keptTexts();
    ASSERT_TRUE(sealing().set(m_passphrase));
    EXPECT_NE(keptTexts(), before);
    ASSERT_TRUE(sealing().remove(m_passphrase));
    EXPECT_EQ(keptTexts(), before);
    EXPECT_TRUE(m_studio.rows(QStringLiteral("SELECT * FROM sealing UNION ALL SELECT place, version FROM sealed_version")).isEmpty());
    EXPECT_TRUE(Database::open(m_studio.file(), OpenMode::MustExist));
}

TEST_F(FileOnlySealing, AStudioThatIsSealedBeforeAnythingIsInItKeepsNothingInTheClear)
{
    const auto wanted = document();
    const QStringList texts = keptTexts();
    ASSERT_GT(texts.size(), 5);
    test::StudioOnTest other{[] {
        exchange::StudioDocument empty = test::smallStudio();
        empty.clients.clear();
        return empty;
    }()};
    ASSERT_TRUE(Sealing(other.database(), seal::KeyCost::least()).set(m_passphrase));
    auto people = keptStudio();
    const base::ClientId none;
    ClientWriter writer(other.database());
    clients::Client client = people.clients.front().client;
    client.goal = kSecretWord;
    const auto added = writer.add(client, test::smallStudioDay());
    ASSERT_TRUE(added) << added.error().message.toStdString();
    ASSERT_NE(*added, none);
    clients::Profile profile;
    profile.consentOn = test::smallStudioDay();
    ASSERT_TRUE(writer.saveProfile(*added, profile, test::smallStudioDay()));
    ASSERT_TRUE(writer.saveCaution(*added, {{}, kSecretWord, kSecretWord, kSecretWord, {}, {}}, test::smallStudioDay()));
    Letter letter;
    letter.writtenBy = kSecretWord;
    letter.day = test::smallStudioDay();
    letter.limits = kSecretWord;
    letter.fileName = kSecretWord;
    letter.file = kSecretWord;
    ASSERT_TRUE(writer.recordLetter(*added, letter, test::smallStudioDay()));
    const auto letters = ClientForms(other.database()).latestLetter(*added);
    ASSERT_TRUE(letters && *letters);
    EXPECT_EQ((*letters)->writtenBy, kSecretWord);
    EXPECT_EQ((*letters)->file, QByteArray(kSecretWord));
    QByteArray bytes;
    for (const char* ending : {"", "-wal"}) {
        QFile file(other.file() + QLatin1String(ending));
        bytes += file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
    }
    EXPECT_FALSE(bytes.contains(kSecretWord));
}

TEST_F(FileOnlySealing, WhatIsWrittenLaterIsSealedAndCanBeTakenBack)
{
    ASSERT_TRUE(sealing().set(m_passphrase));
    Database& database = m_studio.database();
    const base::ClientId ada = test::clientNamed(database, "Ada Lund");
    const base::LiftId squat = test::liftOf(database, ada, lifts::Pattern::Squat);
    RecordWriter records(database, test::someMoment, base::CoachId(1));
    const auto session = SessionReader(database).on(test::smallStudioDay()).value().front().session.id;
    sessions::SessionReport report;
    report.note = kSecretWord;
    const auto told = records.saveReport(session, report);
    ASSERT_TRUE(told) << told.error().message.toStdString();
    EXPECT_EQ(SessionReader(database).report(session)->note, kSecretWord);
    const auto back = records.undo(told->act);
    ASSERT_TRUE(back) << back.error().message.toStdString();
    EXPECT_NE(SessionReader(database).report(session)->note, kSecretWord);
    ASSERT_TRUE(records.undo(back->act));
    EXPECT_EQ(SessionReader(database).report(session)->note, kSecretWord);
    ASSERT_TRUE(records.record(ada, {}, {{squat, {test::smallStudioDay(), progression::Release{kSecretWord}}}}));

    const checkin::Decision decision{{}, ada, squat, test::smallStudioDay(), checkin::FindingKind::Plateau, checkin::ChoiceKind::LighterWeek, kSecretWord,
                                     test::smallStudioDay() + 7};
    const auto decided = DecisionWriter(database, test::someMoment, base::CoachId(1)).decide(decision, progression::LighterWeek{kSecretWord});
    ASSERT_TRUE(decided) << decided.error().message.toStdString();
    const auto undone = records.undo(decided->act);
    ASSERT_TRUE(undone);
    ASSERT_TRUE(records.undo(undone->act));
    EXPECT_EQ(DecisionReader(database).history(ada)->back().note, kSecretWord);
    EXPECT_FALSE(fileBytes().contains(kSecretWord));
    EXPECT_TRUE(document() == document(**openWith("three quiet mornings")));
}

TEST_F(FileOnlySealing, WithoutThePassphraseItDoesNotOpen)
{
    ASSERT_TRUE(sealing().set(m_passphrase));
    m_studio.close();
    for (const char* passphrase : {"", "three quiet morning", "THREE QUIET MORNINGS"}) {
        const auto opened = openWith(passphrase);
        ASSERT_FALSE(opened) << passphrase;
        EXPECT_EQ(opened.error().kind, StoreError::Kind::Locked);
        EXPECT_TRUE(opened.error().message.contains(m_studio.file()));
    }
    EXPECT_TRUE(openWith("three quiet mornings", OpenMode::ReadOnly));
}

TEST_F(FileOnlySealing, AnotherPassphraseOpensTheSameTexts)
{
    const auto before = document();
    ASSERT_TRUE(sealing().set(m_passphrase));
    const QStringList texts = keptTexts();
    EXPECT_EQ(sealing().change(seal::Passphrase(QStringLiteral("not this one")), m_passphrase).error().kind, StoreError::Kind::Locked);
    ASSERT_TRUE(sealing().change(m_passphrase, seal::Passphrase(QStringLiteral("four loud evenings"))));
    EXPECT_EQ(keptTexts(), texts) << "only the key is wrapped anew";
    EXPECT_FALSE(openWith("three quiet mornings"));
    EXPECT_EQ(document(**openWith("four loud evenings")), before);
}

TEST_F(FileOnlySealing, WhatMakesNoSenseIsRefusedAndChangesNothing)
{
    const QStringList before = keptTexts();
    EXPECT_EQ(sealing().remove(m_passphrase).error().kind, StoreError::Kind::Refused);
    EXPECT_EQ(sealing().set(m_passphrase, [](int, int) { return false; }).error().kind, StoreError::Kind::Cancelled);
    EXPECT_EQ(keptTexts(), before);
    EXPECT_EQ(document().clients.size(), 2U);
    ASSERT_TRUE(sealing().set(m_passphrase));
    EXPECT_EQ(sealing().set(m_passphrase).error().kind, StoreError::Kind::Refused);
    EXPECT_EQ(sealing().remove(seal::Passphrase(QStringLiteral("not this one"))).error().kind, StoreError::Kind::Locked);
    EXPECT_FALSE(isLongEnough(QStringLiteral("seven77")));
    EXPECT_TRUE(isLongEnough(QStringLiteral("eight888")));
}

TEST_F(FileOnlySealing, TheLogIsGuardedAgainAfterwards)
{
    const QStringList guards = m_studio.rows(QStringLiteral("SELECT name, sql FROM sqlite_master WHERE type = 'trigger' ORDER BY name"));
    ASSERT_TRUE(sealing().set(m_passphrase));
    EXPECT_EQ(m_studio.rows(QStringLiteral("SELECT name, sql FROM sqlite_master WHERE type = 'trigger' ORDER BY name")), guards);
    ASSERT_TRUE(sealing().remove(m_passphrase));
    EXPECT_EQ(m_studio.rows(QStringLiteral("SELECT name, sql FROM sqlite_master WHERE type = 'trigger' ORDER BY name")), guards);
}

TEST_F(FileOnlySealing, ATextThatWasAlteredIsFoundAndNamed)
{
    ASSERT_TRUE(sealing().set(m_passphrase));
    const std::string fault = faultAfter(QStringLiteral("UPDATE letter SET limits = substr(limits, 1, length(limits) - 6) || 'AAAAA='"));
    EXPECT_NE(fault.find("limits of letter 1"), std::string::npos) << fault;
}

TEST_F(FileOnlySealing, ATextFromAnotherRowIsFound)
{
    ASSERT_TRUE(sealing().set(m_passphrase));
    ASSERT_GT(m_studio.rows(QStringLiteral("SELECT id FROM letter")).size(), 1);
    faultAfter(QStringLiteral("UPDATE letter SET written_by = (SELECT written_by FROM letter ORDER BY id DESC LIMIT 1) WHERE id = (SELECT min(id) FROM letter)"));
}

TEST_F(FileOnlySealing, ATextFromAnotherColumnIsFound)
{
    ASSERT_TRUE(sealing().set(m_passphrase));
    faultAfter(QStringLiteral("UPDATE letter SET limits = written_by"));
}

TEST_F(FileOnlySealing, ATextThatWasNotSealedIsFound)
{
    ASSERT_TRUE(sealing().set(m_passphrase));
    faultAfter(QStringLiteral("UPDATE client SET goal = 'win'"));
}

TEST_F(FileOnlySealing, AnOlderTextOfTheSameRowIsFound)
{
    ASSERT_TRUE(sealing().set(m_passphrase));
    const base::ClientId ada = test::clientNamed(m_studio.database(), "Ada Lund");
    const auto setGoal = [this](const char* goal) {
        clients::Client client = document().clients.front().client;
        client.id = test::clientNamed(m_studio.database(), "Ada Lund");
        client.coach = base::CoachId(1);
        client.goal = goal;
        const auto changed = ClientWriter(m_studio.database()).change(client, test::smallStudioDay());
        EXPECT_TRUE(changed) << (changed ? std::string() : changed.error().message.toStdString());
    };
    setGoal("a marathon");
    const QString older = m_studio.rows(QStringLiteral("SELECT goal FROM client WHERE id = %1").arg(ada.value())).first();
    setGoal("a walk");
    EXPECT_EQ(document().clients.front().client.goal, "a walk");
    faultAfter(QStringLiteral("UPDATE client SET goal = '%1' WHERE id = %2").arg(older).arg(ada.value()));
}

TEST_F(FileOnlySealing, ATextThatStaysSealedWhereTheKeyIsGoneIsFound)
{
    ASSERT_TRUE(sealing().set(m_passphrase));
    faultAfter(QStringLiteral("DELETE FROM sealing"));
}

TEST_F(FileOnlySealing, LockedKeysOpenNothingUntilTheyAreUnlocked)
{
    ASSERT_TRUE(sealing().set(m_passphrase));
    const auto before = document();
    const Access access = m_studio.database().access();
    access.keys->lock();
    const auto locked = exportStudio(m_studio.database(), test::smallStudioDay());
    ASSERT_FALSE(locked);
    EXPECT_EQ(locked.error().kind, StoreError::Kind::Locked);
    const base::ClientId ada = test::clientNamed(m_studio.database(), "Ada Lund");
    EXPECT_FALSE(ClientWriter(m_studio.database()).saveCaution(ada, {{}, "knee", "sore", "sore", {}, {}}, test::smallStudioDay()));
    EXPECT_TRUE(Database::open(access, OpenMode::MustExist)) << "a backup is still made";
    EXPECT_EQ(unlock(access, seal::Passphrase(QStringLiteral("not this one"))).error().kind, StoreError::Kind::Locked);
    EXPECT_TRUE(access.keys->isLocked());
    ASSERT_TRUE(unlock(access, m_passphrase));
    EXPECT_EQ(document(), before);
}

TEST_F(FileOnlySealing, ABackupIsSealedWholeEvenWhileTheKeysAreLocked)
{
    ASSERT_TRUE(sealing().set(m_passphrase));
    const auto before = document();
    const Access access = m_studio.database().access();
    access.keys->lock();
    const QString backup = m_studio.folder() + QStringLiteral("/backup.chalkrung");
    const auto made = copyStudio(m_studio.database(), backup);
    ASSERT_TRUE(made) << made.error().message.toStdString();
    QFile file(backup);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_FALSE(file.readAll().contains("Ada Lund")) << "names are sealed in a backup";
    EXPECT_EQ(contentsOf(backup).error().kind, StoreError::Kind::Locked);
    EXPECT_EQ(OpenedCopy::of(backup, KeyRing(), seal::Passphrase(QStringLiteral("not this one"))).error().kind, StoreError::Kind::Locked);
    m_studio.close();
    const auto opened = OpenedCopy::of(backup, KeyRing(), m_passphrase);
    ASSERT_TRUE(opened) << opened.error().message.toStdString();
    EXPECT_EQ(contentsOf(opened->path())->clients, 2);
    ASSERT_TRUE(restoreStudio(opened->path(), m_studio.file(), m_studio.folder() + QStringLiteral("/kept.chalkrung")));
    EXPECT_FALSE(openWith(""));
    EXPECT_EQ(document(**openWith("three quiet mornings")), before);
}

TEST_F(FileOnlySealing, AConnectionThatWasOpenBeforeSealsAndOpensToo)
{
    const auto other = Database::open(m_studio.database().access(), OpenMode::MustExist);
    ASSERT_TRUE(other);
    const auto before = document(**other);
    ASSERT_TRUE(sealing().set(m_passphrase));
    EXPECT_EQ(document(**other), before);
    const base::ClientId ada = test::clientNamed(**other, "Ada Lund");
    ASSERT_TRUE(ClientWriter(**other).saveCaution(ada, {{}, kSecretWord, "", "", {}, {}}, test::smallStudioDay()));
    EXPECT_FALSE(fileBytes().contains(kSecretWord));
}

}  // namespace chalk::store
