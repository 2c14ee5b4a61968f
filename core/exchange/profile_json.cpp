#include "core/exchange/profile_json.h"

#include "core/exchange/hours_json.h"
#include "core/exchange/json_writing.h"
#include "core/exchange/studio_fields.h"

#include <QJsonArray>

#include <fmt/core.h>

namespace chalk::exchange {

namespace {

using clients::Profile;

std::string textAt(ObjectReader& reader, const char* field)
{
    return reader.optionalText(field).value_or(std::string());
}

std::vector<lifts::EquipmentKind> kitAt(ObjectReader& reader)
{
    std::vector<lifts::EquipmentKind> kit;
    const QJsonArray array = reader.has("home_kit") ? reader.array("home_kit") : QJsonArray();
    for (qsizetype i = 0; i < array.size(); ++i) {
        const auto kind = lifts::equipmentKindOf(array[i].toString().toStdString());
        if (!kind) {
            reader.fail(fmt::format("home_kit[{}]", i).c_str(), "is a word that is not known here");
            break;
        }
        kit.push_back(*kind);
    }
    return kit;
}

void putText(QJsonObject& object, const char* field, const std::string& text)
{
    if (!text.empty()) {
        put(object, field, textOf(text));
    }
}

void putDay(QJsonObject& object, const char* field, const std::optional<base::Date>& day)
{
    if (day) {
        put(object, field, textOf(day->toString()));
    }
}

void putWhole(QJsonObject& object, const char* field, const std::optional<int>& number)
{
    if (number) {
        put(object, field, *number);
    }
}

/// Millimetres read from a field in centimetres.
std::optional<clients::Millimetres> lengthAt(ObjectReader& reader, const char* field, int low, int high)
{
    const auto millimetres = reader.optionalDecimal(field, 1, low, high);
    return millimetres ? std::optional(clients::Millimetres(*millimetres)) : std::nullopt;
}

clients::Skinfolds foldsAt(ObjectReader& reader)
{
    const QJsonArray array = reader.array("skinfolds_mm");
    std::array<int, 3> folds{};
    if (array.size() != 3) {
        reader.fail("skinfolds_mm", "must name three figures");
        return {};
    }
    for (std::size_t i = 0; i < folds.size(); ++i) {
        const auto fold = exactDecimal(array[static_cast<qsizetype>(i)], fmt::format("{}[{}]", reader.pathOf("skinfolds_mm"), i), 1, 10, 1000);
        if (!fold) {
            reader.take(fold.error());
            return {};
        }
        folds.at(i) = *fold;
    }
    return {folds[0], folds[1], folds[2]};
}

}  // namespace

JsonResult<Profile> readProfile(const QJsonValue& value, const std::string& path)
{
    ObjectReader reader(value, path);
    reader.allowOnly({"pronouns", "sex", "phone", "email", "emergency", "training_history", "session_minutes", "in_group", "free", "preferred", "home_kit",
                      "consent", "guardian", "guardian_consent"});
    Profile profile;
    profile.pronouns = textAt(reader, "pronouns");
    if (const auto sex = reader.optionalText("sex")) {
        profile.sex = clients::normSexOf(*sex).value_or(clients::NormSex::NotGiven);
        if (!clients::normSexOf(*sex)) {
            reader.fail("sex", "must be female, male or not_given");
        }
    }
    profile.contact = {{}, textAt(reader, "phone"), textAt(reader, "email")};
    if (reader.has("emergency")) {
        ObjectReader own(reader.optional("emergency"), reader.pathOf("emergency"));
        own.allowOnly({"name", "phone"});
        profile.emergency = {textAt(own, "name"), textAt(own, "phone"), {}};
        if (own.fault()) {
            reader.take(*own.fault());
        }
    }
    profile.trainingHistory = textAt(reader, "training_history");
    profile.sessionMinutes = reader.optionalWholeNumber("session_minutes", 15, 240).value_or(profile.sessionMinutes);
    profile.isInGroup = reader.flag("in_group", false);
    profile.free = hoursAt(reader, "free");
    profile.preferred = hoursAt(reader, "preferred");
    profile.homeKit = kitAt(reader);
    profile.consentOn = optionalDayAt(reader, "consent");
    profile.guardian = textAt(reader, "guardian");
    profile.guardianConsentOn = optionalDayAt(reader, "guardian_consent");
    return resultOf(reader, std::move(profile));
}

QJsonObject toJson(const Profile& profile)
{
    QJsonObject object;
    putText(object, "pronouns", profile.pronouns);
    if (profile.sex != clients::NormSex::NotGiven) {
        put(object, "sex", textOf(clients::keyOf(profile.sex)));
    }
    putText(object, "phone", profile.contact.phone);
    putText(object, "email", profile.contact.email);
    QJsonObject emergency;
    putText(emergency, "name", profile.emergency.name);
    putText(emergency, "phone", profile.emergency.phone);
    if (!emergency.isEmpty()) {
        put(object, "emergency", emergency);
    }
    putText(object, "training_history", profile.trainingHistory);
    put(object, "session_minutes", profile.sessionMinutes);
    put(object, "in_group", profile.isInGroup);
    put(object, "free", toJson(profile.free));
    put(object, "preferred", toJson(profile.preferred));
    QJsonArray kit;
    for (const lifts::EquipmentKind kind : profile.homeKit) {
        kit.append(textOf(lifts::keyOf(kind)));
    }
    put(object, "home_kit", kit);
    putDay(object, "consent", profile.consentOn);
    putText(object, "guardian", profile.guardian);
    putDay(object, "guardian_consent", profile.guardianConsentOn);
    return object;
}

JsonResult<clients::BodyMeasures> readBodyMeasures(const QJsonValue& value, const std::string& path)
{
    ObjectReader reader(value, path);
    reader.allowOnly({"date", "mass_kg", "height_cm", "waist_cm", "skinfolds_mm", "heart_rate", "systolic", "diastolic"});
    clients::BodyMeasures measures;
    measures.date = dayAt(reader, "date");
    if (const auto grams = reader.optionalDecimal("mass_kg", 3, 20'000, 400'000)) {
        measures.mass = base::Mass::fromRaw(std::int64_t{*grams} * 10'000'000);
    }
    measures.height = lengthAt(reader, "height_cm", 500, 2600);
    measures.waist = lengthAt(reader, "waist_cm", 300, 2500);
    if (reader.has("skinfolds_mm")) {
        measures.skinfolds = foldsAt(reader);
    }
    measures.heartRate = reader.optionalWholeNumber("heart_rate", 20, 250);
    measures.systolic = reader.optionalWholeNumber("systolic", 50, 300);
    measures.diastolic = reader.optionalWholeNumber("diastolic", 20, 200);
    return resultOf(reader, std::move(measures));
}

QJsonObject toJson(const clients::BodyMeasures& measures)
{
    QJsonObject object;
    put(object, "date", textOf(measures.date.toString()));
    if (measures.mass) {
        put(object, "mass_kg", static_cast<double>((measures.mass->raw() + 5'000'000) / 10'000'000) / 1000.0);
    }
    if (measures.height) {
        put(object, "height_cm", measures.height->value() / 10.0);
    }
    if (measures.waist) {
        put(object, "waist_cm", measures.waist->value() / 10.0);
    }
    if (measures.skinfolds) {
        put(object, "skinfolds_mm", QJsonArray{measures.skinfolds->first / 10.0, measures.skinfolds->second / 10.0, measures.skinfolds->third / 10.0});
    }
    putWhole(object, "heart_rate", measures.heartRate);
    putWhole(object, "systolic", measures.systolic);
    putWhole(object, "diastolic", measures.diastolic);
    return object;
}

}  // namespace chalk::exchange
