#include "core/seal/passphrase.h"

#include <QByteArray>

#include <gtest/gtest.h>

namespace chalk::seal {

namespace {

QByteArray bytesIn(const Passphrase& passphrase)
{
    return {passphrase.bytes(), static_cast<qsizetype>(passphrase.size())};
}

}  // namespace

TEST(Passphrase, TheSameLettersAreTheSameHoweverTheyWereTyped)
{
    // Unicode Standard Annex #15: U+00E9 and U+0065 U+0301 are the same letter.
    const Passphrase composed(QStringLiteral("caf\u00e9 au lait"));
    EXPECT_EQ(bytesIn(composed), bytesIn(Passphrase(QStringLiteral("cafe\u0301 au lait"))));
    EXPECT_NE(bytesIn(composed), bytesIn(Passphrase(QStringLiteral("cafe au lait"))));
    EXPECT_EQ(bytesIn(composed), QByteArray("caf\xc3\xa9 au lait"));
}

TEST(Passphrase, IsCopiedAndMovedWhole)
{
    Passphrase first(QStringLiteral("three quiet mornings"));
    const Passphrase copy = first;
    const Passphrase moved = std::move(first);
    EXPECT_EQ(bytesIn(copy), bytesIn(moved));
    EXPECT_TRUE(Passphrase().isEmpty());
    EXPECT_TRUE(Passphrase(QString()).isEmpty());
    EXPECT_FALSE(copy.isEmpty());
}

}  // namespace chalk::seal
