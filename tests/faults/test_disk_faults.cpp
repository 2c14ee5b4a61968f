#include "core/store/backup.h"
#include "core/store/record_writer.h"
#include "core/store/studio_check.h"
#include "tests/faults/faulty_disk.h"
#include "tests/faults/studio_content.h"
#include "tests/support/lift_on_test.h"
#include "tests/support/small_studio.h"

#include <QDir>
#include <QFile>
#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace chalk::faults {

using store::Database;
using store::OpenMode;

/// A way for a disk to fail, and whether it goes on failing.
struct FaultWay {
    DiskFault fault;
    bool isLasting;
    const char* name;
};

inline std::ostream& operator<<(std::ostream& out, const FaultWay& way)
{
    return out << way.name;
}

inline constexpr int kMostSteps = 3000;  // far more than any write takes: so that a loop that never ends is a failure

/// At every step of what is done to a small studio, until it goes through.
class DiskFaultTest : public ::testing::TestWithParam<FaultWay> {
protected:
    DiskFaultTest()
    {
        test::StudioOnTest studio;
        m_before = contentOf(studio.database());
        m_ada = test::clientNamed(studio.database(), "Ada Lund");
        m_squat = test::liftOf(studio.database(), m_ada, lifts::Pattern::Squat);
        studio.close();
        QFile::copy(studio.file(), m_original);
    }

    [[nodiscard]] QString file() const { return m_folder.filePath(QStringLiteral("work/studio.chalkrung")); }
    [[nodiscard]] QString copy() const { return m_folder.filePath(QStringLiteral("work/copy.chalkrung")); }

    /// The studio as it was, and nothing beside it.
    void putBack()
    {
        m_disk.heal();
        QDir work(m_folder.filePath(QStringLiteral("work")));
        work.removeRecursively();
        QDir().mkpath(work.path());
        ASSERT_TRUE(QFile::copy(m_original, file()));
    }
    [[nodiscard]] auto record(Database& database) const
    {
        return store::RecordWriter(database, test::someMoment).record(m_ada, {}, {{m_squat, {test::smallStudioDay(), test::exposureOf({{45, 8, 2}, {45, 8, 2}})}}});
    }
    static int actsIn(const StudioContent& content) { return static_cast<int>(content.at(QStringLiteral("act")).size()); }
    void expectSound(Database& database)
    {
        const auto check = store::checkStudio(database);
        ASSERT_TRUE(check) << check.error().message.toStdString();
        EXPECT_TRUE(check->isSound()) << check->faults.front().message.toStdString();
    }

    /// Does `work` with a fault at the first, the second … step, each on a fresh studio; `after` is told the step and what came of it, with the disk sound again.
    template <class Prepare, class Work, class After>
    void atEveryStep(Prepare prepare, Work work, After after)
    {
        bool hasFailed = true;
        int step = 0;
        for (; hasFailed && step < kMostSteps && !HasFatalFailure(); ++step) {
            putBack();
            auto prepared = prepare();
            m_disk.failAt(step + 1, GetParam().fault, GetParam().isLasting);
            const auto outcome = work(prepared);
            m_disk.heal();
            hasFailed = m_disk.hasFailed();
            SCOPED_TRACE("step " + std::to_string(step + 1));
            after(prepared, outcome, hasFailed);
        }
        EXPECT_LT(step, kMostSteps);
        EXPECT_GT(step, 2) << "nothing ever failed";
    }
    std::unique_ptr<Database> opened()
    {
        auto database = Database::open(file(), OpenMode::MustExist);
        EXPECT_TRUE(database);
        return database ? *std::move(database) : nullptr;
    }

    FaultyDisk m_disk;
    QTemporaryDir m_folder;
    QString m_original = m_folder.filePath(QStringLiteral("original.chalkrung"));
    StudioContent m_before;
    base::ClientId m_ada;
    base::LiftId m_squat;
};

TEST_P(DiskFaultTest, ARecordIsThereWholeOrNotAtAll)
{
    int refused = 0;
    atEveryStep(
        [this] { return opened(); }, [this](std::unique_ptr<Database>& database) { return record(*database); },
        [&](std::unique_ptr<Database>& database, const auto& outcome, bool hasFailed) {
            ASSERT_TRUE(outcome || hasFailed) << outcome.error().message.toStdString();
            refused += outcome ? 0 : 1;
            EXPECT_TRUE(outcome || outcome.error().message.contains(file())) << "it names the file: " << outcome.error().message.toStdString();
            const int acts = actsIn(m_before) + (outcome ? 1 : 0);
            EXPECT_EQ(actsIn(contentOf(*database)), acts);
            if (!outcome) {
                EXPECT_EQ(contentOf(*database), m_before);
            }
            const auto next = record(*database);
            ASSERT_TRUE(next) << "the next one goes: " << next.error().message.toStdString();
            database.reset();
            const auto again = opened();
            ASSERT_TRUE(again);
            EXPECT_EQ(actsIn(contentOf(*again)), acts + 1) << "and all that was acknowledged is there";
            expectSound(*again);
        });
    EXPECT_TRUE(refused > 0 || GetParam().fault == DiskFault::ReadError) << "what is read is in memory already";
}

TEST_P(DiskFaultTest, NothingIsLostWhereClosingFails)
{
    atEveryStep(
        [this] {
            auto database = opened();
            EXPECT_TRUE(record(*database));
            return database;
        },
        [](std::unique_ptr<Database>& database) {
            database.reset();  // what the log holds goes to its place now
            return true;
        },
        [&](std::unique_ptr<Database>&, bool, bool) {
            const auto again = opened();
            ASSERT_TRUE(again);
            EXPECT_EQ(actsIn(contentOf(*again)), actsIn(m_before) + 1);
            expectSound(*again);
        });
}

TEST_P(DiskFaultTest, AStudioThatCannotBeOpenedIsOpenedLater)
{
    atEveryStep([] { return 0; }, [this](int) { return Database::open(file(), OpenMode::MustExist).map([](auto) { return true; }); },
                [&](int, const store::Result<bool>& outcome, bool hasFailed) {
                    ASSERT_TRUE(outcome || hasFailed) << outcome.error().message.toStdString();
                    EXPECT_TRUE(outcome || outcome.error().message.contains(file())) << outcome.error().message.toStdString();
                    EXPECT_TRUE(outcome || (outcome.error().kind != store::StoreError::Kind::Damaged && outcome.error().kind != store::StoreError::Kind::NotAStudio))
                        << "the file is sound: " << outcome.error().message.toStdString();
                    const auto again = opened();
                    ASSERT_TRUE(again);
                    EXPECT_EQ(contentOf(*again), m_before);
                });
}

TEST_P(DiskFaultTest, ABackupIsMadeWholeOrNotAtAll)
{
    atEveryStep(
        [this] { return opened(); }, [this](std::unique_ptr<Database>& database) { return store::copyStudio(*database, copy()); },
        [&](std::unique_ptr<Database>& database, const store::Result<void>& outcome, bool hasFailed) {
            ASSERT_TRUE(outcome || hasFailed) << outcome.error().message.toStdString();
            EXPECT_EQ(QFile::exists(copy()), outcome.has_value());
            EXPECT_TRUE(QFileInfo(copy()).dir().entryList({QStringLiteral("*.part")}).isEmpty());
            EXPECT_EQ(contentOf(*database), m_before);
            if (!outcome) {
                EXPECT_TRUE(outcome.error().message.contains(m_folder.path())) << outcome.error().message.toStdString();
                const auto next = store::copyStudio(*database, copy());
                ASSERT_TRUE(next) << next.error().message.toStdString();
            }
            EXPECT_EQ(contentOfFile(copy()), m_before);
        });
}

TEST_P(DiskFaultTest, ABackupTakesThePlaceOfTheStudioOrLeavesIt)
{
    StudioContent now;
    atEveryStep(
        [&] {
            auto database = opened();
            EXPECT_TRUE(store::copyStudio(*database, copy()));
            EXPECT_TRUE(record(*database));
            now = contentOf(*database);
            return 0;
        },
        [this](int) { return store::restoreStudio(copy(), file(), copy() + QStringLiteral(".kept")); },
        [&](int, const store::Result<void>& outcome, bool hasFailed) {
            ASSERT_TRUE(outcome || hasFailed) << outcome.error().message.toStdString();
            EXPECT_EQ(contentOfFile(file()), outcome ? m_before : now);
            EXPECT_EQ(contentOfFile(copy()), m_before);
            if (outcome) {
                EXPECT_EQ(contentOfFile(copy() + QStringLiteral(".kept")), now);
            }
        });
}

INSTANTIATE_TEST_SUITE_P(Ways, DiskFaultTest,
                         ::testing::Values(FaultWay{DiskFault::Full, true, "full"}, FaultWay{DiskFault::Full, false, "full for a moment"},
                                           FaultWay{DiskFault::WriteError, true, "cannot be written any more"},
                                           FaultWay{DiskFault::WriteError, false, "cannot be written for a moment"},
                                           FaultWay{DiskFault::ReadError, true, "cannot be read any more"},
                                           FaultWay{DiskFault::ReadError, false, "cannot be read for a moment"}),
                         [](const auto& way) { return QString::fromLatin1(way.param.name).remove(QLatin1Char(' ')).toStdString(); });

/// Not the disk but another program says no.
TEST(HeldStudioTest, AStudioThatSomebodyElseWritesIsBusyAndThenFree)
{
    test::StudioOnTest studio;
    const base::ClientId ada = test::clientNamed(studio.database(), "Ada Lund");
    const base::LiftId squat = test::liftOf(studio.database(), ada, lifts::Pattern::Squat);
    const auto record = [&] {
        return store::RecordWriter(studio.database(), test::someMoment).record(ada, {}, {{squat, {test::smallStudioDay(), test::exposureOf({{45, 8, 2}})}}});
    };
    const StudioContent before = contentOf(studio.database());
    const auto other = Database::open(studio.file(), OpenMode::MustExist);
    ASSERT_TRUE(other);
    {
        const store::Transaction held(**other);
        const auto refused = record();
        ASSERT_FALSE(refused);
        EXPECT_EQ(refused.error().kind, store::StoreError::Kind::Busy);
        EXPECT_TRUE(refused.error().message.contains(studio.file())) << refused.error().message.toStdString();
        EXPECT_EQ(contentOf(studio.database()), before);
        const QString copy = studio.folder() + QStringLiteral("/copy.chalkrung");
        ASSERT_TRUE(store::copyStudio(studio.database(), copy)) << "a backup waits for nobody";
        EXPECT_EQ(contentOfFile(copy), before);
    }
    EXPECT_TRUE(record());
}

}  // namespace chalk::faults
