#include "core/exchange/session_report_json.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <QJsonDocument>

namespace chalk::exchange {

namespace {

std::string reportFault(const char* text)
{
    const auto read = readSessionReport(parseJson(text).value(), "sessions[1].report");
    return read ? std::string() : read.error().field + " " + read.error().reason;
}

std::optional<int> maybe(int low, int high)
{
    return *rc::gen::arbitrary<bool>() ? std::optional(*rc::gen::inRange(low, high + 1)) : std::nullopt;
}

}  // namespace

RC_GTEST_PROP(SessionReportJsonProperties, WhatIsWrittenReadsTheSame, ())
{
    sessions::SessionReport report{maybe(1, 5), maybe(1, 5), maybe(1, 5), maybe(0, 20), maybe(1, 480), {}};
    if (report.effortTenths) {
        report.effortTenths = *report.effortTenths * 5;
    }
    report.note = *rc::gen::container<std::string>(rc::gen::inRange(' ', '~'));
    RC_PRE(!sessions::faultOf(report));
    const QByteArray text = QJsonDocument(toJson(report)).toJson(QJsonDocument::Compact);
    const auto read = readSessionReport(parseJson(text).value(), {});
    RC_ASSERT(read.has_value());
    RC_ASSERT(*read == report);
    RC_ASSERT(report.isEmpty() == (text == "{}"));
}

TEST(SessionReportJson, HalvesAreWrittenAsTheyAreSaid)
{
    EXPECT_EQ(QJsonDocument(toJson(sessions::SessionReport{4, 2, 1, 75, 60, "late"})).toJson(QJsonDocument::Compact),
              R"({"effort":7.5,"minutes":60,"note":"late","sleep":4,"soreness":2,"stress":1})");
}

TEST(SessionReportJson, FaultsNameTheirField)
{
    EXPECT_EQ(reportFault(R"({"sleep":0})"), "sessions[1].report.sleep must be 1 to 5");
    EXPECT_EQ(reportFault(R"({"soreness":6})"), "sessions[1].report.soreness must be 1 to 5");
    EXPECT_EQ(reportFault(R"({"effort":7.2})"), "sessions[1].report.effort must be 0 to 10, in steps of 0.5");
    EXPECT_EQ(reportFault(R"({"minutes":481})"), "sessions[1].report.minutes must be 1 to 480");
    EXPECT_EQ(reportFault(R"({"mood":3})").substr(0, 26), "sessions[1].report.mood is");
    EXPECT_NE(reportFault(R"({"effort":11})"), "");
    EXPECT_NE(reportFault(R"({"effort":7.25})"), "");
    EXPECT_NE(reportFault(R"({"note":7})"), "");
    EXPECT_NE(reportFault(R"({"note":" "})"), "");
    EXPECT_NE(reportFault("[]"), "");
}

}  // namespace chalk::exchange
