#pragma once

#include "core/tables/table_content.h"
#include "core/tables/table_layout.h"

#include <set>
#include <string>
#include <string_view>
#include <vector>

namespace chalk::tables {

/// One cell of a table, and where it begins: line and column count from 1.
struct Cell {
    std::string text;  ///< UTF-8
    int line = 1;
    int column = 1;
};

/// Reads the rows of one table by its layout into what all files say. A row with a fault is left out whole and its faults are kept. The content outlives
/// the reader.
class TableReader {
public:
    /// `headings` has one for each column. `today` is the last day that anything can be of. `file` counts from 0.
    TableReader(TableContent& content, TableLayout layout, std::vector<std::string> headings, int file, base::Date today);

    /// Takes one row; its cells need not be as many as the columns, which is a fault then.
    void add(const std::vector<Cell>& row);

private:
    [[nodiscard]] const Cell* cellOf(const std::vector<Cell>& row, Field field) const;
    [[nodiscard]] std::string textOf(const std::vector<Cell>& row, Field field) const;
    void fail(const std::vector<Cell>& row, Field field, std::string reason);
    [[nodiscard]] std::optional<base::Date> dayIn(const std::vector<Cell>& row, Field field);
    [[nodiscard]] std::optional<int> wholeIn(const std::vector<Cell>& row, Field field, int low, int high);
    [[nodiscard]] std::optional<CellMass> massIn(const std::vector<Cell>& row, Field field);
    [[nodiscard]] base::MassUnit unitOfMass(const CellMass& mass, Field field) const;
    [[nodiscard]] std::string nameIn(const std::vector<Cell>& row) const;
    [[nodiscard]] ListedPerson personIn(const std::vector<Cell>& row);
    /// The sets of a row; more than one where its repetitions name several: `8 8 7`, `3x8`.
    [[nodiscard]] std::vector<ListedSet> setsIn(const std::vector<Cell>& row);
    void readAmounts(const std::vector<Cell>& row, const ListedSet& pattern, std::vector<ListedSet>& sets);
    void readSession(const std::vector<Cell>& row, ListedSession& session);
    /// Puts a note behind those of the same session, once; one that makes them too long is a fault and left out.
    void addNote(const std::vector<Cell>& row, const std::string& note, std::string& notes);
    void keep(const ListedPerson& person, std::vector<ListedSet> sets, std::optional<base::Date> day, const ListedSession& session, const std::vector<Cell>& row);

    TableContent& m_content;
    TableLayout m_layout;
    std::vector<std::string> m_headings;
    int m_file;
    base::Date m_today;
    bool m_isFaulty = false;             ///< the present row
    std::set<std::int32_t> m_hereAlready;///< persons that a row of their own named, in a table without sessions
};

}  // namespace chalk::tables
