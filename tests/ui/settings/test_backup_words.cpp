#include "ui/settings/backup_words.h"

#include "tests/support/small_studio.h"

#include <gtest/gtest.h>

namespace chalk::ui::settings {

class BackupWordsTest : public ::testing::Test {
protected:
    static store::KeptBackup backupOn(base::Date day) { return {QStringLiteral("x"), {day, 362}, 0}; }

    base::Date m_today = test::smallStudioDay();
    store::SoundBackup m_sound{backupOn(test::smallStudioDay()), {QStringLiteral("Small Studio"), 6, 4'200'000, 18, 130, 240, 1900, QStringLiteral("2026-11-24T08:42:00Z")}};
};

TEST_F(BackupWordsTest, MomentsAreSaidAsPeopleDo)
{
    EXPECT_EQ(momentText(backupOn(m_today), m_today), QStringLiteral("today 06:02"));
    EXPECT_EQ(momentText(backupOn(m_today - 1), m_today), QStringLiteral("yesterday 06:02"));
    EXPECT_TRUE(momentText(backupOn(m_today - 40), m_today).contains(QStringLiteral("2026, 06:02")));
    EXPECT_TRUE(momentText(backupOn(m_today + 3650), m_today).contains(QStringLiteral("2036"))) << "of a clock that was wrong";
    EXPECT_EQ(sizeText(4'200'000), QStringLiteral("4.2 MB"));
    EXPECT_EQ(lastActText({}), QStringLiteral("nothing yet"));
    EXPECT_TRUE(lastActText(QStringLiteral("2026-11-24T08:42:00Z")).startsWith(QStringLiteral("24 Nov 2026")));
}

TEST_F(BackupWordsTest, TwoOfOneMinuteAreToldApart)
{
    const std::vector<store::KeptBackup> backups{{QStringLiteral("/b/2026-11-24 06.02.41 (2).chalkrung"), {m_today, 362}, 41},
                                                 {QStringLiteral("/b/2026-11-24 06.02.41.chalkrung"), {m_today, 362}, 41},
                                                 {QStringLiteral("/b/2026-11-24 06.02.07.chalkrung"), {m_today, 362}, 7},
                                                 {QStringLiteral("/b/2026-11-23 06.02.07.chalkrung"), {m_today - 1, 362}, 7}};
    const std::vector<QString> expected{QStringLiteral("today 06:02:41 (2)"), QStringLiteral("today 06:02:41"), QStringLiteral("today 06:02:07"),
                                        QStringLiteral("yesterday 06:02")};
    EXPECT_EQ(momentTexts(backups, m_today), expected);
}

TEST_F(BackupWordsTest, WhatDiffersIsMarked)
{
    store::StudioContents now = m_sound.contents;
    now.sessions = 251;
    const auto lines = contentLines(m_sound.contents, now);
    ASSERT_EQ(lines.size(), 5U);
    EXPECT_FALSE(lines[0].differs);
    EXPECT_TRUE(lines[2].differs);
    EXPECT_EQ(lines[2].backup, QStringLiteral("240"));
    EXPECT_EQ(lines[2].present, QStringLiteral("251"));
    EXPECT_EQ(contentLines(m_sound.contents, std::nullopt)[1].present, QStringLiteral("not known")) << "what is open now is damaged";
}

TEST_F(BackupWordsTest, TheRescueSaysWhatIsLostAndTheSafeAnswerChangesNothing)
{
    const store::StoreError damage{store::StoreError::Kind::Damaged, QStringLiteral("/s is damaged: it was cut short")};
    const common::Question question = rescueQuestion(damage, m_sound, QStringLiteral("/backups/s"), m_today);
    EXPECT_EQ(question.details, damage.message);
    EXPECT_EQ(question.answers.size(), 2);
    EXPECT_EQ(question.safeAnswer, 0);
    for (const char* words : {"today 06:02", "18 clients and 240 sessions", "is not in it", "kept in /backups/s"}) {
        EXPECT_TRUE(question.text.contains(QLatin1String(words))) << words;
    }
    const common::Question none = rescueQuestion(damage, std::nullopt, QStringLiteral("/backups/s"), m_today);
    EXPECT_EQ(none.answers.size(), 2) << "a copy from another disk can be chosen";
    EXPECT_TRUE(none.text.contains(QStringLiteral("no sound backup in /backups/s")));
    const common::Question locked = rescueQuestion(damage, store::SoundBackup{m_sound.backup, {}, true}, QStringLiteral("/backups/s"), m_today);
    EXPECT_EQ(locked.answers.size(), 1);
    EXPECT_TRUE(locked.text.contains(QStringLiteral("sealed with the studio's passphrase")));
    EXPECT_TRUE(rescuedMessage({QStringLiteral("/k"), true}).text.contains(QStringLiteral("damaged file is kept as /k until you delete it")));
    EXPECT_TRUE(rescuedMessage({QStringLiteral("/k"), false}).text.contains(QStringLiteral("among the backups as /k")));
}

}  // namespace chalk::ui::settings
