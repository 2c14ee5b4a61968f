#include "core/seal/sealed_file.h"

#include <QBuffer>
#include <QFile>
#include <QFileInfo>
#include <QTemporaryDir>

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace chalk::seal {

namespace {

constexpr int kHeadBytes = 8 + static_cast<int>(kWrappedKeyBytes) + 24;

QByteArray sealedBytesOf(QByteArray plain, const FileKey& key)
{
    QByteArray sealed;
    QBuffer in(&plain);
    QBuffer out(&sealed);
    in.open(QIODevice::ReadOnly);
    out.open(QIODevice::WriteOnly);
    EXPECT_TRUE(sealStream(in, out, key));
    return sealed;
}

SealResult<QByteArray> openedBytesOf(QByteArray sealed, const SealKey& key)
{
    QByteArray plain;
    QBuffer in(&sealed);
    QBuffer out(&plain);
    in.open(QIODevice::ReadOnly);
    out.open(QIODevice::WriteOnly);
    return openStream(in, &out, key).map([&plain] { return plain; });
}

}  // namespace

class SealedFileTest : public ::testing::Test {
protected:
    QString path(const char* name) const { return m_folder.filePath(QLatin1String(name)); }
    void write(const char* name, const QByteArray& bytes) const
    {
        QFile file(path(name));
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        ASSERT_EQ(file.write(bytes), bytes.size());
    }
    QByteArray read(const char* name) const
    {
        QFile file(path(name));
        return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray("not there");
    }

    QTemporaryDir m_folder;
    const Passphrase m_passphrase{QStringLiteral("three quiet mornings")};
    const FileKey m_key = newFileKey(m_passphrase, KeyCost::least()).value();
};

TEST_F(SealedFileTest, EverySizeAroundAChunkComesBack)
{
    for (const int size : {0, 1, 65535, 65536, 65537, 131072, 200000}) {
        const QByteArray plain(size, 'k');
        const QByteArray sealed = sealedBytesOf(plain, m_key);
        EXPECT_EQ(openedBytesOf(sealed, m_key.key).value(), plain) << size;
    }
}

TEST_F(SealedFileTest, ThePassphraseThatItWasMadeWithOpensIt)
{
    write("plain", "a studio");
    ASSERT_TRUE(sealFile(path("plain"), path("sealed"), m_key));
    EXPECT_TRUE(isSealedFile(path("sealed")));
    EXPECT_FALSE(isSealedFile(path("plain")));
    EXPECT_FALSE(read("sealed").contains("a studio"));
    const auto wrapped = sealedHeadOf(path("sealed"));
    ASSERT_TRUE(wrapped);
    const auto key = unwrapKey(*wrapped, m_passphrase);
    ASSERT_TRUE(key);
    ASSERT_TRUE(openSealedFile(path("sealed"), path("opened"), key->forUse(KeyUse::Files)));
    EXPECT_EQ(read("opened"), QByteArray("a studio"));
}

TEST_F(SealedFileTest, OnlyItsOwnerReadsWhatIsWritten)
{
    write("plain", "a studio");
    ASSERT_TRUE(sealFile(path("plain"), path("sealed"), m_key));
    ASSERT_TRUE(openSealedFile(path("sealed"), path("opened"), m_key.key));
    constexpr auto kOthers = QFile::ReadGroup | QFile::WriteGroup | QFile::ReadOther | QFile::WriteOther;
    for (const char* name : {"sealed", "opened"}) {
        EXPECT_EQ(QFileInfo(path(name)).permissions() & kOthers, QFile::Permissions()) << name;
    }
}

TEST_F(SealedFileTest, NothingIsWrittenOverAndNothingStaysOfWhatFailed)
{
    write("plain", QByteArray(100000, 'k'));
    write("there", "something");
    EXPECT_EQ(sealFile(path("plain"), path("there"), m_key).error(), SealFault::CannotWrite);
    EXPECT_EQ(read("there"), QByteArray("something"));
    EXPECT_EQ(sealFile(path("none"), path("new"), m_key).error(), SealFault::CannotRead);
    EXPECT_EQ(sealFile(path("plain"), path("new"), m_key, [](qint64, qint64) { return false; }).error(), SealFault::Cancelled);
    EXPECT_FALSE(QFileInfo::exists(path("new")));
    write("sealed", sealedBytesOf(QByteArray(100000, 'k'), m_key).chopped(1));
    EXPECT_EQ(openSealedFile(path("sealed"), path("new"), m_key.key).error(), SealFault::Damaged);
    EXPECT_EQ(checkSealedFile(path("sealed"), m_key.key).error(), SealFault::Damaged);
    EXPECT_FALSE(QFileInfo::exists(path("new")));
}

TEST_F(SealedFileTest, EveryCutAndEveryFlippedBitIsFound)
{
    const QByteArray sealed = sealedBytesOf("a small studio", m_key);
    for (qsizetype at = 0; at < sealed.size(); ++at) {
        EXPECT_FALSE(openedBytesOf(sealed.left(at), m_key.key)) << "cut after " << at;
        for (int bit = 0; bit < 8; ++bit) {
            QByteArray altered = sealed;
            altered[at] = static_cast<char>(altered[at] ^ (1 << bit));
            EXPECT_FALSE(openedBytesOf(altered, m_key.key)) << "bit " << bit << " of byte " << at;
        }
    }
    EXPECT_FALSE(openedBytesOf(sealed + 'x', m_key.key)) << "something behind the end";
}

TEST_F(SealedFileTest, ChunksCannotBeExchangedDoubledOrLeftOut)
{
    constexpr int kChunk = 65536 + 17;
    const QByteArray sealed = sealedBytesOf(QByteArray(65536, 'a') + QByteArray(65536, 'b') + QByteArray(10, 'c'), m_key);
    const QByteArray head = sealed.left(kHeadBytes);
    const QByteArray first = sealed.mid(kHeadBytes, kChunk);
    const QByteArray second = sealed.mid(kHeadBytes + kChunk, kChunk);
    const QByteArray last = sealed.mid(kHeadBytes + 2 * kChunk);
    EXPECT_TRUE(openedBytesOf(head + first + second + last, m_key.key));
    EXPECT_FALSE(openedBytesOf(head + second + first + last, m_key.key));
    EXPECT_FALSE(openedBytesOf(head + first + first + second + last, m_key.key));
    EXPECT_FALSE(openedBytesOf(head + first + last, m_key.key));
    EXPECT_FALSE(openedBytesOf(head + first + second, m_key.key));
}

RC_GTEST_PROP(SealedFileProperty, AnyBytesAreNoSealedFileAndNeverACrash, (const std::string& bytes))
{
    RC_ASSERT(!openedBytesOf("CHALKSF1" + QByteArray::fromStdString(bytes), SealKey::random()));
    RC_ASSERT(!openedBytesOf(QByteArray::fromStdString(bytes), SealKey::random()));
}

}  // namespace chalk::seal
