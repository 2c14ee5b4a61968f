#include "ui/board/client_presenter.h"

#include "core/store/client_forms.h"
#include "core/store/history_reader.h"
#include "core/store/session_reader.h"

#include <algorithm>

namespace chalk::ui::board {

namespace {

using store::Result;

/// The name of an exercise that the catalogue does not know, from its key: `back_squat` is `Back squat`.
std::string nameFromKey(std::string key, lifts::Pattern pattern)
{
    if (key.empty()) {
        key = lifts::keyOf(pattern);
    }
    std::replace(key.begin(), key.end(), '_', ' ');
    if (key.front() >= 'a' && key.front() <= 'z') {
        key.front() = static_cast<char>(key.front() - 'a' + 'A');
    }
    return key;
}

/// The exercise as the lift does it now: the kit has the last word on how it is counted.
lifts::Exercise exerciseOf(const lifts::Catalogue& catalogue, const store::CachedLift& lift)
{
    const progression::Kit& kit = lift.machine.kit();
    lifts::Exercise exercise;
    if (const lifts::Exercise* known = catalogue.find(kit.exerciseKey)) {
        exercise = *known;
    } else {
        exercise.key = kit.exerciseKey;
        exercise.name = nameFromKey(kit.exerciseKey, lift.pattern);
        exercise.pattern = lift.pattern;
    }
    exercise.pieces = kit.pieces;
    exercise.measure = kit.measure;
    exercise.bodyShare = kit.bodyShare;
    return exercise;
}

/// What was taken back and done again as it was is no correction.
void dropRepeats(LogEntry& entry)
{
    std::vector<progression::Event>& earlier = entry.earlier;
    earlier.erase(std::unique(earlier.begin(), earlier.end()), earlier.end());
    if (!earlier.empty() && earlier.back() == progression::Event{entry.date, entry.body}) {
        earlier.pop_back();
    }
}

}  // namespace

ClientPresenter::ClientPresenter(store::Database& database, const lifts::Catalogue& catalogue, std::function<QString()> atUtc)
    : m_database(database), m_catalogue(catalogue), m_atUtc(std::move(atUtc)), m_writer(database, m_atUtc)
{
}

Result<ClientCase> ClientPresenter::read(base::ClientId id, base::Date today)
{
    const store::Snapshot snapshot(m_database);  // a choice is compared with the log that belongs to what is shown
    auto file = store::ClientReader(m_database).read(id, today);
    if (!file) {
        return tl::make_unexpected(file.error());
    }
    ClientCase client;
    client.client = std::move(file->client);
    client.coachName = std::move(file->coachName);
    client.cautions = std::move(file->cautions);
    client.clearance = std::move(file->clearance);
    client.nextSession = std::move(file->next.session);
    client.nextSessionTaken = file->next.taken;
    auto screen = store::ClientForms(m_database).movementScreen(id);
    if (!screen) {
        return tl::make_unexpected(screen.error());
    }
    client.screen = *std::move(screen);
    client.today = today;
    for (const store::ClientLift& one : file->lifts) {
        auto lift = readLift(one, today);
        if (!lift) {
            return tl::make_unexpected(lift.error());
        }
        client.lifts.push_back(*std::move(lift));
    }
    auto sessions = store::SessionReader(m_database).of(id);
    if (!sessions) {
        return tl::make_unexpected(sessions.error());
    }
    for (auto session = sessions->rbegin(); session != sessions->rend(); ++session) {
        client.sessions.push_back(std::move(session->session));
    }
    auto reports = store::SessionReader(m_database).reportsOf(id);
    if (!reports) {
        return tl::make_unexpected(reports.error());
    }
    client.reports = *std::move(reports);
    return client;
}

Result<LiftCase> ClientPresenter::readLift(const store::ClientLift& one, base::Date today)
{
    LiftCase lift(one.lift.machine);
    lift.id = one.lift.id;
    lift.pattern = one.lift.pattern;
    lift.exercise = exerciseOf(m_catalogue, one.lift);
    lift.startedOn = one.lift.started;
    lift.decided = one.lift.decided;
    store::HistoryReader reader(m_database);
    auto history = reader.read(lift.id);
    if (!history) {
        return tl::make_unexpected(history.error());
    }
    for (store::HistoryEntry& entry : *history) {
        LogEntry& kept = lift.log.emplace_back(
            LogEntry{entry.id, entry.event.date, std::move(entry.event.body), entry.rules, entry.after, entry.measure, entry.session, {}});
        if (!entry.isCorrected) {
            continue;
        }
        auto versions = reader.versions(entry.id);
        if (!versions) {
            return tl::make_unexpected(versions.error());
        }
        for (store::LogEntry& version : *versions) {
            if (version.id != entry.id && !version.isVoid) {
                kept.earlier.push_back(std::move(version.event));
            }
        }
        dropRepeats(kept);
    }
    settle(lift, today);
    return lift;
}

Result<std::vector<decisions::SwapOffer>> ClientPresenter::swapOffers(const LiftCase& lift, const ClientCase& client)
{
    return decisions::swapOffers(m_database, m_catalogue, decisions::swappedLiftOf(lift.machine, lift.exercise, lift.pattern), client.cautions);
}

Result<store::ActOutcome> ClientPresenter::write(const LiftCase& lift, base::ClientId client, base::Date today, progression::EventBody body,
                                                bool isSeen)
{
    if (const auto fault = lift.machine.faultOf(body)) {
        return store::storeError(store::StoreError::Kind::Refused,
                                 QStringLiteral("%1 %2").arg(QString::fromStdString(fault->field), QString::fromStdString(fault->reason)));
    }
    store::SeenSession seen;
    if (!isSeen) {
        seen.entriesOfLift.emplace();
        std::transform(lift.log.begin(), lift.log.end(), std::back_inserter(*seen.entriesOfLift), [](const LogEntry& entry) { return entry.id; });
    }
    return m_writer.record(client, base::SessionId(), {{lift.id, {today, std::move(body)}}}, {}, seen);
}

}  // namespace chalk::ui::board
