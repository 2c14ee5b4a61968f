#include "core/store/key_ring.h"

namespace chalk::store {

using seal::SealFault;

void KeyRing::offer(seal::Passphrase passphrase)
{
    const std::lock_guard guard(m_mutex);
    m_passphrase = std::move(passphrase);
    m_wasWrong = false;
}

Result<void> KeyRing::open(const seal::WrappedKey& wrapped, const QString& target)
{
    seal::Passphrase passphrase;
    {
        const std::lock_guard guard(m_mutex);
        if (m_texts && m_fingerprint == wrapped.fingerprint) {
            return {};
        }
        if (m_passphrase.isEmpty()) {
            return tl::make_unexpected(m_wasWrong ? errorOfSeal(SealFault::WrongPassphrase, target)
                                                  : StoreError{StoreError::Kind::Locked, QStringLiteral("%1 is sealed: it needs its passphrase").arg(target)});
        }
        passphrase = m_passphrase;
    }
    // A second of work: others may go on meanwhile.
    const auto key = seal::unwrapKey(wrapped, passphrase);
    const std::lock_guard guard(m_mutex);
    m_passphrase = seal::Passphrase();
    if (!key) {
        m_wasWrong = key.error() == SealFault::WrongPassphrase;
        return tl::make_unexpected(errorOfSeal(key.error(), target));
    }
    keep(*key);
    return {};
}

void KeyRing::take(const seal::SealKey& studioKey)
{
    const std::lock_guard guard(m_mutex);
    keep(studioKey);
}

void KeyRing::keep(const seal::SealKey& studioKey)
{
    m_wasWrong = false;
    m_fingerprint = studioKey.fingerprint();
    m_texts = std::make_shared<const seal::SealKey>(studioKey.forUse(seal::KeyUse::Texts));
    m_files = std::make_shared<const seal::SealKey>(studioKey.forUse(seal::KeyUse::Files));
}

void KeyRing::lock()
{
    const std::lock_guard guard(m_mutex);
    m_texts.reset();
    m_passphrase = seal::Passphrase();
    m_wasWrong = false;
}

bool KeyRing::isLocked() const
{
    const std::lock_guard guard(m_mutex);
    return m_files != nullptr && m_texts == nullptr;
}

bool KeyRing::knows(const QByteArray& fingerprint) const
{
    const std::lock_guard guard(m_mutex);
    return m_files != nullptr && m_fingerprint == fingerprint;
}

std::shared_ptr<const seal::SealKey> KeyRing::texts(const QByteArray& fingerprint) const
{
    const std::lock_guard guard(m_mutex);
    return m_fingerprint == fingerprint ? m_texts : nullptr;
}

std::shared_ptr<const seal::SealKey> KeyRing::files(const QByteArray& fingerprint) const
{
    const std::lock_guard guard(m_mutex);
    return m_fingerprint == fingerprint ? m_files : nullptr;
}

StoreError errorOfSeal(SealFault fault, const QString& what)
{
    using Kind = StoreError::Kind;
    switch (fault) {
    case SealFault::WrongPassphrase:
        return {Kind::Locked, QStringLiteral("That is not the passphrase of %1").arg(what)};
    case SealFault::Damaged:
        return {Kind::Damaged, QStringLiteral("%1 is damaged: what is sealed in it does not open").arg(what)};
    case SealFault::NoMemory:
        return {Kind::Other, QStringLiteral("There is not enough memory to work on the passphrase of %1").arg(what)};
    case SealFault::CannotRead:
        return {Kind::CannotRead, QStringLiteral("%1 cannot be read").arg(what)};
    case SealFault::CannotWrite:
        return {Kind::CannotWrite, QStringLiteral("%1 cannot be written").arg(what)};
    case SealFault::Cancelled:
        return {Kind::Cancelled, QStringLiteral("Stopped")};
    }
    return {Kind::Other, what};
}

}  // namespace chalk::store
