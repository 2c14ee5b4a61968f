#pragma once

#include <QTabBar>

#include <vector>

namespace chalk::ui::common {
class Look;
}

namespace chalk::ui::floor {

/// One client of the slot, and how far the lifts are.
struct ClientTab {
    QString name;
    int done = 0;
    int lifts = 0;

    bool operator==(const ClientTab&) const = default;
};

/// The clients of the slot side by side, with a pip for each lift.
class ClientTabs : public QTabBar {
    Q_OBJECT

public:
    explicit ClientTabs(const common::Look& look, QWidget* parent = nullptr);

    /// Shows these and the chosen one, without telling.
    void setClients(const std::vector<ClientTab>& clients, int chosen);

protected:
    [[nodiscard]] QSize tabSizeHint(int index) const override;
    [[nodiscard]] QSize minimumTabSizeHint(int index) const override { return tabSizeHint(index); }
    void paintEvent(QPaintEvent* event) override;

private:
    void paintTab(QPainter& painter, int index) const;

    const common::Look& m_look;
    std::vector<ClientTab> m_clients;
};

}  // namespace chalk::ui::floor
