#pragma once

#include "core/week/draw.h"
#include "core/week/week_trial.h"

#include <vector>

namespace chalk::week {

/// Takes some sessions out of a plan, so that they and those left over can be placed anew: those around a place that somebody wants, around a
/// time, of a coach's day, of a few clients, or any.
class Ruin {
public:
    /// All outlive it. `free`: the sessions that may move, at least one.
    Ruin(const PackedWeek& week, const WeekState& state, WeekTrial& trial, Draw& draw, std::vector<int> free);

    void run();
    /// Puts a session into a place that it wants, and takes out whoever is there and was not moved yet.
    void pushIn(int session);

    /// The sessions that the last call took out and left out.
    [[nodiscard]] const std::vector<int>& out() const { return m_out; }
    /// The days on which the last call made room, bit 0 Monday.
    [[nodiscard]] unsigned touchedDays() const { return m_touchedDays; }

private:
    void aroundWish();
    void putWhereItWants(int session);
    void aroundTime();
    void coachDay();
    void clients();
    void any();

    [[nodiscard]] bool mayTakeOut(int session) const;
    void takeOut(int session);
    /// Takes out any of `m_found`, `most` at most.
    void takeOutOfFound(int most);
    [[nodiscard]] int anySession();
    /// One that is left over, or not where it would like best to be.
    [[nodiscard]] int wishfulSession();
    /// A place that is cheaper for a session than where it is, sooner a cheap one; any where there is none.
    [[nodiscard]] Place wishedPlace(int session);
    /// Makes room for a session that is left over; false where fixed sessions are in the way.
    bool clear(const PackedSession& session, Place place);
    bool clearSiblings(const PackedSession& session, Place place);
    bool clearCoach(const PackedSession& session, Place place);
    bool clearStations(const PackedSession& session, Place place);
    [[nodiscard]] bool isTooNear(const Sibling& sibling, Place place) const;
    /// Adds to `m_found` those who may move of a coach's day, between two slots.
    void find(int coachDay, int from, int to);
    /// Any of `m_found`, sooner one that costs little to leave over.
    [[nodiscard]] int victim();

    const PackedWeek& m_week;
    const WeekState& m_state;
    WeekTrial& m_trial;
    Draw& m_draw;
    std::vector<int> m_free;
    std::vector<int> m_found;
    std::vector<int> m_out;
    unsigned m_touchedDays = 0;
    bool m_sparesMoved = false;  ///< those who were moved already are not taken out
};

}  // namespace chalk::week
