#include "core/exchange/screen_json.h"

#include "core/exchange/word_reading.h"

#include <QFile>
#include <QJsonArray>

#include <fmt/core.h>

namespace chalk::exchange {

namespace {

using screens::CorrectiveWork;
using screens::DepthName;
using screens::Dose;
using screens::PatternGuide;
using screens::ScreenPoint;
using screens::WorkKind;

/// Reads every object of a list; the first fault is taken over.
template <class T, class Read>
std::vector<T> objectsAt(ObjectReader& reader, const char* field, Read&& read)
{
    std::vector<T> values;
    const QJsonArray array = reader.array(field);
    for (qsizetype i = 0; i < array.size() && reader.isSound(); ++i) {
        ObjectReader one(array[i], fmt::format("{}[{}]", reader.pathOf(field), i));
        values.push_back(read(one));
        if (one.fault()) {
            reader.take(*one.fault());
        }
    }
    return values;
}

std::optional<WorkKind> workKindOf(std::string_view key)
{
    if (key == "drill") {
        return WorkKind::Drill;
    }
    return key == "regression" ? std::optional(WorkKind::Regression) : std::nullopt;
}

ScreenPoint readPoint(ObjectReader& reader)
{
    reader.allowOnly({"key", "text", "from"});
    ScreenPoint point;
    point.key = reader.text("key");
    point.text = reader.text("text");
    point.from = enumAt<screens::ViewFrom>(reader, "from", screens::viewFromOf);
    return point;
}

DepthName readDepth(ObjectReader& reader)
{
    reader.allowOnly({"name", "hint"});
    DepthName depth;
    depth.name = reader.text("name");
    depth.hint = reader.text("hint");
    return depth;
}

Dose readDose(ObjectReader& reader)
{
    reader.allowOnly({"sets", "reps", "seconds", "each_side"});
    Dose dose;
    dose.sets = base::Sets(reader.wholeNumber("sets", 1, 5));
    if (reader.has("reps") == reader.has("seconds")) {
        reader.fail("reps", "must be there, or seconds, and not both");
    }
    dose.measure = reader.has("reps") ? lifts::Measure::Reps : lifts::Measure::Seconds;
    dose.amount = dose.measure == lifts::Measure::Reps ? reader.wholeNumber("reps", 1, 30) : reader.wholeNumber("seconds", 5, 120);
    dose.isEachSide = reader.flag("each_side", false);
    return dose;
}

CorrectiveWork readWork(ObjectReader& reader)
{
    reader.allowOnly({"kind", "key", "name", "how", "dose", "helps", "ruled_out_by"});
    CorrectiveWork work;
    work.kind = enumAt<WorkKind>(reader, "kind", workKindOf);
    work.key = reader.text("key");
    work.name = reader.text("name");
    work.how = reader.text("how");
    ObjectReader dose(reader.required("dose"), reader.pathOf("dose"));
    work.dose = readDose(dose);
    if (dose.fault()) {
        reader.take(*dose.fault());
    }
    work.helps = textsAt(reader, "helps");
    if (reader.has("ruled_out_by")) {
        work.ruledOutBy = tagsAt(reader, "ruled_out_by");
    }
    return work;
}

PatternGuide readGuide(ObjectReader& reader)
{
    reader.allowOnly({"pattern", "how", "look", "points", "depths", "work"});
    PatternGuide guide;
    guide.pattern = enumAt<lifts::Pattern>(reader, "pattern", lifts::patternOf);
    guide.how = reader.text("how");
    guide.look = reader.text("look");
    guide.points = objectsAt<ScreenPoint>(reader, "points", readPoint);
    guide.depths = objectsAt<DepthName>(reader, "depths", readDepth);
    guide.work = objectsAt<CorrectiveWork>(reader, "work", readWork);
    return guide;
}

}  // namespace

JsonResult<screens::ScreenCatalogue> readScreenCatalogue(const QByteArray& text, const lifts::Catalogue& lifts)
{
    const auto value = parseJson(text);
    if (!value) {
        return tl::make_unexpected(value.error());
    }
    ObjectReader reader(*value, {});
    reader.allowOnly({"about", "patterns"});
    auto guides = objectsAt<PatternGuide>(reader, "patterns", readGuide);
    if (reader.fault()) {
        return tl::make_unexpected(*reader.fault());
    }
    return screens::ScreenCatalogue::of(std::move(guides), lifts).map_error([](const screens::GuideFault& fault) {
        return JsonFault{fmt::format("patterns[{}].{}", fault.index, fault.field), fault.reason};
    });
}

screens::ScreenCatalogue builtInScreenCatalogue(const lifts::Catalogue& lifts)
{
    QFile file(QStringLiteral(":/catalogue/screen.json"));
    const bool isOpen = file.open(QIODevice::ReadOnly);
    return readScreenCatalogue(isOpen ? file.readAll() : QByteArray(), lifts).value();
}

}  // namespace chalk::exchange
