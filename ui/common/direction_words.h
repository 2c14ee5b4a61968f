#pragma once

#include "core/direction/client_plan.h"
#include "core/direction/direction_fit.h"
#include "core/direction/maximum_test.h"
#include "core/direction/plan_curves.h"
#include "core/direction/rep_zones.h"
#include "core/direction/tested_maximum.h"

#include <QString>
#include <QStringList>

namespace chalk::ui::common {

// How directions, plans and tests of a maximum are written for people: in one place, so that page, paper and command line agree.

/// `Strength`.
[[nodiscard]] QString directionName(chalk::direction::Direction direction);
/// What a direction is, two short sentences: `Heavier, fewer reps. One main lift a day.`
[[nodiscard]] QString directionText(chalk::direction::Direction direction);
/// `from week to week`, `from session to session`.
[[nodiscard]] QString waveName(chalk::direction::Wave wave);
/// `Base`.
[[nodiscard]] QString phaseName(chalk::direction::Phase phase);
/// `work`, `lighter`, `test`.
[[nodiscard]] QString weekKindName(chalk::direction::WeekKind kind);
/// `Main lift`, `Assistance`, `Upkeep`.
[[nodiscard]] QString liftRoleName(chalk::direction::LiftRole role);
/// `Quadriceps`.
[[nodiscard]] QString muscleGroupName(chalk::direction::MuscleGroup group);

/// A note on a direction, as short as a card has room for: `Fits 3 days a week`, `Wants 4 days`. `sessionsAWeek` is the client's number.
[[nodiscard]] QString fitNoteText(chalk::direction::FitNote note, chalk::direction::Direction direction, int sessionsAWeek);
/// Whether the note speaks for the direction; the others are to be looked at.
[[nodiscard]] bool isGoodNote(chalk::direction::FitNote note);
/// Why the direction is suggested, or why none is, in a sentence or two.
[[nodiscard]] QString suggestionText(std::span<const chalk::direction::DirectionFit> fits, const chalk::direction::FitFacts& facts);

/// `Strength, 12 weeks`.
[[nodiscard]] QString planTitle(const chalk::direction::BlockPlan& plan);
/// `30 November 2026 – 21 February 2027`.
[[nodiscard]] QString planDaysText(const chalk::direction::BlockPlan& plan);

/// A figure outside of its published range: `Rest 60 s; published 120–300 s (Haff and Triplett 2016, table 17.12)`.
[[nodiscard]] QString departureText(const chalk::direction::Departure& departure);
/// A session's repetitions in a zone beside the printed ones: `16 reps at 80–89 %; printed 10–20, best 15`.
[[nodiscard]] QString zoneTotalText(const chalk::direction::ZoneTotal& total);

/// Why a lift is not tested by a single, one sentence.
[[nodiscard]] QString noTestText(chalk::direction::NoTest reason);
/// How a test ended, one sentence.
[[nodiscard]] QString testEndText(chalk::direction::TestEnd end);
/// What is to be seen to before a maximum is tested, each a sentence to be ticked off. Common practice; local rules and a doctor's word come first.
[[nodiscard]] QStringList testCautions();
/// The usual cautions for heavy work, one sentence each.
[[nodiscard]] QStringList heavyWorkCautions();

}  // namespace chalk::ui::common
