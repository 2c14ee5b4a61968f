#pragma once

#include "core/seal/key_wrap.h"
#include "core/seal/sealed_file.h"
#include "core/store/sealed_tables.h"
#include "core/store/store_error.h"

#include <QByteArray>
#include <QSqlQuery>
#include <QString>

#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <type_traits>

namespace chalk::store {

class Database;

/// A row whose texts are about to be read or written.
struct SealedRow {
    const SealedTable* table = nullptr;  ///< null where nothing is sealed
    QString key;
    qint64 version = 0;
};

/// What opens and seals texts for one connection. Where the studio has no passphrase, and on a server, everything passes as it is.
class Vault {
public:
    explicit Vault(Database& database);

    /// Looks whether the studio is sealed now: another connection may have changed that. The database does so whenever a transaction or a snapshot begins.
    void refresh();
    [[nodiscard]] bool isSealed() const { return m_wrapped.has_value(); }
    /// What the studio's passphrase opens; none where it is not sealed.
    [[nodiscard]] const std::optional<seal::WrappedKey>& wrapped() const { return m_wrapped; }
    /// What its backups are sealed with; none where it is not sealed, or its passphrase was never given.
    [[nodiscard]] std::optional<seal::FileKey> fileKey() const;

    /// A row of a sealed table, by the values of its key in their order.
    template <class... Parts>
    [[nodiscard]] SealedRow toRead(const char* table, const Parts&... parts)
    {
        return isSealed() ? rowToRead(QLatin1String(table), keyOfParts(parts...)) : SealedRow();
    }
    /// The same for writing, inside of a transaction: all texts of the row are written anew.
    template <class... Parts>
    [[nodiscard]] SealedRow toWrite(const char* table, const Parts&... parts)
    {
        return isSealed() ? rowToWrite(QLatin1String(table), keyOfParts(parts...)) : SealedRow();
    }

    [[nodiscard]] QString sealed(const SealedRow& row, const char* column, const QString& text);
    [[nodiscard]] QString sealed(const SealedRow& row, const char* column, const std::string& text) { return sealed(row, column, QString::fromStdString(text)); }
    [[nodiscard]] QByteArray sealedBytes(const SealedRow& row, const char* column, const QByteArray& bytes);
    /// A text as it was before it was sealed. Where it does not open, the database fails: as locked, or as damaged in that row.
    [[nodiscard]] QString opened(const SealedRow& row, const char* column, const QString& kept);
    [[nodiscard]] QByteArray openedBytes(const SealedRow& row, const char* column, const QByteArray& kept);

    /// What a text of a row is bound to.
    [[nodiscard]] static QByteArray placeOf(const SealedRow& row, const QString& column);

private:
    template <class... Parts>
    static QString keyOfParts(const Parts&... parts)
    {
        QStringList words;
        (words.append(wordOf(parts)), ...);
        return words.join(QLatin1Char('/'));
    }
    template <class Id>
    static QString wordOf(const Id& id)
    {
        if constexpr (std::is_convertible_v<Id, qint64>) {
            return QString::number(static_cast<qint64>(id));
        } else if constexpr (std::is_convertible_v<Id, std::string_view>) {
            const std::string_view text = id;
            return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
        } else {
            return QString::number(static_cast<qint64>(id.value()));
        }
    }

    SealedRow rowToRead(QLatin1String table, const QString& key);
    SealedRow rowToWrite(QLatin1String table, const QString& key);
    std::shared_ptr<const seal::SealKey> textKey();
    void refuseSealed(bool isSealedThere, const char* column);
    void failAsDamaged(const SealedRow& row, const char* column);

    Database& m_database;
    QSqlQuery m_look;
    QSqlQuery m_version;
    bool m_isReady = false;
    std::optional<seal::WrappedKey> m_wrapped;
};

}  // namespace chalk::store
