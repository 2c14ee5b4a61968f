#include "tests/faults/faulty_disk.h"

#include <new>
#include <optional>
#include <stdexcept>

#include <sqlite3.h>

namespace chalk::faults {

namespace {

// SQLite's interface for files, https://www.sqlite.org/vfs.html.

enum class DiskStep : std::uint8_t { Read, Write, Sync, Cut, Take, Open, Share };

struct DiskState {
    sqlite3_vfs* real = nullptr;
    sqlite3_vfs faulty{};
    int stepsLeft = 0;  ///< until it fails; 0: it is sound
    DiskFault fault = DiskFault::Full;
    bool isLasting = false;
    bool hasFailed = false;
};

DiskState& disk()
{
    static DiskState state;
    return state;
}

/// What SQLite is told where a step fails; nothing where this fault leaves such a step alone.
std::optional<int> codeFor(DiskStep step, DiskFault fault)
{
    const bool isFull = fault == DiskFault::Full;
    if (fault == DiskFault::ReadError) {
        return step == DiskStep::Read ? std::optional(SQLITE_IOERR_READ) : std::nullopt;
    }
    switch (step) {
    case DiskStep::Read:
        return std::nullopt;
    case DiskStep::Write:
        return isFull ? SQLITE_FULL : SQLITE_IOERR_WRITE;
    case DiskStep::Sync:
        return SQLITE_IOERR_FSYNC;  // a full disk too: what was promised is written now
    case DiskStep::Cut:
        return isFull ? std::nullopt : std::optional(SQLITE_IOERR_TRUNCATE);
    case DiskStep::Take:
        return isFull ? std::nullopt : std::optional(SQLITE_IOERR_DELETE);
    case DiskStep::Open:
        return SQLITE_CANTOPEN;
    case DiskStep::Share:
        return SQLITE_IOERR_SHMSIZE;
    }
    return std::nullopt;
}

/// Nothing where the step goes on; else how it fails.
std::optional<int> failureOf(DiskStep step)
{
    DiskState& state = disk();
    const auto code = codeFor(step, state.fault);
    if (state.stepsLeft == 0 || !code) {
        return std::nullopt;
    }
    if (state.stepsLeft > 1) {
        --state.stepsLeft;
        return std::nullopt;
    }
    state.hasFailed = true;
    state.stepsLeft = state.isLasting ? 1 : 0;
    return code;
}

/// A file of ours; the real one lies behind it.
struct FaultyFile {
    sqlite3_file base;
    sqlite3_io_methods methods;
};

sqlite3_file* realOf(sqlite3_file* file)
{
    return reinterpret_cast<sqlite3_file*>(reinterpret_cast<FaultyFile*>(file) + 1);
}

int closeFile(sqlite3_file* file) { return realOf(file)->pMethods->xClose(realOf(file)); }
int readFile(sqlite3_file* file, void* to, int bytes, sqlite3_int64 at)
{
    const auto failure = failureOf(DiskStep::Read);
    return failure ? *failure : realOf(file)->pMethods->xRead(realOf(file), to, bytes, at);
}
int writeFile(sqlite3_file* file, const void* from, int bytes, sqlite3_int64 at)
{
    const auto failure = failureOf(DiskStep::Write);
    return failure ? *failure : realOf(file)->pMethods->xWrite(realOf(file), from, bytes, at);
}
int cutFile(sqlite3_file* file, sqlite3_int64 size)
{
    const auto failure = failureOf(DiskStep::Cut);
    return failure ? *failure : realOf(file)->pMethods->xTruncate(realOf(file), size);
}
int syncFile(sqlite3_file* file, int flags)
{
    const auto failure = failureOf(DiskStep::Sync);
    return failure ? *failure : realOf(file)->pMethods->xSync(realOf(file), flags);
}
int fileSize(sqlite3_file* file, sqlite3_int64* size) { return realOf(file)->pMethods->xFileSize(realOf(file), size); }
int lockFile(sqlite3_file* file, int lock) { return realOf(file)->pMethods->xLock(realOf(file), lock); }
int unlockFile(sqlite3_file* file, int lock) { return realOf(file)->pMethods->xUnlock(realOf(file), lock); }
int checkLock(sqlite3_file* file, int* result) { return realOf(file)->pMethods->xCheckReservedLock(realOf(file), result); }
int controlFile(sqlite3_file* file, int what, void* argument) { return realOf(file)->pMethods->xFileControl(realOf(file), what, argument); }
int sectorSize(sqlite3_file* file) { return realOf(file)->pMethods->xSectorSize(realOf(file)); }
int traitsOf(sqlite3_file* file) { return realOf(file)->pMethods->xDeviceCharacteristics(realOf(file)); }
int mapShared(sqlite3_file* file, int page, int size, int isExtending, void volatile** memory)
{
    const auto failure = isExtending != 0 ? failureOf(DiskStep::Share) : std::nullopt;
    return failure ? *failure : realOf(file)->pMethods->xShmMap(realOf(file), page, size, isExtending, memory);
}
int lockShared(sqlite3_file* file, int offset, int count, int flags) { return realOf(file)->pMethods->xShmLock(realOf(file), offset, count, flags); }
void barrier(sqlite3_file* file) { realOf(file)->pMethods->xShmBarrier(realOf(file)); }
int unmapShared(sqlite3_file* file, int isDeleting) { return realOf(file)->pMethods->xShmUnmap(realOf(file), isDeleting); }

int openFaulty(sqlite3_vfs* /*vfs*/, const char* name, sqlite3_file* file, int flags, int* flagsOut)
{
    file->pMethods = nullptr;
    if (const auto failure = (flags & SQLITE_OPEN_CREATE) != 0 ? failureOf(DiskStep::Open) : std::nullopt) {
        return *failure;
    }
    auto* ours = new (file) FaultyFile{};
    const int code = disk().real->xOpen(disk().real, name, realOf(file), flags, flagsOut);
    if (realOf(file)->pMethods == nullptr) {
        return code;
    }
    // Version 2: with shared memory, without mapped files, which no step would be counted of.
    ours->methods = {2,        closeFile, readFile,    writeFile,  cutFile,  syncFile,  fileSize,   lockFile, unlockFile, checkLock, controlFile,
                     sectorSize, traitsOf,  mapShared,   lockShared, barrier,  unmapShared, nullptr,    nullptr};
    file->pMethods = &ours->methods;
    return code;
}

int takeAway(sqlite3_vfs* /*vfs*/, const char* name, int isSynced)
{
    const auto failure = failureOf(DiskStep::Take);
    return failure ? *failure : disk().real->xDelete(disk().real, name, isSynced);
}

}  // namespace

FaultyDisk::FaultyDisk()
{
    DiskState& state = disk();
    state = {};
    state.real = sqlite3_vfs_find(nullptr);
    state.faulty = *state.real;  // all but what follows goes to the real one, which does not look at who asks
    state.faulty.zName = "faulty disk";
    state.faulty.pNext = nullptr;
    state.faulty.szOsFile = static_cast<int>(sizeof(FaultyFile)) + state.real->szOsFile;
    state.faulty.xOpen = openFaulty;
    state.faulty.xDelete = takeAway;
    if (sqlite3_vfs_register(&state.faulty, 1) != SQLITE_OK) {
        throw std::runtime_error("the faulty disk cannot be registered");
    }
}

FaultyDisk::~FaultyDisk()
{
    sqlite3_vfs_unregister(&disk().faulty);
    sqlite3_vfs_register(disk().real, 1);
}

void FaultyDisk::failAt(int step, DiskFault fault, bool isLasting)
{
    DiskState& state = disk();
    state.stepsLeft = step;
    state.fault = fault;
    state.isLasting = isLasting;
    state.hasFailed = false;
}

void FaultyDisk::heal()
{
    disk().stepsLeft = 0;
}

bool FaultyDisk::hasFailed() const
{
    return disk().hasFailed;
}

}  // namespace chalk::faults
