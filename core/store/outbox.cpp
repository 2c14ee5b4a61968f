#include "core/store/outbox.h"

#include "core/store/private_folder.h"
#include "core/store/statement.h"

#include <QCryptographicHash>
#include <QFile>
#include <QFileInfo>
#include <QJsonDocument>
#include <QSaveFile>
#include <QStandardPaths>

#include <algorithm>

namespace chalk::store {

namespace {

QByteArray lineOf(const OutboxItem& item)
{
    const QJsonObject object{{QStringLiteral("token"), item.token},
                             {QStringLiteral("at"), item.atUtc},
                             {QStringLiteral("words"), item.words},
                             {QStringLiteral("coach"), static_cast<qint64>(item.coach.value())},
                             {QStringLiteral("write"), toJson(item.write)}};
    return QJsonDocument(object).toJson(QJsonDocument::Compact);
}

std::optional<OutboxItem> itemIn(const QByteArray& line)
{
    const QJsonObject object = QJsonDocument::fromJson(line).object();
    const auto write = pendingWriteIn(object.value(QLatin1String("write")).toObject());
    const QString token = object.value(QLatin1String("token")).toString();
    if (!write || token.isEmpty()) {
        return std::nullopt;
    }
    return OutboxItem{token, object.value(QLatin1String("at")).toString(), object.value(QLatin1String("words")).toString(),
                      base::CoachId(object.value(QLatin1String("coach")).toInteger()), *write};
}

}  // namespace

QString Outbox::fileFor(const QString& target)
{
    const QByteArray name = QCryptographicHash::hash(target.toUtf8(), QCryptographicHash::Sha256).toHex().left(16);
    return QStandardPaths::writableLocation(QStandardPaths::GenericDataLocation) + QStringLiteral("/chalkrung/waiting-%1.jsonl").arg(QString::fromLatin1(name));
}

Result<void> Outbox::load()
{
    m_items.clear();
    m_unread.clear();
    QFile file(m_file);
    if (!file.exists()) {
        return {};
    }
    if (!file.open(QIODevice::ReadOnly)) {
        return storeError(StoreError::Kind::CannotRead, QStringLiteral("%1 cannot be read: %2").arg(m_file, file.errorString()));
    }
    int number = 0;
    QString faults;
    for (const QByteArray& line : file.readAll().split('\n')) {
        ++number;
        if (line.trimmed().isEmpty()) {
            continue;
        }
        if (auto item = itemIn(line)) {
            m_items.push_back(*std::move(item));
        } else {
            m_unread.append(QString::fromUtf8(line));
            faults += QStringLiteral(" line %1").arg(number);
        }
    }
    return faults.isEmpty() ? Result<void>() : storeError(StoreError::Kind::Damaged, QStringLiteral("%1 is damaged:%2").arg(m_file, faults));
}

Result<void> Outbox::save()
{
    if (!makePrivateFolder(QFileInfo(m_file).absolutePath())) {
        return storeError(StoreError::Kind::CannotWrite, QStringLiteral("%1 cannot be written").arg(m_file));
    }
    QSaveFile file(m_file);
    if (!file.open(QIODevice::WriteOnly) || !file.setPermissions(QFileDevice::ReadOwner | QFileDevice::WriteOwner)) {
        return storeError(StoreError::Kind::CannotWrite, QStringLiteral("%1 cannot be written: %2").arg(m_file, file.errorString()));
    }
    for (const QString& line : m_unread) {
        file.write(line.toUtf8() + '\n');
    }
    for (const OutboxItem& item : m_items) {
        file.write(lineOf(item) + '\n');
    }
    if (!file.commit()) {
        return storeError(StoreError::Kind::CannotWrite, QStringLiteral("%1 cannot be written: %2").arg(m_file, file.errorString()));
    }
    return {};
}

Result<void> Outbox::keep(const OutboxItem& item)
{
    const std::vector<OutboxItem> before = m_items;
    const auto same = std::find_if(m_items.begin(), m_items.end(), [&item](const OutboxItem& one) { return isSameThing(one.write, item.write); });
    if (same == m_items.end()) {
        m_items.push_back(item);
    } else if (same->write != item.write) {
        *same = item;
    }
    auto saved = save();
    if (!saved) {
        m_items = before;
    }
    return saved;
}

Result<bool> Outbox::isDone(Database& database, const QString& token)
{
    const Snapshot snapshot(database);
    Statement row(database, QStringLiteral("SELECT 1 FROM act WHERE token = ?"));
    const bool isThere = row.run(token) && row.next();
    return database.resultOf(isThere);
}

Result<void> Outbox::sendFirst(Database& database)
{
    if (m_items.empty()) {
        return {};
    }
    const OutboxItem item = m_items.front();
    const auto before = isDone(database, item.token);
    if (!before) {
        return tl::make_unexpected(before.error());
    }
    if (!*before) {
        const base::CoachId author = database.author();
        database.setAuthor(item.coach.isNone() ? author : item.coach);
        const auto outcome = perform(database, item.write, [&item] { return item.atUtc; }, item.token);
        database.setAuthor(author);
        // A first try whose answer was lost may have been on its way still: then the token is there by now.
        if (!outcome && !isDone(database, item.token).value_or(false)) {
            return tl::make_unexpected(outcome.error());
        }
    }
    return dropFirst();
}

Result<void> Outbox::changeFirst(const PendingWrite& write)
{
    if (!m_items.empty()) {
        m_items.front().write = write;
        m_items.front().token = newToken();
    }
    return save();
}

Result<void> Outbox::dropFirst()
{
    if (!m_items.empty()) {
        m_items.erase(m_items.begin());
    }
    return save();
}

}  // namespace chalk::store
