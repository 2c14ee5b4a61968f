#include "ui/floor/entry_fields.h"

#include "tests/ui/floor/floor_fixture.h"

namespace chalk::ui::floor {

/// The back squat of Ada: 2 × 5–10 at 50 kg is due.
class EntryFieldsTest : public test::FloorTest {
protected:
    EntryFieldsTest() { m_desk.read(); }

    /// Types into a field; the line that comes of it, or what is wrong.
    QString type(LiftField field, int set, const char* text)
    {
        const auto line = lineWithField(*m_desk.lift(), field, set, QString::fromUtf8(text));
        if (line) {
            m_desk.type(*line);
        }
        return line ? *line : line.error();
    }
    QString shown(LiftField field, int set = 0) { return fieldText(*m_desk.lift(), field, set); }

    FloorDesk m_desk{m_presenter, m_clock, m_acts};
};

TEST_F(EntryFieldsTest, WithoutALineTheyShowThePlan)
{
    EXPECT_EQ(shown(LiftField::Amount), QStringLiteral("8"));
    EXPECT_EQ(shown(LiftField::Load), QStringLiteral("50"));
    EXPECT_EQ(shown(LiftField::Pain), QStringLiteral("0"));
    EXPECT_EQ(shown(LiftField::Amount, 2), QString()) << "there are two sets";
}

TEST_F(EntryFieldsTest, EveryFieldIsUnderstoodByTheLine)
{
    EXPECT_EQ(type(LiftField::Amount, 1, "7"), QStringLiteral("8 7 r2"));
    EXPECT_EQ(type(LiftField::Left, 0, "1"), QStringLiteral("8 7 r1"));
    EXPECT_EQ(type(LiftField::Load, 0, "52,5"), QStringLiteral("8 7 @52.5 r1"));
    EXPECT_EQ(type(LiftField::Rest, 0, "2:15"), QStringLiteral("8 7 @52.5 r1 2:15"));
    EXPECT_EQ(type(LiftField::Pain, 0, "2"), QStringLiteral("8 7 @52.5 r1 2:15 p2"));
    EXPECT_EQ(type(LiftField::Felt, 0, "shaky"), QStringLiteral("8 7 @52.5 r1 2:15 p2 s"));
    EXPECT_EQ(type(LiftField::Felt, 0, "steady"), QStringLiteral("8 7 @52.5 r1 2:15 p2"));
}

TEST_F(EntryFieldsTest, TheLineIsUnderstoodByEveryField)
{
    m_desk.type(QStringLiteral("9 6 @47.5 r0 1:30 p3 lost"));
    EXPECT_EQ(shown(LiftField::Amount, 0), QStringLiteral("9"));
    EXPECT_EQ(shown(LiftField::Amount, 1), QStringLiteral("6"));
    EXPECT_EQ(shown(LiftField::Load), QStringLiteral("47.5"));
    EXPECT_EQ(shown(LiftField::Left), QStringLiteral("0"));
    EXPECT_EQ(shown(LiftField::Rest), QStringLiteral("1:30"));
    EXPECT_EQ(shown(LiftField::Pain), QStringLiteral("3"));
    EXPECT_EQ(shown(LiftField::Felt), QStringLiteral("lost"));
}

TEST_F(EntryFieldsTest, AnEmptyAmountTakesItsSetAwayButNotTheLast)
{
    EXPECT_EQ(type(LiftField::Amount, 0, ""), QStringLiteral("8 r2"));
    EXPECT_EQ(type(LiftField::Amount, 0, ""), QStringLiteral("A whole number, 0 to 1000."));
}

TEST_F(EntryFieldsTest, WhatMakesNoSenseIsSaidAndTheLineStays)
{
    m_desk.type(QStringLiteral("8 8"));
    EXPECT_EQ(type(LiftField::Amount, 0, "eight"), QStringLiteral("A whole number, 0 to 1000."));
    EXPECT_EQ(type(LiftField::Left, 0, "11"), QStringLiteral("Reps left: 0 to 10."));
    EXPECT_EQ(type(LiftField::Rest, 0, "soon"), QStringLiteral("Like 2:15, or seconds."));
    EXPECT_EQ(type(LiftField::Pain, 0, "-1"), QStringLiteral("Pain: 0 to 10."));
    EXPECT_EQ(type(LiftField::Load, 0, "heavy"), QStringLiteral("A load, like 72.5."));
    EXPECT_EQ(type(LiftField::Felt, 0, "fine"), QStringLiteral("steady, shaky or lost."));
    EXPECT_EQ(m_desk.lift()->line, QStringLiteral("8 8"));
    m_desk.type(QStringLiteral("8 8 q9"));
    EXPECT_EQ(type(LiftField::Pain, 0, "1"), QStringLiteral("Put the line right first."));
}

}  // namespace chalk::ui::floor
