#include "core/store/session_states.h"

#include <QStringList>

namespace chalk::store {

QString statesWhere(bool (*holds)(sessions::SessionState))
{
    QStringList keys;
    for (const sessions::SessionState state : sessions::kSessionStates) {
        if (holds(state)) {
            keys.append(QStringLiteral("'%1'").arg(QLatin1String(sessions::keyOf(state).data())));
        }
    }
    return QStringLiteral("(%1)").arg(keys.join(QStringLiteral(", ")));
}

}  // namespace chalk::store
