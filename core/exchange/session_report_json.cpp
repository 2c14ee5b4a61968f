#include "core/exchange/session_report_json.h"

#include "core/exchange/json_writing.h"

namespace chalk::exchange {

JsonResult<sessions::SessionReport> readSessionReport(const QJsonValue& value, const std::string& path)
{
    ObjectReader reader(value, path);
    reader.allowOnly({"sleep", "soreness", "stress", "effort", "minutes", "note"});
    sessions::SessionReport report;
    report.sleep = reader.optionalWholeNumber("sleep", 1, 5);
    report.soreness = reader.optionalWholeNumber("soreness", 1, 5);
    report.stress = reader.optionalWholeNumber("stress", 1, 5);
    report.effortTenths = reader.optionalDecimal("effort", 1, 0, 100);
    report.minutes = reader.optionalWholeNumber("minutes", 1, 480);
    report.note = reader.optionalText("note").value_or(std::string());
    if (const auto fault = sessions::faultOf(report); fault && reader.isSound()) {
        reader.fail(fault->field.c_str(), fault->reason);
    }
    return resultOf(reader, std::move(report));
}

QJsonObject toJson(const sessions::SessionReport& report)
{
    QJsonObject object;
    const auto putNumber = [&object](const char* field, const std::optional<int>& number) {
        if (number) {
            put(object, field, *number);
        }
    };
    putNumber("sleep", report.sleep);
    putNumber("soreness", report.soreness);
    putNumber("stress", report.stress);
    if (report.effortTenths) {
        put(object, "effort", *report.effortTenths / 10.0);
    }
    putNumber("minutes", report.minutes);
    if (!report.note.empty()) {
        put(object, "note", textOf(report.note));
    }
    return object;
}

}  // namespace chalk::exchange
