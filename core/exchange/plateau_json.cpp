#include "core/exchange/plateau_json.h"

#include "core/exchange/json_writing.h"

#include <QJsonArray>

namespace chalk::exchange {

namespace {

/// A word, or null for an empty one.
QJsonValue wordOrNull(std::string_view word)
{
    return word.empty() ? QJsonValue() : QJsonValue(textOf(word));
}

template <class Number>
QJsonValue figureOrNull(const std::optional<Number>& number)
{
    return number ? QJsonValue(*number) : QJsonValue();
}

/// A member of a part, or null where the part is not there.
template <class Part, class Number>
QJsonValue memberOrNull(const std::optional<Part>& part, Number Part::*member)
{
    return part ? QJsonValue((*part).*member) : QJsonValue();
}

QJsonValue jsonOf(const std::optional<plateau::MissedTargets>& missed)
{
    return missed ? QJsonObject{{QLatin1String("misses"), missed->misses}, {QLatin1String("of"), missed->of}, {QLatin1String("usual_share"), missed->usualShare}} : QJsonValue();
}

QJsonValue jsonOf(const std::optional<plateau::WeeklyChange>& change)
{
    return change ? QJsonObject{{QLatin1String("percent"), change->percent}, {QLatin1String("low"), change->low}, {QLatin1String("high"), change->high}} : QJsonValue();
}

QJsonValue jsonOf(const std::optional<plateau::OtherCauses>& causes)
{
    return causes ? QJsonObject{{QLatin1String("planned_28d"), causes->plannedSessions}, {QLatin1String("attended_28d"), causes->attendedSessions},
                                {QLatin1String("longest_gap_days"), causes->longestGapDays}, {QLatin1String("painful"), causes->painful},
                                {QLatin1String("lighter"), causes->lighter}, {QLatin1String("of_variation"), causes->ofVariation}}
                  : QJsonValue();
}

QJsonValue jsonOf(const std::optional<plateau::Shortage>& shortage)
{
    return shortage ? QJsonObject{{QLatin1String("valid"), shortage->valid}, {QLatin1String("used"), shortage->used}, {QLatin1String("to_come"), shortage->toCome}, {QLatin1String("days_to_come"), shortage->daysToCome}}
                    : QJsonValue();
}

QJsonValue pauseJson(const plateau::PlateauEvidence& evidence)
{
    return evidence.pause ? QJsonObject{{QLatin1String("days"), evidence.pause->days}, {QLatin1String("exposures"), evidence.pause->exposures}, {QLatin1String("to_come"), evidence.toComeAfterPause}}
                          : QJsonValue();
}

QJsonArray leftOutJson(const std::vector<plateau::LeftOutExposure>& leftOut)
{
    QJsonArray rows;
    for (const plateau::LeftOutExposure& one : leftOut) {
        QJsonArray marks;
        for (const plateau::EntryMark mark : one.marks) {
            marks.append(textOf(plateau::keyOf(mark)));
        }
        rows.append(QJsonObject{{QLatin1String("date"), textOf(one.date.toString())}, {QLatin1String("marks"), marks}});
    }
    return rows;
}

QJsonObject evidenceJson(const plateau::PlateauEvidence& evidence)
{
    QJsonObject object;
    put(object, "missed", jsonOf(evidence.missed));
    put(object, "change", jsonOf(evidence.change));
    put(object, "long_change", jsonOf(evidence.longChange));
    put(object, "stage", evidence.stage ? QJsonValue(textOf(progression::keyOf(*evidence.stage))) : QJsonValue());
    put(object, "days_since_lever_best", figureOrNull(evidence.best.daysSinceLever));
    put(object, "days_since_index_best", figureOrNull(evidence.best.daysSinceIndex));
    put(object, "other_causes", jsonOf(evidence.otherCauses));
    put(object, "shortage", jsonOf(evidence.shortage));
    put(object, "pause", pauseJson(evidence));
    put(object, "left_out", leftOutJson(evidence.leftOut));
    return object;
}

QJsonObject traceJson(const plateau::Judgement& judgement)
{
    QJsonObject object;
    put(object, "n", memberOrNull(judgement.trend, &plateau::TrendReading::exposures));
    put(object, "slope", memberOrNull(judgement.trend, &plateau::TrendReading::slope));
    put(object, "se", memberOrNull(judgement.trend, &plateau::TrendReading::error));
    put(object, "swr", memberOrNull(judgement.trend, &plateau::TrendReading::smallestGain));
    put(object, "zA", memberOrNull(judgement.trend, &plateau::TrendReading::z));
    put(object, "misses", memberOrNull(judgement.lever, &plateau::LeverReading::misses));
    put(object, "base", memberOrNull(judgement.lever, &plateau::LeverReading::usualShare));
    put(object, "zB", memberOrNull(judgement.lever, &plateau::LeverReading::z));
    put(object, "Z", figureOrNull(judgement.z));
    return object;
}

}  // namespace

QJsonObject toJson(const JudgedCheck& judged, bool hasTrace)
{
    const plateau::Judgement& judgement = judged.judgement;
    QJsonObject object;
    put(object, "client", textOf(judged.check.lift.client));
    put(object, "lift", textOf(judged.check.lift.lift));
    put(object, "check_date", textOf(judged.check.day.date.toString()));
    put(object, "verdict", textOf(plateau::keyOf(judgement.verdict)));
    put(object, "reason", wordOrNull(plateau::keyOf(judgement.reason)));
    put(object, "strength", judgement.strength ? QJsonValue(textOf(plateau::keyOf(*judgement.strength))) : QJsonValue());
    put(object, "watch", judgement.isWatched);
    put(object, "slow", memberOrNull(judgement.confidence, &plateau::Confidence::isSlow));
    put(object, "stopped", memberOrNull(judgement.confidence, &plateau::Confidence::isStopped));
    put(object, "evidence", evidenceJson(judged.evidence));
    if (hasTrace) {
        put(object, "trace", traceJson(judgement));
    }
    return object;
}

}  // namespace chalk::exchange
