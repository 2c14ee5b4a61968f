#pragma once

#include "core/lifts/catalogue.h"
#include "ui/check_in/check_in_source.h"

#include <QString>

namespace chalk::ui::check_in {

/// Whether a lift became another exercise since its client was last decided about: then it has to be said whether it is the same movement.
[[nodiscard]] bool isSwappedSinceLastTime(const CheckInCase& page, base::LiftId lift);

/// What the form says above the choices.
struct FindingWords {
    QString title;    ///< `Plateau, 4 weeks`
    QString first;    ///< what is said before any number
    QString numbers;  ///< the rest; may be empty
};
/// The verdict on the lift, below the client's worst finding.
[[nodiscard]] FindingWords findingWordsOf(const CheckInCase& page, std::size_t lift);

/// The decisions of the past, the latest first, a line each; empty for none.
[[nodiscard]] QString historyText(const checkin::ClientEvidence& client);

/// What the coach answered about a swapped lift, for the note.
[[nodiscard]] QString variationNote(bool isSameMovement);

/// What was decided, in the past, for the ledge.
[[nodiscard]] QString decidedWords(const checkin::ClientEvidence& client, const checkin::LiftEvidence& lift, checkin::ChoiceKind choice);
/// The same of a check-in at which nothing was decided about a lift.
[[nodiscard]] QString notedWords(const checkin::ClientEvidence& client);

}  // namespace chalk::ui::check_in
