#include "core/exchange/block_json.h"

#include "core/exchange/json_writing.h"
#include "core/lifts/equipment.h"

#include <QJsonArray>

#include <fmt/core.h>

#include <limits>

namespace chalk::exchange {

namespace {

using progression::BlockWeek;
using progression::BlockWork;

constexpr int kAnyNumber = std::numeric_limits<std::int16_t>::max();

/// The ranges are those of progression::faultOf.
BlockWork readBlockWork(const QJsonValue& value, const std::string& path, ObjectReader& outer)
{
    ObjectReader reader(value, path);
    reader.allowOnly({"sets", "reps", "reps_most", "percent", "rest_s", "reserve", "pause", "test"});
    BlockWork work;
    work.sets = base::Sets(reader.wholeNumber("sets", 0, kAnyNumber));
    work.repsLow = base::Reps(reader.wholeNumber("reps", 0, kAnyNumber));
    work.repsHigh = base::Reps(reader.optionalWholeNumber("reps_most", 0, kAnyNumber).value_or(work.repsLow.value()));
    work.share = base::Milli(reader.decimal("percent", 1, 0, kAnyNumber));
    work.rest = base::Seconds(reader.wholeNumber("rest_s", 0, kAnyNumber));
    work.reserve = reader.wholeNumber("reserve", 0, kAnyNumber);
    work.isPauseAsked = reader.flag("pause", false);
    work.isTest = reader.flag("test", false);
    if (reader.fault()) {
        outer.take(*reader.fault());
    }
    return work;
}

BlockWeek readBlockWeek(const QJsonValue& value, const std::string& path, ObjectReader& outer)
{
    ObjectReader reader(value, path);
    reader.allowOnly({"monday", "lighter", "work"});
    BlockWeek week;
    const auto monday = base::Date::parse(reader.text("monday"));
    if (!monday) {
        reader.fail("monday", "is no day");
    }
    week.monday = monday.value_or(base::Date());
    week.isLighter = reader.flag("lighter", false);
    const QJsonArray work = reader.array("work");
    for (qsizetype i = 0; i < work.size(); ++i) {
        week.work.push_back(readBlockWork(work[i], fmt::format("{}[{}]", reader.pathOf("work"), i), reader));
    }
    if (reader.fault()) {
        outer.take(*reader.fault());
    }
    return week;
}

QJsonObject blockWorkJson(const BlockWork& work)
{
    QJsonObject object;
    put(object, "sets", work.sets.value());
    put(object, "reps", work.repsLow.value());
    if (work.repsHigh != work.repsLow) {
        put(object, "reps_most", work.repsHigh.value());
    }
    put(object, "percent", work.share.value() / 10.0);
    put(object, "rest_s", work.rest.value());
    put(object, "reserve", work.reserve);
    if (work.isPauseAsked) {
        put(object, "pause", true);
    }
    if (work.isTest) {
        put(object, "test", true);
    }
    return object;
}

}  // namespace

progression::Block readBlock(ObjectReader& reader)
{
    progression::Block block;
    block.note = reader.optionalText("note").value_or(std::string());
    block.isTested = reader.flag("tested", false);
    block.single = base::Load::fromCenti(reader.optionalDecimal("single", 2, 0, lifts::kMaxLoadCenti).value_or(0));
    const QJsonArray weeks = reader.has("weeks") ? reader.array("weeks") : QJsonArray();
    for (qsizetype i = 0; i < weeks.size(); ++i) {
        block.weeks.push_back(readBlockWeek(weeks[i], fmt::format("{}[{}]", reader.pathOf("weeks"), i), reader));
    }
    if (const auto fault = reader.isSound() ? progression::faultOf(block) : std::nullopt) {
        reader.fail(fault->field.c_str(), std::string(fault->reason));
    }
    return block;
}

void putBlock(QJsonObject& object, const progression::Block& block)
{
    if (!block.note.empty()) {
        put(object, "note", textOf(block.note));
    }
    if (block.isTested) {
        put(object, "tested", true);
    }
    if (block.single != base::Load()) {
        put(object, "single", block.single.centi() / 100.0);
    }
    QJsonArray weeks;
    for (const BlockWeek& week : block.weeks) {
        QJsonArray work;
        for (const BlockWork& one : week.work) {
            work.append(blockWorkJson(one));
        }
        QJsonObject written{{QStringLiteral("monday"), textOf(week.monday.toString())}, {QStringLiteral("work"), work}};
        if (week.isLighter) {
            put(written, "lighter", true);
        }
        weeks.append(written);
    }
    if (!weeks.isEmpty()) {
        put(object, "weeks", weeks);
    }
}

}  // namespace chalk::exchange
