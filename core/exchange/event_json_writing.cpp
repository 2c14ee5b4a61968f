#include "core/exchange/block_json.h"
#include "core/exchange/entry_fields.h"
#include "core/exchange/equipment_json.h"
#include "core/exchange/event_json.h"
#include "core/exchange/json_writing.h"

namespace chalk::exchange {

namespace {

using progression::SetRecord;
using progression::Steadiness;

void putSteadiness(QJsonObject& object, Steadiness steadiness)
{
    if (steadiness != Steadiness::Steady) {
        put(object, "steadiness", textOf(progression::keyOf(steadiness)));
    }
}

void putPain(QJsonObject& object, int pain)
{
    if (pain > 0) {
        put(object, "pain", pain);
    }
}

/// Writes the fields of one kind of event into `object`.
struct BodyWriter {
    QJsonObject& object;
    lifts::Measure measure;

    QJsonObject written(const SetRecord& set) const
    {
        QJsonObject one;
        eachField(set, measure, [&one](const char* field, auto value) {
            if constexpr (std::is_same_v<decltype(value), std::string_view>) {
                put(one, field, textOf(value));
            } else {
                put(one, field, value);
            }
        });
        return one;
    }

    void operator()(const progression::Exposure& exposure) const
    {
        QJsonArray sets;
        for (const SetRecord& set : exposure.sets) {
            sets.append(written(set));
        }
        put(object, "sets", sets);
        putPain(object, exposure.pain);
    }

    void operator()(const progression::Rehearsal& rehearsal) const
    {
        QJsonObject criteria;
        for (const progression::Criterion& criterion : rehearsal.criteria) {
            criteria.insert(textOf(criterion.key), textOf(progression::keyOf(criterion.verdict)));
        }
        QJsonObject pauses;
        const auto putPause = [&pauses](const char* field, const std::optional<int>& ms) {
            if (ms) {
                put(pauses, field, *ms / 1000.0);
            }
        };
        putPause("top", rehearsal.pauses.topMs);
        putPause("middle", rehearsal.pauses.middleMs);
        putPause("bottom", rehearsal.pauses.bottomMs);
        put(object, "criteria", criteria);
        put(object, "reps", rehearsal.reps.value());
        put(object, "pauses", pauses);
        putSteadiness(object, rehearsal.steadiness);
        putPain(object, rehearsal.pain);
    }

    void operator()(const progression::Release& release) const { put(object, "note", textOf(release.note)); }

    void operator()(const progression::CoachSet& set) const
    {
        if (set.stage) {
            put(object, "stage", textOf(progression::keyOf(*set.stage)));
        }
        if (set.load) {
            put(object, "load", numberOf(*set.load));
        }
        if (set.reps) {
            put(object, "reps", set.reps->value());
        }
        if (set.sets) {
            put(object, "sets", set.sets->value());
        }
        if (set.rest) {
            put(object, "rest_s", set.rest->value());
        }
        put(object, "reason", textOf(set.reason));
    }

    void operator()(const progression::Swap& swap) const
    {
        put(object, "equipment", toJson(swap.equipment));
        if (swap.startLoad) {
            put(object, "start_load", numberOf(*swap.startLoad));
        }
        if (swap.bodyShare) {
            put(object, "body_share", swap.bodyShare->value() / 1000.0);
        }
        if (swap.measure) {
            put(object, "measure", textOf(lifts::keyOf(*swap.measure)));
        }
        if (!swap.exerciseKey.empty()) {
            put(object, "exercise", textOf(swap.exerciseKey));
        }
        if (swap.pieces != 1) {
            put(object, "pieces", swap.pieces);
        }
    }

    void operator()(const progression::Block& block) const { putBlock(object, block); }

    void operator()(const progression::LighterWeek& lighter) const
    {
        if (!lighter.note.empty()) {
            put(object, "note", textOf(lighter.note));
        }
    }
};

}  // namespace

QJsonObject toJson(const progression::Event& event, lifts::Measure measure)
{
    QJsonObject object{{QStringLiteral("date"), textOf(event.date.toString())},
                       {QStringLiteral("type"), textOf(progression::typeKeyOf(event.body))}};
    std::visit(BodyWriter{object, measure}, event.body);
    return object;
}

}  // namespace chalk::exchange
