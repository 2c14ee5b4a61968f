#include "app/commands/trends_command.h"

#include "app/commands/client_choice.h"
#include "core/exchange/catalogue_json.h"
#include "core/exchange/trends_csv.h"
#include "core/exchange/trends_json.h"
#include "core/store/trends_reader.h"
#include "ui/common/formats.h"
#include "ui/trends/trend_sheets.h"
#include "ui/trends/trend_words.h"

#include <QJsonDocument>
#include <QSaveFile>

#include <algorithm>

namespace chalk::app {

namespace {

/// What was found, in every form that it is asked in.
struct TrendsAnswer {
    QString title;
    std::vector<ui::trends::TrendSheet> sheets;
    QStringList notes;
    QByteArray csv;
    QJsonObject json;
};

/// One of 4, 12 and 26. Writes one line and answers nothing where it is something else.
std::optional<int> weeksOf(const CommandContext& context)
{
    const int weeks = context.value(QStringLiteral("weeks"), QStringLiteral("12")).toInt();
    if (std::find(checkin::kTrendWeeks.begin(), checkin::kTrendWeeks.end(), weeks) == checkin::kTrendWeeks.end()) {
        context.refuse(QStringLiteral("--weeks must be 4, 12 or 26"));
        return std::nullopt;
    }
    return weeks;
}

void addGap(QStringList& notes, const QString& of, bool isMissing, const ui::trends::GapWords& words)
{
    if (isMissing) {
        notes.append(QStringLiteral("%1: %2. %3").arg(of, words.headline, words.text));
    }
}

QStringList notesOf(const checkin::Trends& trends)
{
    QStringList notes;
    addGap(notes, QStringLiteral("Load-volume"), trends.volumeGap.has_value(), ui::trends::volumeGapWords(trends));
    addGap(notes, QStringLiteral("Estimated best single"), trends.singlesGap.has_value(), ui::trends::singlesGapWords(trends));
    addGap(notes, QStringLiteral("Reps and rest"), trends.targetsGap.has_value(), ui::trends::targetsGapWords(trends));
    addGap(notes, QStringLiteral("Monotony"), trends.monotonyGap.has_value(), ui::trends::monotonyGapWords(trends));
    if (!trends.monotonyGap) {
        notes.append(QStringLiteral("Monotony: %1").arg(ui::trends::monotonyNote(trends)));
    }
    notes.append(ui::trends::ratioNote(trends));
    notes.append(ui::trends::carriesNote(trends));
    notes.removeAll(QString());
    return notes;
}

std::optional<TrendsAnswer> answerFor(const CommandContext& context, store::TrendsReader& reader, base::ClientId client, int weeks)
{
    if (client.isNone()) {
        const auto everybody = reader.readAll(context.today, weeks);
        if (!everybody) {
            context.report(everybody.error());
            return std::nullopt;
        }
        return TrendsAnswer{QStringLiteral("Everybody"), ui::trends::sheetsOf(*everybody), {}, exchange::trendsCsvOf(*everybody), exchange::toJson(*everybody)};
    }
    const auto read = reader.read(client, context.today, weeks);
    if (!read) {
        context.report(read.error());
        return std::nullopt;
    }
    return TrendsAnswer{ui::common::qstring(read->name), ui::trends::sheetsOf(*read), notesOf(read->trends),
                        exchange::trendsCsvOf(read->trends, read->name, read->unit), exchange::toJson(read->trends, read->name, read->unit)};
}

int writeCsv(const CommandContext& context, const QByteArray& csv)
{
    const QString file = context.value(QStringLiteral("csv"));
    if (file == QLatin1String("-")) {
        context.out << csv;
        return kDone;
    }
    QSaveFile save(file);
    if (!save.open(QIODevice::WriteOnly) || save.write(csv) != csv.size() || !save.commit()) {
        return context.giveUp(QStringLiteral("%1 cannot be written: %2").arg(file, save.errorString()));
    }
    return kDone;
}

int write(const CommandContext& context, const TrendsAnswer& answer, int weeks)
{
    if (context.has(QStringLiteral("csv"))) {
        return writeCsv(context, answer.csv);
    }
    if (context.isJson()) {
        context.out << QJsonDocument(answer.json).toJson();
        return kDone;
    }
    context.out << answer.title << ", " << ui::trends::rangeText(checkin::trendDays(context.today, weeks)) << '\n';
    for (const ui::trends::TrendSheet& sheet : answer.sheets) {
        context.out << '\n' << ui::trends::textOf(sheet);
    }
    if (!answer.notes.isEmpty()) {
        context.out << '\n' << answer.notes.join(QLatin1Char('\n')) << '\n';
    }
    return kDone;
}

int runTrends(const CommandContext& context)
{
    const auto weeks = weeksOf(context);
    if (!weeks) {
        return kWrongUse;
    }
    if (context.has(QStringLiteral("csv")) && context.isJson()) {
        return context.refuse(QStringLiteral("--csv and --json do not go together"));
    }
    const auto database = context.openStudio(store::OpenMode::ReadOnly);
    if (!database) {
        return context.report(database.error());
    }
    base::ClientId client;
    if (context.has(QStringLiteral("client"))) {
        const auto chosen = chooseClient(context, **database, context.value(QStringLiteral("client")));
        if (!chosen) {
            return kWrongUse;
        }
        client = *chosen;
    }
    const lifts::Catalogue catalogue = exchange::builtInCatalogue();
    store::TrendsReader reader(**database, catalogue);
    const auto answer = answerFor(context, reader, client, *weeks);
    return answer ? write(context, *answer, *weeks) : kFailed;
}

}  // namespace

Command trendsCommand()
{
    return {QStringLiteral("trends"),
            QStringLiteral("show how a client or everybody went over some weeks"),
            {},
            0,
            0,
            {{QStringLiteral("client"), QStringLiteral("NAME"), QStringLiteral("one client, by name, part of a name, or id; else everybody")},
             {QStringLiteral("weeks"), QStringLiteral("4|12|26"), QStringLiteral("over so many weeks, that of the day the last one; 12")},
             {QStringLiteral("csv"), QStringLiteral("FILE"), QStringLiteral("write the numbers as CSV (- for standard output)")}},
            QStringLiteral("Load-volume is load x repetitions of the working sets, by pattern; body mass is left out, carries and holds count by the policy.\n"
                           "Estimated singles are estimates, never tested maxima. Session load is effort x minutes; monotony is the mean of the seven days of\n"
                           "a week over their standard deviation (divided by 7), given where every session of the week was rated. The acute to chronic ratio\n"
                           "comes with its published criticism and forecasts nothing. What is missing says what it waits for."),
            runTrends};
}

}  // namespace chalk::app
