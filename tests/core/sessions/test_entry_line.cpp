#include "core/sessions/entry_line.h"

#include "tests/support/lift_on_test.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace chalk::sessions {

namespace {

using progression::Exposure;
using progression::Steadiness;
using test::kilos;

/// A squat at 3 × 8 with 77.5 kg, rest 2:30.
struct Planned {
    progression::Policy policy = progression::Policy::defaultsFor(base::MassUnit::Kilogram);
    progression::Prescription due;
    Planned()
    {
        due.kind = progression::PrescriptionKind::Work;
        due.stage = progression::Stage::RepBuild;
        due.load = kilos(77.5);
        due.sets = base::Sets(3);
        due.repsLow = due.repsHigh = base::Reps(8);
        due.rest = base::Seconds(150);
        due.reserve = 2;
    }
    [[nodiscard]] EntryPlan plan() const { return {due, lifts::Measure::Reps, policy}; }
    [[nodiscard]] Exposure exposure(std::string_view line) const
    {
        const auto event = eventOf(parseEntryLine(line), plan());
        return event ? std::get<Exposure>(*event) : Exposure{};
    }
};

/// `8×77.5 r2 150 | …`, for comparing.
std::string textOf(const Exposure& exposure)
{
    std::string text;
    for (const auto& set : exposure.sets) {
        text += std::to_string(set.amount) + "@" + std::to_string(set.load.centi()) + "r" + std::to_string(set.rir) + " ";
    }
    return text;
}

std::vector<EntryDoubt> doubts(std::string_view line)
{
    const Planned planned;
    return doubtsAbout(planned.exposure(line), planned.plan(), lifts::LoadTable::of(test::barbellKit().equipment).value());
}

}  // namespace

TEST(EntryLine, ReadsWhatTheTradeWrites)
{
    const EntryLine line = parseEntryLine("8 8 7 @80 r2 2:15 p1 s");
    EXPECT_TRUE(line.isUnderstood());
    EXPECT_EQ(line.amounts, (std::vector{8, 8, 7}));
    EXPECT_EQ(line.load, kilos(80));
    EXPECT_EQ(line.rir, 2);
    EXPECT_EQ(line.restSeconds, 135);
    EXPECT_EQ(line.pain, 1);
    EXPECT_EQ(line.felt, Steadiness::Shaky);
    EXPECT_EQ(parseEntryLine("5x8").amounts, (std::vector{8, 8, 8, 8, 8}));
    EXPECT_EQ(parseEntryLine("2×12 10").amounts, (std::vector{12, 12, 10}));
    EXPECT_EQ(parseEntryLine("@82,5").load, kilos(82.5));
    EXPECT_EQ(parseEntryLine("@-20").load, kilos(-20));
    EXPECT_TRUE(parseEntryLine("x").isSkipped);
    EXPECT_EQ(parseEntryLine("8 8  left knee clicked  twice").note, "left knee clicked  twice");
}

TEST(EntryLine, WhatStandsBehindANumberIsOfThatSetAlone)
{
    const Planned planned;
    EXPECT_EQ(textOf(planned.exposure("8r3 8r2 7r0")), "8@7750r3 8@7750r2 7@7750r0 ");
    EXPECT_EQ(textOf(planned.exposure("2x8 6@70r1 r2")), "8@7750r2 8@7750r2 6@7000r1 ");
    EXPECT_EQ(planned.exposure("8 8s 7l").sets[1].steadiness, Steadiness::Shaky);
    EXPECT_EQ(planned.exposure("8 8s 7l").sets[2].steadiness, Steadiness::Lost);
    EXPECT_EQ(planned.exposure("8 8s 7l").sets[0].steadiness, Steadiness::Steady);
    EXPECT_EQ(doubts("8 8 8@775"), std::vector{EntryDoubt::LoadFarOff});
}

TEST(EntryLine, GuessesNothing)
{
    for (const char* text : {"8 8 b", "r11", "r", "p12", "2:75", "2:5", "@", "@80.125", "@eighty", "8;8", "0x8", "21x8", "8x", "-3", "1001", "1.5", "ß", "8r11", "8r", "8@", "8x8x8", "8q", "15x8 15x8"}) {
        const EntryLine line = parseEntryLine(text);
        EXPECT_FALSE(line.isUnderstood()) << text;
        EXPECT_FALSE(eventOf(line, Planned().plan())) << text;
    }
    const EntryLine line = parseEntryLine("8 oops 7");
    ASSERT_EQ(line.tokens.size(), 3U);
    EXPECT_EQ(line.tokens[1].part, EntryPart::Unknown);
    EXPECT_EQ(line.tokens[1].begin, 2U);
    EXPECT_EQ(line.tokens[1].length, 4U);
}

TEST(EntryLine, WhatIsNotSaidIsAsPlanned)
{
    const Planned planned;
    EXPECT_EQ(textOf(planned.exposure("")), "8@7750r2 8@7750r2 8@7750r2 ");
    EXPECT_EQ(planned.exposure("").sets[1].restSeconds, 150);
    EXPECT_EQ(textOf(planned.exposure("8 8 7")), "8@7750r-1 8@7750r-1 7@7750r-1 ") << "reserve was not said";
    EXPECT_EQ(textOf(planned.exposure("r1")), "8@7750r1 8@7750r1 8@7750r1 ");
    EXPECT_EQ(textOf(planned.exposure("2x6 @80 r3")), "6@8000r3 6@8000r3 ");
    EXPECT_FALSE(eventOf(parseEntryLine("x"), planned.plan()));
}

TEST(EntryLine, RangesAndMeasuresHaveAMiddle)
{
    Planned planned;
    planned.due.repsLow = base::Reps(5);
    planned.due.repsHigh = base::Reps(10);
    EXPECT_EQ(plannedAmount(planned.plan()), 8);
    EXPECT_EQ(plannedAmount({planned.due, lifts::Measure::Metres, planned.policy}), 32);
    EXPECT_EQ(plannedAmount({planned.due, lifts::Measure::Seconds, planned.policy}), 24);
}

TEST(EntryLine, RehearsalsAndHolds)
{
    Planned planned;
    planned.due.kind = progression::PrescriptionKind::Rehearse;
    const auto event = eventOf(parseEntryLine("met 6 t1 m1.2 b0,9"), planned.plan());
    ASSERT_TRUE(event);
    const auto& rehearsal = std::get<progression::Rehearsal>(*event);
    EXPECT_EQ(rehearsal.reps, base::Reps(6));
    EXPECT_EQ(rehearsal.pauses, (progression::Pauses{1000, 1200, 900}));
    EXPECT_EQ(rehearsal.criteria.front().verdict, progression::Verdict::Met);
    EXPECT_FALSE(eventOf(parseEntryLine(""), planned.plan())) << "somebody has to have looked";
    planned.due.kind = progression::PrescriptionKind::Hold;
    EXPECT_FALSE(eventOf(parseEntryLine("8 8"), planned.plan()));
}

TEST(EntryLine, TyposThatMatterAreAskedAbout)
{
    EXPECT_EQ(doubts("8 8 8 r2"), std::vector<EntryDoubt>());
    EXPECT_EQ(doubts("8 8 8 @80"), std::vector<EntryDoubt>());
    EXPECT_EQ(doubts("8 8 8 @775"), std::vector{EntryDoubt::LoadFarOff});
    EXPECT_EQ(doubts("8 8 8 @7.75"), std::vector{EntryDoubt::LoadFarOff});
    EXPECT_EQ(doubts("8 8 8 @170"), std::vector{EntryDoubt::LoadInOtherUnit});
    EXPECT_EQ(doubts("8 8 8 @35"), std::vector{EntryDoubt::LoadInOtherUnit});
    EXPECT_EQ(doubts("8 8 8 @81"), std::vector{EntryDoubt::LoadNotOnHand});
    EXPECT_EQ(doubts("8 8 88"), std::vector{EntryDoubt::ManyReps});
}

RC_GTEST_PROP(EntryLine, AnyTextIsReadWithoutHarm, (const std::string& text))
{
    const EntryLine line = parseEntryLine(text);
    for (const EntryToken& token : line.tokens) {
        RC_ASSERT(token.begin + token.length <= text.size());
    }
    const auto event = eventOf(line, Planned().plan());
    RC_ASSERT((!event || line.isUnderstood()));
}

}  // namespace chalk::sessions
