#include "core/seal/seal_key.h"

#include <sodium.h>

#include <cstring>
#include <new>
#include <stdexcept>
#include <utility>

namespace chalk::seal {

namespace {

static_assert(SealKey::kBytes == crypto_kdf_KEYBYTES && SealKey::kBytes == crypto_aead_xchacha20poly1305_ietf_KEYBYTES);
static_assert(SealKey::kBytes == crypto_secretstream_xchacha20poly1305_KEYBYTES);

constexpr std::size_t kFingerprintBytes = 16;
constexpr const char* kUseContext = "chalkrun";
static_assert(crypto_kdf_CONTEXTBYTES == 8);

std::uint64_t numberOf(KeyUse use)
{
    switch (use) {
    case KeyUse::Texts:
        return 1;
    case KeyUse::Files:
        return 2;
    }
    return 0;
}

}  // namespace

void prepareSodium()
{
    if (sodium_init() < 0) {
        throw std::runtime_error("libsodium cannot be made ready");
    }
}

SealKey::SealKey()
{
    prepareSodium();
    m_bytes = static_cast<unsigned char*>(sodium_malloc(kBytes));
    if (m_bytes == nullptr) {
        throw std::bad_alloc();
    }
}

SealKey SealKey::random()
{
    SealKey key;
    randombytes_buf(key.m_bytes, kBytes);
    return key;
}

SealKey SealKey::fromBytes(const unsigned char* bytes)
{
    SealKey key;
    std::memcpy(key.m_bytes, bytes, kBytes);
    return key;
}

SealKey::SealKey(const SealKey& other) : SealKey(fromBytes(other.m_bytes)) {}

SealKey::SealKey(SealKey&& other) noexcept : m_bytes(std::exchange(other.m_bytes, nullptr)) {}

SealKey& SealKey::operator=(SealKey other) noexcept
{
    std::swap(m_bytes, other.m_bytes);
    return *this;
}

SealKey::~SealKey()
{
    sodium_free(m_bytes);  // which wipes it
}

SealKey SealKey::forUse(KeyUse use) const
{
    SealKey key;
    crypto_kdf_derive_from_key(key.m_bytes, kBytes, numberOf(use), kUseContext, m_bytes);
    return key;
}

QByteArray SealKey::fingerprint() const
{
    QByteArray print(static_cast<qsizetype>(kFingerprintBytes), '\0');
    crypto_generichash(reinterpret_cast<unsigned char*>(print.data()), kFingerprintBytes, m_bytes, kBytes, nullptr, 0);
    return print;
}

bool operator==(const SealKey& a, const SealKey& b)
{
    return sodium_memcmp(a.m_bytes, b.m_bytes, SealKey::kBytes) == 0;
}

}  // namespace chalk::seal
