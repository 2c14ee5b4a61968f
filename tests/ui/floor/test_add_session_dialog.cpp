#include "ui/floor/add_session_dialog.h"

#include "ui/common/look.h"

#include <QApplication>
#include <QComboBox>
#include <QLineEdit>
#include <QTest>

#include <gtest/gtest.h>

namespace chalk::ui::floor {

namespace {

clients::Client clientOf(int id, const char* name, int coach)
{
    clients::Client client;
    client.id = base::ClientId(id);
    client.name = name;
    client.coach = base::CoachId(coach);
    return client;
}

BookingChoices someChoices()
{
    return {{clientOf(1, "Ada Lund", 1), clientOf(2, "Bo Frisk", 2), clientOf(3, "Adrian Moss", 1)}, {{base::CoachId(1), "Ines"}, {base::CoachId(2), "Tobias"}}};
}

const base::Date kBookingDay = *base::Date::fromYmd(2026, 11, 24);

}  // namespace

class AddSessionDialogTest : public ::testing::Test {
protected:
    AddSessionDialogTest()
    {
        m_dialog.show();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&m_dialog));
    }
    void type(const char* text) { QTest::keyClicks(QApplication::focusWidget(), QLatin1String(text)); }

    const common::Look m_look;
    AddSessionDialog m_dialog{m_look, someChoices(), kBookingDay, 9 * 60 + 20};
};

TEST_F(AddSessionDialogTest, PartOfANameAndEnterAreEnough)
{
    type("fri");
    ASSERT_TRUE(m_dialog.session());
    EXPECT_EQ(m_dialog.session()->client, base::ClientId(2));
    EXPECT_EQ(m_dialog.session()->coach, base::CoachId(2)) << "the client's own";
    EXPECT_EQ(m_dialog.session()->startMinute, 9 * 60 + 15) << "the quarter that runs";
    EXPECT_EQ(m_dialog.session()->date, kBookingDay);
    EXPECT_EQ(m_dialog.session()->minutes, 60);
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    EXPECT_EQ(m_dialog.result(), QDialog::Accepted);
}

TEST_F(AddSessionDialogTest, DownGoesToTheNextThatFits)
{
    type("ad");
    EXPECT_EQ(m_dialog.session()->client, base::ClientId(1));
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Down);
    EXPECT_EQ(m_dialog.session()->client, base::ClientId(3));
}

TEST_F(AddSessionDialogTest, NobodyOfThatNameIsNoSession)
{
    type("zzzz");
    EXPECT_FALSE(m_dialog.session());
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    EXPECT_TRUE(m_dialog.isVisible());
}

TEST_F(AddSessionDialogTest, ACoachChosenByHandStays)
{
    for (auto* box : m_dialog.findChildren<QComboBox*>()) {
        if (box->accessibleName() == QLatin1String("Coach")) {
            box->setCurrentIndex(1);
            Q_EMIT box->activated(1);
        }
    }
    type("ada");
    EXPECT_EQ(m_dialog.session()->coach, base::CoachId(2));
}

}  // namespace chalk::ui::floor
