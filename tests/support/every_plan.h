#pragma once

#include "core/week/week_problem.h"

#include <array>
#include <optional>
#include <vector>

namespace chalk::test {

/// Tries every plan of a tiny week (see tinyWeek) that keeps the rules, and shares no code with what it judges.
class EveryPlan {
public:
    explicit EveryPlan(const week::WeekProblem& problem);

    /// What the cheapest plan costs.
    [[nodiscard]] long cheapest();
    /// Plans that were looked at.
    [[nodiscard]] long count() const { return m_count; }

private:
    static constexpr int kDays = 3;
    static constexpr int kFirst = 420;  ///< minute of the first slot of a day
    static constexpr int kSlots = 6;

    struct Way {
        std::size_t coach = 0;
        int day = 0;
        int slot = 0;
        int cost = 0;
    };
    struct Cell {
        int workMinutes = 0;
        int sessions = 0;
        std::array<int, 4> ofGroup{};  ///< sessions by their maxGroup
    };

    [[nodiscard]] int workMinutes(std::size_t coach, int day, int slot) const;
    [[nodiscard]] std::vector<Way> waysOf(std::size_t session) const;
    [[nodiscard]] bool isOpenTo(std::size_t session, const Way& way) const;
    [[nodiscard]] int costOf(std::size_t session, const Way& way) const;
    [[nodiscard]] int slotsOf(std::size_t session) const;
    [[nodiscard]] bool fits(std::size_t session, const Way& way) const;
    [[nodiscard]] bool isApart(std::size_t session, std::size_t other, const Way& way) const;
    void count(std::size_t session, const Way& way, int change);
    void tryFrom(std::size_t session, long cost);
    [[nodiscard]] long dayCosts() const;
    [[nodiscard]] long successiveCosts() const;

    const week::WeekProblem& m_problem;
    std::vector<std::vector<Way>> m_ways;
    std::vector<std::optional<Way>> m_taken;
    std::array<std::array<std::array<Cell, kSlots>, kDays>, 2> m_cells{};
    std::array<std::array<int, kSlots>, kDays> m_rackRoom{};
    long m_cheapest = 0;
    long m_count = 0;
};

}  // namespace chalk::test
