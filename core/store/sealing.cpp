#include "core/store/sealing.h"

#include "core/store/key_ring.h"
#include "core/store/sealing_rows.h"
#include "core/store/statement.h"

#include <QFile>
#include <QSqlError>
#include <QSqlQuery>

namespace chalk::store {

namespace {

using Kind = StoreError::Kind;

StoreError locked(const QString& target)
{
    return errorOfSeal(seal::SealFault::WrongPassphrase, target);
}

/// A file that came from elsewhere may be open to others. Some file systems know no owners: there it stays as it is.
void closeToOthers(const QString& file)
{
    for (const char* ending : {"", "-wal", "-shm"}) {
        QFile(file + QLatin1String(ending)).setPermissions(QFileDevice::ReadOwner | QFileDevice::WriteOwner);
    }
}

}  // namespace

Result<void> Sealing::checkFile() const
{
    return !m_database.isOnServer()
               ? Result<void>()
               : storeError(Kind::Refused, QStringLiteral("%1 is not kept in a file: a passphrase is for a file").arg(m_database.target()));
}

Result<seal::SealKey> Sealing::keyOf(const seal::Passphrase& passphrase) const
{
    const auto& wrapped = m_database.vault().wrapped();
    if (!wrapped) {
        return storeError(Kind::Refused, QStringLiteral("%1 has no passphrase").arg(m_database.target()));
    }
    auto key = seal::unwrapKey(*wrapped, passphrase);
    return key ? Result<seal::SealKey>(*std::move(key)) : tl::make_unexpected(errorOfSeal(key.error(), m_database.target()));
}

Result<void> Sealing::set(const seal::Passphrase& passphrase, const Progress& progress)
{
    if (auto checked = checkFile(); !checked) {
        return checked;
    }
    const seal::SealKey key = seal::SealKey::random();
    const auto wrapped = seal::wrapKey(key, passphrase, m_cost);
    if (!wrapped) {
        return tl::make_unexpected(errorOfSeal(wrapped.error(), m_database.target()));
    }
    Transaction transaction(m_database);
    if (m_database.vault().isSealed()) {
        m_database.fail({Kind::Refused, QStringLiteral("%1 has a passphrase already").arg(m_database.target())});
    }
    sealRows(m_database, key.forUse(seal::KeyUse::Texts), progress);
    Statement(m_database, QStringLiteral("INSERT INTO sealing (id, wrapped_key) VALUES (1, ?)")).run(seal::bytesOf(*wrapped));
    if (auto committed = transaction.commit(); !committed) {
        return committed;
    }
    m_database.access().keys->take(key);
    m_database.vault().refresh();
    closeToOthers(m_database.target());
    return rewrite();
}

Result<void> Sealing::change(const seal::Passphrase& former, const seal::Passphrase& passphrase)
{
    const auto key = keyOf(former);
    if (!key) {
        return tl::make_unexpected(key.error());
    }
    const auto wrapped = seal::wrapKey(*key, passphrase, m_cost);
    if (!wrapped) {
        return tl::make_unexpected(errorOfSeal(wrapped.error(), m_database.target()));
    }
    Transaction transaction(m_database);
    const auto& present = m_database.vault().wrapped();
    if (!m_database.failure() && (!present || present->fingerprint != wrapped->fingerprint)) {
        m_database.fail(locked(m_database.target()));
    }
    Statement(m_database, QStringLiteral("UPDATE sealing SET wrapped_key = ? WHERE id = 1")).run(seal::bytesOf(*wrapped));
    if (auto committed = transaction.commit(); !committed) {
        return committed;
    }
    m_database.vault().refresh();
    return rewrite();
}

Result<void> Sealing::remove(const seal::Passphrase& passphrase, const Progress& progress)
{
    const auto key = keyOf(passphrase);
    if (!key) {
        return tl::make_unexpected(key.error());
    }
    Transaction transaction(m_database);
    const auto& present = m_database.vault().wrapped();
    if (!m_database.failure() && (!present || present->fingerprint != key->fingerprint())) {
        m_database.fail(locked(m_database.target()));
    }
    openRows(m_database, key->forUse(seal::KeyUse::Texts), progress);
    for (const char* table : {"sealed_version", "sealing"}) {
        Statement(m_database, QStringLiteral("DELETE FROM %1").arg(QLatin1String(table))).run();
    }
    if (auto committed = transaction.commit(); !committed) {
        return committed;
    }
    m_database.vault().refresh();
    return {};
}

Result<void> Sealing::rewrite()
{
    const OwnWrite write(m_database);
    QSqlQuery query(m_database.connection());
    if (!query.exec(QStringLiteral("VACUUM"))) {
        return tl::make_unexpected(m_database.engine().errorOf(m_database.connection(), query.lastError(), m_database.target()));
    }
    if (!query.exec(QStringLiteral("PRAGMA wal_checkpoint(TRUNCATE)")) || !query.next() || query.value(0).toInt() != 0) {
        return storeError(Kind::Busy, QStringLiteral("%1 is read by another program: close it, then old texts leave the file").arg(m_database.target()));
    }
    return {};
}

bool isLongEnough(const QString& passphrase)
{
    return passphrase.toUcs4().size() >= seal::Passphrase::kFewest;
}

Result<void> unlock(const Access& access, const seal::Passphrase& passphrase)
{
    auto database = Database::open(access, OpenMode::ReadOnly);
    if (!database) {
        return tl::make_unexpected(database.error());
    }
    const auto& wrapped = (*database)->vault().wrapped();
    if (!wrapped) {
        return {};
    }
    access.keys->offer(passphrase);
    return access.keys->open(*wrapped, access.target);
}

}  // namespace chalk::store
