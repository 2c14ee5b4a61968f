#include "ui/week/week_scene.h"

#include "ui/common/formats.h"
#include "ui/week/rack_use.h"
#include "ui/week/week_hours.h"

#include <algorithm>
#include <map>
#include <tuple>

namespace chalk::ui::week {

namespace {

using chalk::week::kDayMinutes;
using chalk::week::kWeekDays;
using sessions::SessionState;

class BlockMaker {
public:
    explicit BlockMaker(const WeekInput& input) : m_input(input)
    {
        for (std::size_t i = 0; i < input.week.origins.size(); ++i) {
            if (!input.week.origins[i].booked.isNone()) {
                m_wishOf[input.week.origins[i].booked] = i;
            }
        }
    }

    std::vector<WeekBlock> make()
    {
        for (const chalk::week::ClientOfWeek& client : m_input.facts.clients) {
            for (const chalk::week::BookedSession& booked : client.sessions) {
                if (m_wishOf.count(booked.session.id) == 0) {
                    addAsBooked(client, booked.session);
                }
            }
        }
        for (std::size_t i = 0; i < m_input.plan.size(); ++i) {
            if (m_input.plan[i]) {
                addPlanned(i, *m_input.plan[i]);
            }
        }
        std::vector<WeekBlock> blocks;
        for (auto& [place, block] : m_blocks) {
            finish(block);
            blocks.push_back(std::move(block));
        }
        return blocks;
    }

private:
    using BlockKey = std::tuple<int, int, std::size_t, int>;  ///< day, start, coach, end

    WeekBlock& blockAt(int start, std::size_t coach, int minutes)
    {
        const int day = start / kDayMinutes;
        const int from = start % kDayMinutes;
        WeekBlock& block = m_blocks[{day, from, coach, from + minutes}];
        block.day = day;
        block.coach = coach;
        block.from = from;
        block.to = std::min(kDayMinutes, from + minutes);
        return block;
    }

    static BlockMember memberOf(const clients::Client& client)
    {
        BlockMember member;
        member.client = client.id;
        member.name = common::qstring(client.name);
        member.firstName = member.name.section(QLatin1Char(' '), 0, 0);
        return member;
    }

    /// A session that no plan can change: it is over, or it does not take place.
    void addAsBooked(const chalk::week::ClientOfWeek& client, const sessions::Session& session)
    {
        const int start = (session.date - m_input.facts.monday) * kDayMinutes + session.startMinute;
        const auto& coaches = m_input.facts.coaches;
        const auto coach = std::find_if(coaches.begin(), coaches.end(), [&](const chalk::week::CoachOfWeek& one) { return one.coach.id == session.coach; });
        if (start < 0 || start >= kWeekDays * kDayMinutes || coach == coaches.end() || session.state == SessionState::Withdrawn ||
            session.state == SessionState::CancelledInTime) {
            return;
        }
        BlockMember member = memberOf(client.client);
        member.booking = session.id;
        member.state = session.state;
        member.kind = session.kind;
        add(start, static_cast<std::size_t>(coach - coaches.begin()), session.minutes, std::move(member), session.placeCapacity);
    }

    void addPlanned(std::size_t wish, const chalk::week::Slot& slot)
    {
        const chalk::week::SessionWish& session = m_input.week.problem.sessions[wish];
        const chalk::week::WishOrigin& origin = m_input.week.origins[wish];
        const chalk::week::ClientOfWeek& client = m_input.facts.clients[session.client];
        BlockMember member = memberOf(client.client);
        member.booking = origin.booked;
        member.wish = wish;
        member.kind = origin.kind;
        member.isLocked = session.isLocked;
        member.isProposed = m_input.week.booked[wish] != slot;
        for (const chalk::week::BookedSession& booked : client.sessions) {
            member.state = booked.session.id == origin.booked ? booked.session.state : member.state;
        }
        add(slot.start, slot.coach, session.minutes, std::move(member), placeOf(m_input.facts, m_input.week, wish, slot).placeCapacity);
    }

    void add(int start, std::size_t coach, int minutes, BlockMember member, int capacity)
    {
        WeekBlock& block = blockAt(start, coach, minutes);
        block.isLocked = block.isLocked || member.isLocked;
        block.places = block.members.empty() ? capacity : std::max(block.places, capacity);
        block.members.push_back(std::move(member));
    }

    void finish(WeekBlock& block) const
    {
        block.places = std::max(block.places, block.taken());
        const bool isOver = block.start() + block.to - block.from <= m_input.facts.nowMinute;
        const bool isSettled = std::all_of(block.members.begin(), block.members.end(), [](const BlockMember& member) { return member.state != SessionState::Planned && member.state != SessionState::Printed; });
        const bool isProposed = std::any_of(block.members.begin(), block.members.end(), [](const BlockMember& member) { return member.isProposed; });
        block.state = isProposed                                          ? BlockState::Proposed
                      : isOver || isSettled                               ? BlockState::Done
                      : block.places > 1 && block.taken() >= block.places ? BlockState::Full
                                                                          : BlockState::Free;
    }

    const WeekInput& m_input;
    std::map<base::SessionId, std::size_t> m_wishOf;
    std::map<BlockKey, WeekBlock> m_blocks;
};

/// Gives blocks of one coach that overlap a column each.
void setColumns(std::vector<WeekBlock>& blocks)
{
    for (std::size_t i = 0; i < blocks.size(); ++i) {
        std::vector<std::size_t> chain{i};
        if (blocks[i].columns > 1) {
            continue;
        }
        int end = blocks[i].to;
        int columns = 1;
        for (std::size_t k = i + 1; k < blocks.size() && blocks[k].day == blocks[i].day; ++k) {
            if (blocks[k].coach != blocks[i].coach || blocks[k].from >= end) {
                continue;
            }
            const auto isFree = [&](int column) {
                return std::none_of(chain.begin(), chain.end(), [&](std::size_t other) { return blocks[other].column == column && blocks[k].from < blocks[other].to; });
            };
            while (!isFree(blocks[k].column)) {
                ++blocks[k].column;
            }
            columns = std::max(columns, blocks[k].column + 1);
            end = std::max(end, blocks[k].to);
            chain.push_back(k);
        }
        for (const std::size_t one : chain) {
            blocks[one].columns = columns;
        }
    }
}

void markNext(WeekScene& scene)
{
    if (!scene.now) {
        return;
    }
    std::optional<int> next;
    for (WeekBlock& block : scene.blocks) {
        const bool isToday = block.day == *scene.now / kDayMinutes;
        const bool isAhead = block.state != BlockState::Done && block.taken() > 0 && block.to > *scene.now % kDayMinutes;
        if (isToday && isAhead && (!next || block.from == *next)) {
            next = block.from;
            block.isNext = true;
        }
    }
}

void markFaults(WeekScene& scene)
{
    for (WeekBlock& block : scene.blocks) {
        for (std::size_t i = 0; i < scene.faults.size(); ++i) {
            const std::vector<std::size_t>& sessions = scene.faults[i].sessions;
            const bool isIn = std::any_of(block.members.begin(), block.members.end(), [&](const BlockMember& member) { return member.wish && std::find(sessions.begin(), sessions.end(), *member.wish) != sessions.end(); });
            if (isIn) {
                block.faults.push_back(i);
                block.state = BlockState::Conflict;
            }
        }
    }
}

}  // namespace

bool BlockMember::takesPlace() const
{
    return state == SessionState::Planned || state == SessionState::Printed || state == SessionState::Recorded;
}

int WeekBlock::taken() const
{
    return static_cast<int>(std::count_if(members.begin(), members.end(), [](const BlockMember& member) { return member.takesPlace(); }));
}

std::vector<std::size_t> WeekBlock::wishes() const
{
    std::vector<std::size_t> indices;
    for (const BlockMember& member : members) {
        if (member.wish) {
            indices.push_back(*member.wish);
        }
    }
    return indices;
}

std::optional<std::size_t> WeekScene::blockOf(std::size_t wish) const
{
    for (std::size_t i = 0; i < blocks.size(); ++i) {
        const auto& members = blocks[i].members;
        if (std::any_of(members.begin(), members.end(), [wish](const BlockMember& member) { return member.wish == wish; })) {
            return i;
        }
    }
    return std::nullopt;
}

WeekScene sceneOf(const WeekInput& input)
{
    WeekScene scene;
    scene.monday = input.facts.monday;
    for (const chalk::week::CoachOfWeek& coach : input.facts.coaches) {
        scene.coaches.push_back(common::qstring(coach.coach.name));
    }
    if (input.facts.nowMinute >= 0 && input.facts.nowMinute < kWeekDays * kDayMinutes) {
        scene.now = input.facts.nowMinute;
    }
    scene.blocks = BlockMaker(input).make();
    scene.faults = faultsOf(input.week.problem, input.plan);
    setColumns(scene.blocks);
    markFaults(scene);
    markNext(scene);
    addHours(scene, input.facts);
    addHatched(scene, input.facts);
    addRackUse(scene, input);
    return scene;
}

}  // namespace chalk::ui::week
