#include "core/store/scram_secret.h"

#include <QCryptographicHash>
#include <QMessageAuthenticationCode>

#include <gtest/gtest.h>

namespace chalk::store {

namespace {

QByteArray exchangedBefore(const QByteArray& key)
{
    // The messages of the example up to the proof: AuthMessage of RFC 5802, section 3.
    const QByteArray message = "n=user,r=rOprNGfwEbeRWgbNEkqO,r=rOprNGfwEbeRWgbNEkqO%hvYDpWUa2RaTCAfuxFIlj)hNlF$k0,s=W22ZaJ0SNY7soEsUEjb6gQ==,i=4096,"
                               "c=biws,r=rOprNGfwEbeRWgbNEkqO%hvYDpWUa2RaTCAfuxFIlj)hNlF$k0";
    return QMessageAuthenticationCode::hash(message, key, QCryptographicHash::Sha256);
}

}  // namespace

TEST(ScramSecretTest, IsThatOfTheExample)
{
    // RFC 7677, section 3: user "user", password "pencil".
    const ScramSecret secret = scramSecretOf(QStringLiteral("pencil"), QByteArray::fromBase64("W22ZaJ0SNY7soEsUEjb6gQ=="), 4096);
    EXPECT_EQ(exchangedBefore(secret.serverKey).toBase64(), QByteArray("6rriTRBi23WpRR/wtup+mMhUZUn/dB5nLTJRsjl95G4="));
    // The client's proof is its key, hidden by the signature: what it shows has to be what is stored.
    QByteArray key = QByteArray::fromBase64("dHzbZapWIk4jUhN+Ute9ytag9zjfMHgsqmmiz7AndVQ=");
    const QByteArray signature = exchangedBefore(secret.storedKey);
    for (qsizetype i = 0; i < key.size(); ++i) {
        key[i] = static_cast<char>(key[i] ^ signature[i]);
    }
    EXPECT_EQ(QCryptographicHash::hash(key, QCryptographicHash::Sha256), secret.storedKey);
}

TEST(ScramSecretTest, HasTheFormThatTheServerTakes)
{
    const QString verifier = scramVerifier(QStringLiteral("pencil"), QByteArray::fromBase64("W22ZaJ0SNY7soEsUEjb6gQ=="));
    EXPECT_TRUE(verifier.startsWith(QStringLiteral("SCRAM-SHA-256$4096:W22ZaJ0SNY7soEsUEjb6gQ==$"))) << verifier.toStdString();
    EXPECT_EQ(verifier.section(QLatin1Char('$'), 2).count(QLatin1Char(':')), 1);
}

}  // namespace chalk::store
