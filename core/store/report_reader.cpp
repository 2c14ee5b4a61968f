#include "core/store/report_reader.h"

#include "core/store/client_reader.h"
#include "core/store/history_reader.h"
#include "core/store/session_reader.h"
#include "core/store/studio_reader.h"

namespace chalk::store {

namespace {

using checkin::ReportEntry;
using checkin::ReportHistory;

int amountOf(base::Reps reps, lifts::Measure measure, const progression::Policy& policy)
{
    switch (measure) {
    case lifts::Measure::Reps:
        return reps.value();
    case lifts::Measure::Seconds:
        return reps.value() * policy.secondsPerRep.value();
    case lifts::Measure::Metres:
        return reps.value() * policy.metresPerRep.value();
    }
    return reps.value();
}

ReportEntry entryOf(const HistoryEntry& entry)
{
    ReportEntry made{entry.event.date, std::nullopt, 0, entry.stageAfter, entry.cycleAfter};
    if (const auto* exposure = std::get_if<progression::Exposure>(&entry.event.body)) {
        made.work = checkin::workDoneOf(entry.event.date, *exposure);
        made.pain = exposure->pain;
    } else if (const auto* rehearsal = std::get_if<progression::Rehearsal>(&entry.event.body)) {
        made.pain = rehearsal->pain;
    }
    return made;
}

/// Only what was done with the present exercise: loads of another one do not compare.
void keepPresentKit(ReportHistory& history, const std::vector<HistoryEntry>& entries)
{
    for (const HistoryEntry& entry : entries) {
        if (std::holds_alternative<progression::Swap>(entry.event.body)) {
            history.entries.clear();
        }
        history.entries.push_back(entryOf(entry));
    }
}

/// A lift with its history; `isBlocked`: nothing may be done.
ReportHistory historyOf(const lifts::Exercise& exercise, const progression::LiftMachine& machine, const std::vector<HistoryEntry>& entries, base::Date to,
                        bool isBlocked)
{
    const progression::Kit& kit = machine.kit();
    ReportHistory history{exercise.name, machine.setup().unit, kit.measure, exercise.equipment, kit.pieces, {}, std::nullopt, 0};
    keepPresentKit(history, entries);
    if (!isBlocked) {
        history.next = machine.prescriptionOn(to);
        history.nextAmount = amountOf(history.next->repsHigh, kit.measure, machine.setup().policy);
    }
    return history;
}

}  // namespace

Result<checkin::ProgressReport> ReportReader::read(base::ClientId client, base::Date to)
{
    return read(client, to - to.weekday() - 7 * (kReportWeeks - 1), to);
}

Result<checkin::ProgressReport> ReportReader::read(base::ClientId client, base::Date from, base::Date to)
{
    const Snapshot snapshot(m_database);
    const auto studio = StudioReader(m_database).name();
    const auto file = ClientReader(m_database).read(client, to);
    const auto named = SessionReader(m_database).of(client);
    if (!studio || !file || !named) {
        return tl::make_unexpected(!studio ? studio.error() : !file ? file.error() : named.error());
    }
    const bool isBlocked = clients::isBlocked(file->clearance, to);
    std::vector<ReportHistory> histories;
    for (const ClientLift& lift : file->lifts) {
        const auto entries = HistoryReader(m_database).read(lift.lift.id);
        if (!entries) {
            return tl::make_unexpected(entries.error());
        }
        if (const auto* exercise = m_catalogue.find(lift.lift.machine.kit().exerciseKey)) {
            histories.push_back(historyOf(*exercise, lift.lift.machine, *entries, to, isBlocked));
        }
    }
    std::vector<sessions::Session> sessions;
    for (const NamedSession& one : *named) {
        sessions.push_back(one.session);
    }
    return checkin::progressReportOf({*studio, file->client.name, file->coachName, from, to, sessions, histories});
}

Result<std::vector<checkin::ProgressReport>> ReportReader::readAll(const QString& name, base::Date to)
{
    const Snapshot snapshot(m_database);
    const auto names = ClientReader(m_database).names();
    if (!names) {
        return tl::make_unexpected(names.error());
    }
    std::vector<checkin::ProgressReport> reports;
    for (const auto& [id, client] : *names) {
        if (!QString::fromStdString(client).contains(name, Qt::CaseInsensitive)) {
            continue;
        }
        auto report = read(id, to);
        if (!report) {
            return tl::make_unexpected(report.error());
        }
        if (report->hasRecords()) {
            reports.push_back(*std::move(report));
        }
    }
    return reports;
}

}  // namespace chalk::store
