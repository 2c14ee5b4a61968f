#include "core/exchange/csv_records.h"

namespace chalk::exchange {

CsvRecords::CsvRecords(const QByteArray& text, char separator) : m_text(text), m_separator(separator)
{
    const QByteArray mark("\xEF\xBB\xBF");
    m_at = m_text.startsWith(mark) ? mark.size() : 0;
}

void CsvRecords::advance()
{
    constexpr unsigned kContinues = 0x80;  // a byte of UTF-8 that belongs to the character before: 10xxxxxx
    constexpr unsigned kTopBits = 0xC0;
    const char letter = m_text[m_at++];
    const bool isLineEnd = letter == '\n' || (letter == '\r' && (isAtEnd() || here() != '\n'));
    if (isLineEnd) {
        ++m_line;
        m_column = 1;
    } else if (isAtEnd() || (static_cast<unsigned char>(here()) & kTopBits) != kContinues) {
        ++m_column;
    }
}

bool CsvRecords::passLineEnd()
{
    if (!isAtLineEnd()) {
        return false;
    }
    const bool isReturn = here() == '\r';
    advance();
    if (isReturn && !isAtEnd() && here() == '\n') {
        advance();
    }
    return true;
}

CsvResult<QByteArray> CsvRecords::quoted()
{
    const qsizetype begin = m_at;
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
    m_at = begin;
    m_line = opened.line;
    m_column = opened.column;
    return tl::make_unexpected(opened);
}

CsvResult<QByteArray> CsvRecords::plain()
{
    const qsizetype begin = m_at;
    while (!isAtFieldEnd()) {
        if (here() == '"') {
            return faultHere("a field with a quote must stand in quotes");
        }
        advance();
    }
    return m_text.mid(begin, m_at - begin);
}

CsvResult<CsvField> CsvRecords::field()
{
    CsvField field{{}, m_line, m_column};
    auto text = !isAtEnd() && here() == '"' ? quoted() : plain();
    if (!text) {
        return tl::make_unexpected(text.error());
    }
    field.text = std::move(*text);
    return field;
}

CsvResult<CsvRecord> CsvRecords::record()
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

std::optional<CsvResult<CsvRecord>> CsvRecords::next()
{
    while (passLineEnd()) {
    }
    if (isAtEnd()) {
        return std::nullopt;
    }
    auto read = record();
    while (!read && !isAtEnd() && !passLineEnd()) {
        advance();
    }
    return read;
}

}  // namespace chalk::exchange
