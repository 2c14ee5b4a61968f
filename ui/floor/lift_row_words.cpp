#include "ui/floor/lift_row_words.h"

#include "ui/common/formats.h"
#include "ui/floor/entry_lines.h"
#include "ui/floor/entry_words.h"
#include "ui/floor/session_words.h"

#include <algorithm>

namespace chalk::ui::floor {

namespace {

using progression::Exposure;
using progression::PrescriptionKind;
using progression::SetRecord;

LiftRow::Box boxOf(const QString& text, bool isEntered, bool isLow = false)
{
    return {text, isEntered, isLow};
}

/// What is shown in the boxes, and whether somebody entered it.
struct ShownRecord {
    std::optional<progression::EventBody> body;
    bool isEntered = false;
};

ShownRecord shownRecordOf(const FloorClient& client, const FloorLift& lift)
{
    const bool isTyped = lift.isRehearsed() ? !lift.rehearsal.isEmpty() : !lift.line.isEmpty();
    if (isTyped) {
        if (auto read = readEntry(client, lift); read.body) {
            return {std::move(read.body), true};
        }
    }
    if (lift.savedBody) {
        return {lift.savedBody, true};
    }
    return {sessions::eventOf({}, lift.plan()), false};
}

void addSets(LiftRow& row, const Exposure& exposure, const FloorLift& lift, bool isEntered)
{
    const std::vector<SetRecord> sets = workingSets(exposure);
    if (sets.empty()) {
        return;
    }
    const int least = lift.due.repsLow == lift.due.repsHigh ? sessions::plannedAmount(lift.plan()) : 0;
    SetRecord last = sets.back();
    for (const SetRecord& set : sets) {
        row.amounts.push_back(boxOf(QString::number(set.amount), isEntered, isEntered && set.amount < least));
        last.rir = std::min(last.rir, set.rir);
        last.steadiness = std::max(last.steadiness, set.steadiness);
    }
    const bool hasRir = last.rir != SetRecord::kNotRecorded;
    row.left = boxOf(hasRir ? QString::number(last.rir) : QStringLiteral("–"), isEntered && hasRir);
    row.rest = boxOf(last.restSeconds < 0 ? QStringLiteral("–") : common::restText(base::Seconds(last.restSeconds)), isEntered && last.restSeconds >= 0);
    row.pain = boxOf(QString::number(exposure.pain), isEntered, exposure.pain > 0);
    if (isEntered) {
        row.felt = last.steadiness;
    }
}

/// Whether the next prescription asks for more of what its stage moves, or is a stage further on.
bool isMore(const progression::Prescription& next, const progression::Prescription& due)
{
    const auto rank = [](const progression::Prescription& one) {
        return std::tuple(one.cycle, one.stage, one.load, one.sets, one.repsHigh, -one.rest.value());
    };
    return next.kind != PrescriptionKind::Hold && rank(next) > rank(due);
}

}  // namespace

LiftRow liftRowOf(const FloorClient& client, const FloorLift& lift)
{
    LiftRow row;
    row.name = common::qstring(lift.exercise.name);
    row.due = dueText(lift.due, lift);
    row.stage = lift.due.stage;
    row.isSaved = !lift.saved.isNone();
    row.isSkipped = lift.isSkipped;
    row.skipWhy = skipReasonText(lift.skipWhy);
    const ShownRecord shown = shownRecordOf(client, lift);
    if (!shown.body) {
        return row;
    }
    if (const auto* exposure = std::get_if<Exposure>(&*shown.body)) {
        addSets(row, *exposure, lift, shown.isEntered);
    }
    if (!shown.isEntered) {
        return row;
    }
    if (const auto preview = previewOf(lift, *shown.body, client.session.date)) {
        row.next = nextShortText(*preview, lift);
        row.why = whyText(*preview, *shown.body, lift, client.session.date);
        row.isUp = isMore(preview->next, lift.due);
    }
    return row;
}

}  // namespace chalk::ui::floor
