#include "core/analysis/mann_kendall.h"

#include "core/analysis/normal_distribution.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <vector>

namespace chalk::analysis {

namespace {

/// How often each number is there.
std::vector<std::int64_t> groupsOf(std::vector<double> numbers)
{
    std::sort(numbers.begin(), numbers.end());
    std::vector<std::int64_t> groups;
    for (std::size_t i = 0; i < numbers.size(); ++i) {
        if (i == 0 || numbers[i] != numbers[i - 1]) {
            groups.push_back(0);
        }
        ++groups.back();
    }
    return groups;
}

std::vector<double> numbersOf(std::span<const TrendPoint> points, double TrendPoint::* number)
{
    std::vector<double> numbers;
    for (const TrendPoint& point : points) {
        numbers.push_back(point.*number);
    }
    return numbers;
}

/// Sums over the groups of equal numbers, each with t members.
struct Ties {
    double pairs = 0;    ///< Σ t (t - 1)
    double triples = 0;  ///< Σ t (t - 1) (t - 2)
    double spread = 0;   ///< Σ t (t - 1) (2t + 5)
};

Ties tiesOf(std::span<const std::int64_t> groups)
{
    Ties ties;
    for (const std::int64_t group : groups) {
        const auto t = static_cast<double>(group);
        ties.pairs += t * (t - 1);
        ties.triples += t * (t - 1) * (t - 2);
        ties.spread += t * (t - 1) * (2 * t + 5);
    }
    return ties;
}

int signOf(double difference)
{
    return (difference > 0) - (difference < 0);
}

std::int64_t scoreOf(std::span<const TrendPoint> points)
{
    std::int64_t score = 0;
    for (std::size_t i = 0; i < points.size(); ++i) {
        for (std::size_t j = i + 1; j < points.size(); ++j) {
            score += signOf(points[j].time - points[i].time) * signOf(points[j].value - points[i].value);
        }
    }
    return score;
}

double varianceOf(double n, const Ties& times, const Ties& values)
{
    return (n * (n - 1) * (2 * n + 5) - times.spread - values.spread) / 18 + times.pairs * values.pairs / (2 * n * (n - 1)) +
           times.triples * values.triples / (9 * n * (n - 1) * (n - 2));
}

/// Multiplies a polynomial, lowest power first, by 1 + q + … + q^(size - 1).
std::vector<std::int64_t> timesRun(const std::vector<std::int64_t>& powers, std::size_t size)
{
    std::vector<std::int64_t> product(powers.size() + size - 1, 0);
    for (std::size_t i = 0; i < powers.size(); ++i) {
        for (std::size_t j = 0; j < size; ++j) {
            product[i + j] += powers[i];
        }
    }
    return product;
}

/// Divides by 1 + q + … + q^(size - 1), which leaves nothing over.
std::vector<std::int64_t> overRun(const std::vector<std::int64_t>& powers, std::size_t size)
{
    std::vector<std::int64_t> quotient(powers.size() - (size - 1), 0);
    for (std::size_t i = 0; i < quotient.size(); ++i) {
        quotient[i] = powers[i];
        for (std::size_t j = 1; j < size && j <= i; ++j) {
            quotient[i] -= quotient[i - j];
        }
    }
    return quotient;
}

/// In how many orders of the values so many pairs fall: the coefficients of the q-multinomial, which count the inversions of the orders
/// of a multiset. They sum to at most 20!, so they are exact.
std::vector<std::int64_t> ordersByFalls(std::span<const std::int64_t> groups)
{
    std::vector<std::int64_t> orders{1};
    std::size_t placed = 0;
    for (const std::int64_t group : groups) {
        for (std::size_t inGroup = 1; inGroup <= static_cast<std::size_t>(group); ++inGroup) {
            orders = overRun(timesRun(orders, ++placed), inGroup);
        }
    }
    return orders;
}

}  // namespace

std::optional<double> exactUpperTail(std::span<const double> values, std::int64_t score)
{
    if (values.size() > kMostExactPoints) {
        return std::nullopt;
    }
    const std::vector<std::int64_t> orders = ordersByFalls(groupsOf({values.begin(), values.end()}));
    const auto mostRises = static_cast<std::int64_t>(orders.size()) - 1;  // pairs that are not tied
    std::int64_t all = 0;
    std::int64_t atLeast = 0;
    for (std::int64_t falls = 0; falls <= mostRises; ++falls) {
        const std::int64_t count = orders[static_cast<std::size_t>(falls)];
        all += count;
        atLeast += mostRises - 2 * falls >= score ? count : 0;
    }
    return static_cast<double>(atLeast) / static_cast<double>(all);
}

std::optional<MannKendall> mannKendall(std::span<const TrendPoint> points)
{
    const bool isFinite = std::all_of(points.begin(), points.end(), [](const TrendPoint& point) {
        return std::isfinite(point.time) && std::isfinite(point.value);
    });
    if (points.size() < 3 || !isFinite) {
        return std::nullopt;
    }
    const std::vector<double> values = numbersOf(points, &TrendPoint::value);
    const auto timeGroups = groupsOf(numbersOf(points, &TrendPoint::time));
    const auto valueGroups = groupsOf(values);
    if (timeGroups.size() == 1 || valueGroups.size() == 1) {
        return std::nullopt;
    }
    const Ties times = tiesOf(timeGroups);
    const Ties ties = tiesOf(valueGroups);
    const auto n = static_cast<double>(points.size());
    const double twicePairs = n * (n - 1);
    MannKendall test;
    test.score = scoreOf(points);
    const auto score = static_cast<double>(test.score);
    test.variance = varianceOf(n, times, ties);
    test.tauA = 2 * score / twicePairs;
    test.tauB = 2 * score / std::sqrt((twicePairs - times.pairs) * (twicePairs - ties.pairs));
    test.z = (score - signOf(score)) / std::sqrt(test.variance);
    test.chance = std::min(1.0, 2 * normalUpperTail(std::abs(test.z)));
    if (timeGroups.size() == points.size()) {
        const auto tail = exactUpperTail(values, std::abs(test.score));
        test.exactChance = tail ? std::optional(std::min(1.0, 2 * *tail)) : std::nullopt;
    }
    return test;
}

}  // namespace chalk::analysis
