#pragma once

#include "core/store/server_target.h"

#include <QSqlDatabase>
#include <QString>

namespace chalk::store {

/// Tells a connection that is not open yet where to go, as whom, and for how long to wait for a server that does not answer.
void connectAs(QSqlDatabase& database, const ServerTarget& target, const QString& password);

}  // namespace chalk::store
