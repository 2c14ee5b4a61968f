#include "core/seal/text_seal.h"

#include <sodium.h>

namespace chalk::seal {

namespace {

/// A control character, a name and the version of the form.
constexpr const char* kTextMark = "\x01" "seal1:";
constexpr qsizetype kTextMarkBytes = 7;
constexpr qsizetype kTextNonceBytes = crypto_aead_xchacha20poly1305_ietf_NPUBBYTES;
constexpr qsizetype kTextTagBytes = crypto_aead_xchacha20poly1305_ietf_ABYTES;

const unsigned char* textBytes(const QByteArray& bytes)
{
    return reinterpret_cast<const unsigned char*>(bytes.constData());
}

QByteArray boxed(const SealKey& key, const QByteArray& place, const QByteArray& plain)
{
    QByteArray box(kTextNonceBytes + plain.size() + kTextTagBytes, '\0');
    auto* bytes = reinterpret_cast<unsigned char*>(box.data());
    randombytes_buf(bytes, static_cast<std::size_t>(kTextNonceBytes));
    crypto_aead_xchacha20poly1305_ietf_encrypt(bytes + kTextNonceBytes, nullptr, textBytes(plain), static_cast<unsigned long long>(plain.size()), textBytes(place),
                                               static_cast<unsigned long long>(place.size()), nullptr, bytes, key.bytes());
    return box;
}

SealResult<QByteArray> unboxed(const SealKey& key, const QByteArray& place, const QByteArray& box)
{
    if (box.size() < kTextNonceBytes + kTextTagBytes) {
        return tl::make_unexpected(SealFault::Damaged);
    }
    QByteArray plain(box.size() - kTextNonceBytes - kTextTagBytes, '\0');
    const int code = crypto_aead_xchacha20poly1305_ietf_decrypt(reinterpret_cast<unsigned char*>(plain.data()), nullptr, nullptr, textBytes(box) + kTextNonceBytes,
                                                                static_cast<unsigned long long>(box.size() - kTextNonceBytes), textBytes(place),
                                                                static_cast<unsigned long long>(place.size()), textBytes(box), key.bytes());
    if (code != 0) {
        return tl::make_unexpected(SealFault::Damaged);
    }
    return plain;
}

}  // namespace

QString sealText(const SealKey& key, const QByteArray& place, const QString& text)
{
    if (text.isEmpty()) {
        return text;
    }
    return QLatin1String(kTextMark) + QString::fromLatin1(boxed(key, place, text.toUtf8()).toBase64());
}

SealResult<QString> openText(const SealKey& key, const QByteArray& place, const QString& sealedText)
{
    if (sealedText.isEmpty()) {
        return sealedText;
    }
    if (!isSealedText(sealedText)) {
        return tl::make_unexpected(SealFault::Damaged);
    }
    const QByteArray coded = sealedText.mid(kTextMarkBytes).toLatin1();
    const auto box = QByteArray::fromBase64Encoding(coded, QByteArray::Base64Encoding | QByteArray::AbortOnBase64DecodingErrors);
    if (!box || (*box).toBase64() != coded) {
        return tl::make_unexpected(SealFault::Damaged);
    }
    return unboxed(key, place, *box).map([](const QByteArray& plain) { return QString::fromUtf8(plain); });
}

bool isSealedText(const QString& text)
{
    return text.startsWith(QLatin1String(kTextMark));
}

QByteArray sealBytes(const SealKey& key, const QByteArray& place, const QByteArray& bytes)
{
    return bytes.isEmpty() ? bytes : kTextMark + boxed(key, place, bytes);
}

SealResult<QByteArray> openBytes(const SealKey& key, const QByteArray& place, const QByteArray& sealedBytes)
{
    if (sealedBytes.isEmpty()) {
        return sealedBytes;
    }
    if (!isSealedBytes(sealedBytes)) {
        return tl::make_unexpected(SealFault::Damaged);
    }
    return unboxed(key, place, sealedBytes.mid(kTextMarkBytes));
}

bool isSealedBytes(const QByteArray& bytes)
{
    return bytes.startsWith(kTextMark);
}

}  // namespace chalk::seal
