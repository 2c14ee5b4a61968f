#pragma once

#include "core/store/key_ring.h"
#include "core/store/studio_import.h"

#include <QTemporaryDir>

#include <memory>

namespace chalk::store {

/// Seals a file that was just written, whole, in its place; the sealed one is read through before it takes the name. Nothing is changed where it fails, and no
/// other file stays.
[[nodiscard]] Result<void> sealCopy(const QString& file, const seal::FileKey& key, const Progress& progress = {});

/// A backup that can be read as a studio's file: itself, or where it is sealed a copy that nobody else can read and that goes away with this.
class OpenedCopy {
public:
    /// Opens a sealed backup by the keys of the studio, where they are its own, else by `passphrase`. Locked where neither opens it.
    [[nodiscard]] static Result<OpenedCopy> of(const QString& file, const KeyRing& keys, const seal::Passphrase& passphrase, const Progress& progress = {});

    [[nodiscard]] const QString& path() const { return m_path; }
    [[nodiscard]] bool wasSealed() const { return m_folder != nullptr; }

private:
    QString m_path;
    std::unique_ptr<QTemporaryDir> m_folder;
};

}  // namespace chalk::store
