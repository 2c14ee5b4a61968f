#include "ui/people/import_page.h"

#include "core/exchange/catalogue_json.h"
#include "core/store/client_reader.h"
#include "core/store/record_writer.h"
#include "tests/support/accessible_audit.h"
#include "tests/support/fake_clock.h"
#include "tests/support/scripted_dialogs.h"
#include "tests/support/small_studio.h"
#include "ui/common/act_history.h"
#include "ui/common/look.h"

#include <QComboBox>
#include <QFile>
#include <QLabel>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QSettings>
#include <QTemporaryDir>
#include <QTest>

#include <gtest/gtest.h>

#include <algorithm>

namespace chalk::ui::people {

class ImportPageTest : public ::testing::Test {
protected:
    ImportPageTest()
        : m_settings(m_folder.filePath(QStringLiteral("settings.ini")), QSettings::IniFormat),
          m_acts(m_clock, [this](base::ActId act) -> tl::expected<base::ActId, QString> {
              auto undone = store::RecordWriter(m_studio.database(), test::someMoment).undo(act);
              return undone ? tl::expected<base::ActId, QString>(undone->act) : tl::make_unexpected(undone.error().message);
          }),
          m_page({m_look, m_acts, m_dialogs}, {m_studio.database(), m_catalogue, m_clock, m_settings, test::someMoment})
    {
        m_page.resize(1280, 760);
        m_page.show();
    }

    void waitForDesk() { ASSERT_TRUE(QTest::qWaitFor([this] { return !m_page.desk().isBusy(); }, 20000)); }
    void give(const char* name, const QByteArray& text)
    {
        m_page.desk().addBytes(QString::fromLatin1(name), text);
        waitForDesk();
    }
    void press(const char* text)
    {
        for (auto* button : m_page.findChildren<QPushButton*>()) {
            if (button->isVisibleTo(&m_page) && button->text() == QString::fromUtf8(text)) {
                ASSERT_TRUE(button->isEnabled()) << text;
                button->click();
                waitForDesk();
                return;
            }
        }
        FAIL() << "there is no button " << text;
    }
    QComboBox* box(const QString& name)
    {
        for (auto* one : m_page.findChildren<QComboBox*>()) {
            if (one->accessibleName() == name && one->isVisibleTo(&m_page)) {
                return one;
            }
        }
        return nullptr;
    }
    void chooseIn(const QString& name, int index)
    {
        QComboBox* one = box(name);
        ASSERT_NE(one, nullptr) << name.toStdString();
        one->setCurrentIndex(index);
        Q_EMIT one->activated(index);
        waitForDesk();
    }
    bool shows(const QString& text)
    {
        const auto labels = m_page.findChildren<QLabel*>();
        return std::any_of(labels.begin(), labels.end(), [this, &text](const QLabel* label) { return label->isVisibleTo(&m_page) && label->text().contains(text); });
    }
    int clientCount() { return static_cast<int>(store::ClientReader(m_studio.database()).names()->size()); }

    QTemporaryDir m_folder;
    test::StudioOnTest m_studio;
    lifts::Catalogue m_catalogue = exchange::builtInCatalogue();
    tests::FakeClock m_clock;
    tests::ScriptedDialogs m_dialogs;
    QSettings m_settings;
    common::Look m_look;
    common::ActHistory m_acts;
    ImportPage m_page;
};

TEST_F(ImportPageTest, GoesFromAFileToClientsAndBack)
{
    const QString path = m_folder.filePath(QStringLiteral("people.csv"));
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write("Name,Born,Mail\nCy Marsh,25.3.1990,cy@example.org\nBad Day,31.2.1990,x@example.org\n");
    file.close();
    m_dialogs.paths = {path};
    press("Choose a file…");
    EXPECT_TRUE(shows(QStringLiteral("day.month.year")));
    press("Read");
    EXPECT_EQ(m_page.findChild<QPlainTextEdit*>()->toPlainText(), QStringLiteral("line 3, Born (column 2): there is no such day as 31.2.1990"));
    EXPECT_TRUE(shows(QStringLiteral("To be taken in: 1 new client")));
    EXPECT_EQ(clientCount(), 2);
    press("Import the rest");
    EXPECT_EQ(clientCount(), 3);
    EXPECT_TRUE(shows(QStringLiteral("Taken in.")));
    ASSERT_TRUE(m_acts.lastDone());
    m_acts.undo();
    EXPECT_EQ(clientCount(), 2);
    m_acts.redo();
    EXPECT_EQ(clientCount(), 3);
}

TEST_F(ImportPageTest, LetsColumnsPeopleAndExercisesBeDecided)
{
    give("sessions.csv", "Who it was,Date,Movement,Kilos,Reps\nAda Lunds,2026-03-02,Squats with a bar,60,8\n");
    chooseIn(QStringLiteral("What the column Who it was says"), 0);  // its cells look like names
    EXPECT_TRUE(shows(QStringLiteral("No column says who it is")));
    chooseIn(QStringLiteral("What the column Who it was says"), static_cast<int>(tables::Field::Name) + 1);
    chooseIn(QStringLiteral("What the column Kilos says"), static_cast<int>(tables::Field::Load) + 1);
    press("Read");
    EXPECT_TRUE(shows(QStringLiteral("a name much like it")));
    chooseIn(QStringLiteral("Who Ada Lunds is"), static_cast<int>(store::PersonChoice::AddTo));
    QComboBox* exercise = box(QStringLiteral("What Squats with a bar is"));
    ASSERT_NE(exercise, nullptr);
    chooseIn(QStringLiteral("What Squats with a bar is"), exercise->findText(QStringLiteral("Back squat")));
    EXPECT_TRUE(shows(QStringLiteral("1 client known already, 1 session, 1 lift done")));
    press("Import");
    EXPECT_EQ(clientCount(), 2);
    EXPECT_EQ(m_studio.rows(QStringLiteral("SELECT count(*) FROM event e JOIN act a ON a.id = e.act_id WHERE a.kind = 'import' AND e.day = 20514")), QStringList(QStringLiteral("1")));
    // The same headings are known from now on.
    give("again.csv", "Who it was,Date,Movement,Kilos,Reps\nAda Lund,2026-03-03,Back squat,60,8\n");
    EXPECT_TRUE(shows(QStringLiteral("read as last time")));
}

TEST_F(ImportPageTest, NamesEveryColumnThatIsNotTaken)
{
    give("people.csv", "Name,Gewicht (kg),Locker\nCy Marsh,82,12\n");
    EXPECT_TRUE(shows(QStringLiteral("Not taken: Locker.")));
    chooseIn(QStringLiteral("What the column Gewicht (kg) says"), static_cast<int>(tables::Field::Load) + 1);
    EXPECT_TRUE(shows(QStringLiteral("Not taken: Gewicht (kg), Locker."))) << "a load without a session goes nowhere";
    press("Read");
    EXPECT_TRUE(shows(QStringLiteral("Not taken: Gewicht (kg), Locker.")));
}

TEST_F(ImportPageTest, LooksAgainWithAnotherEncoding)
{
    give("people.csv", "Name;Mail\nJ\xF6rg Sand;jo@example.org\n");
    chooseIn(QStringLiteral("Encoding"), 0);
    EXPECT_TRUE(shows(QStringLiteral("no sound UTF-8")));
    chooseIn(QStringLiteral("Separator"), 0);
    EXPECT_EQ(m_page.desk().files().at(0).file.headings.size(), 1U);
}

TEST_F(ImportPageTest, GoesBackStepByStepAndHasNames)
{
    EXPECT_EQ(tests::unnamedFocusables(m_page), QStringList());
    EXPECT_FALSE(m_page.closeOrClear());
    give("people.csv", "Name,Mail\nAda Lundt,x@y.z\nBad\n");
    EXPECT_EQ(tests::unnamedFocusables(m_page), QStringList());
    press("Read");
    EXPECT_GT(tests::focusableCount(m_page), 3);
    EXPECT_EQ(tests::unnamedFocusables(m_page), QStringList());
    EXPECT_TRUE(m_page.closeOrClear());
    EXPECT_EQ(m_page.desk().step(), ImportDesk::Step::Columns);
    EXPECT_TRUE(m_page.closeOrClear());
    EXPECT_EQ(m_page.desk().step(), ImportDesk::Step::Files);
}

}  // namespace chalk::ui::people
