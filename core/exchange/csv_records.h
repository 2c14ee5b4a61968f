#pragma once

#include "core/exchange/csv_reading.h"

#include <optional>

namespace chalk::exchange {

using CsvRecord = std::vector<CsvField>;

/// Goes through a text of CSV record by record, so that not all of a large one need be in memory: RFC 4180 with a separator of one's choice, lines that end
/// by LF, CRLF or CR, a byte order mark at the start. The text outlives it.
class CsvRecords {
public:
    explicit CsvRecords(const QByteArray& text, char separator = ',');

    /// The next record, or what is wrong with it; nothing at the end. Empty lines are passed over. After a fault it goes on with the line after the one
    /// that the fault begins in.
    [[nodiscard]] std::optional<CsvResult<CsvRecord>> next();
    /// How far it has come, in bytes.
    [[nodiscard]] qsizetype position() const { return m_at; }

private:
    [[nodiscard]] CsvResult<CsvRecord> record();
    [[nodiscard]] CsvResult<CsvField> field();
    [[nodiscard]] CsvResult<QByteArray> quoted();
    [[nodiscard]] CsvResult<QByteArray> plain();
    [[nodiscard]] bool isAtEnd() const { return m_at >= m_text.size(); }
    [[nodiscard]] char here() const { return m_text[m_at]; }
    [[nodiscard]] bool isAtLineEnd() const { return !isAtEnd() && (here() == '\n' || here() == '\r'); }
    [[nodiscard]] bool isAtFieldEnd() const { return isAtEnd() || here() == m_separator || isAtLineEnd(); }
    [[nodiscard]] tl::unexpected<CsvFault> faultHere(const char* reason) const { return tl::make_unexpected(CsvFault{m_line, m_column, {}, reason}); }
    bool passLineEnd();
    void advance();

    const QByteArray& m_text;
    char m_separator;
    qsizetype m_at = 0;
    int m_line = 1;
    int m_column = 1;
};

}  // namespace chalk::exchange
