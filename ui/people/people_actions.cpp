#include "ui/people/people_actions.h"

#include "ui/shell/action_finder.h"
#include "ui/shell/main_window.h"

#include <QAction>
#include <QCoreApplication>

namespace chalk::ui::people {

namespace {

void addWayTo(shell::MainWindow& window, const QString& page, const QString& words, const QString& icon)
{
    auto* action = new QAction(words, &window);
    action->setProperty(shell::kActionIcon, icon);
    QObject::connect(action, &QAction::triggered, &window, [&window, page] { window.goTo({.page = page}); });
    window.addAction(action);
}

}  // namespace

void addPeopleActions(shell::MainWindow& window)
{
    addWayTo(window, QStringLiteral("import"), QCoreApplication::translate("PeopleActions", "Import a list…"), QStringLiteral("roster"));
    addWayTo(window, QStringLiteral("duplicates"), QCoreApplication::translate("PeopleActions", "Find duplicates…"), QStringLiteral("client"));
}

}  // namespace chalk::ui::people
