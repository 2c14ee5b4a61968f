#pragma once

#include "core/exchange/text_encoding.h"
#include "core/tables/table_layout.h"
#include "core/tables/table_reader.h"

#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace chalk::exchange {

/// What separates the columns of a file; nothing or a choice of the reader's.
struct TableWishes {
    std::optional<TextEncoding> encoding = {};
    std::optional<char> separator = {};  ///< `,`, `;`, tab or `|`
    base::MassUnit usualUnit = base::MassUnit::Kilogram;  ///< where nothing in the file names one
};

enum class TableKind : std::uint8_t { Table, Cards };

/// A file of people or of their sessions as it was detected: everything here is shown before anything is read.
struct TableFile {
    TableKind kind = TableKind::Table;
    TextEncoding encoding = TextEncoding::Utf8;
    char separator = ',';
    bool hasHeadings = true;
    std::vector<std::string> headings;              ///< `column 1` … where it has none
    std::vector<std::vector<std::string>> sample;   ///< the first rows
    tables::TableLayout layout;                     ///< as guessed
    int records = 0;                                ///< rows of data, or cards
    QByteArray text;                                ///< UTF-8

    [[nodiscard]] std::string signature() const { return tables::signatureOf(headings); }
};

/// Told how far a file was read, in thousandths; answers whether to go on.
using ReadingProgress = std::function<bool(int thousandths)>;

/// Looks at a file whole: encoding, separator, headings, what its columns look like. Fails where the encoding cannot say it, where it is empty, and where it
/// was stopped (with no reason).
[[nodiscard]] CsvResult<TableFile> inspectTable(const QByteArray& bytes, const TableWishes& wishes = {}, const ReadingProgress& progress = {});

/// Reads the rows of a file by `layout` into `content`, or its cards; answers false where it was stopped. Records that are no CSV are faults of theirs.
bool readTable(const TableFile& file, const tables::TableLayout& layout, tables::TableContent& content, int index, base::Date today, const ReadingProgress& progress = {});

/// The separator that parts the first lines most evenly.
[[nodiscard]] char separatorOf(const QByteArray& text);

}  // namespace chalk::exchange
