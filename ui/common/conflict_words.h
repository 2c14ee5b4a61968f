#pragma once

#include "core/store/conflict.h"
#include "ui/common/dialogs.h"

#include <map>

namespace chalk::ui::common {

/// Names for what a conflict speaks of.
struct ConflictNames {
    std::map<base::CoachId, QString> coaches;
    QString client;  ///< empty where it is about none
    QString lift;    ///< `Back squat`; empty where it is about none
};

/// What a person can decide about a conflict.
enum class ConflictChoice : std::uint8_t { Theirs, Yours, Both };

/// The names as the studio has them; empty where they cannot be read.
[[nodiscard]] ConflictNames conflictNames(store::Database& database, const store::Conflict& conflict);

/// Both versions side by side, only what differs, and what can be done: the first answer, the safe one, leaves theirs.
[[nodiscard]] Question conflictQuestion(const store::Conflict& conflict, const ConflictNames& names);
/// What an answer of that question means.
[[nodiscard]] ConflictChoice conflictChoice(int answer);

/// What the versions say, field by field, where they say something else.
[[nodiscard]] std::vector<VersionRow> versionRows(const store::Conflict& conflict, const ConflictNames& names);

}  // namespace chalk::ui::common
