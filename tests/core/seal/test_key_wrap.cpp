#include "core/seal/key_wrap.h"

#include <gtest/gtest.h>

#include <sodium.h>

#include <string>

namespace chalk::seal {

class KeyWrapTest : public ::testing::Test {
protected:
    SealFault faultOf(const WrappedKey& wrapped, const Passphrase& passphrase) const
    {
        const auto key = unwrapKey(wrapped, passphrase);
        EXPECT_FALSE(key) << "it opened";
        return key ? SealFault::Cancelled : key.error();
    }

    const Passphrase m_right{QStringLiteral("three quiet mornings")};
    const SealKey m_key = SealKey::random();
    const WrappedKey m_wrapped = wrapKey(m_key, m_right, KeyCost::least()).value();
};

TEST_F(KeyWrapTest, OpensByItsPassphraseAlone)
{
    const auto key = unwrapKey(m_wrapped, m_right);
    ASSERT_TRUE(key);
    EXPECT_TRUE(*key == m_key);
    EXPECT_EQ(faultOf(m_wrapped, Passphrase(QStringLiteral("three quiet morning"))), SealFault::WrongPassphrase);
    EXPECT_EQ(faultOf(m_wrapped, Passphrase()), SealFault::WrongPassphrase);
}

TEST_F(KeyWrapTest, TheSamePassphraseMakesAnotherBoxEachTime)
{
    const WrappedKey again = wrapKey(m_key, m_right, KeyCost::least()).value();
    EXPECT_NE(again.salt, m_wrapped.salt);
    EXPECT_NE(again.box, m_wrapped.box);
    EXPECT_EQ(again.fingerprint, m_wrapped.fingerprint);
}

TEST_F(KeyWrapTest, GoesThroughItsBytes)
{
    EXPECT_EQ(bytesOf(m_wrapped).size(), kWrappedKeyBytes);
    EXPECT_EQ(wrappedKeyOf(bytesOf(m_wrapped)).value(), m_wrapped);
    EXPECT_FALSE(wrappedKeyOf(bytesOf(m_wrapped).chopped(1)));
    EXPECT_FALSE(wrappedKeyOf({}));
}

TEST_F(KeyWrapTest, NoByteOfItCanBeAltered)
{
    const QByteArray bytes = bytesOf(m_wrapped);
    for (qsizetype at = 0; at < bytes.size(); ++at) {
        QByteArray altered = bytes;
        altered[at] = static_cast<char>(altered[at] ^ 1);
        const auto wrapped = wrappedKeyOf(altered);
        EXPECT_FALSE(wrapped && unwrapKey(*wrapped, m_right)) << "byte " << at;
    }
}

TEST_F(KeyWrapTest, AsksForNoMoreThanAMachineHas)
{
    WrappedKey greedy = m_wrapped;
    greedy.cost.memoryBytes = 1'073'741'825;
    EXPECT_EQ(faultOf(greedy, m_right), SealFault::Damaged);
    EXPECT_FALSE(wrappedKeyOf(bytesOf(greedy)));
    greedy.cost = {17, 8192};
    EXPECT_EQ(faultOf(greedy, m_right), SealFault::Damaged);
    greedy.cost = {1, 8191};
    EXPECT_EQ(faultOf(greedy, m_right), SealFault::Damaged);
}

TEST(KeyCostTest, IsThatOfLibsodiumsModerate)
{
    EXPECT_EQ(KeyCost::moderate().passes, static_cast<std::int64_t>(crypto_pwhash_OPSLIMIT_MODERATE));
    EXPECT_EQ(KeyCost::moderate().memoryBytes, static_cast<std::int64_t>(crypto_pwhash_MEMLIMIT_MODERATE));
    EXPECT_EQ(KeyCost::least().passes, static_cast<std::int64_t>(crypto_pwhash_OPSLIMIT_MIN));
    EXPECT_EQ(KeyCost::least().memoryBytes, static_cast<std::int64_t>(crypto_pwhash_MEMLIMIT_MIN));
}

/// The examples of RFC 9106, section 5.3, have four lanes and a secret, which libsodium does not take. This one is from the tests of the reference
/// implementation (P-H-C/phc-winner-argon2, src/test.c, Argon2id, version 0x13, t = 2, m = 65536, p = 1), said again by Debian's program argon2 0~20171227 (`echo -n password | argon2 somesalt -id -t 2 -m 16 -p 1`).
TEST(KeyCostTest, Argon2idIsThatOfTheReference)
{
    prepareSodium();
    const char* const encoded = "$argon2id$v=19$m=65536,t=2,p=1$c29tZXNhbHQ$CTFhFdXPJO1aFaMaO6Mm5c8y7cJHAph8ArZWb2GRPPc";
    const std::string password = "password";
    EXPECT_EQ(crypto_pwhash_str_verify(encoded, password.data(), password.size()), 0);
    EXPECT_NE(crypto_pwhash_str_verify(encoded, "passwort", 8), 0);
}

}  // namespace chalk::seal
