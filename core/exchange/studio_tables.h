#pragma once

#include <QByteArray>
#include <QString>

#include <vector>

namespace chalk::exchange {

// A studio as tables of CSV: the values of the open format, a row for each object and a column for each field. What is nested deeper
// than a table goes stands as JSON in one field, and what has no column of its own in the column `more`: so nothing is left out.

/// What stands in a column. An empty field is a value that is not there.
enum class CellKind {
    Text,
    KeptText,  ///< always there: an empty field is an empty text
    Number,
    Truth,     ///< true or false
    Json       ///< a list or an object
};

struct TableColumn {
    const char* name;
    const char* path;     ///< the field of the object; `report.sleep` is a field of a field
    CellKind kind;
    const char* meaning;  ///< in plain words, with the unit
};

/// A table, and the tables of what its objects hold in lists. Its rows begin with numbers from 1: of the client and of every object
/// on the way, down to their own.
struct StudioTable {
    const char* name;    ///< of the file, without `.csv`
    const char* number;  ///< the column of the rows' own number
    const char* list;    ///< the field of the object around it that holds the list
    bool isAlways;       ///< the list is there even where it is empty
    const char* meaning;
    std::vector<TableColumn> columns;
    std::vector<StudioTable> parts{};
};

/// The column of what has no other, as JSON.
inline constexpr const char* kMoreColumn = "more";

/// Of the studio itself: one row in `studio.csv`, and its lists.
[[nodiscard]] const StudioTable& studioTable();
/// Of a client: a row in `clients.csv`, and its lists.
[[nodiscard]] const StudioTable& clientTable();

/// Names of the columns of a table, numbers first and `more` last. `numbers` are those of the tables around it.
[[nodiscard]] std::vector<QByteArray> columnNames(const StudioTable& table, const std::vector<const char*>& numbers);

/// What every file and column means, as text for a person who has nothing but the files.
[[nodiscard]] QString tablesReadme();

}  // namespace chalk::exchange
