#include "core/exchange/csv_rows.h"

#include "core/exchange/csv_records.h"

#include <algorithm>
#include <set>
#include <utility>

namespace chalk::exchange {

namespace {

/// The fields of a record whose quotes are balanced, and that begins in a line of its file.
CsvResult<QByteArrayList> fieldsOf(const QByteArray& record, int line)
{
    CsvRecords records(record);
    auto read = records.next();
    if (!read || !*read) {
        CsvFault fault = read ? read->error() : CsvFault{1, 1, {}, "there is nothing in it"};
        fault.line += line - 1;
        return tl::make_unexpected(fault);
    }
    if (records.position() < record.size()) {
        return tl::make_unexpected(CsvFault{line, 1, {}, "a line ends inside of the record without quotes around it"});
    }
    QByteArrayList fields;
    fields.reserve(static_cast<qsizetype>((*read)->size()));
    for (CsvField& field : **read) {
        fields.append(std::move(field.text));
    }
    return fields;
}

/// A mark at the start would be taken for that of the file.
bool needsQuotes(const QByteArray& field)
{
    return field.startsWith("\xEF\xBB\xBF") || std::any_of(field.begin(), field.end(), [](char c) { return c == ',' || c == '"' || c == '\r' || c == '\n'; });
}

}  // namespace

void appendCsvField(QByteArray& record, const QByteArray& field)
{
    if (needsQuotes(field)) {
        record.append('"').append(QByteArray(field).replace("\"", "\"\"")).append('"');
    } else {
        record.append(field);
    }
}

QByteArray csvRow(const QByteArrayList& fields)
{
    QByteArray record;
    for (qsizetype i = 0; i < fields.size(); ++i) {
        if (i > 0) {
            record.append(',');
        }
        appendCsvField(record, fields[i]);
    }
    return record.append("\r\n");
}

CsvRows::CsvRows(QIODevice& file) : m_file(file)
{
    if (m_file.peek(3) == QByteArray("\xEF\xBB\xBF")) {
        m_file.skip(3);
    }
    if (!readRecord(m_columns) && !m_fault) {
        m_fault = CsvFault{1, 1, {}, "there is nothing in it"};
    }
    std::set<QByteArray> names;
    for (const QByteArray& name : m_columns) {
        if (!names.insert(name).second) {
            m_fault = CsvFault{1, 1, name.toStdString(), "is there twice"};
        }
    }
}

/// Lines until the quotes are balanced; what is left at the end where they are not is a fault.
QByteArray CsvRows::readText()
{
    QByteArray text;
    qsizetype quotes = 0;
    do {
        const QByteArray line = m_file.readLine();
        if (line.isEmpty() || text.size() + line.size() > kMostBytes) {
            m_fault = CsvFault{m_line, 1, {}, line.isEmpty() ? "a quote is never closed" : "a record has more than 64 MB"};
            return {};
        }
        ++m_nextLine;
        quotes += line.count('"');
        text += line;
    } while (quotes % 2 != 0);
    if (text.endsWith('\n')) {
        text.chop(text.endsWith("\r\n") ? 2 : 1);
    }
    return text;
}

bool CsvRows::readRecord(QByteArrayList& fields)
{
    QByteArray text;
    while (text.isEmpty()) {
        if (m_fault || m_file.atEnd()) {
            return false;
        }
        m_line = m_nextLine;
        text = readText();
    }
    auto read = fieldsOf(text, m_line);
    if (!read) {
        m_fault = read.error();
        return false;
    }
    fields = *std::move(read);
    return true;
}

bool CsvRows::next()
{
    if (m_fault || !readRecord(m_fields)) {
        return false;
    }
    if (m_fields.size() != m_columns.size()) {
        m_fault = CsvFault{m_line, 1, {}, "has " + std::to_string(m_fields.size()) + " fields where there are " + std::to_string(m_columns.size()) + " columns"};
        return false;
    }
    return true;
}

}  // namespace chalk::exchange
