#pragma once

#include "core/direction/direction_fit.h"
#include "ui/print/plan_paper.h"

#include <QTextStream>

#include <span>

namespace chalk::app {

/// A plan after the beginner months: its head, the weeks of each lift, intensity and hard sets by week, what leaves the published ranges,
/// and for a strength plan the repetitions by intensity beside the printed ones.
void writePlan(QTextStream& out, const ui::print::PlanPaper& paper);
/// What was planned beside what was done, lift by lift, for weeks that have begun.
void writeComparison(QTextStream& out, const ui::print::PlanPaper& paper);
/// The three directions with what each asks and how it fits.
void writeDirections(QTextStream& out, std::span<const direction::DirectionFit> fits, const direction::FitFacts& facts);

}  // namespace chalk::app
