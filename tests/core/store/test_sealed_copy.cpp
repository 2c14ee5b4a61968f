#include "core/store/sealed_copy.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>

#include <gtest/gtest.h>

namespace chalk::store {

class SealedCopyTest : public ::testing::Test {
protected:
    SealedCopyTest()
    {
        QFile file(m_file);
        EXPECT_TRUE(file.open(QIODevice::WriteOnly) && file.write(m_plain) == m_plain.size());
    }
    static QByteArray read(const QString& path)
    {
        QFile file(path);
        return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
    }

    const QByteArray m_plain = QByteArray("a backup ").repeated(20000);
    QTemporaryDir m_folder;
    const QString m_file = m_folder.filePath(QStringLiteral("copy.chalkrung"));
    const seal::Passphrase m_passphrase{QStringLiteral("three quiet mornings")};
    const seal::SealKey m_studioKey = seal::SealKey::random();
    const seal::FileKey m_key{m_studioKey.forUse(seal::KeyUse::Files), seal::wrapKey(m_studioKey, m_passphrase, seal::KeyCost::least()).value()};
};

TEST_F(SealedCopyTest, IsSealedInItsPlaceAndOpensByTheKeysOfTheStudio)
{
    ASSERT_TRUE(sealCopy(m_file, m_key));
    EXPECT_TRUE(seal::isSealedFile(m_file));
    EXPECT_FALSE(read(m_file).contains("a backup"));
    EXPECT_EQ(QDir(m_folder.path()).entryList(QDir::Files).size(), 1);
    KeyRing keys;
    keys.take(m_studioKey);
    QString path;
    {
        const auto opened = OpenedCopy::of(m_file, keys, {});
        ASSERT_TRUE(opened) << opened.error().message.toStdString();
        path = opened->path();
        EXPECT_TRUE(opened->wasSealed());
        EXPECT_EQ(read(path), m_plain);
    }
    EXPECT_FALSE(QFileInfo::exists(path)) << "what was opened goes away";
}

TEST_F(SealedCopyTest, OpensByThePassphraseThatItWasMadeWith)
{
    ASSERT_TRUE(sealCopy(m_file, m_key));
    const auto opened = OpenedCopy::of(m_file, KeyRing(), m_passphrase);
    ASSERT_TRUE(opened);
    EXPECT_EQ(read(opened->path()), m_plain);
    EXPECT_EQ(OpenedCopy::of(m_file, KeyRing(), {}).error().kind, StoreError::Kind::Locked);
    EXPECT_EQ(OpenedCopy::of(m_file, KeyRing(), seal::Passphrase(QStringLiteral("another one"))).error().kind, StoreError::Kind::Locked);
}

TEST_F(SealedCopyTest, OneThatIsNotSealedIsItself)
{
    const auto opened = OpenedCopy::of(m_file, KeyRing(), {});
    ASSERT_TRUE(opened);
    EXPECT_EQ(opened->path(), m_file);
    EXPECT_FALSE(opened->wasSealed());
}

TEST_F(SealedCopyTest, OneThatWasAlteredIsDamaged)
{
    ASSERT_TRUE(sealCopy(m_file, m_key));
    QFile file(m_file);
    ASSERT_TRUE(file.open(QIODevice::ReadWrite));
    ASSERT_TRUE(file.seek(100000));
    ASSERT_EQ(file.write("x", 1), 1);
    file.close();
    const auto opened = OpenedCopy::of(m_file, KeyRing(), m_passphrase);
    ASSERT_FALSE(opened);
    EXPECT_EQ(opened.error().kind, StoreError::Kind::Damaged);
}

TEST_F(SealedCopyTest, OneThatIsStoppedStaysAsItWas)
{
    EXPECT_EQ(sealCopy(m_file, m_key, [](int, int) { return false; }).error().kind, StoreError::Kind::Cancelled);
    EXPECT_EQ(read(m_file), m_plain);
    EXPECT_EQ(QDir(m_folder.path()).entryList(QDir::Files).size(), 1);
}

}  // namespace chalk::store
