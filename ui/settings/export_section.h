#pragma once

#include "core/base/date.h"
#include "core/store/access.h"
#include "core/store/open_files.h"
#include "ui/settings/settings_section.h"

#include <QFutureWatcher>

#include <atomic>
#include <functional>
#include <memory>

class QCheckBox;
class QLabel;
class QProgressBar;

namespace chalk::ui::common {
class ActionButton;
class Clock;
class Dialogs;
class Look;
class Panel;
}  // namespace chalk::ui::common

namespace chalk::ui::settings {

/// What the section works with. What is referred to outlives it.
struct ExportServices {
    store::Access studio;
    std::function<base::CoachId()> author;  ///< who is at work: written into the history
    const common::Look& look;
    const common::Clock& clock;
    common::Dialogs& dialogs;
};

/// The whole studio as open files: which forms, where to; beside the window's thread, with progress and a stop.
class ExportSection : public SettingsSection {
    Q_OBJECT

public:
    explicit ExportSection(ExportServices services, QWidget* parent = nullptr);
    /// Stops what is under way.
    ~ExportSection() override;

    void refresh() override;
    /// Stops an export that is under way.
    bool closeOrClear() override;
    [[nodiscard]] bool isRunning() const { return m_isRunning; }

private:
    using Outcome = std::shared_ptr<store::Result<int>>;

    void build();
    void addForms(common::Panel& panel);
    void addFoot(common::Panel& panel);
    void begin();
    void run(const QString& folder);
    void take();
    void showState();

    ExportServices m_services;
    QCheckBox* m_json;
    QCheckBox* m_csv;
    common::ActionButton* m_export;
    common::ActionButton* m_stop;
    common::ActionButton* m_open;
    QProgressBar* m_progress;
    QLabel* m_note;
    QString m_folder;
    QFutureWatcher<Outcome> m_watcher;
    std::shared_ptr<std::atomic_bool> m_isStopped;
    bool m_isRunning = false;
};

}  // namespace chalk::ui::settings
