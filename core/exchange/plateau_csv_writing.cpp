#include "core/exchange/bookings_csv.h"
#include "core/exchange/json_writing.h"
#include "core/exchange/plateau_csv.h"

#include <QByteArrayList>

namespace chalk::exchange {

namespace {

constexpr int kDigits = 10;
constexpr int kNeverAtBest = 999;  // days

QByteArray bytesOf(std::string_view text)
{
    return QByteArray(text.data(), static_cast<qsizetype>(text.size()));
}

QByteArray cellOf(double number)
{
    return QByteArray::number(number, 'g', kDigits);
}

void appendTrend(QByteArrayList& cells, const std::optional<plateau::TrendReading>& trend)
{
    if (trend) {
        cells << QByteArray::number(trend->exposures) << cellOf(trend->slope) << cellOf(trend->error) << cellOf(trend->smallestGain) << cellOf(trend->z);
    } else {
        cells << "" << "" << "" << "" << "";
    }
}

void appendLever(QByteArrayList& cells, const std::optional<plateau::LeverReading>& lever)
{
    if (lever) {
        cells << QByteArray::number(lever->misses) << cellOf(lever->usualShare) << cellOf(lever->z);
    } else {
        cells << "" << "" << "";
    }
}

void appendBest(QByteArrayList& cells, const std::optional<plateau::BestReading>& best)
{
    if (best) {
        cells << QByteArray::number(best->daysSinceLever.value_or(kNeverAtBest)) << QByteArray::number(best->daysSinceIndex.value_or(kNeverAtBest));
    } else {
        cells << "" << "";
    }
}

QByteArrayList verdictCells(const JudgedCheck& one)
{
    return {csvField(textOf(one.check.lift.client)), csvField(textOf(one.check.lift.lift)), bytesOf(one.check.day.date.toString()),
            bytesOf(plateau::keyOf(one.judgement.verdict))};
}

QByteArrayList traceCells(const JudgedCheck& one)
{
    const plateau::Judgement& judgement = one.judgement;
    QByteArrayList cells = verdictCells(one);
    appendTrend(cells, judgement.trend);
    appendLever(cells, judgement.lever);
    appendBest(cells, judgement.best);
    cells << (judgement.z ? cellOf(*judgement.z) : QByteArray("nan"));
    cells << (judgement.confidence ? cellOf(judgement.confidence->isSlow) : QByteArray());
    cells << (judgement.confidence ? cellOf(judgement.confidence->isStopped) : QByteArray());
    cells << bytesOf(plateau::keyOf(judgement.reason)) << (judgement.isWatched ? "1" : "0");
    cells << (judgement.strength ? bytesOf(plateau::keyOf(*judgement.strength)) : QByteArray());
    return cells;
}

}  // namespace

QByteArray verdictsCsvOf(const std::vector<JudgedCheck>& judged)
{
    QByteArray text = "client,lift,check_date,verdict\r\n";
    for (const JudgedCheck& one : judged) {
        text += verdictCells(one).join(',') + "\r\n";
    }
    return text;
}

QByteArray traceCsvOf(const std::vector<JudgedCheck>& judged)
{
    QByteArray text =
        "client,lift,check_date,verdict,n,slope,se,swr,zA,misses,base,zB,days_since_lever_best,days_since_index_best,Z,p_low,p_stop,reason,watch,strength\r\n";
    for (const JudgedCheck& one : judged) {
        text += traceCells(one).join(',') + "\r\n";
    }
    return text;
}

}  // namespace chalk::exchange
