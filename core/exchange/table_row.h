#pragma once

#include "core/exchange/studio_tables.h"

#include <string>
#include <string_view>

namespace chalk::exchange {

/// A row of a table whose values come one by one: the same bytes as of an object that has them. It is used again for the next row.
class TableRow {
public:
    explicit TableRow(const StudioTable& table);

    [[nodiscard]] const StudioTable& table() const { return m_table; }
    /// The value of a field that has a column of its own in the table; texts are not empty. Throws std::invalid_argument where it has none.
    void operator()(const char* field, double value);
    void operator()(const char* field, int value);
    void operator()(const char* field, bool value);
    void operator()(const char* field, std::string_view value);
    /// Appends the row, `numbers` first, and has no values any more.
    void appendTo(std::string& text, const std::vector<int>& numbers);

private:
    [[nodiscard]] std::string& valueOf(const char* field);

    const StudioTable& m_table;
    std::vector<std::string> m_values;  ///< by the columns of the table, as the file has them
};

}  // namespace chalk::exchange
