#include "ui/direction/months_view.h"

#include "core/exchange/catalogue_json.h"
#include "tests/support/small_studio.h"
#include "ui/common/look.h"
#include "ui/direction/plan_table.h"

#include <QAbstractItemModel>
#include <QSignalSpy>

#include <gtest/gtest.h>

namespace chalk::ui::direction {

class MonthsViewTest : public ::testing::Test {
protected:
    test::StudioOnTest m_studio;
    const lifts::Catalogue m_catalogue = exchange::builtInCatalogue();
    const common::Look m_look;
    MonthsView m_view{m_look, m_studio.file(), m_catalogue};
    const base::Date m_today = test::smallStudioDay();
};

TEST_F(MonthsViewTest, ReadsBesideTheWindowAndShowsWhatWasAskedLast)
{
    m_view.show();
    QSignalSpy shown(&m_view, &MonthsView::shown);
    m_view.read(test::clientNamed(m_studio.database(), "Bo Arden"), m_today - 6, m_today);
    m_view.read(test::clientNamed(m_studio.database(), "Ada Lund"), m_today - 35, m_today);
    EXPECT_TRUE(m_view.isReading());
    ASSERT_TRUE(shown.wait(10000));
    EXPECT_FALSE(m_view.isReading());
    EXPECT_EQ(shown.count(), 1);
    EXPECT_TRUE(m_view.liftTable()->isVisible());
    EXPECT_GE(m_view.liftTable()->model()->rowCount(), 2);
    EXPECT_FALSE(m_view.screenTable()->isVisible());
    EXPECT_TRUE(m_view.said().contains(QStringLiteral("Came to 2 of 3 sessions."))) << m_view.said().toStdString();
    EXPECT_TRUE(m_view.said().contains(QStringLiteral("No movement screen is on file.")));
}

TEST_F(MonthsViewTest, ACaseThatCannotBeReadIsSaidSo)
{
    QSignalSpy shown(&m_view, &MonthsView::shown);
    m_view.read(base::ClientId(999), m_today - 35, m_today);
    ASSERT_TRUE(shown.wait(10000));
    EXPECT_TRUE(m_view.said().startsWith(QStringLiteral("The months cannot be shown.")));
}

TEST_F(MonthsViewTest, AStallIsToldWithWhatElseExplainsIt)
{
    MonthsCase months;
    months.stalls = {{"Bench press", {QStringLiteral("Likely stall, 5 weeks without a new best"), {QStringLiteral("Came to 3 of 8 sessions.")}, {}, {}}}};
    m_view.setMonths(months);
    EXPECT_TRUE(m_view.said().contains(QStringLiteral("Bench press.")));
    EXPECT_TRUE(m_view.said().contains(QStringLiteral("Likely stall, 5 weeks without a new best. Came to 3 of 8 sessions."))) << m_view.said().toStdString();
}

}  // namespace chalk::ui::direction
