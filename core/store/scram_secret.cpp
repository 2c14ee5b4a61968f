#include "core/store/scram_secret.h"

#include <QCryptographicHash>
#include <QMessageAuthenticationCode>

namespace chalk::store {

namespace {

constexpr int kIterations = 4096;

QByteArray hmac(const QByteArray& key, const QByteArray& message)
{
    return QMessageAuthenticationCode::hash(message, key, QCryptographicHash::Sha256);
}

/// Hi(): PBKDF2 of one block.
QByteArray saltedPassword(const QByteArray& password, const QByteArray& salt, int iterations)
{
    QByteArray last = hmac(password, salt + QByteArray("\0\0\0\1", 4));
    QByteArray sum = last;
    for (int i = 1; i < iterations; ++i) {
        last = hmac(password, last);
        for (qsizetype byte = 0; byte < sum.size(); ++byte) {
            sum[byte] = static_cast<char>(sum[byte] ^ last[byte]);
        }
    }
    return sum;
}

}  // namespace

ScramSecret scramSecretOf(const QString& password, const QByteArray& salt, int iterations)
{
    const QByteArray salted = saltedPassword(password.toUtf8(), salt, iterations);
    return {QCryptographicHash::hash(hmac(salted, "Client Key"), QCryptographicHash::Sha256), hmac(salted, "Server Key")};
}

QString scramVerifier(const QString& password, const QByteArray& salt)
{
    const ScramSecret secret = scramSecretOf(password, salt, kIterations);
    return QStringLiteral("SCRAM-SHA-256$%1:%2$%3:%4")
        .arg(QString::number(kIterations), QString::fromLatin1(salt.toBase64()), QString::fromLatin1(secret.storedKey.toBase64()),
             QString::fromLatin1(secret.serverKey.toBase64()));
}

}  // namespace chalk::store
