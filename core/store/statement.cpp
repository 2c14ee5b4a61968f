#include "core/store/statement.h"

namespace chalk::store {

Statement::Statement(Database& database, const QString& sql) : m_database(database), m_query(database.connection())
{
    m_query.setForwardOnly(true);
    if (!m_database.failure() && !m_query.prepare(sql)) {
        m_database.failWith(m_query.lastError());
    }
}

bool Statement::execute()
{
    if (m_database.failure()) {
        return false;
    }
    if (!m_query.exec()) {
        m_database.failWith(m_query.lastError());
        return false;
    }
    return true;
}

std::optional<base::Date> Statement::optionalDate(int column) const
{
    return isNull(column) ? std::nullopt : std::optional(date(column));
}

std::optional<base::Load> Statement::optionalLoad(int column) const
{
    return isNull(column) ? std::nullopt : std::optional(base::Load::fromCenti(number(column)));
}

}  // namespace chalk::store
