#include "core/exchange/table_row.h"

#include "core/exchange/csv_rows.h"
#include "core/exchange/number_text.h"

#include <stdexcept>

namespace chalk::exchange {

TableRow::TableRow(const StudioTable& table) : m_table(table), m_values(table.columns.size())
{
}

std::string& TableRow::valueOf(const char* field)
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
    QByteArray written;
    appendCsvField(written, QByteArray::fromRawData(value.data(), static_cast<qsizetype>(value.size())));
    valueOf(field).append(written.data(), static_cast<std::size_t>(written.size()));
}

void TableRow::appendTo(std::string& text, const std::vector<int>& numbers)
{
    for (const int number : numbers) {
        appendNumber(text, number);
        text.push_back(',');
    }
    for (std::string& value : m_values) {
        text.append(value).push_back(',');
        value.clear();
    }
    text.append("\r\n");
}

}  // namespace chalk::exchange
