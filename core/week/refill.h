#pragma once

#include "core/week/draw.h"
#include "core/week/week_trial.h"

#include <cstdint>
#include <vector>

namespace chalk::week {

/// Places sessions one by one, each where it costs least as things stand.
class Refill {
public:
    /// All outlive it.
    Refill(const PackedWeek& week, const WeekState& state, WeekTrial& trial, Draw& draw) : m_week(week), m_state(state), m_trial(trial), m_draw(draw) {}

    /// Places all who are left over, the hardest first: by priority, then who has a standing slot, then who can go to few places.
    void placeHardestFirst();
    /// Places sessions that were taken out, and some of those left over before, which are tried only on the days (bit 0 Monday) that were
    /// touched. The order is a different one each time, and now and then the best place is passed over, so that others get their chance.
    void placeAnew(const std::vector<int>& out, unsigned touchedDays);

private:
    /// A session to be placed, and the days worth looking at.
    struct Waiting {
        std::uint64_t rank = 0;  ///< lowest first
        int session = 0;
        unsigned days = 0;
    };
    struct Found {
        Place place;
        int cost = 0;
    };
    /// The cheapest place of a left-over session; nowhere if there is none that costs less than leaving it over.
    [[nodiscard]] Place bestPlace(const Waiting& waiting, int skipPerMille) const;
    void lookAtDay(const PackedSession& session, const CandidateDay& day, int skipPerMille, Found& best) const;
    void addLeftOver(unsigned touchedDays);
    void rank();

    const PackedWeek& m_week;
    const WeekState& m_state;
    WeekTrial& m_trial;
    Draw& m_draw;
    std::vector<Waiting> m_waiting;
};

}  // namespace chalk::week
