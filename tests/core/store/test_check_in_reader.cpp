#include "core/store/check_in_reader.h"

#include "core/checkin/lift_evidence.h"
#include "core/checkin/lift_log.h"
#include "core/exchange/catalogue_json.h"
#include "core/store/client_reader.h"
#include "core/store/lift_log_codec.h"
#include "tests/support/small_studio.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace chalk::store {

class CheckInReaderTest : public ::testing::Test {
protected:
    checkin::ClientEvidence pageOf(const std::string& name, int daysLater = 0)
    {
        return CheckInReader(m_studio.database(), m_catalogue).page(test::clientNamed(m_studio.database(), name), test::smallStudioDay() + daysLater).value();
    }
    std::string nameOfFirst() { return ClientReader(m_studio.database()).names()->front().second; }

    const lifts::Catalogue m_catalogue = exchange::builtInCatalogue();
    test::StudioOnTest m_studio;
};

TEST_F(CheckInReaderTest, SaysWhoTheClientIsAndWhatWeeksAreLookedAt)
{
    const auto page = pageOf(nameOfFirst());
    EXPECT_EQ(page.name, nameOfFirst());
    EXPECT_FALSE(page.coachName.empty());
    EXPECT_EQ(page.days, checkin::checkInDays(test::smallStudioDay()));
    EXPECT_GT(page.nextReview, test::smallStudioDay());
    EXPECT_TRUE(page.history.empty());
}

TEST_F(CheckInReaderTest, LiftsStandByPatternWithTheirChoices)
{
    const auto page = pageOf(nameOfFirst());
    ASSERT_EQ(page.lifts.size(), 3U);
    EXPECT_TRUE(std::is_sorted(page.lifts.begin(), page.lifts.end(), [](const auto& a, const auto& b) { return a.pattern < b.pattern; }));
    for (const checkin::LiftEvidence& lift : page.lifts) {
        EXPECT_EQ(lift.name, m_catalogue.find(lift.exerciseKey)->name);
        ASSERT_FALSE(lift.choices.empty());
        EXPECT_TRUE(lift.choices.front().isSuggested);
    }
    // The hinge was painful, 5 of 10: it is on hold, and the worst finding.
    const auto hinge = std::find_if(page.lifts.begin(), page.lifts.end(), [](const auto& lift) { return lift.pattern == lifts::Pattern::Hinge; });
    EXPECT_TRUE(hinge->isOnHold);
    EXPECT_EQ(page.finding, (checkin::Finding{checkin::FindingKind::Pain, hinge->lift, 0}));
    EXPECT_EQ(hinge->pain, (std::vector<checkin::PainMark>{{test::smallStudioDay() - 14, 5}}));
}

TEST_F(CheckInReaderTest, SwapsAreWhatTheStudioHas)
{
    const auto page = pageOf(nameOfFirst());
    const checkin::LiftEvidence& squat = page.lifts.front();
    ASSERT_EQ(squat.pattern, lifts::Pattern::Squat);
    int swaps = 0;
    for (const checkin::Choice& choice : squat.choices) {
        if (choice.kind == checkin::ChoiceKind::Swap) {
            ++swaps;
            ASSERT_NE(m_catalogue.find(choice.exerciseKey), nullptr);
            EXPECT_EQ(m_catalogue.find(choice.exerciseKey)->pattern, lifts::Pattern::Squat);
        }
    }
    EXPECT_GE(swaps, 1);
}

TEST_F(CheckInReaderTest, TheLogThatIsKeptIsJudgedAsTheReplayIs)
{
    const auto page = pageOf(nameOfFirst());
    for (const checkin::LiftEvidence& lift : page.lifts) {
        Statement row(m_studio.database(), QStringLiteral("SELECT log FROM lift_log WHERE lift_id = ?"));
        ASSERT_TRUE(row.run(lift.lift) && row.next());
        const auto kept = loggedIn(row.bytes(0)).value();
        EventLog log(m_studio.database());
        std::vector<progression::Event> events;
        for (const LogEntry& entry : log.presentEntries(lift.lift)) {
            events.push_back(entry.event);
        }
        EXPECT_EQ(kept.size(), checkin::logOf(LiftCache(m_studio.database(), log).readFresh(lift.lift)->machine, events).size());
    }
}

TEST_F(CheckInReaderTest, SessionsAreThoseThatAreOverByDate)
{
    const auto page = pageOf(nameOfFirst());
    EXPECT_TRUE(std::is_sorted(page.attendance.begin(), page.attendance.end(), [](const auto& a, const auto& b) { return a.date < b.date; }));
    for (const checkin::AttendanceMark& mark : page.attendance) {
        EXPECT_FALSE(sessions::isOpen(mark.state));
        EXPECT_LE(mark.date, test::smallStudioDay());
    }
    EXPECT_FALSE(page.attendance.empty());
}

TEST_F(CheckInReaderTest, AForecastOrWhatIsMissingOfTheClientsOwnLifts)
{
    const auto page = pageOf(nameOfFirst());
    CheckInReader reader(m_studio.database(), m_catalogue);
    const auto forecast = reader.forecast(page.client, page.lifts.front().lift, test::smallStudioDay());
    ASSERT_TRUE(forecast);
    ASSERT_FALSE(*forecast) << "four loaded exposures are too few";
    EXPECT_EQ(forecast->error().why, checkin::NoForecast::FewExposures);
    const auto strange = reader.forecast(page.client, base::LiftId(999), test::smallStudioDay());
    ASSERT_FALSE(strange);
    EXPECT_EQ(strange.error().kind, StoreError::Kind::Refused);
    EXPECT_FALSE(reader.page(base::ClientId(999), test::smallStudioDay()));
}

}  // namespace chalk::store
