#pragma once

#include "core/week/week_problem.h"

#include <QString>
#include <QTextStream>

#include <cstddef>
#include <vector>

namespace chalk::app {

/// A plan in words: the days with each coach's sessions in their order, what is left over, what contradicts itself, and what it costs.
class PlanText {
public:
    /// All outlive it; `plan` is one of `problem`. `contradictions`: locked sessions that break a rule where they are.
    PlanText(const week::WeekProblem& problem, const week::WeekPlan& plan, const std::vector<std::size_t>& contradictions)
        : m_problem(problem), m_plan(plan), m_contradictions(contradictions)
    {
    }

    void writeDays(QTextStream& out) const;
    /// One line for each session that has no place.
    void writeLeftOver(QTextStream& out) const;
    void writeContradictions(QTextStream& out) const;
    void writeObjective(QTextStream& out, const week::Objective& objective) const;

private:
    void writeCoachDay(QTextStream& out, std::size_t coach, int day) const;
    void writeSession(QTextStream& out, std::size_t session) const;
    [[nodiscard]] std::vector<std::size_t> sessionsOn(std::size_t coach, int day) const;
    /// `Tue 07:00 with C1`.
    [[nodiscard]] QString slotText(const week::Slot& slot) const;
    /// `S017 of K009, 45 min`.
    [[nodiscard]] QString sessionText(std::size_t session) const;

    const week::WeekProblem& m_problem;
    const week::WeekPlan& m_plan;
    const std::vector<std::size_t>& m_contradictions;
};

}  // namespace chalk::app
