#pragma once

#include "ui/board/client_case.h"

#include <QString>
#include <QStringList>

namespace chalk::ui::board {

/// `Cleared by the doctor`.
[[nodiscard]] QString clearanceTitleOf(const clients::Clearance& clearance);
/// What is on file about it, a sentence each.
[[nodiscard]] QStringList clearanceLinesOf(const clients::Clearance& clearance);
/// How a caution touches the lifts of the plan, a sentence each; empty where it does not.
[[nodiscard]] QStringList cautionEffectsOf(const clients::Caution& caution, const ClientCase& client);
/// `Until 12 Feb`; empty where it has no end.
[[nodiscard]] QString cautionEndOf(const clients::Caution& caution);

}  // namespace chalk::ui::board
