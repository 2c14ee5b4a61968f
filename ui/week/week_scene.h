#pragma once

#include "core/week/week_case.h"
#include "core/week/week_checker.h"

#include <QString>

#include <optional>
#include <vector>

namespace chalk::ui::week {

/// How a block of the week stands, the most pressing first.
enum class BlockState : std::uint8_t {
    Conflict,  ///< a rule of the week is broken in it
    Proposed,  ///< nothing of it is saved as it stands there
    Done,      ///< over
    Full,      ///< every place is taken, and there is more than one
    Free
};

/// One client's session in a block.
struct BlockMember {
    base::ClientId client;
    base::SessionId booking;           ///< none: not booked
    std::optional<std::size_t> wish;   ///< index in the case; none for what is over or does not take place
    QString firstName;
    QString name;
    sessions::SessionState state = sessions::SessionState::Planned;
    sessions::SessionKind kind = sessions::SessionKind::Training;
    bool isLocked = false;
    bool isProposed = false;           ///< as it stands here it is not saved

    /// Whether somebody comes, or came.
    [[nodiscard]] bool takesPlace() const;
};

/// All sessions of one coach that begin together and take as long. Minutes count from the day's midnight.
struct WeekBlock {
    int day = 0;  ///< 0 Monday to 6 Sunday
    std::size_t coach = 0;
    int from = 0;
    int to = 0;
    std::vector<BlockMember> members;
    int places = 1;
    int column = 0;   ///< beside blocks of the same coach that overlap it
    int columns = 1;
    BlockState state = BlockState::Free;
    bool isLocked = false;
    bool isNext = false;              ///< goes on now, or is the next of today
    std::vector<std::size_t> faults;  ///< indices in the scene's faults

    [[nodiscard]] int taken() const;
    [[nodiscard]] int start() const { return day * chalk::week::kDayMinutes + from; }
    /// The sessions that can still be moved, by index in the case.
    [[nodiscard]] std::vector<std::size_t> wishes() const;
};

/// Hours that a day, or a coach on it, is not there.
struct HatchedSpan {
    int day = 0;
    std::optional<std::size_t> coach;  ///< none: the whole studio
    int from = 0;
    int to = 0;
    QString word;  ///< `off`, `closed`, or why

    bool operator==(const HatchedSpan&) const = default;
};

enum class RackState : std::uint8_t { Used, Proposed, Short };

/// One rack in use. Short: more are needed then than there are.
struct RackStretch {
    int day = 0;
    int unit = 0;
    int from = 0;
    int to = 0;
    RackState state = RackState::Used;

    bool operator==(const RackStretch&) const = default;
};

/// Hours that are closed on every day, folded to a band.
struct FoldedHours {
    int from = 0;
    int to = 0;

    bool operator==(const FoldedHours&) const = default;
};

/// A week as it is drawn: plain values, no pixels.
struct WeekScene {
    base::Date monday;
    std::vector<int> days;         ///< the weekdays on show
    std::vector<QString> coaches;  ///< a lane on each day
    int from = 0;                  ///< of the day: the hours on show
    int to = 0;
    std::vector<FoldedHours> folds;
    std::vector<WeekBlock> blocks;  ///< by day, start and coach
    std::vector<HatchedSpan> hatched;
    int racks = 0;                  ///< columns of each day; 0 where the studio has none
    std::vector<RackStretch> rackUse;
    std::optional<int> now;         ///< minutes since Monday; nothing in another week
    std::vector<chalk::week::PlanFault> faults;

    [[nodiscard]] bool isEmpty() const { return blocks.empty(); }
    /// The block with that session; nothing where it is left over.
    [[nodiscard]] std::optional<std::size_t> blockOf(std::size_t wish) const;
};

/// What a scene is made of. All of it outlives the call.
struct WeekInput {
    const chalk::week::WeekFacts& facts;
    const chalk::week::WeekCase& week;
    const chalk::week::WeekPlan& plan;  ///< bookings and proposals
};

[[nodiscard]] WeekScene sceneOf(const WeekInput& input);

}  // namespace chalk::ui::week
