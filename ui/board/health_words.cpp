#include "ui/board/health_words.h"

#include "ui/board/board_text.h"
#include "ui/common/formats.h"

#include <algorithm>

namespace chalk::ui::board {

namespace {

using clients::Clearance;
using clients::ClearanceState;

/// `Wednesday 12 August 2026`: what is on file may be years old.
QString datedText(base::Date date)
{
    return QStringLiteral("%1 %2").arg(common::longDayText(date)).arg(static_cast<int>(date.ymd().year()));
}

bool touches(const std::vector<lifts::CautionTag>& tags, const clients::Caution& caution)
{
    return std::any_of(tags.begin(), tags.end(), [&caution](lifts::CautionTag tag) {
        return std::find(caution.tags.begin(), caution.tags.end(), tag) != caution.tags.end();
    });
}

}  // namespace

QString clearanceTitleOf(const Clearance& clearance)
{
    switch (clearance.state) {
    case ClearanceState::NotNeeded:
        return BoardText::tr("No clearance needed");
    case ClearanceState::Recommended:
        return BoardText::tr("A doctor’s clearance is recommended");
    case ClearanceState::StopAndSeek:
        return BoardText::tr("Not today: medical advice first");
    case ClearanceState::Granted:
        return BoardText::tr("Cleared by the doctor");
    case ClearanceState::Unanswered:
        return BoardText::tr("The health intake is not finished");
    }
    return {};
}

QStringList clearanceLinesOf(const Clearance& clearance)
{
    QStringList lines;
    if (!clearance.reason.empty()) {
        lines.append(BoardText::tr("Why: %1").arg(common::qstring(clearance.reason)));
    }
    if (clearance.askedOn) {
        lines.append(BoardText::tr("The letter went on %1.").arg(datedText(*clearance.askedOn)));
    }
    if (clearance.grantedOn) {
        lines.append(BoardText::tr("The answer came on %1.").arg(datedText(*clearance.grantedOn)));
    }
    if (clearance.validUntil) {
        lines.append(BoardText::tr("Valid until %1.").arg(datedText(*clearance.validUntil)));
    }
    if (!clearance.limits.empty()) {
        lines.append(BoardText::tr("Limits: %1").arg(common::qstring(clearance.limits)));
    }
    return lines;
}

QStringList cautionEffectsOf(const clients::Caution& caution, const ClientCase& client)
{
    QStringList care;
    QStringList ruledOut;
    for (const LiftCase& lift : client.lifts) {
        if (touches(lift.exercise.ruledOutBy, caution)) {
            ruledOut.append(common::qstring(lift.exercise.name));
        } else if (touches(lift.exercise.care, caution)) {
            care.append(common::qstring(lift.exercise.name));
        }
    }
    QStringList effects;
    if (!ruledOut.isEmpty()) {
        effects.append(BoardText::tr("Rules out, and should be swapped: %1.").arg(ruledOut.join(QLatin1String(", "))));
    }
    if (!care.isEmpty()) {
        effects.append(BoardText::tr("Take care with: %1.").arg(care.join(QLatin1String(", "))));
    }
    return effects;
}

QString cautionEndOf(const clients::Caution& caution)
{
    return caution.until ? BoardText::tr("Until %1").arg(datedText(*caution.until)) : QString();
}

}  // namespace chalk::ui::board
