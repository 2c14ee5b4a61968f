#pragma once

#include <map>
#include <string>
#include <utility>
#include <vector>

namespace chalk::test {

/// One line of a table: column to cell.
using TableRow = std::map<std::string, std::string>;

/// The rows of a CSV file under tests/data whose first line names the columns; cells may stand in quotes. Lines at its head that
/// begin with # say where it comes from. Fails the test where it cannot be read.
[[nodiscard]] std::vector<TableRow> readTable(const std::string& path);

/// A whole number in a cell; fails the test where it is none.
[[nodiscard]] int numberIn(const TableRow& row, const std::string& column);

/// A number in a cell, `-.07` or `2.7e-07`; fails the test where it is none.
[[nodiscard]] double realIn(const TableRow& row, const std::string& column);

/// `60-64` as {60, 64}, `80+` as {80, 120}.
[[nodiscard]] std::pair<int, int> agesIn(const TableRow& row);

}  // namespace chalk::test
