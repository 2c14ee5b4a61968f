#include "core/store/people_reader.h"

#include "core/clients/profile.h"
#include "core/store/client_forms.h"
#include "core/store/lift_codec.h"
#include "core/store/statement.h"
#include "core/store/studio_reader.h"
#include "core/tables/folded_text.h"

#include <QJsonDocument>
#include <QJsonObject>

#include <algorithm>

namespace chalk::store {

namespace {

std::vector<std::string> coachesNotThere(const tables::TableContent& content, const std::vector<clients::Coach>& coaches)
{
    std::vector<std::string> missing;
    for (const tables::ListedPerson& person : content.persons) {
        const std::string wanted = tables::foldedText(person.coach);
        const bool isThere = std::any_of(coaches.begin(), coaches.end(), [&wanted](const clients::Coach& one) { return tables::foldedText(one.name) == wanted; });
        if (!wanted.empty() && !isThere && std::find(missing.begin(), missing.end(), person.coach) == missing.end()) {
            missing.push_back(person.coach);
        }
    }
    return missing;
}

/// Who is certainly a client is added to, each client once; who may be one waits for a decision.
std::vector<PersonDecision> decisionsFor(std::size_t persons, const std::vector<tables::PersonMatch>& matches, const std::vector<tables::KnownPerson>& known)
{
    std::vector<PersonDecision> decisions(persons);
    std::set<base::ClientId> taken;
    for (const tables::PersonMatch& match : matches) {
        const base::ClientId client = known[match.second].id;
        const bool isSure = match.isCertain && taken.insert(client).second;
        decisions[match.first] = {isSure ? PersonChoice::AddTo : PersonChoice::Skip, isSure ? client : base::ClientId()};
    }
    return decisions;
}

}  // namespace

Result<std::vector<tables::KnownPerson>> PeopleReader::known()
{
    const Snapshot snapshot(m_database);
    std::map<base::ClientId, QJsonObject> profiles;
    Statement forms(m_database, QStringLiteral("SELECT client_id, detail, id FROM form WHERE kind = 'profile' ORDER BY client_id, day, id"));
    forms.run();
    while (forms.next()) {
        profiles[base::ClientId(forms.integer(0))] = QJsonDocument::fromJson(forms.opened(1, forms.sealedRow("form", forms.integer(2)), "detail").toUtf8()).object();
    }
    std::vector<tables::KnownPerson> known;
    Statement rows(m_database, QStringLiteral("SELECT id, name, birth_day FROM client WHERE is_withdrawn = 0 ORDER BY name, id"));
    rows.run();
    while (rows.next()) {
        const base::ClientId id(rows.integer(0));
        const QJsonObject& profile = profiles[id];
        known.push_back({id, rows.text(1), rows.optionalDate(2), profile[QStringLiteral("phone")].toString().toStdString(),
                         profile[QStringLiteral("email")].toString().toStdString()});
    }
    return m_database.resultOf(std::move(known));
}

Result<std::map<base::ClientId, std::set<base::Date>>> PeopleReader::recordedDays()
{
    const Snapshot snapshot(m_database);
    std::map<base::ClientId, std::set<base::Date>> days;
    Statement rows(m_database, QStringLiteral("SELECT client_id, day FROM session WHERE state = 'recorded'"));
    rows.run();
    while (rows.next()) {
        days[base::ClientId(rows.integer(0))].insert(rows.date(1));
    }
    return m_database.resultOf(std::move(days));
}

Result<std::set<base::ClientId>> PeopleReader::consented(const std::vector<tables::KnownPerson>& known, base::Date day)
{
    const Snapshot snapshot(m_database);
    std::set<base::ClientId> consented;
    for (const tables::KnownPerson& person : known) {
        const auto profile = ClientForms(m_database).profile(person.id);
        if (!profile) {
            return tl::make_unexpected(profile.error());
        }
        if (clients::canKeepHealth(*profile, person.birthDate, day)) {
            consented.insert(person.id);
        }
    }
    return m_database.resultOf(std::move(consented));
}

Result<base::MassUnit> PeopleReader::usualUnit()
{
    const Snapshot snapshot(m_database);
    Statement rows(m_database, QStringLiteral("SELECT unit FROM client WHERE is_withdrawn = 0 GROUP BY unit ORDER BY count(*) DESC, unit"));
    const base::MassUnit unit = rows.run() && rows.next() ? unitOf(rows.qtext(0)) : base::MassUnit::Kilogram;
    return m_database.resultOf(unit);
}

Result<PeopleProposal> PeopleReader::proposal(const tables::TableContent& content, const lifts::Catalogue& catalogue, base::Date today)
{
    const Snapshot snapshot(m_database);
    const auto coaches = StudioReader(m_database).coaches();
    auto persons = known();
    const auto unit = usualUnit();
    if (!coaches || !persons || !unit) {
        return tl::make_unexpected(*m_database.failure());
    }
    auto consented = this->consented(*persons, today);
    if (!consented) {
        return tl::make_unexpected(consented.error());
    }
    PeopleProposal proposal;
    proposal.people.consented = *std::move(consented);
    proposal.known = *std::move(persons);
    proposal.matches = tables::matchesWith(content.persons, proposal.known);
    proposal.unknownCoaches = coachesNotThere(content, *coaches);
    proposal.people.content = &content;
    proposal.people.persons = decisionsFor(content.persons.size(), proposal.matches, proposal.known);
    proposal.people.today = today;
    proposal.people.unit = *unit;
    proposal.people.coach = coaches->empty() ? base::CoachId() : coaches->front().id;
    for (const std::string& name : content.exercises) {
        const tables::ExerciseMatch match = tables::exerciseNamed(name, catalogue);
        proposal.exercises.push_back(match);
        proposal.people.exercises.push_back(match.isCertain ? match.exercise : nullptr);
    }
    return proposal;
}

}  // namespace chalk::store
