#pragma once

#include "ui/shell/open_clients.h"
#include "ui/shell/page_registry.h"

#include <QWidget>

#include <map>

class QLabel;
class QVBoxLayout;

namespace chalk::ui::common {
class Look;
}

namespace chalk::ui::shell {

class RailButton;

/// The left edge of the window, 80 px wide: the registered pages, the clients opened last, and the pages of the foot.
class Rail : public QWidget {
    Q_OBJECT

public:
    Rail(const common::Look& look, const PageRegistry& pages, QWidget* parent = nullptr);

    /// Marks the page on show; an empty key marks none.
    void setPresentPage(const QString& key);
    void setOpenClients(const OpenClients& clients);

Q_SIGNALS:
    void pageChosen(const QString& key);
    void clientChosen(chalk::base::ClientId client);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void addPages(const PageRegistry& pages, RailSlot slot);

    const common::Look& m_look;
    QVBoxLayout* m_column;
    QVBoxLayout* m_clientColumn;
    QLabel* m_clientCaption;
    QWidget* m_clientLine;
    std::map<QString, RailButton*> m_pages;
    std::vector<RailButton*> m_clients;
};

}  // namespace chalk::ui::shell
