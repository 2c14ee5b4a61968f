#pragma once

#include "core/exchange/csv_reading.h"

#include <QByteArrayList>
#include <QIODevice>

#include <optional>

namespace chalk::exchange {

/// Appends a field as RFC 4180 writes it: quotes only where they are needed.
void appendCsvField(QByteArray& record, const QByteArray& field);
/// A record as RFC 4180 writes it: quotes only where they are needed, CRLF at the end.
[[nodiscard]] QByteArray csvRow(const QByteArrayList& fields);

/// Reads a CSV of any length record by record, by the same rules as parseCsv: of the file only one record is in memory. Its first record
/// names the columns.
class CsvRows {
public:
    /// The most that one record may have.
    static constexpr qsizetype kMostBytes = 64 * 1024 * 1024;

    /// `file` is open for reading and outlives this. Columns are read at once: the fault says what is wrong with them.
    explicit CsvRows(QIODevice& file);

    [[nodiscard]] const QByteArrayList& columns() const { return m_columns; }
    /// Goes to the next record; false behind the last one, and after a fault.
    [[nodiscard]] bool next();
    /// Of the present record.
    [[nodiscard]] const QByteArrayList& fields() const { return m_fields; }
    /// The line that the present record begins in, from 1.
    [[nodiscard]] int line() const { return m_line; }
    [[nodiscard]] const std::optional<CsvFault>& fault() const { return m_fault; }

private:
    [[nodiscard]] bool readRecord(QByteArrayList& fields);
    [[nodiscard]] QByteArray readText();

    QIODevice& m_file;
    QByteArrayList m_columns;
    QByteArrayList m_fields;
    int m_line = 0;
    int m_nextLine = 1;
    std::optional<CsvFault> m_fault;
};

}  // namespace chalk::exchange
