#include "core/exchange/csv_reading.h"

#include <QStringDecoder>

#include <algorithm>
#include <charconv>

namespace chalk::exchange {

namespace {

constexpr int kDecimals = 2;

/// A whole number as digits, with a minus where it is below 0; nothing for any other text.
std::optional<int> digitsOf(const QByteArray& text)
{
    int number = 0;
    const char* end = text.data() + text.size();
    const auto read = std::from_chars(text.data(), end, number);
    return read.ec == std::errc() && read.ptr == end ? std::optional(number) : std::nullopt;
}

std::string decimalText(std::int32_t hundredths)
{
    return QByteArray::number(hundredths / 100.0, 'g', 12).toStdString();
}

/// `12`, `12.5`, `12.50` as hundredths.
std::optional<std::int32_t> hundredthsOf(const QByteArray& text)
{
    const qsizetype point = text.indexOf('.');
    const QByteArray decimals = point < 0 ? QByteArray() : text.mid(point + 1);
    const bool isPlain = !text.isEmpty() && point != 0 && (point < 0 || !decimals.isEmpty()) && decimals.size() <= kDecimals;
    const bool isDigits = std::all_of(text.begin(), text.end(), [](char letter) { return letter == '.' || (letter >= '0' && letter <= '9'); });
    constexpr qsizetype kMostDigits = 7;  // so that hundredths fit
    if (!isPlain || !isDigits || (point < 0 ? text.size() : point) > kMostDigits) {
        return std::nullopt;
    }
    return digitsOf((point < 0 ? text : text.left(point)) + decimals.leftJustified(kDecimals, '0'));
}

}  // namespace

std::string textOf(const CsvFault& fault)
{
    return "line " + std::to_string(fault.line) + ", column " + std::to_string(fault.column) + ": " + (fault.field.empty() ? "" : fault.field + ": ") +
           fault.reason;
}

void CsvReader::needs(std::initializer_list<const char*> columns)
{
    for (const char* column : columns) {
        if (!m_fault && std::find(m_table.columns.begin(), m_table.columns.end(), column) == m_table.columns.end()) {
            m_fault = CsvFault{1, 1, column, "there is no such column"};
        }
    }
}

bool CsvReader::next()
{
    return !m_fault && ++m_next <= m_table.records.size();
}

const CsvField& CsvReader::field(const char* column) const
{
    static const CsvField none;
    const auto found = std::find(m_table.columns.begin(), m_table.columns.end(), column);
    return m_fault || found == m_table.columns.end() ? none : m_table.records[m_next - 1][static_cast<std::size_t>(found - m_table.columns.begin())];
}

void CsvReader::fail(const char* column, std::string reason)
{
    if (!m_fault) {
        const CsvField& at = field(column);
        m_fault = CsvFault{at.line, at.column, column, std::move(reason)};
    }
}

QByteArray CsvReader::raw(const char* column)
{
    return field(column).text;
}

std::string CsvReader::text(const char* column)
{
    const QByteArray text = raw(column);
    QStringDecoder decoder(QStringDecoder::Utf8, QStringDecoder::Flag::Stateless);
    const QString decoded = decoder(text);
    if (decoder.hasError() || decoded.isEmpty()) {
        fail(column, text.isEmpty() ? "must not be empty" : "must be text in UTF-8");
    }
    return text.toStdString();
}

base::Date CsvReader::date(const char* column)
{
    const auto date = base::Date::parse(raw(column).toStdString());
    if (!date) {
        fail(column, "must be a day such as 2026-11-25");
    }
    return date.value_or(base::Date());
}

int CsvReader::wholeNumber(const char* column, int low, int high)
{
    const auto number = digitsOf(raw(column));
    if (!number || *number < low || *number > high) {
        fail(column, "must be a whole number from " + std::to_string(low) + " to " + std::to_string(high));
        return low;
    }
    return *number;
}

std::optional<int> CsvReader::optionalWholeNumber(const char* column, int low, int high)
{
    return raw(column).isEmpty() ? std::nullopt : std::optional(wholeNumber(column, low, high));
}

std::int32_t CsvReader::hundredths(const char* column, std::int32_t low, std::int32_t high)
{
    const auto number = hundredthsOf(raw(column));
    if (!number || *number < low || *number > high) {
        fail(column, "must be a number from " + decimalText(low) + " to " + decimalText(high) + " with two decimals at most");
        return low;
    }
    return *number;
}

}  // namespace chalk::exchange
