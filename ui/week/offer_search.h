#pragma once

#include "ui/week/left_over_items.h"

#include <QFutureWatcher>
#include <QObject>

namespace chalk::ui::week {

/// Everything that items are made of, of its own.
struct WeekSnapshot {
    chalk::week::WeekFacts facts;
    chalk::week::WeekCase week;
    chalk::week::WeekPlan plan;
    WeekScene scene;
};

/// Looks beside the window's thread for what would help with conflicts and with what is left over.
class OfferSearch : public QObject {
    Q_OBJECT

public:
    explicit OfferSearch(QObject* parent = nullptr);
    /// Waits for what is under way.
    ~OfferSearch() override;

    /// Of searches that follow each other, only the last one is answered.
    void start(WeekSnapshot week);
    void stop();
    [[nodiscard]] bool isRunning() const { return m_isAsked; }

Q_SIGNALS:
    void found(const std::vector<chalk::ui::week::LeftOverItem>& items);

private:
    QFutureWatcher<std::vector<LeftOverItem>> m_watcher;
    std::optional<WeekSnapshot> m_next;  ///< asked for while another one was under way
    bool m_isAsked = false;
};

}  // namespace chalk::ui::week
