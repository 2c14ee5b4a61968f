#include "tests/support/table_file.h"

#include <gtest/gtest.h>

#include <fstream>

namespace chalk::test {

namespace {

std::vector<std::string> cellsOf(const std::string& line)
{
    std::vector<std::string> cells{{}};
    bool isQuoted = false;
    for (const char letter : line) {
        if (letter == '"') {
            isQuoted = !isQuoted;
        } else if (letter == ',' && !isQuoted) {
            cells.emplace_back();
        } else if (letter != '\r') {
            cells.back() += letter;
        }
    }
    return cells;
}

}  // namespace

std::vector<TableRow> readTable(const std::string& path)
{
    std::ifstream file(std::string(CHALKRUNG_TEST_DATA) + "/" + path);
    EXPECT_TRUE(file.good()) << path;
    std::string line;
    while (std::getline(file, line) && line.starts_with('#')) {
    }
    const std::vector<std::string> columns = cellsOf(line);
    std::vector<TableRow> rows;
    while (std::getline(file, line)) {
        const std::vector<std::string> cells = cellsOf(line);
        EXPECT_EQ(cells.size(), columns.size()) << path << ": " << line;
        TableRow row;
        for (std::size_t i = 0; i < columns.size() && i < cells.size(); ++i) {
            row[columns[i]] = cells[i];
        }
        rows.push_back(std::move(row));
    }
    EXPECT_FALSE(rows.empty()) << path;
    return rows;
}

int numberIn(const TableRow& row, const std::string& column)
{
    const auto found = row.find(column);
    EXPECT_NE(found, row.end()) << column;
    std::size_t end = 0;
    const int number = std::stoi(found->second, &end);
    EXPECT_EQ(end, found->second.size()) << found->second;
    return number;
}

double realIn(const TableRow& row, const std::string& column)
{
    const auto found = row.find(column);
    EXPECT_NE(found, row.end()) << column;
    std::size_t end = 0;
    const double number = std::stod(found->second, &end);
    EXPECT_EQ(end, found->second.size()) << found->second;
    return number;
}

std::pair<int, int> agesIn(const TableRow& row)
{
    const std::string& text = row.at("age");
    const auto dash = text.find('-');
    return dash == std::string::npos ? std::pair(std::stoi(text), 120) : std::pair(std::stoi(text), std::stoi(text.substr(dash + 1)));
}

}  // namespace chalk::test
