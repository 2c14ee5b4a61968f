#include "ui/records/dossier.h"

#include "core/exchange/catalogue_json.h"
#include "tests/support/kept_client.h"
#include "tests/support/small_studio.h"
#include "ui/records/dossier_content.h"

#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace chalk::ui::records {

namespace {

exchange::StudioDocument keptByOnboarding()
{
    exchange::StudioDocument document = test::smallStudio();
    test::addKept(document);
    return document;
}

QString allWordsOf(const DossierContent& content)
{
    QString words;
    for (const DossierPart& part : content.parts) {
        for (const auto& [name, text] : part.entries) {
            words += name + QLatin1Char(' ') + text + QLatin1Char('\n');
        }
    }
    return words;
}

}  // namespace

class DossierTest : public ::testing::Test {
protected:
    test::StudioOnTest m_studio{keptByOnboarding()};
    lifts::Catalogue m_catalogue = exchange::builtInCatalogue();
    base::ClientId m_ada = test::clientNamed(m_studio.database(), "Ada Lund");
};

TEST_F(DossierTest, TellsOfEverythingInWords)
{
    const auto content = readDossierContent(m_studio.database(), m_catalogue, m_ada, test::smallStudioDay());
    ASSERT_TRUE(content) << content.error().message.toStdString();
    const QString words = allWordsOf(*content);
    for (const char* word : {"Ada Lund", "Carry the boat", "Ines", "Lower back", "Squat", "Back squat", "missed", "Rack 1"}) {
        EXPECT_TRUE(words.contains(QLatin1String(word), Qt::CaseInsensitive)) << word;
    }
    EXPECT_FALSE(words.contains(QLatin1String("Bo Arden")));
    EXPECT_TRUE(words.contains(QLatin1String("points a: met"))) << "a point of the screen begins with its name";
    EXPECT_FALSE(words.contains(QLatin1String("; mark ")) || words.contains(QLatin1String("points key"))) << words.toStdString();
}

TEST_F(DossierTest, WhatIsStoppedLeavesAnOlderOneAsItWas)
{
    const QTemporaryDir folder;
    const auto make = [&](base::Date day, int most) {
        return writeDossier(m_studio.database(), m_catalogue, m_ada, day, folder.path(), [most](int done, int) { return done < most; });
    };
    const auto history = [&] {
        QFile file(folder.filePath(QStringLiteral("history.json")));
        return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
    };
    const auto notes = [this] { return m_studio.rows(QStringLiteral("SELECT id FROM audit WHERE what = 'dossier_made'")).size(); };
    ASSERT_FALSE(make(test::smallStudioDay(), 1));
    EXPECT_EQ(notes(), 0) << "none was made";
    ASSERT_TRUE(make(test::smallStudioDay(), 99));
    const QByteArray before = history();
    EXPECT_TRUE(before.contains("dossier_made")) << "it tells of itself too";
    EXPECT_EQ(notes(), 1);
    for (int most = 1; most <= 3; ++most) {
        const auto stopped = make(test::smallStudioDay(), most);
        ASSERT_FALSE(stopped) << most;
        EXPECT_EQ(stopped.error().kind, store::StoreError::Kind::Cancelled);
        EXPECT_EQ(history(), before);
        EXPECT_EQ(notes(), 1) << most;
    }
    ASSERT_TRUE(make(test::smallStudioDay(), 99));
    EXPECT_NE(history(), before) << "the test tells nothing: both histories are the same";
}

TEST_F(DossierTest, FilesAreTheClientsAloneAndTheirOwners)
{
    const QTemporaryDir folder;
    const auto files = writeDossier(m_studio.database(), m_catalogue, m_ada, test::smallStudioDay(), folder.filePath(QStringLiteral("out")));
    ASSERT_TRUE(files) << files.error().message.toStdString();
    for (const char* wanted : {"studio.json", "clients/01-ada-lund.json", "history.json", "history.csv", "dossier.pdf"}) {
        EXPECT_TRUE(files->contains(QLatin1String(wanted))) << wanted;
    }
    EXPECT_GE(files->filter(QStringLiteral("letters/")).size(), 1) << "copies of letters";
    for (const QString& name : *files) {
        QFile file(folder.filePath(QStringLiteral("out/")) + name);
        ASSERT_TRUE(file.open(QIODevice::ReadOnly)) << name.toStdString();
        EXPECT_FALSE(file.readAll().contains("Bo Arden")) << name.toStdString();
        EXPECT_EQ(file.permissions() & (QFile::ReadGroup | QFile::ReadOther), QFile::Permissions()) << name.toStdString();
    }
}

TEST_F(DossierTest, NobodyHasNoDossier)
{
    const QTemporaryDir folder;
    EXPECT_FALSE(writeDossier(m_studio.database(), m_catalogue, base::ClientId(99), test::smallStudioDay(), folder.path()));
}

TEST(Dossier, ItsNameGoesNowhereElse)
{
    EXPECT_EQ(dossierName(QStringLiteral("../Ada Lund")), QStringLiteral("dossier----ada-lund"));
}

}  // namespace chalk::ui::records
