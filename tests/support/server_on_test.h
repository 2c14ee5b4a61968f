#pragma once

#include <QString>

namespace chalk::test {

/// The URL of the server that the tests are given by tests/support/with_postgresql; empty where there is none. Its password is in PGPASSFILE.
[[nodiscard]] QString serverOnTest();

/// A database of its own on that server, which goes away with this.
class DatabaseOnServer {
public:
    enum class Holding { Nothing, EmptyStudio };

    explicit DatabaseOnServer(Holding holding);
    ~DatabaseOnServer();
    DatabaseOnServer(const DatabaseOnServer&) = delete;
    DatabaseOnServer& operator=(const DatabaseOnServer&) = delete;

    [[nodiscard]] QString url() const;
    /// As another login than the server's own.
    [[nodiscard]] QString urlAs(const QString& login, const QString& password) const;

private:
    QString m_name;
};

/// Runs a statement as who runs the server, in the database of `url`; throws what goes wrong.
void runOnServer(const QString& url, const QString& sql);

}  // namespace chalk::test
