#pragma once

#include "core/week/day_slots.h"
#include "core/week/week_problem.h"

#include <cstdint>
#include <functional>
#include <vector>

namespace chalk::week {

/// A start of a session at a coach: the coach's day (coach × 7 + day) and the slot of that day.
struct Place {
    std::int16_t coachDay = -1;  ///< -1: left over
    std::int16_t slot = 0;

    [[nodiscard]] bool isSomewhere() const { return coachDay >= 0; }
    [[nodiscard]] int coach() const { return coachDay / kWeekDays; }
    [[nodiscard]] int day() const { return coachDay % kWeekDays; }
    bool operator==(const Place&) const = default;
};

/// A place that a session may take, and what the session costs there by itself.
struct Candidate {
    Place place;
    int cost = 0;
};

/// The candidates of a session on one day of a coach.
struct CandidateDay {
    DaySlots starts = 0;
    std::int16_t coachDay = 0;
    std::int16_t day = 0;          ///< 0 Monday
    std::int16_t first = 0;        ///< slot that `costs` begins with
    std::uint32_t costs = 0;       ///< where in PackedWeek::costs
    int least = 0;                 ///< cost of the cheapest
};

/// Another session of the same client, and how far away it must be: never on the same day.
struct Sibling {
    int session = 0;
    int minutesApart = 0;          ///< start to start
    bool hasRestDay = false;       ///< a day between
};

/// A stretch of one of the lists of a PackedWeek.
struct Stretch {
    std::uint32_t begin = 0;
    std::uint32_t end = 0;

    [[nodiscard]] int size() const { return static_cast<int>(end - begin); }
};

struct PackedSession {
    int client = 0;
    int slots = 1;                 ///< that it touches, from a start on the grid or where it is fixed
    int mostGain = 0;              ///< what it can close of a coach's gaps: no more than its own length
    int level = 0;                 ///< its maxGroup, as the place among PackedWeek::levels
    int leftOverCost = 0;
    bool isFixed = false;          ///< stays where it is (`fixedAt`), or left over
    Place fixedAt;
    std::uint32_t needs = 0;       ///< where in PackedWeek::needs: for each slot, each station in turn
    Stretch days;
    Stretch candidates;            ///< cheapest first
    Stretch siblings;
};

/// What a search may be told besides the problem.
struct FillOptions {
    unsigned seed = 1;
    /// A plan to begin with, and to stay near to: each session of it that goes elsewhere costs what leaving a standing slot costs, once more.
    /// Outlives the call that it is handed to.
    const WeekPlan* present = nullptr;
    /// By session: stays where `present` has it, be it left over. Empty: none.
    std::vector<bool> fixed;
    /// Whether a small week is searched through to the end, so that its plan is proved.
    bool canProve = true;
};

/// The static part of a week, in flat lists for a quick search: who may go where by all rules that do not depend on the other sessions, and
/// what it costs there. Locked and fixed sessions are counted among what others must heed.
class PackedWeek {
public:
    /// `problem` outlives it.
    PackedWeek(const WeekProblem& problem, const FillOptions& options);

    int grid = 15;
    int slotsADay = 96;
    int stationsPadded = 4;                 ///< stations, up to a multiple of 4
    std::vector<int> levels;                ///< the different maxGroup, rising
    std::vector<PackedSession> sessions;
    std::vector<CandidateDay> days;         ///< of each session, by least cost
    std::vector<Candidate> candidates;
    std::vector<int> costs;
    std::vector<Sibling> siblings;
    std::vector<int> needs;                 ///< per cent of a unit
    std::vector<int> stationRoom;           ///< per cent of a unit: for each slot of the week, each station in turn
    std::vector<DaySlots> work;             ///< by the coach's day: slots that lie inside of the working hours
    std::vector<DaySlots> partWork;         ///< slots that lie only partly inside
    std::vector<int> coachCapacity;
    const WeekProblem* problem = nullptr;

    [[nodiscard]] const PackedSession& session(int index) const { return sessions[static_cast<std::size_t>(index)]; }
    [[nodiscard]] const Candidate& candidate(const PackedSession& session, int index) const
    {
        return candidates[session.candidates.begin + static_cast<std::uint32_t>(index)];
    }
    [[nodiscard]] int minuteOf(Place place) const { return place.day() * kDayMinutes + place.slot * grid; }
    [[nodiscard]] std::optional<Slot> slotOf(Place place) const;
    /// The place of a slot, moved back onto the grid where it is off it.
    [[nodiscard]] Place placeOf(const Slot& slot) const;
    /// What a session costs at one of its candidates.
    [[nodiscard]] int costAt(const CandidateDay& day, int slot) const { return costs[day.costs + static_cast<std::uint32_t>(slot - day.first)]; }
    /// What a session needs of a station in one of its slots, counted from its start: per cent of a unit.
    [[nodiscard]] int needAt(const PackedSession& session, int slot, int station) const
    {
        return needs[session.needs + static_cast<std::uint32_t>(slot * stationsPadded + station)];
    }
    /// The candidate of a session at a place; nothing where it may not go there.
    [[nodiscard]] const CandidateDay* dayOf(const PackedSession& session, Place place) const;
    /// Idle minutes of work on a coach's day outside of `busy`, between its first and last slot.
    [[nodiscard]] int idleMinutes(int coachDay, DaySlots busy) const;
    /// What a coach's day costs: gaps and work above the soft maximum.
    [[nodiscard]] int dayCost(int coachDay, DaySlots busy) const;
    /// Keeps only those candidates of a session for which `isKept(place)`.
    void keepCandidates(PackedSession& session, const std::function<bool(Place)>& isKept);

private:
    void packHours();
    void packCoachDay(const CoachWeek& coach, int day);
    void packStations();
    void packSession(std::size_t index, const FillOptions& options);
    void packSiblings();
    /// Slots that so many minutes, on the grid, touch from a start so many minutes after it.
    [[nodiscard]] int cellsTo(int offGrid, int minutes) const;
    void packNeeds(const SessionWish& wish, PackedSession& session, int offGrid);
    void packCandidates(std::size_t index, const FillOptions& options);
    void packDay(PackedSession& session, int coachDay, std::vector<Candidate> found);

    std::vector<int> m_minutes;   ///< of work, for each slot of each coach's day
    std::vector<int> m_softMax;   ///< minutes, by coach
};

}  // namespace chalk::week
