#include "app/commands/week_proposal.h"

#include "app/commands/left_over_text.h"
#include "core/week/plan_cost.h"
#include "core/week/week_bookings.h"
#include "ui/common/formats.h"
#include "ui/print/group_words.h"

#include <QJsonArray>

#include <algorithm>

namespace chalk::app {

namespace {

using ui::common::qstring;
using week::Booking;

QString timeText(const Booking& booking)
{
    return qstring(sessions::clockText(booking.startMinute));
}

QString stateWord(const Booking& booking)
{
    return booking.state == week::BookingState::Booked ? QString() : qstring(week::keyOf(booking.state));
}

void writeDays(QTextStream& out, const std::vector<Booking>& bookings)
{
    constexpr int kCoachWidth = 12;
    constexpr int kNameWidth = 26;
    std::optional<base::Date> day;
    for (const Booking& booking : bookings) {
        if (day != booking.date) {
            day = booking.date;
            out << (day ? "\n" : "") << ui::common::dayText(booking.date) << '\n';
        }
        QString line = QStringLiteral("  %1 %2 min  ").arg(timeText(booking)).arg(booking.minutes, 3) + qstring(booking.coachName).leftJustified(kCoachWidth) +
                       qstring(booking.clientName).leftJustified(kNameWidth) + stateWord(booking);
        while (line.endsWith(QLatin1Char(' '))) {
            line.chop(1);
        }
        out << line << '\n';
    }
}

void writeLeftOver(QTextStream& out, const WeekProposal& proposal)
{
    const ui::common::WeekNames names = proposal.names();
    if (!proposal.leftOver.empty() || !proposal.week.notProposed.empty()) {
        out << "\nNot booked\n";
    }
    for (const week::LeftOver& left : proposal.leftOver) {
        const LeftOverText text = leftOverText(proposal.week.problem, proposal.plan, left, names);
        out << "  " << proposal.sessionText(left.session) << ": " << text.why << '\n';
        for (const QString& way : text.waysOut) {
            out << "    " << way << '\n';
        }
    }
    for (const week::NoProposal& none : proposal.week.notProposed) {
        for (const week::ClientOfWeek& client : proposal.facts.clients) {
            if (client.client.id == none.client) {
                out << "  " << qstring(client.client.name) << ": "
                    << (none.reason == week::NoProposalReason::AwaitsClearance ? "waits for clearance" : "is away all week") << '\n';
            }
        }
    }
}

int countOf(const WeekProposal& proposal, bool isBooked)
{
    int count = 0;
    for (std::size_t i = 0; i < proposal.plan.size(); ++i) {
        count += isBooked ? (proposal.week.booked[i] ? 1 : 0) : (proposal.isProposed(i) ? 1 : 0);
    }
    return count;
}

QJsonArray leftOverJson(const WeekProposal& proposal)
{
    QJsonArray array;
    const ui::common::WeekNames names = proposal.names();
    for (const week::LeftOver& left : proposal.leftOver) {
        const LeftOverText text = leftOverText(proposal.week.problem, proposal.plan, left, names);
        const week::WishOrigin& origin = proposal.week.origins[left.session];
        array.append(QJsonObject{{QStringLiteral("client"), names.clients[proposal.week.problem.sessions[left.session].client]},
                                 {QStringLiteral("number"), origin.number},
                                 {QStringLiteral("why"), text.why},
                                 {QStringLiteral("ways_out"), QJsonArray::fromStringList(text.waysOut)}});
    }
    return array;
}

}  // namespace

ui::common::WeekNames WeekProposal::names() const
{
    ui::common::WeekNames names;
    for (const week::ClientOfWeek& client : facts.clients) {
        names.clients.push_back(qstring(client.client.name));
    }
    for (const week::CoachOfWeek& coach : facts.coaches) {
        names.coaches.push_back(qstring(coach.coach.name));
    }
    for (const auto& [station, units] : facts.studio.stations) {
        names.stations.push_back(ui::print::stationName(station).toLower());
    }
    return names;
}

QString WeekProposal::sessionText(std::size_t session) const
{
    const week::ClientOfWeek& client = facts.clients[week.problem.sessions[session].client];
    return QStringLiteral("%1, session %2 of %3").arg(qstring(client.client.name)).arg(week.origins[session].number).arg(client.sessionsWanted());
}

void judge(WeekProposal& proposal)
{
    const week::WeekProblem& problem = proposal.week.problem;
    proposal.objective = week::objectiveOf(problem, proposal.plan);
    proposal.faults = week::faultsOf(problem, proposal.plan);
    proposal.contradictions = week::contradictionsOf(problem);
    proposal.leftOver = week::allLeftOver(problem, proposal.plan);
}

void writeText(QTextStream& out, const WeekProposal& proposal)
{
    const base::Date monday = proposal.facts.monday;
    const ui::common::WeekNames names = proposal.names();
    out << QStringLiteral("Week %1, %2 to %3: %4 of %5 sessions to come are booked")
               .arg(qstring(base::toString(monday.isoWeek())), ui::common::dayText(monday), ui::common::dayText(monday + 6))
               .arg(countOf(proposal, true))
               .arg(proposal.plan.size());
    if (const int proposed = countOf(proposal, false); proposed > 0) {
        out << QStringLiteral(", %1 proposed").arg(proposed);
    }
    out << ".\n";
    writeDays(out, week::bookingsOf(proposal.facts, proposal.week, proposal.plan));
    if (!proposal.faults.empty()) {
        out << "\nConflicts\n";
    }
    for (const week::PlanFault& fault : proposal.faults) {
        out << "  " << ui::common::sentenceFor(fault, proposal.week.problem, names) << '\n';
    }
    writeLeftOver(out, proposal);
}

QJsonObject toJson(const WeekProposal& proposal)
{
    const ui::common::WeekNames names = proposal.names();
    QJsonArray sessions;
    for (const Booking& booking : week::bookingsOf(proposal.facts, proposal.week, proposal.plan)) {
        sessions.append(QJsonObject{{QStringLiteral("code"), qstring(booking.code)},
                                    {QStringLiteral("date"), qstring(booking.date.toString())},
                                    {QStringLiteral("at"), timeText(booking)},
                                    {QStringLiteral("minutes"), booking.minutes},
                                    {QStringLiteral("client"), qstring(booking.clientName)},
                                    {QStringLiteral("coach"), qstring(booking.coachName)},
                                    {QStringLiteral("place"), qstring(booking.place)},
                                    {QStringLiteral("kind"), qstring(week::keyOf(booking.kind))},
                                    {QStringLiteral("state"), qstring(week::keyOf(booking.state))}});
    }
    QJsonArray conflicts;
    for (const week::PlanFault& fault : proposal.faults) {
        conflicts.append(ui::common::sentenceFor(fault, proposal.week.problem, names));
    }
    const week::Objective& cost = proposal.objective;
    return {{QStringLiteral("week"), qstring(base::toString(proposal.facts.monday.isoWeek()))},
            {QStringLiteral("sessions"), sessions},
            {QStringLiteral("conflicts"), conflicts},
            {QStringLiteral("left_over"), leftOverJson(proposal)},
            {QStringLiteral("objective"), QJsonObject{{QStringLiteral("total"), static_cast<qint64>(cost.total())},
                                                      {QStringLiteral("unplaced"), static_cast<qint64>(cost.unplaced)},
                                                      {QStringLiteral("standing"), static_cast<qint64>(cost.standing)},
                                                      {QStringLiteral("preference"), static_cast<qint64>(cost.preference)},
                                                      {QStringLiteral("gaps"), static_cast<qint64>(cost.gaps)},
                                                      {QStringLiteral("over"), static_cast<qint64>(cost.over)},
                                                      {QStringLiteral("consecutive"), static_cast<qint64>(cost.consecutive)}}}};
}

}  // namespace chalk::app
