#include "ui/floor/rest_timers.h"

#include <algorithm>

namespace chalk::ui::floor {

namespace {

using std::chrono::ceil;
using std::chrono::floor;
using std::chrono::milliseconds;
using std::chrono::nanoseconds;
using std::chrono::seconds;

base::Seconds wholeSeconds(seconds length)
{
    return base::Seconds(static_cast<int>(length.count()));
}

bool comesBefore(const Rest& a, const Rest& b)
{
    return a.over != b.over ? a.over > b.over : a.isOver != b.isOver ? a.isOver : a.left < b.left;
}

}  // namespace

double Rest::partLeft() const
{
    return plan.planned.value() > 0 ? static_cast<double>(left.value()) / plan.planned.value() : 0;
}

RestTimers::RestTimers(SteadyNow now) : m_now(std::move(now)) {}

void RestTimers::start(const PlannedRest& plan)
{
    stop(plan.client);
    m_taken.push_back({plan, nanoseconds(0), m_now(), false});
}

bool RestTimers::stop(base::ClientId client)
{
    return std::erase_if(m_taken, [client](const Taken& one) { return one.plan.client == client; }) > 0;
}

bool RestTimers::holdOrGoOn(base::ClientId client)
{
    Taken* taken = find(client);
    if (taken == nullptr) {
        return false;
    }
    if (taken->since) {
        taken->before = elapsed(*taken, m_now());
        taken->since.reset();
    } else {
        taken->since = m_now();
    }
    return true;
}

bool RestTimers::restart(base::ClientId client)
{
    Taken* taken = find(client);
    if (taken == nullptr) {
        return false;
    }
    *taken = {taken->plan, nanoseconds(0), m_now(), false};
    return true;
}

bool RestTimers::has(base::ClientId client) const
{
    return std::any_of(m_taken.begin(), m_taken.end(), [client](const Taken& one) { return one.plan.client == client; });
}

std::vector<Rest> RestTimers::rests() const
{
    const Moment now = m_now();
    std::vector<Rest> rests;
    for (const Taken& one : m_taken) {
        const nanoseconds left = seconds(one.plan.planned.value()) - elapsed(one, now);
        Rest rest{one.plan, {}, {}, left <= nanoseconds(0), !one.since};
        if (rest.isOver) {
            rest.over = wholeSeconds(floor<seconds>(-left));
        } else {
            rest.left = wholeSeconds(ceil<seconds>(left));
        }
        rests.push_back(std::move(rest));
    }
    std::stable_sort(rests.begin(), rests.end(), comesBefore);
    return rests;
}

std::vector<base::ClientId> RestTimers::endedSinceAsked()
{
    const Moment now = m_now();
    std::vector<base::ClientId> ended;
    for (Taken& one : m_taken) {
        if (!one.isEndTold && elapsed(one, now) >= seconds(one.plan.planned.value())) {
            one.isEndTold = true;
            ended.push_back(one.plan.client);
        }
    }
    return ended;
}

std::optional<milliseconds> RestTimers::untilNextChange() const
{
    const Moment now = m_now();
    std::optional<milliseconds> next;
    for (const Taken& one : m_taken) {
        if (one.since) {
            // Planned rests are whole seconds, so that a figure changes with each whole second rested.
            const milliseconds until = ceil<milliseconds>(seconds(1) - elapsed(one, now) % seconds(1));
            next = std::min(next.value_or(until), until);
        }
    }
    return next;
}

RestTimers::Taken* RestTimers::find(base::ClientId client)
{
    const auto at = std::find_if(m_taken.begin(), m_taken.end(), [client](const Taken& one) { return one.plan.client == client; });
    return at == m_taken.end() ? nullptr : &*at;
}

nanoseconds RestTimers::elapsed(const Taken& taken, Moment now)
{
    return taken.since ? taken.before + (now - *taken.since) : taken.before;
}

}  // namespace chalk::ui::floor
