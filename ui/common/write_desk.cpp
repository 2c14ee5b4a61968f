#include "ui/common/write_desk.h"

#include "ui/common/conflict_words.h"

#include <QApplication>

namespace chalk::ui::common {

using store::PendingWrite;
using store::StoreError;

WriteDesk::WriteDesk(store::Database& database, Dialogs& dialogs, std::function<QString()> atUtc, const QString& file, QObject* parent)
    : QObject(parent), m_database(database), m_dialogs(dialogs), m_atUtc(std::move(atUtc)), m_outbox(file)
{
    if (const auto loaded = m_outbox.load(); !loaded) {
        m_trouble = loaded.error().message;
    }
}

int WriteDesk::askAbout(const store::Conflict& conflict)
{
    return m_dialogs.ask(QApplication::activeWindow(), conflictQuestion(conflict, conflictNames(m_database, conflict)));
}

store::Result<store::ActOutcome> WriteDesk::write(PendingWrite write, const QString& words)
{
    for (;;) {
        const store::OutboxItem item{store::newToken(), m_atUtc(), words, m_database.author(), write};
        if (m_isHeldBack) {
            return keep(item, {StoreError::Kind::Unreachable, tr("The server does not answer.")});
        }
        auto outcome = store::perform(m_database, write, m_atUtc, item.token);
        if (outcome) {
            return outcome;
        }
        if (outcome.error().kind == StoreError::Kind::Unreachable) {
            return keep(item, outcome.error());
        }
        if (outcome.error().kind != StoreError::Kind::Conflict || outcome.error().conflict == nullptr) {
            return outcome;
        }
        const store::Conflict& conflict = *outcome.error().conflict;
        const ConflictChoice choice = conflictChoice(askAbout(conflict));
        if (choice == ConflictChoice::Theirs) {
            return outcome;
        }
        write = store::overConflict(std::move(write), conflict, choice == ConflictChoice::Both ? store::bothOf(conflict) : std::nullopt);
    }
}

store::Result<store::ActOutcome> WriteDesk::keep(const store::OutboxItem& item, StoreError error)
{
    const auto kept = m_outbox.keep(item);
    Q_EMIT unanswered();
    if (!kept) {
        error.message = tr("%1 And it cannot be kept here: %2").arg(error.message, kept.error().message);
        error.kind = StoreError::Kind::CannotWrite;
    } else {
        error.message = tr("The server does not answer. This is kept here and sent as soon as it does.");
        Q_EMIT waitingChanged();
    }
    return tl::make_unexpected(std::move(error));
}

void WriteDesk::sendWaiting()
{
    if (m_isSending || m_isHeldBack || m_outbox.isEmpty()) {
        return;
    }
    m_isSending = true;  // a question below runs the event loop
    int count = 0;
    while (!m_outbox.isEmpty()) {
        const auto sent = m_outbox.sendFirst(m_database);
        if (sent) {
            ++count;
        } else if (!settleFirst(sent.error())) {
            break;
        }
    }
    m_isSending = false;
    Q_EMIT waitingChanged();
    if (count > 0) {
        Q_EMIT this->sent(count);
    }
}

bool WriteDesk::settleFirst(const StoreError& error)
{
    if (error.kind == StoreError::Kind::Unreachable || error.kind == StoreError::Kind::Busy) {
        if (error.kind == StoreError::Kind::Unreachable) {
            Q_EMIT unanswered();
        }
        return false;
    }
    const store::OutboxItem first = m_outbox.items().front();
    if (error.kind == StoreError::Kind::Conflict && error.conflict != nullptr) {
        const ConflictChoice choice = conflictChoice(askAbout(*error.conflict));
        if (choice == ConflictChoice::Theirs) {
            return m_outbox.dropFirst().has_value();
        }
        const auto merged = choice == ConflictChoice::Both ? store::bothOf(*error.conflict) : std::nullopt;
        return m_outbox.changeFirst(store::overConflict(first.write, *error.conflict, merged)).has_value();
    }
    const int answer = m_dialogs.ask(QApplication::activeWindow(),
                                     {Signal::Warn, tr("The studio does not take what waited: %1.").arg(first.words), error.message, {},
                                      {tr("Keep it waiting"), tr("Throw it away")}, 0});
    return answer == 1 && m_outbox.dropFirst().has_value();
}

}  // namespace chalk::ui::common
