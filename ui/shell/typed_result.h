#pragma once

#include "core/base/load.h"
#include "core/sessions/entry_line.h"

#include <QString>

#include <optional>

namespace chalk::ui::shell {

/// A lift's result at the end of what was typed into the find box.
struct TypedResult {
    QString who;                ///< whose and which lift: `ferro bench`
    QString line;               ///< the result as the entry line of the floor takes it: `5x8 @60`
    sessions::EntryLine entry;  ///< what it says
};

/// Reads `ferro bench 60x8x5` (load, reps, sets) and `ferro bench 8 8 7 @80 r2`: from the first word on that begins with a number,
/// with `@` or with a verdict, all is the result. Nothing where there is no such word, or none before it.
[[nodiscard]] std::optional<TypedResult> typedResultOf(const QString& query);

/// What it says: `5 × 8 at 60 kg`, `8, 8, 7 at 80 kg, 2 left`.
[[nodiscard]] QString resultText(const sessions::EntryLine& entry, base::MassUnit unit);
/// The first word that makes no sense; empty where every word does.
[[nodiscard]] QString unknownWordOf(const TypedResult& result);

}  // namespace chalk::ui::shell
