#include "app/commands/import_command.h"

#include "app/commands/import_choices.h"
#include "app/commands/stop_request.h"
#include "core/exchange/catalogue_json.h"
#include "ui/common/formats.h"
#include "ui/people/import_words.h"

#include <QFileInfo>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

namespace chalk::app {

namespace {

using store::PeopleImported;
using store::PersonChoice;
using ui::common::qstring;

constexpr int kMostFiles = 20;

/// One import on its way from its files to the studio.
class ImportRun {
public:
    ImportRun(const CommandContext& context, store::Database& database) : m_context(context), m_database(database), m_catalogue(exchange::builtInCatalogue()) {}

    int run();

private:
    [[nodiscard]] bool readFiles();
    [[nodiscard]] bool readFile(const QString& name, base::MassUnit usualUnit);
    /// Persons and exercises that nobody has decided about.
    [[nodiscard]] QStringList openQuestions() const;
    int takeIn(store::PeopleProposal& proposal);
    int preview(const store::PeopleProposal& proposal);
    int write(const PeopleImported& imported);
    [[nodiscard]] QJsonObject json(const PeopleImported& imported) const;

    const CommandContext& m_context;
    store::Database& m_database;
    lifts::Catalogue m_catalogue;
    tables::TableContent m_content;
    QStringList m_files;
    QStringList m_readings;
    std::optional<store::PeopleProposal> m_proposal;
};

bool ImportRun::readFile(const QString& name, base::MassUnit usualUnit)
{
    const auto bytes = m_context.readInput(name);
    const auto wishes = bytes ? tableWishes(m_context, usualUnit) : std::nullopt;
    if (!wishes) {
        return false;
    }
    const auto file = exchange::inspectTable(*bytes, *wishes);
    if (!file) {
        m_context.refuse(QStringLiteral("%1: %2").arg(name, QString::fromStdString(exchange::textOf(file.error()))));
        return false;
    }
    tables::TableLayout layout = file->layout;
    if (file->kind == exchange::TableKind::Table) {
        if (!changeLayout(m_context, *file, layout)) {
            return false;
        }
        if (const auto problem = tables::problemOf(layout)) {
            m_context.refuse(QStringLiteral("%1: %2").arg(name, ui::people::problemText(*problem)));
            return false;
        }
    }
    m_readings.append(name + QStringLiteral(": ") + ui::people::readingText(*file, layout));
    for (std::size_t i = 0; i < layout.columns.size(); ++i) {
        const auto field = layout.columns[i];
        m_readings.append(QStringLiteral("  %1: %2").arg(qstring(file->headings[i]), field ? ui::people::fieldName(*field) : QStringLiteral("passed over")));
    }
    if (const QString left = ui::people::leftOutText(*file, layout); !left.isEmpty()) {
        m_readings.append(QStringLiteral("  ") + left);
    }
    return exchange::readTable(*file, layout, m_content, static_cast<int>(m_files.size()) - 1, m_context.today, [](int) { return !StopRequest::isMade(); });
}

bool ImportRun::readFiles()
{
    const auto unit = store::PeopleReader(m_database).usualUnit();
    if (!unit) {
        m_context.report(unit.error());
        return false;
    }
    for (const QString& name : m_context.operands) {
        m_files.append(name == QLatin1String("-") ? name : QFileInfo(name).fileName());
        if (!readFile(name, *unit)) {
            return false;
        }
    }
    return true;
}

QStringList ImportRun::openQuestions() const
{
    QStringList questions;
    for (const tables::PersonMatch& match : m_proposal->matches) {
        if (m_proposal->people.persons[match.first].choice == PersonChoice::Skip) {
            const auto& known = m_proposal->known[match.second];
            questions.append(QStringLiteral("%1 may be client %2, %3: %4 (--person \"%1=%2\", =new or =skip)")
                                 .arg(qstring(m_content.persons[match.first].name))
                                 .arg(known.id.value())
                                 .arg(qstring(known.name), ui::people::groundText(match.ground)));
        }
    }
    for (std::size_t i = 0; i < m_proposal->exercises.size(); ++i) {
        const tables::ExerciseMatch& match = m_proposal->exercises[i];
        if (!match.isCertain) {
            const QString hint = match.exercise == nullptr ? QString() : QStringLiteral("; perhaps %1").arg(qstring(match.exercise->key));
            questions.append(QStringLiteral("%1 is no exercise of the catalogue%2 (--exercise \"%1=KEY\", or =- to leave it out)").arg(qstring(m_content.exercises[i]), hint));
        }
    }
    return questions;
}

QJsonObject ImportRun::json(const PeopleImported& imported) const
{
    QJsonArray faults;
    for (const tables::CellFault& fault : m_content.faults) {
        faults.append(QJsonObject{{QStringLiteral("file"), m_files.value(fault.place.file)},
                                  {QStringLiteral("line"), fault.place.line},
                                  {QStringLiteral("column"), fault.column == 0 ? QJsonValue() : QJsonValue(fault.column)},
                                  {QStringLiteral("character"), fault.place.column},
                                  {QStringLiteral("heading"), qstring(fault.heading)},
                                  {QStringLiteral("reason"), qstring(fault.reason)}});
    }
    return {{QStringLiteral("act"), imported.act.isNone() ? QJsonValue() : QJsonValue(static_cast<qint64>(imported.act.value()))},
            {QStringLiteral("rows"), m_content.rows},
            {QStringLiteral("new_clients"), imported.newClients},
            {QStringLiteral("known_clients"), imported.knownClients},
            {QStringLiteral("skipped_persons"), imported.skippedPersons},
            {QStringLiteral("sessions"), imported.sessions},
            {QStringLiteral("sessions_there"), imported.sessionsThere},
            {QStringLiteral("lifts_begun"), imported.lifts},
            {QStringLiteral("lifts_done"), imported.exposures},
            {QStringLiteral("sets_left_out"), imported.setsLeftOut},
            {QStringLiteral("body_masses_left_out"), imported.massesLeftOut},
            {QStringLiteral("faults"), faults},
            {QStringLiteral("questions"), QJsonArray::fromStringList(openQuestions())},
            {QStringLiteral("reading"), QJsonArray::fromStringList(m_readings)}};
}

int ImportRun::preview(const store::PeopleProposal& proposal)
{
    const auto recorded = store::PeopleReader(m_database).recordedDays();
    if (!recorded) {
        return m_context.report(recorded.error());
    }
    const PeopleImported would = store::previewOf(proposal.people, *recorded);
    if (m_context.isJson()) {
        m_context.out << QJsonDocument(json(would)).toJson();
        return kDone;
    }
    m_context.out << m_readings.join(QLatin1Char('\n')) << '\n';
    for (const tables::CellFault& fault : m_content.faults) {
        m_context.out << "  Fault: " << ui::people::faultText(fault, m_files) << '\n';
    }
    for (const QString& question : openQuestions()) {
        m_context.out << "  Open: " << question << '\n';
    }
    for (const std::string& coach : proposal.unknownCoaches) {
        m_context.out << "  Coach " << qstring(coach) << " is not one of the studio: the clients go to the coach of --coach, or to the first.\n";
    }
    m_context.out << "It would take in: " << ui::people::importedText(would) << '\n' << ui::people::assumptionsText() << '\n';
    return kDone;
}

int ImportRun::write(const PeopleImported& imported)
{
    if (m_context.isJson()) {
        m_context.out << QJsonDocument(json(imported)).toJson();
        return kDone;
    }
    m_context.out << "Taken in: " << ui::people::importedText(imported) << '\n';
    for (const tables::CellFault& fault : m_content.faults) {
        m_context.out << "  Left out: " << ui::people::faultText(fault, m_files) << '\n';
    }
    return kDone;
}

int ImportRun::takeIn(store::PeopleProposal& proposal)
{
    const QStringList questions = openQuestions();
    if (!m_context.has(QStringLiteral("rest")) && (!m_content.faults.empty() || !questions.isEmpty())) {
        for (const tables::CellFault& fault : m_content.faults) {
            m_context.err << ui::people::faultText(fault, m_files) << '\n';
        }
        for (const QString& question : questions) {
            m_context.err << question << '\n';
        }
        return m_context.refuse(QStringLiteral("nothing was taken in; --rest takes in what has neither faults nor questions"));
    }
    proposal.people.source = m_files.join(QStringLiteral(", ")).toStdString();
    const StopRequest stop;
    const auto imported = store::importPeople(m_database, proposal.people, m_context.atUtc(), store::randomSessionCode, [](int, int) { return !StopRequest::isMade(); });
    if (!imported && imported.error().kind == store::StoreError::Kind::Refused) {
        return m_context.refuse(imported.error().message);
    }
    return imported ? write(*imported) : m_context.report(imported.error());
}

int ImportRun::run()
{
    if (!readFiles()) {
        return kWrongUse;
    }
    auto proposal = store::PeopleReader(m_database).proposal(m_content, m_catalogue, m_context.today);
    if (!proposal) {
        return m_context.report(proposal.error());
    }
    if (!changeProposal(m_context, m_database, m_catalogue, *proposal)) {
        return kWrongUse;
    }
    m_proposal = *std::move(proposal);
    return m_context.has(QStringLiteral("preview")) ? preview(*m_proposal) : takeIn(*m_proposal);
}

int runImport(const CommandContext& context)
{
    const auto database = context.openStudio(store::OpenMode::MustExist);
    return database ? ImportRun(context, **database).run() : context.report(database.error());
}

std::vector<Option> importOptions()
{
    return {{QStringLiteral("map"), QStringLiteral("FIELD=COLUMN,…"), QStringLiteral("what columns say, by heading or number; - for a column that is passed over")},
            {QStringLiteral("dates"), QStringLiteral("ORDER"), QStringLiteral("ymd, dmy or mdy; else as the days look")},
            {QStringLiteral("decimals"), QStringLiteral("SIGN"), QStringLiteral("point or comma; else as the numbers look")},
            {QStringLiteral("unit"), QStringLiteral("UNIT"), QStringLiteral("kg or lb, where neither heading nor cell names one")},
            {QStringLiteral("encoding"), QStringLiteral("NAME"), QStringLiteral("utf-8, utf-16le, utf-16be or windows-1252; else as the bytes look")},
            {QStringLiteral("separator"), QStringLiteral("MARK"), QStringLiteral("one of , ; | or tab; else as the lines look")},
            {QStringLiteral("exercise"), QStringLiteral("NAME=KEY,…"), QStringLiteral("what a name means in the catalogue; - leaves it out")},
            {QStringLiteral("person"), QStringLiteral("NAME=WHO,…"), QStringLiteral("new, skip, or the client that it is")},
            {QStringLiteral("coach"), QStringLiteral("NAME"), QStringLiteral("of clients whose coach the studio does not have; else the first")},
            {QStringLiteral("rest"), {}, QStringLiteral("leave out rows with faults and what is open, and take in the rest")},
            {QStringLiteral("preview"), {}, QStringLiteral("say how the files are read and what would be taken in; change nothing")}};
}

}  // namespace

Command importCommand()
{
    return {QStringLiteral("import"),
            QStringLiteral("take people and their past sessions in from lists (CSV) and vCards"),
            QStringLiteral("FILE..."),
            1,
            kMostFiles,
            importOptions(),
            QStringLiteral("A list is CSV with a heading for each column, in any order: people, a row each; or what they did, a row for a set or for sets alike.\n"
                           "Encoding, separator, columns, days, numbers and units are detected; --preview shows how. Fields: name, first_name, last_name,\n"
                           "birth_date, phone, mail, goal, unit, body_mass, sessions_per_week, coach, started, notes; of sessions day, exercise, load, reps,\n"
                           "sets, set, rir, rest, session_note, minutes. vCards are 3.0 or 4.0. Files are read together: persons of one name are one.\n"
                           "All of it is taken in as one act, or nothing. Where a row is faulty or something is open, nothing is taken in without --rest."),
            runImport};
}

}  // namespace chalk::app
