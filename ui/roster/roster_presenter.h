#pragma once

#include "ui/common/clock.h"
#include "ui/roster/roster_source.h"

#include <QFutureWatcher>
#include <QObject>

#include <memory>

namespace chalk::ui::roster {

/// Reads the roster beside the window's thread and keeps the last one that could be read. Asked again while it reads, it reads once
/// more afterwards.
class RosterPresenter : public QObject {
    Q_OBJECT

public:
    /// `clock` outlives the presenter.
    RosterPresenter(std::unique_ptr<RosterSource> source, const common::Clock& clock, QObject* parent = nullptr);
    /// Waits for a reading that is under way.
    ~RosterPresenter() override;

    /// Reads everything again; `loaded` or `failed` says when it is done.
    void refresh();
    [[nodiscard]] bool isReading() const { return m_isReading; }
    /// The last roster that could be read; empty before the first.
    [[nodiscard]] const RosterView& view() const { return m_view; }
    [[nodiscard]] bool hasView() const { return m_hasView; }
    /// The day that the view is of.
    [[nodiscard]] base::Date day() const { return m_day; }

Q_SIGNALS:
    void begun();
    void loaded();
    /// The last view stays as it is.
    void failed(const QString& message);

private:
    using Reading = std::shared_ptr<store::Result<RosterView>>;

    void take();

    std::shared_ptr<RosterSource> m_source;
    const common::Clock& m_clock;
    QFutureWatcher<Reading> m_watcher;
    RosterView m_view;
    base::Date m_day;
    base::Date m_askedDay;
    bool m_hasView = false;
    bool m_isReading = false;  ///< until `take`: the watcher does not know of a thread that has not begun
    bool m_isStale = false;  ///< asked again meanwhile
};

}  // namespace chalk::ui::roster
