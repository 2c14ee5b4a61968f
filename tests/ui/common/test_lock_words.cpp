#include "ui/common/lock_words.h"

#include <QSet>

#include <gtest/gtest.h>

namespace chalk::ui::common {

using clients::ClearanceState;

class LockWordsTest : public ::testing::Test {
protected:
    LockWordsTest() { m_client.name = "Osric Bell"; }

    [[nodiscard]] LockWords wordsOf(ClearanceState state)
    {
        m_clearance.state = state;
        return lockWordsOf(m_clearance, m_client, m_today);
    }

    clients::Client m_client;
    clients::Clearance m_clearance;
    const base::Date m_today = base::Date::parse("2026-11-24").value();
};

TEST_F(LockWordsTest, SayNothingWhereNothingIsLocked)
{
    EXPECT_EQ(wordsOf(ClearanceState::NotNeeded), LockWords());
    EXPECT_EQ(wordsOf(ClearanceState::Granted), LockWords());
    m_clearance.validUntil = m_today;
    EXPECT_EQ(wordsOf(ClearanceState::Granted), LockWords());
}

TEST_F(LockWordsTest, SayForEveryBlockingStateWhatItWaitsFor)
{
    m_clearance.validUntil = m_today - 1;
    QSet<QString> headlines;
    QSet<QString> briefs;
    for (const ClearanceState state : {ClearanceState::Recommended, ClearanceState::StopAndSeek, ClearanceState::Unanswered, ClearanceState::Granted}) {
        const LockWords words = wordsOf(state);
        EXPECT_TRUE(words.text.contains(QStringLiteral("No loaded work and no card"))) << words.text.toStdString();
        headlines.insert(words.headline);
        briefs.insert(words.brief);
    }
    EXPECT_EQ(headlines.size(), 4);
    EXPECT_EQ(briefs.size(), 4);
    EXPECT_FALSE(headlines.contains(QString()));
}

TEST_F(LockWordsTest, NameTheDayOfTheLetterAndTheLastDayOfTheClearance)
{
    EXPECT_TRUE(wordsOf(ClearanceState::Recommended).text.startsWith(QStringLiteral("No letter has gone yet.")));
    m_clearance.askedOn = m_today - 6;
    EXPECT_TRUE(wordsOf(ClearanceState::Recommended).text.startsWith(QStringLiteral("The letter went on 18 Nov 2026.")));
    EXPECT_EQ(wordsOf(ClearanceState::Recommended).brief, QStringLiteral("Waiting for letter"));
    m_clearance.validUntil = m_today - 1;
    EXPECT_TRUE(wordsOf(ClearanceState::Granted).text.startsWith(QStringLiteral("It was valid until 23 Nov 2026.")));
}

}  // namespace chalk::ui::common
