#include "ui/common/conflict_words.h"

#include "tests/support/scripted_dialogs.h"
#include "ui/common/settling.h"

#include <QJsonArray>
#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace chalk::ui::common {

using store::Conflict;
using store::ConflictAbout;
using store::StoreError;

class ConflictWords : public ::testing::Test {
protected:
    static QJsonObject sets(double load, int reps)
    {
        return {{QStringLiteral("date"), QStringLiteral("2026-11-24")},
                {QStringLiteral("sets"), QJsonArray{QJsonObject{{QStringLiteral("load"), load}, {QStringLiteral("reps"), reps}, {QStringLiteral("rir"), 2}}}}};
    }
    Conflict entry()
    {
        Conflict conflict{ConflictAbout::Entry};
        conflict.yours = sets(77.5, 8);
        conflict.theirs = sets(75, 10);
        conflict.coach = QStringLiteral("Ines");
        return conflict;
    }

    ConflictNames m_names{{{base::CoachId(2), QStringLiteral("Tariq")}}, QStringLiteral("Joaquin Ferro"), QStringLiteral("Squat")};
};

TEST_F(ConflictWords, OnlyWhatDiffersStandsSideBySide)
{
    const auto rows = versionRows(entry(), m_names);
    ASSERT_EQ(rows.size(), 1U);
    EXPECT_EQ(rows[0], (VersionRow{QStringLiteral("Sets"), QStringLiteral("77.5 × 8, 2 left"), QStringLiteral("75 × 10, 2 left")}));
}

TEST_F(ConflictWords, SaysWhatAndBywhomAndThatNothingIsLost)
{
    const Question question = conflictQuestion(entry(), m_names);
    EXPECT_EQ(question.headline, QStringLiteral("What was done was changed in the meantime: Joaquin Ferro, squat."));
    EXPECT_EQ(question.text, QStringLiteral("Changed by: Ines. Nothing of yours is written yet, and nothing is lost."));
    EXPECT_EQ(question.answers, (QStringList{QStringLiteral("Keep theirs"), QStringLiteral("Write mine")})) << "an entry is a whole";
    EXPECT_EQ(question.safeAnswer, 0);
}

TEST_F(ConflictWords, OffersBothWhereTheyFitTogether)
{
    Conflict conflict{ConflictAbout::Report};
    conflict.yours = {{QStringLiteral("note"), QStringLiteral("Slow")}};
    conflict.theirs = {{QStringLiteral("effort"), 7.5}};
    EXPECT_EQ(conflictQuestion(conflict, m_names).answers.size(), 3);
    EXPECT_EQ(versionRows(conflict, m_names), (std::vector<VersionRow>{{QStringLiteral("Note"), QStringLiteral("Slow"), {}}, {QStringLiteral("Effort"), {}, QStringLiteral("7.5")}}));
}

TEST_F(ConflictWords, NamesCoachesStatesAndDays)
{
    Conflict conflict{ConflictAbout::Booking};
    conflict.yours = {{QStringLiteral("coach"), 2}, {QStringLiteral("state"), QStringLiteral("missed")}, {QStringLiteral("date"), QStringLiteral("2026-11-24")}};
    const auto rows = versionRows(conflict, m_names);
    ASSERT_EQ(rows.size(), 3U);
    EXPECT_EQ(rows[0].yours, QStringLiteral("Tariq"));
    EXPECT_EQ(rows[1].yours, QStringLiteral("Tue 24 Nov"));
    EXPECT_EQ(rows[2].yours, QStringLiteral("Missed"));
}

TEST_F(ConflictWords, AChoiceIsAddedAndTakesNothingAway)
{
    Conflict conflict{ConflictAbout::Choice};
    conflict.coach = QStringLiteral("Ines");
    conflict.theirs = sets(75, 10);
    const Question question = conflictQuestion(conflict, m_names);
    EXPECT_EQ(question.headline, QStringLiteral("The lift was changed in the meantime: Joaquin Ferro, squat."));
    EXPECT_EQ(question.text, QStringLiteral("Last written by: Ines. Your choice was made before that, and is not written yet."));
    EXPECT_EQ(question.answers, (QStringList{QStringLiteral("Leave mine out"), QStringLiteral("Write mine as well")}));
}

TEST_F(ConflictWords, ListsOfLiftsAreNamed)
{
    Conflict conflict{ConflictAbout::SessionLifts};
    conflict.yours = {{QStringLiteral("lifts"), QJsonArray{QStringLiteral("squat"), QStringLiteral("horizontal_push")}}};
    conflict.theirs = {{QStringLiteral("lifts"), QJsonArray{QStringLiteral("squat")}}, {QStringLiteral("left_out"), QJsonObject{{QStringLiteral("squat"), true}}}};
    EXPECT_EQ(versionRows(conflict, m_names), (std::vector<VersionRow>{{QStringLiteral("Lifts"), QStringLiteral("Squat; Horizontal push"), QStringLiteral("Squat")},
                                                                       {QStringLiteral("Left out · Squat"), {}, QStringLiteral("yes")}}));
}

TEST_F(ConflictWords, EveryThingHasWords)
{
    for (int about = 0; about <= static_cast<int>(ConflictAbout::Template); ++about) {
        const Question question = conflictQuestion({static_cast<ConflictAbout>(about)}, {});
        EXPECT_FALSE(question.headline.startsWith(QLatin1Char(' '))) << about;
        EXPECT_FALSE(question.versions.empty()) << about;
    }
}

/// A value that is written where it is still as it was seen.
class SettledTest : public ::testing::Test {
protected:
    store::Result<int> write(const Settling& settling)
    {
        const QJsonObject mine = settling.merged.value_or(QJsonObject{{QStringLiteral("note"), QStringLiteral("mine")}});
        if (settling.seen != m_there) {
            Conflict conflict{ConflictAbout::Report};
            conflict.seen = *settling.seen;
            conflict.yours = mine;
            conflict.theirs = m_there;
            return tl::make_unexpected(StoreError{StoreError::Kind::Conflict, QStringLiteral("changed"), std::make_shared<const Conflict>(conflict)});
        }
        m_there = mine;
        return 1;
    }
    store::Result<int> settle()
    {
        return settled(m_dialogs, *m_database, QJsonObject(), [this](const Settling& settling) { return write(settling); });
    }

    void SetUp() override { m_database = store::Database::open(m_folder.filePath(QStringLiteral("a.chalkrung")), store::OpenMode::CreateIfMissing).value(); }

    QTemporaryDir m_folder;
    std::unique_ptr<store::Database> m_database;
    tests::ScriptedDialogs m_dialogs;
    QJsonObject m_there{{QStringLiteral("effort"), 7}};
};

TEST_F(SettledTest, AsksNothingWhereNobodyElseWrote)
{
    m_there = {};
    EXPECT_TRUE(settle());
    EXPECT_TRUE(m_dialogs.asked.empty());
}

TEST_F(SettledTest, TheirsStaysWhereThePersonSaysSoOrNothing)
{
    EXPECT_FALSE(settle());
    EXPECT_EQ(m_dialogs.asked.size(), 1U);
    EXPECT_EQ(m_there, (QJsonObject{{QStringLiteral("effort"), 7}}));
}

TEST_F(SettledTest, MineIsWrittenOverWhatWasSeen)
{
    m_dialogs.answers = {1};
    EXPECT_TRUE(settle());
    EXPECT_EQ(m_there, (QJsonObject{{QStringLiteral("note"), QStringLiteral("mine")}}));
}

TEST_F(SettledTest, BothAreWritten)
{
    m_dialogs.answers = {2};
    EXPECT_TRUE(settle());
    EXPECT_EQ(m_there, (QJsonObject{{QStringLiteral("effort"), 7}, {QStringLiteral("note"), QStringLiteral("mine")}}));
}

}  // namespace chalk::ui::common
