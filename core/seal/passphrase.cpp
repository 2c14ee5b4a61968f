#include "core/seal/passphrase.h"

#include "core/seal/seal_key.h"

#include <sodium.h>

#include <cstring>
#include <new>
#include <utility>

namespace chalk::seal {

Passphrase::Passphrase(const QString& text)
{
    QString composed = text.normalized(QString::NormalizationForm_C);
    QByteArray bytes = composed.toUtf8();
    keep(bytes.constData(), static_cast<std::size_t>(bytes.size()));
    sodium_memzero(bytes.data(), static_cast<std::size_t>(bytes.size()));
    sodium_memzero(composed.data(), static_cast<std::size_t>(composed.size()) * sizeof(QChar));
}

Passphrase::Passphrase(const Passphrase& other)
{
    keep(other.m_bytes, other.m_size);
}

Passphrase::Passphrase(Passphrase&& other) noexcept : m_bytes(std::exchange(other.m_bytes, nullptr)), m_size(std::exchange(other.m_size, 0)) {}

Passphrase& Passphrase::operator=(Passphrase other) noexcept
{
    std::swap(m_bytes, other.m_bytes);
    std::swap(m_size, other.m_size);
    return *this;
}

Passphrase::~Passphrase()
{
    sodium_free(m_bytes);
}

void Passphrase::keep(const char* bytes, std::size_t size)
{
    prepareSodium();
    if (size == 0) {
        return;
    }
    m_bytes = static_cast<char*>(sodium_malloc(size));
    if (m_bytes == nullptr) {
        throw std::bad_alloc();
    }
    std::memcpy(m_bytes, bytes, size);
    m_size = size;
}

}  // namespace chalk::seal
