#include "core/exchange/plan_draft_json.h"

#include "core/exchange/json_writing.h"
#include "core/exchange/word_reading.h"
#include "core/sessions/session.h"

#include <QJsonArray>

#include <fmt/core.h>

namespace chalk::exchange {

namespace {

using planning::LiftWish;
using planning::PlanDraft;

constexpr int kMostSessionsOfDraft = 20;

LiftWish readWish(const QJsonValue& value, const std::string& path, ObjectReader& outer)
{
    ObjectReader reader(value, path);
    reader.allowOnly({"stage", "reason", "exercise", "equipment", "first_load", "left_out", "why_left_out"});
    LiftWish wish;
    if (reader.has("stage")) {
        wish.start = progression::StartChoice{enumAt<progression::Stage>(reader, "stage", progression::stageOf), reader.optionalText("reason").value_or(std::string())};
    }
    wish.exerciseKey = reader.optionalText("exercise").value_or(std::string());
    wish.equipmentKey = reader.optionalText("equipment").value_or(std::string());
    if (const auto load = reader.optionalDecimal("first_load", 2, -lifts::kMaxLoadCenti, lifts::kMaxLoadCenti)) {
        wish.firstLoad = base::Load::fromCenti(*load);
    }
    wish.isLeftOut = reader.flag("left_out", false);
    wish.whyLeftOut = reader.optionalText("why_left_out").value_or(std::string());
    if (reader.fault()) {
        outer.take(*reader.fault());
    }
    return wish;
}

planning::WeekSlot readDraftSlot(const QJsonValue& value, const std::string& path, ObjectReader& outer)
{
    ObjectReader reader(value, path);
    reader.allowOnly({"session", "weekday", "start"});
    planning::WeekSlot slot;
    slot.session = static_cast<std::size_t>(reader.wholeNumber("session", 0, kMostSessionsOfDraft));
    slot.weekday = reader.wholeNumber("weekday", 0, 6);
    if (const auto start = sessions::parseClock(reader.text("start"))) {
        slot.startMinute = *start;
    } else {
        reader.fail("start", "must be HH:MM");
    }
    if (reader.fault()) {
        outer.take(*reader.fault());
    }
    return slot;
}

/// The patterns of one session, in their order.
std::vector<lifts::Pattern> readContent(const QJsonValue& value, const std::string& path, ObjectReader& outer)
{
    std::vector<lifts::Pattern> patterns;
    if (!value.isArray()) {
        outer.take({path, "must be a list of patterns"});
        return patterns;
    }
    const QJsonArray keys = value.toArray();
    for (qsizetype i = 0; i < keys.size(); ++i) {
        if (const auto pattern = lifts::patternOf(keys[i].toString().toStdString())) {
            patterns.push_back(*pattern);
        } else {
            outer.take({fmt::format("{}[{}]", path, i), "is no pattern"});
        }
    }
    return patterns;
}

QJsonArray contentsJson(const planning::SessionContents& contents)
{
    QJsonArray sessions;
    for (const std::vector<lifts::Pattern>& patterns : contents) {
        QJsonArray keys;
        for (const lifts::Pattern pattern : patterns) {
            keys.append(textOf(keyOf(pattern)));
        }
        sessions.append(keys);
    }
    return sessions;
}

QJsonObject wishJson(const LiftWish& wish)
{
    QJsonObject object;
    if (wish.start) {
        put(object, "stage", textOf(keyOf(wish.start->stage)));
        if (!wish.start->reason.empty()) {
            put(object, "reason", textOf(wish.start->reason));
        }
    }
    if (!wish.exerciseKey.empty()) {
        put(object, "exercise", textOf(wish.exerciseKey));
    }
    if (!wish.equipmentKey.empty()) {
        put(object, "equipment", textOf(wish.equipmentKey));
    }
    if (wish.firstLoad) {
        put(object, "first_load", wish.firstLoad->centi() / 100.0);
    }
    if (wish.isLeftOut) {
        put(object, "left_out", true);
    }
    if (!wish.whyLeftOut.empty()) {
        put(object, "why_left_out", textOf(wish.whyLeftOut));
    }
    return object;
}

}  // namespace

JsonResult<PlanDraft> readPlanDraft(const QJsonValue& value, const std::string& path)
{
    ObjectReader reader(value, path);
    reader.allowOnly({"template", "wishes", "contents", "slots", "first_day"});
    PlanDraft draft;
    draft.templateKey = reader.optionalText("template").value_or(std::string());
    if (reader.has("wishes")) {
        ObjectReader wishes(reader.required("wishes"), reader.pathOf("wishes"));
        wishes.allowOnly({"squat", "hinge", "horizontal_push", "horizontal_pull", "vertical_push", "vertical_pull", "single_leg", "carry_brace"});
        for (const lifts::Pattern pattern : lifts::kPatterns) {
            const std::string key(keyOf(pattern));
            if (wishes.has(key.c_str())) {
                draft.of(pattern) = readWish(wishes.required(key.c_str()), wishes.pathOf(key.c_str()), wishes);
            }
        }
        if (wishes.fault()) {
            reader.take(*wishes.fault());
        }
    }
    const QJsonArray contents = reader.has("contents") ? reader.array("contents") : QJsonArray();
    for (qsizetype i = 0; i < contents.size(); ++i) {
        draft.contents.push_back(readContent(contents[i], fmt::format("{}[{}]", reader.pathOf("contents"), i), reader));
    }
    const QJsonArray slots = reader.has("slots") ? reader.array("slots") : QJsonArray();
    for (qsizetype i = 0; i < slots.size(); ++i) {
        draft.slots.push_back(readDraftSlot(slots[i], fmt::format("{}[{}]", reader.pathOf("slots"), i), reader));
    }
    if (reader.has("first_day")) {
        draft.firstDay = base::Date::parse(reader.text("first_day"));
        if (!draft.firstDay) {
            reader.fail("first_day", "is no day");
        }
    }
    return resultOf(reader, std::move(draft));
}

QJsonObject toJson(const PlanDraft& draft)
{
    QJsonObject object;
    if (!draft.templateKey.empty()) {
        put(object, "template", textOf(draft.templateKey));
    }
    QJsonObject wishes;
    for (const lifts::Pattern pattern : lifts::kPatterns) {
        if (!draft.of(pattern).isEmpty()) {
            wishes.insert(textOf(keyOf(pattern)), wishJson(draft.of(pattern)));
        }
    }
    if (!wishes.isEmpty()) {
        put(object, "wishes", wishes);
    }
    if (!draft.contents.empty()) {
        put(object, "contents", contentsJson(draft.contents));
    }
    QJsonArray slots;
    for (const planning::WeekSlot& slot : draft.slots) {
        slots.append(QJsonObject{{QStringLiteral("session"), static_cast<int>(slot.session)},
                                 {QStringLiteral("weekday"), slot.weekday},
                                 {QStringLiteral("start"), textOf(sessions::clockText(slot.startMinute))}});
    }
    if (!slots.isEmpty()) {
        put(object, "slots", slots);
    }
    if (draft.firstDay) {
        put(object, "first_day", textOf(draft.firstDay->toString()));
    }
    return object;
}

}  // namespace chalk::exchange
