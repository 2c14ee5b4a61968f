#pragma once

#include "core/week/packed_week.h"

#include <cstdint>
#include <vector>

namespace chalk::week {

/// A station without room: at which slot of the day; -1 for none.
struct Lack {
    int slot = -1;
    int station = -1;
};

/// A plan under way: who is where, what that leaves free, and what it costs, kept up to date with each session that comes or goes.
class WeekState {
public:
    /// `week` outlives it. Fixed sessions are in their places, all others left over.
    explicit WeekState(const PackedWeek& week);

    [[nodiscard]] Place at(int session) const { return m_places[static_cast<std::size_t>(session)]; }
    /// What a session costs by itself where it is.
    [[nodiscard]] int ownCost(int session) const { return m_ownCost[static_cast<std::size_t>(session)]; }
    [[nodiscard]] const std::vector<Place>& places() const { return m_places; }
    /// What is minimised: the objective, and what leaving the present plan costs.
    [[nodiscard]] long total() const { return m_total; }
    /// The part of it that coaches' days cost.
    [[nodiscard]] long dayCosts() const { return m_dayCosts; }
    /// Who is on a coach's day, in no order.
    [[nodiscard]] const std::vector<std::int16_t>& sessionsOn(int coachDay) const { return m_coachDays[static_cast<std::size_t>(coachDay)].sessions; }

    /// Puts a left-over session into a place, which is checked by nothing.
    void put(int session, Place place);
    /// Makes a session left over.
    void take(int session);

    /// Days (bit 0 Monday) on which a session may not be because of others of its client, by whole days.
    [[nodiscard]] unsigned closedDays(int session) const;
    /// The starts of a candidate day at which the coach has room.
    [[nodiscard]] DaySlots roomAtCoach(const PackedSession& session, const CandidateDay& day) const;
    /// Whether the stations have room.
    [[nodiscard]] bool hasStations(const PackedSession& session, Place place) const;
    /// The slots of a coach's day that take one more session of a level.
    [[nodiscard]] DaySlots accepts(int coachDay, int level) const
    {
        return m_accepts[static_cast<std::size_t>(coachDay) * m_week.levels.size() + static_cast<std::size_t>(level)];
    }
    /// The first station that has no room.
    [[nodiscard]] Lack lackOf(const PackedSession& session, Place place) const;
    /// Whether the hours between sessions of the client are kept.
    [[nodiscard]] bool isRecovered(const PackedSession& session, int start) const;
    /// Whether a left-over session may go to one of its candidates.
    [[nodiscard]] bool fits(int session, Place place) const;
    /// What the coach's day costs more with the session in it: less than 0 where it closes a gap.
    [[nodiscard]] int coachDelta(const PackedSession& session, Place place) const;
    /// What successive days cost more with a session of the client on this day.
    [[nodiscard]] int successiveDelta(int client, int day) const;

private:
    struct CoachDay {
        DaySlots busy = 0;
        int cost = 0;
        std::vector<std::int16_t> sessions;
    };
    /// One slot of a coach's day.
    struct CoachSlot {
        std::int16_t count = 0;       ///< sessions
        std::int16_t leastLevel = 0;  ///< the lowest level of which one more session is accepted; the number of levels where none is
    };

    void addToCoach(const PackedSession& session, Place place, int change);
    void addToStations(const PackedSession& session, Place place, int change);
    void recount(std::size_t coachDay, int slot, int level, int change);
    [[nodiscard]] int leastLevel(std::size_t coachDay, int slot) const;
    void settleDay(int coachDay);
    [[nodiscard]] int slotsAt(const PackedSession& session, Place place) const;

    const PackedWeek& m_week;
    std::vector<Place> m_places;
    std::vector<int> m_ownCost;                ///< by session: of its candidate, 0 where it is none
    std::vector<std::uint8_t> m_clientDays;    ///< by client, a bit a day
    std::vector<CoachDay> m_coachDays;
    std::vector<DaySlots> m_accepts;           ///< by coach's day and level: slots that take one more session of it
    std::vector<std::int16_t> m_counts;        ///< by coach's day, slot and level: sessions
    std::vector<CoachSlot> m_slots;            ///< by coach's day and slot
    std::vector<int> m_levelAbove;             ///< by a number of sessions: the lowest level that shares with so many others
    std::vector<int> m_stationRoom;            ///< as PackedWeek::stationRoom, less what is taken
    long m_dayCosts = 0;
    long m_total = 0;
};

}  // namespace chalk::week
