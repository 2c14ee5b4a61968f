#include "ui/week/slot_menu.h"

#include "ui/floor/session_menu.h"

#include <QAction>
#include <QCoreApplication>
#include <QMenu>

namespace chalk::ui::week {

namespace {

QString slotMenuText(const char* text)
{
    return QCoreApplication::translate("SlotMenu", text);
}

void addMember(QMenu& menu, const WeekDesk& desk, const BlockMember& member, const common::Clock& clock, const SlotActs& acts)
{
    QMenu* own = menu.addMenu(QStringLiteral("%1").arg(member.name));
    if (acts.openClient) {
        own->addAction(slotMenuText("&Open the board"), &menu, [member, acts] { acts.openClient(member); });
    }
    if (member.wish) {
        own->addAction(slotMenuText("Mo&ve alone"), &menu, [member, acts] { acts.move({*member.wish}, member.firstName); });
    }
    own->addSeparator();
    if (member.isProposed || member.booking.isNone()) {
        own->addAction(slotMenuText("&Drop this proposal"), &menu, [member, acts] { acts.takeAway({member}); });
        return;
    }
    own->addAction(slotMenuText("&Copy the week as text"), &menu, [member, acts] { acts.copyWeek(member); });
    own->addAction(slotMenuText("The ca&lendar …"), &menu, [member, acts] { acts.saveCalendar(member); });
    own->addSeparator();
    if (const auto session = sessionOf(desk, member)) {
        floor::RunSlot slot;
        slot.sessions = {*session};
        slot.firstNames = {member.firstName};
        floor::fillSessionMenu(*own, slot, clock.today(), clock.minuteOfDay(), [member, acts](const sessions::Session&, sessions::SessionState state) { acts.setState(member, state); });
    }
}

}  // namespace

std::optional<sessions::Session> sessionOf(const WeekDesk& desk, const BlockMember& member)
{
    for (const chalk::week::ClientOfWeek& client : desk.facts().clients) {
        for (const chalk::week::BookedSession& booked : client.sessions) {
            if (!member.booking.isNone() && booked.session.id == member.booking) {
                return booked.session;
            }
        }
    }
    return std::nullopt;
}

void fillSlotMenu(QMenu& menu, const WeekDesk& desk, const WeekBlock& block, const common::Clock& clock, const SlotActs& acts)
{
    for (const BlockMember& member : block.members) {
        addMember(menu, desk, member, clock, acts);
    }
    menu.addSeparator();
    if (block.state == BlockState::Proposed) {
        menu.addAction(slotMenuText("&Keep this one"), &menu, acts.keep);
    }
    menu.addAction(slotMenuText("&Add a client\tA"), &menu, acts.add);
    const Wishes wishes = block.wishes();
    QAction* lock = menu.addAction(block.isLocked ? slotMenuText("Un&lock\tL") : slotMenuText("&Lock\tL"), &menu, acts.lock);
    QAction* move = menu.addAction(slotMenuText("&Move\tM"), &menu, [wishes, acts] { acts.move(wishes, {}); });
    lock->setEnabled(!wishes.empty());
    move->setEnabled(!wishes.empty() && !block.isLocked);
    menu.addAction(slotMenuText("&Take away\tDel"), &menu, [members = block.members, acts] { acts.takeAway(members); });
    menu.addSeparator();
    if (acts.openFloor) {
        menu.addAction(slotMenuText("Open on the &floor"), &menu, acts.openFloor);
    }
    if (acts.printGroup) {
        menu.addAction(slotMenuText("&Group sheet"), &menu, acts.printGroup);
    }
}

}  // namespace chalk::ui::week
