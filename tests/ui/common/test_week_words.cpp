#include "ui/common/week_words.h"

#include <QRegularExpression>
#include <QSet>

#include <gtest/gtest.h>

namespace chalk::ui::common {

using week::BlockCount;
using week::BlockedSlot;
using week::Contradiction;
using week::ContradictionKind;
using week::LeftOver;
using week::PlanFault;
using week::PlanRule;
using week::Slot;
using week::SlotBlock;
using week::WayKind;
using week::WayOut;

constexpr int kThursdayHalfPastFive = 3 * week::kDayMinutes + 17 * 60 + 30;

class WeekWordsTest : public ::testing::Test {
protected:
    WeekWordsTest()
    {
        m_problem.stations = {{"rack", 2, {}}};
        m_problem.coaches.resize(2);
        m_problem.clients.resize(2);
        m_problem.sessions.resize(3);
        m_problem.sessions[1].client = 1;
        m_left.candidates = 200;
        m_left.blocks = {count(SlotBlock::StudioClosed, 100), count(SlotBlock::CoachAway, 69)};
    }

    [[nodiscard]] static BlockCount count(SlotBlock block, int times)
    {
        BlockCount one;
        one.block = block;
        one.count = times;
        one.example.block = block;
        one.example.station = block == SlotBlock::Stations ? std::optional<std::size_t>(0) : std::nullopt;
        return one;
    }

    [[nodiscard]] QString why() const { return whyLeftOver(m_left, m_problem, m_names); }
    [[nodiscard]] QString blockedText(SlotBlock block, std::optional<std::size_t> station = {}) const
    {
        return sentenceFor(BlockedSlot{block, station, {1}, kThursdayHalfPastFive, 4, 3}, Slot{0, kThursdayHalfPastFive}, m_problem.sessions[0], m_names);
    }

    week::WeekProblem m_problem;
    WeekNames m_names{{QStringLiteral("Tomasz"), QStringLiteral("Sefa")}, {QStringLiteral("Ines"), QStringLiteral("Tobias")}, {QStringLiteral("rack")}};
    LeftOver m_left;
};

TEST_F(WeekWordsTest, SayTheTwoLargestGroupsOfTheTimesThatCoachesWork)
{
    m_left.blocks.push_back(count(SlotBlock::ClientAway, 20));
    m_left.blocks.push_back(count(SlotBlock::Group, 3));
    m_left.blocks.push_back(count(SlotBlock::Stations, 8));
    EXPECT_EQ(why(), QStringLiteral("Of 31 times, 20 are outside the hours of Tomasz and 8 have no rack free."));
    m_problem.sessions[0].standing = Slot{0, kThursdayHalfPastFive};
    EXPECT_EQ(why(), QStringLiteral("Wants Thu 17:30. Of 31 times, 20 are outside the hours of Tomasz and 8 have no rack free."));
}

TEST_F(WeekWordsTest, SayTheRecoveryWhereItIsInTheWay)
{
    m_left.blocks.push_back(count(SlotBlock::LastWeek, 1));
    m_left.blocks.push_back(count(SlotBlock::OwnSessions, 30));
    EXPECT_EQ(why(), QStringLiteral("Needs 48 hours between sessions. Of 31 times, 30 are too near to another session of Tomasz and 1 is too near to last week’s session."));
    m_problem.clients[0].recovery.kind = week::RecoveryKind::RestDay;
    EXPECT_TRUE(why().startsWith(QStringLiteral("Needs a day of rest between sessions. Of 31 times")));
}

TEST_F(WeekWordsTest, SayOneAndManyAndNone)
{
    m_left.blocks.push_back(count(SlotBlock::Group, 1));
    m_left.candidates = 170;
    EXPECT_EQ(why(), QStringLiteral("Of 1 time, 1 is full."));
    m_left.free = 1;
    m_left.candidates = 171;
    EXPECT_EQ(why(), QStringLiteral("Of 2 times, 1 would fit and 1 is full."));
    m_left = {};
    m_left.candidates = 5;
    m_left.blocks = {count(SlotBlock::CoachAway, 5)};
    EXPECT_EQ(why(), QStringLiteral("None of the coaches whom Tomasz goes to works in the opening hours."));
}

TEST_F(WeekWordsTest, SayWhyASlotCannotBe)
{
    EXPECT_EQ(blockedText(SlotBlock::Group), QStringLiteral("Ines would have 4 together at Thu 17:30; the most is 3."));
    EXPECT_EQ(blockedText(SlotBlock::Stations, 0), QStringLiteral("No rack is free at Thu 17:30."));
    EXPECT_EQ(blockedText(SlotBlock::CoachAway), QStringLiteral("Ines does not work at Thu 17:30."));
    QSet<QString> all;
    for (int block = 0; block < week::kSlotBlockCount; ++block) {
        const bool isOfStation = static_cast<SlotBlock>(block) == SlotBlock::Stations;
        const QString text = blockedText(static_cast<SlotBlock>(block), isOfStation ? std::optional<std::size_t>(0) : std::nullopt);
        EXPECT_FALSE(text.contains(QLatin1Char('%')) || text.isEmpty()) << block;
        all.insert(text);
    }
    EXPECT_EQ(all.size(), week::kSlotBlockCount - 1) << "what is full is full, locked or not";
}

TEST_F(WeekWordsTest, SayWhatIsWrongWithAPlan)
{
    PlanFault fault{PlanRule::StationUnits, {0, 1, 2}, {}, 0, {}, kThursdayHalfPastFive, kThursdayHalfPastFive + 60, 300, 200};
    EXPECT_EQ(sentenceFor(fault, m_problem, m_names), QStringLiteral("3 need a rack at Thu 17:30, there are 2."));
    fault.sessions = {0};
    fault.there = 0;
    EXPECT_EQ(sentenceFor(fault, m_problem, m_names), QStringLiteral("1 needs a rack at Thu 17:30, there is none."));
    fault = {PlanRule::RecoveryTime, {0}, {}, {}, 0, kThursdayHalfPastFive, kThursdayHalfPastFive + 60, 48 * 60, 24 * 60};
    EXPECT_EQ(sentenceFor(fault, m_problem, m_names), QStringLiteral("Tomasz has 24 hours before Thu 17:30, and needs 48."));
    QSet<QString> all;
    for (int rule = 0; rule < week::kPlanRuleCount; ++rule) {
        const QString text = sentenceFor(PlanFault{static_cast<PlanRule>(rule), {0, 1}, 0, 0, {}, kThursdayHalfPastFive, 0, 120, 60}, m_problem, m_names);
        EXPECT_FALSE(text.contains(QLatin1Char('%'))) << text.toStdString();
        EXPECT_TRUE(text.endsWith(QLatin1Char('.'))) << rule;
        all.insert(text);
    }
    EXPECT_EQ(all.size(), week::kPlanRuleCount);
}

TEST_F(WeekWordsTest, OfferWhatAWayAsksFor)
{
    const auto offer = [&](WayOut way) {
        way.slot = Slot{1, kThursdayHalfPastFive};
        return offerText(way, m_problem, 0, m_names);
    };
    EXPECT_EQ(offer({.kind = WayKind::FitsNow}), QStringLiteral("Offer Thu 17:30 with Tobias"));
    EXPECT_EQ(offer({.kind = WayKind::WiderHours, .minutes = 30}), QStringLiteral("Ask Tomasz for 30 minutes more: Thu 17:30 with Tobias"));
    EXPECT_EQ(offer({.kind = WayKind::OtherCoach, .coach = 1}), QStringLiteral("Ask Tobias: Thu 17:30"));
    EXPECT_EQ(offer({.kind = WayKind::ShorterSession, .minutes = 45}), QStringLiteral("Make it 45 minutes: Thu 17:30 with Tobias"));
    EXPECT_EQ(offer({.kind = WayKind::MoreUnits, .station = 0}), QStringLiteral("With one more rack: Thu 17:30 with Tobias"));
    EXPECT_EQ(offer({.kind = WayKind::LargerGroup, .client = 1}), QStringLiteral("Let Sefa share with one more: Thu 17:30 with Tobias"));
    EXPECT_EQ(offer({.kind = WayKind::LargerCapacity, .coach = 0}), QStringLiteral("Let Ines take one more: Thu 17:30 with Tobias"));
    EXPECT_EQ(offer({.kind = WayKind::MoveAnother, .moved = 1, .movedTo = Slot{0, 600}}), QStringLiteral("Move Sefa to Mon 10:00 with Ines: Thu 17:30 with Tobias"));
    EXPECT_EQ(offer({.kind = WayKind::OneFewer}), QStringLiteral("Leave at 1 this week"));
    m_problem.sessions.pop_back();
    EXPECT_EQ(offer({.kind = WayKind::OneFewer}), QStringLiteral("Leave out this week"));
}

TEST_F(WeekWordsTest, SayWhatNoPlanCanKeep)
{
    QSet<QString> all;
    for (int kind = 0; kind < week::kContradictionKindCount; ++kind) {
        Contradiction found{static_cast<ContradictionKind>(kind), 0, 0, 0, {}, 3, 2};
        found.fault = PlanFault{PlanRule::CoachAway, {0}, 1, {}, {}, kThursdayHalfPastFive, 0, 0, 0};
        const QString text = sentenceFor(found, m_problem, m_names);
        EXPECT_FALSE(text.contains(QLatin1Char('%'))) << text.toStdString();
        EXPECT_TRUE(text.endsWith(QLatin1Char('.'))) << kind;
        EXPECT_FALSE(text.contains(QRegularExpression(QStringLiteral("\\b(he|she|her|his|him|they|their)\\b")))) << text.toStdString();
        all.insert(text);
    }
    EXPECT_EQ(all.size(), week::kContradictionKindCount);
    EXPECT_TRUE(all.contains(QStringLiteral("Locked, but not possible: Tobias does not work at Thu 17:30.")));
    EXPECT_TRUE(all.contains(QStringLiteral("Tomasz has 3 sessions, and the hours leave room for 2.")));
}

}  // namespace chalk::ui::common
