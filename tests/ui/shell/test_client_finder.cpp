#include "ui/shell/client_finder.h"
#include "ui/shell/find_ranking.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace chalk::ui::shell {

namespace {

using lifts::Pattern;

std::vector<FindableClient> threeClients()
{
    FindableClient ferro{base::ClientId(1), QStringLiteral("Joaquin Ferro"), QStringLiteral("45 · Strong, back-safe"), {}};
    ferro.lifts = {{Pattern::Squat, QStringLiteral("Back squat"), QStringLiteral("5 Rep build, cycle 2")},
                   {Pattern::HorizontalPush, QStringLiteral("Bench press"), QStringLiteral("6 Set build")}};
    ferro.sessionToday = base::SessionId(71);
    ferro.todayAt = QStringLiteral("09:00");
    FindableClient hanne{base::ClientId(2), QStringLiteral("Hanne Skov-Adler"), QStringLiteral("57 · Bone density"), {}};
    hanne.lifts = {{Pattern::HorizontalPush, QStringLiteral("Bench press"), QStringLiteral("on hold")}};
    hanne.unit = base::MassUnit::Pound;
    FindableClient berg{base::ClientId(3), QStringLiteral("Strong Berg"), QStringLiteral("30"), {}};
    berg.lifts = {{Pattern::Squat, QStringLiteral("Back squat")}};
    berg.sessionToday = base::SessionId(70);
    berg.todayAt = QStringLiteral("07:30");
    berg.isBlocked = true;
    return {ferro, hanne, berg};
}

}  // namespace

class ClientFinderTest : public ::testing::Test {
protected:
    ClientFinderTest()
        : m_finder(
              {QStringLiteral("client"), QStringLiteral("floor"), QStringLiteral("onboarding")},
              [this] {
                  ++m_reads;
                  return threeClients();
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
    static QString words(const FindItem& item)
    {
        QString all;
        for (const FindPart& part : item.parts) {
            all += (isDetail(part.weight) && !all.endsWith(QLatin1Char('|')) && !all.contains(QLatin1Char('|')) ? QStringLiteral("|") : QString()) + part.text;
        }
        return all;
    }
    /// What stands in the list, heading by heading.
    QStringList found(const char* query)
    {
        QStringList all;
        for (const FindItem& item : find(query)) {
            all.append(words(item));
        }
        return all;
    }
    void run(const char* query, const QString& beginning)
    {
        for (const FindItem& item : find(query)) {
            if (words(item).startsWith(beginning)) {
                item.run();
                return;
            }
        }
        FAIL() << "not found: " << beginning.toStdString();
    }

    int m_reads = 0;
    Place m_gone;
    ClientFinder m_finder;
};

TEST_F(ClientFinderTest, ANameLeadsToTheBoardFirst)
{
    const auto items = find("ferro");
    ASSERT_FALSE(items.empty());
    EXPECT_EQ(words(items.front()), QStringLiteral("Joaquin Ferro, board|45 · Strong, back-safe"));
    items.front().run();
    EXPECT_EQ(m_gone, (Place{.page = QStringLiteral("client"), .client = base::ClientId(1)}));
    EXPECT_EQ(m_reads, 1);
}

TEST_F(ClientFinderTest, TheOneClientThatIsNamedHasEveryPartAndTheSession)
{
    EXPECT_EQ(found("ferro"), (QStringList{QStringLiteral("Joaquin Ferro, board|45 · Strong, back-safe"), QStringLiteral("Joaquin Ferro, sessions"),
                                           QStringLiteral("Joaquin Ferro, health"), QStringLiteral("Record the session|for Joaquin, today 09:00")}));
    run("ferro", QStringLiteral("Record the session"));
    EXPECT_EQ(m_gone, (Place{.page = QStringLiteral("floor"), .client = base::ClientId(1), .session = base::SessionId(71)}));
    run("ferro", QStringLiteral("Joaquin Ferro, health"));
    EXPECT_EQ(m_gone.tab, QStringLiteral("health"));
    for (const char* query : {"skov", "berg"}) {  // not booked; locked
        for (const QString& one : found(query)) {
            EXPECT_FALSE(one.startsWith(QStringLiteral("Record"))) << one.toStdString();
        }
    }
}

TEST_F(ClientFinderTest, ANameAndALiftLeadToThatLift)
{
    const auto items = find("ferro bench");
    ASSERT_EQ(items.size(), 1U);
    EXPECT_EQ(words(items.front()), QStringLiteral("Joaquin Ferro, bench press|6 Set build"));
    items.front().run();
    EXPECT_EQ(m_gone.client, base::ClientId(1));
    EXPECT_EQ(m_gone.lift, lifts::Pattern::HorizontalPush);
    EXPECT_EQ(find("bench").size(), 2U);
}

TEST_F(ClientFinderTest, WhatMatchesIsBold)
{
    const auto parts = find("ferro ben").front().parts;
    ASSERT_GE(parts.size(), 4U);
    EXPECT_EQ(parts[1].text, QStringLiteral("Ferro"));
    EXPECT_EQ(parts[1].weight, FindWeight::Bold);
    EXPECT_EQ(parts[3].text, QStringLiteral("ben"));
    EXPECT_EQ(parts[3].weight, FindWeight::Bold);
    EXPECT_EQ(parts[4].text, QStringLiteral("ch press"));
    EXPECT_EQ(parts[4].weight, FindWeight::Plain);
}

TEST_F(ClientFinderTest, AResultLeadsToTheFloorWithTheLineFilledIn)
{
    const auto items = find("ferro bench 60x8x5");
    ASSERT_FALSE(items.empty());
    EXPECT_EQ(items.front().group, FindGroup::Do);
    EXPECT_EQ(words(items.front()), QStringLiteral("Record bench press, 5 × 8 at 60 kg|for Joaquin, today 09:00"));
    items.front().run();
    EXPECT_EQ(m_gone, (Place{.page = QStringLiteral("floor"), .client = base::ClientId(1), .lift = Pattern::HorizontalPush,
                             .session = base::SessionId(71), .text = QStringLiteral("5x8 @60")}));
    EXPECT_EQ(found("ferro bench 60x8x5").at(1), QStringLiteral("Joaquin Ferro, bench press|6 Set build"));
}

TEST_F(ClientFinderTest, AResultWithANameAloneOffersEachLift)
{
    EXPECT_EQ(found("ferro 8 8 7 @80 r2").mid(0, 2),
              (QStringList{QStringLiteral("Record back squat, 8, 8, 7 at 80 kg, 2 left|for Joaquin, today 09:00"),
                           QStringLiteral("Record bench press, 8, 8, 7 at 80 kg, 2 left|for Joaquin, today 09:00")}));
}

TEST_F(ClientFinderTest, AResultSaysWhatStandsInItsWay)
{
    EXPECT_EQ(found("skov bench 5x8 @60").front(), QStringLiteral("Hanne Skov-Adler, bench press|not booked today, so there is no session to record in"));
    EXPECT_EQ(found("ferro bench 60x8y").front(), QStringLiteral("Record bench press|“60x8y” is not understood yet, for Joaquin, today 09:00"));
    run("ferro bench 60x8y", QStringLiteral("Record bench press"));
    EXPECT_EQ(m_gone.text, QStringLiteral("60x8y"));
    EXPECT_EQ(found("berg squat 5x8").front(), QStringLiteral("Strong Berg, back squat|locked until the clearance is there"));
    run("berg squat 5x8", QStringLiteral("Strong Berg, back squat|locked"));
    EXPECT_EQ(m_gone.tab, QStringLiteral("health"));
    EXPECT_TRUE(m_gone.text.isEmpty());
}

TEST_F(ClientFinderTest, ANameStandsBeforeAGoal)
{
    const QStringList strong = found("strong");
    ASSERT_GE(strong.size(), 2);
    EXPECT_TRUE(strong.at(0).startsWith(QStringLiteral("Strong Berg, board")));
    EXPECT_TRUE(strong.contains(QStringLiteral("Joaquin Ferro, board|45 · Strong, back-safe")));
}

TEST_F(ClientFinderTest, UnaskedItOffersWhoComesToday)
{
    EXPECT_EQ(found(""), (QStringList{QStringLiteral("Strong Berg|today 07:30"), QStringLiteral("Joaquin Ferro|today 09:00")}));
}

TEST_F(ClientFinderTest, AMisspeltNameIsFoundAndAStrangerIsNot)
{
    ASSERT_FALSE(find("joaqiun").empty());
    EXPECT_TRUE(find("tarrant").empty());
    EXPECT_TRUE(find("tarrant bench 5x8").empty());
    EXPECT_EQ(m_finder.names().size(), 3);
}

}  // namespace chalk::ui::shell
