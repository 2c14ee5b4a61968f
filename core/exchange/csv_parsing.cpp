#include "core/exchange/csv_reading.h"

#include <algorithm>

namespace chalk::exchange {

namespace {

using CsvRecord = std::vector<CsvField>;

/// Goes through a text of CSV once, and knows where it is.
class CsvScanner {
public:
    explicit CsvScanner(const QByteArray& text) : m_text(text) { skip(QByteArray("\xEF\xBB\xBF")); }

    [[nodiscard]] bool isAtEnd() const { return m_at >= m_text.size(); }
    /// Passes over an empty line; false where there is none.
    [[nodiscard]] bool passEmptyLine() { return passLineEnd(); }
    /// The next record with its line end.
    [[nodiscard]] CsvResult<CsvRecord> record();

private:
    [[nodiscard]] CsvResult<CsvField> field();
    [[nodiscard]] CsvResult<QByteArray> quoted();
    [[nodiscard]] CsvResult<QByteArray> plain();
    [[nodiscard]] bool isAtReturn() const { return !isAtEnd() && here() == '\r' && m_at + 1 < m_text.size() && m_text[m_at + 1] == '\n'; }
    [[nodiscard]] bool isAtFieldEnd() const { return isAtEnd() || here() == ',' || here() == '\n' || isAtReturn(); }
    [[nodiscard]] bool passLineEnd();
    [[nodiscard]] char here() const { return m_text[m_at]; }
    [[nodiscard]] tl::unexpected<CsvFault> faultHere(const char* reason) const { return tl::make_unexpected(CsvFault{m_line, m_column, {}, reason}); }
    void skip(const QByteArray& mark) { m_at += m_text.startsWith(mark) ? mark.size() : 0; }
    void advance();

    const QByteArray& m_text;
    qsizetype m_at = 0;
    int m_line = 1;
    int m_column = 1;
};

void CsvScanner::advance()
{
    constexpr unsigned kContinues = 0x80;  // a byte of UTF-8 that belongs to the character before: 10xxxxxx
    constexpr unsigned kTopBits = 0xC0;
    const char letter = m_text[m_at++];
    if (letter == '\n') {
        ++m_line;
        m_column = 1;
    } else if (isAtEnd() || (static_cast<unsigned char>(here()) & kTopBits) != kContinues) {
        ++m_column;
    }
}

bool CsvScanner::passLineEnd()
{
    if (isAtReturn()) {
        advance();
    }
    if (isAtEnd() || here() != '\n') {
        return false;
    }
    advance();
    return true;
}

CsvResult<QByteArray> CsvScanner::quoted()
{
    const CsvFault opened{m_line, m_column, {}, "the quote that opens here is never closed"};
    QByteArray text;
    advance();
    while (!isAtEnd()) {
        const char letter = here();
        advance();
        if (letter == '"' && (isAtEnd() || here() != '"')) {
            return isAtFieldEnd() ? CsvResult<QByteArray>(text) : faultHere("a field ends where its quotes close");
        }
        if (letter == '"') {
            advance();
        }
        text += letter;
    }
    return tl::make_unexpected(opened);
}

CsvResult<QByteArray> CsvScanner::plain()
{
    QByteArray text;
    while (!isAtFieldEnd()) {
        if (here() == '"') {
            return faultHere("a field with a quote must stand in quotes");
        }
        text += here();
        advance();
    }
    return text;
}

CsvResult<CsvField> CsvScanner::field()
{
    CsvField field{{}, m_line, m_column};
    auto text = !isAtEnd() && here() == '"' ? quoted() : plain();
    if (!text) {
        return tl::make_unexpected(text.error());
    }
    field.text = std::move(*text);
    return field;
}

CsvResult<CsvRecord> CsvScanner::record()
{
    CsvRecord fields;
    for (;;) {
        auto next = field();
        if (!next) {
            return tl::make_unexpected(next.error());
        }
        fields.push_back(std::move(*next));
        if (isAtEnd() || passLineEnd()) {
            return fields;
        }
        advance();
    }
}

/// The names of columns, each there once.
CsvResult<std::vector<QByteArray>> columnsOf(const CsvRecord& header)
{
    std::vector<QByteArray> columns;
    for (const CsvField& field : header) {
        if (std::find(columns.begin(), columns.end(), field.text) != columns.end()) {
            return tl::make_unexpected(CsvFault{field.line, field.column, field.text.toStdString(), "the column is there twice"});
        }
        columns.push_back(field.text);
    }
    return columns;
}

std::string countFault(std::size_t fields, std::size_t columns)
{
    return "the record has " + std::to_string(fields) + " fields for " + std::to_string(columns) + " columns";
}

}  // namespace

CsvResult<CsvTable> parseCsv(const QByteArray& text)
{
    CsvScanner scanner(text);
    CsvTable table;
    while (!scanner.isAtEnd()) {
        if (scanner.passEmptyLine()) {
            continue;
        }
        auto record = scanner.record();
        if (!record) {
            return tl::make_unexpected(record.error());
        }
        if (table.columns.empty()) {
            auto columns = columnsOf(*record);
            if (!columns) {
                return tl::make_unexpected(columns.error());
            }
            table.columns = std::move(*columns);
        } else if (record->size() != table.columns.size()) {
            return tl::make_unexpected(CsvFault{record->front().line, 1, {}, countFault(record->size(), table.columns.size())});
        } else {
            table.records.push_back(std::move(*record));
        }
    }
    return table.columns.empty() ? CsvResult<CsvTable>(tl::make_unexpected(CsvFault{1, 1, {}, "there is nothing in it"})) : std::move(table);
}

}  // namespace chalk::exchange
