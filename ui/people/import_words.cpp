#include "ui/people/import_words.h"

#include "ui/common/formats.h"

#include <QCoreApplication>
#include <QStringList>

namespace chalk::ui::people {

namespace {

using common::qstring;

QString importWord(const char* text)
{
    return QCoreApplication::translate("Import", text);
}

QString groundOfDays(tables::DateGround ground)
{
    switch (ground) {
    case tables::DateGround::Either:
        return importWord(" (a guess: no day is above 12)");
    case tables::DateGround::Mixed:
        return importWord(" (some days fit another order only)");
    case tables::DateGround::NoDays:
    case tables::DateGround::Certain:
        break;
    }
    return {};
}

void addCount(QStringList& parts, int count, const char* one, const char* many)
{
    if (count != 0) {
        parts.append(QStringLiteral("%1 %2").arg(count).arg(importWord(count == 1 ? one : many)));
    }
}

}  // namespace

QString fieldName(tables::Field field)
{
    using tables::Field;
    switch (field) {
    case Field::Name: return importWord("Name");
    case Field::FirstName: return importWord("First name");
    case Field::LastName: return importWord("Last name");
    case Field::BirthDate: return importWord("Birth date");
    case Field::Phone: return importWord("Phone");
    case Field::Mail: return importWord("Email");
    case Field::Goal: return importWord("Goal");
    case Field::Unit: return importWord("Unit, kg or lb");
    case Field::BodyMass: return importWord("Body mass");
    case Field::SessionsPerWeek: return importWord("Sessions a week");
    case Field::Coach: return importWord("Coach");
    case Field::StartedOn: return importWord("Started on");
    case Field::ClientNote: return importWord("Notes on the client");
    case Field::Day: return importWord("Day of the session");
    case Field::Exercise: return importWord("Exercise");
    case Field::Load: return importWord("Load");
    case Field::Reps: return importWord("Reps, seconds or metres");
    case Field::Sets: return importWord("How many such sets");
    case Field::SetNumber: return importWord("Number of the set");
    case Field::Rir: return importWord("Reps left in reserve");
    case Field::Rest: return importWord("Rest");
    case Field::SessionNote: return importWord("Note on the session");
    case Field::Minutes: return importWord("Length of the session");
    }
    return {};
}

QString problemText(const tables::LayoutProblem& problem)
{
    switch (problem.fault) {
    case tables::LayoutFault::NoName:
        return importWord("No column says who it is: give one the name.");
    case tables::LayoutFault::FieldTwice:
        return importWord("%1 is given to two columns.").arg(fieldName(problem.field.value_or(tables::Field::Name)));
    case tables::LayoutFault::DayWithoutExercise:
        return importWord("Sets need an exercise: give a column to it.");
    case tables::LayoutFault::ExerciseWithoutDay:
        return importWord("Sets need a day: give a column to it.");
    case tables::LayoutFault::NoReps:
        return importWord("Sets need how many: give a column to the reps.");
    }
    return {};
}

QString encodingName(exchange::TextEncoding encoding)
{
    switch (encoding) {
    case exchange::TextEncoding::Utf8:
        return QStringLiteral("UTF-8");
    case exchange::TextEncoding::Utf16Little:
        return QStringLiteral("UTF-16 LE");
    case exchange::TextEncoding::Utf16Big:
        return QStringLiteral("UTF-16 BE");
    case exchange::TextEncoding::Windows1252:
        return importWord("Western European");
    }
    return {};
}

QString separatorName(char separator)
{
    switch (separator) {
    case ',':
        return importWord("comma");
    case ';':
        return importWord("semicolon");
    case '\t':
        return importWord("tab");
    default:
        return importWord("bar");
    }
}

QString dateOrderName(tables::DateOrder order)
{
    switch (order) {
    case tables::DateOrder::Ymd:
        return importWord("year-month-day");
    case tables::DateOrder::Dmy:
        return importWord("day.month.year");
    case tables::DateOrder::Mdy:
        return importWord("month/day/year");
    }
    return {};
}

QString readingText(const exchange::TableFile& file, const tables::TableLayout& layout)
{
    if (file.kind == exchange::TableKind::Cards) {
        return importWord(file.records == 1 ? "%1 vCard, %2" : "%1 vCards, %2").arg(file.records).arg(encodingName(file.encoding));
    }
    QStringList parts{importWord(file.records == 1 ? "%1 row" : "%1 rows").arg(file.records), encodingName(file.encoding), importWord("columns separated by %1").arg(separatorName(file.separator))};
    if (layout.dayGround != tables::DateGround::NoDays) {
        parts.append(dateOrderName(layout.days) + groundOfDays(layout.dayGround));
    }
    parts.append(layout.decimals == tables::DecimalSign::Comma ? importWord("decimal comma") : importWord("decimal point"));
    const QString unit = layout.unit == base::MassUnit::Kilogram ? QStringLiteral("kg") : QStringLiteral("lb");
    parts.append(layout.isUnitStated ? unit : importWord("%1 (a guess: nothing names the unit)").arg(unit));
    return parts.join(QStringLiteral(", "));
}

QString leftOutText(const exchange::TableFile& file, const tables::TableLayout& layout)
{
    QStringList names;
    if (file.kind == exchange::TableKind::Table) {
        for (const std::size_t column : tables::columnsLeftOut(layout)) {
            const QString heading = column < file.headings.size() ? qstring(file.headings[column]).simplified() : QString();
            names.append(heading.isEmpty() ? importWord("column %1").arg(column + 1) : heading);
        }
    }
    return names.isEmpty() ? QString() : importWord("Not taken: %1.").arg(names.join(QStringLiteral(", ")));
}

QString groundText(tables::MatchGround ground)
{
    switch (ground) {
    case tables::MatchGround::Mail:
        return importWord("the same email address");
    case tables::MatchGround::Name:
        return importWord("the same name");
    case tables::MatchGround::Phone:
        return importWord("the same phone number");
    case tables::MatchGround::NearName:
        return importWord("a name much like it");
    case tables::MatchGround::BirthDate:
        return importWord("born on the same day");
    }
    return {};
}

QString faultText(const tables::CellFault& fault, const QStringList& files)
{
    const QString file = files.size() > 1 && fault.place.file < files.size() ? files[fault.place.file] + QStringLiteral(": ") : QString();
    const QString line = file + importWord("line %1").arg(fault.place.line);
    const QString heading = qstring(fault.heading).simplified();
    const QString number = fault.column == 0 ? QString() : importWord("column %1").arg(fault.column);
    const bool isNumberEnough = heading.isEmpty() || heading == number;  // a table without headings
    const QString column = isNumberEnough ? number : number.isEmpty() ? heading : QStringLiteral("%1 (%2)").arg(heading, number);
    return QStringLiteral("%1: %2").arg(column.isEmpty() ? line : QStringLiteral("%1, %2").arg(line, column), qstring(fault.reason));
}

QString importedText(const store::PeopleImported& imported)
{
    QStringList parts;
    addCount(parts, imported.newClients, "new client", "new clients");
    addCount(parts, imported.knownClients, "client known already", "clients known already");
    addCount(parts, imported.sessions, "session", "sessions");
    addCount(parts, imported.exposures, "lift done", "lifts done");
    QStringList left;
    addCount(left, imported.skippedPersons, "person", "persons");
    addCount(left, imported.sessionsThere, "session that is recorded already", "sessions that are recorded already");
    addCount(left, imported.setsLeftOut, "set of an exercise without a match", "sets of exercises without a match");
    addCount(left, imported.massesLeftOut, "body mass without consent to keep health data", "body masses without consent to keep health data");
    const QString all = parts.isEmpty() ? importWord("nothing") : parts.join(QStringLiteral(", "));
    return left.isEmpty() ? all : importWord("%1. Left out: %2").arg(all, left.join(QStringLiteral(", ")));
}

QString importedBriefly(const store::PeopleImported& imported)
{
    QStringList parts;
    addCount(parts, imported.newClients, "new client", "new clients");
    addCount(parts, imported.sessions, "session", "sessions");
    return parts.isEmpty() ? importWord("a list") : parts.join(QStringLiteral(", "));
}

QString birthDayText(base::Date born)
{
    return common::shortDayText(born) + QLatin1Char(' ') + QString::number(static_cast<int>(born.ymd().year()));
}

QString assumptionsText()
{
    return importWord("A lift with load begins at Base load on its first day in the list, one without load at Pattern; from there on the rules judge day by day. "
                      "Loads stand as they were done, whatever the studio's equipment gives. Where the body mass is not known, no share of the body counts. "
                      "Sessions without an hour are put at 12:00. New clients wait for their health intake: their loaded work is blocked until then. A body mass "
                      "is health data: it is taken in where the client consented to keep such data, so never of a new client. What the studio knows of a client already "
                      "stays as it is: a list fills gaps.");
}

}  // namespace chalk::ui::people
