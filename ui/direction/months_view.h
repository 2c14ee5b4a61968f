#pragma once

#ifndef Q_MOC_RUN  // moc stumbles over the standard library behind it
#include "ui/direction/months_case.h"
#endif

#include "ui/common/panel.h"

#include <QFutureWatcher>

#include <memory>

class QLabel;
class QVBoxLayout;

namespace chalk::ui::common {
class LoadingRows;
}

namespace chalk::ui::direction {

class PlanTable;

/// What the months since the first load achieved: lifts and screens then and now, attendance, stalls. Reads beside the window's thread when it is asked
/// for, and only then.
class MonthsView : public common::Panel {
    Q_OBJECT

public:
    /// All outlive the view; `access` is the way to the studio.
    MonthsView(const common::Look& look, store::Access access, const lifts::Catalogue& catalogue, QWidget* parent = nullptr);
    /// Waits for a reading that is under way.
    ~MonthsView() override;

    /// Reads the months of a client; asked again while it reads, it reads what was asked last.
    void read(base::ClientId client, base::Date from, base::Date today);
    [[nodiscard]] bool isReading() const { return m_isReading; }
    void setMonths(const MonthsCase& months);
    [[nodiscard]] PlanTable* liftTable() const { return m_lifts; }
    [[nodiscard]] PlanTable* screenTable() const { return m_screens; }
    /// The words under the tables.
    [[nodiscard]] QString said() const;

Q_SIGNALS:
    void shown();

private:
    struct Asked {
        base::ClientId client;
        base::Date from;
        base::Date today;
    };
    using Read = std::shared_ptr<store::Result<MonthsCase>>;

    void begin();
    void take();

    store::Access m_access;
    const lifts::Catalogue& m_catalogue;
    QFutureWatcher<Read> m_watcher;
    std::optional<Asked> m_asked;   ///< that is to be read next
    bool m_isReading = false;
    common::LoadingRows* m_loading;
    QWidget* m_contents;
    PlanTable* m_lifts;
    PlanTable* m_screens;
    QLabel* m_words;
};

}  // namespace chalk::ui::direction
