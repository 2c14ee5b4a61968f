#include "ui/shell/typing_guard.h"

#include <QApplication>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QTest>
#include <QVBoxLayout>

#include <gtest/gtest.h>

namespace chalk::ui::shell {

class TypingGuard : public ::testing::Test {
protected:
    TypingGuard()
    {
        auto* column = new QVBoxLayout(&m_page);
        column->addWidget(&m_line);
        column->addWidget(&m_text);
        m_page.show();
        QApplication::setActiveWindow(&m_page);
    }

    QWidget m_page;
    QLineEdit m_line;
    QPlainTextEdit m_text;
};

TEST_F(TypingGuard, WordsThatAreTypedAreInTheMiddle)
{
    m_line.setFocus();
    EXPECT_FALSE(isInTheMiddle(nullptr));
    QTest::keyClicks(&m_line, QStringLiteral("8 8 7"));
    EXPECT_TRUE(isInTheMiddle(nullptr));
    EXPECT_FALSE(isInTheMiddle(&m_line)) << "a filter keeps what stands in it";
    m_line.setText(QStringLiteral("saved"));
    EXPECT_FALSE(isInTheMiddle(nullptr)) << "the page put it there";
}

TEST_F(TypingGuard, ALongerTextToo)
{
    m_text.setFocus();
    EXPECT_FALSE(isInTheMiddle(nullptr));
    QTest::keyClicks(&m_text, QStringLiteral("Slow"));
    EXPECT_TRUE(isInTheMiddle(nullptr));
    m_line.setFocus();
    EXPECT_FALSE(isInTheMiddle(nullptr)) << "elsewhere nothing is typed";
}

}  // namespace chalk::ui::shell
