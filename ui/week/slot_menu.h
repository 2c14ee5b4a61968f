#pragma once

#include "ui/week/week_desk.h"

#include <functional>

class QMenu;

namespace chalk::ui::week {

/// What can be done with a block; each is called with what was chosen.
/// An act that is empty is not on offer.
struct SlotActs {
    std::function<void()> add;
    std::function<void()> keep;
    std::function<void()> lock;
    std::function<void(const Wishes&, const QString& names)> move;
    std::function<void(const std::vector<BlockMember>&)> takeAway;
    std::function<void(const BlockMember&, sessions::SessionState)> setState;
    std::function<void(const BlockMember&)> openClient;
    std::function<void()> openFloor;
    std::function<void()> printGroup;
    std::function<void(const BlockMember&)> saveCalendar;
    std::function<void(const BlockMember&)> copyWeek;
};

/// Fills a menu with what can be done with a block as a whole and with each client in it.
void fillSlotMenu(QMenu& menu, const WeekDesk& desk, const WeekBlock& block, const common::Clock& clock, const SlotActs& acts);

/// The session on file of a member; nothing where it is not booked.
[[nodiscard]] std::optional<sessions::Session> sessionOf(const WeekDesk& desk, const BlockMember& member);

}  // namespace chalk::ui::week
