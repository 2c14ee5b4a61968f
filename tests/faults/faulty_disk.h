#pragma once

#include <cstdint>

namespace chalk::faults {

/// What goes wrong with the disk.
enum class DiskFault : std::uint8_t {
    Full,        ///< no space: what would grow cannot
    WriteError,  ///< writing, syncing, cutting and taking away fail: a disk that breaks, or one that became read-only
    ReadError    ///< reading fails
};

/// Stands between SQLite and its files while it lives: counts what would reach the disk, and fails at one of these steps. One at a time, for this process.
class FaultyDisk {
public:
    FaultyDisk();
    ~FaultyDisk();
    FaultyDisk(const FaultyDisk&) = delete;
    FaultyDisk& operator=(const FaultyDisk&) = delete;

    /// Fails at the `step`-th from now, counted from 1; `isLasting`: and at all that come after it.
    void failAt(int step, DiskFault fault, bool isLasting);
    void heal();
    /// Whether something failed since failAt.
    [[nodiscard]] bool hasFailed() const;
};

}  // namespace chalk::faults
