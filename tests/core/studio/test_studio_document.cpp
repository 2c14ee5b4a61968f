#include "core/studio/studio_document.h"

#include "tests/support/small_studio.h"

#include <gtest/gtest.h>

namespace chalk::studio {

TEST(StudioDocument, SlidesByWholeWeeksAcrossYears)
{
    // To the last Tuesday of the 53-week year 2026 and well past it: five and forty weeks.
    for (const char* day : {"2026-12-29", "2027-08-31", "2026-11-26", "2025-01-01"}) {
        StudioDocument document = test::smallStudio();
        const auto before = document;
        const base::Date today = *base::Date::parse(day);
        slideTo(document, today);
        const int moved = document.clients[0].sessions[0].date - before.clients[0].sessions[0].date;
        EXPECT_EQ(moved % 7, 0) << day;
        EXPECT_EQ(document.clients[0].sessions.back().date.isoWeek(), today.isoWeek()) << day;
        EXPECT_EQ(document.clients[0].lifts[1].events[2].event.date - before.clients[0].lifts[1].events[2].event.date, moved);
        EXPECT_EQ(document.clients[0].client.birthDate, before.clients[0].client.birthDate);
        EXPECT_EQ(document.today, today);
    }
}

TEST(StudioDocument, FormerVersionsSlideWithTheirEntry)
{
    StudioDocument document = test::smallStudio();
    DocumentEvent& entry = document.clients[0].lifts[1].events[2];
    entry.former = {entry.event};
    slideTo(document, document.today + 70);
    EXPECT_EQ(entry.former[0].date, entry.event.date);
    EXPECT_EQ(entry.event.date, document.today - 28);
}

TEST(StudioDocument, CountingEventsAreByDateAndWithoutWhatWasTakenBack)
{
    DocumentLift lift = test::smallStudio().clients[0].lifts[1];
    std::swap(lift.events[1], lift.events[4]);
    lift.events[2].isTakenBack = true;
    const auto events = countingEvents(lift);
    ASSERT_EQ(events.size(), 4U);
    for (std::size_t i = 1; i < events.size(); ++i) {
        EXPECT_LE(events[i - 1].date, events[i].date);
        EXPECT_NE(events[i].date, lift.events[2].event.date);
    }
}

TEST(StudioDocument, RewindingUndoesWhatWasDoneLater)
{
    StudioDocument document = test::smallStudio();
    const base::Date lastWeek = document.today - 7;  // of the session S2 at 09:00, recorded
    rewindTo(document, lastWeek, 8 * 60 + 40);
    const DocumentClient& ada = document.clients[0];
    EXPECT_EQ(document.today, lastWeek);
    EXPECT_EQ(ada.sessions[2].state, sessions::SessionState::Printed);
    EXPECT_EQ(ada.sessions[3].state, sessions::SessionState::Planned);
    EXPECT_EQ(ada.lifts[1].events.size(), 4U);

    StudioDocument later = test::smallStudio();
    rewindTo(later, lastWeek, 9 * 60 + 1);
    EXPECT_EQ(later.clients[0].sessions[2].state, sessions::SessionState::Recorded);
    EXPECT_EQ(later.clients[0].lifts[1].events.size(), 5U);
}

TEST(StudioDocument, RewindingTakesAwayWhatWasSaidOfSessionsAhead)
{
    StudioDocument document = test::smallStudio();
    document.clients[0].reports = {{"S1", {{}, {}, {}, 70, 60, {}}}, {"S2", {{}, {}, {}, 80, 60, {}}}};
    rewindTo(document, document.today - 7, 8 * 60 + 40);
    ASSERT_EQ(document.clients[0].reports.size(), 1U);
    EXPECT_EQ(document.clients[0].reports.begin()->first, "S1");
}

TEST(StudioDocument, RewindingTakesAwayLiftsThatHadNotBegun)
{
    StudioDocument document = test::smallStudio();
    rewindTo(document, document.today - 35, 0);
    ASSERT_EQ(document.clients[0].lifts.size(), 1U);  // the squat; the others began later
    EXPECT_EQ(document.clients[0].lifts[0].pattern, lifts::Pattern::Squat);
}

}  // namespace chalk::studio
