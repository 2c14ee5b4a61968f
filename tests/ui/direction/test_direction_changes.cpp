#include "ui/direction/direction_changes.h"

#include "core/exchange/catalogue_json.h"
#include "tests/support/small_studio.h"
#include "ui/common/icon_store.h"
#include "ui/direction/direction_desk.h"
#include "ui/direction/main_lift_rows.h"

#include <gtest/gtest.h>

namespace chalk::ui::direction {

using chalk::direction::Direction;

class DirectionChangesTest : public ::testing::Test {
protected:
    DirectionChangesTest()
    {
        DirectionDesk desk(m_studio.database(), m_catalogue, test::someMoment);
        m_client = *desk.read(test::clientNamed(m_studio.database(), "Ada Lund"), test::smallStudioDay());
    }

    QString all(Direction direction) const
    {
        QStringList texts;
        for (const ChangeLine& line : changeLines(m_client, m_client.offer(direction))) {
            EXPECT_TRUE(common::IconStore::has(line.icon)) << line.icon.toStdString();
            texts.append(line.text);
        }
        return texts.join(QLatin1Char('\n'));
    }

    test::StudioOnTest m_studio;
    const lifts::Catalogue m_catalogue = exchange::builtInCatalogue();
    DirectionCase m_client;
};

TEST_F(DirectionChangesTest, SaysWhoLeadsWhoStaysAndWhoWaits)
{
    const QString text = all(Direction::Strength);
    EXPECT_TRUE(text.contains(QStringLiteral("Back squat and trap-bar deadlift lead their days."))) << text.toStdString();
    EXPECT_TRUE(text.contains(QStringLiteral("Dumbbell bench press stays on the ladder."))) << text.toStdString();
    EXPECT_TRUE(text.contains(QStringLiteral("Trap-bar deadlift is on hold. It can join once it is released.")));
    EXPECT_TRUE(text.contains(QStringLiteral("2 sessions a week as now")));
    EXPECT_TRUE(text.contains(QStringLiteral("Heavy loads are to be agreed with whoever treats Ada first.")));
    EXPECT_FALSE(all(Direction::Movement).contains(QStringLiteral("Heavy loads")));
}

TEST_F(DirectionChangesTest, ClosuresAreNamedWithTheirWeeks)
{
    m_client.closures = {{*base::Date::parse("2026-12-24"), *base::Date::parse("2027-01-02")}, {*base::Date::parse("2027-08-01"), *base::Date::parse("2027-08-09")}};
    const QString text = all(Direction::Physique);
    EXPECT_TRUE(text.contains(QStringLiteral("24 Dec – 2 Jan: the studio is closed. That is in weeks 4 and 5."))) << text.toStdString();
    EXPECT_FALSE(text.contains(QStringLiteral("Aug")));
}

TEST_F(DirectionChangesTest, CheckInsComeAtTheEndOfLighterWeeks)
{
    std::vector<int> lighter;
    const auto& weeks = m_client.offer(Direction::Strength).plan.weeks;
    for (std::size_t i = 0; i < weeks.size(); ++i) {
        if (weeks[i].kind == chalk::direction::WeekKind::Lighter) {
            lighter.push_back(static_cast<int>(i) + 1);
        }
    }
    ASSERT_GE(lighter.size(), 2U);
    EXPECT_TRUE(all(Direction::Strength).contains(QStringLiteral("Lighter weeks %1").arg(numberListText(lighter))));
    EXPECT_EQ(numberListText({4, 8, 12}), QStringLiteral("4, 8 and 12"));
    EXPECT_EQ(numberListText({4}), QStringLiteral("4"));
}

TEST_F(DirectionChangesTest, EveryReasonAgainstAPlanIsASentenceOfItsOwn)
{
    QStringList seen;
    for (const StartBar bar : {StartBar::Clearance, StartBar::NothingLoaded, StartBar::AllOnHold, StartBar::NoneLoaded, StartBar::NoSingle}) {
        DirectionCase client = m_client;
        if (bar == StartBar::Clearance) {
            client.clearance = {clients::ClearanceState::Recommended, "two answers", client.today - 6, {}, {}, {}};
        }
        const QString text = startBarText(client, bar);
        EXPECT_TRUE(text.endsWith(QLatin1Char('.')));
        EXPECT_FALSE(text.startsWith(QLatin1Char('.')));
        EXPECT_FALSE(seen.contains(text));
        seen.append(text);
    }
    EXPECT_TRUE(seen.last().contains(QStringLiteral("three to five repetitions")));
}

TEST_F(DirectionChangesTest, TheTalkSaysWhenAndWhy)
{
    EXPECT_TRUE(talkText(m_client).startsWith(QStringLiteral("The talk is due from ")));
    m_client.talk.isDue = true;
    m_client.talk.stalls = 2;
    EXPECT_TRUE(talkText(m_client).startsWith(QStringLiteral("The talk is due since ")));
    EXPECT_TRUE(talkText(m_client).contains(QStringLiteral("2 lifts have stalled")));
    checkin::Decision decided;
    decided.day = m_client.today - 1;
    decided.nextReview = m_client.today + 83;
    m_client.decided = decided;
    EXPECT_TRUE(talkText(m_client).contains(QStringLiteral("stay in the cycle")));
    m_client.decided->nextReview = m_client.today;
    EXPECT_FALSE(talkText(m_client).contains(QStringLiteral("stay in the cycle")));
    m_client.talk = {};
    EXPECT_TRUE(talkText(m_client).contains(QStringLiteral("has not lifted any yet")));
}

TEST_F(DirectionChangesTest, LoadsOfTheTableAreThoseOfTheEquipment)
{
    DirectionOffer offer = m_client.offer(Direction::Strength);
    offer.singles.front() = {base::Load::fromCenti(10000), true};
    const auto rows = mainLiftRows(m_client, offer.plan, offer.singles);
    ASSERT_EQ(rows.size(), 2U);
    EXPECT_EQ(rows[0].lift, QStringLiteral("Back squat"));
    EXPECT_TRUE(rows[0].now.startsWith(QStringLiteral("45 kg, ")) || rows[0].now.contains(QStringLiteral(" kg, "))) << rows[0].now.toStdString();
    EXPECT_TRUE(rows[0].phases[0].contains(QStringLiteral(" × 4 at 80"))) << rows[0].phases[0].toStdString();
    EXPECT_TRUE(rows[0].phases[3].contains(QStringLiteral("about "))) << rows[0].phases[3].toStdString();
    EXPECT_EQ(rows[1].now, QStringLiteral("on hold"));
    offer.singles.front() = {};
    EXPECT_TRUE(mainLiftRows(m_client, offer.plan, offer.singles)[0].phases[0].endsWith(QStringLiteral(" %")));
}

}  // namespace chalk::ui::direction
