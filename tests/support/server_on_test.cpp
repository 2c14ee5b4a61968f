#include "tests/support/server_on_test.h"

#include "core/store/database.h"

#include <QCoreApplication>
#include <QSqlDatabase>
#include <QSqlError>
#include <QSqlQuery>
#include <QUrl>
#include <QUuid>

#include <atomic>
#include <stdexcept>

namespace chalk::test {

namespace {

QString withDatabase(const QString& name)
{
    QUrl url(serverOnTest());
    url.setPath(QLatin1Char('/') + name);
    return url.toString(QUrl::FullyEncoded);
}

/// A name that is new on the server, also beside other programs' tests.
QString freshName()
{
    static std::atomic<int> count = 0;
    return QStringLiteral("test_%1_%2").arg(QCoreApplication::applicationPid()).arg(++count);
}

/// An empty studio to copy: the steps of the schema take longer.
const QString& templateName()
{
    static const QString name = [] {
        const QString fresh = freshName();
        runOnServer(serverOnTest(), QStringLiteral("CREATE DATABASE %1").arg(fresh));
        if (const auto made = store::Database::open(withDatabase(fresh), store::OpenMode::CreateIfMissing); !made) {
            throw std::runtime_error(made.error().message.toStdString());
        }
        return fresh;
    }();
    return name;
}

}  // namespace

QString serverOnTest()
{
    return qEnvironmentVariable("CHALKRUNG_TEST_SERVER");
}

void runOnServer(const QString& target, const QString& sql)
{
    const QString connection = QUuid::createUuid().toString(QUuid::WithoutBraces);
    QString fault;
    {
        const QUrl url(target);
        QSqlDatabase database = QSqlDatabase::addDatabase(QStringLiteral("QPSQL"), connection);
        database.setHostName(url.host());
        database.setPort(url.port());
        database.setUserName(url.userName());
        database.setDatabaseName(url.path().mid(1));
        QSqlQuery query(database);
        if (!database.open() || !(query = QSqlQuery(database)).exec(sql)) {
            fault = sql + QStringLiteral(": ") + (database.isOpen() ? query.lastError() : database.lastError()).text();
        }
    }
    QSqlDatabase::removeDatabase(connection);
    if (!fault.isEmpty()) {
        throw std::runtime_error(fault.toStdString());
    }
}

DatabaseOnServer::DatabaseOnServer(Holding holding) : m_name(freshName())
{
    const QString origin = holding == Holding::EmptyStudio ? templateName() : QStringLiteral("template1");
    // Copied as files (PostgreSQL 15 and later): through the log, which is the usual way, it takes half as long again.
    runOnServer(serverOnTest(), QStringLiteral("CREATE DATABASE %1 TEMPLATE %2 STRATEGY FILE_COPY").arg(m_name, origin));
}

DatabaseOnServer::~DatabaseOnServer()
{
    try {
        runOnServer(serverOnTest(), QStringLiteral("DROP DATABASE %1 WITH (FORCE)").arg(m_name));
    } catch (const std::exception& error) {
        qWarning("%s", error.what());
    }
}

QString DatabaseOnServer::url() const
{
    return withDatabase(m_name);
}

QString DatabaseOnServer::urlAs(const QString& login, const QString& password) const
{
    QUrl url(withDatabase(m_name));
    url.setUserName(login);
    url.setPassword(password);
    return url.toString(QUrl::FullyEncoded);
}

}  // namespace chalk::test
