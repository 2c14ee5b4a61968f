#include "ui/common/act_history.h"

namespace chalk::ui::common {

ActHistory::ActHistory(const Clock& clock, Undo undo, QObject* parent) : QObject(parent), m_clock(clock), m_undo(std::move(undo)) {}

void ActHistory::add(base::ActId act, const QString& words)
{
    m_savedMinute = m_clock.minuteOfDay();
    m_done.push_back({act, words, *m_savedMinute});
    m_takenBack.clear();
    Q_EMIT changed();
}

std::optional<DoneAct> ActHistory::lastDone() const
{
    return m_done.empty() ? std::nullopt : std::optional(m_done.back());
}

std::optional<DoneAct> ActHistory::lastTakenBack() const
{
    return m_takenBack.empty() ? std::nullopt : std::optional(m_takenBack.back());
}

void ActHistory::undo()
{
    move(m_done, m_takenBack);
}

void ActHistory::redo()
{
    move(m_takenBack, m_done);
}

void ActHistory::move(std::vector<DoneAct>& from, std::vector<DoneAct>& to)
{
    if (from.empty()) {
        return;
    }
    // Undoing an undo does the thing again, so both ways are the same.
    DoneAct moved = from.back();
    const auto written = m_undo(moved.act);
    if (!written) {
        Q_EMIT failed(written.error());
        return;
    }
    // A long undo is waited for while the window lives: something may have been added meanwhile.
    std::erase_if(from, [&moved](const DoneAct& one) { return one.act == moved.act; });
    m_savedMinute = m_clock.minuteOfDay();
    moved.act = *written;
    moved.minuteOfDay = *m_savedMinute;
    to.push_back(std::move(moved));
    Q_EMIT changed();
    Q_EMIT studioChanged();
}

}  // namespace chalk::ui::common
