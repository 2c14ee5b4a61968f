#pragma once

#include "core/planning/session_contents.h"

#include <QStringList>
#include <QWidget>

#include <functional>

class QMenu;

namespace chalk::ui::onboarding {

/// What the sessions of a week hold, by session of the template.
struct WeekContents {
    planning::SessionContents all;    ///< with patterns that have no lift now, which stay behind the others
    planning::SessionContents shown;  ///< those that have one, in the order in which they are done
    QStringList names;                ///< of the sessions
};

/// The lifts of one session as a row of buttons in their order. Each has a menu: earlier, later, to another session, out of this one.
/// Alt+Left and Alt+Right move the lift that has the focus.
class SessionLifts : public QWidget {
    Q_OBJECT

public:
    SessionLifts(std::size_t session, WeekContents contents, QWidget* parent = nullptr);

    /// What a lift's button is called; it is the same after the week was worked out anew.
    [[nodiscard]] static QString nameOf(lifts::Pattern pattern, const QString& session);

Q_SIGNALS:
    /// What all sessions hold now, and the button that the focus is wanted at.
    void contentsChanged(const chalk::planning::SessionContents& contents, const QString& focusName);

private:
    void addLift(lifts::Pattern pattern);
    void fillMenu(QMenu& menu, lifts::Pattern pattern);
    /// Works on a copy and tells of it.
    void change(lifts::Pattern pattern, std::size_t focusSession, const std::function<void(planning::SessionContents&)>& work);
    [[nodiscard]] bool holds(std::size_t session, lifts::Pattern pattern) const;
    [[nodiscard]] QString sessionName(std::size_t session) const { return m_contents.names.value(static_cast<qsizetype>(session)); }

    std::size_t m_session;
    WeekContents m_contents;
};

}  // namespace chalk::ui::onboarding
