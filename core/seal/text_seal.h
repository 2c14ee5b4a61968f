#pragma once

#include "core/seal/seal_fault.h"
#include "core/seal/seal_key.h"

#include <QByteArray>
#include <QString>

namespace chalk::seal {

/// Seals a text with XChaCha20-Poly1305 (AEAD, a random nonce of 192 bits). `place` is what it belongs to: it opens nowhere else. The answer is a mark that
/// nobody types, and base64; an empty text stays empty.
[[nodiscard]] QString sealText(const SealKey& key, const QByteArray& place, const QString& text);
/// Damaged where it was altered, belongs to another place, or was sealed with another key.
[[nodiscard]] SealResult<QString> openText(const SealKey& key, const QByteArray& place, const QString& sealedText);
[[nodiscard]] bool isSealedText(const QString& text);

/// The same for bytes, which stay bytes.
[[nodiscard]] QByteArray sealBytes(const SealKey& key, const QByteArray& place, const QByteArray& bytes);
[[nodiscard]] SealResult<QByteArray> openBytes(const SealKey& key, const QByteArray& place, const QByteArray& sealedBytes);
[[nodiscard]] bool isSealedBytes(const QByteArray& bytes);

}  // namespace chalk::seal
