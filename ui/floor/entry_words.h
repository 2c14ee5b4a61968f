#pragma once

#include "core/sessions/entry_line.h"
#include "ui/floor/entry_reading.h"

#include <QString>

#include <vector>

namespace chalk::ui::floor {

/// `77.5 kg`, `2 × 12 kg`, `+10 kg`: a load of the lift.
[[nodiscard]] QString loadOf(base::Load load, const FloorLift& lift);
/// The sets without the warm-up.
[[nodiscard]] std::vector<progression::SetRecord> workingSets(const progression::Exposure& exposure);
/// `3 × 8 at 77.5 kg`, `4 × 8 at 47.5 kg, rest 1:15`, `Rehearse: Control`, `On hold`.
[[nodiscard]] QString dueText(const progression::Prescription& due, const FloorLift& lift);
/// `steady`, `shaky`, `lost`.
[[nodiscard]] QString feltText(progression::Steadiness felt);
/// What an entry says, part by part, with what the plan fills in: `reps 8, 8, 7`, `load 77.5 kg as planned`, `2 left` …
[[nodiscard]] std::vector<EntryChip> chipsOf(const progression::Exposure& exposure, const sessions::EntryLine& line, const FloorLift& lift);
/// `Next time 3 × 8 at 77.5 kg, again.`
[[nodiscard]] QString nextTimeText(const Preview& preview, const FloorLift& lift);
/// `Rest cut: 5 × 8 at 60 kg`: the same for a row of the table.
[[nodiscard]] QString nextShortText(const Preview& preview, const FloorLift& lift);
/// The sentence of the rule that decided, with the numbers of the record.
[[nodiscard]] QString whyText(const Preview& preview, const progression::EventBody& body, const FloorLift& lift, base::Date day);
/// `After what was recorded later, 3 × 9 at 80 kg is due now.`
[[nodiscard]] QString presentText(const Preview& preview, const FloorLift& lift);
/// What is asked about before an entry with a doubt is kept.
[[nodiscard]] QString doubtText(sessions::EntryDoubt doubt, const FloorLift& lift);
/// A record in a few words: `8, 8, 7 at 77.5 kg, 2 left, pain 1`.
[[nodiscard]] QString recordText(const progression::EventBody& body, const FloorLift& lift);
/// What a correction made different, in sentences: the record, what is due now, and the later decisions.
[[nodiscard]] QString correctionText(const progression::EventBody& before, const progression::EventBody& after, const store::ActOutcome& outcome,
                                     const FloorLift& lift);
/// What taking a record back makes different, in sentences: what is due now, and how many later decisions.
[[nodiscard]] QString takeBackText(const FloorLift& lift, base::Date day);
/// 0 for what the coach did by hand.
[[nodiscard]] int painOf(const progression::EventBody& body);

}  // namespace chalk::ui::floor
