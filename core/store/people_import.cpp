#include "core/store/people_import.h"

#include "core/exchange/profile_json.h"
#include "core/store/client_forms.h"
#include "core/store/past_writer.h"
#include "core/store/people_changes.h"
#include "core/store/people_reader.h"
#include "core/store/profile_rows.h"
#include "core/store/studio_reader.h"
#include "core/tables/folded_text.h"

#include <QJsonDocument>

#include <algorithm>
#include <cstdint>

namespace chalk::store {

namespace {

using tables::ListedPerson;
using tables::ListedSet;

/// The sets by person, in the order of the files.
std::vector<std::vector<ListedSet>> setsByPerson(const tables::TableContent& content)
{
    std::vector<std::vector<ListedSet>> sets(content.persons.size());
    for (const ListedSet& set : content.sets) {
        sets[static_cast<std::size_t>(set.person)].push_back(set);
    }
    return sets;
}

const lifts::Exercise* exerciseOf(const PeopleToImport& people, std::int32_t index)
{
    return static_cast<std::size_t>(index) < people.exercises.size() ? people.exercises[static_cast<std::size_t>(index)] : nullptr;
}

PersonDecision decisionFor(const PeopleToImport& people, std::size_t person)
{
    return person < people.persons.size() ? people.persons[person] : PersonDecision();
}

/// Leaves the days out on which the client has a recorded session already; answers how many.
int dropDays(std::vector<tables::PastSession>& past, const std::set<base::Date>& recorded)
{
    return static_cast<int>(std::erase_if(past, [&recorded](const tables::PastSession& one) { return recorded.count(one.day) > 0; }));
}

void countPast(PeopleImported& done, const std::vector<tables::PastSession>& past)
{
    done.sessions += static_cast<int>(past.size());
    for (const tables::PastSession& session : past) {
        done.exposures += static_cast<int>(session.done.size());
    }
}

int setsLeftOut(const PeopleToImport& people, const std::vector<ListedSet>& sets)
{
    int count = 0;
    for (const ListedSet& set : sets) {
        count += exerciseOf(people, set.exercise) == nullptr ? set.count : 0;
    }
    return count;
}

/// Persons with days, and perhaps exercises, as numbers: so that a million sets are counted in a moment.
using CountedDays = std::vector<std::uint64_t>;

std::uint64_t countedDay(const ListedSet& set, std::size_t exercise)
{
    constexpr int kBitsOfExercise = 20;
    constexpr int kBitsOfDay = 22;
    const auto day = static_cast<std::uint64_t>(static_cast<std::uint32_t>(set.day.daysSince1970() + (1 << (kBitsOfDay - 1))));
    return static_cast<std::uint64_t>(static_cast<std::uint32_t>(set.person)) << (kBitsOfDay + kBitsOfExercise) | day << kBitsOfExercise | exercise;
}

int distinctOf(CountedDays& days)
{
    std::sort(days.begin(), days.end());
    return static_cast<int>(std::unique(days.begin(), days.end()) - days.begin());
}

void countPerson(PeopleImported& done, PersonChoice choice)
{
    done.newClients += choice == PersonChoice::New ? 1 : 0;
    done.knownClients += choice == PersonChoice::AddTo ? 1 : 0;
    done.skippedPersons += choice == PersonChoice::Skip ? 1 : 0;
}

bool isMassLeftOut(const PeopleToImport& people, const ListedPerson& person, const PersonDecision& decision)
{
    return person.bodyMass && decision.choice != PersonChoice::Skip && people.consented.count(decision.client) == 0;
}

QString profileText(const clients::Profile& profile)
{
    return QString::fromUtf8(QJsonDocument(exchange::toJson(profile)).toJson(QJsonDocument::Compact));
}

/// Puts what the list says into the gaps of a profile.
clients::Profile profileWith(clients::Profile profile, const ListedPerson& person)
{
    const auto fill = [](std::string& gap, const std::string& text) { gap = gap.empty() ? text : gap; };
    fill(profile.contact.phone, person.phone);
    fill(profile.contact.email, person.mail);
    fill(profile.trainingHistory, person.note);
    return profile;
}

/// One import on its way.
class ImportWork {
public:
    ImportWork(Database& database, const PeopleToImport& people, const QString& atUtc, const SessionCodes& newCode, const std::map<base::ClientId, std::set<base::Date>>& recorded);

    /// Whether all that is referred to is there and no client takes two persons in.
    void check();
    void add(std::size_t person, const std::vector<ListedSet>& sets);
    [[nodiscard]] Result<PeopleImported> finish();
    [[nodiscard]] bool hasFailed() const { return m_database.failure().has_value(); }

private:
    [[nodiscard]] base::CoachId coachOf(const ListedPerson& person) const;
    [[nodiscard]] PastOwner newClient(const ListedPerson& person, std::optional<base::Date> firstDay);
    [[nodiscard]] PastOwner knownClient(const ListedPerson& person, base::ClientId client);
    void writePast(const PastOwner& owner, std::size_t person, const std::vector<ListedSet>& sets);

    Database& m_database;
    const PeopleToImport& m_people;
    const std::map<base::ClientId, std::set<base::Date>>& m_recorded;
    ActWork m_work;
    ClientInserts m_inserts;
    PastWriter m_past;
    std::vector<clients::Coach> m_coaches;
    PeopleImported m_done;
};

std::vector<planning::EquipmentOnHand> equipmentIn(Database& database, base::MassUnit unit)
{
    std::vector<planning::EquipmentOnHand> equipment;
    const auto all = StudioReader(database).equipment();
    for (const exchange::StudioEquipment& one : all.value_or(std::vector<exchange::StudioEquipment>())) {
        if (one.unit == unit) {
            equipment.push_back({one.key, one.kind, one.equipment});
        }
    }
    return equipment;
}

ImportWork::ImportWork(Database& database, const PeopleToImport& people, const QString& atUtc, const SessionCodes& newCode,
                       const std::map<base::ClientId, std::set<base::Date>>& recorded)
    : m_database(database),
      m_people(people),
      m_recorded(recorded),
      m_work(database),
      m_inserts(database),
      m_past(database, m_work, equipmentIn(database, base::MassUnit::Kilogram), equipmentIn(database, base::MassUnit::Pound), newCode)
{
    m_coaches = StudioReader(database).coaches().value_or(std::vector<clients::Coach>());
    m_work.begin(ActKind::Import, atUtc, {}, {});
    m_done.act = m_work.outcome().act;
    Statement(database, QStringLiteral("INSERT INTO import_source (act_id, source) VALUES (?, ?)")).run(m_done.act, people.source);
}

void ImportWork::check()
{
    std::set<base::ClientId> taken;
    for (std::size_t i = 0; i < m_people.content->persons.size(); ++i) {
        const PersonDecision decision = decisionFor(m_people, i);
        if (decision.choice == PersonChoice::AddTo && !taken.insert(decision.client).second) {
            m_work.refuse(QStringLiteral("%1 cannot be two persons of the list").arg(QString::fromStdString(m_people.content->persons[i].name)));
        }
    }
    const bool isThere = std::any_of(m_coaches.begin(), m_coaches.end(), [this](const clients::Coach& one) { return one.id == m_people.coach; });
    if (!isThere) {
        m_work.refuse(QStringLiteral("There is no coach %1").arg(m_people.coach.value()));
    }
}

base::CoachId ImportWork::coachOf(const ListedPerson& person) const
{
    const std::string wanted = tables::foldedText(person.coach);
    const auto found = std::find_if(m_coaches.begin(), m_coaches.end(), [&wanted](const clients::Coach& one) { return tables::foldedText(one.name) == wanted; });
    return found == m_coaches.end() ? m_people.coach : found->id;
}

PastOwner ImportWork::newClient(const ListedPerson& person, std::optional<base::Date> firstDay)
{
    clients::Client client;
    client.name = person.name;
    client.birthDate = person.birthDate;
    client.goal = person.goal;
    client.coach = coachOf(person);
    client.unit = person.unit.value_or(m_people.unit);
    m_done.massesLeftOut += person.bodyMass ? 1 : 0;  // a list says nothing of consent
    client.startedOn = person.startedOn.value_or(firstDay.value_or(m_people.today));
    client.sessionsPerWeek = person.sessionsPerWeek.value_or(client.sessionsPerWeek);
    const base::ClientId id = m_inserts.client(client);
    clients::Clearance clearance;
    clearance.state = clients::ClearanceState::Unanswered;
    m_inserts.clearance(id, clearance);
    ClientFacts after = readClientFacts(m_database, id);
    const clients::Profile profile = profileWith({}, person);
    if (profile != clients::Profile()) {
        after.profile = profileText(profile);
    }
    ClientFacts before;
    before.isWithdrawn = true;
    changeClientFacts(m_database, m_done.act, id, before, after, client.startedOn);
    return {id, client.coach, client.unit, client.bodyMass, client.name, true};
}

PastOwner ImportWork::knownClient(const ListedPerson& person, base::ClientId id)
{
    Statement row(m_database, QStringLiteral("SELECT ") + clientColumns() + QStringLiteral(" FROM client c WHERE c.id = ? AND c.is_withdrawn = 0"));
    if (!row.run(id) || !row.next()) {
        m_work.refuse(QStringLiteral("There is no client %1").arg(id.value()));
        return {};
    }
    const clients::Client client = clientOf(row);
    const ClientFacts before = readClientFacts(m_database, id);
    ClientFacts after = before;
    after.birthDate = before.birthDate ? before.birthDate : person.birthDate;
    after.goal = before.goal.empty() ? person.goal : before.goal;
    const auto profile = ClientForms(m_database).profile(id);
    const bool isKept = profile && clients::canKeepHealth(*profile, after.birthDate, m_people.today);
    m_done.massesLeftOut += person.bodyMass && !isKept ? 1 : 0;
    if (!before.bodyMass && person.bodyMass && isKept) {
        after.bodyMass = person.bodyMass->in(client.unit);
    }
    if (profile && profileWith(*profile, person) != *profile) {
        after.profile = profileText(profileWith(*profile, person));
    }
    changeClientFacts(m_database, m_done.act, id, before, after, m_people.today);
    return {id, client.coach, client.unit, after.bodyMass, client.name, false};
}

void ImportWork::writePast(const PastOwner& owner, std::size_t person, const std::vector<ListedSet>& sets)
{
    auto past = tables::pastSessionsOf(*m_people.content, static_cast<std::int32_t>(person), sets,
                                       [this](std::int32_t index) { return exerciseOf(m_people, index); }, owner.unit);
    if (const auto recorded = m_recorded.find(owner.client); !owner.isNew && recorded != m_recorded.end()) {
        m_done.sessionsThere += dropDays(past, recorded->second);
    }
    countPast(m_done, past);
    m_done.lifts += m_past.write(owner, past);
}

void ImportWork::add(std::size_t index, const std::vector<ListedSet>& sets)
{
    const ListedPerson& person = m_people.content->persons[index];
    const PersonDecision decision = decisionFor(m_people, index);
    countPerson(m_done, decision.choice);
    if (decision.choice == PersonChoice::Skip) {
        return;
    }
    const auto first = std::min_element(sets.begin(), sets.end(), [](const ListedSet& a, const ListedSet& b) { return a.day < b.day; });
    const PastOwner owner = decision.choice == PersonChoice::New ? newClient(person, first == sets.end() ? std::nullopt : std::optional(first->day))
                                                                 : knownClient(person, decision.client);
    m_done.setsLeftOut += setsLeftOut(m_people, sets);
    writePast(owner, index, sets);
}

Result<PeopleImported> ImportWork::finish()
{
    if (m_done.newClients + m_done.knownClients == 0) {
        m_work.refuse(QStringLiteral("There is nobody to take in"));
    }
    if (const auto finished = m_work.finish(); !finished) {
        return tl::make_unexpected(finished.error());
    }
    return m_done;
}

}  // namespace

PeopleImported previewOf(const PeopleToImport& people, const std::map<base::ClientId, std::set<base::Date>>& recorded)
{
    PeopleImported done;
    std::vector<PersonDecision> decisions;
    for (std::size_t i = 0; i < people.content->persons.size(); ++i) {
        decisions.push_back(decisionFor(people, i));
        countPerson(done, decisions.back().choice);
        done.massesLeftOut += isMassLeftOut(people, people.content->persons[i], decisions.back()) ? 1 : 0;
    }
    CountedDays sessions;
    CountedDays there;
    CountedDays exposures;
    for (const ListedSet& set : people.content->sets) {
        const PersonDecision& decision = decisions[static_cast<std::size_t>(set.person)];
        const lifts::Exercise* exercise = exerciseOf(people, set.exercise);
        if (decision.choice == PersonChoice::Skip || exercise == nullptr) {
            done.setsLeftOut += decision.choice == PersonChoice::Skip ? 0 : set.count;
            continue;
        }
        const auto days = recorded.find(decision.client);
        if (decision.choice == PersonChoice::AddTo && days != recorded.end() && days->second.count(set.day) > 0) {
            there.push_back(countedDay(set, 0));
            continue;
        }
        const auto first = std::find(people.exercises.begin(), people.exercises.end(), exercise);
        sessions.push_back(countedDay(set, 0));
        exposures.push_back(countedDay(set, static_cast<std::size_t>(first - people.exercises.begin()) + 1));
    }
    done.sessions = distinctOf(sessions);
    done.sessionsThere = distinctOf(there);
    done.exposures = distinctOf(exposures);
    return done;
}

Result<PeopleImported> importPeople(Database& database, const PeopleToImport& people, const QString& atUtc, const SessionCodes& newCode, const Progress& progress)
{
    const auto recorded = PeopleReader(database).recordedDays();
    if (!recorded) {
        return tl::make_unexpected(recorded.error());
    }
    const auto sets = setsByPerson(*people.content);
    ImportWork work(database, people, atUtc, newCode, *recorded);
    work.check();
    const int count = static_cast<int>(sets.size());
    for (int i = 0; i < count && !work.hasFailed(); ++i) {
        if (progress && !progress(i, count)) {
            return storeError(StoreError::Kind::Cancelled, QStringLiteral("Stopped: nothing was taken in"));
        }
        work.add(static_cast<std::size_t>(i), sets[static_cast<std::size_t>(i)]);
    }
    return work.finish();
}

}  // namespace chalk::store
