#include "app/commands/plan_overview.h"

#include "core/checkin/attention.h"
#include "core/exchange/catalogue_json.h"
#include "core/store/plan_reader.h"
#include "core/store/roster_facts.h"
#include "core/store/roster_reader.h"
#include "ui/common/direction_words.h"
#include "ui/common/formats.h"
#include "ui/common/plan_words.h"
#include "ui/roster/attention_words.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

#include <algorithm>

namespace chalk::app {

namespace {

using ui::common::qstring;

/// What is to be said of one client; nothing of who has no plan and is not due.
struct OverviewLine {
    base::ClientId client;
    QString name;
    std::optional<checkin::AttentionReason> due;    ///< the talk, or the review of a plan that is over
    std::optional<direction::ClientPlan> plan;      ///< the one begun last

    [[nodiscard]] bool isRunning(base::Date day) const { return plan && direction::isRunning(*plan, day); }
};

std::optional<checkin::AttentionReason> dueFor(const store::RosterEntry& entry, base::Date day)
{
    const auto reasons = checkin::attentionFor(store::factsOf(entry), day);
    const auto found = std::find_if(reasons.begin(), reasons.end(),
                                    [](const auto& reason) { return std::holds_alternative<checkin::DirectionDue>(reason); });
    return found == reasons.end() ? std::nullopt : std::optional(*found);
}

store::Result<std::vector<OverviewLine>> readOverview(store::Database& database, base::Date day)
{
    const auto entries = store::RosterReader(database).read(day);
    if (!entries) {
        return tl::make_unexpected(entries.error());
    }
    store::PlanReader plans(database);
    const auto standings = plans.standings(day);
    if (!standings) {
        return tl::make_unexpected(standings.error());
    }
    std::vector<OverviewLine> lines;
    for (const store::RosterEntry& entry : *entries) {
        OverviewLine line{entry.client.id, qstring(entry.client.name), dueFor(entry, day), std::nullopt};
        if (standings->count(entry.client.id) > 0) {
            auto history = plans.history(entry.client.id);
            if (!history) {
                return tl::make_unexpected(history.error());
            }
            const auto begun =
                std::find_if(history->begin(), history->end(), [day](const direction::ClientPlan& plan) { return plan.begunOn <= day; });
            line.plan = begun == history->end() ? std::nullopt : std::optional(*begun);
        }
        if (line.plan || line.due) {
            lines.push_back(std::move(line));
        }
    }
    return lines;
}

/// A heading and the lines below it; nothing where there are none.
void writeGroup(QTextStream& out, const QString& heading, const QStringList& lines)
{
    if (!lines.isEmpty()) {
        out << heading << '\n' << lines.join(QString()) << '\n';
    }
}

void writeOverview(QTextStream& out, const std::vector<OverviewLine>& all, base::Date day, const lifts::Catalogue& catalogue)
{
    constexpr int kNameWidth = 24;
    QStringList due;
    QStringList running;
    QStringList over;
    for (const OverviewLine& one : all) {
        const QString name = QStringLiteral("  ") + one.name.leftJustified(kNameWidth) + QLatin1Char(' ');
        const QString plan =
            one.plan ? QStringLiteral("%1, %2\n").arg(ui::common::planTitle(one.plan->plan), ui::common::planPlaceText(*one.plan, day))
                     : QString();
        if (one.isRunning(day)) {
            running << name + plan;
        } else if (one.plan) {
            over << name + plan;
        }
        if (one.due && !one.isRunning(day)) {
            due << name + ui::roster::attentionSentence(*one.due, {day, catalogue, std::nullopt}) + QLatin1Char('\n');
        }
    }
    writeGroup(out, QStringLiteral("Due for the talk about a direction"), due);
    writeGroup(out, QStringLiteral("A plan runs"), running);
    writeGroup(out, QStringLiteral("The last plan is over"), over);
    if (due.isEmpty() && running.isEmpty() && over.isEmpty()) {
        out << "Nobody is due for the talk about a direction, and nobody has a plan.\n";
    }
}

QJsonArray overviewJson(const std::vector<OverviewLine>& all, base::Date day)
{
    QJsonArray array;
    for (const OverviewLine& one : all) {
        QJsonObject object{{QStringLiteral("id"), static_cast<qint64>(one.client.value())},
                           {QStringLiteral("name"), one.name},
                           {QStringLiteral("due"), one.due.has_value() && !one.isRunning(day)},
                           {QStringLiteral("running"), one.isRunning(day)}};
        if (one.plan) {
            object.insert(QStringLiteral("direction"), qstring(direction::keyOf(one.plan->plan.wishes.direction)));
            object.insert(QStringLiteral("weeks"), static_cast<qint64>(one.plan->plan.weeks.size()));
            object.insert(QStringLiteral("last_day"), qstring(direction::lastDayOf(*one.plan).toString()));
            object.insert(QStringLiteral("place"), ui::common::planPlaceText(*one.plan, day));
        }
        array.append(object);
    }
    return array;
}

}  // namespace

int showPlanOverview(const CommandContext& context, store::Database& database)
{
    const auto all = readOverview(database, context.today);
    if (!all) {
        return context.report(all.error());
    }
    if (context.isJson()) {
        context.out << QJsonDocument(overviewJson(*all, context.today)).toJson();
    } else {
        writeOverview(context.out, *all, context.today, exchange::builtInCatalogue());
    }
    return kDone;
}

}  // namespace chalk::app
