#pragma once

#include "core/store/store_error.h"

#include <QSqlError>
#include <QString>

namespace chalk::store {

/// What kind of failure an SQLSTATE is, by PostgreSQL's table of error codes (appendix A of its manual); `text` tells apart what shares a
/// code. An empty code is one of the connection: a server that answers always gives one.
[[nodiscard]] StoreError::Kind kindOfSqlState(const QString& state, const QString& text);

/// An error of a statement in our words, with the target named.
[[nodiscard]] StoreError postgresqlError(const QSqlError& error, const QString& target);

/// The same for a connection that could not be made, which has no code.
[[nodiscard]] StoreError postgresqlConnectionError(const QSqlError& error, const QString& target);

}  // namespace chalk::store
