#pragma once

#include <QByteArray>
#include <QString>

namespace chalk::store {

/// What a server keeps of a password for SCRAM-SHA-256, so that the password itself never travels nor stands in a log: the keys of RFC 5802,
/// section 3, with SHA-256 as in RFC 7677.
struct ScramSecret {
    QByteArray storedKey;
    QByteArray serverKey;
};

/// `password` is plain ASCII, which SASLprep (RFC 4013) leaves as it is. `iterations` is 4096 or more.
[[nodiscard]] ScramSecret scramSecretOf(const QString& password, const QByteArray& salt, int iterations);

/// The form in which PostgreSQL takes it in place of a password: `SCRAM-SHA-256$4096:SALT$STORED:SERVER`, each in base 64.
[[nodiscard]] QString scramVerifier(const QString& password, const QByteArray& salt);

}  // namespace chalk::store
