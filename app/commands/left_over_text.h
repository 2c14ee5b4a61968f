#pragma once

#include "core/week/left_over.h"
#include "ui/common/week_words.h"

#include <QStringList>

namespace chalk::app {

/// Of a session that has no place.
struct LeftOverText {
    QString why;
    QStringList waysOut;  ///< the cheapest first
};

[[nodiscard]] LeftOverText leftOverText(const week::WeekProblem& problem, const week::WeekPlan& plan, const week::LeftOver& left, const ui::common::WeekNames& names);

}  // namespace chalk::app
