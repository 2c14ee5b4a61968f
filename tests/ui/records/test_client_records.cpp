#include "ui/records/client_records.h"

#include "core/exchange/catalogue_json.h"
#include "tests/support/accessible_audit.h"
#include "tests/support/fake_clock.h"
#include "tests/support/scripted_dialogs.h"
#include "tests/support/small_studio.h"
#include "ui/common/look.h"
#include "ui/records/erase_dialog.h"

#include <QApplication>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>
#include <QTimer>

#include <gtest/gtest.h>

namespace chalk::ui::records {

class ClientRecordsTest : public ::testing::Test {
protected:
    /// Types into the dialog that is about to open, and leaves it by a click or by Esc.
    void answerDialog(const QString& name)
    {
        QTimer::singleShot(0, &m_records, [this, name] {
            auto* dialog = qobject_cast<EraseDialog*>(QApplication::activeModalWidget());
            ASSERT_NE(dialog, nullptr);
            m_unnamed = tests::unnamedFocusables(*dialog);
            QTest::keyClicks(dialog->findChild<QLineEdit*>(), name);
            for (QPushButton* button : dialog->findChildren<QPushButton*>()) {
                if (button->isEnabled() && button->text().contains(QLatin1String("Erase"))) {
                    return button->click();
                }
            }
            dialog->reject();
        });
    }

    test::StudioOnTest m_studio;
    lifts::Catalogue m_catalogue = exchange::builtInCatalogue();
    common::Look m_look;
    tests::FakeClock m_clock;
    tests::ScriptedDialogs m_dialogs;
    ClientRecords m_records{{m_studio.database(), m_catalogue, m_look, m_clock, m_dialogs}};
    base::ClientId m_ada = test::clientNamed(m_studio.database(), "Ada Lund");
    QStringList m_unnamed;
};

TEST_F(ClientRecordsTest, ErasesWhereTheWholeNameIsTyped)
{
    QSignalSpy erased(&m_records, &ClientRecords::erased);
    answerDialog(QStringLiteral("Ada Lund"));
    m_records.erase(m_ada, nullptr);
    EXPECT_EQ(erased.count(), 1);
    EXPECT_EQ(m_studio.rows(QStringLiteral("SELECT name FROM client")).size(), 1);
    EXPECT_TRUE(m_dialogs.asked.empty());
    EXPECT_TRUE(m_unnamed.isEmpty()) << m_unnamed.join(QLatin1Char('\n')).toStdString();
}

TEST_F(ClientRecordsTest, KeepsTheClientWhereTheNameIsAnother)
{
    QSignalSpy erased(&m_records, &ClientRecords::erased);
    answerDialog(QStringLiteral("Ada"));
    m_records.erase(m_ada, nullptr);
    EXPECT_EQ(erased.count(), 0);
    EXPECT_EQ(m_studio.rows(QStringLiteral("SELECT name FROM client")).size(), 2);
}

TEST_F(ClientRecordsTest, MakesADossierInAFolderOfItsOwn)
{
    const QTemporaryDir folder;
    m_dialogs.paths.push_back(folder.path());
    QSignalSpy done(&m_records, &ClientRecords::done);
    m_records.makeDossier(m_ada, nullptr);
    ASSERT_EQ(done.count(), 1) << (m_dialogs.asked.empty() ? std::string() : m_dialogs.asked.front().text.toStdString());
    EXPECT_TRUE(QFile::exists(folder.filePath(QStringLiteral("dossier-ada-lund/dossier.pdf"))));
}

TEST_F(ClientRecordsTest, ACalledOffDossierWritesNothing)
{
    QSignalSpy done(&m_records, &ClientRecords::done);
    m_records.makeDossier(m_ada, nullptr);
    EXPECT_EQ(done.count(), 0);
    EXPECT_TRUE(m_studio.rows(QStringLiteral("SELECT 1 FROM audit")).isEmpty());
}

}  // namespace chalk::ui::records
