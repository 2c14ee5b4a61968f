#include "core/exchange/movement_screen_json.h"

#include "core/exchange/json_writing.h"
#include "core/exchange/word_reading.h"

#include <QJsonArray>

#include <set>

#include <fmt/core.h>

namespace chalk::exchange {

namespace {

using screens::MovementScreen;
using screens::PatternScreen;
using screens::PauseDepth;
using screens::PauseTry;

constexpr int kPauseDecimals = 3;  // held_s is in seconds, kept in milliseconds

QJsonArray pointsToJson(const PatternScreen& screen)
{
    QJsonArray points;
    for (const screens::PointMark& point : screen.points) {
        points.append(QJsonObject{{QStringLiteral("key"), textOf(point.key)}, {QStringLiteral("mark"), textOf(keyOf(point.mark))}});
    }
    return points;
}

QJsonObject pausesToJson(const PatternScreen& screen)
{
    QJsonObject pauses;
    for (const PauseDepth depth : screens::kPauseDepths) {
        const PauseTry& pause = screen.pauseAt(depth);
        QJsonObject one{{QStringLiteral("mark"), textOf(keyOf(pause.mark))}};
        if (pause.heldMs) {
            put(one, "held_s", *pause.heldMs / 1000.0);
        }
        pauses.insert(textOf(keyOf(depth)), one);
    }
    return pauses;
}

std::vector<screens::PointMark> pointsAt(ObjectReader& reader)
{
    std::vector<screens::PointMark> points;
    const QJsonArray array = reader.array("points");
    for (qsizetype i = 0; i < array.size() && reader.isSound(); ++i) {
        ObjectReader one(array[i], fmt::format("{}[{}]", reader.pathOf("points"), i));
        one.allowOnly({"key", "mark"});
        screens::PointMark point;
        point.key = one.text("key");
        point.mark = enumAt<screens::Mark>(one, "mark", screens::markOf);
        points.push_back(std::move(point));
        if (one.fault()) {
            reader.take(*one.fault());
        }
    }
    return points;
}

PauseTry pauseIn(ObjectReader& pauses, const char* depth)
{
    ObjectReader reader(pauses.required(depth), pauses.pathOf(depth));
    reader.allowOnly({"mark", "held_s"});
    PauseTry pause;
    pause.mark = enumAt<screens::PauseMark>(reader, "mark", screens::pauseMarkOf);
    pause.heldMs = reader.optionalDecimal("held_s", kPauseDecimals, 0, screens::kMostPauseMs);
    if (reader.fault()) {
        pauses.take(*reader.fault());
    }
    return pause;
}

void readPauses(ObjectReader& reader, PatternScreen& screen)
{
    ObjectReader pauses(reader.required("pauses"), reader.pathOf("pauses"));
    pauses.allowOnly({"top", "middle", "bottom"});
    screen.pauses = {pauseIn(pauses, "top"), pauseIn(pauses, "middle"), pauseIn(pauses, "bottom")};
    if (pauses.fault()) {
        reader.take(*pauses.fault());
    }
}

void readPain(ObjectReader& reader, PatternScreen& screen)
{
    if (!reader.has("pain")) {
        return;
    }
    ObjectReader pain(reader.required("pain"), reader.pathOf("pain"));
    pain.allowOnly({"place", "score"});
    screen.pain = screens::ScreenPain{pain.optionalText("place").value_or(std::string()), pain.optionalWholeNumber("score", 0, 10)};
    if (pain.fault()) {
        reader.take(*pain.fault());
    }
}

}  // namespace

QJsonObject toJson(const PatternScreen& screen)
{
    QJsonObject object{{QStringLiteral("pattern"), textOf(keyOf(screen.pattern))},
                       {QStringLiteral("points"), pointsToJson(screen)},
                       {QStringLiteral("pauses"), pausesToJson(screen)}};
    if (screen.steadiness) {
        put(object, "steadiness", textOf(keyOf(*screen.steadiness)));
    }
    if (screen.reps) {
        put(object, "reps", screen.reps->value());
    }
    if (screen.pain) {
        QJsonObject pain;
        if (!screen.pain->place.empty()) {
            put(pain, "place", textOf(screen.pain->place));
        }
        if (screen.pain->score) {
            put(pain, "score", *screen.pain->score);
        }
        put(object, "pain", pain);
    }
    if (!screen.note.empty()) {
        put(object, "note", textOf(screen.note));
    }
    return object;
}

QJsonObject toJson(const MovementScreen& screen)
{
    QJsonArray patterns;
    for (const PatternScreen& one : screen.patterns) {
        patterns.append(toJson(one));
    }
    return {{QStringLiteral("date"), textOf(screen.date.toString())},
            {QStringLiteral("finished"), screen.isFinished},
            {QStringLiteral("patterns"), patterns}};
}

JsonResult<PatternScreen> readPatternScreen(const QJsonValue& value, const std::string& path)
{
    ObjectReader reader(value, path);
    reader.allowOnly({"pattern", "points", "pauses", "steadiness", "reps", "pain", "note"});
    PatternScreen screen;
    screen.pattern = enumAt<lifts::Pattern>(reader, "pattern", lifts::patternOf);
    screen.points = pointsAt(reader);
    readPauses(reader, screen);
    if (reader.has("steadiness")) {
        screen.steadiness = enumAt<screens::MovementSteadiness>(reader, "steadiness", screens::movementSteadinessOf);
    }
    if (const auto reps = reader.optionalWholeNumber("reps", 0, screens::kMostScreenReps)) {
        screen.reps = base::Reps(*reps);
    }
    readPain(reader, screen);
    screen.note = reader.optionalText("note").value_or(std::string());
    if (reader.isSound()) {
        if (const auto fault = screens::faultOf(screen)) {
            reader.fail(fault->field.c_str(), fault->reason);
        }
    }
    return resultOf(reader, std::move(screen));
}

JsonResult<MovementScreen> readMovementScreen(const QJsonValue& value, const std::string& path)
{
    ObjectReader reader(value, path);
    reader.allowOnly({"date", "finished", "patterns"});
    MovementScreen screen;
    if (const auto date = base::Date::parse(reader.text("date"))) {
        screen.date = *date;
    } else {
        reader.fail("date", "must be a date, YYYY-MM-DD");
    }
    screen.isFinished = reader.flag("finished", false);
    std::set<lifts::Pattern> seen;
    const QJsonArray array = reader.array("patterns");
    for (qsizetype i = 0; i < array.size() && reader.isSound(); ++i) {
        auto one = readPatternScreen(array[i], fmt::format("{}[{}]", reader.pathOf("patterns"), i));
        if (!one) {
            reader.take(one.error());
        } else if (!seen.insert(one->pattern).second) {
            reader.fail("patterns", fmt::format("has {} twice", keyOf(one->pattern)));
        } else {
            screen.of(one->pattern) = *std::move(one);
        }
    }
    if (seen.size() != lifts::kPatterns.size()) {
        reader.fail("patterns", "must be all eight");
    }
    return resultOf(reader, std::move(screen));
}

}  // namespace chalk::exchange
