#pragma once

#include "core/base/date.h"

#include <QByteArray>

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include <tl/expected.hpp>

namespace chalk::exchange {

/// What is wrong with a text of CSV, and where: line and column count from 1, columns in characters.
struct CsvFault {
    int line = 1;
    int column = 1;
    std::string field;  ///< the column's name; empty where the text is no CSV
    std::string reason;

    bool operator==(const CsvFault&) const = default;
};

template <class T>
using CsvResult = tl::expected<T, CsvFault>;

/// `line 3, column 7: target_reps: must be …`
[[nodiscard]] std::string textOf(const CsvFault& fault);

/// One field of a record, without its quotes, and where it begins.
struct CsvField {
    QByteArray text;
    int line = 1;
    int column = 1;
};

/// A text of CSV whose first record names its columns.
struct CsvTable {
    std::vector<QByteArray> columns;
    std::vector<std::vector<CsvField>> records;  ///< each with a field for every column
};

/// Reads CSV by RFC 4180: commas, quotes, doubled quotes, lines that end by LF or CRLF. A byte order mark at the start and empty lines are
/// passed over. Fails on an open or a stray quote, on a record with more or fewer fields than columns, on a column that is there twice,
/// and where there is nothing at all.
[[nodiscard]] CsvResult<CsvTable> parseCsv(const QByteArray& text);

/// Reads the fields of a table's records by the names of their columns, strictly. The first thing that is wrong is kept as the fault, and
/// every later read answers something harmless. The table outlives the reader.
class CsvReader {
public:
    explicit CsvReader(const CsvTable& table) : m_table(table) {}

    /// Fails where one of these columns is missing; others may be there and are passed over.
    void needs(std::initializer_list<const char*> columns);
    /// Goes to the next record; false behind the last one, and after a fault.
    [[nodiscard]] bool next();

    /// Text that is not empty, in UTF-8.
    [[nodiscard]] std::string text(const char* column);
    /// Text as it stands.
    [[nodiscard]] QByteArray raw(const char* column);
    /// A day, YYYY-MM-DD.
    [[nodiscard]] base::Date date(const char* column);
    /// A whole number from `low` to `high`.
    [[nodiscard]] int wholeNumber(const char* column, int low, int high);
    /// The same, or nothing for an empty field.
    [[nodiscard]] std::optional<int> optionalWholeNumber(const char* column, int low, int high);
    /// A number with up to two decimals, in hundredths; `low` and `high` too.
    [[nodiscard]] std::int32_t hundredths(const char* column, std::int32_t low, std::int32_t high);
    /// 1 for yes, 0 for no.
    [[nodiscard]] bool flag(const char* column) { return wholeNumber(column, 0, 1) == 1; }

    void fail(const char* column, std::string reason);
    [[nodiscard]] const std::optional<CsvFault>& fault() const { return m_fault; }

private:
    [[nodiscard]] const CsvField& field(const char* column) const;

    const CsvTable& m_table;
    std::size_t m_next = 0;
    std::optional<CsvFault> m_fault;
};

}  // namespace chalk::exchange
