#include "ui/common/sign_in_dialog.h"

#include <QLineEdit>
#include <QTest>

#include <gtest/gtest.h>

namespace chalk::ui::common {

class SignInDialogTest : public ::testing::Test {
protected:
    QLineEdit& field(int index) { return *m_dialog.findChildren<QLineEdit*>().at(index); }

    QStringList m_tried;
    SignInDialog m_dialog{QStringLiteral("postgresql://studio/chalkrung"), {}, [this](const QString& login, const QString& password) {
                              m_tried.append(login + QLatin1Char('/') + password);
                              return password == QLatin1String("right") ? QString() : QStringLiteral("The studio lets nobody in so.");
                          }};
};

TEST_F(SignInDialogTest, AsksAgainUntilSomebodyIsLetIn)
{
    m_dialog.show();
    QTest::keyClicks(&field(0), QStringLiteral("ines"));
    QTest::keyClicks(&field(1), QStringLiteral("wrong"));
    QTest::keyClick(&field(1), Qt::Key_Return);
    EXPECT_TRUE(m_dialog.isVisible());
    EXPECT_EQ(m_dialog.fault(), QStringLiteral("The studio lets nobody in so."));
    field(1).clear();
    QTest::keyClicks(&field(1), QStringLiteral("right"));
    QTest::keyClick(&field(1), Qt::Key_Return);
    EXPECT_FALSE(m_dialog.isVisible());
    EXPECT_EQ(m_dialog.result(), QDialog::Accepted);
    EXPECT_EQ(m_tried, (QStringList{QStringLiteral("ines/wrong"), QStringLiteral("ines/right")}));
    EXPECT_EQ(m_dialog.login(), QStringLiteral("ines"));
}

TEST_F(SignInDialogTest, WantsALogin)
{
    m_dialog.show();
    QTest::keyClick(&field(1), Qt::Key_Return);
    EXPECT_TRUE(m_tried.isEmpty());
    EXPECT_FALSE(m_dialog.fault().isEmpty());
}

TEST_F(SignInDialogTest, ThePasswordIsNotShown)
{
    EXPECT_EQ(field(1).echoMode(), QLineEdit::Password);
}

}  // namespace chalk::ui::common
