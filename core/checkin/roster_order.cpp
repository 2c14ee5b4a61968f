#include "core/checkin/roster_order.h"

namespace chalk::checkin {

namespace {

int groupOf(const RosterPosition& position)
{
    return position.isToday ? 0 : position.isFlagged ? 1 : 2;
}

/// Sooner first, nothing last.
std::weak_ordering compareNext(const RosterPosition& a, const RosterPosition& b)
{
    if (a.next.has_value() != b.next.has_value()) {
        return a.next ? std::weak_ordering::less : std::weak_ordering::greater;
    }
    return a.next ? *a.next <=> *b.next : std::strong_ordering::equal;
}

}  // namespace

std::weak_ordering compare(RosterOrder order, const RosterPosition& a, const RosterPosition& b)
{
    switch (order) {
    case RosterOrder::TodayThenFlagged:
        if (const auto groups = groupOf(a) <=> groupOf(b); groups != 0) {
            return groups;
        }
        return compareNext(a, b);
    case RosterOrder::NextSession:
        return compareNext(a, b);
    case RosterOrder::Name:
        return std::weak_ordering::equivalent;
    case RosterOrder::LongestSinceSession:
        return a.lastCame <=> b.lastCame;  // nothing stands before any day
    }
    return std::weak_ordering::equivalent;
}

}  // namespace chalk::checkin
