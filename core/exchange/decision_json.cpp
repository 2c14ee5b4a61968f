#include "core/exchange/decision_json.h"

#include "core/exchange/json_writing.h"
#include "core/exchange/studio_fields.h"

#include <QJsonArray>

#include <algorithm>

#include <fmt/core.h>

namespace chalk::exchange {

namespace {

constexpr int kMostQuota = 7;

void readDecisions(ObjectReader& reader, DocumentClient& client, base::Date today)
{
    const QJsonArray array = reader.has("decisions") ? reader.array("decisions") : QJsonArray();
    for (qsizetype i = 0; i < array.size() && reader.isSound(); ++i) {
        const std::string place = fmt::format("decisions[{}]", i);
        const DocumentDecision decision = taken(reader, readDecision(array[i], place));
        const auto isIts = [&decision](const DocumentLift& lift) { return lift.pattern == decision.lift; };
        if (reader.isSound() && decision.day > today) {
            reader.take({place + ".day", "lies after the studio's day"});
        }
        if (reader.isSound() && decision.lift && std::none_of(client.lifts.begin(), client.lifts.end(), isIts)) {
            reader.take({place + ".lift", "is no lift of this client"});
        }
        client.decisions.push_back(decision);
    }
}

void readQuotas(ObjectReader& reader, DocumentClient& client)
{
    if (!reader.has("quotas")) {
        return;
    }
    if (!reader.required("quotas").isObject()) {
        reader.fail("quotas", "must be an object");
        return;
    }
    const QJsonObject quotas = reader.required("quotas").toObject();
    for (auto quota = quotas.begin(); quota != quotas.end(); ++quota) {
        const std::string place = "quotas." + quota.key().toStdString();
        const auto monday = base::Date::parse(quota.key().toStdString());
        const auto sessions = exactDecimal(quota.value(), place, 0, 0, kMostQuota);
        if (!monday || monday->weekday() != 0) {
            reader.take({place, "must be the day of a Monday, YYYY-MM-DD"});
        } else if (!sessions) {
            reader.take(sessions.error());
        } else {
            client.quotas[*monday] = *sessions;
        }
    }
}

}  // namespace

void readCheckIn(ObjectReader& reader, DocumentClient& client, base::Date today)
{
    readDecisions(reader, client, today);
    readQuotas(reader, client);
}

QJsonObject toJson(const std::map<base::Date, int>& quotas)
{
    QJsonObject object;
    for (const auto& [monday, sessions] : quotas) {
        object.insert(textOf(monday.toString()), sessions);
    }
    return object;
}

JsonResult<DocumentDecision> readDecision(const QJsonValue& value, const std::string& path)
{
    ObjectReader reader(value, path);
    reader.allowOnly({"day", "lift", "about", "choice", "note", "next_review"});
    DocumentDecision decision;
    decision.day = dayAt(reader, "day");
    if (reader.has("lift")) {
        decision.lift = wordAt(reader, "lift", lifts::patternOf, "a pattern");
    }
    decision.about = wordAt(reader, "about", checkin::findingKindOf,
                            "pain, clearance, plateau, direction, attendance, rescreen or on_course");
    decision.choice = wordAt(reader, "choice", checkin::choiceKindOf, "lighter_week, hold, move_on, swap, by_hand, rescreen or direction");
    decision.note = proseAt(reader, "note");
    decision.nextReview = dayAt(reader, "next_review");
    if (reader.isSound() && decision.nextReview <= decision.day) {
        reader.fail("next_review", "must lie after `day`");
    }
    return resultOf(reader, std::move(decision));
}

QJsonObject toJson(const DocumentDecision& decision)
{
    QJsonObject object{{QStringLiteral("day"), textOf(decision.day.toString())},
                       {QStringLiteral("about"), textOf(checkin::keyOf(decision.about))},
                       {QStringLiteral("choice"), textOf(checkin::keyOf(decision.choice))},
                       {QStringLiteral("note"), textOf(decision.note)},
                       {QStringLiteral("next_review"), textOf(decision.nextReview.toString())}};
    if (decision.lift) {
        put(object, "lift", textOf(lifts::keyOf(*decision.lift)));
    }
    return object;
}

}  // namespace chalk::exchange
