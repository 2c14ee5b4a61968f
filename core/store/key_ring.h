#pragma once

#include "core/seal/key_wrap.h"
#include "core/seal/sealed_file.h"
#include "core/store/store_error.h"

#include <memory>
#include <mutex>

namespace chalk::store {

/// The keys of a sealed studio, shared by all connections of the program to it. Any thread may ask.
class KeyRing {
public:
    KeyRing() = default;
    explicit KeyRing(seal::Passphrase passphrase) : m_passphrase(std::move(passphrase)) {}

    /// A passphrase for what is opened next.
    void offer(seal::Passphrase passphrase);
    /// Makes the keys inside of `wrapped` ready: at once where they are, else by the passphrase that was offered, which takes a second and is forgotten then.
    /// Fails as Locked where there is none or another one is needed; `target` is what the message names.
    [[nodiscard]] Result<void> open(const seal::WrappedKey& wrapped, const QString& target);
    /// Takes the key of a studio that has just been sealed.
    void take(const seal::SealKey& studioKey);

    /// Wipes what opens texts. What seals and opens backups stays: a backup shows nobody more than the studio's file does, and the last one of a day is
    /// made however the program is left.
    void lock();
    [[nodiscard]] bool isLocked() const;
    /// Whether this ring had opened what has that fingerprint before it was locked.
    [[nodiscard]] bool knows(const QByteArray& fingerprint) const;

    /// What texts are sealed with; null where it is locked, or has another key.
    [[nodiscard]] std::shared_ptr<const seal::SealKey> texts(const QByteArray& fingerprint) const;
    [[nodiscard]] std::shared_ptr<const seal::SealKey> files(const QByteArray& fingerprint) const;

private:
    void keep(const seal::SealKey& studioKey);

    mutable std::mutex m_mutex;
    seal::Passphrase m_passphrase;
    bool m_wasWrong = false;
    QByteArray m_fingerprint;
    std::shared_ptr<const seal::SealKey> m_texts;  ///< wiped when the last one who is at it lets go
    std::shared_ptr<const seal::SealKey> m_files;
};

/// What a fault of a sealed thing is called here; `what` begins the message.
[[nodiscard]] StoreError errorOfSeal(seal::SealFault fault, const QString& what);

}  // namespace chalk::store
