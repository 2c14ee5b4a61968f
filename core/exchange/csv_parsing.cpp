#include "core/exchange/csv_records.h"

#include <algorithm>

namespace chalk::exchange {

namespace {

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
    CsvRecords records(text);
    CsvTable table;
    while (auto record = records.next()) {
        if (!*record) {
            return tl::make_unexpected(record->error());
        }
        if (table.columns.empty()) {
            auto columns = columnsOf(**record);
            if (!columns) {
                return tl::make_unexpected(columns.error());
            }
            table.columns = std::move(*columns);
        } else if ((*record)->size() != table.columns.size()) {
            return tl::make_unexpected(CsvFault{(*record)->front().line, 1, {}, countFault((*record)->size(), table.columns.size())});
        } else {
            table.records.push_back(**std::move(record));
        }
    }
    return table.columns.empty() ? CsvResult<CsvTable>(tl::make_unexpected(CsvFault{1, 1, {}, "there is nothing in it"})) : std::move(table);
}

}  // namespace chalk::exchange
