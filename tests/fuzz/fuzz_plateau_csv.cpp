#include "core/exchange/plateau_csv.h"

#include <cmath>
#include <cstdlib>

namespace {

void require(bool holds)
{
    if (!holds) {
        std::abort();
    }
}

/// The check on every day that something was done.
std::vector<chalk::exchange::LiftCheck> checksOf(const chalk::exchange::LiftLogs& logs)
{
    std::vector<chalk::exchange::LiftCheck> checks;
    for (const auto& [lift, log] : logs) {
        for (const auto& exposure : log) {
            checks.push_back({lift, {exposure.date, 8, 8}});
        }
    }
    return checks;
}

/// A judgement holds together: what a verdict needs is there, and every number is one.
void expectSound(const chalk::plateau::Judgement& judgement)
{
    using chalk::plateau::PlateauVerdict;
    const bool isJudged = judgement.verdict != PlateauVerdict::NotEnoughData;
    require(isJudged == judgement.confidence.has_value() && isJudged == judgement.best.has_value());
    require(!isJudged || (judgement.trend && judgement.lever && judgement.z));
    require(!judgement.trend || (std::isfinite(judgement.trend->slope) && judgement.trend->error > 0 && std::abs(judgement.trend->z) <= 3));
    require(!judgement.lever || (judgement.lever->usualShare > 0 && judgement.lever->usualShare < 1 && std::abs(judgement.lever->z) <= 3));
    require(judgement.strength.has_value() == (judgement.verdict == PlateauVerdict::Stalled || judgement.verdict == PlateauVerdict::Regressing));
}

}  // namespace

/// Text that is a file of exposures or of check-ins or nearly so: read or refused with a place in it, judged soundly, and written as CSV that
/// reads back.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t size)
{
    const QByteArray text(reinterpret_cast<const char*>(bytes), static_cast<qsizetype>(size));
    static_cast<void>(chalk::exchange::readCheckinsCsv(text));
    const auto logs = chalk::exchange::readExposuresCsv(text);
    if (!logs) {
        require(logs.error().line >= 1 && logs.error().line <= text.count('\n') + text.count('\r') + 1 && logs.error().column >= 1 && !logs.error().reason.empty());
        return 0;
    }
    const auto judged = chalk::exchange::judgeAll(*logs, checksOf(*logs));
    for (const auto& one : judged) {
        expectSound(one.judgement);
    }
    const auto table = chalk::exchange::parseCsv(chalk::exchange::traceCsvOf(judged));
    require(table && table->records.size() == judged.size() && table->columns.size() == 20);
    return 0;
}
