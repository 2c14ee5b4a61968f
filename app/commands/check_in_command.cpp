#include "app/commands/check_in_command.h"

#include "app/commands/client_choice.h"
#include "core/exchange/catalogue_json.h"
#include "core/exchange/check_in_json.h"
#include "core/store/check_in_reader.h"
#include "ui/common/check_in_summary.h"
#include "ui/common/check_in_words.h"
#include "ui/common/forecast_words.h"
#include "ui/common/formats.h"
#include "ui/common/plateau_words.h"

#include <QJsonArray>
#include <QJsonDocument>

namespace chalk::app {

namespace {

using checkin::ClientEvidence;
using checkin::LiftEvidence;
using store::ForecastOrLack;
using ui::common::qstring;

/// A lift's forecast or why there is none, by the places of the lifts on the page.
using Forecasts = std::vector<ForecastOrLack>;

void writeQueue(const CommandContext& context, const std::vector<checkin::QueueEntry>& queue, const lifts::Catalogue& catalogue)
{
    constexpr int kNameWidth = 24;
    constexpr int kFindingWidth = 18;
    for (const checkin::QueueEntry& entry : queue) {
        context.out << qstring(entry.name).leftJustified(kNameWidth) << ' ' << ui::common::findingName(entry.finding.kind).leftJustified(kFindingWidth) << ' '
                    << ui::common::queueWhyText(entry, catalogue);
        if (entry.decided) {
            context.out << "; decided: " << ui::common::choiceName(entry.decided->choice).toLower();
        }
        context.out << '\n';
    }
    if (queue.empty()) {
        context.out << "Nobody is due.\n";
    }
}

void writeLift(const CommandContext& context, const LiftEvidence& lift, const lifts::Catalogue& catalogue)
{
    context.out << "\n" << qstring(lift.name) << ": " << ui::common::stageName(lift.stage)
                << (lift.cycle > 1 ? QStringLiteral(", cycle %1").arg(lift.cycle) : QString()) << '\n';
    if (progression::isLoaded(lift.stage)) {
        context.out << "  " << ui::common::verdictWordsOf(lift.judgement, lift.evidence).inOneLine() << '\n';
        if (const QString step = ui::common::loadStepText(lift); !step.isEmpty()) {
            context.out << "  " << step << '\n';
        }
    }
    for (const checkin::Choice& choice : lift.choices) {
        const QString text = ui::common::choiceText(choice, lift, catalogue);
        context.out << (choice.isSuggested ? "  * " : "  - ") << ui::common::choiceTitle(choice) << (text.isEmpty() ? QString() : QStringLiteral(": ") + text) << '\n';
        if (choice.isSuggested) {
            context.out << "    Suggested. " << ui::common::choiceReasonText(choice.why) << '\n';
        }
    }
}

void writeForecast(const CommandContext& context, const ForecastOrLack& forecast, const LiftEvidence& lift, const lifts::Catalogue& catalogue)
{
    const QString text = forecast ? ui::common::forecastText(*forecast, lift, catalogue) : ui::common::forecastLackText(forecast.error());
    for (const QString& line : text.split(QLatin1Char('\n'), Qt::SkipEmptyParts)) {
        context.out << "  " << line << '\n';
    }
}

/// The lift that the finding is about, and the choice suggested for it; a message without a finding is about none.
ui::common::CheckInMessage messageOf(const ClientEvidence& page, base::Date today)
{
    ui::common::CheckInMessage message{page, nullptr, nullptr, today, page.nextReview};
    for (const LiftEvidence& lift : page.lifts) {
        if (page.finding.lift == lift.lift) {
            message.lift = &lift;
        }
    }
    return message;
}

void writePage(const CommandContext& context, const ClientEvidence& page, const Forecasts& forecasts, const lifts::Catalogue& catalogue)
{
    context.out << qstring(page.name) << (page.age ? QStringLiteral(", %1").arg(*page.age) : QString()) << ", " << qstring(page.goal) << ", with "
                << qstring(page.coachName) << '\n'
                << ui::common::findingTitle(page.finding) << ". Next review suggested on " << ui::common::dayText(page.nextReview) << ".\n";
    for (std::size_t i = 0; i < page.lifts.size(); ++i) {
        writeLift(context, page.lifts[i], catalogue);
        if (i < forecasts.size()) {
            writeForecast(context, forecasts[i], page.lifts[i], catalogue);
        }
    }
    for (const checkin::Decision& decision : page.history) {
        context.out << (&decision == &page.history.front() ? "\nDecided before:\n  " : "  ") << ui::common::decisionText(decision, {}) << '\n';
    }
}

QJsonObject pageJson(const ClientEvidence& page, const Forecasts& forecasts, base::Date day)
{
    QJsonObject object = exchange::toJson(page, day);
    QJsonArray lifts = object.value(QStringLiteral("lifts")).toArray();
    for (int i = 0; i < static_cast<int>(forecasts.size()); ++i) {
        const ForecastOrLack& forecast = forecasts[static_cast<std::size_t>(i)];
        QJsonObject lift = lifts[i].toObject();
        lift.insert(QStringLiteral("forecast"), forecast ? exchange::toJson(*forecast) : QJsonObject{{QStringLiteral("lack"), exchange::toJson(forecast.error())}});
        lifts[i] = lift;
    }
    object.insert(QStringLiteral("lifts"), lifts);
    return object;
}

int showPage(const CommandContext& context, store::Database& database, const lifts::Catalogue& catalogue)
{
    const auto client = chooseClient(context, database, context.value(QStringLiteral("client")));
    if (!client) {
        return kWrongUse;
    }
    store::CheckInReader reader(database, catalogue);
    const auto page = reader.page(*client, context.today);
    if (!page) {
        return context.report(page.error());
    }
    if (context.has(QStringLiteral("summary"))) {
        context.out << ui::common::checkInMessage(messageOf(*page, context.today), catalogue) << '\n';
        return kDone;
    }
    Forecasts forecasts;
    for (std::size_t i = 0; context.has(QStringLiteral("forecast")) && i < page->lifts.size(); ++i) {
        auto forecast = reader.forecast(*client, page->lifts[i].lift, context.today);
        if (!forecast) {
            return context.report(forecast.error());
        }
        forecasts.push_back(*std::move(forecast));
    }
    if (context.isJson()) {
        context.out << QJsonDocument(pageJson(*page, forecasts, context.today)).toJson();
    } else {
        writePage(context, *page, forecasts, catalogue);
    }
    return kDone;
}

int showQueue(const CommandContext& context, store::Database& database, const lifts::Catalogue& catalogue)
{
    const auto queue = store::CheckInReader(database, catalogue).queue(context.today);
    if (!queue) {
        return context.report(queue.error());
    }
    if (!context.isJson()) {
        writeQueue(context, *queue, catalogue);
        return kDone;
    }
    QJsonArray array;
    for (const checkin::QueueEntry& entry : *queue) {
        array.append(exchange::toJson(entry));
    }
    context.out << QJsonDocument(array).toJson();
    return kDone;
}

int runCheckIn(const CommandContext& context)
{
    const bool hasClient = context.has(QStringLiteral("client"));
    for (const char* option : {"forecast", "summary"}) {
        if (context.has(QLatin1String(option)) && !hasClient) {
            return context.refuse(QStringLiteral("--%1 goes with --client NAME").arg(QLatin1String(option)));
        }
    }
    if (context.has(QStringLiteral("summary")) && (context.isJson() || context.has(QStringLiteral("forecast")))) {
        return context.refuse(QStringLiteral("--summary goes without --json and --forecast"));
    }
    const auto database = context.openStudio(store::OpenMode::ReadOnly);
    if (!database) {
        return context.report(database.error());
    }
    const lifts::Catalogue catalogue = exchange::builtInCatalogue();
    return hasClient ? showPage(context, **database, catalogue) : showQueue(context, **database, catalogue);
}

QString checkInDetails()
{
    return QStringLiteral(
        "Without --client: everybody whose review is due, the most pressing first, with what is found and why. Pain and clearance are shown\n"
        "always, whatever was agreed on; what was decided this week stays until the week is over.\n"
        "With --client: the finding, each lift's verdict with its numbers, and what may be decided, the suggested choice marked with *. A\n"
        "suggestion is common practice, the coach decides. No sign of a stall is no proof of progress. Pain that stays belongs to a\n"
        "physician or physiotherapist.\n"
        "--json writes the queue as a list: id, name, finding (kind, lift, flat_weeks, plan_end), exercise, came, of, decided; and\n"
        "a page as one object: finding, next_review, attendance, readiness, history, and of each lift stage, next, estimates, volume,\n"
        "stages, pain, lighter_weeks, layoffs, flat, reserve, weeks_per_step, verdict as `judge --json` writes it, choices and, with\n"
        "--forecast, forecast.");
}

}  // namespace

Command checkInCommand()
{
    return {QStringLiteral("check-in"),
            QStringLiteral("find who is to be looked at this week, and why"),
            {},
            0,
            0,
            {{QStringLiteral("client"), QStringLiteral("NAME"), QStringLiteral("the page of one client, by name, part of one, or id")},
             {QStringLiteral("forecast"), {}, QStringLiteral("add how each lift would go on for twelve weeks at the client's own pace")},
             {QStringLiteral("summary"), {}, QStringLiteral("a short message for the client, and nothing else")}},
            checkInDetails(),
            runCheckIn};
}

}  // namespace chalk::app
