#include "ui/week/hours_dialog.h"

#include "tests/support/accessible_audit.h"
#include "tests/support/scripted_dialogs.h"
#include "tests/support/small_studio.h"
#include "ui/common/action_button.h"
#include "ui/common/hours_grid.h"
#include "ui/common/look.h"
#include "ui/week/closures_editor.h"

#include <QLineEdit>
#include <QListWidget>
#include <QSignalSpy>
#include <QSpinBox>
#include <QTest>

#include <gtest/gtest.h>

namespace chalk::ui::week {

class HoursDialogTest : public ::testing::Test {
protected:
    HoursDialogTest()
    {
        m_dialog.show();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&m_dialog));
    }
    template <class Widget>
    Widget& named(const char* name)
    {
        for (Widget* widget : m_dialog.findChildren<Widget*>()) {
            if (widget->accessibleName() == QLatin1String(name)) {
                return *widget;
            }
        }
        throw std::logic_error(name);
    }
    store::Result<std::vector<store::KeptClosure>> closures() { return store::WeekSettings(m_studio.database()).closures(test::smallStudioDay()); }

    test::StudioOnTest m_studio;
    const common::Look m_look;
    tests::ScriptedDialogs m_dialogs;
    HoursDialog m_dialog{m_look, m_studio.database(), m_dialogs, test::smallStudioDay()};
};

TEST_F(HoursDialogTest, AClosureIsTypedAndTakenAway)
{
    QSignalSpy changed(&m_dialog, &HoursDialog::changed);
    auto* editor = m_dialog.findChild<ClosuresEditor*>();
    auto& first = named<QLineEdit>("First day");
    first.setText(QStringLiteral("hm"));
    EXPECT_FALSE(editor->closure());
    first.setText(QStringLiteral("5 Dec 2026"));
    named<QLineEdit>("Last day").setText(QStringLiteral("4 Dec 2026"));
    EXPECT_FALSE(editor->closure()) << "it ends before it begins";
    named<QLineEdit>("Last day").clear();
    named<QLineEdit>("Why").setText(QStringLiteral("Harbour lights"));
    QTest::keyClick(&named<QLineEdit>("Why"), Qt::Key_Return);
    ASSERT_EQ(closures()->size(), 1U);
    EXPECT_EQ(closures()->front().closure.why, "Harbour lights");
    EXPECT_EQ(changed.count(), 1);
    auto& list = named<QListWidget>("Closures");
    ASSERT_EQ(list.count(), 1);
    list.setCurrentRow(0);
    for (common::ActionButton* button : m_dialog.findChildren<common::ActionButton*>()) {
        if (button->text() == QStringLiteral("Take it away")) {
            QTest::mouseClick(button, Qt::LeftButton);
        }
    }
    EXPECT_TRUE(closures()->empty());
    EXPECT_EQ(changed.count(), 2);
}

TEST_F(HoursDialogTest, HoursOfACoachArePainted)
{
    named<QListWidget>("Hours and closures").setCurrentRow(2);
    auto& grid = named<common::HoursGrid>("Hours of Ines");
    ASSERT_TRUE(grid.isVisible());
    grid.setFocus();
    const clients::WeekHours before = grid.free();
    QTest::keyClick(&grid, Qt::Key_Delete);
    EXPECT_NE(grid.free(), before);
    EXPECT_EQ(store::WeekSettings(m_studio.database()).coachWork()->at(base::CoachId(1)).hours, grid.free());
}

TEST_F(HoursDialogTest, WhereTheirsIsKeptItIsWhatTheFieldsShow)
{
    const auto second = store::Database::open(m_studio.file(), store::OpenMode::MustExist).value();
    chalk::week::CoachWork theirs;
    theirs.capacity = 2;
    ASSERT_TRUE(store::WeekSettings(*second).setCoachWork(base::CoachId(1), theirs));
    QSignalSpy changed(&m_dialog, &HoursDialog::changed);
    auto& places = named<QSpinBox>("Clients at once with Ines");
    m_dialogs.answers = {0};
    places.setValue(9);
    ASSERT_EQ(m_dialogs.asked.size(), 1U);
    EXPECT_EQ(places.value(), 2);
    EXPECT_EQ(changed.count(), 0);
    EXPECT_EQ(store::WeekSettings(m_studio.database()).coachWork()->at(base::CoachId(1)).capacity, 2);
    places.setValue(8);
    EXPECT_EQ(m_dialogs.asked.size(), 1U) << "theirs was seen";
    EXPECT_EQ(changed.count(), 1);
}

TEST_F(HoursDialogTest, EverythingHasAName)
{
    EXPECT_GT(tests::focusableCount(m_dialog), 8);
    EXPECT_EQ(tests::unnamedFocusables(m_dialog), QStringList());
}

}  // namespace chalk::ui::week
