#include "app/commands/import_choices.h"

#include "app/commands/client_choice.h"
#include "core/store/studio_reader.h"
#include "core/tables/folded_text.h"
#include "ui/common/formats.h"

#include <algorithm>

namespace chalk::app {

namespace {

using store::PersonChoice;
using ui::common::qstring;

std::optional<std::size_t> columnNamed(const exchange::TableFile& file, const QString& name)
{
    for (std::size_t i = 0; i < file.headings.size(); ++i) {
        if (qstring(file.headings[i]).compare(name, Qt::CaseInsensitive) == 0 || QString::number(i + 1) == name) {
            return i;
        }
    }
    return std::nullopt;
}

bool mapColumns(const CommandContext& context, const exchange::TableFile& file, tables::TableLayout& layout)
{
    const auto pairs = pairsOf(context, QStringLiteral("map"));
    for (const auto& [key, heading] : pairs.value_or(std::vector<std::pair<QString, QString>>())) {
        const auto field = tables::fieldOf(key.toStdString());
        const auto column = columnNamed(file, heading);
        if (!field && key != QLatin1String("-")) {
            context.refuse(QStringLiteral("--map: there is no field %1").arg(key));
            return false;
        }
        if (!column) {
            continue;  // another of the files has it
        }
        if (field) {
            std::replace(layout.columns.begin(), layout.columns.end(), field, std::optional<tables::Field>());
        }
        layout.columns[*column] = field;
        const bool isMass = field == tables::Field::Load || field == tables::Field::BodyMass;
        layout.columnUnits[*column] = isMass ? tables::unitInHeading(file.headings[*column]) : std::nullopt;
    }
    return pairs.has_value();
}

bool decideExercises(const CommandContext& context, const lifts::Catalogue& catalogue, store::PeopleProposal& proposal)
{
    const auto pairs = pairsOf(context, QStringLiteral("exercise"));
    for (const auto& [name, key] : pairs.value_or(std::vector<std::pair<QString, QString>>())) {
        const lifts::Exercise* exercise = catalogue.find(key.toStdString());
        if (exercise == nullptr && key != QLatin1String("-")) {
            context.refuse(QStringLiteral("--exercise: there is no exercise %1 in the catalogue").arg(key));
            return false;
        }
        const std::string folded = tables::foldedText(name.toStdString());
        const auto& names = proposal.people.content->exercises;
        const auto found = std::find_if(names.begin(), names.end(), [&folded](const std::string& one) { return tables::foldedText(one) == folded; });
        if (found == names.end()) {
            context.refuse(QStringLiteral("--exercise: no row names %1").arg(name));
            return false;
        }
        const auto index = static_cast<std::size_t>(found - names.begin());
        proposal.people.exercises[index] = exercise;
        proposal.exercises[index] = {exercise, true};
    }
    return pairs.has_value();
}

/// `new`, `skip`, or the client that it is.
std::optional<store::PersonDecision> decisionOf(const CommandContext& context, store::Database& database, const QString& value)
{
    if (value == QLatin1String("new")) {
        return store::PersonDecision{PersonChoice::New, {}};
    }
    if (value == QLatin1String("skip")) {
        return store::PersonDecision{PersonChoice::Skip, {}};
    }
    const auto client = chooseClient(context, database, value);
    return client ? std::optional(store::PersonDecision{PersonChoice::AddTo, *client}) : std::nullopt;
}

bool decidePersons(const CommandContext& context, store::Database& database, store::PeopleProposal& proposal)
{
    const auto pairs = pairsOf(context, QStringLiteral("person"));
    for (const auto& [name, value] : pairs.value_or(std::vector<std::pair<QString, QString>>())) {
        const auto decision = decisionOf(context, database, value);
        if (!decision) {
            return false;
        }
        const std::string wanted = tables::sortedWords(name.toStdString());
        bool isNamed = false;
        for (std::size_t i = 0; i < proposal.people.persons.size(); ++i) {
            if (tables::sortedWords(proposal.people.content->persons[i].name) == wanted) {
                proposal.people.persons[i] = *decision;
                std::erase_if(proposal.matches, [i](const tables::PersonMatch& match) { return match.first == i; });
                isNamed = true;
            }
        }
        if (!isNamed) {
            context.refuse(QStringLiteral("--person: no row names %1").arg(name));
            return false;
        }
    }
    return pairs.has_value();
}

bool decideCoach(const CommandContext& context, store::Database& database, store::PeopleProposal& proposal)
{
    const QString wanted = context.value(QStringLiteral("coach"));
    const auto coaches = store::StudioReader(database).coaches();
    if (wanted.isEmpty() || !coaches) {
        return coaches.has_value();
    }
    const auto found = std::find_if(coaches->begin(), coaches->end(), [&wanted](const clients::Coach& one) { return qstring(one.name).compare(wanted, Qt::CaseInsensitive) == 0; });
    if (found == coaches->end()) {
        context.refuse(QStringLiteral("--coach: there is no coach %1").arg(wanted));
        return false;
    }
    proposal.people.coach = found->id;
    return true;
}

}  // namespace

std::optional<std::vector<std::pair<QString, QString>>> pairsOf(const CommandContext& context, const QString& option)
{
    std::vector<std::pair<QString, QString>> pairs;
    for (const QString& part : context.value(option).split(QLatin1Char(','), Qt::SkipEmptyParts)) {
        const qsizetype sign = part.lastIndexOf(QLatin1Char('='));
        if (sign <= 0) {
            context.refuse(QStringLiteral("--%1: %2 has no =").arg(option, part));
            return std::nullopt;
        }
        pairs.emplace_back(part.left(sign).trimmed(), part.mid(sign + 1).trimmed());
    }
    return pairs;
}

std::optional<exchange::TableWishes> tableWishes(const CommandContext& context, base::MassUnit usualUnit)
{
    exchange::TableWishes wishes;
    wishes.usualUnit = usualUnit;
    if (context.has(QStringLiteral("encoding"))) {
        wishes.encoding = exchange::textEncodingOf(context.value(QStringLiteral("encoding")).toStdString());
        if (!wishes.encoding) {
            context.refuse(QStringLiteral("--encoding is utf-8, utf-16le, utf-16be or windows-1252"));
            return std::nullopt;
        }
    }
    if (context.has(QStringLiteral("separator"))) {
        const QString separator = context.value(QStringLiteral("separator"));
        const QString mark = separator == QLatin1String("tab") ? QStringLiteral("\t") : separator;
        if (mark.size() != 1 || !QStringLiteral(",;|\t").contains(mark)) {
            context.refuse(QStringLiteral("--separator is one of , ; | or tab"));
            return std::nullopt;
        }
        wishes.separator = mark.front().toLatin1();
    }
    return wishes;
}

bool changeLayout(const CommandContext& context, const exchange::TableFile& file, tables::TableLayout& layout)
{
    if (context.has(QStringLiteral("dates"))) {
        const auto order = tables::dateOrderOf(context.value(QStringLiteral("dates")).toStdString());
        if (!order) {
            context.refuse(QStringLiteral("--dates is ymd, dmy or mdy"));
            return false;
        }
        layout.days = *order;
        layout.dayGround = tables::DateGround::Certain;
    }
    if (context.has(QStringLiteral("decimals"))) {
        const auto sign = tables::decimalSignOf(context.value(QStringLiteral("decimals")).toStdString());
        if (!sign) {
            context.refuse(QStringLiteral("--decimals is point or comma"));
            return false;
        }
        layout.decimals = *sign;
    }
    if (context.has(QStringLiteral("unit"))) {
        const auto unit = tables::unitOfWord(context.value(QStringLiteral("unit")).toStdString());
        if (!unit) {
            context.refuse(QStringLiteral("--unit is kg or lb"));
            return false;
        }
        layout.unit = *unit;
        layout.isUnitStated = true;
    }
    return mapColumns(context, file, layout);
}

bool changeProposal(const CommandContext& context, store::Database& database, const lifts::Catalogue& catalogue, store::PeopleProposal& proposal)
{
    return decideExercises(context, catalogue, proposal) && decidePersons(context, database, proposal) && decideCoach(context, database, proposal);
}

}  // namespace chalk::app
