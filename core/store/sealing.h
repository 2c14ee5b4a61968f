#pragma once

#include "core/seal/key_wrap.h"
#include "core/store/database.h"
#include "core/store/studio_import.h"

namespace chalk::store {

/// The passphrase of a studio that is kept in a file. Each of these is one transaction; nothing is changed where it fails or is stopped. A server's studio is
/// refused: there the roles guard it.
class Sealing {
public:
    explicit Sealing(Database& database, seal::KeyCost cost = seal::KeyCost::moderate()) : m_database(database), m_cost(cost) {}

    /// Seals all texts (`sealedTables`) with a new key that the passphrase opens, and writes the file anew, so that no text stays in a page that is free or in
    /// the log beside it. The keys are on the ring of this database then. `progress` is told rows. Busy where another program keeps the file from being
    /// written anew: then the texts are sealed, but what they were may still be read from it; `rewrite` makes up for it.
    [[nodiscard]] Result<void> set(const seal::Passphrase& passphrase, const Progress& progress = {});
    /// Another passphrase for the same key: a moment's work, and backups made before keep the former one. Locked where `former` is not the passphrase.
    [[nodiscard]] Result<void> change(const seal::Passphrase& former, const seal::Passphrase& passphrase);
    /// Opens all texts for good. Locked where `passphrase` is not the right one.
    [[nodiscard]] Result<void> remove(const seal::Passphrase& passphrase, const Progress& progress = {});
    /// Writes the file anew and empties the log beside it.
    [[nodiscard]] Result<void> rewrite();

private:
    [[nodiscard]] Result<void> checkFile() const;
    [[nodiscard]] Result<seal::SealKey> keyOf(const seal::Passphrase& passphrase) const;

    Database& m_database;
    seal::KeyCost m_cost;
};

/// Whether a text may be a new passphrase.
[[nodiscard]] bool isLongEnough(const QString& passphrase);

/// Unlocks the keys of a studio that is open and locked, by the passphrase; takes a second, and is made for a thread of its own.
[[nodiscard]] Result<void> unlock(const Access& access, const seal::Passphrase& passphrase);

}  // namespace chalk::store
