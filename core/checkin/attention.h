#pragma once

#include "core/checkin/client_facts.h"

#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace chalk::checkin {

/// When something draws attention. All but the three figures of the direction, which are those of the rules of progression, are
/// common practice in the trade. Days and counts.
struct AttentionThresholds {
    int missedWindow = 4;          ///< of the last sessions that were not cancelled in time …
    int missedLimit = 2;           ///< … so many missed or cancelled late draw attention
    int unseenDays = 21;           ///< since the last session, with nothing booked
    int learningDays = 42;         ///< in Pattern or Control without ever having been loaded
    int clearanceEndsDays = 14;    ///< before the last day of a clearance that has one
    int directionDays = 180;       ///< since the first loaded exposure
    int directionEarlyDays = 90;   ///< the same with `directionStalls` lifts stalled
    int directionStalls = 2;
    int newDays = 14;              ///< since the client started
};

/// Loaded work waits for clearance, or will.
struct ClearanceDue {
    enum class Cause : std::uint8_t {
        IntakeOpen,   ///< the health intake is not finished
        NotAsked,     ///< recommended, and no letter went out
        Waiting,      ///< the letter went out on `day`
        StopAndSeek,  ///< not to train before a doctor was seen
        RanOut,       ///< granted, and `day` was its last day
        RunsOut       ///< granted, and `day` will be its last day
    };
    Cause cause = Cause::NotAsked;
    std::optional<base::Date> day;
    std::string reason;  ///< which answers asked for it; may be empty
    std::optional<base::Date> remindOn{};  ///< when the coach wants to ask for it again

    bool operator==(const ClearanceDue&) const = default;
};

/// A lift is on hold because of pain: the worst one, or the first of the equally bad.
struct LiftOnHold {
    lifts::Pattern pattern = lifts::Pattern::Squat;
    std::string exerciseKey;
    std::optional<HoldFacts> hold;
    int others = 0;  ///< further lifts on hold

    bool operator==(const LiftOnHold&) const = default;
};

/// A lift has stalled: the one that has been in its stage for longest.
struct LiftStalled {
    lifts::Pattern pattern = lifts::Pattern::Squat;
    std::string exerciseKey;
    progression::Stage stage = progression::Stage::RepBuild;
    std::optional<base::Date> stageSince;
    std::optional<LiftLoad> load;  ///< of the next exposure
    int others = 0;  ///< further stalled lifts
    int came = 0;    ///< to so many of the last `of` sessions
    int of = 0;

    bool operator==(const LiftStalled&) const = default;
};

/// Too many of the last sessions were missed.
struct SessionsMissed {
    int came = 0;  ///< to so many of the last `of` sessions, those cancelled in time left aside
    int of = 0;

    bool operator==(const SessionsMissed&) const = default;
};

/// Not there for long, and nothing is booked.
struct NotSeen {
    base::Date lastCame;
    int days = 0;  ///< since then

    bool operator==(const NotSeen&) const = default;
};

/// A lift is to be screened again: after a layoff (rule G-3) before one that is long in the same learning stage.
struct ScreenDue {
    lifts::Pattern pattern = lifts::Pattern::Squat;
    std::string exerciseKey;
    progression::Stage stage = progression::Stage::Pattern;
    bool isAfterLayoff = false;
    std::optional<base::Date> since;  ///< the last work before the layoff, or the first day in the stage
    int others = 0;                   ///< further lifts to be screened again

    bool operator==(const ScreenDue&) const = default;
};

/// The conversation about what comes after the beginner months is due (progression: Direction), or the plan that came of it is over.
struct DirectionDue {
    base::Date firstLoad;
    int days = 0;    ///< since then
    int stalls = 0;  ///< lifts that have stalled
    std::optional<base::Date> planEnd{};  ///< the last day of a plan that is to be reviewed, whatever the days are

    bool operator==(const DirectionDue&) const = default;
};

/// Why a client needs attention, with the numbers and dates behind it.
using AttentionReason = std::variant<ClearanceDue, LiftOnHold, LiftStalled, SessionsMissed, NotSeen, ScreenDue, DirectionDue>;

/// What needs attention about a client on `day`, the most pressing first: clearance, pain, plateau, missed, screen, direction; one of
/// a kind at most. Who is away or may not train with load is troubled about clearance and pain alone.
[[nodiscard]] std::vector<AttentionReason> attentionFor(const ClientFacts& facts, base::Date day, const AttentionThresholds& thresholds = {});

/// The lift that a reason is about; nothing where it is about the client.
[[nodiscard]] std::optional<lifts::Pattern> liftOf(const AttentionReason& reason);

}  // namespace chalk::checkin
