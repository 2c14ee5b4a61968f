#include "ui/common/check_in_summary.h"

#include "core/exchange/catalogue_json.h"

#include <gtest/gtest.h>

namespace chalk::ui::common {

class CheckInSummary : public ::testing::Test {
protected:
    CheckInSummary()
    {
        m_client.name = "Tomasz Wyre";
        m_client.coachName = "Tobias";
        checkin::LiftEvidence lift;
        lift.exerciseKey = "bench_press";
        lift.name = "Bench press";
        lift.next = progression::Prescription{};
        lift.next->kind = progression::PrescriptionKind::Work;
        lift.next->load = base::Load::fromCenti(7250);
        lift.next->sets = base::Sets(3);
        lift.next->repsLow = lift.next->repsHigh = base::Reps(5);
        lift.next->rest = base::Seconds(210);
        m_client.lifts.push_back(lift);
        using sessions::SessionState;
        m_client.attendance = {{m_today - 40, SessionState::Missed},
                               {m_today - 10, SessionState::Recorded},
                               {m_today - 7, SessionState::CancelledInTime},
                               {m_today - 5, SessionState::Missed},
                               {m_today, SessionState::Recorded}};
    }

    [[nodiscard]] QString message(const checkin::Choice* choice = nullptr) const
    {
        return checkInMessage({m_client, &m_client.lifts.front(), choice, m_today, m_today + 7}, m_catalogue);
    }

    const lifts::Catalogue m_catalogue = exchange::builtInCatalogue();
    const base::Date m_today = *base::Date::parse("2026-11-24");
    checkin::ClientEvidence m_client;
};

TEST_F(CheckInSummary, SaysWhoCameWhatIsNextAndWhenItIsLookedAtAgain)
{
    EXPECT_EQ(message(), QStringLiteral("Hello Tomasz, this is your check-in of Tuesday 24 November.\n"
                                        "You came to 2 of 3 sessions in the last four weeks.\n"
                                        "Bench press: next is 3 × 5 at 72.5 kg, rest 3:30.\n"
                                        "We look at it together again on Tuesday 1 December.\n"
                                        "Tobias"));
}

TEST_F(CheckInSummary, SaysWhatWasDecided)
{
    checkin::Choice choice;
    choice.kind = checkin::ChoiceKind::LighterWeek;
    choice.next = m_client.lifts.front().next;
    choice.next->sets = base::Sets(2);
    EXPECT_TRUE(message(&choice).contains(QStringLiteral("Bench press: a lighter week with 2 × 5 at 72.5 kg, rest 3:30, then we build again.")));
    choice.kind = checkin::ChoiceKind::Swap;
    choice.exerciseKey = "dumbbell_bench_press";
    EXPECT_TRUE(message(&choice).contains(QStringLiteral("Instead of Bench press we try ")));
}

TEST_F(CheckInSummary, SendsPainToSomeoneWhoMayTreatIt)
{
    EXPECT_FALSE(message().contains(QStringLiteral("doctor")));
    m_client.lifts.front().isOnHold = true;
    EXPECT_TRUE(message().contains(QStringLiteral("please see a doctor or physiotherapist")));
}

TEST_F(CheckInSummary, PromisesNothingAndUsesNoWordsOfTheTrade)
{
    for (const checkin::ChoiceKind kind : checkin::kChoiceKinds) {
        checkin::Choice choice;
        choice.kind = kind;
        const QString words = message(&choice).toLower();
        for (const char* word : {"plateau", "stall", "deload", "1rm", "volume", "guarantee", "will be", "soon", "failed", "!"}) {
            EXPECT_FALSE(words.contains(QLatin1String(word))) << words.toStdString();
        }
    }
}

}  // namespace chalk::ui::common
