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
    Rearrange,   ///< proposes `slot` for it, and `otherSlot` for `other`
    OpenHealth,  ///< to the answer that is awaited
    OpenHours,   ///< to the client's hours and wishes
    EditHours,   ///< to the studio's hours, stations and coaches
    OneFewer,    ///< the client comes once less in this week
    UsualNumber, ///< the client comes as often as usual again
    Mend,        ///< looks for what would have to move
    CopyWords    ///< `words` for somebody who has to be told
};

/// Something in the tray: a booking that a proposal changes, a conflict, or a session that has no place.
struct LeftOverItem {
    bool isConflict = false;
    bool isChange = false;            ///< somebody has to be told
    std::optional<std::size_t> wish;  ///< index in the case: can be put on the grid
    base::ClientId client;
    QString name;
    QString which;   ///< `2nd of 3`, or when
    QString icon;
    common::Signal signal = common::Signal::Warn;
    QString reason;
    OfferKind kind = OfferKind::None;
    QString offer;   ///< `Offer Wed 17:00 with Ines`
    std::optional<chalk::week::Slot> slot;
    std::optional<std::size_t> other;
    std::optional<chalk::week::Slot> otherSlot;
    QString words;   ///< to send, of a change

    bool operator==(const LeftOverItem&) const = default;
};

inline constexpr int kMostWayOuts = 8;  ///< items for which a way out is looked for; it takes some milliseconds each

/// How much is worked out about items.
enum class ItemDetail : std::uint8_t {
    WhatIsLeft,  ///< who and why, within a moment
    WhatHelps    ///< and what would help: for a thread beside the window's
};

/// First who has to be told of what is proposed; then conflicts, in the order of the scene's faults, each with one session that could go elsewhere;
/// then what is left over, by client; then those for whom nothing is proposed,
/// and those who come more or less often than usual in this week.
[[nodiscard]] std::vector<LeftOverItem> leftOverItems(const WeekInput& input, const WeekScene& scene, ItemDetail detail = ItemDetail::WhatHelps);

}  // namespace chalk::ui::week
