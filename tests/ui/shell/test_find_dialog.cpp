#include "ui/common/look.h"
#include "ui/shell/client_finder.h"
#include "ui/shell/find_dialog.h"
#include "ui/shell/find_model.h"

#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QTest>

#include <gtest/gtest.h>

namespace chalk::ui::shell {

class FindDialogTest : public ::testing::Test {
protected:
    FindDialogTest() : m_before(new QLineEdit(&m_window)), m_dialog(new FindDialog(m_look, &m_window))
    {
        m_window.resize(1200, 740);
        m_dialog->addProvider(std::make_unique<ClientFinder>(
            ClientPages{QStringLiteral("client"), QStringLiteral("floor"), QStringLiteral("onboarding")},
            [] {
                return std::vector<FindableClient>{
                    {base::ClientId(1), QStringLiteral("Joaquin Ferro"), QStringLiteral("45"), {}},
                    {base::ClientId(2), QStringLiteral("Ana Ferrosa"), QStringLiteral("33"), {}}};
            },
            [this](const Place& place) { m_gone.push_back(place.client.value()); }));
        m_window.show();
        m_window.activateWindow();
        m_before->setFocus();
    }

    [[nodiscard]] int chosenRow() const { return m_dialog->findChild<QListView*>()->currentIndex().row(); }

    common::Look m_look;
    QWidget m_window;
    QLineEdit* m_before;
    FindDialog* m_dialog;
    std::vector<std::int64_t> m_gone;
};

TEST_F(FindDialogTest, TypeAndEnterIsEnough)
{
    m_dialog->start();
    EXPECT_TRUE(m_dialog->isVisible());
    QTest::keyClicks(m_dialog->field(), QStringLiteral("ferro"));
    QTest::keyClick(m_dialog->field(), Qt::Key_Return);
    EXPECT_EQ(m_gone, std::vector<std::int64_t>{1});
    EXPECT_FALSE(m_dialog->isVisible());
}

TEST_F(FindDialogTest, ArrowsChooseAndPassOverHeadings)
{
    m_dialog->start(QStringLiteral("ferr"));
    EXPECT_EQ(chosenRow(), 1);
    QTest::keyClick(m_dialog->field(), Qt::Key_Up);
    EXPECT_EQ(chosenRow(), 1);
    QTest::keyClick(m_dialog->field(), Qt::Key_Down);
    EXPECT_EQ(chosenRow(), 2);
    QTest::keyClick(m_dialog->field(), Qt::Key_Down);
    EXPECT_EQ(chosenRow(), 2);
    QTest::keyClick(m_dialog->field(), Qt::Key_Enter);
    EXPECT_EQ(m_gone, std::vector<std::int64_t>{2});
}

TEST_F(FindDialogTest, EscapeAndAClickBesideItCloseItAndGiveTheFocusBack)
{
    m_dialog->start(QStringLiteral("ferr"));
    QTest::keyClick(m_dialog->field(), Qt::Key_Escape);
    EXPECT_FALSE(m_dialog->isVisible());
    EXPECT_EQ(m_window.focusWidget(), m_before);
    m_dialog->start(QStringLiteral("ferr"));
    QTest::mouseClick(m_dialog, Qt::LeftButton, {}, QPoint(20, 700));
    EXPECT_FALSE(m_dialog->isVisible());
    EXPECT_TRUE(m_gone.empty());
}

TEST_F(FindDialogTest, OffersTheNameThatWasProbablyMeant)
{
    m_dialog->start(QStringLiteral("jokuen <ferr"));
    EXPECT_EQ(m_dialog->model()->rowCount(), 0);
    const QString words = m_dialog->findChild<QLabel*>()->text();
    EXPECT_TRUE(words.contains(QStringLiteral("jokuen &lt;ferr"))) << words.toStdString();
    EXPECT_TRUE(words.contains(QStringLiteral("Joaquin Ferro"))) << words.toStdString();
    QTest::keyClick(m_dialog->field(), Qt::Key_Return);
    EXPECT_EQ(m_dialog->field()->text(), QStringLiteral("Joaquin Ferro"));
    EXPECT_TRUE(m_dialog->isVisible());
    QTest::keyClick(m_dialog->field(), Qt::Key_Return);
    EXPECT_EQ(m_gone, std::vector<std::int64_t>{1});
}

}  // namespace chalk::ui::shell
