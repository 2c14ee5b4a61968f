#include "ui/check_in/studio_check_in_source.h"

#include "core/exchange/catalogue_json.h"
#include "core/store/record_writer.h"
#include "tests/support/small_studio.h"

#include <QFile>

#include <gtest/gtest.h>

namespace chalk::ui::check_in {

class StudioCheckInSourceTest : public ::testing::Test {
protected:
    [[nodiscard]] CheckInCase pageOf(base::ClientId client)
    {
        auto page = m_source.page(client, m_day);
        EXPECT_TRUE(page) << (page ? "" : page.error().message.toStdString());
        return page.value_or(CheckInCase());
    }

    const base::Date m_day = test::smallStudioDay();
    const lifts::Catalogue m_catalogue = exchange::builtInCatalogue();
    test::StudioOnTest m_studio;
    StudioCheckInSource m_source{m_studio.database(), m_catalogue, test::someMoment};
    const base::ClientId m_ada = adaOf(m_source.queue(m_day));

private:
    static base::ClientId adaOf(const store::Result<std::vector<checkin::QueueEntry>>& queue)
    {
        EXPECT_TRUE(queue) << (queue ? "" : queue.error().message.toStdString());
        for (const checkin::QueueEntry& entry : queue.value_or(std::vector<checkin::QueueEntry>())) {
            if (entry.name.starts_with("Ada")) {
                return entry.client;
            }
        }
        return {};
    }
};

TEST_F(StudioCheckInSourceTest, ReadsThoseWhoAreDueAndTheirPages)
{
    ASSERT_FALSE(m_ada.isNone()) << "nothing was ever decided about Ada: she is due";
    const CheckInCase page = pageOf(m_ada);
    EXPECT_EQ(page.evidence.client, m_ada);
    ASSERT_EQ(page.evidence.lifts.size(), 3U);
    EXPECT_EQ(page.forecasts.size(), page.evidence.lifts.size());
    for (const checkin::LiftEvidence& lift : page.evidence.lifts) {
        EXPECT_FALSE(lift.choices.empty()) << lift.name;
    }
}

TEST_F(StudioCheckInSourceTest, ADecisionIsOneActThatIsTakenBackWhole)
{
    const CheckInCase before = pageOf(m_ada);
    const checkin::LiftEvidence& lift = before.evidence.lifts.front();
    checkin::Decision decision;
    decision.client = m_ada;
    decision.lift = lift.lift;
    decision.day = m_day;
    decision.choice = checkin::ChoiceKind::Hold;
    decision.note = "as agreed";
    decision.nextReview = m_day + 7;
    const auto act = m_source.decide(decision, std::nullopt, base::ActId());
    ASSERT_TRUE(act) << act.error().message.toStdString();
    const CheckInCase after = pageOf(m_ada);
    ASSERT_EQ(after.evidence.history.size(), before.evidence.history.size() + 1);
    EXPECT_EQ(after.evidence.history.front().note, "as agreed");
    ASSERT_TRUE(store::RecordWriter(m_studio.database(), test::someMoment).undo(*act));
    EXPECT_EQ(pageOf(m_ada).evidence.history, before.evidence.history);
}

TEST_F(StudioCheckInSourceTest, ReadsALiftForItsEditor)
{
    const base::LiftId lift = pageOf(m_ada).evidence.lifts.front().lift;
    const auto edited = m_source.lift(m_ada, lift, m_day);
    ASSERT_TRUE(edited) << edited.error().message.toStdString();
    EXPECT_EQ(edited->lift.id, lift);
    EXPECT_FALSE(m_source.lift(m_ada, base::LiftId(987654), m_day));
}

TEST_F(StudioCheckInSourceTest, SaysThatTheStudioIsGone)
{
    ASSERT_TRUE(QFile::remove(m_studio.file()));
    EXPECT_FALSE(m_source.queue(m_day));
    EXPECT_FALSE(m_source.page(m_ada, m_day));
}

}  // namespace chalk::ui::check_in
