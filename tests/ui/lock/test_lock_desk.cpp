#include "ui/lock/lock_desk.h"

#include "core/store/client_reader.h"
#include "core/store/key_ring.h"
#include "core/store/sealing.h"
#include "tests/support/accessible_audit.h"
#include "tests/support/small_studio.h"
#include "ui/common/look.h"
#include "ui/lock/lock_window.h"
#include "ui/lock/passphrase_field.h"

#include <QApplication>
#include <QDialog>
#include <QLabel>
#include <QLineEdit>
#include <QSettings>
#include <QSignalSpy>
#include <QTest>
#include <QWindow>

#include <gtest/gtest.h>

namespace chalk::ui::lock {

/// A sealed studio, and a window in which somebody has typed something.
class LockDeskTest : public ::testing::Test {
protected:
    LockDeskTest()
    {
        EXPECT_TRUE(store::Sealing(m_studio.database(), seal::KeyCost::least()).set(seal::Passphrase(m_passphrase)));
        m_desk.refresh();
        m_page.setText(QStringLiteral("Ada Lund, half a sent"));
        m_page.show();
    }
    store::Result<store::ClientFile> readAda()
    {
        return store::ClientReader(m_studio.database()).read(test::clientNamed(m_studio.database(), "Ada Lund"), test::smallStudioDay());
    }
    void answer(const QString& text)
    {
        QLineEdit* field = m_desk.window()->field()->field();
        QTest::keyClicks(field, text);
        QTest::keyClick(field, Qt::Key_Return);
    }

    const QString m_passphrase = QStringLiteral("three quiet mornings");
    test::StudioOnTest m_studio;
    common::Look m_look;
    QSettings m_settings{m_studio.folder() + QStringLiteral("/settings.ini"), QSettings::IniFormat};
    LockDesk m_desk{m_look, m_studio.database(), m_settings};
    QLineEdit m_page;
};

TEST_F(LockDeskTest, LockedNothingOfTheStudioIsOnShowNorCanBeRead)
{
    ASSERT_TRUE(readAda());
    m_desk.lock();
    ASSERT_TRUE(m_desk.isLocked());
    EXPECT_FALSE(m_page.isVisible());
    for (QWidget* window : QApplication::topLevelWidgets()) {
        EXPECT_TRUE(window == m_desk.window() || !window->isVisible()) << window->metaObject()->className();
    }
    for (const QLabel* label : m_desk.window()->findChildren<QLabel*>()) {
        EXPECT_FALSE(label->text().contains(QStringLiteral("Ada"))) << label->text().toStdString();
    }
    const auto read = readAda();
    ASSERT_FALSE(read);
    EXPECT_EQ(read.error().kind, store::StoreError::Kind::Locked);
}

TEST_F(LockDeskTest, CtrlLLocksFromWithinADialogToo)
{
    QDialog dialog;
    QLineEdit field(&dialog);
    dialog.setModal(true);
    dialog.show();
    ASSERT_EQ(QApplication::activeModalWidget(), &dialog);
    QTest::keyClick(&field, Qt::Key_L);
    QCoreApplication::processEvents();
    EXPECT_FALSE(m_desk.isLocked());
    QTest::keyClick(&field, Qt::Key_L, Qt::ControlModifier);
    EXPECT_TRUE(QTest::qWaitFor([this] { return m_desk.isLocked(); }));
    EXPECT_FALSE(dialog.isVisible());
}

TEST_F(LockDeskTest, ThePassphraseBringsEverythingBackAsItWas)
{
    m_desk.lock();
    const QSignalSpy unlocked(&m_desk, &LockDesk::unlocked);
    answer(m_passphrase);
    ASSERT_TRUE(QTest::qWaitFor([&] { return unlocked.count() == 1; }));
    EXPECT_FALSE(m_desk.isLocked());
    EXPECT_TRUE(m_page.isVisible());
    EXPECT_EQ(m_page.text(), QStringLiteral("Ada Lund, half a sent"));
    EXPECT_TRUE(readAda());
}

TEST_F(LockDeskTest, AnotherPassphraseLeavesItLockedAndSaysSo)
{
    m_desk.lock();
    answer(QStringLiteral("three loud mornings"));
    ASSERT_TRUE(QTest::qWaitFor([this] { return !m_desk.window()->saying().isEmpty(); }));
    EXPECT_TRUE(m_desk.isLocked());
    EXPECT_FALSE(m_page.isVisible());
    EXPECT_EQ(m_desk.window()->field()->text(), QString());
    EXPECT_FALSE(readAda());
    answer(m_passphrase);
    EXPECT_TRUE(QTest::qWaitFor([this] { return !m_desk.isLocked(); }));
}

TEST_F(LockDeskTest, DialogsStayOpenOutOfSightWithWhatIsTypedInThem)
{
    QDialog outer;
    QLineEdit field(&outer);
    QDialog inner(&outer);
    QLineEdit innerField(&inner);
    const auto lockAndUnlock = [&] {
        field.setText(QStringLiteral("Ada Lund, half"));
        innerField.setText(QStringLiteral("more of Ada"));
        m_desk.lock();
        EXPECT_FALSE(outer.isVisible());
        EXPECT_FALSE(inner.isVisible());
        EXPECT_FALSE(readAda());
        for (const QWindow* window : QGuiApplication::topLevelWindows()) {
            EXPECT_TRUE(window == m_desk.window()->windowHandle() || !window->isVisible()) << window->title().toStdString();
        }
        EXPECT_EQ(QApplication::activeModalWidget(), nullptr) << "the passphrase can be typed";
        answer(m_passphrase);
    };
    QObject::connect(&m_desk, &LockDesk::unlocked, &inner, [&] {
        EXPECT_TRUE(outer.isVisible());
        EXPECT_EQ(QApplication::activeModalWidget(), &inner);
        EXPECT_EQ(innerField.text(), QStringLiteral("more of Ada"));
        inner.accept();
    });
    QTimer::singleShot(0, &outer, [&] {
        QTimer::singleShot(0, &inner, lockAndUnlock);
        EXPECT_EQ(inner.exec(), int{QDialog::Accepted});
        EXPECT_EQ(QApplication::activeModalWidget(), &outer);
        EXPECT_EQ(field.text(), QStringLiteral("Ada Lund, half"));
        outer.done(7);
    });
    EXPECT_EQ(outer.exec(), 7);
    EXPECT_FALSE(m_desk.isLocked());
    EXPECT_TRUE(m_page.isVisible());
}

TEST_F(LockDeskTest, ADialogThatWouldOpenMeanwhileWaitsForThePassphrase)
{
    m_desk.lock();
    QDialog dialog;
    const QLineEdit field(&dialog);
    bool wasHeldBack = false;
    QTimer::singleShot(50, &m_page, [&] {
        for (const QWindow* window : QGuiApplication::topLevelWindows()) {
            EXPECT_TRUE(window == m_desk.window()->windowHandle() || !window->isVisible()) << window->title().toStdString();
        }
        EXPECT_EQ(QApplication::activeModalWidget(), nullptr) << "the passphrase can be typed";
        wasHeldBack = true;
        answer(m_passphrase);
    });
    QObject::connect(&m_desk, &LockDesk::unlocked, &dialog, [&] {
        QTimer::singleShot(50, &dialog, [&] {
            EXPECT_EQ(QApplication::activeModalWidget(), &dialog);
            EXPECT_TRUE(dialog.windowHandle()->isVisible());
            EXPECT_TRUE(m_page.isVisible());
            dialog.accept();
        });
    });
    EXPECT_EQ(dialog.exec(), int{QDialog::Accepted});
    EXPECT_TRUE(wasHeldBack);
    EXPECT_FALSE(m_desk.isLocked());
}

TEST_F(LockDeskTest, AtTheEndNothingWaitsForAnUnlock)
{
    m_desk.lock();
    m_desk.beginEnd();
    QDialog dialog;
    bool wasShown = false;
    QTimer::singleShot(50, &dialog, [&] {
        wasShown = dialog.isVisible() && QApplication::activeModalWidget() == &dialog;
        dialog.accept();
    });
    QTimer::singleShot(5000, &m_page, [&] { answer(m_passphrase); });  // a dialog that waits fails the test, and does not stop it
    EXPECT_EQ(dialog.exec(), int{QDialog::Accepted});
    EXPECT_TRUE(wasShown);
    EXPECT_TRUE(m_desk.isLocked());
}

TEST_F(LockDeskTest, ClosingTheLockedWindowAsksToQuit)
{
    m_desk.lock();
    const QSignalSpy quit(&m_desk, &LockDesk::quitAsked);
    m_desk.window()->close();
    EXPECT_EQ(quit.count(), 1);
    EXPECT_TRUE(m_desk.isLocked());
}

TEST_F(LockDeskTest, LocksAfterAQuarterOfAnHourWhereNobodyChoseOtherwise)
{
    EXPECT_EQ(m_desk.minutes(), 15);
    m_desk.setMinutes(5);
    EXPECT_EQ(LockDesk(m_look, m_studio.database(), m_settings).minutes(), 5);
    m_settings.setValue(QStringLiteral("lock/minutes"), 7);
    EXPECT_EQ(m_desk.minutes(), 15) << "what nobody can choose counts for nothing";
}

TEST_F(LockDeskTest, WithoutAPassphraseThereIsNothingToLock)
{
    ASSERT_TRUE(store::Sealing(m_studio.database()).remove(seal::Passphrase(m_passphrase)));
    m_desk.refresh();
    EXPECT_FALSE(m_desk.canLock());
    m_desk.lock();
    EXPECT_FALSE(m_desk.isLocked());
    EXPECT_TRUE(m_page.isVisible());
}

TEST_F(LockDeskTest, EverythingInTheLockedWindowHasAName)
{
    m_desk.lock();
    EXPECT_GT(tests::focusableCount(*m_desk.window()), 2);
    EXPECT_EQ(tests::unnamedFocusables(*m_desk.window()), QStringList());
}

}  // namespace chalk::ui::lock
