#include "core/store/vault.h"

#include "core/seal/text_seal.h"
#include "core/store/database.h"
#include "core/store/key_ring.h"

#include <QSqlError>
#include <QVariant>

namespace chalk::store {

Vault::Vault(Database& database) : m_database(database), m_look(database.connection()), m_version(database.connection())
{
}

void Vault::refresh()
{
    if (m_database.failure() || m_database.isOnServer()) {
        return;
    }
    m_isReady = m_isReady || (m_look.prepare(QStringLiteral("SELECT wrapped_key FROM sealing")) &&
                              m_version.prepare(QStringLiteral("SELECT version FROM sealed_version WHERE place = ?")));
    if (!m_isReady || !m_look.exec()) {
        m_database.failWith(m_look.lastError());
        return;
    }
    const QByteArray bytes = m_look.next() ? m_look.value(0).toByteArray() : QByteArray();
    m_look.finish();
    if (bytes.isEmpty()) {
        m_wrapped.reset();
        return;
    }
    const auto wrapped = seal::wrappedKeyOf(bytes);
    if (!wrapped) {
        m_database.fail(errorOfSeal(wrapped.error(), m_database.target()));
        return;
    }
    m_wrapped = *wrapped;
}

std::optional<seal::FileKey> Vault::fileKey() const
{
    const auto key = m_wrapped ? m_database.access().keys->files(m_wrapped->fingerprint) : nullptr;
    return key ? std::optional(seal::FileKey{*key, *m_wrapped}) : std::nullopt;
}

QByteArray Vault::placeOf(const SealedRow& row, const QString& column)
{
    return QStringLiteral("%1\n%2\n%3\n%4").arg(row.table->name, row.key, QString::number(row.version), column).toUtf8();
}

SealedRow Vault::rowToRead(QLatin1String table, const QString& key)
{
    SealedRow row{&sealedTable(table), key, 0};
    if (row.table->isRewritten && !m_database.failure()) {
        m_version.bindValue(0, QString(row.table->name + QLatin1Char('/') + key));
        if (!m_version.exec()) {
            m_database.failWith(m_version.lastError());
        }
        row.version = m_version.next() ? m_version.value(0).toLongLong() : 0;
        m_version.finish();
    }
    return row;
}

SealedRow Vault::rowToWrite(QLatin1String table, const QString& key)
{
    SealedRow row{&sealedTable(table), key, 0};
    if (row.table->isRewritten && !m_database.failure()) {
        QSqlQuery count(m_database.connection());
        count.prepare(QStringLiteral("INSERT INTO sealed_version (place, version) VALUES (?, 1) "
                                     "ON CONFLICT (place) DO UPDATE SET version = sealed_version.version + 1 RETURNING version"));
        count.bindValue(0, QString(row.table->name + QLatin1Char('/') + key));
        if (!count.exec() || !count.next()) {
            m_database.failWith(count.lastError());
            return row;
        }
        row.version = count.value(0).toLongLong();
    }
    return row;
}

std::shared_ptr<const seal::SealKey> Vault::textKey()
{
    auto key = m_wrapped ? m_database.access().keys->texts(m_wrapped->fingerprint) : nullptr;
    if (!key) {
        m_database.fail({StoreError::Kind::Locked, QStringLiteral("%1 is locked: it needs its passphrase").arg(m_database.target())});
    }
    return key;
}

QString Vault::sealed(const SealedRow& row, const char* column, const QString& text)
{
    const auto key = row.table == nullptr || text.isEmpty() ? nullptr : textKey();
    return key ? seal::sealText(*key, placeOf(row, QLatin1String(column)), text) : row.table == nullptr ? text : QString();
}

QByteArray Vault::sealedBytes(const SealedRow& row, const char* column, const QByteArray& bytes)
{
    const auto key = row.table == nullptr || bytes.isEmpty() ? nullptr : textKey();
    return key ? seal::sealBytes(*key, placeOf(row, QLatin1String(column)), bytes) : row.table == nullptr ? bytes : QByteArray();
}

QString Vault::opened(const SealedRow& row, const char* column, const QString& kept)
{
    if (row.table == nullptr) {
        refuseSealed(seal::isSealedText(kept), column);
        return kept;
    }
    const auto key = kept.isEmpty() ? nullptr : textKey();
    if (!key) {
        return {};
    }
    const auto text = seal::openText(*key, placeOf(row, QLatin1String(column)), kept);
    if (!text) {
        failAsDamaged(row, column);
    }
    return text.value_or(QString());
}

QByteArray Vault::openedBytes(const SealedRow& row, const char* column, const QByteArray& kept)
{
    if (row.table == nullptr) {
        refuseSealed(seal::isSealedBytes(kept), column);
        return kept;
    }
    const auto key = kept.isEmpty() ? nullptr : textKey();
    if (!key) {
        return {};
    }
    const auto bytes = seal::openBytes(*key, placeOf(row, QLatin1String(column)), kept);
    if (!bytes) {
        failAsDamaged(row, column);
    }
    return bytes.value_or(QByteArray());
}

void Vault::refuseSealed(bool isSealedThere, const char* column)
{
    if (isSealedThere) {
        m_database.fail({StoreError::Kind::Damaged, QStringLiteral("%1 is damaged: a %2 in it is sealed, and the key is gone").arg(m_database.target(), QLatin1String(column))});
    }
}

void Vault::failAsDamaged(const SealedRow& row, const char* column)
{
    m_database.fail({StoreError::Kind::Damaged, QStringLiteral("%1 is damaged: %2 of %3 %4 was altered or put there from another place")
                                                    .arg(m_database.target(), QLatin1String(column), row.table->name, row.key)});
}

}  // namespace chalk::store
