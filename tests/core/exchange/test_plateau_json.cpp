#include "core/exchange/plateau_json.h"

#include <gtest/gtest.h>

#include <QFile>
#include <QJsonArray>

#include <algorithm>

namespace chalk::exchange {
namespace {

QByteArray plateauFile(const char* name)
{
    QFile file(QStringLiteral(CHALKRUNG_TEST_DATA "/plateau/") + QLatin1String(name));
    EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << name;
    return file.readAll();
}

/// The first simulated check of a reason and a verdict.
JudgedCheck checkOf(plateau::PlateauVerdict verdict, plateau::PlateauReason reason)
{
    const auto judged = judgeAll(*readExposuresCsv(plateauFile("exposures.csv")), *readCheckinsCsv(plateauFile("checkins.csv")));
    const auto found = std::find_if(judged.begin(), judged.end(), [&](const JudgedCheck& one) {
        return one.judgement.verdict == verdict && one.judgement.reason == reason;
    });
    EXPECT_NE(found, judged.end());
    return *found;
}

TEST(PlateauJson, SaysAVerdictAndWhy)
{
    const auto judged = checkOf(plateau::PlateauVerdict::Stalled, plateau::PlateauReason::None);
    const QJsonObject object = toJson(judged, true);
    EXPECT_EQ(object[QLatin1String("verdict")], QLatin1String("stalled"));
    EXPECT_TRUE(object[QLatin1String("reason")].isNull());
    EXPECT_TRUE(object[QLatin1String("strength")].isString());
    EXPECT_EQ(object[QLatin1String("watch")], false);
    EXPECT_EQ(object[QLatin1String("slow")].toDouble(), judged.judgement.confidence->isSlow);
    const QJsonObject evidence = object[QLatin1String("evidence")].toObject();
    EXPECT_EQ(evidence[QLatin1String("missed")].toObject()[QLatin1String("of")], 4);
    EXPECT_EQ(evidence[QLatin1String("missed")].toObject()[QLatin1String("misses")].toInt(), judged.judgement.lever->misses);
    EXPECT_LT(evidence[QLatin1String("change")].toObject()[QLatin1String("low")].toDouble(), evidence[QLatin1String("change")].toObject()[QLatin1String("high")].toDouble());
    EXPECT_EQ(evidence[QLatin1String("other_causes")].toObject()[QLatin1String("planned_28d")].toInt(), judged.check.day.plannedSessions);
    EXPECT_TRUE(evidence[QLatin1String("shortage")].isNull());
    EXPECT_TRUE(evidence[QLatin1String("pause")].isNull());
    EXPECT_EQ(object[QLatin1String("trace")].toObject()[QLatin1String("Z")].toDouble(), *judged.judgement.z);
}

TEST(PlateauJson, SaysWhatIsMissing)
{
    const QJsonObject object = toJson(checkOf(plateau::PlateauVerdict::NotEnoughData, plateau::PlateauReason::FewExposures), false);
    EXPECT_EQ(object[QLatin1String("reason")], QLatin1String("few_exposures"));
    EXPECT_TRUE(object[QLatin1String("slow")].isNull());
    EXPECT_GT(object[QLatin1String("evidence")].toObject()[QLatin1String("shortage")].toObject()[QLatin1String("to_come")].toInt(), 0);
    EXPECT_TRUE(object[QLatin1String("evidence")].toObject()[QLatin1String("other_causes")].isNull());
    EXPECT_FALSE(object.contains(QLatin1String("trace")));
}

TEST(PlateauJson, SaysWhatAReturnWaitsFor)
{
    const QJsonObject object = toJson(checkOf(plateau::PlateauVerdict::NotEnoughData, plateau::PlateauReason::BackFromBreak), false);
    const QJsonObject pause = object[QLatin1String("evidence")].toObject()[QLatin1String("pause")].toObject();
    EXPECT_GE(pause[QLatin1String("days")].toInt(), 14);
    EXPECT_EQ(pause[QLatin1String("exposures")].toInt() + pause[QLatin1String("to_come")].toInt(), 3);
}

TEST(PlateauJson, NamesTheRowsThatDidNotCount)
{
    const auto judged = checkOf(plateau::PlateauVerdict::NotEnoughData, plateau::PlateauReason::LighterWeek);
    const QJsonArray rows = toJson(judged, false)[QLatin1String("evidence")].toObject()[QLatin1String("left_out")].toArray();
    ASSERT_EQ(static_cast<std::size_t>(rows.size()), judged.evidence.leftOut.size());
    EXPECT_EQ(rows.last().toObject()[QLatin1String("date")].toString().toStdString(), judged.evidence.leftOut.back().date.toString());
    EXPECT_FALSE(rows.last().toObject()[QLatin1String("marks")].toArray().isEmpty());
}

}  // namespace
}  // namespace chalk::exchange
