#include "ui/floor/floor_presenter.h"

#include "core/store/session_reader.h"
#include "tests/ui/floor/floor_fixture.h"

namespace chalk::ui::floor {

using sessions::SessionState;

class FloorPresenterTest : public test::FloorTest {
protected:
    FloorClient ada() { return m_presenter.clients(m_presenter.run(test::smallStudioDay())->front(), test::smallStudioDay())->front(); }
};

TEST_F(FloorPresenterTest, TheRunOfADayIsByTimeAndCoach)
{
    const auto run = m_presenter.run(test::smallStudioDay());
    ASSERT_TRUE(run);
    ASSERT_EQ(run->size(), 2U);
    EXPECT_EQ(run->front().startMinute, 540);
    EXPECT_EQ(run->front().names, QStringLiteral("Ada"));
    EXPECT_TRUE(run->front().isOpen());
    EXPECT_FALSE(run->front().isPrinted());
    EXPECT_EQ(run->back().coach, QStringLiteral("Tobias"));
    EXPECT_TRUE(m_presenter.run(test::smallStudioDay() - 1)->empty());
    EXPECT_EQ(m_presenter.nextBusyDay(test::smallStudioDay() - 3), test::smallStudioDay());
    EXPECT_FALSE(m_presenter.nextBusyDay(test::smallStudioDay()));
}

TEST_F(FloorPresenterTest, LiftsStandAsBeforeTheSession)
{
    const FloorClient client = ada();
    ASSERT_EQ(client.lifts.size(), 4U);
    EXPECT_EQ(client.lifts[0].due.load, test::kilos(50));
    EXPECT_EQ(client.lifts[1].due.kind, progression::PrescriptionKind::Hold);
    EXPECT_TRUE(client.lifts[3].isRehearsed());
    EXPECT_EQ(client.cautions.size(), 1U) << "the other one is over";
    EXPECT_FALSE(client.isBlocked);
    EXPECT_TRUE(m_presenter.clients(m_presenter.run(test::smallStudioDay())->back(), test::smallStudioDay())->front().isBlocked);
}

TEST_F(FloorPresenterTest, SavingDoesNotChangeWhatThePlanWas)
{
    const FloorClient before = ada();
    ASSERT_TRUE(m_presenter.save(before, before.lifts[0], test::exposureOf({{50, 8, 2}, {50, 8, 2}})));
    const FloorClient after = ada();
    ASSERT_EQ(after.lifts.size(), before.lifts.size());
    EXPECT_EQ(after.lifts[0].due, before.lifts[0].due);
    EXPECT_FALSE(after.lifts[0].saved.isNone());
    EXPECT_EQ(after.session.state, SessionState::Recorded);
    EXPECT_EQ(m_presenter.cardOf(after), m_presenter.cardOf(before));
}

TEST_F(FloorPresenterTest, AnEarlierSessionShowsWhatWasRecordedInItAndWhatCameLater)
{
    const base::Date day = test::smallStudioDay() - 21;
    const auto client = m_presenter.clients(m_presenter.run(day)->front(), test::smallStudioDay())->front();
    ASSERT_EQ(client.lifts.size(), 2U);
    EXPECT_EQ(client.lifts[0].later.size(), 1U);
    EXPECT_EQ(client.lifts[0].due.load, test::kilos(40));
    EXPECT_EQ(client.others.size(), 2U);
    const auto preview = previewOf(client.lifts[0], *client.lifts[0].savedBody, day);
    ASSERT_TRUE(preview);
    EXPECT_EQ(preview->next.load, test::kilos(45));
    ASSERT_TRUE(preview->present);
    EXPECT_EQ(preview->present->load, test::kilos(50));
}

TEST_F(FloorPresenterTest, TheCardIsOfTodaysSessionOrTheNext)
{
    const base::ClientId id = ada().client.id;
    const auto today = m_presenter.forCard(id, test::smallStudioDay(), 500);
    ASSERT_TRUE(today);
    EXPECT_EQ(today->session.code, "S3");
    EXPECT_EQ(m_presenter.forCard(id, test::smallStudioDay() - 2, 500)->session.code, "S3");
    const auto walkIn = m_presenter.forCard(id, test::smallStudioDay() + 1, 500);
    ASSERT_TRUE(walkIn);
    EXPECT_TRUE(walkIn->session.id.isNone());
    EXPECT_EQ(walkIn->session.startMinute, 500);
    EXPECT_FALSE(m_presenter.forCard(base::ClientId(99), test::smallStudioDay(), 500));
}

TEST_F(FloorPresenterTest, OnlyPlannedSessionsBecomePrinted)
{
    const FloorClient client = ada();
    const auto first = m_presenter.markPrinted({client.session});
    ASSERT_TRUE(first);
    EXPECT_TRUE(*first);
    EXPECT_EQ(ada().session.state, SessionState::Printed);
    EXPECT_FALSE(*m_presenter.markPrinted({ada().session}));
    EXPECT_FALSE(*m_presenter.markPrinted({sessions::Session()}));
}

}  // namespace chalk::ui::floor
