#pragma once

#include "core/exchange/studio_document.h"
#include "core/store/database.h"
#include "tests/support/server_on_test.h"

#include <QString>
#include <QStringList>
#include <QTemporaryDir>

#include <memory>

namespace chalk::test {

/// A studio of two coaches and two clients: Ada with three lifts and some sessions, Bo without any lift, blocked by clearance.
/// Its day is Tuesday 24 November 2026.
[[nodiscard]] exchange::StudioDocument smallStudio();
[[nodiscard]] base::Date smallStudioDay();

/// A studio file in a folder of its own that goes away with this; where the tests are given a server, a database of its own there.
class StudioOnTest {
public:
    explicit StudioOnTest(const exchange::StudioDocument& document = smallStudio());

    [[nodiscard]] store::Database& database() { return *m_database; }
    /// The file's path, or the database's URL.
    [[nodiscard]] QString file() const { return m_server ? m_server->url() : m_folder.filePath(QStringLiteral("studio.chalkrung")); }
    [[nodiscard]] QString folder() const { return m_folder.path(); }
    void close() { m_database.reset(); }
    void open();
    /// Runs a statement and answers its rows as text, one a line.
    QStringList rows(const QString& sql);
    /// From now on nobody looks whether a row refers to something.
    void letReferencesDangle();
    /// Everything in the tables that can be rebuilt from the log.
    [[nodiscard]] QStringList cacheRows();
    /// Throws the caches away and builds them from the log.
    void rebuildCaches();

private:
    QTemporaryDir m_folder;
    std::unique_ptr<DatabaseOnServer> m_server;
    std::unique_ptr<store::Database> m_database;
};

/// The id of the client with that name, of a lift by its pattern; they are there.
[[nodiscard]] base::ClientId clientNamed(store::Database& database, const std::string& name);
[[nodiscard]] base::LiftId liftOf(store::Database& database, base::ClientId client, lifts::Pattern pattern);

/// A fixed moment, for acts in tests.
[[nodiscard]] QString someMoment();

}  // namespace chalk::test
