#include "core/store/history_reader.h"

#include "core/store/record_writer.h"
#include "tests/support/lift_on_test.h"
#include "tests/support/small_studio.h"

#include <gtest/gtest.h>

namespace chalk::store {

class HistoryReaderTest : public ::testing::Test {
protected:
    test::StudioOnTest m_studio;
    base::ClientId m_ada = test::clientNamed(m_studio.database(), "Ada Lund");
    base::LiftId m_squat = test::liftOf(m_studio.database(), m_ada, lifts::Pattern::Squat);
};

TEST_F(HistoryReaderTest, EntriesComeWithTheirDecisions)
{
    const auto history = HistoryReader(m_studio.database()).read(m_squat).value();
    const exchange::StudioDocument document = test::smallStudio();
    const auto& events = document.clients[0].lifts[1].events;
    ASSERT_EQ(history.size(), events.size());
    std::vector<std::string> rules;
    for (std::size_t i = 0; i < events.size(); ++i) {
        EXPECT_EQ(history[i].event, events[i].event);
        EXPECT_EQ(history[i].session.isNone(), !events[i].sessionCode.has_value());
        rules.push_back(test::namesOf(history[i].rules));
    }
    EXPECT_EQ(rules, (std::vector<std::string>{"U-1 K-1", "B-5", "L-1", "L-1", "G-1 L-1"}));
    EXPECT_EQ(history[0].stageAfter, progression::Stage::BaseLoad);
    EXPECT_EQ(history[4].after.load, test::kilos(50));
    EXPECT_FALSE(history[4].isCorrected);
}

TEST_F(HistoryReaderTest, TheEvidenceCanBeAskedFromIt)
{
    const auto history = HistoryReader(m_studio.database()).read(m_squat).value();
    const auto judged = judgedEvents(history);
    ASSERT_EQ(judged.size(), history.size());
    EXPECT_EQ(judged[3].body, &history[3].event.body);
    EXPECT_EQ(judged[3].stageAfter, progression::Stage::LoadBuild);
}

TEST_F(HistoryReaderTest, EveryVersionStaysReadable)
{
    RecordWriter writer(m_studio.database(), test::someMoment);
    const auto entry = HistoryReader(m_studio.database()).read(m_squat).value().back();
    const progression::Event better{entry.event.date, test::exposureOf({{45, 9, 1}})};
    ASSERT_TRUE(writer.correct(entry.id, better));
    const base::EventId latest = HistoryReader(m_studio.database()).read(m_squat).value().back().id;
    ASSERT_TRUE(writer.takeBack(latest));
    for (const base::EventId id : {entry.id, latest}) {
        const auto versions = HistoryReader(m_studio.database()).versions(id).value();
        ASSERT_EQ(versions.size(), 3U) << "from whichever version it is asked";
        EXPECT_EQ(versions[0].event, entry.event);
        EXPECT_EQ(versions[1].event, better);
        EXPECT_TRUE(versions[2].isVoid);
        EXPECT_EQ(versions[2].root, entry.id);
    }
    EXPECT_TRUE(HistoryReader(m_studio.database()).versions(base::EventId(999)).value().empty());
}

TEST_F(HistoryReaderTest, ALiftThatIsNotThereIsAnError)
{
    EXPECT_FALSE(HistoryReader(m_studio.database()).read(base::LiftId(999)));
}

}  // namespace chalk::store
