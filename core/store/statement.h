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

/// A statement with positional placeholders: prepared when it first runs, then run as often as wanted. Does nothing once its
/// database has failed.
class Statement {
public:
    Statement(Database& database, QString sql);

    /// Binds the values in order and runs; false where it or anything before it failed.
    template <class... Values>
    bool run(const Values&... values)
    {
        if (!prepare()) {
            return false;
        }
        int position = 0;
        (bind(position++, variantOf(values)), ...);
        return execute();
    }
    /// Binds one value, for statements with as many as there are rows; runBound() runs with what is bound.
    template <class Value>
    void bindAt(int position, const Value& value)
    {
        if (prepare()) {
            bind(position, variantOf(value));
        }
    }
    bool runBound() { return prepare() && execute(); }
    /// Runs an `INSERT … RETURNING id` and answers the id; 0 where it failed.
    template <class... Values>
    std::int64_t runForId(const Values&... values)
    {
        const std::int64_t id = run(values...) && next() ? integer(0) : 0;
        m_query.finish();
        return id;
    }
    /// The next row, if there is one.
    bool next();

    [[nodiscard]] std::int64_t integer(int column) const { return m_query.value(column).toLongLong(); }
    [[nodiscard]] int number(int column) const { return static_cast<int>(integer(column)); }
    [[nodiscard]] bool isNull(int column) const { return m_query.isNull(column); }
    /// A text that is never sealed: the database fails where one is.
    [[nodiscard]] QString qtext(int column) const;
    /// A text that may be sealed, of that row.
    [[nodiscard]] QString opened(int column, const SealedRow& row, const char* name) const;
    [[nodiscard]] std::string openedText(int column, const SealedRow& row, const char* name) const { return opened(column, row, name).toStdString(); }
    [[nodiscard]] QByteArray openedBytes(int column, const SealedRow& row, const char* name) const;
    /// Where the texts of the present row are sealed to; see Vault::toRead.
    template <class... Parts>
    [[nodiscard]] SealedRow sealedRow(const char* table, const Parts&... parts) const
    {
        return m_database.vault().toRead(table, parts...);
    }
    [[nodiscard]] std::string text(int column) const { return qtext(column).toStdString(); }
    [[nodiscard]] QByteArray bytes(int column) const { return m_query.value(column).toByteArray(); }
    [[nodiscard]] base::Date date(int column) const { return base::Date::fromDays(number(column)); }
    [[nodiscard]] std::optional<base::Date> optionalDate(int column) const;
    [[nodiscard]] std::optional<base::Load> optionalLoad(int column) const;
    /// What a word in the present row stands for. Where nobody knows it, the database fails as damaged at `what` (`session`) of the
    /// id in `idColumn`, and the answer means nothing.
    template <class T>
    [[nodiscard]] T known(const std::optional<T>& meaning, int column, const char* what, int idColumn) const
    {
        if (!meaning) {
            failAsDamaged(column, what, idColumn);
        }
        return meaning.value_or(T());
    }

private:
    static QVariant variantOf(int value) { return value; }
    static QVariant variantOf(std::int64_t value) { return QVariant::fromValue(static_cast<qlonglong>(value)); }
    static QVariant variantOf(bool value) { return value ? 1 : 0; }
    static QVariant variantOf(const QString& value) { return value.isNull() ? QStringLiteral("") : value; }
    static QVariant variantOf(const std::string& value) { return variantOf(QString::fromStdString(value)); }
    static QVariant variantOf(std::string_view value) { return QString::fromUtf8(value.data(), static_cast<qsizetype>(value.size())); }
    static QVariant variantOf(const QByteArray& value) { return value.isEmpty() ? QVariant() : QVariant(value); }
    static QVariant variantOf(base::Date value) { return value.daysSince1970(); }
    static QVariant variantOf(base::Load value) { return value.centi(); }
    static QVariant variantOf(base::Mass value) { return variantOf(value.raw()); }
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

    bool prepare();
    /// A value stays bound until another one is: Qt takes long to bind one, so what is there already is left.
    void bind(int position, const QVariant& value);
    bool execute();
    void failAsDamaged(int column, const char* what, int idColumn) const;

    Database& m_database;
    QString m_sql;
    QSqlQuery m_query;
    QVariantList m_bound;
    bool m_isPrepared = false;
};

}  // namespace chalk::store
