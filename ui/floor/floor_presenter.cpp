#include "ui/floor/floor_presenter.h"

#include "core/sessions/session_lifts.h"
#include "core/store/client_reader.h"
#include "core/store/session_reader.h"
#include "ui/common/formats.h"

#include <algorithm>

namespace chalk::ui::floor {

namespace {

using sessions::SessionState;

QString firstNameOf(const std::string& name)
{
    return common::qstring(name).section(QLatin1Char(' '), 0, 0);
}

}  // namespace

bool RunSlot::isRecorded() const
{
    return std::any_of(sessions.begin(), sessions.end(), [](const auto& session) { return session.state == SessionState::Recorded; }) && !isOpen();
}

bool RunSlot::isOpen() const
{
    return std::any_of(sessions.begin(), sessions.end(), [](const sessions::Session& session) {
        return session.state == SessionState::Planned || session.state == SessionState::Printed;
    });
}

FloorPresenter::FloorPresenter(store::Database& database, const lifts::Catalogue& catalogue, std::function<QString()> atUtc)
    : m_database(database), m_catalogue(catalogue), m_atUtc(std::move(atUtc))
{
}

store::Result<std::vector<RunSlot>> FloorPresenter::run(base::Date day)
{
    const auto sessions = store::SessionReader(m_database).on(day);
    if (!sessions) {
        return tl::make_unexpected(sessions.error());
    }
    std::vector<RunSlot> slots;
    for (const store::NamedSession& one : *sessions) {
        const QString coach = common::qstring(one.coachName);
        if (slots.empty() || slots.back().startMinute != one.session.startMinute || slots.back().coach != coach) {
            slots.push_back({one.session.startMinute, coach, {}, {}});
        }
        RunSlot& slot = slots.back();
        slot.names += (slot.names.isEmpty() ? QString() : QStringLiteral(", ")) + firstNameOf(one.clientName);
        slot.sessions.push_back(one.session);
    }
    return slots;
}

std::optional<FloorLift> FloorPresenter::floorLift(const progression::LiftMachine& present, base::LiftId id, const sessions::Session& session)
{
    const auto history = store::HistoryReader(m_database).read(id);
    auto machine = progression::LiftMachine::create(present.setup());
    if (!history || !machine) {
        return std::nullopt;
    }
    base::EventId saved;
    std::optional<progression::EventBody> savedBody;
    for (const store::HistoryEntry& entry : *history) {
        if (entry.session == session.id && !session.id.isNone()) {
            saved = entry.id;
            savedBody = entry.event.body;
        } else if (entry.event.date <= session.date) {
            machine->apply(entry.event.date, entry.event.body);
        }
    }
    const lifts::Exercise* exercise = m_catalogue.find(machine->kit().exerciseKey);
    lifts::Exercise named = exercise == nullptr ? lifts::Exercise{} : *exercise;
    if (exercise == nullptr) {
        named.name = machine->kit().exerciseKey;
    }
    const auto due = machine->prescriptionOn(session.date);
    return FloorLift{id, named, *std::move(machine), due, {}, saved, savedBody, false};
}

store::Result<std::vector<FloorClient>> FloorPresenter::clients(const RunSlot& slot, base::Date day)
{
    std::vector<FloorClient> clients;
    for (const sessions::Session& session : slot.sessions) {
        if (session.state == SessionState::CancelledInTime || session.state == SessionState::CancelledLate) {
            continue;
        }
        const auto file = store::ClientReader(m_database).read(session.client, day);
        if (!file) {
            return tl::make_unexpected(file.error());
        }
        FloorClient client{file->client, file->cautions, clients::isBlocked(file->clearance, day), session, {}};
        std::vector<sessions::LiftCandidate> candidates;
        std::vector<FloorLift> all;
        for (const store::ClientLift& one : file->lifts) {
            candidates.push_back({one.lift.id, one.lift.pattern, one.lift.lastEvent});
            if (auto lift = floorLift(one.lift.machine, one.lift.id, session)) {
                all.push_back(*std::move(lift));
            }
        }
        const bool isAnySaved = std::any_of(all.begin(), all.end(), [](const FloorLift& lift) { return !lift.saved.isNone(); });
        const auto chosen = sessions::chooseLifts(candidates);
        for (FloorLift& lift : all) {
            const bool isChosen = std::find(chosen.begin(), chosen.end(), lift.id) != chosen.end();
            if (!lift.saved.isNone() || (isChosen && !(isAnySaved && session.state == SessionState::Recorded))) {
                client.lifts.push_back(std::move(lift));
            }
        }
        clients.push_back(std::move(client));
    }
    return clients;
}

store::Result<store::ActOutcome> FloorPresenter::save(const FloorClient& client, const FloorLift& lift, const progression::EventBody& body)
{
    store::RecordWriter writer(m_database, m_atUtc);
    const progression::Event event{client.session.date, body};
    return lift.saved.isNone() ? writer.record(client.client.id, client.session.id, {{lift.id, event}}) : writer.correct(lift.saved, event);
}

store::Result<store::ActOutcome> FloorPresenter::setSessionState(const sessions::Session& session, SessionState state)
{
    return store::RecordWriter(m_database, m_atUtc).setSessionState(session.id, state);
}

std::optional<Preview> previewOf(const FloorLift& lift, const progression::EventBody& body, base::Date day)
{
    if (lift.machine.faultOf(body)) {
        return std::nullopt;
    }
    progression::LiftMachine copy = lift.machine;
    const auto rules = copy.apply(day, body);
    return Preview{copy.prescriptionOn(day), rules};
}

}  // namespace chalk::ui::floor
