#include "core/seal/sealed_file.h"

#include <QFile>

#include <sodium.h>

#include <fcntl.h>
#include <unistd.h>

namespace chalk::seal {

namespace {

constexpr const char* kFileMark = "CHALKSF1";
constexpr qsizetype kFileMarkBytes = 8;
constexpr qsizetype kChunkBytes = 65536;
constexpr qsizetype kSealedChunkBytes = kChunkBytes + static_cast<qsizetype>(crypto_secretstream_xchacha20poly1305_ABYTES);
constexpr qsizetype kStreamHeadBytes = crypto_secretstream_xchacha20poly1305_HEADERBYTES;

unsigned char* fileBytes(QByteArray& bytes)
{
    return reinterpret_cast<unsigned char*>(bytes.data());
}

const unsigned char* fileBytes(const QByteArray& bytes)
{
    return reinterpret_cast<const unsigned char*>(bytes.constData());
}

/// What is there up to `most`: less only at the end. Nothing where it cannot be read.
SealResult<QByteArray> readUpTo(QIODevice& in, qsizetype most)
{
    QByteArray bytes(most, '\0');
    qsizetype done = 0;
    while (done < most) {
        const qint64 read = in.read(bytes.data() + done, most - done);
        if (read < 0) {
            return tl::make_unexpected(SealFault::CannotRead);
        }
        if (read == 0) {
            break;
        }
        done += read;
    }
    bytes.truncate(done);
    return bytes;
}

bool goesOn(const SealProgress& progress, const QIODevice& in)
{
    return !progress || progress(in.pos(), in.size());
}

/// Seals the rest of `in`; the first chunk is bound to `head`.
SealResult<void> pushChunks(QIODevice& in, QIODevice& out, crypto_secretstream_xchacha20poly1305_state& state, const QByteArray& head, const SealProgress& progress)
{
    QByteArray bound = head;
    for (bool isLast = false; !isLast;) {
        const auto plain = readUpTo(in, kChunkBytes);
        if (!plain) {
            return tl::make_unexpected(plain.error());
        }
        isLast = plain->size() < kChunkBytes || in.atEnd();
        QByteArray chunk(plain->size() + static_cast<qsizetype>(crypto_secretstream_xchacha20poly1305_ABYTES), '\0');
        crypto_secretstream_xchacha20poly1305_push(&state, fileBytes(chunk), nullptr, fileBytes(*plain), static_cast<unsigned long long>(plain->size()),
                                                   fileBytes(std::as_const(bound)), static_cast<unsigned long long>(bound.size()),
                                                   isLast ? crypto_secretstream_xchacha20poly1305_TAG_FINAL : crypto_secretstream_xchacha20poly1305_TAG_MESSAGE);
        bound.clear();
        if (out.write(chunk) != chunk.size()) {
            return tl::make_unexpected(SealFault::CannotWrite);
        }
        if (!goesOn(progress, in)) {
            return tl::make_unexpected(SealFault::Cancelled);
        }
    }
    return {};
}

SealResult<void> pullChunks(QIODevice& in, QIODevice* out, crypto_secretstream_xchacha20poly1305_state& state, const QByteArray& head, const SealProgress& progress)
{
    QByteArray bound = head;
    for (unsigned char tag = 0; tag != crypto_secretstream_xchacha20poly1305_TAG_FINAL;) {
        const auto chunk = readUpTo(in, kSealedChunkBytes);
        if (!chunk) {
            return tl::make_unexpected(chunk.error());
        }
        if (chunk->size() < static_cast<qsizetype>(crypto_secretstream_xchacha20poly1305_ABYTES)) {
            return tl::make_unexpected(SealFault::Damaged);
        }
        QByteArray plain(chunk->size() - static_cast<qsizetype>(crypto_secretstream_xchacha20poly1305_ABYTES), '\0');
        if (crypto_secretstream_xchacha20poly1305_pull(&state, fileBytes(plain), nullptr, &tag, fileBytes(*chunk), static_cast<unsigned long long>(chunk->size()),
                                                       fileBytes(std::as_const(bound)), static_cast<unsigned long long>(bound.size())) != 0) {
            return tl::make_unexpected(SealFault::Damaged);
        }
        bound.clear();
        if (out != nullptr && out->write(plain) != plain.size()) {
            return tl::make_unexpected(SealFault::CannotWrite);
        }
        if (!goesOn(progress, in)) {
            return tl::make_unexpected(SealFault::Cancelled);
        }
    }
    return in.atEnd() ? SealResult<void>() : tl::make_unexpected(SealFault::Damaged);
}

/// Makes `to` and lets `write` fill it; takes it away again where that fails.
SealResult<void> intoNewFile(const QString& to, const std::function<SealResult<void>(QFile&)>& write)
{
    const int descriptor = ::open(QFile::encodeName(to).constData(), O_CREAT | O_EXCL | O_RDWR | O_CLOEXEC, 0600);
    QFile out;
    if (descriptor < 0 || !out.open(descriptor, QIODevice::WriteOnly, QFileDevice::AutoCloseHandle)) {
        return tl::make_unexpected(SealFault::CannotWrite);
    }
    auto written = write(out);
    if (written && !(out.flush() && ::fsync(descriptor) == 0)) {
        written = tl::make_unexpected(SealFault::CannotWrite);
    }
    out.close();
    if (!written) {
        QFile::remove(to);
    }
    return written;
}

SealResult<void> withFile(const QString& from, const std::function<SealResult<void>(QFile&)>& use)
{
    QFile in(from);
    return in.open(QIODevice::ReadOnly) ? use(in) : tl::make_unexpected(SealFault::CannotRead);
}

}  // namespace

bool isSealedFile(const QString& file)
{
    QFile in(file);
    return in.open(QIODevice::ReadOnly) && in.read(kFileMarkBytes) == kFileMark;
}

SealResult<WrappedKey> readSealedHead(QIODevice& in)
{
    const auto head = readUpTo(in, kFileMarkBytes + kWrappedKeyBytes);
    if (!head) {
        return tl::make_unexpected(head.error());
    }
    if (!head->startsWith(kFileMark)) {
        return tl::make_unexpected(SealFault::Damaged);
    }
    return wrappedKeyOf(head->mid(kFileMarkBytes));
}

SealResult<WrappedKey> sealedHeadOf(const QString& file)
{
    QFile in(file);
    return in.open(QIODevice::ReadOnly) ? readSealedHead(in) : tl::make_unexpected(SealFault::CannotRead);
}

SealResult<void> sealStream(QIODevice& in, QIODevice& out, const FileKey& key, const SealProgress& progress)
{
    crypto_secretstream_xchacha20poly1305_state state;
    QByteArray streamHead(kStreamHeadBytes, '\0');
    crypto_secretstream_xchacha20poly1305_init_push(&state, fileBytes(streamHead), key.key.bytes());
    const QByteArray head = kFileMark + bytesOf(key.wrapped);
    if (out.write(head + streamHead) != head.size() + streamHead.size()) {
        return tl::make_unexpected(SealFault::CannotWrite);
    }
    const auto sealed = pushChunks(in, out, state, head, progress);
    sodium_memzero(&state, sizeof state);
    return sealed;
}

SealResult<void> openStream(QIODevice& in, QIODevice* out, const SealKey& key, const SealProgress& progress)
{
    const auto wrapped = readSealedHead(in);
    if (!wrapped) {
        return tl::make_unexpected(wrapped.error());
    }
    const auto streamHead = readUpTo(in, kStreamHeadBytes);
    crypto_secretstream_xchacha20poly1305_state state;
    if (!streamHead || streamHead->size() < kStreamHeadBytes || crypto_secretstream_xchacha20poly1305_init_pull(&state, fileBytes(*streamHead), key.bytes()) != 0) {
        return tl::make_unexpected(streamHead ? SealFault::Damaged : streamHead.error());
    }
    const auto opened = pullChunks(in, out, state, kFileMark + bytesOf(*wrapped), progress);
    sodium_memzero(&state, sizeof state);
    return opened;
}

SealResult<void> sealFile(const QString& from, const QString& to, const FileKey& key, const SealProgress& progress)
{
    return withFile(from, [&](QFile& in) { return intoNewFile(to, [&](QFile& out) { return sealStream(in, out, key, progress); }); });
}

SealResult<void> openSealedFile(const QString& from, const QString& to, const SealKey& key, const SealProgress& progress)
{
    return withFile(from, [&](QFile& in) { return intoNewFile(to, [&](QFile& out) { return openStream(in, &out, key, progress); }); });
}

SealResult<void> checkSealedFile(const QString& file, const SealKey& key, const SealProgress& progress)
{
    return withFile(file, [&](QFile& in) { return openStream(in, nullptr, key, progress); });
}

SealResult<FileKey> newFileKey(const Passphrase& passphrase, const KeyCost& cost)
{
    const SealKey key = SealKey::random();
    return wrapKey(key, passphrase, cost).map([&key](const WrappedKey& wrapped) { return FileKey{key.forUse(KeyUse::Files), wrapped}; });
}

}  // namespace chalk::seal
