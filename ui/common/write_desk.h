#pragma once

#include "core/store/outbox.h"
#include "ui/common/dialogs.h"

#include <QObject>

namespace chalk::ui::common {

/// Writes what people do at once, or, where the server does not answer, as soon as it does again. Where somebody else was faster, the person sees
/// both versions and decides. What waits is kept in a file of the person's own and outlives the program.
class WriteDesk : public QObject {
    Q_OBJECT

public:
    /// `file` is that of the outbox. `atUtc` answers the present moment, ISO 8601.
    WriteDesk(store::Database& database, Dialogs& dialogs, std::function<QString()> atUtc, const QString& file, QObject* parent = nullptr);

    /// Writes it; `words` say what it is, `Back squat for Joaquin`. Fails as the studio does, and then nothing was written. Unreachable says that it
    /// waits and is sent later; what was on its way without an answer is not done twice.
    [[nodiscard]] store::Result<store::ActOutcome> write(store::PendingWrite write, const QString& words);
    /// Where a person is asked.
    [[nodiscard]] Dialogs& dialogs() { return m_dialogs; }
    /// What waits, the earliest first.
    [[nodiscard]] const std::vector<store::OutboxItem>& waiting() const { return m_outbox.items(); }
    /// Sends what waits, in its order, until all is sent or the server does not answer. What the studio does not take is shown and decided.
    void sendWaiting();
    /// From here on nothing is sent, and whatever is written waits at once: for as long as the server is known not to answer.
    void holdBack(bool isHeldBack) { m_isHeldBack = isHeldBack; }
    /// Why the file of what waits could not be read; empty where it could.
    [[nodiscard]] const QString& trouble() const { return m_trouble; }

Q_SIGNALS:
    /// The server did not answer to a write. Comes before waitingChanged().
    void unanswered();
    /// waiting() is different.
    void waitingChanged();
    /// So many writes that waited are in the studio now.
    void sent(int count);

private:
    [[nodiscard]] store::Result<store::ActOutcome> keep(const store::OutboxItem& item, store::StoreError error);
    /// Whether it is settled and sending goes on.
    bool settleFirst(const store::StoreError& error);
    [[nodiscard]] int askAbout(const store::Conflict& conflict);

    store::Database& m_database;
    Dialogs& m_dialogs;
    std::function<QString()> m_atUtc;
    store::Outbox m_outbox;
    QString m_trouble;
    bool m_isSending = false;
    bool m_isHeldBack = false;
};

}  // namespace chalk::ui::common
