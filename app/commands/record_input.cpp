#include "app/commands/record_input.h"

#include "core/exchange/json_reading.h"
#include "core/exchange/session_report_json.h"
#include "ui/common/formats.h"

#include <QJsonArray>
#include <QStringList>
#include <QtNumeric>

#include <fmt/core.h>

namespace chalk::app {

namespace {

using ui::common::qstring;
using InputResult = tl::expected<RecordInput, QString>;

tl::unexpected<QString> inputFault(const QString& place, const QString& reason)
{
    return tl::make_unexpected(QString(place + QStringLiteral(": ") + reason));
}

/// The name or the id of the client.
QString readClientField(exchange::ObjectReader& reader)
{
    if (reader.required("client").isDouble()) {
        return QString::number(reader.wholeNumber("client", 1, 1'000'000'000));
    }
    return qstring(reader.text("client"));
}

RecordItem readItem(exchange::ObjectReader& records, const QJsonValue& value, const std::string& path)
{
    exchange::ObjectReader reader(value, path);
    RecordItem item{qstring(path), qstring(reader.text("lift")), {}};
    if (reader.has("entry")) {
        reader.allowOnly({"lift", "entry"});
        // An empty entry is a lift that went as planned, so it is not read as a text that must say something.
        const QJsonValue entry = reader.optional("entry");
        if (!entry.isString()) {
            reader.fail("entry", "must be a text");
        }
        item.result = entry.toString();
    } else {
        QJsonObject event = value.toObject();
        event.remove(QStringLiteral("lift"));
        item.result = event;
    }
    if (reader.fault()) {
        records.take(*reader.fault());
    }
    return item;
}

void readReportField(exchange::ObjectReader& reader, RecordInput& input)
{
    if (!reader.has("report")) {
        return;
    }
    input.reportPlace = QStringLiteral("report");
    const auto report = exchange::readSessionReport(reader.required("report"), "report");
    if (!report) {
        reader.take(report.error());
    } else if (report->isEmpty()) {
        reader.fail("report", "must say something, or be left out");
    } else {
        input.report = *report;
    }
}

InputResult readObject(const QByteArray& text)
{
    const auto value = exchange::parseJson(text);
    if (!value) {
        return inputFault(qstring(value.error().field), qstring(value.error().reason));
    }
    exchange::ObjectReader reader(*value, {});
    reader.allowOnly({"client", "date", "session", "records", "report"});
    RecordInput input;
    input.client = readClientField(reader);
    input.sessionCode = qstring(reader.optionalText("session").value_or(std::string()));
    if (reader.has("date")) {
        input.date = base::Date::parse(reader.text("date"));
        if (!input.date) {
            reader.fail("date", "must be a day, YYYY-MM-DD");
        }
    }
    readReportField(reader, input);
    const QJsonArray records = input.report && !reader.has("records") ? QJsonArray() : reader.array("records");
    for (qsizetype i = 0; i < records.size() && reader.isSound(); ++i) {
        input.items.push_back(readItem(reader, records[i], fmt::format("records[{}]", i)));
    }
    if (records.isEmpty() && !input.report) {
        reader.fail("records", "must not be empty");
    }
    if (reader.fault()) {
        return inputFault(qstring(reader.fault()->field), qstring(reader.fault()->reason));
    }
    return input;
}

const QStringList& reportFields()
{
    static const QStringList fields{QStringLiteral("sleep"),  QStringLiteral("soreness"), QStringLiteral("stress"),
                                    QStringLiteral("effort"), QStringLiteral("minutes"),  QStringLiteral("note")};
    return fields;
}

/// Takes one field of the report; answers what is wrong with it, or nothing.
QString takeReportField(RecordInput& input, const QString& field, const QString& value, const QString& place)
{
    QJsonObject whole = input.report ? exchange::toJson(*input.report) : QJsonObject();
    if (whole.contains(field)) {
        return QStringLiteral("%1 is said twice").arg(field);
    }
    bool isNumber = false;
    const double number = value.toDouble(&isNumber);
    whole.insert(field, field == QLatin1String("note") || !isNumber || !qIsFinite(number) ? QJsonValue(value) : QJsonValue(number));
    const auto report = exchange::readSessionReport(whole, {});
    if (!report) {
        return qstring(report.error().field) + QLatin1Char(' ') + qstring(report.error().reason);
    }
    input.report = *report;
    input.reportPlace = place;
    return {};
}

/// Takes one line `KEY: VALUE`; answers what is wrong with it, or nothing.
QString takeLine(RecordInput& input, const QString& line, const QString& place)
{
    const qsizetype colon = line.indexOf(QLatin1Char(':'));
    const QString key = line.left(colon).trimmed();
    const QString value = line.mid(colon + 1);
    if (colon < 1 || key.isEmpty()) {
        return QStringLiteral("must be LIFT: ENTRY, or client:, date: or session: with what it is");
    }
    if (key == QLatin1String("client")) {
        input.client = value.trimmed();
        return input.client.isEmpty() ? QStringLiteral("names no client") : QString();
    }
    if (key == QLatin1String("session")) {
        input.sessionCode = value.trimmed();
        return input.sessionCode.isEmpty() ? QStringLiteral("names no session") : QString();
    }
    if (key == QLatin1String("date")) {
        input.date = base::Date::parse(value.trimmed().toStdString());
        return input.date ? QString() : QStringLiteral("%1 is no day, YYYY-MM-DD").arg(value.trimmed());
    }
    if (reportFields().contains(key)) {
        return takeReportField(input, key, value.trimmed(), place);
    }
    input.items.push_back({place, key, value.trimmed()});
    return {};
}

InputResult readLines(const QByteArray& text)
{
    const QStringList lines = QString::fromUtf8(text).split(QLatin1Char('\n'));
    RecordInput input;
    for (qsizetype i = 0; i < lines.size(); ++i) {
        const QString line = lines[i].trimmed();
        if (line.isEmpty() || line.startsWith(QLatin1Char('#'))) {
            continue;
        }
        const QString place = QStringLiteral("line %1").arg(i + 1);
        if (const QString reason = takeLine(input, line, place); !reason.isEmpty()) {
            return inputFault(place, reason);
        }
    }
    if (input.client.isEmpty()) {
        return inputFault(QStringLiteral("client"), QStringLiteral("is required: a line client: NAME"));
    }
    if (input.items.empty() && !input.report) {
        return inputFault(QStringLiteral("results"), QStringLiteral("there are none: a line LIFT: ENTRY for each lift"));
    }
    return input;
}

}  // namespace

tl::expected<RecordInput, QString> readRecordInput(const QByteArray& text)
{
    const QByteArray trimmed = text.trimmed();
    return trimmed.startsWith('{') || trimmed.startsWith('[') ? readObject(text) : readLines(text);
}

}  // namespace chalk::app
