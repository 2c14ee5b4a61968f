#include "core/seal/seal_key.h"

#include <gtest/gtest.h>

namespace chalk::seal {

TEST(SealKey, IsAnotherOneEachTimeAndTheSameWhereItIsCopied)
{
    const SealKey key = SealKey::random();
    EXPECT_FALSE(key == SealKey::random());
    const SealKey copy = key;
    EXPECT_TRUE(copy == key);
    EXPECT_TRUE(SealKey::fromBytes(key.bytes()) == key);
}

TEST(SealKey, OneForTextsIsNoneForFilesAndNeitherIsTheKeyItself)
{
    const SealKey key = SealKey::random();
    EXPECT_TRUE(key.forUse(KeyUse::Texts) == key.forUse(KeyUse::Texts));
    EXPECT_FALSE(key.forUse(KeyUse::Texts) == key.forUse(KeyUse::Files));
    EXPECT_FALSE(key.forUse(KeyUse::Texts) == key);
}

TEST(SealKey, IsKnownByItsFingerprintWhichHoldsNothingOfIt)
{
    const SealKey key = SealKey::random();
    EXPECT_EQ(key.fingerprint(), SealKey(key).fingerprint());
    EXPECT_NE(key.fingerprint(), SealKey::random().fingerprint());
    EXPECT_EQ(key.fingerprint().size(), 16);
    const QByteArray bytes(reinterpret_cast<const char*>(key.bytes()), static_cast<qsizetype>(SealKey::kBytes));
    EXPECT_FALSE(bytes.contains(key.fingerprint().left(4)));
}

}  // namespace chalk::seal
