#include "core/studio/studio_document.h"

#include <algorithm>
#include <set>

namespace chalk::studio {

namespace {

constexpr int kPrintedMinutesAhead = 60;

void slide(std::optional<base::Date>& date, int days)
{
    if (date) {
        date = *date + days;
    }
}

void slideEvent(progression::Event& event, int days)
{
    event.date = event.date + days;
    if (auto* block = std::get_if<progression::Block>(&event.body)) {
        for (progression::BlockWeek& week : block->weeks) {
            week.monday = week.monday + days;
        }
    }
}

void slideLift(DocumentLift& lift, int days)
{
    lift.startedOn = lift.startedOn + days;
    for (DocumentEvent& entry : lift.events) {
        slideEvent(entry.event, days);
        for (progression::Event& version : entry.former) {
            slideEvent(version, days);
        }
    }
}

void slidePlan(direction::ClientPlan& plan, int days)
{
    plan.begunOn = plan.begunOn + days;
    slide(plan.endedOn, days);
    plan.plan.wishes.start = plan.plan.wishes.start + days;
    for (direction::PlanWeek& week : plan.plan.weeks) {
        week.monday = week.monday + days;
    }
}

void slideClosure(week::Closure& closure, int days)
{
    closure.first = closure.first + days;
    closure.last = closure.last + days;
}

void slideClient(DocumentClient& client, int days)
{
    client.client.startedOn = client.client.startedOn + days;
    slide(client.client.awayUntil, days);
    for (clients::Caution& caution : client.cautions) {
        slide(caution.until, days);
    }
    slide(client.clearance.askedOn, days);
    slide(client.clearance.remindOn, days);
    slide(client.clearance.grantedOn, days);
    slide(client.clearance.validUntil, days);
    for (sessions::Session& session : client.sessions) {
        session.date = session.date + days;
    }
    for (DocumentLift& lift : client.lifts) {
        slideLift(lift, days);
    }
    for (DocumentForm& form : client.forms) {
        slideForm(form, days);
    }
    for (DocumentLetter& letter : client.letters) {
        letter.day = letter.day + days;
        slide(letter.validUntil, days);
    }
    for (DocumentDecision& decision : client.decisions) {
        decision.day = decision.day + days;
        decision.nextReview = decision.nextReview + days;
    }
    for (direction::ClientPlan& plan : client.plans) {
        slidePlan(plan, days);
    }
    for (DocumentTest& test : client.tests) {
        test.day = test.day + days;
    }
    std::map<base::Date, int> quotas;
    for (const auto& [monday, sessions] : client.quotas) {
        quotas.emplace(monday + days, sessions);
    }
    client.quotas = std::move(quotas);
}

/// A moment of a studio's life, and what of a client's log lies after it.
class Moment {
public:
    Moment(base::Date day, int minute) : m_day(day), m_minute(minute) {}

    void rewind(DocumentClient& client)
    {
        m_undone.clear();
        for (sessions::Session& session : client.sessions) {
            if (isAhead(session)) {
                m_undone.insert(session.code);
                const bool isSoon = session.date == m_day && session.startMinute < m_minute + kPrintedMinutesAhead;
                session.state = isSoon ? sessions::SessionState::Printed : sessions::SessionState::Planned;
            }
        }
        for (DocumentLift& lift : client.lifts) {
            const auto isUndone = [this](const DocumentEvent& entry) { return isAhead(entry); };
            lift.events.erase(std::remove_if(lift.events.begin(), lift.events.end(), isUndone), lift.events.end());
        }
        const auto isUnborn = [this](const DocumentLift& lift) { return lift.startedOn > m_day || (lift.startedOn == m_day && lift.events.empty()); };
        client.lifts.erase(std::remove_if(client.lifts.begin(), client.lifts.end(), isUnborn), client.lifts.end());
        std::erase_if(client.forms, [this](const DocumentForm& form) { return form.day > m_day; });
        std::erase_if(client.letters, [this](const DocumentLetter& letter) { return letter.day > m_day; });
        std::erase_if(client.decisions, [this](const DocumentDecision& decision) { return decision.day > m_day; });
        std::erase_if(client.tests, [this](const DocumentTest& test) { return test.day > m_day; });
        std::erase_if(client.plans, [this](const direction::ClientPlan& plan) { return plan.begunOn > m_day; });
        for (direction::ClientPlan& plan : client.plans) {
            plan.endedOn = plan.endedOn && *plan.endedOn > m_day ? std::nullopt : plan.endedOn;
        }
        std::erase_if(client.reports, [this](const auto& report) { return m_undone.count(report.first) > 0; });
        dropPlansOfUnborn(client);
    }

private:
    static void dropPlansOfUnborn(DocumentClient& client)
    {
        for (auto& planned : client.plannedLifts) {
            std::erase_if(planned.second, [&client](lifts::Pattern pattern) {
                return std::none_of(client.lifts.begin(), client.lifts.end(), [pattern](const DocumentLift& lift) { return lift.pattern == pattern; });
            });
        }
        std::erase_if(client.plannedLifts, [](const auto& planned) { return planned.second.empty(); });
        for (auto& [code, reasons] : client.leftOut) {
            const auto planned = client.plannedLifts.find(code);
            std::erase_if(reasons, [&](const auto& reason) {
                return planned == client.plannedLifts.end() || std::find(planned->second.begin(), planned->second.end(), reason.first) == planned->second.end();
            });
        }
        std::erase_if(client.leftOut, [](const auto& reasons) { return reasons.second.empty(); });
    }

    [[nodiscard]] bool isAhead(const sessions::Session& session) const
    {
        return session.date > m_day || (session.date == m_day && session.startMinute >= m_minute);
    }
    [[nodiscard]] bool isAhead(const DocumentEvent& entry) const
    {
        return entry.event.date > m_day || (entry.sessionCode && m_undone.count(*entry.sessionCode) > 0);
    }

    base::Date m_day;
    int m_minute;
    std::set<std::string> m_undone;  ///< codes of the client's sessions that lie ahead
};

}  // namespace

std::vector<progression::Event> countingEvents(const DocumentLift& lift)
{
    std::vector<progression::Event> events;
    for (const DocumentEvent& entry : lift.events) {
        if (!entry.isTakenBack) {
            events.push_back(entry.event);
        }
    }
    std::stable_sort(events.begin(), events.end(), [](const auto& a, const auto& b) { return a.date < b.date; });
    return events;
}

void slideTo(StudioDocument& document, base::Date day)
{
    const auto mondayOf = [](base::Date date) { return date - date.weekday(); };
    const int days = mondayOf(day) - mondayOf(document.today);
    for (DocumentClient& client : document.clients) {
        slideClient(client, days);
    }
    for (week::Closure& closure : document.closures) {
        slideClosure(closure, days);
    }
    for (base::Date& erased : document.erasedOn) {
        erased = erased + days;
    }
    for (ErasedSession& session : document.erasedSessions) {
        session.date = session.date + days;
    }
    document.today = day;
}

void rewindTo(StudioDocument& document, base::Date day, int minute)
{
    Moment moment(day, minute);
    for (DocumentClient& client : document.clients) {
        moment.rewind(client);
    }
    document.today = day;
}

}  // namespace chalk::studio
