#pragma once

#include "core/planning/rotation.h"
#include "core/sessions/card_content.h"

#include <map>
#include <optional>
#include <vector>

namespace chalk::planning {

/// How many of each station the floor has, 1 to 20; a station that is not named is there for everybody at once.
using FloorStations = std::map<lifts::Station, int>;
/// What a small studio has where nobody says otherwise: two racks, two benches, two machines, a pull-up bar and two lanes.
[[nodiscard]] FloorStations usualStations();

/// A place that a group trains at: a unit of a station. The floor is one place for everybody.
struct GroupPlace {
    lifts::Station station = lifts::Station::Floor;
    int unit = 0;            ///< of its station, counted from 0
    bool isOnlyOne = false;  ///< the group uses no other unit of that station

    bool operator==(const GroupPlace&) const = default;
};

/// A lift in its turn. Seconds count from the first lift's start.
struct GroupTurn {
    std::size_t lift = 0;         ///< of the card
    std::optional<int> beginSecond;  ///< nothing for a lift that is on hold, or beyond the most of a rotation: it has no time
    int endSecond = 0;
    int waitedSeconds = 0;        ///< before it
    std::size_t place = 0;        ///< of GroupSession::places

    bool operator==(const GroupTurn&) const = default;
};

/// One client's way through the slot.
struct GroupMember {
    sessions::CardContent card;
    std::vector<GroupTurn> turns;    ///< every lift of the card once, those without a time last
    bool isPatternRepeated = false;  ///< no order keeps two lifts of one pattern apart

    [[nodiscard]] int waitedSeconds() const;
    bool operator==(const GroupMember&) const = default;
};

/// Everybody in one slot: who does what, when and where.
struct GroupSession {
    std::vector<GroupMember> members;
    std::vector<GroupPlace> places;  ///< by station and unit; only those in use
    bool isProved = true;            ///< no order waits less in all, and none that waits as little ends earlier

    [[nodiscard]] int waitedSeconds() const;
    [[nodiscard]] int endSecond() const;
    bool operator==(const GroupSession&) const = default;
};

/// How long a lift takes its station. Sets and rests are the card's. The other figures are common practice on the gym floor, no published
/// table: 4 s for a rep, 1 s for a metre of a carry; 30 s to get ready, 10 s for a plate on each side, 45 s for a set of the warm-up; a
/// rehearsal is two trials with a minute after each, and its three pauses count for every rep.
[[nodiscard]] LiftTiming timingOf(const sessions::CardLift& lift);

/// The rotation of some cards. Left out are lifts on hold, a client's lifts beyond kMostRotationLifts, and clients with none left. Carries and
/// braces come after all else, as is common practice: they tire the grip and the trunk. At most kMostRotationClients cards. Sound unless
/// nobody has a lift.
[[nodiscard]] RotationRequest rotationRequestOf(const std::vector<sessions::CardContent>& cards, const FloorStations& stations);

/// The best order that is found for at most kMostRotationClients cards with usualEffort. Deterministic.
[[nodiscard]] GroupSession groupSessionOf(const std::vector<sessions::CardContent>& cards, const FloorStations& stations);

/// Cards of one slot in groups that a rotation takes, as evenly as they go.
[[nodiscard]] std::vector<std::vector<sessions::CardContent>> inGroups(std::vector<sessions::CardContent> cards);

}  // namespace chalk::planning
