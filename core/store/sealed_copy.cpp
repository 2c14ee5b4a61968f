#include "core/store/sealed_copy.h"

#include <QFile>

#include <cstdio>

namespace chalk::store {

namespace {

constexpr qint64 kStepBytes = 65536;

seal::SealProgress inSteps(const Progress& progress)
{
    if (!progress) {
        return {};
    }
    return [progress](qint64 done, qint64 of) { return progress(static_cast<int>(done / kStepBytes), static_cast<int>(of / kStepBytes)); };
}

template <class T>
Result<T> resultOfSeal(seal::SealResult<T> result, const QString& file)
{
    return result.map_error([&file](seal::SealFault fault) { return errorOfSeal(fault, file); });
}

/// The key of a sealed file.
Result<seal::SealKey> keyOfFile(const QString& file, const KeyRing& keys, const seal::Passphrase& passphrase)
{
    const auto wrapped = resultOfSeal(seal::sealedHeadOf(file), file);
    if (!wrapped) {
        return tl::make_unexpected(wrapped.error());
    }
    if (const auto own = keys.files(wrapped->fingerprint)) {
        return *own;
    }
    if (passphrase.isEmpty()) {
        return storeError(StoreError::Kind::Locked, QStringLiteral("%1 is sealed: it needs the passphrase that it was made with").arg(file));
    }
    return resultOfSeal(seal::unwrapKey(*wrapped, passphrase).map([](const seal::SealKey& key) { return key.forUse(seal::KeyUse::Files); }), file);
}

}  // namespace

Result<void> sealCopy(const QString& file, const seal::FileKey& key, const Progress& progress)
{
    const QString part = file + QStringLiteral(".sealed");
    QFile::remove(part);
    auto done = resultOfSeal(seal::sealFile(file, part, key, inSteps(progress)).and_then([&] { return seal::checkSealedFile(part, key.key); }), file);
    if (done && std::rename(QFile::encodeName(part).constData(), QFile::encodeName(file).constData()) != 0) {
        done = storeError(StoreError::Kind::CannotWrite, QStringLiteral("%1 cannot be written").arg(file));
    }
    if (!done) {
        QFile::remove(part);
    }
    return done;
}

Result<OpenedCopy> OpenedCopy::of(const QString& file, const KeyRing& keys, const seal::Passphrase& passphrase, const Progress& progress)
{
    OpenedCopy copy;
    copy.m_path = file;
    if (!seal::isSealedFile(file)) {
        return copy;
    }
    const auto key = keyOfFile(file, keys, passphrase);
    if (!key) {
        return tl::make_unexpected(key.error());
    }
    copy.m_folder = std::make_unique<QTemporaryDir>();
    copy.m_path = copy.m_folder->filePath(QStringLiteral("opened.chalkrung"));
    if (auto opened = resultOfSeal(seal::openSealedFile(file, copy.m_path, *key, inSteps(progress)), file); !opened) {
        return tl::make_unexpected(opened.error());
    }
    return copy;
}

}  // namespace chalk::store
