#pragma once

#include "ui/board/client_case.h"

#include <QString>

namespace chalk::ui::board {

/// `45 · Strong, back-safe · with Ines · month 7 · twice a week`; what is not known is left out.
[[nodiscard]] QString subtitleOf(const ClientCase& client);
/// `Today 09:00, Rack 1` and `3 of 4 places taken`; `Not booked` and nothing.
struct NextSessionWords {
    QString when;
    QString places;
};
[[nodiscard]] NextSessionWords nextSessionWordsOf(const ClientCase& client);

/// What was done, in the past, for the ledge: `Back squat held at 77.5 kg for Joaquin`.
[[nodiscard]] QString heldWords(const LiftCase& lift, const ClientCase& client);
[[nodiscard]] QString changedWords(const LiftCase& lift, const progression::Prescription& after, const ClientCase& client);
[[nodiscard]] QString releasedWords(const LiftCase& lift, const ClientCase& client);
[[nodiscard]] QString swappedWords(const LiftCase& lift, const QString& exercise, const ClientCase& client);

}  // namespace chalk::ui::board
