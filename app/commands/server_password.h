#pragma once

#include "app/commands/passphrase_input.h"
#include "core/store/access.h"
#include "core/store/server_target.h"

namespace chalk::app {

/// Does work that opens a studio. Where its server wants a password, and none came with the URL, it is asked for on the terminal, and the work is done
/// with it; where there is no terminal, the failure says where else a password is taken from.
template <class Work>
auto withPassword(const store::Access& given, Work work) -> decltype(work(given))
{
    store::Access access = store::withoutPasswordInTarget(given);
    auto outcome = work(access);
    if (outcome || !access.password.isEmpty() || !store::isAboutPassword(outcome.error())) {
        return outcome;
    }
    if (const auto answer = askPassphrase(QStringLiteral("Password at %1").arg(access.target))) {
        access.password = *answer;
        return work(access);
    }
    outcome.error().message += QStringLiteral("; write it into ~/.pgpass, or into a file that PGPASSFILE names");
    return outcome;
}

}  // namespace chalk::app
