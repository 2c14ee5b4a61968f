#include "core/exchange/table_row.h"

#include "core/exchange/csv_rows.h"
#include "core/exchange/number_text.h"

#include <stdexcept>
#include <string>

namespace chalk::exchange {

TableRow::TableRow(const StudioTable& table) : m_table(table), m_values(table.columns.size())
{
}

QByteArray& TableRow::valueOf(const char* field)
{
    for (std::size_t i = 0; i < m_values.size(); ++i) {
        if (std::string_view(m_table.columns[i].path) == field) {
            return m_values[i];
        }
    }
    throw std::invalid_argument(std::string(m_table.name) + " has no column of " + field);
}

void TableRow::operator()(const char* field, double value)
{
    appendNumber(valueOf(field), value);
}

void TableRow::operator()(const char* field, int value)
{
    appendNumber(valueOf(field), value);
}

void TableRow::operator()(const char* field, bool value)
{
    valueOf(field).append(value ? "true" : "false");
}

void TableRow::operator()(const char* field, std::string_view value)
{
    valueOf(field).append(value.data(), static_cast<qsizetype>(value.size()));
}

void TableRow::appendTo(QByteArray& text, const std::vector<int>& numbers)
{
    for (const int number : numbers) {
        appendNumber(text, number);
        text.append(',');
    }
    for (QByteArray& value : m_values) {
        appendCsvField(text, value);
        text.append(',');
        value.resize(0);
    }
    text.append("\r\n");
}

}  // namespace chalk::exchange
