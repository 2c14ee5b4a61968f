#pragma once

#include "core/store/outbox.h"
#include "core/store/role.h"
#include "ui/common/banner.h"

namespace chalk::ui::common {

/// `owner`, `coach`, `front desk`.
[[nodiscard]] QString roleName(store::Role role);

/// What is said across the page while a server does not answer: since when, what is kept and what becomes of it.
[[nodiscard]] BannerMessage lostConnection(int sinceMinute, const std::vector<store::OutboxItem>& waiting);
/// The same of what an earlier run left, while it could not be sent; nothing where nothing waits.
[[nodiscard]] std::optional<BannerMessage> stillWaiting(const std::vector<store::OutboxItem>& waiting);

}  // namespace chalk::ui::common
