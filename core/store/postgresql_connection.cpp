#include "core/store/postgresql_connection.h"

namespace chalk::store {

namespace {

// A server that is gone is noticed within seconds; `connect_timeout` holds for each address that a name has. The name tells who is connected
// by this program; one that stands in the URL counts more.
constexpr const char* kPatience = "application_name=chalkrung;connect_timeout=3;tcp_user_timeout=10000;keepalives_idle=10;keepalives_interval=5;keepalives_count=2";

}  // namespace

void connectAs(QSqlDatabase& database, const ServerTarget& target, const QString& password)
{
    database.setHostName(target.host);
    database.setPort(target.port == 0 ? -1 : target.port);
    database.setDatabaseName(target.database);
    database.setUserName(target.login);
    database.setPassword(password);
    database.setConnectOptions((QStringList(QLatin1String(kPatience)) + target.options).join(QLatin1Char(';')));
}

}  // namespace chalk::store
