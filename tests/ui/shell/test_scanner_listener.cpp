#include "ui/shell/scanner_listener.h"

#include <QAction>
#include <QApplication>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>
#include <QVBoxLayout>

#include <gtest/gtest.h>

namespace chalk::ui::shell {

/// A window with a field, a button and shortcuts on digits and letters, and a clock that only the test moves.
class ScannerListenerTest : public ::testing::Test {
protected:
    ScannerListenerTest()
    {
        auto* column = new QVBoxLayout(&m_window);
        column->addWidget(&m_field);
        column->addWidget(&m_button);
        for (const Qt::Key key : {Qt::Key_1, Qt::Key_7, Qt::Key_Space, Qt::Key_Return}) {
            auto* action = new QAction(&m_window);
            action->setShortcut(key);
            QObject::connect(action, &QAction::triggered, &m_window, [this] { ++m_shortcuts; });
            m_window.addAction(action);
        }
        m_window.show();
        m_window.activateWindow();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&m_window, 5000));
        m_field.setFocus();
    }

    /// Types each character `gapMs` after the one before, through the window, as a keyboard would.
    void type(const QString& text, int gapMs)
    {
        for (const QChar& character : text) {
            m_ms += gapMs;
            const Qt::KeyboardModifiers shift = character.isUpper() ? Qt::ShiftModifier : Qt::NoModifier;
            QTest::keyClick(m_window.windowHandle(), character.toLatin1(), shift);
        }
    }
    void enter(int gapMs)
    {
        m_ms += gapMs;
        QTest::keyClick(m_window.windowHandle(), Qt::Key_Return);
    }
    void scan(const QString& code)
    {
        type(QStringLiteral("CR1 ") + code, 5);
        enter(5);
        QCoreApplication::processEvents();
    }
    QStringList codes() const
    {
        QStringList codes;
        for (const auto& one : m_scanned) {
            codes.append(one.front().toString());
        }
        return codes;
    }

    qint64 m_ms = 1000;
    QWidget m_window;
    QLineEdit m_field;
    QPushButton m_button;
    int m_shortcuts = 0;
    ScannerListener m_listener{[this](const QKeyEvent&) { return m_ms; }, nullptr};
    QSignalSpy m_scanned{&m_listener, &ScannerListener::codeScanned};
};

TEST_F(ScannerListenerTest, ABurstIsReadAndLeavesNothingInTheField)
{
    const QSignalSpy entered(&m_field, &QLineEdit::returnPressed);
    m_field.setText(QStringLiteral("8 8"));
    scan(QStringLiteral("AB7 K2"));
    EXPECT_EQ(codes(), QStringList{QStringLiteral("AB7 K2")});
    EXPECT_EQ(m_field.text(), QStringLiteral("8 8"));
    EXPECT_EQ(entered.count(), 0) << "the Enter of a card is no Enter of the field";
    scan(QStringLiteral("ZZ"));
    EXPECT_EQ(codes().size(), 2);
}

TEST_F(ScannerListenerTest, ABurstPressesNoButtonAndFiresNoShortcut)
{
    const QSignalSpy clicked(&m_button, &QPushButton::clicked);
    m_button.setFocus();
    scan(QStringLiteral("A71"));
    EXPECT_EQ(codes(), QStringList{QStringLiteral("A71")});
    EXPECT_EQ(clicked.count(), 0);
    EXPECT_FALSE(m_button.isDown());
    EXPECT_EQ(m_shortcuts, 0);
    type(QStringLiteral("1"), 500);
    EXPECT_EQ(m_shortcuts, 1) << "a key alone is a shortcut as ever";
}

TEST_F(ScannerListenerTest, WhatIsTypedSlowlyStays)
{
    type(QStringLiteral("CR1 AB7"), ScannerListener::kMostGapMs + 1);
    enter(100);
    EXPECT_EQ(m_field.text(), QStringLiteral("CR1 AB7"));
    EXPECT_TRUE(codes().isEmpty());
}

TEST_F(ScannerListenerTest, AGapAsLongAsTheLongestIsAScanners)
{
    type(QStringLiteral("CR1 AB7"), ScannerListener::kMostGapMs);
    enter(ScannerListener::kMostEndGapMs);
    QCoreApplication::processEvents();
    EXPECT_EQ(codes(), QStringList{QStringLiteral("AB7")});
    type(QStringLiteral("CR1 AB7"), ScannerListener::kMostGapMs);
    enter(ScannerListener::kMostEndGapMs + 1);
    QCoreApplication::processEvents();
    EXPECT_EQ(codes().size(), 1);
    EXPECT_EQ(m_field.text(), QStringLiteral("CR1 AB7"));
}

TEST_F(ScannerListenerTest, AKeyHeldBackComesByItself)
{
    type(QStringLiteral("C"), 500);
    EXPECT_TRUE(m_field.text().isEmpty());
    EXPECT_TRUE(QTest::qWaitFor([this] { return m_field.text() == QStringLiteral("C"); }, 2000));
}

TEST_F(ScannerListenerTest, ABurstThatGoesOnOtherwiseIsGivenBackInOrder)
{
    type(QStringLiteral("CR2 x"), 5);
    EXPECT_EQ(m_field.text(), QStringLiteral("CR2 x"));
    m_field.clear();
    type(QStringLiteral("CCR1"), 5);
    type(QStringLiteral("q"), 200);
    EXPECT_EQ(m_field.text(), QStringLiteral("CCR1q"));
    EXPECT_TRUE(codes().isEmpty());
}

TEST_F(ScannerListenerTest, ABurstCutOffIsGivenBackInOrder)
{
    type(QStringLiteral("CR1 AB"), 5);
    EXPECT_TRUE(m_field.text().isEmpty());
    EXPECT_TRUE(QTest::qWaitFor([this] { return !m_field.text().isEmpty(); }, 2000));
    EXPECT_EQ(m_field.text(), QStringLiteral("CR1 AB"));
    type(QStringLiteral("7"), 300);
    enter(5);
    QCoreApplication::processEvents();
    EXPECT_EQ(m_field.text(), QStringLiteral("CR1 AB7"));
    EXPECT_TRUE(codes().isEmpty());
    scan(QStringLiteral("NEXT"));
    EXPECT_EQ(codes(), QStringList{QStringLiteral("NEXT")});
}

TEST_F(ScannerListenerTest, HeldKeysGoWhereTheyWereTyped)
{
    type(QStringLiteral("CR"), 5);
    m_button.setFocus();
    EXPECT_EQ(m_field.text(), QStringLiteral("CR"));
}

TEST_F(ScannerListenerTest, ACardWithoutACodeOrWithATooLongOneIsNone)
{
    type(QStringLiteral("CR1 "), 5);
    enter(5);
    EXPECT_EQ(m_field.text(), QStringLiteral("CR1 "));
    m_field.clear();
    const QString tooLong(ScannerListener::kLongestCode + 1, QLatin1Char('A'));
    scan(tooLong);
    EXPECT_EQ(m_field.text(), QStringLiteral("CR1 ") + tooLong);
    EXPECT_TRUE(codes().isEmpty());
}

TEST_F(ScannerListenerTest, TheLockForCapitalsTurnsLettersOver)
{
    for (const char letter : {'c', 'r'}) {
        m_ms += 5;
        const int key = QChar::fromLatin1(letter).toUpper().unicode();
        QKeyEvent press(QEvent::KeyPress, key, Qt::ShiftModifier, QString(QLatin1Char(letter)));
        QCoreApplication::sendEvent(&m_field, &press);
    }
    type(QStringLiteral("1 A7"), 5);
    enter(5);
    QCoreApplication::processEvents();
    EXPECT_EQ(codes(), QStringList{QStringLiteral("A7")});
    EXPECT_TRUE(m_field.text().isEmpty());
}

TEST_F(ScannerListenerTest, TheReleasesOfACardAreHeldToo)
{
    for (const QChar& character : QStringLiteral("CR1 A")) {
        m_ms += 5;
        QTest::keyPress(m_window.windowHandle(), character.toLatin1(), character.isUpper() ? Qt::ShiftModifier : Qt::NoModifier);
    }
    QTest::keyPress(m_window.windowHandle(), Qt::Key_Return);
    m_button.setFocus();
    const QSignalSpy released(&m_button, &QPushButton::released);
    QTest::keyRelease(m_window.windowHandle(), Qt::Key_Space);
    EXPECT_EQ(released.count(), 0);
    QTest::keyClick(m_window.windowHandle(), Qt::Key_Space);
    QCoreApplication::processEvents();
    EXPECT_EQ(codes(), QStringList{QStringLiteral("A")});
}

}  // namespace chalk::ui::shell
