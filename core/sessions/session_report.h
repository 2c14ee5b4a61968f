#pragma once

#include <optional>
#include <string>

namespace chalk::sessions {

/// The longest note of a session, in bytes of UTF-8.
inline constexpr std::size_t kLongestNote = 4000;

/// What is said once of a session: how the client came in, how hard the session was, and what the coach noted. Nothing where it was not
/// asked. Sleep, soreness and stress are health data.
struct SessionReport {
    std::optional<int> sleep;         ///< 1 bad to 5 good
    std::optional<int> soreness;      ///< 1 none to 5 much
    std::optional<int> stress;        ///< 1 none to 5 much
    std::optional<int> effortTenths;  ///< of the whole session, 0 rest to 100 maximal, in steps of half a point: 75 is 7.5 of 10
    std::optional<int> minutes;       ///< from the first warm-up to the last set, 1 to 480
    std::string note;                 ///< UTF-8, `Back squat: left knee in` a line

    [[nodiscard]] bool isEmpty() const { return *this == SessionReport(); }
    /// Whether it holds health data.
    [[nodiscard]] bool hasReadiness() const { return sleep || soreness || stress; }
    bool operator==(const SessionReport&) const = default;
};

/// A field that cannot be, by its name in files, and why.
struct ReportFault {
    std::string field;
    std::string reason;

    bool operator==(const ReportFault&) const = default;
};

/// The first field out of its range, and a note of nothing but blanks; nothing where all can be.
[[nodiscard]] std::optional<ReportFault> faultOf(const SessionReport& report);

/// The load of a session by the session-RPE method, effort × minutes, in its arbitrary units, rounded to whole ones (half up); nothing where
/// effort or minutes were not asked. Foster C et al. 2001, A new approach to monitoring exercise training, J Strength Cond Res 15(1):109-115.
[[nodiscard]] std::optional<int> sessionLoad(const SessionReport& report);

/// Adds a remark to the note, on a line of its own.
void addToNote(SessionReport& report, const std::string& remark);

/// A report with what `later` says in the place of what was said before; a note is added to it.
[[nodiscard]] SessionReport toldOver(SessionReport report, const SessionReport& later);

}  // namespace chalk::sessions
