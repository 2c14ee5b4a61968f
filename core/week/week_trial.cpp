#include "core/week/week_trial.h"

namespace chalk::week {

WeekTrial::WeekTrial(WeekState& state, const PackedWeek& week)
    : m_state(state), m_week(week), m_places(week.sessions.size()), m_before(week.sessions.size()), m_costBefore(week.sessions.size()),
      m_isChanged(week.sessions.size())
{
    for (std::size_t i = 0; i < week.sessions.size(); ++i) {
        if (!week.sessions[i].isFixed && week.sessions[i].candidates.size() > 0 && !state.at(static_cast<int>(i)).isSomewhere()) {
            listAsLeftOver(static_cast<int>(i));
        }
    }
}

void WeekTrial::note(int session)
{
    const auto at = static_cast<std::size_t>(session);
    if (m_isChanged[at] == 0) {
        m_isChanged[at] = 1;
        m_before[at] = m_state.at(session);
        m_costBefore[at] = costOf(session);
        m_changed.push_back(session);
    }
}

void WeekTrial::put(int session, Place place)
{
    note(session);
    m_state.put(session, place);
    strikeFromLeftOver(session);
}

void WeekTrial::take(int session)
{
    note(session);
    m_state.take(session);
    listAsLeftOver(session);
}

void WeekTrial::undo()
{
    for (const int session : m_changed) {
        if (m_state.at(session).isSomewhere()) {
            m_state.take(session);
            listAsLeftOver(session);
        }
    }
    for (const int session : m_changed) {
        const auto at = static_cast<std::size_t>(session);
        if (m_before[at].isSomewhere()) {
            m_state.put(session, m_before[at]);
            strikeFromLeftOver(session);
        }
    }
    keep();
}

void WeekTrial::keep()
{
    for (const int session : m_changed) {
        m_isChanged[static_cast<std::size_t>(session)] = 0;
    }
    m_changed.clear();
}

int WeekTrial::costOf(int session) const
{
    return m_state.at(session).isSomewhere() ? m_state.ownCost(session) : m_week.session(session).leftOverCost;
}

std::optional<int> WeekTrial::worstOff() const
{
    std::optional<int> worst;
    int most = 0;
    for (const int session : m_changed) {
        if (const int more = costOf(session) - m_costBefore[static_cast<std::size_t>(session)]; more > most) {
            most = more;
            worst = session;
        }
    }
    return worst;
}

void WeekTrial::listAsLeftOver(int session)
{
    m_places[static_cast<std::size_t>(session)] = static_cast<int>(m_leftOver.size());
    m_leftOver.push_back(session);
}

void WeekTrial::strikeFromLeftOver(int session)
{
    const int place = m_places[static_cast<std::size_t>(session)];
    m_leftOver[static_cast<std::size_t>(place)] = m_leftOver.back();
    m_places[static_cast<std::size_t>(m_leftOver.back())] = place;
    m_leftOver.pop_back();
}

}  // namespace chalk::week
