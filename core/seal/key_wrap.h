#pragma once

#include "core/seal/passphrase.h"
#include "core/seal/seal_fault.h"
#include "core/seal/seal_key.h"

#include <QByteArray>

#include <cstdint>

namespace chalk::seal {

/// What one try of a passphrase costs: passes over that much memory (Argon2id, RFC 9106, of one lane).
struct KeyCost {
    std::int64_t passes = 3;
    std::int64_t memoryBytes = 268'435'456;

    /// libsodium's MODERATE: 3 passes over 256 MiB, 0.7 s on a desktop of 2016.
    [[nodiscard]] static KeyCost moderate() { return {}; }
    /// The least that Argon2id of libsodium takes: for tests.
    [[nodiscard]] static KeyCost least() { return {1, 8192}; }

    bool operator==(const KeyCost&) const = default;
};

/// A key that a passphrase opens: the key that the studio is sealed with is random, and this alone changes with the passphrase.
struct WrappedKey {
    KeyCost cost;
    QByteArray salt;         ///< 16 bytes
    QByteArray box;          ///< nonce, the sealed key, its tag: 72 bytes
    QByteArray fingerprint;  ///< of the key inside

    bool operator==(const WrappedKey&) const = default;
};

/// Wraps a key. Takes the time and the memory that `cost` says; NoMemory where it is not there.
[[nodiscard]] SealResult<WrappedKey> wrapKey(const SealKey& key, const Passphrase& passphrase, const KeyCost& cost);
/// The key inside. WrongPassphrase where it does not open; Damaged where `wrapped` has not the form of one or asks for more than 1 GiB or 16 passes.
[[nodiscard]] SealResult<SealKey> unwrapKey(const WrappedKey& wrapped, const Passphrase& passphrase);

/// The form in which a wrapped key stands in a file: 4 + 8 + 16 + 16 + 72 bytes.
[[nodiscard]] QByteArray bytesOf(const WrappedKey& wrapped);
[[nodiscard]] SealResult<WrappedKey> wrappedKeyOf(const QByteArray& bytes);
inline constexpr qsizetype kWrappedKeyBytes = 116;

}  // namespace chalk::seal
