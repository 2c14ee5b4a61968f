#pragma once

#include "ui/common/theme.h"
#include "ui/week/week_scene.h"

#include <QString>

#include <vector>

namespace chalk::ui::week {

/// What the one offer of an item does.
enum class OfferKind : std::uint8_t {
    None,
    Place,       ///< puts the session on `slot`
    OpenHealth,  ///< to the answer that is awaited
    OpenHours    ///< to the client's free hours
};

/// Something in the tray: a conflict, or a session that has no place.
struct LeftOverItem {
    bool isConflict = false;
    std::optional<std::size_t> wish;  ///< index in the case: can be put on the grid
    base::ClientId client;
    QString name;
    QString which;   ///< `2nd of 3`, or when
    QString icon;
    common::Signal signal = common::Signal::Warn;
    QString reason;
    OfferKind kind = OfferKind::None;
    QString offer;   ///< `Put on Wed 17:00`
    std::optional<chalk::week::Slot> slot;

    bool operator==(const LeftOverItem&) const = default;
};

/// Conflicts first, each with one session that could go elsewhere; then what is left over, by client; then those for whom nothing is proposed.
[[nodiscard]] std::vector<LeftOverItem> leftOverItems(const WeekInput& input, const WeekScene& scene);

}  // namespace chalk::ui::week
