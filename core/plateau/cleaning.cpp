#include "core/plateau/cleaning.h"

#include "core/plateau/effort.h"
#include "core/plateau/entry_rules.h"
#include "core/plateau/jump_rule.h"
#include "core/plateau/light_rule.h"
#include "core/plateau/stage_lever.h"
#include "core/plateau/strength_index.h"

#include <algorithm>

namespace chalk::plateau {

namespace {

/// What is known of the rows before.
class LogCleaner {
public:
    [[nodiscard]] CleanExposure clean(const LoggedExposure& exposure);

private:
    void startSegment();
    void startBlock();
    void markEntry(const LoggedExposure& exposure, CleanExposure& row);
    void markIndex(CleanExposure& row);

    const LoggedExposure* m_before = nullptr;
    int m_segment = 0;
    int m_block = 0;
    std::vector<double> m_reserves;  ///< recorded, of the segment's used rows
    LightRule m_light;
    JumpRule m_jump;
    LeverBest m_best;
};

void LogCleaner::startSegment()
{
    ++m_segment;
    m_reserves.clear();
    m_jump = JumpRule();
    startBlock();
}

void LogCleaner::startBlock()
{
    ++m_block;
    m_light = LightRule();
    m_best = LeverBest();
}

/// What the entry itself says.
void LogCleaner::markEntry(const LoggedExposure& exposure, CleanExposure& row)
{
    const auto mark = [&row](bool holds, EntryMark what) {
        if (holds) {
            row.marks.push_back(what);
        }
        return holds;
    };
    mark(isReserveDoubtful(exposure), EntryMark::CheckReserve);
    const bool isPlanned = mark(exposure.isLighterWeek, EntryMark::LighterWeek);
    const bool hasPain = mark(exposure.hasPain, EntryMark::Pain);
    if (isPlanned) {
        m_light.passLighterWeek();
    }
    const bool isLight = mark(!isPlanned && !exposure.planSingle && m_light.isLight(exposure), EntryMark::Light);
    const bool isLoadOff = mark(isLoadDoubtful(exposure), EntryMark::CheckLoad);
    const bool areRepsOff = mark(areRepsDoubtful(exposure), EntryMark::CheckReps);
    row.isUsed = !isPlanned && !isLight && !isLoadOff && !areRepsOff;
    row.isValid = !isPlanned && !isLight && !hasPain;
}

/// What its index says beside those before.
void LogCleaner::markIndex(CleanExposure& row)
{
    if (!row.isUsed) {
        m_jump.passUnused();
        return;
    }
    const JumpRule::Step step = m_jump.step(row.index);
    if (step == JumpRule::Step::Jump) {
        row.marks.push_back(EntryMark::CheckJump);
        row.isUsed = false;
    } else if (step == JumpRule::Step::NewLevel) {
        row.marks.push_back(EntryMark::NewLevel);
        startSegment();
    }
}

CleanExposure LogCleaner::clean(const LoggedExposure& exposure)
{
    if (m_before && m_before->variation != exposure.variation) {
        startSegment();
    } else if (m_before && (m_before->stage != exposure.stage || m_before->planSingle.has_value() != exposure.planSingle.has_value())) {
        startBlock();
    }
    m_before = &exposure;
    const StrengthIndex index = strengthIndexOf(exposure, effortOf(exposure, m_reserves));
    CleanExposure row;
    row.date = exposure.date;
    row.stage = exposure.stage;
    row.followsPlan = exposure.planSingle.has_value();
    row.index = index.value;
    row.variance = index.variance;
    row.isComplete = isComplete(exposure);
    markEntry(exposure, row);
    markIndex(row);
    row.segment = m_segment;
    row.block = m_block;
    if (row.isUsed) {
        m_jump.take(row.index);
        m_light.take(exposure);
        if (const auto reserve = soundReserve(exposure)) {
            m_reserves.push_back(*reserve);
        }
    }
    row.isLeverBest = row.isComplete && row.isValid && exposure.isSteady && m_best.take(leverOf(exposure));
    return row;
}

}  // namespace

bool CleanExposure::has(EntryMark mark) const
{
    return std::find(marks.begin(), marks.end(), mark) != marks.end();
}

std::vector<CleanExposure> cleaned(std::span<const LoggedExposure> log)
{
    LogCleaner cleaner;
    std::vector<CleanExposure> rows;
    rows.reserve(log.size());
    for (const LoggedExposure& exposure : log) {
        rows.push_back(cleaner.clean(exposure));
        rows.back().row = rows.size() - 1;
    }
    return rows;
}

}  // namespace chalk::plateau
