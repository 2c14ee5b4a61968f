#pragma once

#include <QByteArray>

#include <array>
#include <cstddef>

namespace chalk::seal {

/// What a key that was made from another one is for: what is sealed with one is not opened by the other.
enum class KeyUse { Texts, Files };

/// A secret key of 256 bits, in memory that is kept out of the swap file where the system lets us, and wiped when it goes.
class SealKey {
public:
    static constexpr std::size_t kBytes = 32;

    /// A key from the system's source of random bytes.
    [[nodiscard]] static SealKey random();
    /// `bytes` has to hold `kBytes`.
    [[nodiscard]] static SealKey fromBytes(const unsigned char* bytes);

    SealKey(const SealKey& other);
    SealKey(SealKey&& other) noexcept;
    SealKey& operator=(SealKey other) noexcept;
    ~SealKey();

    [[nodiscard]] const unsigned char* bytes() const { return m_bytes; }
    /// A key for one use (BLAKE2b, libsodium's crypto_kdf).
    [[nodiscard]] SealKey forUse(KeyUse use) const;
    /// What a key is known by, 16 bytes; says nothing about the key itself (BLAKE2b of it).
    [[nodiscard]] QByteArray fingerprint() const;

    friend bool operator==(const SealKey& a, const SealKey& b);

private:
    SealKey();

    unsigned char* m_bytes;
};

/// Makes libsodium ready; throws where it cannot be. Every function of this folder sees to it.
void prepareSodium();

}  // namespace chalk::seal
