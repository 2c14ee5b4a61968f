#include "ui/week/left_over_items.h"

#include "core/week/left_over.h"
#include "core/week/ways_out.h"
#include "ui/common/formats.h"
#include "ui/week/week_words.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>

namespace chalk::ui::week {

namespace {

using chalk::week::LeftOver;
using chalk::week::PlanFault;
using chalk::week::WayKind;
using chalk::week::WayOut;
using chalk::week::WishOrigin;

QString itemText(const char* text)
{
    return QCoreApplication::translate("WeekTray", text);
}

class ItemMaker {
public:
    ItemMaker(const WeekInput& input, const WeekScene& scene) : m_input(input), m_scene(scene) {}

    std::vector<LeftOverItem> make()
    {
        for (const PlanFault& fault : m_scene.faults) {
            addConflict(fault);
        }
        for (const LeftOver& leftOver : allLeftOver(m_input.week.problem, m_input.plan)) {
            addLeftOver(leftOver);
        }
        for (const chalk::week::NoProposal& one : m_input.week.notProposed) {
            addNotProposed(one);
        }
        return std::move(m_items);
    }

private:
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
        if (const auto way = wayOut(fault)) {
            item.wish = way->session;
            item.client = m_input.week.origins[way->session].client;
            item.kind = OfferKind::Place;
            item.slot = way->nearestFree;
            item.offer = itemText("Move %1 to %2").arg(firstNameOf(m_input.facts, m_input.week, way->session), common::weekTimeText(way->nearestFree->start));
        }
        m_items.push_back(std::move(item));
    }

    [[nodiscard]] int sessionsOf(base::ClientId client) const
    {
        const auto& clients = m_input.facts.clients;
        const auto at = std::find_if(clients.begin(), clients.end(), [client](const chalk::week::ClientOfWeek& one) { return one.client.id == client; });
        return at == clients.end() ? 1 : at->lifts.empty() ? 1 : at->client.sessionsPerWeek;
    }

    void addLeftOver(const LeftOver& leftOver)
    {
        const WishOrigin& origin = m_input.week.origins[leftOver.session];
        LeftOverItem item;
        item.wish = leftOver.session;
        item.client = origin.client;
        item.name = common::qstring(m_input.facts.clients[m_input.week.problem.sessions[leftOver.session].client].client.name);
        item.which = numberOfText(origin.number, std::max(origin.number, sessionsOf(origin.client)));
        item.icon = iconOf(leftOver);
        item.reason = common::whyLeftOver(leftOver, m_input.week.problem, m_names);
        item.signal = leftOver.free > 0 ? common::Signal::Info : common::Signal::Warn;
        addOffer(item, leftOver);
        m_items.push_back(std::move(item));
    }

    void addOffer(LeftOverItem& item, const LeftOver& leftOver)
    {
        WayOut way{WayKind::FitsNow, leftOver.nearestFree};
        if (!leftOver.nearestFree) {
            std::vector<WayOut> ways;
            if (++m_ways <= kMostWayOuts) {
                ways = waysOut(m_input.week.problem, m_input.plan, leftOver.session);
            }
            const auto best = std::find_if(ways.begin(), ways.end(), [](const WayOut& one) { return one.kind != WayKind::OneFewer; });
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
        item.offer = common::offerText(way, m_input.week.problem, leftOver.session, m_names);
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
        case WayKind::OneFewer:
            break;
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

    const WeekInput& m_input;
    const WeekScene& m_scene;
    common::WeekNames m_names = namesOf(m_input.facts, m_input.week);
    int m_ways = 0;
    std::vector<LeftOverItem> m_items;
};

}  // namespace

std::vector<LeftOverItem> leftOverItems(const WeekInput& input, const WeekScene& scene)
{
    return ItemMaker(input, scene).make();
}

}  // namespace chalk::ui::week
