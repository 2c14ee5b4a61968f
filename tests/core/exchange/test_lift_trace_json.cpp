#include "core/exchange/lift_trace_json.h"

#include <QDir>
#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>

#include <gtest/gtest.h>

namespace chalk::exchange {

namespace {

QByteArray textOfFile(const QString& name)
{
    QFile file(QStringLiteral(CHALKRUNG_TEST_DATA "/traces/") + name);
    EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << name.toStdString();
    return file.readAll();
}

QString noWords(const progression::RuleList&, const progression::Prescription&, const progression::LiftMachine&)
{
    return {};
}

/// Without the sentences for people.
QJsonObject withoutWhy(QJsonObject trace)
{
    const auto bare = [](const QJsonValue& value) {
        QJsonObject prescription = value.toObject();
        prescription.remove(QStringLiteral("why"));
        return prescription;
    };
    QJsonArray decisions = trace.value(QStringLiteral("decisions")).toArray();
    for (auto&& decision : decisions) {
        QJsonObject object = decision.toObject();
        object.insert(QStringLiteral("after"), bare(object.value(QStringLiteral("after"))));
        decision = object;
    }
    trace.insert(QStringLiteral("decisions"), decisions);
    trace.insert(QStringLiteral("next"), bare(trace.value(QStringLiteral("next"))));
    return trace;
}

/// One decision as a short text, so that a difference can be read.
std::string shown(const QJsonValue& value)
{
    return QJsonDocument(value.toObject()).toJson(QJsonDocument::Compact).toStdString();
}

}  // namespace

// Each history is short enough to be decided by hand from the rule tables; what they say stands in NAME.expected.json.
TEST(LiftTraceJson, GoldenHistoriesAreDecidedAsTheRulesSay)
{
    const QStringList names = QDir(QStringLiteral(CHALKRUNG_TEST_DATA "/traces")).entryList({QStringLiteral("*.expected.json")}, QDir::Files);
    ASSERT_GE(names.size(), 16);
    for (const QString& name : names) {
        SCOPED_TRACE(name.toStdString());
        const auto expected = parseJson(textOfFile(name));
        ASSERT_TRUE(expected) << expected.error().field;
        const auto traced = traceOf(textOfFile(QString(name).remove(QStringLiteral(".expected"))), noWords);
        ASSERT_TRUE(traced) << traced.error().field << ": " << traced.error().reason;
        const QJsonObject actual = withoutWhy(*traced);
        const QJsonArray decisions = actual.value(QStringLiteral("decisions")).toArray();
        const QJsonArray wanted = expected->toObject().value(QStringLiteral("decisions")).toArray();
        ASSERT_EQ(decisions.size(), wanted.size());
        for (qsizetype i = 0; i < decisions.size(); ++i) {
            EXPECT_EQ(shown(decisions[i]), shown(wanted[i]));
        }
        EXPECT_EQ(shown(actual.value(QStringLiteral("next"))), shown(expected->toObject().value(QStringLiteral("next"))));
    }
}

TEST(LiftTraceJson, EveryPrescriptionHasTheWordsThatItIsGiven)
{
    int asked = 0;
    const auto words = [&asked](const progression::RuleList& decided, const progression::Prescription&, const progression::LiftMachine&) -> QString {
        return QString::number(++asked) + QLatin1Char(' ') + QString::fromUtf8(progression::nameOf(*decided.begin()).data());
    };
    const auto traced = traceOf(textOfFile(QStringLiteral("stage_2_control_to_base_load.json")), words);
    ASSERT_TRUE(traced);
    const QJsonArray decisions = traced->value(QStringLiteral("decisions")).toArray();
    EXPECT_EQ(decisions[0].toObject()[QStringLiteral("after")][QStringLiteral("why")], QStringLiteral("1 K-2"));
    EXPECT_EQ(decisions[1].toObject()[QStringLiteral("after")][QStringLiteral("why")], QStringLiteral("2 K-1"));
    EXPECT_EQ((*traced)[QStringLiteral("next")][QStringLiteral("why")], QStringLiteral("3 K-1"));
}

TEST(LiftTraceJson, ALighterWeekNamesItsLastDayWhileItLasts)
{
    const auto nextOn = [](const char* day) {
        const QByteArray text = R"({"unit": "kg", "region": "lower", "equipment": {"kind": "fixed", "loads": [8, 10, 12]}, "events": [
            {"date": "2026-01-05", "type": "set", "stage": "load_build", "load": 12, "reason": "known"},
            {"date": "2026-01-07", "type": "lighter"}, {"date": "2026-01-08", "type": "lighter", "note": "tired"}], "as_of": ")";
        return traceOf(text + day + "\"}", noWords).value().value(QStringLiteral("next")).toObject();
    };
    const QJsonObject last = nextOn("2026-01-14");
    EXPECT_EQ(last[QStringLiteral("lighter_until")].toString(), QStringLiteral("2026-01-14"));
    EXPECT_EQ(last[QStringLiteral("load")].toInt(), 10);
    EXPECT_EQ(last[QStringLiteral("sets")].toInt(), 1);
    const QJsonObject after = nextOn("2026-01-15");
    EXPECT_FALSE(after.contains(QStringLiteral("lighter_until")));
    EXPECT_EQ(after[QStringLiteral("load")].toInt(), 12);
    EXPECT_EQ(after[QStringLiteral("rules")].toArray(), QJsonArray{QStringLiteral("D-3")});
}

TEST(LiftTraceJson, WhatTheStateHasNoUseForNamesEventAndField)
{
    const auto traced = traceOf(R"({"unit": "kg", "region": "lower", "equipment": {"kind": "fixed", "loads": [8, 12]}, "events": [
        {"date": "2026-01-05", "type": "rehearsal"},
        {"date": "2026-01-04", "type": "set", "stage": "load_build", "load": 10, "reason": "known"}]})",
                                noWords);
    ASSERT_FALSE(traced);
    EXPECT_EQ(traced.error().field, "events[1].load");
}

}  // namespace chalk::exchange
