#include "core/lifts/repetition_chart.h"

#include "core/analysis/maximum_formula.h"
#include "tests/support/table_file.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace chalk::test {

namespace {

using base::Load;
using base::Milli;
using base::Reps;

Load pounds(int lb)
{
    return Load::fromCenti(100 * lb);
}

}  // namespace

TEST(RepetitionChart, IsThePrintedOne)
{
    for (const TableRow& row : readTable("reference/repetition_chart.csv")) {
        EXPECT_EQ(lifts::chartShare(Reps(numberIn(row, "reps"))), Milli(10 * numberIn(row, "percent"))) << row.at("reps");
    }
    EXPECT_FALSE(lifts::chartShare(Reps(0)).has_value());
    EXPECT_FALSE(lifts::chartShare(Reps(11)).has_value());
}

TEST(RepetitionChart, TheFormulasLieAroundIt)
{
    for (const TableRow& row : readTable("reference/repetition_chart.csv")) {
        const int reps = numberIn(row, "reps");
        std::vector<double> shares;
        for (const analysis::Formula formula : analysis::kFormulas) {
            shares.push_back(100 * publishedShare(reps, formula));
        }
        const auto [lowest, highest] = std::minmax_element(shares.begin(), shares.end());
        EXPECT_LE(*lowest, numberIn(row, "percent")) << reps;
        EXPECT_GE(*highest, numberIn(row, "percent")) << reps;
    }
}

TEST(RepetitionChart, LoadsAreThoseOfTheWorkedScenarios)
{
    for (const TableRow& row : readTable("reference/worked_loads.csv")) {
        const auto load = row.at("kind") == "share" ? lifts::shareOfLoad : lifts::wholeOfShare;
        EXPECT_EQ(load(pounds(numberIn(row, "input_lb")), Milli(numberIn(row, "milli")), pounds(numberIn(row, "step_lb"))),
                  pounds(numberIn(row, "printed_lb")))
            << row.at("case");
    }
}

TEST(RepetitionChart, AHalfRoundsUp)
{
    EXPECT_EQ(lifts::shareOfLoad(pounds(205), Milli(500), pounds(5)), pounds(105)) << "102.5 lies between 100 and 105";
    EXPECT_EQ(lifts::shareOfLoad(pounds(204), Milli(500), pounds(5)), pounds(100));
    EXPECT_EQ(lifts::wholeOfShare(pounds(0), Milli(930), pounds(5)), pounds(0));
}

}  // namespace chalk::test
