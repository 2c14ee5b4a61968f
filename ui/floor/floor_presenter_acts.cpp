#include "core/store/session_reader.h"
#include "core/store/session_writer.h"
#include "ui/floor/floor_presenter.h"

namespace chalk::ui::floor {

store::Result<store::ActOutcome> FloorPresenter::save(const FloorClient& client, const FloorLift& lift, const progression::EventBody& body, const QString& remark)
{
    std::optional<sessions::SessionReport> report;
    if (!remark.isEmpty()) {
        const auto whole = withRemark(client.session.id, lift, remark);
        if (!whole) {
            return tl::make_unexpected(whole.error());
        }
        report = *whole;
    }
    store::RecordWriter writer(m_database, m_atUtc);
    const progression::Event event{client.session.date, body};
    return lift.saved.isNone() ? writer.record(client.client.id, client.session.id, {{lift.id, event}}, report) : writer.correct(lift.saved, event, report);
}

store::Result<sessions::SessionReport> FloorPresenter::withRemark(base::SessionId session, const FloorLift& lift, const QString& remark)
{
    auto report = store::SessionReader(m_database).report(session);
    if (report) {
        sessions::addToNote(*report, lift.exercise.name + ": " + remark.toStdString());
    }
    return report;
}

store::Result<store::ActOutcome> FloorPresenter::addRemark(const FloorClient& client, const FloorLift& lift, const QString& remark)
{
    const auto report = withRemark(client.session.id, lift, remark);
    return report ? saveReport(client.session.id, *report) : tl::make_unexpected(report.error());
}

store::Result<store::ActOutcome> FloorPresenter::saveReport(base::SessionId session, const sessions::SessionReport& report)
{
    return store::RecordWriter(m_database, m_atUtc).saveReport(session, report);
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

store::Result<void> FloorPresenter::keepLifts(const FloorClient& client)
{
    std::vector<sessions::SessionLift> lifts;
    for (const FloorLift& one : client.lifts) {
        lifts.push_back({one.id, one.isSkipped ? std::optional(one.skipWhy) : std::nullopt});
    }
    return store::SessionWriter(m_database, m_atUtc).setLifts(client.session.id, lifts);
}

store::Result<store::ActOutcome> FloorPresenter::setState(const sessions::Session& session, sessions::SessionState state)
{
    return store::RecordWriter(m_database, m_atUtc).setSessionState(session.id, state);
}

store::Result<store::ActOutcome> FloorPresenter::book(const sessions::Session& session)
{
    return store::SessionWriter(m_database, m_atUtc).book(session);
}

store::Result<store::ActOutcome> FloorPresenter::withdraw(const sessions::Session& session)
{
    return store::SessionWriter(m_database, m_atUtc).withdraw(session.id);
}

store::Result<store::ActOutcome> FloorPresenter::takeBack(const FloorLift& lift)
{
    return store::RecordWriter(m_database, m_atUtc).takeBack(lift.saved);
}

store::Result<store::ActOutcome> FloorPresenter::swap(const FloorClient& client, const FloorLift& lift, const progression::Swap& swap)
{
    return store::RecordWriter(m_database, m_atUtc).record(client.client.id, base::SessionId(), {{lift.id, {client.session.date, swap}}});
}

}  // namespace chalk::ui::floor
