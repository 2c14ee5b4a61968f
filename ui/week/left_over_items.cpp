#include "ui/week/left_over_items.h"

#include "core/week/contradictions.h"
#include "core/week/left_over.h"
#include "core/week/replan.h"
#include "core/week/ways_out.h"
#include "ui/common/booking_words.h"
#include "ui/common/formats.h"
#include "ui/week/week_words.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>

namespace chalk::ui::week {

namespace {

using chalk::week::Contradiction;
using chalk::week::ContradictionKind;
using chalk::week::LeftOver;
using chalk::week::MoveKind;
using chalk::week::PlanFault;
using chalk::week::SessionMove;
using chalk::week::Slot;
using chalk::week::WayKind;
using chalk::week::WayOut;
using chalk::week::WishOrigin;

QString itemText(const char* text)
{
    return QCoreApplication::translate("WeekTray", text);
}

class ItemMaker {
public:
    ItemMaker(const WeekInput& input, const WeekScene& scene, ItemDetail detail) : m_input(input), m_scene(scene), m_isHelping(detail == ItemDetail::WhatHelps)
    {
        if (m_isHelping) {
            m_contradictions = contradictionsOf(input.week.problem);
        }
    }

    std::vector<LeftOverItem> make()
    {
        for (const SessionMove& move : movesBetween(m_input.week.booked, m_input.plan)) {
            if (move.kind() != MoveKind::Placed) {
                addChange(move);
            }
        }
        for (const PlanFault& fault : m_scene.faults) {
            addConflict(fault);
        }
        for (const LeftOver& leftOver : allLeftOver(m_input.week.problem, m_input.plan)) {
            addLeftOver(leftOver);
        }
        for (const chalk::week::NoProposal& one : m_input.week.notProposed) {
            addNotProposed(one);
        }
        for (const chalk::week::ClientOfWeek& client : m_input.facts.clients) {
            if (client.quota) {
                addQuota(client);
            }
        }
        return std::move(m_items);
    }

private:
    [[nodiscard]] QString slotText(const Slot& slot) const
    {
        return itemText("%1 with %2").arg(common::weekTimeText(slot.start), m_names.coaches.at(slot.coach));
    }

    [[nodiscard]] common::SpokenSlot spoken(const Slot& slot) const
    {
        return {m_input.facts.monday + slot.start / chalk::week::kDayMinutes, slot.start % chalk::week::kDayMinutes, m_names.coaches.at(slot.coach)};
    }

    void addChange(const SessionMove& move)
    {
        LeftOverItem item;
        item.isChange = true;
        item.client = m_input.week.origins[move.session].client;
        item.name = nameOf(move.session);
        item.icon = QStringLiteral("send");
        item.signal = common::Signal::Info;
        item.which = move.to ? itemText("moves") : itemText("loses its place");
        item.reason = move.to ? itemText("From %1 to %2.").arg(slotText(*move.from), slotText(*move.to)) : itemText("Was %1.").arg(slotText(*move.from));
        item.reason += QLatin1Char(' ') + itemText("Has to be told.");
        item.kind = OfferKind::CopyWords;
        item.offer = itemText("Copy the words to send");
        item.words = common::changeMessage(firstNameOf(m_input.facts, m_input.week, move.session), spoken(*move.from), move.to ? std::optional(spoken(*move.to)) : std::nullopt);
        m_items.push_back(std::move(item));
    }

    [[nodiscard]] QString nameOf(std::size_t wish) const
    {
        return common::qstring(m_input.facts.clients[m_input.week.problem.sessions[wish].client].client.name);
    }

    /// The session of a fault that is the least way from a place where it breaks nothing.
    [[nodiscard]] std::optional<LeftOver> wayOut(const PlanFault& fault) const
    {
        std::optional<LeftOver> best;
        int least = 0;
        for (const std::size_t wish : fault.sessions) {
            if (m_input.week.problem.sessions[wish].isLocked) {
                continue;
            }
            LeftOver one = leftOverOf(m_input.week.problem, m_input.plan, wish);
            if (!one.nearestFree) {
                continue;
            }
            const int away = minutesFromWanted(m_input.week.problem, wish, *one.nearestFree);
            if (!best || away < least) {
                least = away;
                best = std::move(one);
            }
        }
        return best;
    }

    /// Locked sessions alone do not move, whatever rule they break.
    [[nodiscard]] bool canMend(const PlanFault& fault) const
    {
        return std::any_of(fault.sessions.begin(), fault.sessions.end(), [this](std::size_t wish) { return !m_input.week.problem.sessions[wish].isLocked; });
    }

    void addConflict(const PlanFault& fault)
    {
        LeftOverItem item;
        item.isConflict = true;
        item.icon = QStringLiteral("warning");
        item.signal = common::Signal::Pain;
        item.reason = faultText(fault, m_input.facts, m_input.week);
        QStringList who;
        for (const std::size_t wish : fault.sessions) {
            who.append(firstNameOf(m_input.facts, m_input.week, wish));
        }
        who.removeDuplicates();
        item.name = who.join(QStringLiteral(", "));
        item.which = common::weekTimeText(fault.from);
        if (!m_isHelping) {
            item.offer = itemText("Looking for what would help …");
        } else if (const auto way = wayOut(fault)) {
            item.wish = way->session;
            item.client = m_input.week.origins[way->session].client;
            item.kind = OfferKind::Place;
            item.slot = way->nearestFree;
            item.offer = itemText("Move %1 to %2").arg(firstNameOf(m_input.facts, m_input.week, way->session), common::weekTimeText(way->nearestFree->start));
        } else if (canMend(fault)) {
            item.kind = OfferKind::Mend;
            item.offer = itemText("See what would have to move");
        }
        m_items.push_back(std::move(item));
    }

    [[nodiscard]] int sessionsOf(base::ClientId client) const
    {
        const auto& clients = m_input.facts.clients;
        const auto at = std::find_if(clients.begin(), clients.end(), [client](const chalk::week::ClientOfWeek& one) { return one.client.id == client; });
        return at == clients.end() ? 1 : at->sessionsWanted();
    }

    void addLeftOver(const LeftOver& leftOver)
    {
        const WishOrigin& origin = m_input.week.origins[leftOver.session];
        LeftOverItem item;
        item.wish = leftOver.session;
        item.client = origin.client;
        item.name = nameOf(leftOver.session);
        item.which = numberOfText(origin.number, std::max(origin.number, sessionsOf(origin.client)));
        item.icon = iconOf(leftOver);
        item.signal = leftOver.free > 0 ? common::Signal::Info : common::Signal::Warn;
        if (const Contradiction* found = contradictionOf(leftOver.session); found != nullptr && leftOver.free == 0) {
            item.reason = common::sentenceFor(*found, m_input.week.problem, m_names);
        } else {
            item.reason = common::whyLeftOver(leftOver, m_input.week.problem, m_names);
        }
        addOffer(item, leftOver);
        m_items.push_back(std::move(item));
    }

    /// What no plan can keep about a session, or about its client.
    [[nodiscard]] const Contradiction* contradictionOf(std::size_t wish) const
    {
        const std::size_t client = m_input.week.problem.sessions[wish].client;
        const auto at = std::find_if(m_contradictions.begin(), m_contradictions.end(), [&](const Contradiction& one) {
            return one.kind > ContradictionKind::LockedAgainstRule && one.session.value_or(wish) == wish && one.client.value_or(client) == client;
        });
        return at == m_contradictions.end() ? nullptr : &*at;
    }

    void addOffer(LeftOverItem& item, const LeftOver& leftOver)
    {
        WayOut way{WayKind::FitsNow, leftOver.nearestFree};
        if (!leftOver.nearestFree && !m_isHelping) {
            item.offer = itemText("Looking for what would help …");
            return;
        }
        if (!leftOver.nearestFree) {
            std::vector<WayOut> ways;
            if (m_waysLeft-- > 0) {
                ways = waysOut(m_input.week.problem, m_input.plan, leftOver.session);
            }
            auto best = std::find_if(ways.begin(), ways.end(), [](const WayOut& one) { return one.kind != WayKind::OneFewer; });
            const bool isBooked = !m_input.week.origins[leftOver.session].booked.isNone();
            if (best == ways.end() && !isBooked) {
                best = ways.begin();
            }
            if (best == ways.end()) {
                item.kind = OfferKind::OpenHours;
                item.offer = itemText("See the hours");
                return;
            }
            way = *best;
        }
        item.kind = kindOf(way.kind);
        item.slot = way.slot;
        item.other = way.moved;
        item.otherSlot = way.movedTo;
        item.offer = way.kind == WayKind::OneFewer ? fewerText(sessionsOf(item.client) - 1)
                                                   : common::offerText(way, m_input.week.problem, leftOver.session, m_names);
    }

    /// What is past counts too, unlike in the words of the planner.
    static QString fewerText(int left)
    {
        return left == 0 ? itemText("Leave out this week") : itemText("Leave at %1 this week").arg(left);
    }

    static OfferKind kindOf(WayKind way)
    {
        switch (way) {
        case WayKind::FitsNow:
            return OfferKind::Place;
        case WayKind::MoveAnother:
            return OfferKind::Rearrange;
        case WayKind::MoreUnits:
        case WayKind::LargerCapacity:
            return OfferKind::EditHours;
        case WayKind::WiderHours:
        case WayKind::OtherCoach:
        case WayKind::ShorterSession:
        case WayKind::LargerGroup:
            break;
        case WayKind::OneFewer:
            return OfferKind::OneFewer;
        }
        return OfferKind::OpenHours;
    }

    void addNotProposed(const chalk::week::NoProposal& one)
    {
        const auto& clients = m_input.facts.clients;
        const auto at = std::find_if(clients.begin(), clients.end(), [&one](const chalk::week::ClientOfWeek& client) { return client.client.id == one.client; });
        if (at == clients.end()) {
            return;
        }
        LeftOverItem item;
        item.client = one.client;
        item.name = common::qstring(at->client.name);
        item.which = one.sessions == 1 ? itemText("1 session") : itemText("%1 sessions").arg(one.sessions);
        switch (one.reason) {
        case chalk::week::NoProposalReason::AwaitsClearance:
            item.icon = QStringLiteral("clearance");
            item.signal = common::Signal::Pain;
            item.reason = itemText("Waits for clearance.");
            item.kind = OfferKind::OpenHealth;
            item.offer = itemText("Record the answer");
            break;
        case chalk::week::NoProposalReason::AwayAllWeek:
            item.icon = QStringLiteral("closed");
            item.signal = common::Signal::Info;
            item.reason = itemText("Away until %1.").arg(at->client.awayUntil ? common::dayText(*at->client.awayUntil) : QString());
            break;
        }
        m_items.push_back(std::move(item));
    }

    void addQuota(const chalk::week::ClientOfWeek& client)
    {
        const int usual = client.usualSessions();
        LeftOverItem item;
        item.client = client.client.id;
        item.name = common::qstring(client.client.name);
        item.which = *client.quota == 1 ? itemText("1 session") : itemText("%1 sessions").arg(*client.quota);
        item.icon = QStringLiteral("closed");
        item.signal = common::Signal::Info;
        item.reason = itemText("Only this week; %1 as a rule.").arg(usual);
        item.kind = OfferKind::UsualNumber;
        item.offer = itemText("Back to %1").arg(usual);
        m_items.push_back(std::move(item));
    }

    const WeekInput& m_input;
    const WeekScene& m_scene;
    common::WeekNames m_names = namesOf(m_input.facts, m_input.week);
    bool m_isHelping;
    int m_waysLeft = kMostWayOuts;
    std::vector<Contradiction> m_contradictions;
    std::vector<LeftOverItem> m_items;
};

}  // namespace

std::vector<LeftOverItem> leftOverItems(const WeekInput& input, const WeekScene& scene, ItemDetail detail)
{
    return ItemMaker(input, scene, detail).make();
}

}  // namespace chalk::ui::week
