#pragma once

#include "core/seal/key_wrap.h"

#include <QIODevice>
#include <QString>

#include <functional>

namespace chalk::seal {

/// A whole file, sealed: `CHALKSF1`, the wrapped key (`bytesOf`), then a secretstream (XChaCha20-Poly1305) of chunks of 64 KiB, the first of which is bound
/// to what stands before it. A chunk that is altered, missing, doubled or in another order is found, and so is an end that is missing. The passphrase that
/// the file was sealed with opens it, for ever.
struct FileKey {
    SealKey key;         ///< the key inside of `wrapped`, for files
    WrappedKey wrapped;
};

/// Told the bytes done and all there are; false stops.
using SealProgress = std::function<bool(qint64, qint64)>;

/// Whether a file begins like a sealed one.
[[nodiscard]] bool isSealedFile(const QString& file);
/// What has to be opened by a passphrase before the file can be: then `openStream` with the key `forUse(KeyUse::Files)`.
[[nodiscard]] SealResult<WrappedKey> readSealedHead(QIODevice& in);
[[nodiscard]] SealResult<WrappedKey> sealedHeadOf(const QString& file);

/// Seals what `in` holds.
[[nodiscard]] SealResult<void> sealStream(QIODevice& in, QIODevice& out, const FileKey& key, const SealProgress& progress = {});
/// Opens what `in`, at its start, holds. `out` has what was sound before a fault; null only checks.
[[nodiscard]] SealResult<void> openStream(QIODevice& in, QIODevice* out, const SealKey& key, const SealProgress& progress = {});

/// The same from file to file. `to` is not there yet; only its owner can read it, it is synced, and nothing of it stays where it fails.
[[nodiscard]] SealResult<void> sealFile(const QString& from, const QString& to, const FileKey& key, const SealProgress& progress = {});
[[nodiscard]] SealResult<void> openSealedFile(const QString& from, const QString& to, const SealKey& key, const SealProgress& progress = {});
/// Reads a sealed file through without writing anything.
[[nodiscard]] SealResult<void> checkSealedFile(const QString& file, const SealKey& key, const SealProgress& progress = {});

/// A key of its own for a file that is handed on, opened by `passphrase`.
[[nodiscard]] SealResult<FileKey> newFileKey(const Passphrase& passphrase, const KeyCost& cost);

}  // namespace chalk::seal
