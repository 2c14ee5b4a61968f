#include "ui/common/rule_sentences.h"
#include "ui/common/rule_words.h"

#include <QSet>

#include <gtest/gtest.h>

namespace chalk::ui::common {

using progression::Rule;

class RuleWords : public ::testing::Test {
protected:
    RuleWords()
    {
        m_next.kind = progression::PrescriptionKind::Work;
        m_next.stage = progression::Stage::RepBuild;
        m_next.load = base::Load::fromCenti(7750);
        m_next.sets = base::Sets(3);
        m_next.repsLow = base::Reps(8);
        m_next.repsHigh = base::Reps(8);
        m_next.rest = base::Seconds(150);
    }

    [[nodiscard]] RuleFacts facts() const { return {m_policy}; }

    /// Three sets at 75 kg, the hardest 7 reps with 2 left, on Thu 19 Nov; rests of 2:40.
    [[nodiscard]] RuleFacts factsWithRecord() const
    {
        progression::Exposure exposure;
        for (const int reps : {8, 7, 7}) {
            progression::SetRecord set;
            set.load = base::Load::fromCenti(7500);
            set.amount = reps;
            set.rir = 2;
            set.restSeconds = 160;
            exposure.sets.push_back(set);
        }
        exposure.pain = 2;
        RuleFacts facts{m_policy};
        facts.record = decidedRecordOf(*base::Date::parse("2026-11-19"), exposure, lifts::Measure::Reps, m_policy);
        facts.today = *base::Date::parse("2026-12-10");
        return facts;
    }

    progression::Policy m_policy = progression::Policy::defaultsFor(base::MassUnit::Kilogram);
    progression::Prescription m_next;
};

TEST_F(RuleWords, EveryRuleHasOneSentenceOfItsOwn)
{
    ASSERT_EQ(ruleSentences().size(), static_cast<std::size_t>(progression::kRuleCount));
    QSet<QString> said;
    for (int i = 0; i < progression::kRuleCount; ++i) {
        const Rule rule = static_cast<Rule>(i);
        EXPECT_EQ(ruleSentences()[static_cast<std::size_t>(i)].rule, rule);
        for (const RuleFacts& given : {facts(), factsWithRecord()}) {
            const QString sentence = sentenceFor(rule, m_next, given);
            EXPECT_TRUE(sentence.endsWith(QLatin1Char('.'))) << progression::nameOf(rule);
            EXPECT_FALSE(sentence.contains(QLatin1Char('{'))) << sentence.toStdString();
            EXPECT_FALSE(sentence.contains(QLatin1Char('!'))) << sentence.toStdString();
        }
        said.insert(sentenceFor(rule, m_next, facts()));
    }
    EXPECT_EQ(said.size(), progression::kRuleCount);
}

TEST_F(RuleWords, NeverBlamesTheClient)
{
    for (const RuleSentence& sentence : ruleSentences()) {
        for (const char* text : {sentence.text, sentence.withRecord}) {
            const QString words = QString::fromUtf8(text == nullptr ? "" : text).toLower();
            for (const char* word : {"failed", "bad", "compliant", "lazy", "weak", "patient"}) {
                EXPECT_FALSE(words.contains(QLatin1String(word))) << text;
            }
        }
    }
}

TEST_F(RuleWords, SaysTheNumbersOfThePrescription)
{
    EXPECT_EQ(sentenceFor(Rule::L1, m_next, facts()).toStdString(), "Every set had more than 6 in it, so the load goes up to 77.5 kg.");
    EXPECT_EQ(sentenceFor(Rule::T2, m_next, facts()).toStdString(),
              "All sets were made in the rest given, so the next rest is 2:30.");
    RuleFacts pair = facts();
    pair.pieces = 2;
    EXPECT_EQ(sentenceFor(Rule::L5, m_next, pair).toStdString(), "The load was missed again, so it backs off to 2 × 77.5 kg.");
    RuleFacts carry = facts();
    carry.measure = lifts::Measure::Metres;
    EXPECT_EQ(sentenceFor(Rule::L3, m_next, carry).toStdString(), "A set fell short of 20 m, so the same load again.");
}

TEST_F(RuleWords, SaysTheNumbersOfTheRecordWhereItIsKnown)
{
    EXPECT_EQ(sentenceFor(Rule::L1, m_next, factsWithRecord()).toStdString(),
              "Every set at 75 kg had 7 or more in it with 2 left, so the load goes up to 77.5 kg.");
    EXPECT_EQ(sentenceFor(Rule::P2, m_next, factsWithRecord()).toStdString(),
              "There was pain of 2 of 10 on Thu 19 Nov, so nothing moves.");
    EXPECT_EQ(sentenceFor(Rule::B2, m_next, factsWithRecord()).toStdString(),
              "The hardest set had 9 in it, more than 15, so 77.5 kg should be about right.");
    EXPECT_EQ(sentenceFor(Rule::T2, m_next, factsWithRecord()).toStdString(),
              "All sets were made with at most 2:40 of rest, so the next rest is 2:30.");
    EXPECT_EQ(sentenceFor(Rule::G1, m_next, factsWithRecord()).toStdString(),
              "The last session was on Thu 19 Nov, 21 days ago, so the load steps back to 77.5 kg.");
}

TEST_F(RuleWords, LeavesOutWhatTheRecordDoesNotSay)
{
    RuleFacts facts = factsWithRecord();
    facts.record->facts.longestRest.reset();
    EXPECT_EQ(sentenceFor(Rule::T2, m_next, facts), sentenceFor(Rule::T2, m_next, RuleFacts{m_policy}));
    facts.today = *base::Date::parse("2026-11-20");  // a layoff that an earlier event met is not told by this record's date
    EXPECT_EQ(sentenceFor(Rule::G1, m_next, facts), sentenceFor(Rule::G1, m_next, RuleFacts{m_policy}));
    EXPECT_FALSE(decidedRecordOf(*base::Date::parse("2026-11-19"), progression::Release{"seen"}, lifts::Measure::Reps, m_policy));
}

TEST_F(RuleWords, WhyPrefersTheRulesOfTheDay)
{
    progression::RuleList decided;
    decided.add(Rule::R2);
    EXPECT_EQ(whyOf(decided, m_next, facts()), sentenceFor(Rule::R2, m_next, facts()));
    m_next.rules.add(Rule::G1);
    EXPECT_EQ(whyOf(decided, m_next, facts()), sentenceFor(Rule::G1, m_next, facts()));
    m_next.rules = {};
    for (const progression::Stage stage : {progression::Stage::Pattern, progression::Stage::Control, progression::Stage::BaseLoad}) {
        m_next.stage = stage;
        EXPECT_TRUE(whyOf({}, m_next, facts()).endsWith(QLatin1Char('.')));
    }
}

}  // namespace chalk::ui::common
