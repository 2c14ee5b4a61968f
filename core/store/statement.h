#pragma once

#include "core/base/date.h"
#include "core/base/id.h"
#include "core/base/load.h"
#include "core/store/database.h"

#include <QSqlQuery>
#include <QVariant>

#include <optional>
#include <string>
#include <string_view>

namespace chalk::store {

/// A prepared statement with positional placeholders, run as often as wanted. Does nothing once its database has failed.
class Statement {
public:
    Statement(Database& database, const QString& sql);

    /// Binds the values in order and runs; false where it or anything before it failed.
    template <class... Values>
    bool run(const Values&... values)
    {
        int position = 0;
        (m_query.bindValue(position++, variantOf(values)), ...);
        return execute();
    }
    /// The next row, if there is one.
    bool next() { return !m_database.failure() && m_query.next(); }

    [[nodiscard]] std::int64_t integer(int column) const { return m_query.value(column).toLongLong(); }
    [[nodiscard]] int number(int column) const { return m_query.value(column).toInt(); }
    [[nodiscard]] double real(int column) const { return m_query.value(column).toDouble(); }
    [[nodiscard]] bool isNull(int column) const { return m_query.isNull(column); }
    [[nodiscard]] QString qtext(int column) const { return m_query.value(column).toString(); }
    [[nodiscard]] std::string text(int column) const { return qtext(column).toStdString(); }
    [[nodiscard]] base::Date date(int column) const { return base::Date::fromDays(number(column)); }
    [[nodiscard]] std::optional<base::Date> optionalDate(int column) const;
    [[nodiscard]] std::optional<base::Load> optionalLoad(int column) const;
    [[nodiscard]] std::int64_t lastInsertId() const { return m_query.lastInsertId().toLongLong(); }
    [[nodiscard]] int changedRows() const { return m_query.numRowsAffected(); }

private:
    static QVariant variantOf(int value) { return value; }
    static QVariant variantOf(std::int64_t value) { return QVariant::fromValue(static_cast<qlonglong>(value)); }
    static QVariant variantOf(double value) { return value; }
    static QVariant variantOf(bool value) { return value ? 1 : 0; }
    static QVariant variantOf(const QString& value) { return value.isNull() ? QStringLiteral("") : value; }
    static QVariant variantOf(const std::string& value) { return variantOf(QString::fromStdString(value)); }
    static QVariant variantOf(std::string_view value) { return QString::fromUtf8(value.data(), static_cast<qsizetype>(value.size())); }
    static QVariant variantOf(base::Date value) { return value.daysSince1970(); }
    static QVariant variantOf(base::Load value) { return value.centi(); }
    static QVariant variantOf(std::nullptr_t) { return {}; }
    template <class Tag>
    static QVariant variantOf(base::Id<Tag> value)
    {
        return value.isNone() ? QVariant() : variantOf(value.value());
    }
    template <class T>
    static QVariant variantOf(const std::optional<T>& value)
    {
        return value ? variantOf(*value) : QVariant();
    }

    bool execute();

    Database& m_database;
    QSqlQuery m_query;
};

}  // namespace chalk::store
