#include "core/exchange/plan_template_json.h"

#include "core/exchange/json_writing.h"
#include "core/exchange/word_reading.h"

#include <QFile>
#include <QJsonArray>

#include <fmt/core.h>

namespace chalk::exchange {

namespace {

using planning::PlanTemplate;
using planning::TemplateExercises;
using planning::TemplateSession;
using ExercisesByPattern = std::array<TemplateExercises, lifts::kPatterns.size()>;

TemplateSession readTemplateSession(const QJsonValue& value, const std::string& path, ObjectReader& outer)
{
    ObjectReader reader(value, path);
    reader.allowOnly({"name", "patterns"});
    TemplateSession session;
    session.name = reader.text("name");
    for (const std::string& key : textsAt(reader, "patterns")) {
        if (const auto pattern = lifts::patternOf(key)) {
            session.patterns.push_back(*pattern);
        } else {
            reader.fail("patterns", key + " is no pattern");
        }
    }
    if (reader.fault()) {
        outer.take(*reader.fault());
    }
    return session;
}

ExercisesByPattern exercisesAt(ObjectReader& outer)
{
    ExercisesByPattern exercises;
    ObjectReader reader(outer.required("exercises"), outer.pathOf("exercises"));
    reader.allowOnly({"squat", "hinge", "horizontal_push", "horizontal_pull", "vertical_push", "vertical_pull", "single_leg", "carry_brace"});
    for (const lifts::Pattern pattern : lifts::kPatterns) {
        const std::string key(keyOf(pattern));
        if (!reader.has(key.c_str())) {
            continue;
        }
        ObjectReader one(reader.required(key.c_str()), reader.pathOf(key.c_str()));
        one.allowOnly({"loaded", "rehearsed"});
        exercises[static_cast<std::size_t>(pattern)] = {textsAt(one, "loaded"), textsAt(one, "rehearsed")};
        if (one.fault()) {
            reader.take(*one.fault());
        }
    }
    if (reader.fault()) {
        outer.take(*reader.fault());
    }
    return exercises;
}

JsonResult<PlanTemplate> readTemplateWith(const QJsonValue& value, const std::string& path, const lifts::Catalogue& catalogue,
                                          const ExercisesByPattern& fallback)
{
    ObjectReader reader(value, path);
    reader.allowOnly({"key", "name", "sessions", "order_kept", "exercises"});
    PlanTemplate plan;
    plan.key = reader.text("key");
    plan.name = reader.text("name");
    plan.isOrderKept = reader.flag("order_kept", false);
    const QJsonArray sessions = reader.array("sessions");
    for (qsizetype i = 0; i < sessions.size() && reader.isSound(); ++i) {
        plan.sessions.push_back(readTemplateSession(sessions[i], fmt::format("{}[{}]", reader.pathOf("sessions"), i), reader));
    }
    plan.exercises = reader.has("exercises") ? exercisesAt(reader) : fallback;
    if (reader.isSound()) {
        if (const auto fault = planning::faultOf(plan, catalogue)) {
            reader.fail(fault->field.c_str(), fault->reason);
        }
    }
    return resultOf(reader, std::move(plan));
}

QJsonArray arrayOf(const std::vector<std::string>& texts)
{
    QJsonArray array;
    for (const std::string& text : texts) {
        array.append(textOf(text));
    }
    return array;
}

}  // namespace

JsonResult<PlanTemplate> readPlanTemplate(const QJsonValue& value, const std::string& path, const lifts::Catalogue& catalogue)
{
    return readTemplateWith(value, path, catalogue, {});
}

QJsonObject toJson(const PlanTemplate& plan)
{
    QJsonArray sessions;
    for (const TemplateSession& session : plan.sessions) {
        QJsonArray patterns;
        for (const lifts::Pattern pattern : session.patterns) {
            patterns.append(textOf(keyOf(pattern)));
        }
        sessions.append(QJsonObject{{QStringLiteral("name"), textOf(session.name)}, {QStringLiteral("patterns"), patterns}});
    }
    QJsonObject exercises;
    for (const lifts::Pattern pattern : lifts::kPatterns) {
        const TemplateExercises& one = plan.of(pattern);
        exercises.insert(textOf(keyOf(pattern)),
                         QJsonObject{{QStringLiteral("loaded"), arrayOf(one.loaded)}, {QStringLiteral("rehearsed"), arrayOf(one.rehearsed)}});
    }
    return {{QStringLiteral("key"), textOf(plan.key)},
            {QStringLiteral("name"), textOf(plan.name)},
            {QStringLiteral("order_kept"), plan.isOrderKept},
            {QStringLiteral("sessions"), sessions},
            {QStringLiteral("exercises"), exercises}};
}

JsonResult<std::vector<PlanTemplate>> readPlanTemplates(const QByteArray& text, const lifts::Catalogue& catalogue)
{
    const auto value = parseJson(text);
    if (!value) {
        return tl::make_unexpected(value.error());
    }
    ObjectReader reader(*value, {});
    reader.allowOnly({"about", "exercises", "templates"});
    const ExercisesByPattern shared = reader.has("exercises") ? exercisesAt(reader) : ExercisesByPattern();
    std::vector<PlanTemplate> templates;
    const QJsonArray array = reader.array("templates");
    for (qsizetype i = 0; i < array.size() && reader.isSound(); ++i) {
        auto plan = readTemplateWith(array[i], fmt::format("templates[{}]", i), catalogue, shared);
        if (!plan) {
            reader.take(plan.error());
            continue;
        }
        for (const PlanTemplate& other : templates) {
            if (other.key == plan->key) {
                reader.take({fmt::format("templates[{}].key", i), plan->key + " is there twice"});
            }
        }
        templates.push_back(*std::move(plan));
    }
    return resultOf(reader, std::move(templates));
}

std::vector<PlanTemplate> builtInPlanTemplates(const lifts::Catalogue& catalogue)
{
    QFile file(QStringLiteral(":/catalogue/plan_templates.json"));
    const bool isOpen = file.open(QIODevice::ReadOnly);
    return readPlanTemplates(isOpen ? file.readAll() : QByteArray(), catalogue).value();
}

}  // namespace chalk::exchange
