#include "core/clients/screening.h"

#include <gtest/gtest.h>

#include <fstream>
#include <map>
#include <sstream>
#include <vector>

namespace chalk::clients {

namespace {

struct PrintedCase {
    ScreeningFacts facts;
    std::string outcome;
};

/// The table of Riebe et al. 2015 (Med Sci Sports Exerc 47:2473-2479), a row a case.
std::vector<PrintedCase> printedCases()
{
    std::ifstream file(CHALKRUNG_TEST_DATA "/norms/screening_riebe_2015.csv");
    std::vector<PrintedCase> cases;
    std::string line;
    std::getline(file, line);
    while (std::getline(file, line)) {
        std::istringstream fields(line);
        std::array<std::string, 4> facts;
        for (std::string& fact : facts) {
            std::getline(fields, fact, ',');
        }
        std::string outcome;
        std::getline(fields, outcome);
        std::erase(outcome, '"');
        std::erase(outcome, '\r');
        cases.push_back({{facts[0] == "1", facts[1] == "1", facts[2] == "1", intensityOf(facts[3]).value()}, outcome});
    }
    return cases;
}

const std::map<std::string, ScreeningAdvice>& adviceByWords()
{
    static const std::map<std::string, ScreeningAdvice> words{
        {"clearance not necessary; start light-moderate, progress", ScreeningAdvice::StartLightly},
        {"clearance not necessary; continue or progress", ScreeningAdvice::ContinueOrProgress},
        {"clearance not necessary; continue", ScreeningAdvice::Continue},
        {"clearance recommended before starting", ScreeningAdvice::ClearBeforeStarting},
        {"clearance recommended before starting; afterwards light-moderate then progress", ScreeningAdvice::ClearThenStartLightly},
        {"clearance recommended before vigorous", ScreeningAdvice::ClearBeforeVigorous},
        {"STOP exercise and seek clearance", ScreeningAdvice::StopAndClear}};
    return words;
}

}  // namespace

TEST(Screening, DecidesEveryCaseOfThePublishedTable)
{
    const auto cases = printedCases();
    ASSERT_EQ(cases.size(), 24U);
    for (const PrintedCase& one : cases) {
        EXPECT_EQ(adviceFor(one.facts), adviceByWords().at(one.outcome)) << one.outcome;
    }
}

TEST(Screening, BlocksLoadedWorkWhereverTheTableRecommendsClearanceOrSaysStop)
{
    for (const PrintedCase& one : printedCases()) {
        const bool isBlocked = one.outcome.find("recommended") != std::string::npos || one.outcome.find("STOP") != std::string::npos;
        EXPECT_EQ(isClearanceAdvised(adviceFor(one.facts)), isBlocked) << one.outcome;
    }
}

TEST(Screening, HasAKeyForEverything)
{
    EXPECT_EQ(keyOf(ScreeningAdvice::StartLightly), "start_lightly");
    EXPECT_EQ(keyOf(ScreeningAdvice::StopAndClear), "stop_and_clear");
    EXPECT_EQ(intensityOf(keyOf(Intensity::Vigorous)), Intensity::Vigorous);
    EXPECT_EQ(intensityOf("hard"), std::nullopt);
}

}  // namespace chalk::clients
