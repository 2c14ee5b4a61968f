#pragma once

#include "core/base/date.h"
#include "core/plateau/evidence.h"
#include "core/plateau/judgement.h"

#include <QString>
#include <QStringList>

namespace chalk::ui::common {

/// What is said of a lift that was judged, in the order in which it is to be read. No part claims more than the log can carry.
struct VerdictWords {
    QString title;        ///< `Likely stall, 5 weeks without a new best`; `No sign of a stall`; `Not enough data: 2 more sessions`
    QStringList first;    ///< what else may explain it, before the numbers: attendance, breaks, pain, lighter weeks, entries to check
    QString numbers;      ///< what the lift did, in numbers; empty where nothing was judged
    QString confidence;   ///< how far to trust a stall; empty where none is called

    /// All of it as sentences in a row.
    [[nodiscard]] QString inOneLine() const;

    bool operator==(const VerdictWords&) const = default;
};

/// The words for a judgement and its evidence, which `plateau::evidenceFor` made of it for the same day.
[[nodiscard]] VerdictWords verdictWordsOf(const plateau::Judgement& judgement, const plateau::PlateauEvidence& evidence);

/// How many sessions a lift is short of, for a chart: `2 more sessions before this says anything`. Empty where it is not short of any.
[[nodiscard]] QString shortageText(const plateau::PlateauEvidence& evidence);

}  // namespace chalk::ui::common
