#include "core/store/sealing_rows.h"

#include "core/seal/text_seal.h"
#include "core/store/sealed_tables.h"

#include <QSqlError>
#include <QSqlQuery>
#include <QVariant>

#include <algorithm>
#include <functional>

namespace chalk::store {

namespace {

/// What becomes of a text, or of bytes, at a place; an invalid answer: it cannot be done.
using Turn = std::function<QVariant(const QByteArray& place, const QVariant& value)>;

/// Which rows have anything to seal.
QString notEmpty(const SealedTable& table)
{
    const QString bytes = table.bytes.isEmpty() ? QString() : QStringLiteral(" OR length(") + table.bytes + QStringLiteral(") > 0");
    return QStringLiteral(" WHERE ") + table.texts.join(QStringLiteral(" <> '' OR ")) + QStringLiteral(" <> ''") + bytes;
}

/// The triggers of the sealed tables, away for as long as this lives; `putBack` makes them anew.
class GuardsAside {
public:
    explicit GuardsAside(Database& database) : m_database(database)
    {
        QSqlQuery all(database.connection());
        all.exec(QStringLiteral("SELECT name, sql, tbl_name FROM sqlite_master WHERE type = 'trigger' ORDER BY name"));
        while (all.next()) {
            const QString table = all.value(2).toString();
            if (std::any_of(sealedTables().begin(), sealedTables().end(), [&table](const SealedTable& one) { return one.name == table; })) {
                m_guards.append({all.value(0).toString(), all.value(1).toString()});
            }
        }
        all.finish();
        for (const auto& [name, sql] : m_guards) {
            run(QStringLiteral("DROP TRIGGER ") + name);
        }
    }

    void putBack()
    {
        for (const auto& [name, sql] : m_guards) {
            run(sql);
        }
    }

private:
    void run(const QString& sql)
    {
        QSqlQuery query(m_database.connection());
        if (!m_database.failure() && !query.exec(sql)) {
            m_database.failWith(query.lastError());
        }
    }

    Database& m_database;
    QList<std::pair<QString, QString>> m_guards;
};

/// All rows of one table.
class TableTurn {
public:
    TableTurn(Database& database, const SealedTable& table, bool isSealing, const Turn& turn)
        : m_database(database), m_table(table), m_turn(turn), m_columns(table.texts), m_read(database.connection()), m_write(database.connection()),
          m_version(database.connection())
    {
        if (!table.bytes.isEmpty()) {
            m_columns.append(table.bytes);
        }
        const QString where = QStringLiteral(" WHERE ") + table.primaryKey.join(QStringLiteral(" = ? AND ")) + QStringLiteral(" = ?");
        prepare(m_read, QStringLiteral("SELECT ") + (table.key + m_columns).join(QStringLiteral(", ")) + QStringLiteral(" FROM ") + table.name + where);
        prepare(m_write, QStringLiteral("UPDATE ") + table.name + QStringLiteral(" SET ") + m_columns.join(QStringLiteral(" = ?, ")) + QStringLiteral(" = ?") + where);
        prepare(m_version, isSealing ? QStringLiteral("INSERT INTO sealed_version (place, version) VALUES (?, 1) "
                                                      "ON CONFLICT (place) DO UPDATE SET version = 1 RETURNING version")
                                     : QStringLiteral("SELECT version FROM sealed_version WHERE place = ?"));
    }

    /// The primary keys of the rows: texts are read one row at a time.
    QList<QVariantList> rows()
    {
        QList<QVariantList> keys;
        QSqlQuery all(m_database.connection());
        if (!all.exec(QStringLiteral("SELECT ") + m_table.primaryKey.join(QStringLiteral(", ")) + QStringLiteral(" FROM ") + m_table.name + notEmpty(m_table))) {
            m_database.failWith(all.lastError());
        }
        while (all.next()) {
            QVariantList& key = keys.emplaceBack();
            for (int i = 0; i < m_table.primaryKey.size(); ++i) {
                key.append(all.value(i));
            }
        }
        return keys;
    }

    void turn(const QVariantList& primaryKey)
    {
        bind(m_read, primaryKey, 0);
        if (!m_read.exec() || !m_read.next()) {
            m_database.failWith(m_read.lastError());
            return;
        }
        QVariantList values;
        for (int i = 0; i < m_columns.size(); ++i) {
            values.append(m_read.value(static_cast<int>(m_table.key.size()) + i));
        }
        turnTexts(values);
        m_read.finish();
        write(values, primaryKey);
    }

private:
    void prepare(QSqlQuery& query, const QString& sql)
    {
        query.setForwardOnly(true);
        if (!m_database.failure() && !query.prepare(sql)) {
            m_database.failWith(query.lastError());
        }
    }

    static bool isEmpty(const QVariant& value)
    {
        return value.isNull() || (value.typeId() == QMetaType::QByteArray ? value.toByteArray().isEmpty() : value.toString().isEmpty());
    }

    void turnTexts(QVariantList& values)
    {
        const SealedRow row = sealedRow();
        for (int i = 0; i < values.size(); ++i) {
            if (isEmpty(values[i])) {
                continue;
            }
            values[i] = m_turn(Vault::placeOf(row, m_columns[i]), values[i]);
            if (!values[i].isValid()) {
                m_database.fail({StoreError::Kind::Damaged, QStringLiteral("%1 is damaged: %2 of %3 %4 does not open")
                                                                .arg(m_database.target(), m_columns[i], m_table.name, row.key)});
            }
        }
    }

    void write(const QVariantList& values, const QVariantList& primaryKey)
    {
        bind(m_write, values, 0);
        bind(m_write, primaryKey, static_cast<int>(values.size()));
        if (!m_database.failure() && !m_write.exec()) {
            m_database.failWith(m_write.lastError());
        }
    }

    static void bind(QSqlQuery& query, const QVariantList& values, int first)
    {
        for (int i = 0; i < values.size(); ++i) {
            query.bindValue(first + i, values[i]);
        }
    }

    SealedRow sealedRow()
    {
        QStringList key;
        for (int i = 0; i < m_table.key.size(); ++i) {
            key.append(m_read.value(i).toString());
        }
        SealedRow row{&m_table, key.join(QLatin1Char('/')), 0};
        if (m_table.isRewritten) {
            m_version.bindValue(0, QString(m_table.name + QLatin1Char('/') + row.key));
            row.version = m_version.exec() && m_version.next() ? m_version.value(0).toLongLong() : 0;
            m_version.finish();
        }
        return row;
    }

    Database& m_database;
    const SealedTable& m_table;
    const Turn& m_turn;
    QStringList m_columns;
    QSqlQuery m_read;
    QSqlQuery m_write;
    QSqlQuery m_version;
};

int rowsOfSealedTables(Database& database)
{
    int rows = 0;
    for (const SealedTable& table : sealedTables()) {
        QSqlQuery count(database.connection());
        rows += count.exec(QStringLiteral("SELECT count(*) FROM ") + table.name + notEmpty(table)) && count.next() ? count.value(0).toInt() : 0;
    }
    return rows;
}

void turnRows(Database& database, bool isSealing, const Turn& turn, const Progress& progress)
{
    if (database.failure()) {
        return;
    }
    GuardsAside guards(database);
    const int of = rowsOfSealedTables(database);
    int done = 0;
    for (const SealedTable& table : sealedTables()) {
        TableTurn work(database, table, isSealing, turn);
        for (const QVariantList& key : work.rows()) {
            if (progress && done % 64 == 0 && !progress(done, of)) {
                database.fail({StoreError::Kind::Cancelled, QStringLiteral("Stopped")});
            }
            if (database.failure()) {
                return;
            }
            work.turn(key);
            ++done;
        }
    }
    guards.putBack();
}

}  // namespace

void sealRows(Database& database, const seal::SealKey& textKey, const Progress& progress)
{
    turnRows(database, true,
             [&textKey](const QByteArray& place, const QVariant& value) {
                 return value.typeId() == QMetaType::QByteArray ? QVariant(seal::sealBytes(textKey, place, value.toByteArray()))
                                                                : QVariant(seal::sealText(textKey, place, value.toString()));
             },
             progress);
}

void openRows(Database& database, const seal::SealKey& textKey, const Progress& progress)
{
    turnRows(database, false,
             [&textKey](const QByteArray& place, const QVariant& value) {
                 if (value.typeId() == QMetaType::QByteArray) {
                     const auto bytes = seal::openBytes(textKey, place, value.toByteArray());
                     return bytes ? QVariant(*bytes) : QVariant();
                 }
                 const auto text = seal::openText(textKey, place, value.toString());
                 return text ? QVariant(*text) : QVariant();
             },
             progress);
}

}  // namespace chalk::store
