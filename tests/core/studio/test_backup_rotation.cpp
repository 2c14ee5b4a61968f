#include "core/studio/backup_rotation.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <set>

namespace chalk::studio {

using ::testing::ElementsAre;
using ::testing::IsEmpty;

namespace {

const base::Date kBackupDay = base::Date::fromYmd(2027, 1, 4).value();  // a Monday; the week before is week 53 of 2026

/// One backup at noon of every day, the latest on `kBackupDay`, the oldest first.
std::vector<BackupMoment> daily(int days)
{
    std::vector<BackupMoment> backups;
    for (int ago = days - 1; ago >= 0; --ago) {
        backups.push_back({kBackupDay - ago, 720});
    }
    return backups;
}

std::set<base::Date> keptOf(const std::vector<BackupMoment>& backups, const BackupRotation& rotation)
{
    const auto spent = spentBackups(backups, {kBackupDay, 1000}, rotation);
    std::set<base::Date> kept;
    for (std::size_t i = 0; i < backups.size(); ++i) {
        if (std::find(spent.begin(), spent.end(), i) == spent.end()) {
            kept.insert(backups[i].day);
        }
    }
    return kept;
}

}  // namespace

TEST(BackupRotation, TheLatestOnesStay)
{
    std::vector<BackupMoment> backups;
    for (int i = 0; i < 13; ++i) {
        backups.push_back({kBackupDay, 600 + i});
    }
    EXPECT_THAT(spentBackups(backups, {kBackupDay, 1000}), ElementsAre(0U, 1U, 2U));
    EXPECT_THAT(spentBackups(std::span(backups).first(10), {kBackupDay, 1000}), IsEmpty());
    EXPECT_THAT(spentBackups({}, {kBackupDay, 1000}), IsEmpty());
}

TEST(BackupRotation, OfADayAWeekAndAMonthTheLastOneStays)
{
    EXPECT_EQ(keptOf(daily(40), {1, 3, 0, 0}), (std::set<base::Date>{kBackupDay, kBackupDay - 1, kBackupDay - 2}));
    EXPECT_EQ(keptOf(daily(40), {1, 0, 3, 0}), (std::set<base::Date>{kBackupDay, kBackupDay - 1, kBackupDay - 8})) << "the Sundays of the weeks before";
    EXPECT_EQ(keptOf(daily(70), {1, 0, 0, 3}),
              (std::set<base::Date>{kBackupDay, base::Date::fromYmd(2026, 12, 31).value(), base::Date::fromYmd(2026, 11, 30).value()}));
}

TEST(BackupRotation, DaysWithoutABackupTakeNoPlace)
{
    const std::vector<BackupMoment> backups{{kBackupDay - 300, 700}, {kBackupDay - 200, 700}, {kBackupDay - 100, 700}, {kBackupDay, 700}};
    EXPECT_THAT(spentBackups(backups, {kBackupDay, 1000}, {1, 3, 0, 0}), ElementsAre(0U));
}

TEST(BackupRotation, ByTheUsualRuleAYearOfDailyOnesComesToAboutTwoScore)
{
    const auto kept = keptOf(daily(400), {});
    EXPECT_TRUE(kept.count(kBackupDay));
    EXPECT_TRUE(kept.count(kBackupDay - 13)) << "two weeks of days";
    EXPECT_LE(kept.size(), 34U) << "14 days, 8 weeks and 12 months at most, less what is the same";
    EXPECT_GE(kept.size(), 25U);
    EXPECT_EQ(*kept.begin(), base::Date::fromYmd(2026, 2, 28).value()) << "the twelfth month back";
}

TEST(BackupRotation, ABackupFromTheFutureIsLeftAlone)
{
    std::vector<BackupMoment> backups = daily(3);
    backups.push_back({kBackupDay + 400, 0});
    EXPECT_THAT(spentBackups(backups, {kBackupDay, 1000}, {1, 0, 0, 0}), ElementsAre(0U, 1U)) << "a clock that was wrong takes nobody's place";
    EXPECT_THAT(spentBackups(std::span(backups).last(1), {kBackupDay, 1000}, {0, 0, 0, 0}), IsEmpty());
}

}  // namespace chalk::studio
