#pragma once

#include "ui/common/rule_words.h"
#include "ui/floor/floor_case.h"
#include "ui/floor/floor_presenter.h"

#include <QString>
#include <QStringList>

namespace chalk::ui::floor {

/// `3 × 8 at 77.5 kg`, `Rest cut: 4 × 8 at 47.5 kg, rest 1:15`, `Rehearse: Control`, `On hold`.
[[nodiscard]] QString dueText(const progression::Prescription& due, const FloorLift& lift);
/// What an entry says, part by part, with what the plan fills in: `reps 8, 8, 7`, `load 77.5 kg as planned`, `2 left` …
[[nodiscard]] QStringList chipsOf(const progression::EventBody& body, const sessions::EntryLine& line, const FloorLift& lift);
/// `Next time 3 × 8 at 77.5 kg.` and why.
[[nodiscard]] QString nextTimeText(const Preview& preview, const FloorLift& lift);
[[nodiscard]] QString whyText(const Preview& preview, const FloorLift& lift);
/// What is asked about before an entry with a doubt is kept.
[[nodiscard]] QString doubtText(sessions::EntryDoubt doubt, const FloorLift& lift);
/// An entry as a line that reads back as the same: for a correction.
[[nodiscard]] QString lineOf(const progression::EventBody& body, const FloorLift& lift);

}  // namespace chalk::ui::floor
