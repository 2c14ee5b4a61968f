#pragma once

#include "core/store/pending_write.h"

#include <QString>

#include <vector>

namespace chalk::store {

/// A write that the server has not acknowledged.
struct OutboxItem {
    QString token;     ///< under which it is sent, however often
    QString atUtc;     ///< when it was done, ISO 8601
    QString words;     ///< what it is, for people: `Back squat recorded for Joaquin`
    base::CoachId coach;  ///< whose it is; none where nobody said
    PendingWrite write;

    bool operator==(const OutboxItem&) const = default;
};

/// Writes that wait for a server, in a file of the person's own: they outlive the program, and are sent in their order. The studio knows each of
/// them by its token, so what was done without an answer is not done again.
/// The file is plain text, sealed by nothing: what was lifted, notes and names stand in it as they were typed. Its owner alone can read it (mode 0600),
/// and it is gone once all of it was sent.
class Outbox {
public:
    /// The file is read by load(). It need not be there.
    explicit Outbox(QString file) : m_file(std::move(file)) {}
    /// The file for a studio: in the person's own data folder.
    [[nodiscard]] static QString fileFor(const QString& target);

    /// Takes in what an earlier run left. A line that cannot be read is named and stays in the file for good.
    [[nodiscard]] Result<void> load();
    [[nodiscard]] const std::vector<OutboxItem>& items() const { return m_items; }
    [[nodiscard]] bool isEmpty() const { return m_items.empty(); }

    /// Keeps a write; it is on disk when this answers. One about the same thing that waits already gives way to it.
    [[nodiscard]] Result<void> keep(const OutboxItem& item);
    /// Sends the first one, and forgets it once it is done; what was done without an answer is found by its token. Fails with what the studio says:
    /// Unreachable leaves all as it is; after any other answer it stays the first until it is settled.
    [[nodiscard]] Result<void> sendFirst(Database& database);
    /// Puts another write in the place of the first one, under a token of its own.
    [[nodiscard]] Result<void> changeFirst(const PendingWrite& write);
    [[nodiscard]] Result<void> dropFirst();

private:
    [[nodiscard]] Result<void> save();
    [[nodiscard]] Result<bool> isDone(Database& database, const QString& token);

    QString m_file;
    std::vector<OutboxItem> m_items;
    QStringList m_unread;  ///< lines that cannot be read, kept as they are
};

}  // namespace chalk::store
