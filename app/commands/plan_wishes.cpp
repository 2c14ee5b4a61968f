#include "app/commands/plan_wishes.h"

#include "ui/common/formats.h"

#include <algorithm>
#include <array>

namespace chalk::app {

namespace {

using ui::common::qstring;

/// An option and what it goes with: one of the two.
struct OptionNeed {
    const char* option;
    std::array<const char*, 2> needs;
};

/// All of them are about one client.
constexpr std::array kOfClient{"direction", "wave", "weeks", "from",    "begin", "missed", "shift",
                               "squeeze",   "end",  "note",  "compare", "csv",   "pdf",    "tests"};

constexpr std::array<OptionNeed, 7> kNeeds{{{"wave", {"direction", nullptr}},
                                            {"weeks", {"direction", nullptr}},
                                            {"from", {"direction", nullptr}},
                                            {"begin", {"direction", nullptr}},
                                            {"shift", {"missed", nullptr}},
                                            {"squeeze", {"missed", nullptr}},
                                            {"note", {"begin", "end"}}}};

/// Two that do not go together.
constexpr std::array<std::array<const char*, 2>, 22> kAgainst{
    {{"direction", "missed"}, {"direction", "end"}, {"direction", "compare"}, {"direction", "tests"}, {"missed", "end"},
     {"missed", "compare"},   {"missed", "tests"},  {"end", "compare"},       {"end", "tests"},       {"compare", "tests"},
     {"shift", "squeeze"},    {"csv", "json"},      {"csv", "pdf"},           {"csv", "begin"},       {"csv", "missed"},
     {"csv", "end"},          {"csv", "tests"},     {"pdf", "begin"},         {"pdf", "missed"},      {"pdf", "end"},
     {"pdf", "compare"},      {"pdf", "tests"}}};

bool hasOption(const CommandContext& context, const char* option)
{
    return option != nullptr && context.has(QLatin1String(option));
}

QString missingNeed(const CommandContext& context)
{
    for (const char* option : kOfClient) {
        if (hasOption(context, option) && !hasOption(context, "client")) {
            return QStringLiteral("--%1 goes with --client NAME").arg(QLatin1String(option));
        }
    }
    for (const OptionNeed& one : kNeeds) {
        const bool isMet = hasOption(context, one.needs[0]) || hasOption(context, one.needs[1]);
        if (hasOption(context, one.option) && !isMet) {
            const QString other = one.needs[1] == nullptr ? QString() : QStringLiteral(" or --%1").arg(QLatin1String(one.needs[1]));
            return QStringLiteral("--%1 goes with --%2%3").arg(QLatin1String(one.option), QLatin1String(one.needs[0]), other);
        }
    }
    return {};
}

std::optional<base::Date> mondayIn(const CommandContext& context, const QString& option, const QString& text)
{
    const auto day = base::Date::parse(text.toStdString());
    if (!day || day->weekday() != 0) {
        context.refuse(QStringLiteral("--%1: %2 is no Monday, such as 2026-11-30").arg(option, text));
        return std::nullopt;
    }
    return day;
}

/// Nothing, and a message, where a value cannot be.
std::optional<direction::PlanWishes> wishesIn(const CommandContext& context, int sessionsAWeek,
                                              const std::vector<direction::LiftForPlan>& lifts)
{
    const auto direction = direction::directionOf(context.value(QStringLiteral("direction")).toStdString());
    const auto wave = direction::waveOf(context.value(QStringLiteral("wave"), QStringLiteral("linear")).toStdString());
    if (!direction || !wave) {
        context.refuse(direction ? QStringLiteral("--wave must be linear or undulating")
                                 : QStringLiteral("--direction must be strength, physique or movement"));
        return std::nullopt;
    }
    if (context.has(QStringLiteral("wave")) && *direction != direction::Direction::Strength) {
        context.refuse(QStringLiteral("--wave goes with --direction strength"));
        return std::nullopt;
    }
    const auto weeks = context.wholeNumber(QStringLiteral("weeks"), direction::kUsualWeeks, direction::kLeastWeeks, direction::kMostWeeks);
    direction::PlanWishes wishes = direction::usualWishes(*direction, lifts, sessionsAWeek, context.today);
    if (context.has(QStringLiteral("from"))) {
        const auto from = mondayIn(context, QStringLiteral("from"), context.value(QStringLiteral("from")));
        if (!from) {
            return std::nullopt;
        }
        wishes.start = *from;
    }
    if (!weeks) {
        return std::nullopt;
    }
    wishes.wave = *wave;
    wishes.weeks = *weeks;
    return wishes;
}

}  // namespace

QString planOptionFault(const CommandContext& context)
{
    for (const auto& pair : kAgainst) {
        if (hasOption(context, pair[0]) && hasOption(context, pair[1])) {
            return QStringLiteral("--%1 and --%2 do not go together").arg(QLatin1String(pair[0]), QLatin1String(pair[1]));
        }
    }
    if (const QString missing = missingNeed(context); !missing.isEmpty()) {
        return missing;
    }
    if (hasOption(context, "missed") && !hasOption(context, "shift") && !hasOption(context, "squeeze")) {
        return QStringLiteral("--missed goes with --shift or --squeeze");
    }
    return {};
}

std::optional<direction::ClientPlan> plannedFor(const CommandContext& context, base::ClientId client, int sessionsAWeek,
                                                const std::vector<direction::LiftForPlan>& lifts)
{
    const auto wishes = wishesIn(context, sessionsAWeek, lifts);
    if (!wishes) {
        return std::nullopt;
    }
    if (wishes->lifts.empty()) {
        context.refuse(QStringLiteral("no plan can be made: no lift that is counted in repetitions was loaded yet"));
        return std::nullopt;
    }
    if (const auto fault = direction::faultOf(*wishes)) {
        context.refuse(QStringLiteral("no plan can be made: %1 %2").arg(qstring(fault->field), qstring(fault->reason)));
        return std::nullopt;
    }
    if (wishes->start < context.today - context.today.weekday()) {
        context.refuse(QStringLiteral("--from: %1 lies before this week").arg(qstring(wishes->start.toString())));
        return std::nullopt;
    }
    direction::ClientPlan plan;
    plan.client = client;
    plan.begunOn = context.today;
    plan.plan = direction::planFor(*wishes);
    plan.singles = direction::singlesFor(*wishes, lifts);
    plan.note = context.value(QStringLiteral("note")).toStdString();
    return plan;
}

std::optional<MissedWish> missedWish(const CommandContext& context, const direction::BlockPlan& plan)
{
    MissedWish wish{{}, context.has(QStringLiteral("shift")) ? direction::MissedWeeks::Shift : direction::MissedWeeks::Squeeze};
    for (const QString& text : context.value(QStringLiteral("missed")).split(QLatin1Char(','))) {
        const auto monday = mondayIn(context, QStringLiteral("missed"), text.trimmed());
        if (!monday) {
            return std::nullopt;
        }
        const auto isIt = [&monday](const direction::PlanWeek& week) { return week.monday == *monday; };
        if (std::none_of(plan.weeks.begin(), plan.weeks.end(), isIt)) {
            context.refuse(QStringLiteral("--missed: %1 begins no week of the plan").arg(text.trimmed()));
            return std::nullopt;
        }
        if (std::find(wish.mondays.begin(), wish.mondays.end(), *monday) == wish.mondays.end()) {
            wish.mondays.push_back(*monday);
        }
    }
    std::sort(wish.mondays.begin(), wish.mondays.end());
    return wish;
}

}  // namespace chalk::app
