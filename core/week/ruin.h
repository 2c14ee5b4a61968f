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

    /// The sessions that the last run took out and left out.
    [[nodiscard]] const std::vector<int>& out() const { return m_out; }
    /// The days on which it made room, bit 0 Monday.
    [[nodiscard]] unsigned touchedDays() const { return m_touchedDays; }

private:
    void aroundWish();
    void aroundTime();
    void coachDay();
    void clients();
    void any();

    void takeOut(int session);
    /// Takes out any of `m_found`, `most` at most.
    void takeOutOfFound(int most);
    [[nodiscard]] int anySession();
    /// One that is left over, or not where it would like best to be.
    [[nodiscard]] int wishfulSession();
    /// One of the candidates of a session, sooner a cheap one.
    [[nodiscard]] Place wishedPlace(const PackedSession& session);
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
};

}  // namespace chalk::week
