#include "core/exchange/equipment_json.h"

#include <QJsonArray>

#include <fmt/core.h>

namespace chalk::exchange {

namespace {

using base::Load;

Load loadAt(ObjectReader& reader, const char* field, std::int32_t low)
{
    return Load::fromCenti(reader.decimal(field, 2, low, lifts::kMaxLoadCenti));
}

std::vector<Load> loadsAt(ObjectReader& reader, std::int32_t low)
{
    std::vector<Load> loads;
    const QJsonArray array = reader.array("loads");
    for (qsizetype i = 0; i < array.size(); ++i) {
        const auto centi = exactDecimal(array[i], fmt::format("{}[{}]", reader.pathOf("loads"), i), 2, low, lifts::kMaxLoadCenti);
        if (!centi) {
            reader.take(centi.error());
            break;
        }
        loads.push_back(Load::fromCenti(*centi));
    }
    return loads;
}

std::optional<lifts::PlatePair> readPair(ObjectReader& reader, const QJsonValue& value, const std::string& path)
{
    const QJsonArray pair = value.toArray();
    if (!value.isArray() || pair.size() != 2) {
        reader.take({path, "must be [mass of a plate, pairs of it]"});
        return std::nullopt;
    }
    const auto plate = exactDecimal(pair[0], path + "[0]", 2, 1, lifts::kMaxLoadCenti);
    const auto count = exactDecimal(pair[1], path + "[1]", 0, 0, lifts::kMaxPairs);
    if (!plate || !count) {
        reader.take(plate ? count.error() : plate.error());
        return std::nullopt;
    }
    return lifts::PlatePair{Load::fromCenti(*plate), *count};
}

lifts::Equipment readBarbell(ObjectReader& reader)
{
    reader.allowOnly({"kind", "bar", "pairs"});
    lifts::Barbell barbell;
    barbell.bar = loadAt(reader, "bar", 0);
    const QJsonArray pairs = reader.array("pairs");
    for (qsizetype i = 0; i < pairs.size() && reader.isSound(); ++i) {
        if (const auto pair = readPair(reader, pairs[i], fmt::format("{}[{}]", reader.pathOf("pairs"), i))) {
            barbell.pairs.push_back(*pair);
        }
    }
    return barbell;
}

lifts::Equipment readStack(ObjectReader& reader)
{
    reader.allowOnly({"kind", "from", "to", "step"});
    return lifts::Stack{loadAt(reader, "from", 0), loadAt(reader, "to", 0), loadAt(reader, "step", 1)};
}

lifts::Equipment readKind(ObjectReader& reader)
{
    const std::string kind = reader.text("kind");
    if (kind == "barbell") {
        return readBarbell(reader);
    }
    if (kind == "stack") {
        return readStack(reader);
    }
    if (kind != "fixed" && kind != "body") {
        reader.fail("kind", "must be barbell, fixed, stack or body");
        return {};
    }
    reader.allowOnly({"kind", "loads"});
    if (kind == "fixed") {
        return lifts::FixedSet{loadsAt(reader, 0)};
    }
    return lifts::BodyAdded{loadsAt(reader, -lifts::kMaxLoadCenti)};
}

QJsonArray arrayOf(const std::vector<Load>& loads)
{
    QJsonArray array;
    for (const Load load : loads) {
        array.append(numberOf(load));
    }
    return array;
}

QJsonObject written(const lifts::Barbell& barbell)
{
    QJsonArray pairs;
    for (const lifts::PlatePair& pair : barbell.pairs) {
        pairs.append(QJsonArray{numberOf(pair.plate), pair.pairs});
    }
    return {{QStringLiteral("kind"), QStringLiteral("barbell")}, {QStringLiteral("bar"), numberOf(barbell.bar)}, {QStringLiteral("pairs"), pairs}};
}

QJsonObject written(const lifts::FixedSet& fixed)
{
    return {{QStringLiteral("kind"), QStringLiteral("fixed")}, {QStringLiteral("loads"), arrayOf(fixed.loads)}};
}

QJsonObject written(const lifts::Stack& stack)
{
    return {{QStringLiteral("kind"), QStringLiteral("stack")},
            {QStringLiteral("from"), numberOf(stack.from)},
            {QStringLiteral("to"), numberOf(stack.to)},
            {QStringLiteral("step"), numberOf(stack.step)}};
}

QJsonObject written(const lifts::BodyAdded& body)
{
    return {{QStringLiteral("kind"), QStringLiteral("body")}, {QStringLiteral("loads"), arrayOf(body.loads)}};
}

}  // namespace

double numberOf(Load load)
{
    return static_cast<double>(load.centi()) / 100.0;
}

JsonResult<lifts::Equipment> readEquipment(const QJsonValue& value, const std::string& path)
{
    ObjectReader reader(value, path);
    lifts::Equipment equipment = readKind(reader);
    if (reader.isSound()) {
        if (const auto loads = lifts::LoadTable::of(equipment); !loads) {
            reader.fail(loads.error().field.c_str(), loads.error().reason);
        }
    }
    return resultOf(reader, std::move(equipment));
}

QJsonObject toJson(const lifts::Equipment& equipment)
{
    return std::visit([](const auto& kind) { return written(kind); }, equipment);
}

}  // namespace chalk::exchange
