#include "ui/common/versions_dialog.h"

#include <QLabel>
#include <QPushButton>
#include <QTest>

#include <gtest/gtest.h>

namespace chalk::ui::common {

class VersionsDialogTest : public ::testing::Test {
protected:
    static Question question()
    {
        Question asked{Signal::Warn, QStringLiteral("The report was changed."), QStringLiteral("Nothing is lost."), {}, {QStringLiteral("Keep theirs"), QStringLiteral("Write mine")}, 0};
        asked.versions = {{QStringLiteral("Effort"), QStringLiteral("7"), {}}};
        return asked;
    }
    VersionsDialog m_dialog{question()};
};

TEST_F(VersionsDialogTest, BothVersionsAreThereToReadAndToHear)
{
    QStringList heard;
    for (const QLabel* label : m_dialog.findChildren<QLabel*>()) {
        heard.append(label->accessibleName());
    }
    EXPECT_TRUE(heard.contains(QStringLiteral("Effort, yours: 7")));
    EXPECT_TRUE(heard.contains(QStringLiteral("Effort, theirs: nothing")));
}

TEST_F(VersionsDialogTest, EscLeavesTheirs)
{
    m_dialog.show();
    QTest::keyClick(&m_dialog, Qt::Key_Escape);
    EXPECT_FALSE(m_dialog.isVisible());
    EXPECT_EQ(m_dialog.answer(), 0);
}

TEST_F(VersionsDialogTest, AButtonAnswers)
{
    m_dialog.show();
    ASSERT_EQ(m_dialog.buttons().size(), 2U);
    m_dialog.buttons()[1]->click();
    EXPECT_EQ(m_dialog.answer(), 1);
    EXPECT_FALSE(m_dialog.isVisible());
}

}  // namespace chalk::ui::common
