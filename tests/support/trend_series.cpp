#include "tests/support/trend_series.h"

#include "tests/support/table_file.h"

#include <rapidcheck.h>

#include <algorithm>
#include <cmath>

namespace chalk::test {

std::map<std::string, std::vector<analysis::TrendPoint>> trendSeries()
{
    std::map<std::string, std::vector<analysis::TrendPoint>> series;
    for (const TableRow& row : readTable("reference/trend_series.csv")) {
        series[row.at("name")].push_back({realIn(row, "time"), realIn(row, "value")});
    }
    return series;
}

std::vector<analysis::TrendPoint> inTurn(const std::vector<double>& values)
{
    std::vector<analysis::TrendPoint> points;
    for (const double value : values) {
        points.push_back({static_cast<double>(points.size()), value});
    }
    return points;
}

std::vector<analysis::TrendPoint> anySeries(int fewest, int most)
{
    const int count = *rc::gen::inRange(fewest, most + 1);
    std::vector<analysis::TrendPoint> points;
    double time = 0;
    for (int i = 0; i < count; ++i) {
        time += *rc::gen::inRange(1, 10);
        points.push_back({time, static_cast<double>(*rc::gen::inRange(-8, 9))});
    }
    return points;
}

bool isNear(double a, double b, double share)
{
    return std::abs(a - b) <= share * std::max({std::abs(a), std::abs(b), 1.0});
}

}  // namespace chalk::test
