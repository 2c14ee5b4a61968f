#pragma once

#ifndef Q_MOC_RUN  // moc stumbles over the standard library behind it
#include "ui/common/clock.h"
#include "ui/floor/floor_presenter.h"
#endif
#include "ui/floor/lift_rows.h"
#include "ui/shell/page.h"

class QLabel;
class QLineEdit;
class QListView;
class QListWidget;
class QTabBar;

namespace chalk::ui::common {
class ActHistory;
class ActionButton;
class Banner;
class EmptyState;
class Look;
class PageHeader;
class Panel;
}  // namespace chalk::ui::common

namespace chalk::ui::floor {

/// What the page works with. Everything outlives the page.
struct FloorServices {
    const common::Look& look;
    const common::Clock& clock;
    common::ActHistory& acts;
    FloorPresenter& presenter;
};

/// Today's run, and the results of its sessions typed in a line a lift: what follows next time is said at every key, Enter saves
/// and goes to the next lift, Ctrl+Enter to the next client.
class FloorPage : public shell::Page {
    Q_OBJECT

public:
    explicit FloorPage(const FloorServices& services, QWidget* parent = nullptr);

    [[nodiscard]] QString title() const override { return tr("Floor"); }
    void open(const shell::Place& place) override;
    [[nodiscard]] shell::Place place() const override;
    void refresh() override;
    [[nodiscard]] std::vector<shell::KeyHint> keyHints() const override;
    bool closeOrClear() override;
    void setRoom(bool isNarrow, bool isLow) override;

private:
    void build();
    void buildEntry(common::Panel& panel);
    void buildActions();
    void showRun();
    void showSlot(int index);
    void showClient(int index);
    void showLift(int index);
    void readLine();
    void showMessage();
    void save();
    void saveBody(const progression::EventBody& body);
    void skipLift();
    void moveLift(int by);
    void moveClient(int by);
    [[nodiscard]] LiftRow rowOf(const FloorLift& lift) const;
    [[nodiscard]] FloorClient* client();
    [[nodiscard]] FloorLift* lift();

    FloorServices m_services;
    std::vector<RunSlot> m_run;
    std::vector<FloorClient> m_clients;
    int m_slot = -1;
    int m_clientIndex = -1;
    int m_liftIndex = -1;
    bool m_isDoubtAsked = false;
    QString m_failure;        ///< why the last save did not work; empty where it did
    QString m_changed;        ///< what a correction changed

    common::PageHeader* m_header = nullptr;
    common::Panel* m_runPanel = nullptr;
    QListWidget* m_runList = nullptr;
    QTabBar* m_tabs = nullptr;
    QLabel* m_liftName = nullptr;
    QLineEdit* m_line = nullptr;
    QLabel* m_chips = nullptr;
    common::Banner* m_message = nullptr;
    LiftRowsModel* m_rows = nullptr;
    QListView* m_table = nullptr;
    QWidget* m_entry = nullptr;
    common::EmptyState* m_empty = nullptr;
};

}  // namespace chalk::ui::floor
