#include "ui/floor/session_menu.h"

#include "ui/common/formats.h"
#include "ui/floor/session_words.h"

#include <QAction>
#include <QCoreApplication>
#include <QMenu>

namespace chalk::ui::floor {

namespace {

using sessions::SessionState;
using SetState = std::function<void(const sessions::Session&, SessionState)>;

QString menuText(const char* text)
{
    return QCoreApplication::translate("SessionMenu", text);
}

/// The action of a state with its letter.
QString letteredAction(SessionState state)
{
    switch (state) {
    case SessionState::Missed:
        return menuText(QT_TRANSLATE_NOOP("SessionMenu", "&Missed"));
    case SessionState::CancelledInTime:
        return menuText(QT_TRANSLATE_NOOP("SessionMenu", "Called off &in time"));
    case SessionState::CancelledLate:
        return menuText(QT_TRANSLATE_NOOP("SessionMenu", "Called off &late"));
    case SessionState::Planned:
        return menuText(QT_TRANSLATE_NOOP("SessionMenu", "&Planned again"));
    case SessionState::Withdrawn:
        return menuText(QT_TRANSLATE_NOOP("SessionMenu", "&Take the booking away"));
    case SessionState::Printed:
    case SessionState::Recorded:
        break;
    }
    return stateAction(state);
}

void addStates(QMenu& menu, const sessions::Session& session, base::Date today, int minuteOfDay, const SetState& set)
{
    const auto add = [&](SessionState state) {
        QAction* action = menu.addAction(letteredAction(state), &menu, [session, state, set] { set(session, state); });
        action->setEnabled(session.state != state);
        return action;
    };
    if (session.state == SessionState::Recorded) {
        menu.addAction(menuText(QT_TRANSLATE_NOOP("SessionMenu", "Recorded: delete its records first")))->setEnabled(false);
        return;
    }
    add(SessionState::Missed);
    QAction* inTime = add(SessionState::CancelledInTime);
    QAction* late = add(SessionState::CancelledLate);
    // Which of the two it is by the clock; the coach decides.
    menu.setDefaultAction(isLateNow(session, today, minuteOfDay) ? late : inTime);
    menu.addSeparator();
    if (session.state != SessionState::Planned && session.state != SessionState::Printed) {
        add(SessionState::Planned);
    }
    add(SessionState::Withdrawn);
}

}  // namespace

void fillSessionMenu(QMenu& menu, const RunSlot& slot, base::Date today, int minuteOfDay, const SetState& set)
{
    if (slot.sessions.size() == 1) {
        addStates(menu, slot.sessions.front(), today, minuteOfDay, set);
        return;
    }
    for (std::size_t i = 0; i < slot.sessions.size(); ++i) {
        const QString state = absenceText(slot.sessions[i].state);
        const QString name = slot.firstNames[static_cast<qsizetype>(i)];
        addStates(*menu.addMenu(QStringLiteral("&%1 %2").arg(i + 1).arg(state.isEmpty() ? name : QStringLiteral("%1, %2").arg(name, state))), slot.sessions[i], today, minuteOfDay, set);
    }
    menu.addSeparator();
    QMenu* all = menu.addMenu(menuText(QT_TRANSLATE_NOOP("SessionMenu", "&All of them")));
    for (const SessionState state : {SessionState::Missed, SessionState::CancelledInTime, SessionState::CancelledLate}) {
        all->addAction(letteredAction(state), &menu, [slot, state, set] {
            for (const sessions::Session& session : slot.sessions) {
                if (session.state != SessionState::Recorded && session.state != state) {
                    set(session, state);
                }
            }
        });
    }
}

}  // namespace chalk::ui::floor
