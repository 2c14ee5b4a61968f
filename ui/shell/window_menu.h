#pragma once

#include <QList>
#include <QObject>

class QAction;
class QMenu;
class QMenuBar;

namespace chalk::ui::shell {

/// The actions of the window by the menu that they stand in. A null pointer is a line between them.
struct MenuPlan {
    QList<QAction*> studio;
    QList<QAction*> edit;
    QList<QAction*> go;
    QList<QAction*> view;
    QList<QAction*> help;
};

/// The menu bar: all that the window and its page can be told to do, with their keys. It is out of sight until Alt is pressed.
class WindowMenu : public QObject {
    Q_OBJECT

public:
    WindowMenu(QMenuBar* bar, const MenuPlan& plan);

    /// The actions of the page on show, under the page's name. A page without any has no menu.
    void setPageActions(const QString& name, const QList<QAction*>& actions);

private:
    QMenu* m_page;
};

}  // namespace chalk::ui::shell
