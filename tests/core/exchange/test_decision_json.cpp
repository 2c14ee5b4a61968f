#include "core/exchange/decision_json.h"

#include <QJsonDocument>

#include <gtest/gtest.h>

namespace chalk::exchange {

namespace {

base::Date tuesday()
{
    return *base::Date::parse("2026-11-24");
}

DocumentDecision lighterSquat()
{
    return {tuesday(),      lifts::Pattern::Squat, checkin::FindingKind::Plateau, checkin::ChoiceKind::LighterWeek,
            "Short nights", tuesday() + 7};
}

/// The field of the fault of a client with these fields and a squat; `none` where they are read.
std::string clientFaultOf(const QByteArray& text)
{
    ObjectReader reader(QJsonDocument::fromJson(text).object(), {});
    DocumentClient client;
    client.lifts.emplace_back().pattern = lifts::Pattern::Squat;
    readCheckIn(reader, client, tuesday());
    return reader.fault() ? reader.fault()->field : "none";
}

QByteArray decisionWith(const QByteArray& from, const QByteArray& to)
{
    QByteArray text = R"({"decisions": [{"day": "2026-11-24", "lift": "squat", "about": "plateau", "choice": "hold",
                                         "note": "", "next_review": "2026-12-01"}]})";
    EXPECT_TRUE(text.contains(from));
    return text.replace(from, to);
}

}  // namespace

TEST(DecisionJson, ADecisionReadsBack)
{
    DocumentDecision talk{tuesday(), {}, checkin::FindingKind::Direction, checkin::ChoiceKind::Direction, "", tuesday() + 28};
    for (const DocumentDecision& decision : {lighterSquat(), talk}) {
        EXPECT_EQ(readDecision(toJson(decision), "decision").value(), decision);
    }
    EXPECT_FALSE(toJson(talk).contains(QLatin1String("lift")));
}

TEST(DecisionJson, FaultsNameTheirField)
{
    EXPECT_EQ(clientFaultOf(decisionWith("hold", "hold")), "none");
    EXPECT_EQ(clientFaultOf(decisionWith("\"squat\"", "\"jump\"")), "decisions[0].lift");
    EXPECT_EQ(clientFaultOf(decisionWith("\"squat\"", "\"hinge\"")), "decisions[0].lift") << "the client has none";
    EXPECT_EQ(clientFaultOf(decisionWith("plateau", "luck")), "decisions[0].about");
    EXPECT_EQ(clientFaultOf(decisionWith("hold", "luck")), "decisions[0].choice");
    EXPECT_EQ(clientFaultOf(decisionWith("\"note\": \"\", ", "")), "decisions[0].note");
    EXPECT_EQ(clientFaultOf(decisionWith("2026-11-24", "2026-11-25")), "decisions[0].day") << "after the studio's day";
    EXPECT_EQ(clientFaultOf(decisionWith("2026-12-01", "2026-11-24")), "decisions[0].next_review");
}

TEST(DecisionJson, QuotasAreByMonday)
{
    const std::map<base::Date, int> quotas{{tuesday() - 1, 0}, {tuesday() + 6, 7}};
    ObjectReader reader(QJsonObject{{QStringLiteral("quotas"), toJson(quotas)}}, {});
    DocumentClient client;
    readCheckIn(reader, client, tuesday());
    EXPECT_TRUE(reader.isSound());
    EXPECT_EQ(client.quotas, quotas);
    EXPECT_EQ(clientFaultOf(R"({"quotas": {"2026-11-24": 1}})"), "quotas.2026-11-24") << "a Tuesday";
    EXPECT_EQ(clientFaultOf(R"({"quotas": {"2026-11-23": 8}})"), "quotas.2026-11-23");
    EXPECT_EQ(clientFaultOf(R"({"quotas": {"2026-11-23": -1}})"), "quotas.2026-11-23");
    EXPECT_EQ(clientFaultOf(R"({"quotas": [1]})"), "quotas");
}

}  // namespace chalk::exchange
