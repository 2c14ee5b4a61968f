#include "core/store/statement.h"

#include "core/seal/text_seal.h"

#include <QSqlError>

namespace chalk::store {

Statement::Statement(Database& database, QString sql) : m_database(database), m_sql(std::move(sql)), m_query(database.connection())
{
    m_query.setForwardOnly(database.engine().readsRowByRow());
}

bool Statement::prepare()
{
    if (m_database.failure()) {
        return false;
    }
    if (!m_isPrepared && !m_query.prepare(m_sql)) {
        m_database.failWith(m_query.lastError());
        return false;
    }
    m_isPrepared = true;
    return true;
}

void Statement::bind(int position, const QVariant& value)
{
    const bool isThere = position < m_bound.size() && m_bound[position].metaType() == value.metaType() && m_bound[position] == value;
    if (isThere) {
        return;
    }
    m_query.bindValue(position, value);
    if (m_bound.size() <= position) {
        m_bound.resize(position + 1);
    }
    m_bound[position] = value;
}

bool Statement::execute()
{
    if (!m_query.exec()) {
        m_database.failWith(m_query.lastError());
        return false;
    }
    return true;
}

bool Statement::next()
{
    if (m_database.failure() || !m_query.isActive()) {
        return false;
    }
    if (m_query.next()) {
        return true;
    }
    // A damaged page shows in the middle of a reading: it is no end of the rows.
    if (m_query.lastError().isValid()) {
        m_database.failWith(m_query.lastError());
    }
    return false;
}

QString Statement::qtext(int column) const
{
    QString text = m_query.value(column).toString();
    if (seal::isSealedText(text)) {
        m_database.fail({StoreError::Kind::Damaged, QStringLiteral("%1 is damaged: a sealed text stands where none can be").arg(m_database.target())});
    }
    return text;
}

QString Statement::opened(int column, const SealedRow& row, const char* name) const
{
    return m_database.vault().opened(row, name, m_query.value(column).toString());
}

QByteArray Statement::openedBytes(int column, const SealedRow& row, const char* name) const
{
    return m_database.vault().openedBytes(row, name, m_query.value(column).toByteArray());
}

void Statement::failAsDamaged(int column, const char* what, int idColumn) const
{
    m_database.fail({StoreError::Kind::Damaged, QStringLiteral("%1 is damaged: %2 %3 cannot be read: \"%4\" has no meaning")
                                                    .arg(m_database.target(), QLatin1String(what), qtext(idColumn), qtext(column))});
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
