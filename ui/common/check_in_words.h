#pragma once

#include "core/checkin/check_in.h"
#include "core/lifts/catalogue.h"

#include <QString>

namespace chalk::ui::common {

// How a check-in is written for people: in one place, so that the window and the command line agree.

/// `Plateau`, `On course`.
[[nodiscard]] QString findingName(checkin::FindingKind kind);
/// A finding with its number: `Plateau, 4 weeks`; `Direction, the plan ended on 22 Nov`.
[[nodiscard]] QString findingTitle(const checkin::Finding& finding);
/// Why a client stands in the queue, on one line: `Bench press, 4 weeks without a new best`.
[[nodiscard]] QString queueWhyText(const checkin::QueueEntry& entry, const lifts::Catalogue& catalogue);

/// `Lighter week, then rebuild`: whatever the lift.
[[nodiscard]] QString choiceName(checkin::ChoiceKind kind);
/// The same with the stage that the lift moves on to: `Move on to Rep build`.
[[nodiscard]] QString choiceTitle(const checkin::Choice& choice);
/// Why a choice is suggested, one sentence; empty for no reason.
[[nodiscard]] QString choiceReasonText(checkin::ChoiceReason reason);
/// What a choice leads to: `This week 2 × 5 at 60 kg, then 3 × 5 at 67.5 kg`; of a swap with the other exercise's name.
[[nodiscard]] QString choiceText(const checkin::Choice& choice, const checkin::LiftEvidence& lift, const lifts::Catalogue& catalogue);
/// What a lift is to do next: `3 × 5 at 72.5 kg, rest 3:30`; `on hold`; `the movement without load`. The exercise says how its load is written.
[[nodiscard]] QString prescriptionText(const progression::Prescription& next, const checkin::LiftEvidence& lift, const lifts::Exercise* exercise);
/// How long the next load is away at a usual gain with the loads on hand, so that coarse plates are not taken for a stall: `The next load step takes
/// about 3 weeks at a usual gain, with the loads on hand.` Empty where load is not what moves, and where there is no next load.
[[nodiscard]] QString loadStepText(const checkin::LiftEvidence& lift);
/// The name of an exercise; the key where the catalogue does not know it, and nothing for no key.
[[nodiscard]] QString exerciseNameText(const std::string& key, const lifts::Catalogue& catalogue);

/// A decision in the history: `10 Nov: hold one more week (plateau). “New baby at home.” Review 24 Nov.` `liftName` may be empty.
[[nodiscard]] QString decisionText(const checkin::Decision& decision, const QString& liftName);

/// `1 week`, `4 weeks`.
[[nodiscard]] QString weeksText(int weeks);

}  // namespace chalk::ui::common
