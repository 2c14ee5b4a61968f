#pragma once

#include "core/base/id.h"
#include "core/store/session_reader.h"

#include <QString>
#include <QStringList>

#include <cstdint>
#include <span>
#include <vector>

namespace chalk::ui::shell {

/// One client's session of today, as far as the ledge needs it.
struct LedgeSession {
    base::SessionId id;
    int startMinute = 0;  ///< since midnight
    int minutes = 60;
    QString coach;
    QString client;
    bool isRecorded = false;
};

/// Where a bar of the day line stands in the day.
enum class BarState : std::uint8_t { Over, Present, Ahead };

/// The sessions that one coach gives at one time, as one bar.
struct LedgeBar {
    base::SessionId first;  ///< the session that a click opens: the first of the slot that is not recorded yet
    int startMinute = 0;
    int endMinute = 0;
    int row = 0;            ///< one row per coach, in the order of their first session
    BarState state = BarState::Ahead;
    QString coach;
    QStringList clients;
};

/// What the ledge shows of a day at one minute. At most one slot, that of the next or present session, is `Present`; coaches who
/// start together share it.
struct LedgeDay {
    std::vector<LedgeBar> bars;
    int rows = 0;
    int firstHour = 7;   ///< the hours that the line spans
    int lastHour = 20;
    int nowMinute = 0;
    QString sentence;    ///< rich text: `Next <b>09:00</b> Ines: Ferro, Quill, Strand · in 18 min`
    bool hasPresent = false;
};

/// Leaves out what was cancelled or missed.
[[nodiscard]] std::vector<LedgeSession> ledgeSessionsOf(std::span<const store::NamedSession> sessions);
[[nodiscard]] LedgeDay ledgeDayOf(std::span<const LedgeSession> sessions, int nowMinute);
/// A bar in words, for tool tips: `09:00 to 10:00, Ines: Ferro, Quill, Strand`.
[[nodiscard]] QString barText(const LedgeBar& bar);

}  // namespace chalk::ui::shell
