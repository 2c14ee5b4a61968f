#include "core/sessions/session_report.h"

namespace chalk::sessions {

namespace {

constexpr int kHighestScale = 5;
constexpr int kHighestEffort = 100;
constexpr int kEffortStep = 5;
constexpr int kMostMinutes = 480;

bool isOutside(const std::optional<int>& value, int low, int high)
{
    return value && (*value < low || *value > high);
}

}  // namespace

std::optional<ReportFault> faultOf(const SessionReport& report)
{
    const std::string scale = "must be 1 to 5";
    if (isOutside(report.sleep, 1, kHighestScale)) {
        return ReportFault{"sleep", scale};
    }
    if (isOutside(report.soreness, 1, kHighestScale)) {
        return ReportFault{"soreness", scale};
    }
    if (isOutside(report.stress, 1, kHighestScale)) {
        return ReportFault{"stress", scale};
    }
    if (isOutside(report.effortTenths, 0, kHighestEffort) || report.effortTenths.value_or(0) % kEffortStep != 0) {
        return ReportFault{"effort", "must be 0 to 10, in steps of 0.5"};
    }
    if (isOutside(report.minutes, 1, kMostMinutes)) {
        return ReportFault{"minutes", "must be 1 to 480"};
    }
    if (!report.note.empty() && report.note.find_first_not_of(" \t\n") == std::string::npos) {
        return ReportFault{"note", "is blank"};
    }
    return report.note.size() > kLongestNote ? std::optional(ReportFault{"note", "is longer than 4000 bytes"}) : std::nullopt;
}

std::optional<int> sessionLoad(const SessionReport& report)
{
    if (!report.effortTenths || !report.minutes) {
        return std::nullopt;
    }
    return (*report.effortTenths * *report.minutes + 5) / 10;
}

void addToNote(SessionReport& report, const std::string& remark)
{
    if (!remark.empty()) {
        report.note += (report.note.empty() ? "" : "\n") + remark;
    }
}

SessionReport toldOver(SessionReport report, const SessionReport& later)
{
    const auto take = [](std::optional<int>& field, const std::optional<int>& told) { field = told ? told : field; };
    take(report.sleep, later.sleep);
    take(report.soreness, later.soreness);
    take(report.stress, later.stress);
    take(report.effortTenths, later.effortTenths);
    take(report.minutes, later.minutes);
    addToNote(report, later.note);
    return report;
}

}  // namespace chalk::sessions
