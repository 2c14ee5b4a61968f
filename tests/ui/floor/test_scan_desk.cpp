#include "ui/floor/scan_desk.h"

#include "tests/support/plain_page.h"
#include "tests/ui/floor/floor_fixture.h"
#include "ui/common/look.h"
#include "ui/floor/entry_field.h"
#include "ui/floor/floor_page.h"
#include "ui/shell/ledge.h"
#include "ui/shell/ledge_note.h"
#include "ui/shell/main_window.h"
#include "ui/shell/scanner_listener.h"

#include <QApplication>
#include <QDialog>
#include <QMenu>
#include <QSettings>
#include <QTest>

namespace chalk::ui::floor {

/// The window with its floor and a scanner, opened on its first page.
class ScanDeskTest : public test::FloorTest {
protected:
    ScanDeskTest() : FloorTest(withCalledOff())
    {
        m_window.goTo({.page = QStringLiteral("roster")});
        m_window.show();
        m_window.activateWindow();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&m_window, 5000));
        QObject::connect(&m_scanner, &shell::ScannerListener::codeScanned, &m_window, [this](const QString& code) { m_desk.take(code); });
    }
    ~ScanDeskTest() override { common::applyTheme(*qApp, common::Look().theme()); }  // the window dresses the whole program

    static exchange::StudioDocument withCalledOff()
    {
        exchange::StudioDocument document = test::floorStudio();
        sessions::Session off = document.clients[1].sessions.front();
        off.date = off.date + 1;
        off.state = sessions::SessionState::CancelledInTime;
        off.code = "B2";
        document.clients[1].sessions.push_back(off);
        return document;
    }
    shell::PageRegistry pages()
    {
        shell::PageRegistry pages;
        for (const char* key : {"roster", "client"}) {
            const QString name = QLatin1String(key);
            pages.add({name, name, name, shell::RailSlot::None, {}, [name](QWidget* parent) -> shell::Page* { return new tests::PlainPage(name, parent); }});
        }
        pages.add({QStringLiteral("floor"), QStringLiteral("Floor"), QStringLiteral("floor"), shell::RailSlot::Top, Qt::CTRL | Qt::Key_3,
                   [this](QWidget* parent) -> shell::Page* { return new FloorPage({m_look, m_clock, m_acts, m_presenter}, parent); }});
        return pages;
    }
    /// As a scanner types, into the window that the keys go to.
    void scan(const QString& code, const QWidget* into = nullptr)
    {
        const QWidget* target = into == nullptr ? QApplication::activeWindow() : into;
        for (const QChar& character : QString(QStringLiteral("CR1 ") + code)) {
            QTest::keyClick(target->windowHandle(), character.toLatin1(), character.isUpper() ? Qt::ShiftModifier : Qt::NoModifier);
        }
        QTest::keyClick(target->windowHandle(), Qt::Key_Return);
        QCoreApplication::processEvents();
    }
    tests::PlainPage& plainPage() { return *static_cast<tests::PlainPage*>(m_window.presentPage()); }
    FloorPage* floor() { return qobject_cast<FloorPage*>(m_window.presentPage()); }
    QString says() { return m_window.ledge()->note()->words(); }

    QTemporaryDir m_folder;
    QSettings m_settings{m_folder.filePath(QStringLiteral("settings.ini")), QSettings::IniFormat};
    common::Look m_look;
    shell::MainWindow m_window{{m_look, m_acts, m_clock, m_settings, QStringLiteral("Studio"), [] { return std::vector<shell::LedgeSession>(); }}, pages()};
    ScanDesk m_desk{{m_studio.database(), [this](const shell::Place& place) { m_window.goTo(place); },
                     [this](const QString& why) { m_window.ledge()->note()->sayTrouble(why); }}};
    shell::ScannerListener m_scanner{[](const QKeyEvent&) { return qint64(0); }, nullptr};
};

TEST_F(ScanDeskTest, OpensTheSessionFromTheRoster)
{
    tests::PlainPage& roster = plainPage();
    roster.field()->setText(QStringLiteral("fer"));
    scan(QStringLiteral("B1"));
    ASSERT_NE(floor(), nullptr);
    EXPECT_EQ(floor()->desk().client()->session.code, "B1");
    EXPECT_EQ(roster.field()->text(), QStringLiteral("fer"));
    EXPECT_TRUE(says().isEmpty());
}

TEST_F(ScanDeskTest, OpensTheSessionFromAClientsPageReadyForTheResults)
{
    m_window.goTo({.page = QStringLiteral("client"), .client = test::clientNamed(m_studio.database(), "Bo Arden")});
    scan(QStringLiteral("S3"));
    ASSERT_NE(floor(), nullptr);
    EXPECT_EQ(floor()->desk().client()->session.code, "S3");
    EXPECT_TRUE(floor()->desk().isToday());
    EXPECT_EQ(QApplication::focusWidget(), floor()->findChild<EntryField*>());
}

TEST_F(ScanDeskTest, OpensTheFloorOfAnotherDayAndKeepsWhatIsTyped)
{
    m_window.goTo({.page = QStringLiteral("floor")});
    auto* field = floor()->findChild<EntryField*>();
    QTest::keyClicks(field, QStringLiteral("8 8"));
    scan(QStringLiteral("S1"));
    EXPECT_EQ(floor()->desk().day(), test::smallStudioDay() - 21);
    EXPECT_EQ(floor()->desk().client()->session.code, "S1");
    scan(QStringLiteral("S3"));
    EXPECT_TRUE(floor()->desk().isToday());
    EXPECT_EQ(field->text(), QStringLiteral("8 8"));
}

TEST_F(ScanDeskTest, AnUnknownCodeIsSaidAndLosesNothing)
{
    plainPage().field()->setText(QStringLiteral("fer"));
    scan(QStringLiteral("NOPE"));
    EXPECT_EQ(floor(), nullptr);
    EXPECT_EQ(says().toStdString(), std::string("No session has the code NOPE."));
    EXPECT_EQ(plainPage().field()->text(), QStringLiteral("fer"));
    scan(QStringLiteral("B1"));
    EXPECT_NE(floor(), nullptr);
    EXPECT_TRUE(says().isEmpty()) << "the trouble is over";
}

TEST_F(ScanDeskTest, WhoCalledOffIsSaid)
{
    scan(QStringLiteral("B2"));
    EXPECT_EQ(floor(), nullptr);
    EXPECT_TRUE(says().endsWith(QStringLiteral("called off on Wed 25 Nov."))) << says().toStdString();
}

TEST_F(ScanDeskTest, ADialogIsClosedFirst)
{
    QDialog dialog(&m_window);
    dialog.setModal(true);
    QLineEdit field(&dialog);
    dialog.show();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&dialog, 5000));
    field.setFocus();
    scan(QStringLiteral("B1"), &dialog);
    EXPECT_EQ(floor(), nullptr);
    EXPECT_TRUE(dialog.isVisible());
    EXPECT_TRUE(field.text().isEmpty());
    EXPECT_EQ(says().toStdString(), std::string("Close the dialog first, then scan the card again."));
}

TEST_F(ScanDeskTest, AMenuIsClosed)
{
    QMenu menu(&m_window);
    menu.addAction(QStringLiteral("Call off"));
    menu.popup(m_window.mapToGlobal(QPoint(200, 200)));
    ASSERT_TRUE(QTest::qWaitForWindowExposed(&menu, 5000));
    scan(QStringLiteral("B1"));
    EXPECT_NE(floor(), nullptr);
    EXPECT_FALSE(menu.isVisible());
}

TEST_F(ScanDeskTest, TheLockForCapitalsDoesNoHarm)
{
    m_desk.take(QStringLiteral("b1"));
    EXPECT_NE(floor(), nullptr);
}

}  // namespace chalk::ui::floor
