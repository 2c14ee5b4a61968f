#include "core/store/studio_move.h"

#include "core/exchange/studio_json.h"
#include "core/store/act_reader.h"
#include "core/store/record_writer.h"
#include "core/store/statement.h"
#include "core/store/studio_check.h"
#include "core/store/studio_export.h"
#include "tests/support/kept_client.h"
#include "tests/support/lift_on_test.h"
#include "tests/support/small_studio.h"

#include <QFile>
#include <QFileInfo>

#include <gtest/gtest.h>

namespace chalk::store {

using Kind = StoreError::Kind;

namespace {

exchange::StudioDocument studioToMove()
{
    exchange::StudioDocument document = test::smallStudio();
    test::addKept(document);
    return document;
}

exchange::StudioDocument wholeDocumentOf(Database& database)
{
    return exportStudio(database, test::smallStudioDay()).value();
}

}  // namespace

/// A studio in which something was recorded, corrected and taken back; where the tests are given a server it is there.
class StudioMoveTest : public ::testing::Test {
protected:
    StudioMoveTest()
    {
        RecordWriter writer(m_studio.database(), test::someMoment, base::CoachId(2));
        const base::ClientId ada = test::clientNamed(m_studio.database(), "Ada Lund");
        const base::LiftId squat = test::liftOf(m_studio.database(), ada, lifts::Pattern::Squat);
        const auto recorded = writer.record(ada, {}, {{squat, {test::smallStudioDay() - 1, test::exposureOf({{45, 8, 2}})}}});
        const auto other = writer.record(ada, {}, {{squat, {test::smallStudioDay(), test::exposureOf({{45, 7, 2}})}}});
        if (!recorded || !other || !writer.undo(other->act)) {
            throw std::runtime_error("nothing was recorded");
        }
    }
    QString path(const char* name) { return m_studio.folder() + QLatin1Char('/') + QLatin1String(name); }
    std::unique_ptr<Database> fresh(const QString& target) { return Database::open(target, OpenMode::CreateIfMissing).value(); }

    test::StudioOnTest m_studio{studioToMove()};
};

TEST_F(StudioMoveTest, EverythingComesOverWithItsIdsAndUndo)
{
    const auto rows = copyRowsToFile(m_studio.database(), path("moved.chalkrung"));
    ASSERT_TRUE(rows) << rows.error().message.toStdString();
    EXPECT_GT(*rows, 50);
    EXPECT_EQ(QFileInfo(path("moved.chalkrung")).permissions() & (QFile::ReadGroup | QFile::ReadOther), QFile::Permissions());
    EXPECT_FALSE(QFileInfo::exists(path("moved.chalkrung.part")));
    const auto moved = Database::open(path("moved.chalkrung"), OpenMode::MustExist).value();
    EXPECT_TRUE(wholeDocumentOf(*moved) == wholeDocumentOf(m_studio.database()));
    EXPECT_TRUE(checkStudio(*moved)->isSound());
    const auto before = ActReader(m_studio.database()).latest(100).value();
    const auto after = ActReader(*moved).latest(100).value();
    ASSERT_EQ(after.size(), before.size());
    EXPECT_EQ(after.front().id, before.front().id);
    EXPECT_EQ(after.front().coachName, "Tobias");
    ASSERT_TRUE(ActReader(*moved).redoable().value());
    EXPECT_TRUE(RecordWriter(*moved, test::someMoment).undo(ActReader(*moved).redoable().value()->id));
}

TEST_F(StudioMoveTest, ThereAndBackAgainIsTheSame)
{
    const QString there = path("there.chalkrung");
    ASSERT_TRUE(copyRowsToFile(m_studio.database(), there));
    const auto file = Database::open(there, OpenMode::MustExist).value();
    // From a file to a server where there is one, else to another file.
    std::unique_ptr<test::DatabaseOnServer> server;
    if (!test::serverOnTest().isEmpty()) {
        server = std::make_unique<test::DatabaseOnServer>(test::DatabaseOnServer::Holding::Nothing);
    }
    {
        const auto second = fresh(server ? server->url() : path("second.chalkrung"));
        const auto rows = copyRows(*file, *second);
        ASSERT_TRUE(rows) << rows.error().message.toStdString();
        EXPECT_TRUE(wholeDocumentOf(*second) == wholeDocumentOf(m_studio.database()));
        EXPECT_TRUE(checkStudio(*second)->isSound());
        // New rows go on after those that came.
        Transaction transaction(*second);
        Statement insert(*second, QStringLiteral("INSERT INTO act (at_utc, kind) VALUES ('2026-11-24T09:00:00Z', 'session') RETURNING id"));
        const std::int64_t last = m_studio.rows(QStringLiteral("SELECT max(id) FROM act")).front().toLongLong();
        EXPECT_EQ(insert.runForId(), last + 1);
    }
}

TEST_F(StudioMoveTest, AStudioThatIsThereIsLeftAsItIs)
{
    test::StudioOnTest other;
    const auto before = wholeDocumentOf(other.database());
    const auto refused = copyRows(m_studio.database(), other.database());
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().kind, Kind::Refused);
    EXPECT_TRUE(refused.error().message.contains(other.file()));
    EXPECT_TRUE(wholeDocumentOf(other.database()) == before);
    ASSERT_TRUE(copyRowsToFile(m_studio.database(), path("once.chalkrung")));
    EXPECT_EQ(copyRowsToFile(m_studio.database(), path("once.chalkrung")).error().kind, Kind::Refused);
}

TEST_F(StudioMoveTest, WhatIsStoppedLeavesNothing)
{
    // Rows by the thousand are asked about: so there have to be some.
    m_studio.letReferencesDangle();
    for (int i = 0; i < 30; ++i) {
        QStringList values;
        for (int j = 0; j < 100; ++j) {
            values.append(QStringLiteral("(1, %1, 7, 20000)").arg(100 * i + j + 10));
        }
        m_studio.rows(QStringLiteral("INSERT INTO stage_reached (lift_id, cycle, stage, day) VALUES ") + values.join(QLatin1Char(',')));
    }
    int asked = 0;
    const auto stopped = copyRowsToFile(m_studio.database(), path("stopped.chalkrung"), [&asked](int, int) { return ++asked < 2; });
    ASSERT_FALSE(stopped);
    EXPECT_EQ(stopped.error().kind, Kind::Cancelled);
    EXPECT_EQ(asked, 2);
    EXPECT_FALSE(QFileInfo::exists(path("stopped.chalkrung")));
    EXPECT_FALSE(QFileInfo::exists(path("stopped.chalkrung.part")));
}

}  // namespace chalk::store
