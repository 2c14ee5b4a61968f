#include "ui/shell/client_finder.h"
#include "ui/shell/find_ranking.h"

#include <gtest/gtest.h>

namespace chalk::ui::shell {

class ClientFinderTest : public ::testing::Test {
protected:
    ClientFinderTest()
        : m_finder(
              QStringLiteral("client"),
              [this] {
                  ++m_reads;
                  return std::vector<FindableClient>{
                      {base::ClientId(1), QStringLiteral("Joaquin Ferro"), QStringLiteral("45 · Strong, back-safe"),
                       {{lifts::Pattern::Squat, QStringLiteral("Back squat")}, {lifts::Pattern::HorizontalPush, QStringLiteral("Bench press")}}},
                      {base::ClientId(2), QStringLiteral("Hanne Skov-Adler"), QStringLiteral("57 · Bone density"),
                       {{lifts::Pattern::HorizontalPush, QStringLiteral("Bench press")}}},
                      {base::ClientId(3), QStringLiteral("Strong Berg"), QStringLiteral("30"), {}}};
              },
              [this](const Place& place) { m_gone = place; })
    {
        m_finder.prepare();
    }

    std::vector<FindItem> find(const char* query)
    {
        const FindProvider* providers[] = {&m_finder};
        return rankedItems(providers, QString::fromUtf8(query));
    }

    int m_reads = 0;
    Place m_gone;
    ClientFinder m_finder;
};

TEST_F(ClientFinderTest, ANameLeadsToTheBoard)
{
    const auto items = find("ferro");
    ASSERT_EQ(items.size(), 1U);
    items.front().run();
    EXPECT_EQ(m_gone, (Place{.page = QStringLiteral("client"), .client = base::ClientId(1)}));
    EXPECT_EQ(m_reads, 1);
}

TEST_F(ClientFinderTest, ANameAndALiftLeadToThatLift)
{
    const auto items = find("ferro bench");
    ASSERT_EQ(items.size(), 1U);
    items.front().run();
    EXPECT_EQ(m_gone.client, base::ClientId(1));
    EXPECT_EQ(m_gone.lift, lifts::Pattern::HorizontalPush);
    EXPECT_EQ(find("bench").size(), 2U);
}

TEST_F(ClientFinderTest, ANameStandsBeforeAGoal)
{
    const auto items = find("strong");
    ASSERT_EQ(items.size(), 2U);
    EXPECT_EQ(items[0].parts.front().text, QStringLiteral("Strong Berg"));
    EXPECT_EQ(items[1].parts.front().text, QStringLiteral("Joaquin Ferro"));
}

TEST_F(ClientFinderTest, AMisspeltNameIsFoundAndNothingIsOfferedUnasked)
{
    ASSERT_EQ(find("joaqiun").size(), 1U);
    EXPECT_TRUE(find("").empty());
    EXPECT_TRUE(find("tarrant").empty());
    EXPECT_EQ(m_finder.names().size(), 3);
}

}  // namespace chalk::ui::shell
