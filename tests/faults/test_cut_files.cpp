#include "core/store/record_writer.h"
#include "core/store/studio_check.h"
#include "tests/faults/studio_content.h"
#include "tests/support/lift_on_test.h"
#include "tests/support/small_studio.h"

#include <QFile>
#include <QFileInfo>
#include <QTemporaryDir>

#include <gtest/gtest.h>

#include <algorithm>

namespace chalk::faults {

namespace {

using Kind = store::StoreError::Kind;

constexpr qint64 kPage = 4096;

QByteArray bytesIn(const QString& file)
{
    QFile in(file);
    return in.open(QIODevice::ReadOnly) ? in.readAll() : QByteArray();
}

void writeBytes(const QString& file, const QByteArray& bytes)
{
    QFile out(file);
    ASSERT_TRUE(out.open(QIODevice::WriteOnly) && out.write(bytes) == bytes.size());
}

/// Lengths around every page, and some between.
std::vector<qint64> lengthsBelow(qint64 size)
{
    std::vector<qint64> lengths{0, 1, 15, 16, 50, 99, 100, 101, 511, 512, 1000};
    for (qint64 page = 1; page * kPage <= size; ++page) {
        for (const qint64 offset : {-1LL, 0LL, 1LL, 24LL, 2000LL}) {
            lengths.push_back(page * kPage + offset);
        }
    }
    lengths.erase(std::remove_if(lengths.begin(), lengths.end(), [size](qint64 length) { return length >= size; }), lengths.end());
    return lengths;
}

}  // namespace

class CutFileTest : public ::testing::Test {
protected:
    [[nodiscard]] QString file() const { return m_folder.filePath(QStringLiteral("cut.chalkrung")); }
    void put(const QByteArray& studio, const QByteArray& log)
    {
        for (const char* ending : {"-wal", "-shm", "-journal"}) {
            QFile::remove(file() + QLatin1String(ending));
        }
        writeBytes(file(), studio);
        if (!log.isEmpty()) {
            writeBytes(file() + QStringLiteral("-wal"), log);
        }
    }
    void record()
    {
        store::Database& database = m_studio.database();
        const base::ClientId ada = test::clientNamed(database, "Ada Lund");
        const base::LiftId squat = test::liftOf(database, ada, lifts::Pattern::Squat);
        ASSERT_TRUE(store::RecordWriter(database, test::someMoment).record(ada, {}, {{squat, {test::smallStudioDay(), test::exposureOf({{45, 8, 2}})}}}));
    }

    test::StudioOnTest m_studio;
    QTemporaryDir m_folder;
};

TEST_F(CutFileTest, AStudioThatWasCutShortIsNamedAtEveryLength)
{
    m_studio.close();
    const QByteArray whole = bytesIn(m_studio.file());
    for (const qint64 length : lengthsBelow(whole.size())) {
        SCOPED_TRACE("cut to " + std::to_string(length));
        put(whole.left(length), {});
        const auto opened = store::Database::open(file(), store::OpenMode::MustExist);
        ASSERT_FALSE(opened);
        EXPECT_EQ(opened.error().kind, length < 16 ? Kind::NotAStudio : Kind::Damaged);
        EXPECT_TRUE(opened.error().message.contains(file())) << opened.error().message.toStdString();
        EXPECT_EQ(bytesIn(file()), whole.left(length)) << "it is left as it is";
    }
}

TEST_F(CutFileTest, ALogThatWasCutShortGivesWhatWasWholeInIt)
{
    const QByteArray studio = bytesIn(m_studio.file());
    std::vector<StudioContent> states;
    for (int i = 0; i < 4; ++i) {
        states.push_back(contentOf(m_studio.database()));
        record();
    }
    states.push_back(contentOf(m_studio.database()));
    const QByteArray log = bytesIn(m_studio.file() + QStringLiteral("-wal"));
    ASSERT_EQ(bytesIn(m_studio.file()), studio) << "everything new is in the log";
    std::size_t least = 0;
    for (const qint64 length : lengthsBelow(log.size())) {
        SCOPED_TRACE("log cut to " + std::to_string(length));
        put(studio, log.left(length));
        if (studio.size() == kPage || length == 0) {
            continue;  // without its log the file holds nothing yet
        }
        const auto opened = store::Database::open(file(), store::OpenMode::MustExist);
        if (!opened) {
            EXPECT_TRUE(opened.error().message.contains(file()));
            continue;
        }
        const auto found = std::find(states.begin(), states.end(), contentOf(**opened));
        ASSERT_NE(found, states.end()) << "a state that never was";
        EXPECT_GE(static_cast<std::size_t>(found - states.begin()), least) << "a longer log holds more";
        least = static_cast<std::size_t>(found - states.begin());
        EXPECT_TRUE(store::checkStudio(**opened)->isSound());
    }
    put(studio, log);
    EXPECT_EQ(contentOfFile(file()), states.back());
}

}  // namespace chalk::faults
