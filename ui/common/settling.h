#pragma once

#include "ui/common/conflict_words.h"

#include <QApplication>

#include <utility>

namespace chalk::ui::common {

/// How a write is settled where somebody else was faster.
struct Settling {
    store::Seen seen;                   ///< what to compare with: what is there now, once the person has seen that
    std::optional<QJsonObject> merged;  ///< what to write in the place of one's own: both, where the person chose so
};

/// Writes, and where somebody else changed the same thing asks the person, who sees both versions, until it is settled. `write` is called with what
/// to compare with, `seen` at first, and writes that. Answers its outcome; where theirs is kept, the conflict, of which nothing is written.
template <class Write>
auto settled(Dialogs& dialogs, store::Database& database, store::Seen seen, Write write) -> decltype(write(std::declval<const Settling&>()))
{
    Settling settling{std::move(seen), {}};
    for (;;) {
        auto outcome = write(settling);
        if (outcome || outcome.error().kind != store::StoreError::Kind::Conflict || outcome.error().conflict == nullptr) {
            return outcome;
        }
        const store::Conflict& conflict = *outcome.error().conflict;
        const int answer = dialogs.ask(QApplication::activeWindow(), conflictQuestion(conflict, conflictNames(database, conflict)));
        switch (conflictChoice(answer)) {
        case ConflictChoice::Theirs:
            return outcome;
        case ConflictChoice::Yours:
            settling = {conflict.theirs, settling.merged};
            break;
        case ConflictChoice::Both:
            settling = {conflict.theirs, store::bothOf(conflict)};
            break;
        }
    }
}

}  // namespace chalk::ui::common
