#include "ui/common/plateau_words.h"

#include "core/plateau/detector.h"
#include "tests/support/logged_lift.h"

#include <gtest/gtest.h>

namespace chalk::ui::common {

using plateau::CheckDay;
using plateau::LoggedExposure;
using plateau::PlateauVerdict;

class PlateauWords : public ::testing::Test {
protected:
    struct Judged {
        plateau::Judgement judgement;
        plateau::PlateauEvidence evidence;
        [[nodiscard]] VerdictWords words() const { return verdictWordsOf(judgement, evidence); }
    };

    /// The words that the detector itself gives rise to, `days` after the last exposure.
    static Judged judged(const std::vector<LoggedExposure>& log, int days = 0, int attended = 7)
    {
        const auto rows = plateau::cleaned(log);
        const CheckDay check{log.empty() ? test::firstLoggedDay() : log.back().date + days, 8, attended};
        const auto judgement = plateau::judge(rows, check);
        return {judgement, plateau::evidenceFor(judgement, rows, check)};
    }

    static std::vector<LoggedExposure> stalledLog()
    {
        auto log = test::plainLog(20);
        for (std::size_t i = 16; i < log.size(); ++i) {
            test::setReps(log[i], {7, 7, 6});
        }
        return log;
    }
};

TEST_F(PlateauWords, SaysHowManySessionsAreMissing)
{
    const auto few = judged(test::plainLog(6));
    ASSERT_EQ(few.judgement.verdict, PlateauVerdict::NotEnoughData);
    ASSERT_TRUE(few.evidence.shortage);
    ASSERT_EQ(few.evidence.shortage->toCome, 2) << "eight count for the lever";
    EXPECT_EQ(few.words().title, QStringLiteral("Not enough data: 2 more sessions"));
    EXPECT_TRUE(few.words().numbers.isEmpty());
    EXPECT_TRUE(few.words().confidence.isEmpty());
    EXPECT_EQ(shortageText(few.evidence), QStringLiteral("2 more sessions before this says anything"));
    EXPECT_EQ(judged(test::plainLog(7)).words().title, QStringLiteral("Not enough data: 1 more session"));
}

TEST_F(PlateauWords, SaysWhatElseExplainsAStallBeforeItsNumbers)
{
    const auto stalled = judged(stalledLog());
    ASSERT_TRUE(stalled.judgement.verdict == PlateauVerdict::Stalled || stalled.judgement.verdict == PlateauVerdict::Regressing);
    const VerdictWords words = stalled.words();
    EXPECT_TRUE(words.title.contains(QStringLiteral("without a new best"))) << words.title.toStdString();
    ASSERT_FALSE(words.first.isEmpty());
    EXPECT_EQ(words.first.front(), QStringLiteral("Came to 7 of 8 planned sessions in four weeks."));
    EXPECT_TRUE(words.numbers.startsWith(QStringLiteral("Missed 4 of the last 4 targets, before that about 1 of 10.")))
        << words.numbers.toStdString();
    EXPECT_TRUE(words.numbers.contains(QStringLiteral("Estimated strength −"))) << words.numbers.toStdString();
    const QString all = words.inOneLine();
    EXPECT_LT(all.indexOf(words.first.front()), all.indexOf(words.numbers));
    EXPECT_LT(all.indexOf(words.numbers), all.indexOf(words.confidence));
    EXPECT_TRUE(words.confidence.contains(QStringLiteral("simulated histories")));
}

TEST_F(PlateauWords, RulesOutWhatIsNotBehindIt)
{
    const QString ruledOut = judged(stalledLog(), 0, 8).words().first.back();
    EXPECT_EQ(ruledOut, QStringLiteral("Not behind it: every planned session attended, no long gap, no pain noted, no lighter session."));
    auto painful = stalledLog();
    painful.back().hasPain = true;
    const VerdictWords words = judged(painful).words();
    EXPECT_TRUE(words.first.contains(QStringLiteral("Pain in 1 of the last 5 sessions."))) << words.inOneLine().toStdString();
    EXPECT_FALSE(words.first.back().contains(QStringLiteral("no pain noted")));
}

TEST_F(PlateauWords, NamesTheEntriesToCheck)
{
    auto log = stalledLog();
    test::setReps(log[10], {40, 8, 8});
    EXPECT_TRUE(judged(log).words().inOneLine().contains(QStringLiteral("Entry to check: ")));
    EXPECT_FALSE(judged(stalledLog()).words().inOneLine().contains(QStringLiteral("Entry to check")));
}

TEST_F(PlateauWords, NeverCallsProgressProved)
{
    auto log = test::plainLog(20);
    for (std::size_t i = 0; i < log.size(); ++i) {
        log[i].load = log[i].targetLoad = log[i].targetLoad + test::loadOf(static_cast<int>(i));
    }
    const auto rising = judged(log);
    ASSERT_EQ(rising.judgement.verdict, PlateauVerdict::Progressing);
    EXPECT_TRUE(rising.words().title.startsWith(QStringLiteral("No sign of a stall")));
    EXPECT_FALSE(rising.words().inOneLine().contains(QStringLiteral("prov")));
    EXPECT_TRUE(rising.words().confidence.isEmpty());
}

TEST_F(PlateauWords, FallingIsOnlyAHint)
{
    auto judgedLog = judged(stalledLog());
    judgedLog.judgement.verdict = PlateauVerdict::Regressing;
    EXPECT_TRUE(judgedLog.words().title.contains(QStringLiteral("stall")));
    EXPECT_TRUE(judgedLog.words().numbers.endsWith(QStringLiteral("It may be falling; the log cannot tell that from a stall with certainty.")));
    judgedLog.judgement.verdict = PlateauVerdict::Stalled;
    EXPECT_FALSE(judgedLog.words().numbers.contains(QStringLiteral("falling")));
}

TEST_F(PlateauWords, EveryReasonNotToJudgeHasWordsOfItsOwn)
{
    EXPECT_EQ(judged({}).words().title, QStringLiteral("Not enough data: no session with load yet"));
    EXPECT_EQ(judged(test::plainLog(20), 20).words().title, QStringLiteral("Not done for more than two weeks: nothing to judge"));
    EXPECT_EQ(judged(test::plainLog(20), 0, 3).words().title,
              QStringLiteral("Fewer than half of the planned sessions in four weeks: see to that first"));
    auto painful = test::plainLog(20);
    painful[18].hasPain = painful[19].hasPain = true;
    EXPECT_EQ(judged(painful).words().title, QStringLiteral("Pain in two or more of the last five sessions: see to that first"));
    auto lighter = test::plainLog(20);
    lighter.back().isLighterWeek = true;
    EXPECT_EQ(judged(lighter).words().title, QStringLiteral("The last session was a lighter one: judged after the next full one"));
    auto back = test::plainLog(20);
    back.back().date = back.back().date + 20;
    EXPECT_TRUE(judged(back).words().title.startsWith(QStringLiteral("Back after "))) << judged(back).words().title.toStdString();
    EXPECT_TRUE(judged(back).words().title.endsWith(QStringLiteral("2 more sessions before this is judged")));
}

}  // namespace chalk::ui::common
