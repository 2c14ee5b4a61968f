#pragma once

#include "core/store/backup_shelf.h"
#include "core/store/server_target.h"

#include <QFutureWatcher>
#include <QObject>
#include <QTimer>

#include <atomic>
#include <memory>

namespace chalk::ui::common {

/// A backup that was made, and what became of its copy on another disk.
struct MadeBackup {
    QString file;
    QString furtherFile;   ///< empty where no copy was asked for, or it was not made
    QString furtherFault;  ///< why it was not
};

/// Makes the backups of a studio that is in use: one of each day, whenever somebody asks, and one when it is closed; in a thread of its own with a
/// connection of its own. Each is copied to a further folder where there is one.
class BackupKeeper : public QObject {
    Q_OBJECT

public:
    using Clock = std::function<store::BackupShelf::Moment()>;

    /// `studio` is open meanwhile; `clock` is the one on the wall.
    BackupKeeper(store::Access studio, Clock clock, QObject* parent = nullptr);
    /// Stops the one that is being made.
    ~BackupKeeper() override;

    /// A studio on a server is copied to this machine; none takes its place from here.
    [[nodiscard]] bool isOnServer() const { return store::isServerTarget(m_studio.target); }
    /// The folder on another disk; empty for none.
    void setFurtherFolder(const QString& folder) { m_furtherFolder = folder; }
    [[nodiscard]] const QString& furtherFolder() const { return m_furtherFolder; }
    [[nodiscard]] store::BackupShelf shelf() const { return {store::BackupShelf::folderFor(m_studio.target), m_clock}; }
    [[nodiscard]] const store::Access& studio() const { return m_studio; }
    [[nodiscard]] store::BackupShelf::Moment now() const { return m_clock(); }

    /// Looks whether the day has one, now and every ten minutes, and makes it where not.
    void start();
    /// Looks no more, and stops the one that is being made.
    void end();
    [[nodiscard]] bool isMaking() const { return m_isMaking; }
    /// Makes one; does nothing while one is being made. Told by made() or failed().
    void makeNow();
    /// Makes one in the thread that asks and answers what went wrong: the last thing before the end, when no other is made any more.
    [[nodiscard]] std::optional<store::StoreError> makeLast(const store::Progress& progress = {});
    /// Stops the one that is being made; failed() says Cancelled then.
    void stop();
    /// What was made last since the start, and what went wrong last; a backup that was made takes the fault away.
    [[nodiscard]] const std::optional<MadeBackup>& last() const { return m_last; }
    [[nodiscard]] const std::optional<store::StoreError>& fault() const { return m_fault; }
    /// Whether the place of the backups is on show: what went wrong is said there, and nowhere else meanwhile.
    void setAtPlace(bool isAtPlace);
    [[nodiscard]] bool isAtPlace() const { return m_isAtPlace; }

Q_SIGNALS:
    void begun();
    /// How far the one that is being made is.
    void progressed(int done, int of);
    void made(const chalk::ui::common::MadeBackup& backup);
    /// Each one that did not go and was asked for; of those of the day the first.
    void failed(const chalk::store::StoreError& why);
    /// The place of the backups came on show, or is so no more.
    void placeChanged();

private:
    using Outcome = std::shared_ptr<store::Result<MadeBackup>>;

    void look();
    void make();
    void take();

    store::Access m_studio;
    Clock m_clock;
    QString m_furtherFolder;
    QTimer m_timer;
    QFutureWatcher<Outcome> m_watcher;
    std::shared_ptr<std::atomic_bool> m_isStopped;
    std::optional<MadeBackup> m_last;
    std::optional<store::StoreError> m_fault;
    std::optional<base::Date> m_failedOn;
    bool m_isMaking = false;
    bool m_isAsked = false;
    bool m_isAtPlace = false;
};

}  // namespace chalk::ui::common
