#pragma once

#include "core/store/backup_shelf.h"

#include <QFutureWatcher>
#include <QObject>
#include <QTimer>

#include <atomic>
#include <memory>

namespace chalk::ui::common {

/// Makes the backups of a studio that is in use: one of each day, in a thread of its own with a connection of its own, and one when it is closed.
class BackupKeeper : public QObject {
    Q_OBJECT

public:
    /// `studio` is open meanwhile; `clock` is the one on the wall.
    BackupKeeper(store::Access studio, std::function<store::BackupShelf::Moment()> clock, QObject* parent = nullptr);
    /// Stops the one that is being made.
    ~BackupKeeper() override;

    /// Looks whether the day has one, now and every ten minutes, and makes it where not.
    void start();
    [[nodiscard]] bool isMaking() const { return m_isMaking; }
    /// Makes one and waits for it: the last thing before the end. Answers its file.
    [[nodiscard]] store::Result<QString> makeLast();

Q_SIGNALS:
    void made(const QString& file);
    /// Once for every day on which it did not go.
    void failed(const QString& why);

private:
    using Outcome = std::shared_ptr<store::Result<QString>>;

    void look();
    void take();
    [[nodiscard]] store::BackupShelf shelf() const { return {store::BackupShelf::folderFor(m_studio.target), m_clock}; }

    store::Access m_studio;
    std::function<store::BackupShelf::Moment()> m_clock;
    QTimer m_timer;
    QFutureWatcher<Outcome> m_watcher;
    std::shared_ptr<std::atomic_bool> m_isStopped = std::make_shared<std::atomic_bool>(false);
    std::optional<base::Date> m_failedOn;
    bool m_isMaking = false;
};

}  // namespace chalk::ui::common
