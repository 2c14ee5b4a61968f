#pragma once

#include "ui/shell/find_provider.h"

#include <optional>
#include <span>
#include <vector>

namespace chalk::ui::shell {

/// The most results that are shown under one heading.
inline constexpr int kMostPerGroup = 6;

/// What a query finds, best first and by heading: the heading of the best result comes first. Results of one score keep the
/// order of their providers.
[[nodiscard]] std::vector<FindItem> rankedItems(std::span<const FindProvider* const> providers, const QString& query);

/// The name that was probably meant by a query that found nothing.
[[nodiscard]] std::optional<QString> meantName(std::span<const FindProvider* const> providers, const QString& query);

}  // namespace chalk::ui::shell
