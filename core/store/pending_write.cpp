#include "core/store/pending_write.h"

#include "core/exchange/event_json.h"
#include "core/exchange/json_writing.h"
#include "core/exchange/session_report_json.h"
#include "core/store/conflict.h"

#include <algorithm>

namespace chalk::store {

namespace {

template <class... Handlers>
struct WriteVisitor : Handlers... {
    using Handlers::operator()...;
};
template <class... Handlers>
WriteVisitor(Handlers...) -> WriteVisitor<Handlers...>;

Result<ActOutcome> performEntry(RecordWriter& writer, const EntryWrite& write)
{
    if (!write.replaces.isNone()) {
        return writer.correct(write.replaces, write.event, write.report, write.seenReport);
    }
    return writer.record(write.client, write.session, {{write.lift, write.event}}, write.report, {true, write.seenReport});
}

Result<ActOutcome> performNow(Database& database, const PendingWrite& write, const std::function<QString()>& atUtc)
{
    RecordWriter records(database, atUtc);
    return std::visit(WriteVisitor{[&](const EntryWrite& one) { return performEntry(records, one); },
                                   [&](const ReportWrite& one) { return records.saveReport(one.session, one.report, one.seen); },
                                   [&](const StateWrite& one) { return records.setSessionState(one.session, one.state, one.seen); },
                                   [&](const BookingChanges& one) { return SessionWriter(database, atUtc).apply(one); }},
                      write);
}

std::vector<base::SessionId> sessionsOf(const BookingChanges& changes)
{
    std::vector<base::SessionId> sessions = changes.withdrawn;
    for (const MovedBooking& moved : changes.moved) {
        sessions.push_back(moved.session);
    }
    std::sort(sessions.begin(), sessions.end());
    return sessions;
}

std::optional<sessions::SessionReport> reportFrom(const QJsonObject& object)
{
    const auto report = exchange::readSessionReport(object, {});
    return report ? std::optional(*report) : std::nullopt;
}

}  // namespace

Result<ActOutcome> perform(Database& database, const PendingWrite& write, const std::function<QString()>& atUtc, const QString& token)
{
    database.setNextToken(token);
    auto outcome = performNow(database, write, atUtc);
    database.setNextToken({});  // what was refused early has not used it
    return outcome;
}

bool isSameThing(const PendingWrite& first, const PendingWrite& second)
{
    if (first.index() != second.index()) {
        return false;
    }
    return std::visit(WriteVisitor{[&](const EntryWrite& one) {
                                       const auto& other = std::get<EntryWrite>(second);
                                       return one.lift == other.lift && one.session == other.session && !one.session.isNone();
                                   },
                                   [&](const ReportWrite& one) { return one.session == std::get<ReportWrite>(second).session; },
                                   [&](const StateWrite& one) { return one.session == std::get<StateWrite>(second).session; },
                                   [&](const BookingChanges& one) {
                                       const auto& other = std::get<BookingChanges>(second);
                                       return one == other || (one.booked.empty() && other.booked.empty() && sessionsOf(one) == sessionsOf(other));
                                   }},
                      first);
}

PendingWrite overConflict(PendingWrite write, const Conflict& conflict, const std::optional<QJsonObject>& merged)
{
    const auto overReport = [&](std::optional<sessions::SessionReport>& seen, sessions::SessionReport& report) {
        seen = reportFrom(conflict.theirs);
        report = merged ? reportFrom(*merged).value_or(report) : report;
    };
    std::visit(WriteVisitor{[&](EntryWrite& one) {
                                if (conflict.about == ConflictAbout::Entry) {
                                    one.replaces = conflict.entry;
                                } else if (one.report) {
                                    overReport(one.seenReport, *one.report);
                                }
                            },
                            [&](ReportWrite& one) { overReport(one.seen, one.report); },
                            [&](StateWrite& one) { one.seen = sessions::sessionStateOf(conflict.theirs.value(QLatin1String("state")).toString().toStdString()); },
                            [&](BookingChanges& one) {
                                one.seenWithdrawn.erase(conflict.session);
                                for (MovedBooking& moved : one.moved) {
                                    if (moved.session == conflict.session) {
                                        moved.seen.reset();
                                    }
                                }
                            }},
               write);
    return write;
}

}  // namespace chalk::store
