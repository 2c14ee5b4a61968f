#pragma once

#include "core/store/database.h"

#include <QStringList>

#include <string>
#include <vector>

namespace chalk::store {

/// Somebody who signs in at a studio's server.
struct ServerLogin {
    QString name;            ///< of the login
    Role role = Role::Coach;
    std::string coachName;   ///< in whose name they work; empty where nobody was named

    bool operator==(const ServerLogin&) const = default;
};

/// Who may sign in at the server of a studio. Each login is a role of the server's own that belongs to one group of this studio. Giving and
/// taking logins needs the right to make roles, which the server gives (CREATEROLE); an owner without it may look.
class ServerLogins {
public:
    explicit ServerLogins(Database& database) : m_database(database) {}

    /// By name. Who runs the server has every role and is not told.
    [[nodiscard]] Result<std::vector<ServerLogin>> list();
    /// Which logins have the studio open in this program just now, by name; asked of the server, who runs it included.
    [[nodiscard]] Result<QStringList> connected();
    /// Makes a login with a role, for the coach of that name, who is added where there is none; at the front desk without sessions. Refused where the login is on the server
    /// already, where the name of the login or the password is none (a password is 8 or more ASCII characters).
    [[nodiscard]] Result<void> add(const ServerLogin& login, const QString& password);
    /// Takes a login away; what was done by it stays theirs.
    [[nodiscard]] Result<void> remove(const QString& name);

private:
    /// Whether this is a server, and who asks is an owner.
    [[nodiscard]] Result<void> check();
    [[nodiscard]] base::CoachId coachNamed(const std::string& name, Role role);
    void run(const QString& statement);

    Database& m_database;
};

}  // namespace chalk::store
