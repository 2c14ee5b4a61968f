#include "core/store/session_reader.h"
#include "core/store/session_writer.h"
#include "core/store/week_changes.h"
#include "ui/common/formats.h"
#include "ui/common/settling.h"
#include "ui/common/write_desk.h"
#include "ui/floor/floor_presenter.h"
#include "ui/floor/session_words.h"

#include <QCoreApplication>

#include <algorithm>

namespace chalk::ui::floor {

namespace {

QString writeText(const char* text)
{
    return QCoreApplication::translate("FloorWrites", text);
}

}  // namespace

store::Result<store::ActOutcome> FloorPresenter::write(const store::PendingWrite& write, const QString& words)
{
    return m_writes != nullptr ? m_writes->write(write, words) : store::perform(m_database, write, m_atUtc, store::newToken());
}

template <class Write>
auto FloorPresenter::settled(store::Seen seen, Write write)
{
    return m_writes != nullptr ? common::settled(m_writes->dialogs(), m_database, std::move(seen), std::move(write)) : write(common::Settling{std::move(seen), {}});
}

store::Result<store::ActOutcome> FloorPresenter::save(const FloorClient& client, const FloorLift& lift, const progression::EventBody& body, const QString& remark)
{
    store::EntryWrite entry{client.client.id, client.session.id, lift.id, lift.saved, lift.machine.kit().measure, {client.session.date, body}};
    if (!remark.isEmpty()) {
        // Where the studio does not answer, the remark is added to what was read last: the studio says if that is not the last word.
        const auto now = store::SessionReader(m_database).report(client.session.id);
        if (!now && now.error().kind != store::StoreError::Kind::Unreachable) {
            return tl::make_unexpected(now.error());
        }
        entry.seenReport = now.value_or(client.report);
        entry.report = withRemark(*entry.seenReport, lift, remark);
    }
    return write(entry, writeText("%1 for %2").arg(common::qstring(lift.exercise.name), client.firstName()));
}

sessions::SessionReport FloorPresenter::withRemark(sessions::SessionReport report, const FloorLift& lift, const QString& remark)
{
    sessions::addToNote(report, lift.exercise.name + ": " + remark.toStdString());
    return report;
}

store::Result<store::ActOutcome> FloorPresenter::addRemark(const FloorClient& client, const FloorLift& lift, const QString& remark)
{
    const auto now = store::SessionReader(m_database).report(client.session.id);
    if (!now && now.error().kind != store::StoreError::Kind::Unreachable) {
        return tl::make_unexpected(now.error());
    }
    const sessions::SessionReport seen = now.value_or(client.report);
    return saveReport(client.session.id, withRemark(seen, lift, remark), seen, client.firstName());
}

store::Result<store::ActOutcome> FloorPresenter::saveReport(base::SessionId session, const sessions::SessionReport& report,
                                                             const std::optional<sessions::SessionReport>& seen, const QString& who)
{
    return write(store::ReportWrite{session, report, seen}, who.isEmpty() ? writeText("How the session felt") : writeText("How the session felt, for %1").arg(who));
}

store::Result<std::optional<store::ActOutcome>> FloorPresenter::markPrinted(const std::vector<sessions::Session>& sessions)
{
    std::vector<base::SessionId> planned;
    for (const sessions::Session& session : sessions) {
        if (!session.id.isNone() && session.state == sessions::SessionState::Planned) {
            planned.push_back(session.id);
        }
    }
    if (planned.empty()) {
        return std::optional<store::ActOutcome>();
    }
    auto outcome = store::RecordWriter(m_database, m_atUtc).setSessionStates(planned, sessions::SessionState::Printed);
    if (!outcome) {
        return tl::make_unexpected(outcome.error());
    }
    return std::optional(*std::move(outcome));
}

QString FloorPresenter::nameOf(base::ClientId client)
{
    const auto names = store::ClientReader(m_database).names();
    const auto at = names ? std::find_if(names->begin(), names->end(), [client](const auto& one) { return one.first == client; }) : decltype(names->begin())();
    return names && at != names->end() ? common::qstring(at->second).section(QLatin1Char(' '), 0, 0) : writeText("a client");
}

store::Result<void> FloorPresenter::keepLifts(FloorClient& client)
{
    std::vector<sessions::SessionLift> lifts;
    for (const FloorLift& one : client.lifts) {
        lifts.push_back({one.id, one.isSkipped ? std::optional(one.skipWhy) : std::nullopt});
    }
    auto kept = settled({}, [&](const common::Settling& settling) {
        return store::SessionWriter(m_database, m_atUtc).setLifts(client.session.id, lifts, settling.seen ? std::nullopt : std::optional(client.planned));
    });
    if (kept) {
        client.planned = std::move(lifts);
    }
    return kept;
}

store::Result<store::ActOutcome> FloorPresenter::setState(const sessions::Session& session, sessions::SessionState state)
{
    return write(store::StateWrite{session.id, state, session.state}, stateDone(state, nameOf(session.client)));
}

store::Result<store::ActOutcome> FloorPresenter::book(const sessions::Session& session)
{
    return write(store::BookingChanges{{session}, {}, {}}, writeText("Session added for %1").arg(nameOf(session.client)));
}

store::Result<store::ActOutcome> FloorPresenter::withdraw(const sessions::Session& session)
{
    return write(store::BookingChanges{{}, {}, {session.id}, {{session.id, {store::placeOf(session), session.state}}}},
                 stateDone(sessions::SessionState::Withdrawn, nameOf(session.client)));
}

store::Result<store::ActOutcome> FloorPresenter::takeBack(const FloorLift& lift)
{
    return store::RecordWriter(m_database, m_atUtc).takeBack(lift.saved);
}

store::Result<store::ActOutcome> FloorPresenter::swap(const FloorClient& client, const FloorLift& lift, const progression::Swap& swap)
{
    return settled({}, [&](const common::Settling& settling) {
        store::SeenSession seen;
        if (!settling.seen) {
            seen.entriesOfLift = lift.entries;
        }
        return store::RecordWriter(m_database, m_atUtc).record(client.client.id, base::SessionId(), {{lift.id, {client.session.date, swap}}}, {}, seen);
    });
}

}  // namespace chalk::ui::floor
