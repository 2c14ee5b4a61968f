#include "tests/faults/studio_content.h"

#include <QSqlError>
#include <QSqlQuery>
#include <QSqlRecord>

#include <algorithm>
#include <stdexcept>

namespace chalk::faults {

namespace {

constexpr QLatin1Char kBetween('\x1f');

QSqlQuery answerTo(store::Database& database, const QString& sql)
{
    QSqlQuery query(database.connection());
    query.setForwardOnly(true);
    if (!query.exec(sql)) {
        throw std::runtime_error(query.lastError().text().toStdString());
    }
    return query;
}

QString textOf(const QVariant& value)
{
    return value.isNull() ? QStringLiteral("-") : value.typeId() == QMetaType::QByteArray ? QString::fromLatin1(value.toByteArray().toHex()) : value.toString();
}

/// A row with the name of each column before its value.
QString rowText(const QSqlQuery& row)
{
    QStringList values;
    const QSqlRecord record = row.record();
    for (int i = 0; i < record.count(); ++i) {
        values.append(record.fieldName(i) + QLatin1Char('=') + textOf(row.value(i)));
    }
    return values.join(kBetween);
}

QStringList rowsOf(store::Database& database, const QString& table)
{
    QStringList rows;
    for (QSqlQuery query = answerTo(database, QStringLiteral("SELECT * FROM \"%1\"").arg(table)); query.next();) {
        rows.append(rowText(query));
    }
    rows.sort();
    return rows;
}

QStringList only(const QStringList& rows, const QStringList& without)
{
    QStringList left;
    std::set_difference(rows.begin(), rows.end(), without.begin(), without.end(), std::back_inserter(left));
    return left;
}

}  // namespace

StudioContent contentOf(store::Database& database)
{
    QStringList tables;
    for (QSqlQuery query = answerTo(database, QStringLiteral("SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE 'sqlite_%'")); query.next();) {
        tables.append(query.value(0).toString());
    }
    StudioContent content;
    for (const QString& table : tables) {
        content[table] = rowsOf(database, table);
    }
    for (QSqlQuery query = answerTo(database, QStringLiteral("SELECT type, name, tbl_name, sql FROM sqlite_master ORDER BY 1, 2")); query.next();) {
        content[QStringLiteral("the schema")].append(rowText(query));
    }
    return content;
}

StudioContent contentOfFile(const QString& file)
{
    const auto database = store::Database::open(file, store::OpenMode::MustExist);
    if (!database) {
        throw std::runtime_error(database.error().message.toStdString());
    }
    return contentOf(**database);
}

std::vector<ChangedValue> changesBetween(const StudioContent& a, const StudioContent& b)
{
    std::vector<ChangedValue> changes;
    for (const auto& [table, rows] : a) {
        const auto other = b.find(table);
        const QStringList others = other == b.end() ? QStringList() : other->second;
        const QStringList lost = only(rows, others);
        const QStringList found = only(others, rows);
        if (lost.size() != 1 || found.size() != 1) {
            if (!lost.isEmpty() || !found.isEmpty()) {
                changes.push_back({table, QStringLiteral("rows"), static_cast<int>(std::max(lost.size(), found.size()))});
            }
            continue;
        }
        const QStringList before = lost.front().split(kBetween);
        const QStringList after = found.front().split(kBetween);
        for (qsizetype i = 0; i < std::max(before.size(), after.size()); ++i) {
            if (before.value(i) != after.value(i)) {
                changes.push_back({table, before.value(i).section(QLatin1Char('='), 0, 0), 1});
            }
        }
    }
    return changes;
}

}  // namespace chalk::faults
