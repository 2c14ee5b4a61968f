#include "core/exchange/health_intake_json.h"

#include "core/exchange/json_writing.h"
#include "core/exchange/studio_fields.h"

#include <QJsonArray>

#include <algorithm>

#include <fmt/core.h>

namespace chalk::exchange {

namespace {

using clients::HealthAnswer;
using clients::HealthIntake;
using clients::HealthMark;
using clients::HealthQuestion;

std::vector<HealthMark> marksAt(ObjectReader& reader, HealthQuestion question)
{
    const auto own = clients::marksOf(question);
    const QJsonArray array = reader.array("marks");
    std::vector<HealthMark> marks;
    for (qsizetype i = 0; i < array.size(); ++i) {
        const std::string field = fmt::format("marks[{}]", i);
        const auto mark = clients::healthMarkOf(array[i].toString().toStdString());
        if (!mark || std::find(own.begin(), own.end(), *mark) == own.end()) {
            reader.fail(field.c_str(), "is no mark of this question");
        } else if (std::find(marks.begin(), marks.end(), *mark) != marks.end()) {
            reader.fail(field.c_str(), "is there twice");
        } else {
            marks.push_back(*mark);
        }
    }
    return marks;
}

HealthAnswer readAnswer(const QJsonValue& value, HealthQuestion question, ObjectReader& parent)
{
    HealthAnswer answer;
    if (value.isBool()) {
        answer.isYes = value.toBool();
        return answer;
    }
    ObjectReader reader(value, parent.pathOf(std::string(clients::keyOf(question)).c_str()));
    reader.allowOnly({"yes", "marks", "detail"});
    if (reader.has("yes")) {
        answer.isYes = reader.flag("yes", false);
    }
    if (reader.has("marks")) {
        answer.marks = marksAt(reader, question);
    }
    answer.detail = reader.optionalText("detail").value_or(std::string());
    if (reader.fault()) {
        parent.take(*reader.fault());
    }
    return answer;
}

void readAnswers(ObjectReader& reader, HealthIntake& intake)
{
    const QJsonObject object = reader.optional("answers").toObject();
    ObjectReader answers(reader.optional("answers"), reader.pathOf("answers"));
    for (auto it = object.begin(); it != object.end(); ++it) {
        const auto question = clients::healthQuestionOf(it.key().toStdString());
        if (question) {
            intake.answerTo(*question) = readAnswer(it.value(), *question, answers);
        } else {
            answers.fail(it.key().toUtf8().constData(), "is no question of the intake");
        }
    }
    if (answers.fault()) {
        reader.take(*answers.fault());
    }
}

void readResting(ObjectReader& reader, clients::RestingReading& resting)
{
    ObjectReader own(reader.optional("resting"), reader.pathOf("resting"));
    own.allowOnly({"heart_rate", "systolic", "diastolic"});
    resting = {own.optionalWholeNumber("heart_rate", 20, 250), own.optionalWholeNumber("systolic", 50, 300), own.optionalWholeNumber("diastolic", 20, 200)};
    if (const auto field = clients::faultyFieldOf(resting); field && own.isSound()) {
        own.fail(*field, "must be below systolic");
    }
    if (own.fault()) {
        reader.take(*own.fault());
    }
}

QJsonValue answerJson(const HealthAnswer& answer)
{
    if (answer.marks.empty() && answer.detail.empty()) {
        return *answer.isYes;
    }
    QJsonObject object;
    if (answer.isYes) {
        put(object, "yes", *answer.isYes);
    }
    if (!answer.marks.empty()) {
        QJsonArray marks;
        for (const HealthMark mark : answer.marks) {
            marks.append(textOf(clients::keyOf(mark)));
        }
        put(object, "marks", marks);
    }
    if (!answer.detail.empty()) {
        put(object, "detail", textOf(answer.detail));
    }
    return object;
}

void putNumber(QJsonObject& object, const char* field, const std::optional<int>& number)
{
    if (number) {
        put(object, field, *number);
    }
}

}  // namespace

JsonResult<HealthIntake> readHealthIntake(const QJsonValue& value, const std::string& path)
{
    ObjectReader reader(value, path);
    reader.allowOnly({"answers", "regular_exerciser", "intended", "resting", "note", "agreed"});
    HealthIntake intake;
    if (reader.has("answers")) {
        readAnswers(reader, intake);
    }
    if (reader.has("regular_exerciser")) {
        intake.isRegularExerciser = reader.flag("regular_exerciser", false);
    }
    if (const auto intended = reader.optionalText("intended")) {
        const auto intensity = clients::intensityOf(*intended);
        if (!intensity) {
            reader.fail("intended", "must be light, moderate or vigorous");
        }
        intake.intended = intensity.value_or(clients::Intensity::Moderate);
    }
    if (reader.has("resting")) {
        readResting(reader, intake.resting);
    }
    intake.note = reader.optionalText("note").value_or(std::string());
    intake.agreedOn = optionalDayAt(reader, "agreed");
    return resultOf(reader, std::move(intake));
}

QJsonObject toJson(const HealthIntake& intake)
{
    QJsonObject answers;
    for (int i = 0; i < clients::kHealthQuestionCount; ++i) {
        const auto question = static_cast<HealthQuestion>(i);
        const HealthAnswer& answer = intake.answerTo(question);
        if (answer != HealthAnswer()) {
            answers.insert(textOf(clients::keyOf(question)), answerJson(answer));
        }
    }
    QJsonObject object;
    put(object, "answers", answers);
    if (intake.isRegularExerciser) {
        put(object, "regular_exerciser", *intake.isRegularExerciser);
    }
    put(object, "intended", textOf(clients::keyOf(intake.intended)));
    QJsonObject resting;
    putNumber(resting, "heart_rate", intake.resting.heartRate);
    putNumber(resting, "systolic", intake.resting.systolic);
    putNumber(resting, "diastolic", intake.resting.diastolic);
    if (!resting.isEmpty()) {
        put(object, "resting", resting);
    }
    if (!intake.note.empty()) {
        put(object, "note", textOf(intake.note));
    }
    if (intake.agreedOn) {
        put(object, "agreed", textOf(intake.agreedOn->toString()));
    }
    return object;
}

}  // namespace chalk::exchange
