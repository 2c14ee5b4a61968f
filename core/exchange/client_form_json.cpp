#include "core/exchange/client_form_json.h"

#include "core/exchange/field_test_json.h"
#include "core/exchange/health_intake_json.h"
#include "core/exchange/json_writing.h"
#include "core/exchange/movement_screen_json.h"
#include "core/exchange/plan_draft_json.h"
#include "core/exchange/profile_json.h"
#include "core/exchange/studio_fields.h"

#include <QJsonArray>

#include <algorithm>

namespace chalk::exchange {

namespace {

using studio::DocumentForm;
using studio::DocumentLetter;
using studio::FormContent;

/// A reader of one kind, as a reader of any.
template <class Read>
JsonResult<FormContent> asContent(Read&& read, const QJsonValue& value, const std::string& path)
{
    return read(value, path).map([](auto content) { return FormContent(std::move(content)); });
}

/// Fails on what cannot be on that day.
struct ContentCheck {
    ObjectReader& reader;
    base::Date today;

    void take(const std::optional<clients::ProfileFault>& fault) const
    {
        if (fault) {
            reader.take({reader.pathOf("detail") + '.' + fault->field, fault->reason});
        }
    }
    void checkDay(const char* field, base::Date day) const
    {
        if (day > today) {
            reader.take({reader.pathOf("detail") + '.' + field, "lies after the studio's day"});
        }
    }

    void operator()(const clients::Profile& profile) const { take(clients::faultOf(profile, today)); }
    void operator()(const clients::HealthIntake& intake) const { checkDay("agreed", intake.agreedOn.value_or(today)); }
    void operator()(const clients::BodyMeasures& measures) const { take(clients::faultOf(measures, today)); }
    void operator()(const screens::MovementScreen& screen) const { checkDay("date", screen.date); }
    void operator()(const screens::FieldTestDay& tests) const { checkDay("date", tests.date); }
    void operator()(const planning::PlanDraft& /*draft*/) const {}
};

std::vector<clients::HealthMark> answersAt(ObjectReader& reader)
{
    std::vector<clients::HealthMark> marks;
    const QJsonArray array = reader.array("answers");
    for (qsizetype i = 0; i < array.size(); ++i) {
        const auto mark = clients::healthMarkOf(array[i].toString().toStdString());
        const std::string place = fmt::format("{}[{}]", reader.pathOf("answers"), i);
        if (!mark) {
            reader.take({place, "is no mark of the intake"});
        } else if (std::find(marks.begin(), marks.end(), *mark) != marks.end()) {
            reader.take({place, "is named twice"});
        } else {
            marks.push_back(*mark);
        }
    }
    return marks;
}

std::string copyAt(ObjectReader& reader)
{
    const std::string text = reader.text("copy");
    const auto bytes = QByteArray::fromBase64Encoding(QByteArray::fromStdString(text), QByteArray::AbortOnBase64DecodingErrors);
    if (reader.isSound() && !bytes) {
        reader.fail("copy", "must be Base64");
    }
    return bytes.decoded.toStdString();
}

}  // namespace

JsonResult<FormContent> readFormContent(const std::string& kind, const QJsonValue& value, const std::string& path)
{
    if (kind == "profile") {
        return asContent(readProfile, value, path);
    }
    if (kind == "health_intake") {
        return asContent(readHealthIntake, value, path);
    }
    if (kind == "body_measures") {
        return asContent(readBodyMeasures, value, path);
    }
    if (kind == "movement_screen") {
        return asContent(readMovementScreen, value, path);
    }
    if (kind == "field_tests") {
        return asContent(readFieldTestDay, value, path);
    }
    if (kind == "starting_plan") {
        return asContent(readPlanDraft, value, path);
    }
    return jsonFault(path, "is of no kind of form that is known here");
}

QJsonObject toJson(const FormContent& content)
{
    return std::visit([](const auto& one) { return toJson(one); }, content);
}

JsonResult<DocumentForm> readForm(const QJsonValue& value, const std::string& path, base::Date today)
{
    ObjectReader reader(value, path);
    reader.allowOnly({"kind", "day", "finished", "detail"});
    DocumentForm form;
    const std::string kind = reader.text("kind");
    form.day = dayAt(reader, "day");
    form.isFinished = reader.flag("finished", false);
    const QJsonValue detail = reader.required("detail");
    if (reader.isSound()) {
        auto content = readFormContent(kind, detail, reader.pathOf("detail"));
        if (!content && content.error().field == reader.pathOf("detail")) {
            reader.fail(detail.isObject() ? "kind" : "detail", content.error().reason);
        }
        form.content = taken(reader, std::move(content));
    }
    if (reader.isSound() && form.day > today) {
        reader.fail("day", "lies after the studio's day");
    }
    if (reader.isSound()) {
        std::visit(ContentCheck{reader, today}, form.content);
    }
    return resultOf(reader, std::move(form));
}

QJsonObject toJson(const DocumentForm& form)
{
    QJsonObject object;
    put(object, "kind", textOf(studio::kindOf(form.content)));
    put(object, "day", textOf(form.day.toString()));
    put(object, "finished", form.isFinished);
    put(object, "detail", toJson(form.content));
    return object;
}

JsonResult<DocumentLetter> readLetter(const QJsonValue& value, const std::string& path, base::Date today)
{
    ObjectReader reader(value, path);
    reader.allowOnly({"written_by", "day", "valid_until", "limits", "answers", "file_name", "copy"});
    DocumentLetter letter;
    letter.writtenBy = labelAt(reader, "written_by");
    letter.day = dayAt(reader, "day");
    letter.validUntil = optionalDayAt(reader, "valid_until");
    letter.limits = proseAt(reader, "limits");
    letter.answers = answersAt(reader);
    letter.fileName = reader.has("file_name") ? labelAt(reader, "file_name") : std::string();
    letter.copy = reader.has("copy") ? copyAt(reader) : std::string();
    if (reader.isSound() && letter.day > today) {
        reader.fail("day", "lies after the studio's day");
    }
    if (reader.isSound() && letter.validUntil && *letter.validUntil < letter.day) {
        reader.fail("valid_until", "must not lie before `day`");
    }
    return resultOf(reader, std::move(letter));
}

QJsonObject toJson(const DocumentLetter& letter)
{
    QJsonArray answers;
    for (const clients::HealthMark mark : letter.answers) {
        answers.append(textOf(clients::keyOf(mark)));
    }
    QJsonObject object;
    put(object, "written_by", textOf(letter.writtenBy));
    put(object, "day", textOf(letter.day.toString()));
    if (letter.validUntil) {
        put(object, "valid_until", textOf(letter.validUntil->toString()));
    }
    put(object, "limits", textOf(letter.limits));
    put(object, "answers", answers);
    if (!letter.fileName.empty()) {
        put(object, "file_name", textOf(letter.fileName));
    }
    if (!letter.copy.empty()) {
        put(object, "copy", QString::fromLatin1(QByteArray::fromStdString(letter.copy).toBase64()));
    }
    return object;
}

}  // namespace chalk::exchange
