#pragma once

#include "core/store/client_forms.h"
#include "core/store/statement.h"

#include <string_view>

namespace chalk::store {

/// Writes forms as new rows, inside of a transaction: a row is made first, for what it says may be sealed to its id.
class FormRows {
public:
    explicit FormRows(Database& database);

    /// `kind` is what the form is kept as, `detail` its JSON.
    void add(base::ClientId client, std::string_view kind, base::Date day, bool isFinished, const QString& detail);

private:
    Database& m_database;
    Statement m_insert;
    Statement m_fill;
};

/// Writes over what the open form of a kind says; begins one, of `day`, where there is none.
void putOpenForm(Database& database, base::ClientId client, FormKind kind, base::Date day, const QString& detail);

/// The same for letters.
class LetterRows {
public:
    explicit LetterRows(Database& database);

    void add(base::ClientId client, const Letter& letter);

private:
    Database& m_database;
    Statement m_insert;
    Statement m_fill;
};

/// A letter from the columns written_by, day, valid_until_day, limits, findings, file_name, file, id.
[[nodiscard]] Letter letterOf(const Statement& row);

}  // namespace chalk::store
