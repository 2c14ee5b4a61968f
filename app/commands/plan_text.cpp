#include "app/commands/plan_text.h"

#include "app/commands/left_over_text.h"
#include "core/sessions/session.h"
#include "core/week/contradictions.h"
#include "ui/common/formats.h"

#include <QJsonObject>

#include <algorithm>
#include <array>

namespace chalk::app {

namespace {

using ui::common::qstring;
using week::kDayMinutes;
using week::SessionWish;
using week::Slot;

constexpr std::array<const char*, week::kWeekDays> kDayNames{"Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday"};

QString dayName(int day)
{
    return QLatin1String(kDayNames.at(static_cast<std::size_t>(day)));
}

/// `07:15`
QString timeOf(int minute)
{
    return qstring(sessions::clockText(minute));
}

}  // namespace

PlanText::PlanText(const week::WeekProblem& problem, const week::WeekPlan& plan) : m_problem(problem), m_plan(plan)
{
    for (const week::ClientWeek& client : problem.clients) {
        m_names.clients.push_back(qstring(client.id));
    }
    for (const week::CoachWeek& coach : problem.coaches) {
        m_names.coaches.push_back(qstring(coach.id));
    }
    for (const week::Station& station : problem.stations) {
        m_names.stations.push_back(qstring(station.id));
    }
}

QString PlanText::slotText(const Slot& slot) const
{
    return QStringLiteral("%1 %2 with %3").arg(dayName(slot.start / kDayMinutes).left(3), timeOf(slot.start % kDayMinutes),
                                               qstring(m_problem.coaches[slot.coach].id));
}

QString PlanText::sessionText(std::size_t session) const
{
    const SessionWish& wish = m_problem.sessions[session];
    return QStringLiteral("%1 of %2, %3 min").arg(qstring(wish.id), qstring(m_problem.clients[wish.client].id)).arg(wish.minutes);
}

std::vector<std::size_t> PlanText::sessionsOn(std::size_t coach, int day) const
{
    std::vector<std::size_t> sessions;
    for (std::size_t i = 0; i < m_plan.size(); ++i) {
        if (m_plan[i] && m_plan[i]->coach == coach && m_plan[i]->start / kDayMinutes == day) {
            sessions.push_back(i);
        }
    }
    std::stable_sort(sessions.begin(), sessions.end(), [this](std::size_t one, std::size_t other) { return m_plan[one]->start < m_plan[other]->start; });
    return sessions;
}

void PlanText::writeSession(QTextStream& out, std::size_t session) const
{
    const SessionWish& wish = m_problem.sessions[session];
    const Slot& slot = *m_plan[session];
    const int from = slot.start % kDayMinutes;
    out << "    " << timeOf(from) << '-' << timeOf(from + wish.minutes) << "  " << qstring(wish.id) << " of " << qstring(m_problem.clients[wish.client].id);
    if (wish.isLocked) {
        out << "  locked";
    } else if (wish.standing && *wish.standing != slot) {
        out << "  moved from " << slotText(*wish.standing);
    }
    out << '\n';
}

void PlanText::writeCoachDay(QTextStream& out, std::size_t coach, int day) const
{
    const auto sessions = sessionsOn(coach, day);
    if (sessions.empty()) {
        return;
    }
    out << "  " << qstring(m_problem.coaches[coach].id) << '\n';
    for (const std::size_t session : sessions) {
        writeSession(out, session);
    }
}

void PlanText::writeDays(QTextStream& out) const
{
    for (int day = 0; day < week::kWeekDays; ++day) {
        const bool isUsed = std::any_of(m_plan.begin(), m_plan.end(), [day](const auto& slot) { return slot && slot->start / kDayMinutes == day; });
        if (isUsed) {
            out << dayName(day) << '\n';
        }
        for (std::size_t coach = 0; coach < m_problem.coaches.size(); ++coach) {
            writeCoachDay(out, coach, day);
        }
    }
}

void PlanText::writeLeftOver(QTextStream& out) const
{
    const auto all = week::allLeftOver(m_problem, m_plan);
    out << (all.empty() ? QStringLiteral("Everybody has a place.\n") : QStringLiteral("Left over: %1.\n").arg(all.size()));
    for (const week::LeftOver& left : all) {
        const LeftOverText text = leftOverText(m_problem, m_plan, left, m_names);
        out << "  " << sessionText(left.session) << ", priority " << m_problem.clients[m_problem.sessions[left.session].client].priority << '\n';
        out << "    " << text.why << '\n';
        for (const QString& way : text.waysOut) {
            out << "    - " << way << '\n';
        }
    }
}

QJsonArray PlanText::leftOverJson() const
{
    QJsonArray array;
    for (const week::LeftOver& left : week::allLeftOver(m_problem, m_plan)) {
        const LeftOverText text = leftOverText(m_problem, m_plan, left, m_names);
        array.append(QJsonObject{{QStringLiteral("session"), qstring(m_problem.sessions[left.session].id)},
                                 {QStringLiteral("why"), text.why},
                                 {QStringLiteral("ways_out"), QJsonArray::fromStringList(text.waysOut)}});
    }
    return array;
}

void PlanText::writeContradictions(QTextStream& out) const
{
    for (const week::Contradiction& found : week::contradictionsOf(m_problem)) {
        out << "Contradiction: " << ui::common::sentenceFor(found, m_problem, m_names) << '\n';
    }
}

QJsonArray PlanText::contradictionsJson() const
{
    QJsonArray array;
    for (const week::Contradiction& found : week::contradictionsOf(m_problem)) {
        array.append(ui::common::sentenceFor(found, m_problem, m_names));
    }
    return array;
}

void PlanText::writeObjective(QTextStream& out, const week::Objective& objective) const
{
    out << "Costs " << objective.total() << ": left over " << objective.unplaced << ", off standing slots " << objective.standing << " (" << objective.moved
        << " moved), preferences " << objective.preference << ", gaps " << objective.gaps << ", above a coach's usual day " << objective.over
        << ", successive days " << objective.consecutive << ".\n";
}

}  // namespace chalk::app
