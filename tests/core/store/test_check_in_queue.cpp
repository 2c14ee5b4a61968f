#include "core/checkin/finding.h"
#include "core/exchange/catalogue_json.h"
#include "core/exchange/screen_json.h"
#include "core/simulation/harbour_studio.h"
#include "core/store/check_in_reader.h"
#include "core/store/client_reader.h"
#include "core/store/decision_writer.h"
#include "tests/support/small_studio.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace chalk::store {

namespace {

using checkin::ChoiceKind;
using checkin::FindingKind;
using checkin::QueueEntry;

const base::Date kHarbourDay = *base::Date::parse("2026-11-25");

}  // namespace

/// The demo studio on a Wednesday.
class CheckInQueueTest : public ::testing::Test {
protected:
    static exchange::StudioDocument harbour(const lifts::Catalogue& catalogue)
    {
        auto document = simulation::harbourStudio(catalogue, exchange::builtInScreenCatalogue(catalogue));
        simulation::openOn(document, kHarbourDay);
        return document;
    }

    std::vector<QueueEntry> queueOn(base::Date day) { return CheckInReader(m_studio.database(), m_catalogue).queue(day).value(); }

    const QueueEntry* entryNamed(const std::vector<QueueEntry>& queue, const std::string& name)
    {
        const auto found = std::find_if(queue.begin(), queue.end(), [&name](const QueueEntry& entry) { return entry.name == name; });
        return found == queue.end() ? nullptr : &*found;
    }

    /// Decides to hold, and to look again after so many days.
    void decide(const QueueEntry& entry, base::Date day, int days, ChoiceKind choice = ChoiceKind::Hold)
    {
        checkin::Decision decision;
        decision.client = entry.client;
        decision.day = day;
        decision.about = entry.finding.kind;
        decision.choice = choice;
        decision.nextReview = day + days;
        ASSERT_TRUE(DecisionWriter(m_studio.database(), [] { return test::someMoment(); }).decide(decision, std::nullopt));
    }

    const lifts::Catalogue m_catalogue = exchange::builtInCatalogue();
    test::StudioOnTest m_studio{harbour(m_catalogue)};
};

TEST_F(CheckInQueueTest, EverybodyIsDueInTheOrderOfTheQueueWhereNothingWasDecided)
{
    const auto queue = queueOn(kHarbourDay);
    EXPECT_EQ(queue.size(), ClientReader(m_studio.database()).names()->size());
    EXPECT_TRUE(std::is_sorted(queue.begin(), queue.end(), checkin::isBefore));
    // The scenario has somebody in pain, somebody without clearance and a bench press that does not move.
    EXPECT_EQ(queue.front().finding.kind, FindingKind::Pain);
    for (const FindingKind kind : {FindingKind::Pain, FindingKind::Clearance, FindingKind::Plateau}) {
        EXPECT_TRUE(std::any_of(queue.begin(), queue.end(), [kind](const QueueEntry& entry) { return entry.finding.kind == kind; }));
    }
}

TEST_F(CheckInQueueTest, ThePageFindsWhatTheQueueFinds)
{
    for (int weeks = 0; weeks < 6; ++weeks) {
        const base::Date day = kHarbourDay + 7 * weeks;
        for (const QueueEntry& entry : queueOn(day)) {
            const auto page = CheckInReader(m_studio.database(), m_catalogue).page(entry.client, day);
            ASSERT_TRUE(page) << page.error().message.toStdString();
            EXPECT_EQ(page->finding, entry.finding) << entry.name << " on " << day.toString();
        }
    }
}

TEST_F(CheckInQueueTest, WhatWasDecidedStaysUntilTheWeekIsOverAndComesBackWithTheReview)
{
    const auto queue = queueOn(kHarbourDay);
    const auto plateau = std::find_if(queue.begin(), queue.end(), [](const QueueEntry& entry) { return entry.finding.kind == FindingKind::Plateau; });
    ASSERT_NE(plateau, queue.end());
    decide(*plateau, kHarbourDay, 14);
    const auto same = queueOn(kHarbourDay);
    ASSERT_NE(entryNamed(same, plateau->name), nullptr);
    EXPECT_EQ(entryNamed(same, plateau->name)->decided->nextReview, kHarbourDay + 14);
    EXPECT_NE(entryNamed(queueOn(kHarbourDay + 4), plateau->name), nullptr) << "the Sunday";
    EXPECT_EQ(entryNamed(queueOn(kHarbourDay + 5), plateau->name), nullptr) << "the Monday";
    EXPECT_EQ(entryNamed(queueOn(kHarbourDay + 13), plateau->name), nullptr);
    ASSERT_NE(entryNamed(queueOn(kHarbourDay + 14), plateau->name), nullptr);
    EXPECT_FALSE(entryNamed(queueOn(kHarbourDay + 14), plateau->name)->decided);
}

TEST_F(CheckInQueueTest, PainIsShownWhateverWasAgreedOn)
{
    const QueueEntry pain = queueOn(kHarbourDay).front();
    decide(pain, kHarbourDay, 28);
    const auto later = queueOn(kHarbourDay + 7);
    ASSERT_NE(entryNamed(later, pain.name), nullptr);
    EXPECT_EQ(entryNamed(later, pain.name)->finding.kind, FindingKind::Pain);
}

}  // namespace chalk::store
