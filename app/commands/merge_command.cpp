#include "app/commands/merge_command.h"

#include "app/commands/client_choice.h"
#include "core/store/people_merge.h"
#include "core/store/people_reader.h"
#include "ui/common/formats.h"
#include "ui/people/import_words.h"
#include "ui/people/merge_words.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

namespace chalk::app {

namespace {

using ui::common::qstring;

int listLikely(const CommandContext& context, store::Database& database)
{
    const auto known = store::PeopleReader(database).known();
    if (!known) {
        return context.report(known.error());
    }
    QJsonArray pairs;
    for (const tables::PersonMatch& match : tables::matchesAmong(*known)) {
        const tables::KnownPerson& first = (*known)[match.first];
        const tables::KnownPerson& second = (*known)[match.second];
        pairs.append(QJsonObject{{QStringLiteral("first"), static_cast<qint64>(first.id.value())},
                                 {QStringLiteral("second"), static_cast<qint64>(second.id.value())},
                                 {QStringLiteral("ground"), qstring(tables::keyOf(match.ground))}});
        if (!context.isJson()) {
            context.out << first.id.value() << ' ' << qstring(first.name) << " and " << second.id.value() << ' ' << qstring(second.name) << ": "
                        << ui::people::groundText(match.ground) << '\n';
        }
    }
    if (context.isJson()) {
        context.out << QJsonDocument(QJsonObject{{QStringLiteral("pairs"), pairs}}).toJson();
    } else if (pairs.isEmpty()) {
        context.out << "No two clients look like one.\n";
    }
    return kDone;
}

QJsonArray patternKeys(const std::vector<lifts::Pattern>& patterns)
{
    QJsonArray keys;
    for (const lifts::Pattern pattern : patterns) {
        keys.append(qstring(lifts::keyOf(pattern)));
    }
    return keys;
}

QJsonObject mergeJson(const store::MergePlan& plan, base::ActId act)
{
    QJsonArray filled;
    for (const std::string& field : plan.filled) {
        filled.append(qstring(field));
    }
    return {{QStringLiteral("kept"), static_cast<qint64>(plan.into.value())},
            {QStringLiteral("withdrawn"), static_cast<qint64>(plan.from.value())},
            {QStringLiteral("act"), act.isNone() ? QJsonValue() : QJsonValue(static_cast<qint64>(act.value()))},
            {QStringLiteral("lifts_moved"), patternKeys(plan.liftsMoved)},
            {QStringLiteral("lifts_joined"), patternKeys(plan.liftsJoined)},
            {QStringLiteral("sessions"), plan.sessions},
            {QStringLiteral("cautions"), plan.cautions},
            {QStringLiteral("filled"), filled},
            {QStringLiteral("forms_that_stay"), plan.formsThatStay}};
}

int mergeInto(const CommandContext& context, store::Database& database)
{
    const auto kept = chooseClient(context, database, context.operands[0]);
    const auto other = kept ? chooseClient(context, database, context.operands[1]) : std::nullopt;
    if (!other) {
        return kWrongUse;
    }
    const auto plan = store::planMerge(database, *kept, *other, context.today);
    if (!plan) {
        return plan.error().kind == store::StoreError::Kind::Refused ? context.refuse(plan.error().message) : context.report(plan.error());
    }
    base::ActId act;
    if (!context.has(QStringLiteral("preview"))) {
        const auto merged = store::mergeClients(database, *kept, *other, context.atUtc(), context.today);
        if (!merged) {
            return context.report(merged.error());
        }
        act = merged->act;
    }
    if (context.isJson()) {
        context.out << QJsonDocument(mergeJson(*plan, act)).toJson();
    } else {
        context.out << (act.isNone() ? "It would be so:\n" : "Merged:\n") << ui::people::mergeText(*plan) << '\n';
    }
    return kDone;
}

int runMerge(const CommandContext& context)
{
    if (context.operands.size() == 1) {
        return context.refuse(QStringLiteral("name two clients, the one that is kept first, or none"));
    }
    const auto database = context.openStudio(store::OpenMode::MustExist);
    if (!database) {
        return context.report(database.error());
    }
    return context.operands.isEmpty() ? listLikely(context, **database) : mergeInto(context, **database);
}

}  // namespace

Command mergeCommand()
{
    return {QStringLiteral("merge"),
            QStringLiteral("make two clients one, or list those who may be one person"),
            QStringLiteral("[KEPT OTHER]"),
            0,
            2,
            {{QStringLiteral("preview"), {}, QStringLiteral("only say what goes where")}},
            QStringLiteral("KEPT stays, with its clearance and health forms; the lifts, sessions and cautions of OTHER go over, gaps are filled, and OTHER is\n"
                           "withdrawn. Of a lift that both have, what was done is put together by date and judged anew. Clients are named or given by id."),
            runMerge};
}

}  // namespace chalk::app
