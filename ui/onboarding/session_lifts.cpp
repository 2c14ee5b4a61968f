#include "ui/onboarding/session_lifts.h"

#include "ui/common/flow_layout.h"
#include "ui/common/formats.h"

#include <QAction>
#include <QMenu>
#include <QToolButton>

#include <algorithm>

namespace chalk::ui::onboarding {

SessionLifts::SessionLifts(std::size_t session, WeekContents contents, QWidget* parent)
    : QWidget(parent), m_session(session), m_contents(std::move(contents))
{
    setLayout(new common::FlowLayout(6, 4));
    for (const lifts::Pattern pattern : m_contents.shown[m_session]) {
        addLift(pattern);
    }
    QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Minimum);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
}

QString SessionLifts::nameOf(lifts::Pattern pattern, const QString& session)
{
    return tr("%1 in session %2").arg(common::patternName(pattern), session);
}

void SessionLifts::addLift(lifts::Pattern pattern)
{
    auto* button = new QToolButton(this);
    button->setText(common::patternName(pattern));
    button->setAccessibleName(nameOf(pattern, sessionName(m_session)));
    button->setToolTip(tr("Its place and its session"));
    button->setPopupMode(QToolButton::InstantPopup);
    button->setFocusPolicy(Qt::StrongFocus);
    button->setProperty("sizing", QStringLiteral("small"));
    auto* menu = new QMenu(button);
    fillMenu(*menu, pattern);
    button->setMenu(menu);
    const auto addKey = [this, button, pattern](Qt::Key key, int places) {
        auto* action = new QAction(button);
        action->setShortcut(QKeySequence(Qt::ALT | key));
        action->setShortcutContext(Qt::WidgetShortcut);
        connect(action, &QAction::triggered, this, [this, pattern, places] {
            change(pattern, m_session, [this, pattern, places](planning::SessionContents& contents) { planning::shift(contents, m_session, pattern, places); });
        });
        button->addAction(action);
    };
    addKey(Qt::Key_Left, -1);
    addKey(Qt::Key_Right, 1);
    layout()->addWidget(button);
}

bool SessionLifts::holds(std::size_t session, lifts::Pattern pattern) const
{
    const auto& patterns = m_contents.all[session];
    return std::find(patterns.begin(), patterns.end(), pattern) != patterns.end();
}

void SessionLifts::fillMenu(QMenu& menu, lifts::Pattern pattern)
{
    const auto& own = m_contents.shown[m_session];
    const auto add = [this, &menu, pattern](const QString& text, bool isAllowed, std::size_t focusSession, std::function<void(planning::SessionContents&)> work) {
        QAction* action = menu.addAction(text);
        action->setEnabled(isAllowed);
        connect(action, &QAction::triggered, this, [this, pattern, focusSession, work = std::move(work)] { change(pattern, focusSession, work); });
        return action;
    };
    const std::size_t here = m_session;
    add(tr("Earlier"), own.front() != pattern, here, [=](planning::SessionContents& all) { planning::shift(all, here, pattern, -1); })
        ->setText(tr("Earlier\tAlt+Left"));
    add(tr("Later"), own.back() != pattern, here, [=](planning::SessionContents& all) { planning::shift(all, here, pattern, 1); })
        ->setText(tr("Later\tAlt+Right"));
    menu.addSeparator();
    for (std::size_t other = 0; other < m_contents.all.size(); ++other) {
        if (other == here) {
            continue;
        }
        const QString name = sessionName(other);
        const bool isThere = holds(other, pattern);
        add(tr("Move to session %1").arg(name), own.size() > 1 && !isThere, other, [=](planning::SessionContents& all) {
            planning::addTo(all, other, pattern);
            planning::takeOutOf(all, here, pattern);
        });
        add(tr("Also in session %1").arg(name), !isThere, other, [=](planning::SessionContents& all) { planning::addTo(all, other, pattern); });
    }
    menu.addSeparator();
    add(tr("Take out of session %1").arg(sessionName(here)), own.size() > 1, here,
        [=](planning::SessionContents& all) { planning::takeOutOf(all, here, pattern); });
}

void SessionLifts::change(lifts::Pattern pattern, std::size_t focusSession, const std::function<void(planning::SessionContents&)>& work)
{
    planning::SessionContents changed = m_contents.all;
    work(changed);
    if (changed != m_contents.all) {
        Q_EMIT contentsChanged(changed, nameOf(pattern, sessionName(focusSession)));
    }
}

}  // namespace chalk::ui::onboarding
