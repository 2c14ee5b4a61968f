#include "core/seal/key_wrap.h"

#include <QtEndian>

#include <sodium.h>

namespace chalk::seal {

namespace {

constexpr qsizetype kPassesBytes = 4;
constexpr qsizetype kMemoryBytes = 8;
constexpr qsizetype kSaltBytes = crypto_pwhash_SALTBYTES;
constexpr qsizetype kPrintBytes = 16;
constexpr qsizetype kNonceBytes = crypto_aead_xchacha20poly1305_ietf_NPUBBYTES;
constexpr qsizetype kBoxBytes = kNonceBytes + static_cast<qsizetype>(SealKey::kBytes) + static_cast<qsizetype>(crypto_aead_xchacha20poly1305_ietf_ABYTES);
static_assert(kPassesBytes + kMemoryBytes + kSaltBytes + kPrintBytes + kBoxBytes == kWrappedKeyBytes);
constexpr std::int64_t kMostPasses = 16;
constexpr std::int64_t kMostMemory = 1'073'741'824;

const unsigned char* wrapBytes(const QByteArray& bytes)
{
    return reinterpret_cast<const unsigned char*>(bytes.constData());
}

bool isSound(const WrappedKey& wrapped)
{
    const KeyCost& cost = wrapped.cost;
    return cost.passes >= static_cast<std::int64_t>(crypto_pwhash_OPSLIMIT_MIN) && cost.passes <= kMostPasses &&
           cost.memoryBytes >= static_cast<std::int64_t>(crypto_pwhash_MEMLIMIT_MIN) && cost.memoryBytes <= kMostMemory && wrapped.salt.size() == kSaltBytes &&
           wrapped.fingerprint.size() == kPrintBytes && wrapped.box.size() == kBoxBytes;
}

/// Everything but the box: it cannot be exchanged without breaking the box.
QByteArray headOf(const WrappedKey& wrapped)
{
    QByteArray head(kPassesBytes + kMemoryBytes, '\0');
    qToLittleEndian(static_cast<quint32>(wrapped.cost.passes), head.data());
    qToLittleEndian(static_cast<quint64>(wrapped.cost.memoryBytes), head.data() + kPassesBytes);
    return head + wrapped.salt + wrapped.fingerprint;
}

SealResult<SealKey> keyFrom(const Passphrase& passphrase, const WrappedKey& wrapped)
{
    SealKey key = SealKey::random();
    auto* bytes = const_cast<unsigned char*>(key.bytes());
    const int code = crypto_pwhash(bytes, SealKey::kBytes, passphrase.isEmpty() ? "" : passphrase.bytes(), passphrase.size(), wrapBytes(wrapped.salt),
                                   static_cast<unsigned long long>(wrapped.cost.passes), static_cast<std::size_t>(wrapped.cost.memoryBytes),
                                   crypto_pwhash_ALG_ARGON2ID13);
    if (code != 0) {
        return tl::make_unexpected(SealFault::NoMemory);
    }
    return key;
}

}  // namespace

SealResult<WrappedKey> wrapKey(const SealKey& key, const Passphrase& passphrase, const KeyCost& cost)
{
    WrappedKey wrapped{cost, QByteArray(kSaltBytes, '\0'), QByteArray(kBoxBytes, '\0'), key.fingerprint()};
    randombytes_buf(wrapped.salt.data(), static_cast<std::size_t>(kSaltBytes));
    const auto outer = keyFrom(passphrase, wrapped);
    if (!outer) {
        return tl::make_unexpected(outer.error());
    }
    auto* box = reinterpret_cast<unsigned char*>(wrapped.box.data());
    randombytes_buf(box, static_cast<std::size_t>(kNonceBytes));
    const QByteArray head = headOf(wrapped);
    crypto_aead_xchacha20poly1305_ietf_encrypt(box + kNonceBytes, nullptr, key.bytes(), SealKey::kBytes, wrapBytes(head),
                                               static_cast<unsigned long long>(head.size()), nullptr, box, outer->bytes());
    return wrapped;
}

SealResult<SealKey> unwrapKey(const WrappedKey& wrapped, const Passphrase& passphrase)
{
    prepareSodium();
    if (!isSound(wrapped)) {
        return tl::make_unexpected(SealFault::Damaged);
    }
    const auto outer = keyFrom(passphrase, wrapped);
    if (!outer) {
        return outer;
    }
    SealKey key = SealKey::random();
    const QByteArray head = headOf(wrapped);
    const unsigned char* box = wrapBytes(wrapped.box);
    const int code = crypto_aead_xchacha20poly1305_ietf_decrypt(const_cast<unsigned char*>(key.bytes()), nullptr, nullptr, box + kNonceBytes,
                                                                static_cast<unsigned long long>(kBoxBytes - kNonceBytes), wrapBytes(head),
                                                                static_cast<unsigned long long>(head.size()), box, outer->bytes());
    if (code != 0) {
        return tl::make_unexpected(SealFault::WrongPassphrase);
    }
    return key;
}

QByteArray bytesOf(const WrappedKey& wrapped)
{
    return headOf(wrapped) + wrapped.box;
}

SealResult<WrappedKey> wrappedKeyOf(const QByteArray& bytes)
{
    if (bytes.size() != kWrappedKeyBytes) {
        return tl::make_unexpected(SealFault::Damaged);
    }
    constexpr qsizetype kSaltAt = kPassesBytes + kMemoryBytes;
    const quint64 memory = qFromLittleEndian<quint64>(bytes.constData() + kPassesBytes);
    if (memory > static_cast<quint64>(kMostMemory)) {
        return tl::make_unexpected(SealFault::Damaged);
    }
    WrappedKey wrapped{{static_cast<std::int64_t>(qFromLittleEndian<quint32>(bytes.constData())), static_cast<std::int64_t>(memory)},
                       bytes.mid(kSaltAt, kSaltBytes),
                       bytes.right(kBoxBytes),
                       bytes.mid(kSaltAt + kSaltBytes, kPrintBytes)};
    if (!isSound(wrapped)) {
        return tl::make_unexpected(SealFault::Damaged);
    }
    return wrapped;
}

}  // namespace chalk::seal
