#pragma once

#include <QStringList>

namespace chalk::faults {

/// The day and the minute of the first backup that the children make.
inline constexpr const char* kFirstBackupDay = "2026-11-24";

/// What this program does where it is run as a child: the first argument says what, and it goes on until it is killed, unless it says so here. Answers its exit
/// status; 3 where something did not go, with a line that says what.
///
///   record FILE        books a session and records two lifts in it, for ever; a line `recorded ACT ENTRIES SESSION` after each
///   backup FILE        makes backups, for ever; a line `made FILE` after each
///   restore FILE A B   puts A and B in the place of FILE in turn, for ever; a line `restored A` after each
///   flip FILE SEED FROM COUNT  flips COUNT bits of FILE one after the other and tells a line of each, then ends
[[nodiscard]] int runChild(const QStringList& arguments);

/// `flip`, in test_bit_flips.cpp.
[[nodiscard]] int flipBits(const QString& file, quint32 seed, int from, int count);

}  // namespace chalk::faults
