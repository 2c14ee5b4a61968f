#include "core/store/key_ring.h"

#include <gtest/gtest.h>

namespace chalk::store {

class KeyRingTest : public ::testing::Test {
protected:
    const seal::Passphrase m_right{QStringLiteral("three quiet mornings")};
    const seal::SealKey m_key = seal::SealKey::random();
    const seal::WrappedKey m_wrapped = seal::wrapKey(m_key, m_right, seal::KeyCost::least()).value();
    const QString m_target = QStringLiteral("a.chalkrung");
};

TEST_F(KeyRingTest, OpensByThePassphraseThatWasOfferedAndForgetsIt)
{
    KeyRing ring(m_right);
    ASSERT_TRUE(ring.open(m_wrapped, m_target));
    ASSERT_TRUE(ring.texts(m_wrapped.fingerprint));
    EXPECT_TRUE(*ring.texts(m_wrapped.fingerprint) == m_key.forUse(seal::KeyUse::Texts));
    EXPECT_TRUE(*ring.files(m_wrapped.fingerprint) == m_key.forUse(seal::KeyUse::Files));
    EXPECT_TRUE(ring.open(m_wrapped, m_target)) << "the keys are there";
    ring.lock();
    EXPECT_EQ(ring.open(m_wrapped, m_target).error().kind, StoreError::Kind::Locked);
}

TEST_F(KeyRingTest, SaysWhetherAPassphraseIsMissingOrAnotherOne)
{
    KeyRing ring;
    EXPECT_EQ(ring.open(m_wrapped, m_target).error().message, QStringLiteral("a.chalkrung is sealed: it needs its passphrase"));
    ring.offer(seal::Passphrase(QStringLiteral("another one")));
    for (int i = 0; i < 2; ++i) {
        const auto opened = ring.open(m_wrapped, m_target);
        ASSERT_FALSE(opened);
        EXPECT_EQ(opened.error().kind, StoreError::Kind::Locked);
        EXPECT_EQ(opened.error().message, QStringLiteral("That is not the passphrase of a.chalkrung"));
    }
    ring.offer(m_right);
    EXPECT_TRUE(ring.open(m_wrapped, m_target));
}

TEST_F(KeyRingTest, LockedItKeepsWhatSealsBackupsAndNothingElse)
{
    KeyRing ring;
    EXPECT_FALSE(ring.isLocked());
    ring.take(m_key);
    EXPECT_FALSE(ring.isLocked());
    ring.lock();
    EXPECT_TRUE(ring.isLocked());
    EXPECT_TRUE(ring.knows(m_wrapped.fingerprint));
    EXPECT_FALSE(ring.texts(m_wrapped.fingerprint));
    EXPECT_TRUE(ring.files(m_wrapped.fingerprint));
}

TEST_F(KeyRingTest, HasNoKeyForAnotherStudio)
{
    KeyRing ring;
    ring.take(m_key);
    const QByteArray other = seal::SealKey::random().fingerprint();
    EXPECT_FALSE(ring.texts(other));
    EXPECT_FALSE(ring.files(other));
    EXPECT_FALSE(ring.knows(other));
}

}  // namespace chalk::store
