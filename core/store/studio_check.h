#pragma once

#include "core/store/database.h"
#include "core/store/studio_import.h"

#include <QStringList>

#include <cstdint>
#include <vector>

namespace chalk::store {

/// What a check of a studio looks at, in this order.
enum class CheckPart : std::uint8_t {
    Integrity,   ///< the file's own structure (SQLite's integrity_check)
    References,  ///< rows that point to nothing (foreign_key_check)
    Replay       ///< what is kept of every lift beside what its log says, replayed from its first entry
};

/// One thing that is wrong, with where.
struct CheckFault {
    CheckPart part = CheckPart::Integrity;
    QString message;

    bool operator==(const CheckFault&) const = default;
};

struct StudioCheck {
    std::vector<CheckFault> faults;
    int lifts = 0;  ///< that were replayed

    [[nodiscard]] bool isSound() const { return faults.empty(); }
};

/// At most so many faults of a part are told; one more says how many there are in all.
inline constexpr int kMostCheckFaults = 20;

/// Looks at everything and changes nothing: the replay is thrown away. Fails where the database cannot be read at all or is open for reading only,
/// and with Cancelled where `progress` says stop.
[[nodiscard]] Result<StudioCheck> checkStudio(Database& database, const Progress& progress = {});
/// The same of what a transaction that is open has written so far.
[[nodiscard]] Result<StudioCheck> checkTransaction(Database& database, const Progress& progress = {});

}  // namespace chalk::store
