#pragma once

#include "core/store/database.h"

#include <QString>
#include <QStringList>

#include <map>

namespace chalk::faults {

/// Everything that a studio holds: the rows of each table as text, the schema with them.
using StudioContent = std::map<QString, QStringList>;

[[nodiscard]] StudioContent contentOf(store::Database& database);
/// The same of a file, opened as the program opens it. Throws where it cannot be opened.
[[nodiscard]] StudioContent contentOfFile(const QString& file);

/// A value that is another one now.
struct ChangedValue {
    QString table;
    QString column;
    int rows = 1;  ///< of the table that differ; more than one where rows are missing or new
};

/// Where `b` is not `a`; of a row that differs, each value.
[[nodiscard]] std::vector<ChangedValue> changesBetween(const StudioContent& a, const StudioContent& b);

}  // namespace chalk::faults
