#include "core/exchange/csv_rows.h"

#include <algorithm>
#include <set>

namespace chalk::exchange {

namespace {

/// The fields of a record whose quotes are balanced; a fault where one stands in the wrong place.
CsvResult<QByteArrayList> fieldsOf(const QByteArray& record, int line)
{
    QByteArrayList fields;
    qsizetype at = 0;
    const auto faultAt = [&](const char* reason) { return tl::make_unexpected(CsvFault{line, static_cast<int>(at) + 1, {}, reason}); };
    while (true) {
        QByteArray field;
        if (at < record.size() && record[at] == '"') {
            for (++at; !(record[at] == '"' && (at + 1 == record.size() || record[at + 1] != '"')); ++at) {
                field += record[at];
                at += record[at] == '"' ? 1 : 0;
            }
            ++at;
            if (at < record.size() && record[at] != ',') {
                return faultAt("a quoted field goes on behind its quote");
            }
        } else {
            const qsizetype end = std::min<qsizetype>(record.indexOf(',', at) < 0 ? record.size() : record.indexOf(',', at), record.size());
            field = record.mid(at, end - at);
            at = end;
            if (field.contains('"')) {
                return faultAt("a quote stands inside of a field without quotes");
            }
        }
        fields.append(field);
        if (at >= record.size()) {
            return fields;
        }
        ++at;  // the comma
    }
}

/// A mark at the start would be taken for that of the file.
bool needsQuotes(const QByteArray& field)
{
    return field.startsWith("\xEF\xBB\xBF") || std::any_of(field.begin(), field.end(), [](char c) { return c == ',' || c == '"' || c == '\r' || c == '\n'; });
}

}  // namespace

QByteArray csvRow(const QByteArrayList& fields)
{
    QByteArray record;
    for (qsizetype i = 0; i < fields.size(); ++i) {
        QByteArray field = fields[i];
        record += i == 0 ? "" : ",";
        record += needsQuotes(field) ? "\"" + field.replace("\"", "\"\"") + "\"" : field;
    }
    return record + "\r\n";
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
