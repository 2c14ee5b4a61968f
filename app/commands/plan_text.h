#pragma once

#include "core/week/week_problem.h"
#include "ui/common/week_words.h"

#include <QJsonArray>
#include <QString>
#include <QTextStream>

#include <cstddef>
#include <vector>

namespace chalk::app {

/// A plan in words: the days with each coach's sessions in their order, what is left over, what contradicts itself, and what it costs.
class PlanText {
public:
    /// Both outlive it; `plan` is one of `problem`.
    PlanText(const week::WeekProblem& problem, const week::WeekPlan& plan);

    void writeDays(QTextStream& out) const;
    /// Each session that has no place, why, and the cheapest ways out.
    void writeLeftOver(QTextStream& out) const;
    /// What no plan can keep.
    void writeContradictions(QTextStream& out) const;
    void writeObjective(QTextStream& out, const week::Objective& objective) const;

    /// An object for each session that has no place: `session`, `why`, `ways_out`.
    [[nodiscard]] QJsonArray leftOverJson() const;
    [[nodiscard]] QJsonArray contradictionsJson() const;

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
    ui::common::WeekNames m_names;  ///< by their ids
};

}  // namespace chalk::app
