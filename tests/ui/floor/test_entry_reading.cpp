#include "ui/floor/entry_reading.h"

#include "tests/ui/floor/floor_fixture.h"
#include "ui/floor/entry_lines.h"
#include "ui/floor/entry_words.h"

#include <rapidcheck.h>

namespace chalk::ui::floor {

class EntryReadingTest : public test::FloorTest {
protected:
    EntryReadingTest() : m_client(m_presenter.clients(m_presenter.run(test::smallStudioDay())->front(), test::smallStudioDay())->front()), m_lift(m_client.lifts[0])
    {
    }

    EntryReading read(const QString& line)
    {
        m_lift.line = line;
        return readEntry(m_client, m_lift);
    }
    QString chips(const QString& line)
    {
        QStringList texts;
        for (const EntryChip& chip : read(line).chips) {
            texts.append(QStringLiteral("%1 %2 %3").arg(chip.before, chip.strong, chip.after).simplified());
        }
        return texts.join(QStringLiteral(" | "));
    }

    FloorClient m_client;
    FloorLift m_lift;
};

TEST_F(EntryReadingTest, ChipsSayWhatWasUnderstoodAndWhatThePlanFillsIn)
{
    EXPECT_EQ(chips(QStringLiteral("8 7 r2")), QStringLiteral("reps 8, 7 | load 50 kg as planned | 2 left | rest 3:00 | steady | pain 0"));
    EXPECT_EQ(chips(QStringLiteral("8 7 @52.5 2:15 p1 s")), QStringLiteral("reps 8, 7 | load 52.5 kg | left – not noted | rest 2:15 | shaky | pain 1"));
    EXPECT_EQ(chips(QStringLiteral("8r3 7r1 6@45")), QStringLiteral("reps 8, 7, 6 | load differs | 3, 1, – left | rest 3:00 | steady | pain 0"));
}

TEST_F(EntryReadingTest, EveryFaultHasItsPlaceAndAdvice)
{
    struct Case {
        const char* line;
        int begin;
        int length;
        const char* advice;
    };
    for (const Case& one : {Case{"8 r12", 2, 3, "r0 to r10"}, Case{"@x 8", 0, 2, "@80"}, Case{"8 8 p11", 4, 3, "p0 to p10"}, Case{"8 2:75", 2, 4, "2:30"},
                            Case{"8 21x8", 2, 4, "20 sets"}, Case{"8 met", 2, 3, "rehearsal"}, Case{"8 t1", 2, 2, "rehearsal"}}) {
        const EntryReading reading = read(QString::fromUtf8(one.line));
        EXPECT_EQ(reading.state, EntryState::Fault) << one.line;
        EXPECT_EQ(reading.faultBegin, one.begin) << one.line;
        EXPECT_EQ(reading.faultLength, one.length) << one.line;
        EXPECT_TRUE(reading.message.text.contains(QString::fromUtf8(one.advice))) << reading.message.text.toStdString();
        EXPECT_FALSE(reading.body) << one.line;
    }
}

TEST_F(EntryReadingTest, AnEmptyLineIsASessionAsPlanned)
{
    const EntryReading reading = read({});
    ASSERT_EQ(reading.state, EntryState::Ready);
    EXPECT_EQ(std::get<progression::Exposure>(*reading.body).sets.size(), 2U);
}

TEST_F(EntryReadingTest, BlockedClientsAndHoldsTakeNothing)
{
    m_client.isBlocked = true;
    EXPECT_EQ(read(QStringLiteral("8 8")).state, EntryState::Blocked);
    m_client.isBlocked = false;
    m_lift = m_client.lifts[1];
    EXPECT_EQ(read(QStringLiteral("8 8")).state, EntryState::OnHold);
    EXPECT_EQ(read(QStringLiteral("8 8")).message.signal, common::Signal::Pain);
}

TEST_F(EntryReadingTest, ACorrectionKeepsWhatALineCannotSay)
{
    progression::Exposure saved = test::exposureOf({{20, 5}, {50, 8, 2, 180}, {50, 7, 1, 240}}, 1);
    saved.sets[0].isWarmup = true;
    m_lift.savedBody = saved;
    m_lift.saved = base::EventId(7);
    EXPECT_EQ(lineOf(saved, m_lift), QStringLiteral("8 7r1 r2 p1"));
    const EntryReading same = read(lineOf(saved, m_lift));
    ASSERT_TRUE(same.body);
    EXPECT_EQ(*same.body, progression::EventBody(saved));
}

TEST_F(EntryReadingTest, EveryRecordReadsBackFromItsLine)
{
    EXPECT_TRUE(rc::check("a record, its line, the same record", [this] {
        progression::Exposure saved;
        const int count = *rc::gen::inRange(1, 7);
        for (int i = 0; i < count; ++i) {
            progression::SetRecord set;
            set.load = test::kilos(*rc::gen::element(50.0, 45.0, 47.5, -20.0));
            set.amount = *rc::gen::inRange(0, 1001);
            set.rir = static_cast<std::int16_t>(*rc::gen::inRange(-1, 11));
            set.restSeconds = static_cast<std::int16_t>(*rc::gen::element(-1, 60, 180));
            set.steadiness = *rc::gen::element(progression::Steadiness::Steady, progression::Steadiness::Shaky, progression::Steadiness::Lost);
            saved.sets.push_back(set);
        }
        saved.pain = *rc::gen::inRange(0, 11);
        m_lift.savedBody = saved;
        m_lift.saved = base::EventId(7);
        const EntryReading reading = read(lineOf(saved, m_lift));
        RC_ASSERT(reading.body.has_value());
        RC_ASSERT(*reading.body == progression::EventBody(saved));
    }));
}

TEST_F(EntryReadingTest, WordsAfterTwoSpacesAreARemark)
{
    const EntryReading reading = read(QStringLiteral("8 8 r2  belt on, knees out"));
    EXPECT_EQ(reading.state, EntryState::Ready);
    EXPECT_EQ(reading.remark, QStringLiteral("belt on, knees out"));
    EXPECT_EQ(reading.faultLength, 0);
    EXPECT_EQ(reading.body, read(QStringLiteral("8 8 r2")).body) << "the result is the same";
    EXPECT_EQ(reading.chips.back(), (EntryChip{QStringLiteral("note"), QStringLiteral("belt on, knees out"), {}}));
    EXPECT_TRUE(read(QStringLiteral("8 8 r2")).remark.isEmpty());
    const EntryReading skipped = read(QStringLiteral("x  knee is sore"));
    EXPECT_EQ(skipped.state, EntryState::Skipped);
    EXPECT_EQ(skipped.remark, QStringLiteral("knee is sore"));
    EXPECT_TRUE(skipped.message.text.contains(QStringLiteral("note")));
}

TEST_F(EntryReadingTest, ALongRemarkIsCutInItsChipAlone)
{
    const QString words(60, QLatin1Char('w'));
    const EntryReading reading = read(QStringLiteral("8 8 r2  ") + words);
    EXPECT_EQ(reading.remark, words);
    EXPECT_EQ(reading.chips.back().strong.size(), 40);
}

}  // namespace chalk::ui::floor
