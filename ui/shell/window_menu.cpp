#include "ui/shell/window_menu.h"

#include "ui/shell/menu_reveal.h"

#include <QAction>
#include <QMenu>
#include <QMenuBar>

namespace chalk::ui::shell {

namespace {

void fillMenu(QMenu* menu, const QList<QAction*>& actions)
{
    for (QAction* action : actions) {
        if (action == nullptr) {
            menu->addSeparator();
        } else {
            menu->addAction(action);
        }
    }
}

}  // namespace

WindowMenu::WindowMenu(QMenuBar* bar, const MenuPlan& plan) : QObject(bar)
{
    fillMenu(bar->addMenu(tr("&Studio")), plan.studio);
    fillMenu(bar->addMenu(tr("&Edit")), plan.edit);
    m_page = bar->addMenu(tr("&Page"));
    fillMenu(bar->addMenu(tr("&Go")), plan.go);
    fillMenu(bar->addMenu(tr("&View")), plan.view);
    fillMenu(bar->addMenu(tr("&Help")), plan.help);
    new MenuReveal(bar);
}

void WindowMenu::setPageActions(const QString& name, const QList<QAction*>& actions)
{
    m_page->clear();
    m_page->setTitle(name.isEmpty() ? tr("&Page") : QString(name).replace(QLatin1Char('&'), QStringLiteral("&&")));
    fillMenu(m_page, actions);
    m_page->menuAction()->setVisible(!actions.isEmpty());
}

}  // namespace chalk::ui::shell
