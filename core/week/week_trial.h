#pragma once

#include "core/week/week_state.h"

#include <optional>
#include <vector>

namespace chalk::week {

/// Changes of a state that are kept or taken back together, and who is left over meanwhile.
class WeekTrial {
public:
    /// `state` and `week` outlive it.
    WeekTrial(WeekState& state, const PackedWeek& week);

    void put(int session, Place place);
    void take(int session);
    void undo();
    void keep();

    [[nodiscard]] bool isChanged(int session) const { return m_isChanged[static_cast<std::size_t>(session)] != 0; }
    /// The changed session that costs most more than before, by itself or left over; nothing where none costs more.
    [[nodiscard]] std::optional<int> worstOff() const;
    /// Sessions that are left over and might be placed, in no order.
    [[nodiscard]] const std::vector<int>& leftOver() const { return m_leftOver; }

private:
    void note(int session);
    void listAsLeftOver(int session);
    void strikeFromLeftOver(int session);

    /// What a session costs by itself where it is, or left over.
    [[nodiscard]] int costOf(int session) const;

    WeekState& m_state;
    const PackedWeek& m_week;
    std::vector<int> m_leftOver;
    std::vector<int> m_places;     ///< by session: where in `m_leftOver`
    std::vector<Place> m_before;   ///< by session, of those changed
    std::vector<int> m_costBefore; ///< by session, of those changed
    std::vector<char> m_isChanged;
    std::vector<int> m_changed;
};

}  // namespace chalk::week
