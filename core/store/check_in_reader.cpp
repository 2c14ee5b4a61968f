#include "core/store/check_in_reader.h"

#include "core/analysis/attendance.h"
#include "core/checkin/choices.h"
#include "core/checkin/finding.h"
#include "core/store/decision_reader.h"
#include "core/store/roster_facts.h"
#include "core/store/studio_reader.h"

#include <algorithm>

namespace chalk::store {

namespace {

constexpr int kAttendedDays = 28;

/// A lift's events and how it was set up: what its evidence points into.
struct LiftHistory {
    CachedLift fresh;
    std::vector<progression::Event> events;
};

/// Reads one client's page.
class PageMaking {
public:
    PageMaking(Database& database, const lifts::Catalogue& catalogue, base::Date day)
        : m_database(database), m_catalogue(catalogue), m_day(day), m_log(database), m_cache(database, m_log)
    {
    }

    [[nodiscard]] checkin::ClientEvidence page(const ClientFile& file);
    [[nodiscard]] std::optional<ForecastOrLack> forecast(const ClientFile& file, base::LiftId lift);

private:
    [[nodiscard]] std::vector<NamedSession> sessionsOf(base::ClientId client);
    [[nodiscard]] plateau::CheckDay checkDayOf(std::span<const NamedSession> sessions) const;
    [[nodiscard]] const lifts::Exercise* exerciseOf(const CachedLift& lift) const;
    [[nodiscard]] std::optional<LiftHistory> historyOf(base::LiftId lift);
    [[nodiscard]] checkin::LiftRecord recordOf(const CachedLift& lift, const LiftHistory& history) const;
    void addLifts(checkin::ClientEvidence& page, const ClientFile& file, const plateau::CheckDay& check);
    void addSessions(checkin::ClientEvidence& page, std::span<const NamedSession> sessions);
    void addFinding(checkin::ClientEvidence& page, const ClientFile& file, std::span<const NamedSession> sessions);
    void addChoices(checkin::ClientEvidence& page, const ClientFile& file, const checkin::ClientSigns& signs);
    [[nodiscard]] checkin::NeighbourSwaps swapsFor(const CachedLift& lift, std::span<const exchange::StudioEquipment> equipment,
                                                   std::span<const lifts::CautionTag> cautions) const;
    [[nodiscard]] checkin::ClientSigns signsOf(const checkin::ClientEvidence& page, const ClientFile& file, const plateau::CheckDay& check) const;
    template <class Value>
    [[nodiscard]] Value orFail(Result<Value> result);

    Database& m_database;
    const lifts::Catalogue& m_catalogue;
    base::Date m_day;
    EventLog m_log;
    LiftCache m_cache;
};

/// What was read; an empty value where it could not be, and the database has failed.
template <class Value>
Value PageMaking::orFail(Result<Value> result)
{
    if (!result) {
        m_database.fail(result.error());
        return Value();
    }
    return *std::move(result);
}

std::vector<NamedSession> PageMaking::sessionsOf(base::ClientId client)
{
    return orFail(SessionReader(m_database).of(client));
}

plateau::CheckDay PageMaking::checkDayOf(std::span<const NamedSession> sessions) const
{
    std::vector<sessions::Session> plain;
    for (const NamedSession& one : sessions) {
        plain.push_back(one.session);
    }
    const analysis::Attendance attendance = analysis::attendanceOf(plain, m_day - (kAttendedDays - 1), m_day);
    return {m_day, attendance.counted(), attendance.came};
}

const lifts::Exercise* PageMaking::exerciseOf(const CachedLift& lift) const
{
    return m_catalogue.find(lift.machine.kit().exerciseKey);
}

std::optional<LiftHistory> PageMaking::historyOf(base::LiftId lift)
{
    auto fresh = m_cache.readFresh(lift);
    if (!fresh) {
        return std::nullopt;
    }
    LiftHistory history{*std::move(fresh), {}};
    for (LogEntry& entry : m_log.presentEntries(lift)) {
        history.events.push_back(std::move(entry.event));
    }
    return m_database.failure() ? std::nullopt : std::optional(std::move(history));
}

checkin::LiftRecord PageMaking::recordOf(const CachedLift& lift, const LiftHistory& history) const
{
    const lifts::Exercise* exercise = exerciseOf(lift);
    return {lift.id, lift.pattern, exercise != nullptr ? exercise->name : lift.machine.kit().exerciseKey, &history.fresh.machine, history.events};
}

void PageMaking::addLifts(checkin::ClientEvidence& page, const ClientFile& file, const plateau::CheckDay& check)
{
    for (const ClientLift& one : file.lifts) {
        if (const auto history = historyOf(one.lift.id)) {
            page.lifts.push_back(checkin::liftEvidenceOf(recordOf(one.lift, *history), check));
        }
    }
}

void PageMaking::addSessions(checkin::ClientEvidence& page, std::span<const NamedSession> sessions)
{
    const auto reports = orFail(SessionReader(m_database).reportsOf(page.client));
    for (auto one = sessions.rbegin(); one != sessions.rend(); ++one) {
        const sessions::Session& session = one->session;
        const bool isOver = !sessions::isOpen(session.state) && session.state != sessions::SessionState::Withdrawn;
        if (!isOver || session.date < page.days.from || session.date > m_day) {
            continue;
        }
        page.attendance.push_back({session.date, session.state});
        const auto report = reports.find(session.id);
        if (report != reports.end() && report->second.hasReadiness()) {
            page.readiness.push_back({session.date, report->second.sleep, report->second.soreness, report->second.stress});
        }
    }
}

void PageMaking::addFinding(checkin::ClientEvidence& page, const ClientFile& file, std::span<const NamedSession> sessions)
{
    checkin::ClientFacts facts = factsOf(file, sessions, m_day);
    std::vector<checkin::JudgedLift> judged;
    for (std::size_t i = 0; i < page.lifts.size(); ++i) {
        if (mayHaveLayoff(facts.lifts[i], m_day)) {
            applyLayoff(facts.lifts[i], *page.lifts[i].next);
        }
        judged.push_back(checkin::judgedLiftOf(page.lifts[i]));
    }
    const bool mayTrain = !clients::isBlocked(file.clearance, m_day) && !(facts.awayUntil && m_day < *facts.awayUntil);
    page.finding = checkin::findingOf(checkin::attentionFor(facts, m_day), judged, mayTrain);
    page.nextReview = m_day + checkin::reviewDaysAfter(page.finding.kind);
}

checkin::ClientSigns PageMaking::signsOf(const checkin::ClientEvidence& page, const ClientFile& file, const plateau::CheckDay& check) const
{
    checkin::ClientSigns signs;
    signs.plannedSessions = check.plannedSessions;
    signs.attendedSessions = check.attendedSessions;
    signs.readiness = page.readiness;
    for (const checkin::LiftEvidence& lift : page.lifts) {
        signs.stalledLifts += checkin::isStalled(lift.judgement, lift.flags, lift.isOnHold) ? 1 : 0;
    }
    for (const ClientLift& one : file.lifts) {
        if (one.lift.firstWork && (!signs.firstLoad || *one.lift.firstWork < *signs.firstLoad)) {
            signs.firstLoad = one.lift.firstWork;
        }
    }
    signs.isDirectionSettled = checkin::isDirectionSettled(file.direction, m_day);
    signs.isPlanToReview = checkin::planToReview(file.direction, m_day).has_value();
    return signs;
}

checkin::NeighbourSwaps PageMaking::swapsFor(const CachedLift& lift, std::span<const exchange::StudioEquipment> equipment,
                                             std::span<const lifts::CautionTag> cautions) const
{
    const lifts::Exercise* present = exerciseOf(lift);
    if (present == nullptr) {
        return {};
    }
    std::vector<lifts::EquipmentAtHand> atHand;
    for (const exchange::StudioEquipment& one : equipment) {
        if (one.unit == lift.machine.setup().unit) {
            atHand.push_back({one.name, one.kind, one.equipment});
        }
    }
    return checkin::neighbourSwaps(m_catalogue, *present, lifts::swapOptions(m_catalogue, *present, lift.machine.kit().equipment, atHand, cautions));
}

void PageMaking::addChoices(checkin::ClientEvidence& page, const ClientFile& file, const checkin::ClientSigns& signs)
{
    const auto equipment = orFail(StudioReader(m_database).equipment());
    std::vector<lifts::CautionTag> cautions;
    for (const clients::Caution& caution : file.cautions) {
        cautions.insert(cautions.end(), caution.tags.begin(), caution.tags.end());
    }
    for (std::size_t i = 0; i < page.lifts.size(); ++i) {
        const CachedLift& lift = file.lifts[i].lift;
        page.lifts[i].choices = checkin::choicesFor(lift.machine, page.lifts[i], signs, swapsFor(lift, equipment, cautions), m_day);
    }
}

checkin::ClientEvidence PageMaking::page(const ClientFile& file)
{
    checkin::ClientEvidence page;
    page.client = file.client.id;
    page.name = file.client.name;
    page.goal = file.client.goal;
    page.coachName = file.coachName;
    page.days = checkin::checkInDays(m_day);
    if (file.client.birthDate) {
        page.age = base::ageOn(*file.client.birthDate, m_day);
    }
    const auto sessions = sessionsOf(file.client.id);
    const plateau::CheckDay check = checkDayOf(sessions);
    page.history = orFail(DecisionReader(m_database).history(file.client.id));
    std::erase_if(page.history, [this](const checkin::Decision& one) { return one.day > m_day; });
    addLifts(page, file, check);
    addSessions(page, sessions);
    if (!m_database.failure()) {
        addFinding(page, file, sessions);
        addChoices(page, file, signsOf(page, file, check));
    }
    return page;
}

std::optional<ForecastOrLack> PageMaking::forecast(const ClientFile& file, base::LiftId id)
{
    const auto check = checkDayOf(sessionsOf(file.client.id));
    for (const ClientLift& one : file.lifts) {
        const auto history = one.lift.id == id ? historyOf(id) : std::nullopt;
        if (history) {
            const checkin::LiftRecord record = recordOf(one.lift, *history);
            return checkin::forecastOf(record, checkin::liftEvidenceOf(record, check), m_day);
        }
    }
    return std::nullopt;
}

}  // namespace

Result<checkin::ClientEvidence> CheckInReader::page(base::ClientId client, base::Date day)
{
    const Snapshot snapshot(m_database);
    const auto file = ClientReader(m_database).read(client, day);
    if (!file) {
        return tl::make_unexpected(file.error());
    }
    return m_database.resultOf(PageMaking(m_database, m_catalogue, day).page(*file));
}

Result<ForecastOrLack> CheckInReader::forecast(base::ClientId client, base::LiftId lift, base::Date day)
{
    const Snapshot snapshot(m_database);
    const auto file = ClientReader(m_database).read(client, day);
    if (!file) {
        return tl::make_unexpected(file.error());
    }
    auto forecast = PageMaking(m_database, m_catalogue, day).forecast(*file, lift);
    if (!forecast && !m_database.failure()) {
        return storeError(StoreError::Kind::Refused, QStringLiteral("%1 has no lift %2").arg(QString::fromStdString(file->client.name)).arg(lift.value()));
    }
    return m_database.resultOf(std::move(forecast).value_or(tl::make_unexpected(checkin::ForecastLack())));
}

}  // namespace chalk::store
