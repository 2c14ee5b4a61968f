#pragma once

#include "core/plateau/logged_exposure.h"

#include <QByteArray>

#include <optional>
#include <vector>

namespace chalk::store {

// How a lift's log, as the plateau detector takes it, stands in the database: one entry after the other, numbers little-endian.
// It is read for everybody at once, which JSON would be too slow for.

/// Appends an exposure; its variation is not written, it is told by the swaps before.
void addExposure(QByteArray& log, const plateau::LoggedExposure& exposure);
/// Appends that the exercise was changed: what follows is another variation.
void addSwap(QByteArray& log);
/// The log again, as checkin::logOf makes it; nothing where it is damaged.
[[nodiscard]] std::optional<std::vector<plateau::LoggedExposure>> loggedIn(const QByteArray& log);

}  // namespace chalk::store
