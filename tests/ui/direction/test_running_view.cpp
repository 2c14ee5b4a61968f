#include "ui/direction/running_view.h"

#include "core/exchange/catalogue_json.h"
#include "tests/support/small_studio.h"
#include "ui/common/icon_store.h"
#include "ui/direction/direction_desk.h"

#include <gtest/gtest.h>

namespace chalk::ui::direction {

using chalk::direction::Direction;

/// Ada on a strength plan from Monday 30 November 2026 on; her hinge is on hold.
class RunningViewTest : public ::testing::Test {
protected:
    RunningViewTest()
    {
        const DirectionCase before = on("2026-11-24");
        const DirectionOffer& offer = before.offer(Direction::Strength);
        EXPECT_TRUE(m_desk.begin(m_ada, before.today, offer.plan, offer.singles));
    }

    DirectionCase on(const char* day) { return *m_desk.read(m_ada, *base::Date::parse(day)); }
    static QString all(const DirectionCase& client)
    {
        QStringList texts;
        for (const ChangeLine& line : runningSideView(client).lines) {
            EXPECT_TRUE(common::IconStore::has(line.icon)) << line.icon.toStdString();
            texts.append(line.text);
        }
        return texts.join(QLatin1Char('\n'));
    }

    test::StudioOnTest m_studio;
    const lifts::Catalogue m_catalogue = exchange::builtInCatalogue();
    DirectionDesk m_desk{m_studio.database(), m_catalogue, test::someMoment};
    const base::ClientId m_ada = test::clientNamed(m_studio.database(), "Ada Lund");
};

TEST_F(RunningViewTest, SaysTheWeekAndMarksIt)
{
    const PlanPanelView view = runningPanelView(on("2026-12-30"));
    EXPECT_EQ(view.title, QStringLiteral("Strength, week 5 of 12"));
    EXPECT_EQ(view.chart.present, 4U);
    const PlanPanelView early = runningPanelView(on("2026-11-25"));
    EXPECT_FALSE(early.chart.present);
    EXPECT_TRUE(early.title.contains(QStringLiteral("begins on Mon 30 Nov"))) << early.title.toStdString();
}

TEST_F(RunningViewTest, EachLiftShowsThisWeekAndTheNext)
{
    const PlanPanelView view = runningPanelView(on("2026-12-01"));
    ASSERT_EQ(view.rows.size(), 2U);
    EXPECT_EQ(view.rows[0][0], QStringLiteral("Back squat"));
    EXPECT_TRUE(view.rows[0][1].contains(QStringLiteral(" × 4 at "))) << view.rows[0][1].toStdString();
    EXPECT_TRUE(view.rows[0][1].contains(QStringLiteral("; "))) << "a heavy and a light day";
    EXPECT_TRUE(view.rows[0][3].endsWith(QStringLiteral("estimated")));
    EXPECT_EQ(runningPanelView(on("2027-02-16")).rows[0][2], QStringLiteral("–")) << "nothing comes after the last week";
}

TEST_F(RunningViewTest, SaysWhatIsNextAndWhoIsAside)
{
    const QString text = all(on("2026-12-01"));
    EXPECT_TRUE(text.contains(QStringLiteral("Now: week 1 of 12, Base."))) << text.toStdString();
    EXPECT_TRUE(text.contains(QStringLiteral("The next lighter week begins on 21 Dec.")));
    EXPECT_TRUE(text.contains(QStringLiteral("The test week begins on 15 Feb.")));
    EXPECT_TRUE(text.contains(QStringLiteral("The plan ends on 21 Feb.")));
    EXPECT_TRUE(text.contains(QStringLiteral("Trap-bar deadlift is on hold.")));
    EXPECT_FALSE(canTakeUp(on("2026-12-01"))) << "it is still on hold";
}

}  // namespace chalk::ui::direction
