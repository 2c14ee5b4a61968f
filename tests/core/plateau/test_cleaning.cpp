#include "core/plateau/cleaning.h"

#include "tests/support/logged_lift.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace chalk::plateau {
namespace {

using test::plainLog;

std::string marksOf(const CleanExposure& row)
{
    std::string text;
    for (const EntryMark mark : row.marks) {
        text += (text.empty() ? "" : "|") + std::string(keyOf(mark));
    }
    return text;
}

// The reference's values of every row of 12 lifts.
TEST(Cleaning, MakesOfEachRowWhatTheReferenceMakes)
{
    std::map<test::LiftName, std::vector<CleanExposure>> rows;
    for (const auto& [lift, log] : test::simulatedLogs()) {
        rows[lift] = cleaned(log);
    }
    for (const test::TableRow& wanted : test::readTable("plateau/cleaned.csv")) {
        const std::string place = wanted.at("client") + " " + wanted.at("lift") + " " + wanted.at("date");
        const auto& lift = rows.at(test::liftIn(wanted));
        const auto row = std::find_if(lift.begin(), lift.end(), [&](const auto& one) { return one.date.toString() == wanted.at("date"); });
        ASSERT_NE(row, lift.end()) << place;
        EXPECT_EQ(row->segment, test::numberIn(wanted, "seg")) << place;
        EXPECT_EQ(row->block, test::numberIn(wanted, "block")) << place;
        EXPECT_NEAR(row->index, std::stod(wanted.at("y")), 1e-9) << place;
        EXPECT_NEAR(row->variance, std::stod(wanted.at("var")), 1e-9) << place;
        EXPECT_EQ(row->isUsed, wanted.at("use") == "1") << place;
        EXPECT_EQ(row->isValid, wanted.at("valid") == "1") << place;
        EXPECT_EQ(row->isComplete, wanted.at("complete") == "1") << place;
        EXPECT_EQ(row->isLeverBest, wanted.at("new_best") == "1") << place;
        EXPECT_EQ(marksOf(*row), wanted.at("flags")) << place;
    }
}

TEST(Cleaning, WhatComesLaterChangesNothingBefore)
{
    for (const auto& [lift, log] : test::simulatedLogs()) {
        const auto whole = cleaned(log);
        const auto half = cleaned(std::span(log).first(log.size() / 2));
        for (std::size_t i = 0; i < half.size(); ++i) {
            EXPECT_EQ(half[i].index, whole[i].index) << lift.first << ' ' << i;
            EXPECT_EQ(half[i].marks, whole[i].marks) << lift.first << ' ' << i;
        }
    }
}

TEST(Cleaning, AnotherStageIsABlockAndAnotherVariationASegment)
{
    auto log = plainLog(4);
    log[2].stage = progression::Stage::RepBuild;
    log[3].stage = progression::Stage::RepBuild;
    log[3].variation = "front squat";
    const auto rows = cleaned(log);
    EXPECT_EQ(rows[1].block, 0);
    EXPECT_EQ(rows[2].block, 1);
    EXPECT_EQ(rows[2].segment, 0);
    EXPECT_EQ(rows[3].block, 2);
    EXPECT_EQ(rows[3].segment, 1);
    EXPECT_TRUE(rows[2].isLeverBest && rows[3].isLeverBest);
}

TEST(Cleaning, APlanIsASegmentAndWhatComesAfterItABlock)
{
    auto log = plainLog(4);
    log[1].planSingle = log[2].planSingle = test::loadOf(60);
    const auto rows = cleaned(log);
    EXPECT_EQ(rows[0].segment, 0);
    EXPECT_EQ(rows[1].segment, 1) << "other work: what came before it is no measure of it";
    EXPECT_EQ(rows[2].segment, 1);
    EXPECT_EQ(rows[3].segment, 1);
    EXPECT_EQ(rows[2].block, rows[1].block);
    EXPECT_EQ(rows[3].block, rows[2].block + 1);
}

TEST(Cleaning, AnotherVariationForgetsTheReservesBefore)
{
    auto log = plainLog(3);
    log[0].reserve = 4;
    log[1].reserve = std::nullopt;
    log[2].reserve = std::nullopt;
    log[2].variation = "front squat";
    const auto rows = cleaned(log);
    EXPECT_NEAR(rows[1].index, std::log(40 * (1 + 12.0 / 30)), 1e-12);
    EXPECT_NEAR(rows[2].index, std::log(40 * (1 + 10.5 / 30)), 1e-12);
}

TEST(Cleaning, PainCountsForTheTrendAlone)
{
    auto log = plainLog(2);
    log[1].hasPain = true;
    log[1].targetLoad = log[1].load = test::loadOf(42);
    const auto rows = cleaned(log);
    EXPECT_TRUE(rows[1].isUsed);
    EXPECT_FALSE(rows[1].isValid);
    EXPECT_FALSE(rows[1].isLeverBest);
}

TEST(Cleaning, ASlipOfThePenCountsForTheLeverAlone)
{
    auto log = plainLog(2);
    log[1].load = test::loadOf(400);
    const auto rows = cleaned(log);
    EXPECT_FALSE(rows[1].isUsed);
    EXPECT_TRUE(rows[1].isValid);
    EXPECT_EQ(marksOf(rows[1]), "check_load");
}

TEST(Cleaning, AShakyBestIsNone)
{
    auto log = plainLog(2);
    log[1].isSteady = false;
    log[1].targetLoad = log[1].load = test::loadOf(42);
    EXPECT_FALSE(cleaned(log)[1].isLeverBest);
    log[1].isSteady = true;
    EXPECT_TRUE(cleaned(log)[1].isLeverBest);
}

TEST(Cleaning, TheThirdJumpStartsASegmentOfItsOwn)
{
    auto log = plainLog(9);
    for (std::size_t i = 5; i < log.size(); ++i) {
        log[i].targetLoad = log[i].load = test::loadOf(60);
    }
    const auto rows = cleaned(log);
    EXPECT_EQ(marksOf(rows[5]), "check_jump");
    EXPECT_EQ(marksOf(rows[6]), "check_jump");
    EXPECT_EQ(marksOf(rows[7]), "new_level");
    EXPECT_FALSE(rows[6].isUsed);
    EXPECT_EQ(rows[6].segment, 0);
    EXPECT_TRUE(rows[7].isUsed);
    EXPECT_EQ(rows[7].segment, 1);
    EXPECT_TRUE(rows[7].isLeverBest);
    EXPECT_EQ(rows[8].segment, 1);
    EXPECT_EQ(marksOf(rows[8]), "");
}

TEST(Cleaning, AnUnusedRowBetweenBreaksTheRunOfJumps)
{
    auto log = plainLog(9);
    for (std::size_t i = 5; i < log.size(); ++i) {
        log[i].targetLoad = log[i].load = test::loadOf(60);
    }
    log[7].load = test::loadOf(600);
    const auto rows = cleaned(log);
    EXPECT_EQ(marksOf(rows[7]), "check_load");
    EXPECT_EQ(marksOf(rows[8]), "check_jump");
    EXPECT_EQ(rows[8].segment, 0);
}

TEST(Cleaning, RowsOfOneDayKeepTheirOrder)
{
    auto log = plainLog(2);
    log[1].date = log[0].date;
    const auto rows = cleaned(log);
    ASSERT_EQ(rows.size(), 2U);
    EXPECT_EQ(rows[1].row, 1U);
    EXPECT_TRUE(rows[0].isLeverBest);
    EXPECT_FALSE(rows[1].isLeverBest);
}

}  // namespace
}  // namespace chalk::plateau
