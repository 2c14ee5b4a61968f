#include "core/store/act_reader.h"
#include "core/store/backup_shelf.h"
#include "core/store/record_writer.h"
#include "core/store/studio_check.h"
#include "tests/support/lift_on_test.h"
#include "tests/support/small_studio.h"

#include <QFile>
#include <QFileInfo>

#include <gtest/gtest.h>

#include <algorithm>

namespace chalk::faults {

/// The clock of the machine goes wrong: years ahead, years back, and right again.
class ClockJumpTest : public ::testing::Test {
protected:
    store::BackupShelf shelf() { return {store::BackupShelf::folderFor(m_studio.file()), [this] { return m_now; }}; }
    void setDay(const char* day) { m_now.at.day = *base::Date::parse(day); }
    QString backUp()
    {
        m_now.at.minute = (m_now.at.minute + 1) % (24 * 60);
        const auto made = shelf().add(m_studio.database());
        EXPECT_TRUE(made) << made.error().message.toStdString();
        return made.value_or(QString());
    }

    test::StudioOnTest m_studio;
    store::BackupShelf::Moment m_now{{test::smallStudioDay(), 500}, 0};
};

TEST_F(ClockJumpTest, NoBackupGoesBecauseOfIt)
{
    QStringList right;
    for (const char* day : {"2026-11-20", "2026-11-21", "2026-11-22", "2026-11-23", "2026-11-24"}) {
        setDay(day);
        right.append(backUp());
    }
    const auto areAllThere = [&right] { return std::all_of(right.begin(), right.end(), [](const QString& file) { return QFileInfo::exists(file); }); };
    setDay("2036-01-01");
    const QString ahead = backUp();
    EXPECT_TRUE(areAllThere());
    setDay("1999-12-31");
    for (int i = 0; i < 3; ++i) {
        backUp();
    }
    EXPECT_TRUE(areAllThere()) << "what is to come takes nobody's place and goes nowhere";
    EXPECT_EQ(shelf().list().front().made.day, m_now.at.day) << "the latest is the one that was made last";
    setDay("2026-11-25");
    const QString last = backUp();
    EXPECT_TRUE(areAllThere());
    EXPECT_EQ(shelf().list().front().file, last);
    EXPECT_EQ(shelf().list().back().file, ahead) << "one of the year 2036 is not the latest";
    EXPECT_EQ(shelf().latestSound()->backup.file, last);
}

TEST_F(ClockJumpTest, ADayThatComesAgainHasItsBackup)
{
    setDay("2026-11-24");
    backUp();
    setDay("2026-11-23");
    EXPECT_FALSE(shelf().hasOneOf(m_now.at.day));
    backUp();
    setDay("2026-11-24");
    EXPECT_TRUE(shelf().hasOneOf(m_now.at.day));
}

TEST_F(ClockJumpTest, WhatIsDoneKeepsItsOrder)
{
    const base::ClientId ada = test::clientNamed(m_studio.database(), "Ada Lund");
    const base::LiftId squat = test::liftOf(m_studio.database(), ada, lifts::Pattern::Squat);
    std::vector<base::ActId> acts;
    for (const char* moment : {"2026-11-24T08:00:00Z", "2036-01-01T00:00:00Z", "1999-12-31T23:59:59Z", "2026-11-24T08:01:00Z"}) {
        const auto recorded = store::RecordWriter(m_studio.database(), [moment] { return QString::fromLatin1(moment); })
                                  .record(ada, {}, {{squat, {test::smallStudioDay(), test::exposureOf({{45, 8, 2}})}}});
        ASSERT_TRUE(recorded) << recorded.error().message.toStdString();
        acts.push_back(recorded->act);
    }
    EXPECT_TRUE(std::is_sorted(acts.begin(), acts.end(), [](base::ActId a, base::ActId b) { return a.value() < b.value(); }));
    for (auto act = acts.rbegin(); act != acts.rend(); ++act) {
        const auto undone = store::RecordWriter(m_studio.database(), [] { return QStringLiteral("1980-01-01T00:00:00Z"); }).undo(*act);
        EXPECT_TRUE(undone) << undone.error().message.toStdString();
    }
    EXPECT_TRUE(store::checkStudio(m_studio.database())->isSound());
    const QString copy = m_studio.folder() + QStringLiteral("/copy.chalkrung");
    ASSERT_TRUE(store::copyStudio(m_studio.database(), copy));
    EXPECT_EQ(store::contentsOf(copy)->lastActAtUtc, QStringLiteral("1980-01-01T00:00:00Z")) << "what was done last, not what looks latest";
}

}  // namespace chalk::faults
