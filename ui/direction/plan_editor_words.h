#pragma once

#include "ui/direction/plan_editor_model.h"

#include <QStringList>

namespace chalk::ui::direction {

// What the plan editor says, and how it reads what is typed.

/// Why something cannot be set so, a sentence.
[[nodiscard]] QString editFaultText(EditFault fault);
/// Why a plan cannot be made from wishes, a sentence.
[[nodiscard]] QString wishFaultText(const chalk::direction::WishFault& fault);
/// `estimated`, `tested`, `typed`, `not known`.
[[nodiscard]] QString originText(SingleOrigin origin);

/// A field of an exposure as it stands in its cell: `4`, `6–8`, `82.5`, `3:00`; empty for marks.
[[nodiscard]] QString cellText(const chalk::direction::PlannedWork& work, WorkField field);
/// What was typed into a cell of the field: `6`, `6-8`, `82,5 %`, `3:00`, `180`. What is no number at all is outside of every range.
[[nodiscard]] WorkEdit typedEdit(WorkField field, const QString& text);

/// Departures as sentences with their places, those of weeks on end together: `Back squat, weeks 1–3, day 1: …`.
[[nodiscard]] QStringList departureLines(const PlanEditorModel& model);
/// Repetitions of a lift in a week beside the printed table, a line for each exposure and zone; what lies outside says so.
[[nodiscard]] QStringList zoneLines(const PlanEditorModel& model, std::size_t week, std::size_t lift);
/// Weekly sets of each muscle group that is worked in a week; fewer than ten say so.
[[nodiscard]] QStringList muscleLines(const PlanEditorModel& model, std::size_t week);

}  // namespace chalk::ui::direction
