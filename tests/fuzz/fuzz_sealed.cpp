#include "core/seal/key_wrap.h"
#include "core/seal/sealed_file.h"
#include "core/seal/text_seal.h"

#include <QBuffer>

#include <cstdlib>

namespace {

using chalk::seal::SealKey;

void expect(bool isSo)
{
    if (!isSo) {
        std::abort();
    }
}

const SealKey& keyOnTest()
{
    static const SealKey key = [] {
        const unsigned char bytes[SealKey::kBytes] = {};
        return SealKey::fromBytes(bytes);
    }();
    return key;
}

/// Bytes as a sealed file: nobody without the key makes one that opens.
void openAsFile(QByteArray bytes)
{
    QBuffer in(&bytes);
    in.open(QIODevice::ReadOnly);
    expect(!chalk::seal::openStream(in, nullptr, keyOnTest()));
}

}  // namespace

/// Sealed texts, sealed bytes, wrapped keys and sealed files that somebody else wrote; and what is sealed comes back.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    namespace seal = chalk::seal;
    const QByteArray bytes(reinterpret_cast<const char*>(data), static_cast<qsizetype>(size));
    if (const auto wrapped = seal::wrappedKeyOf(bytes)) {
        expect(seal::bytesOf(*wrapped) == bytes);
    }
    openAsFile(bytes);
    openAsFile("CHALKSF1" + bytes);
    const auto opened = seal::openBytes(keyOnTest(), "a", bytes);
    expect(!opened || opened->isEmpty());
    const auto text = seal::openText(keyOnTest(), "a", QString::fromUtf8(bytes));
    expect(!text || text->isEmpty());
    expect(seal::openBytes(keyOnTest(), bytes, seal::sealBytes(keyOnTest(), bytes, bytes)).value() == bytes);
    return 0;
}
