#include "core/exchange/catalogue_json.h"

#include "core/exchange/word_reading.h"

#include <QFile>
#include <QJsonArray>

#include <fmt/core.h>

namespace chalk::exchange {

namespace {

using lifts::Exercise;

JsonResult<Exercise> readExercise(const QJsonValue& value, const std::string& path)
{
    ObjectReader reader(value, path);
    reader.allowOnly({"key", "name", "pattern", "region", "measure", "equipment", "station", "rung", "body_share", "pieces", "easier", "harder",
                      "cues", "care", "ruled_out_by"});
    Exercise exercise;
    exercise.key = reader.text("key");
    exercise.name = reader.text("name");
    exercise.pattern = enumAt<lifts::Pattern>(reader, "pattern", lifts::patternOf);
    exercise.region = enumAt<lifts::Region>(reader, "region", lifts::regionOf);
    exercise.measure = enumAt<lifts::Measure>(reader, "measure", lifts::measureOf);
    exercise.equipment = enumAt<lifts::EquipmentKind>(reader, "equipment", lifts::equipmentKindOf);
    exercise.station = enumAt<lifts::Station>(reader, "station", lifts::stationOf);
    exercise.rung = reader.wholeNumber("rung", 1, 100);
    exercise.bodyShare = base::Milli(reader.optionalDecimal("body_share", 3, 0, 1000).value_or(0));
    exercise.pieces = reader.optionalWholeNumber("pieces", 1, 2).value_or(1);
    exercise.easier = textsAt(reader, "easier");
    exercise.harder = textsAt(reader, "harder");
    exercise.cues = textsAt(reader, "cues");
    exercise.care = tagsAt(reader, "care");
    exercise.ruledOutBy = tagsAt(reader, "ruled_out_by");
    return resultOf(reader, std::move(exercise));
}

}  // namespace

JsonResult<lifts::Catalogue> readCatalogue(const QByteArray& text)
{
    const auto value = parseJson(text);
    if (!value) {
        return tl::make_unexpected(value.error());
    }
    ObjectReader reader(*value, {});
    reader.allowOnly({"about", "exercises"});
    std::vector<Exercise> exercises;
    const QJsonArray array = reader.array("exercises");
    for (qsizetype i = 0; i < array.size() && reader.isSound(); ++i) {
        auto exercise = readExercise(array[i], fmt::format("exercises[{}]", i));
        if (exercise) {
            exercises.push_back(*std::move(exercise));
        } else {
            reader.take(exercise.error());
        }
    }
    if (reader.fault()) {
        return tl::make_unexpected(*reader.fault());
    }
    return lifts::Catalogue::of(std::move(exercises)).map_error([](const lifts::CatalogueFault& fault) {
        return JsonFault{fmt::format("exercises[{}].{}", fault.index, fault.field), fault.reason};
    });
}

lifts::Catalogue builtInCatalogue()
{
    QFile file(QStringLiteral(":/catalogue/lifts.json"));
    const bool isOpen = file.open(QIODevice::ReadOnly);
    return readCatalogue(isOpen ? file.readAll() : QByteArray()).value();
}

}  // namespace chalk::exchange
