#include "ui/check_in/form_facts.h"

#include "ui/common/check_in_words.h"
#include "ui/common/formats.h"
#include "ui/common/plan_week_text.h"
#include "ui/common/plateau_words.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>

namespace chalk::ui::check_in {

namespace {

constexpr std::size_t kHistoryLines = 4;

QString formText(const char* text)
{
    return QCoreApplication::translate("CheckInForm", text);
}

}  // namespace

bool isSwappedSinceLastTime(const CheckInCase& page, base::LiftId lift)
{
    const auto swap = std::ranges::find(page.swaps, lift, &SwappedLiftDay::lift);
    if (swap == page.swaps.end()) {
        return false;
    }
    const auto& history = page.evidence.history;
    const auto last = std::ranges::find(history, std::optional(lift), &checkin::Decision::lift);
    // A swap of the day of a decision may be that decision's own: it was asked about then.
    return last == history.end() ? swap->day >= page.evidence.days.from : swap->day > last->day;
}

FindingWords findingWordsOf(const CheckInCase& page, std::size_t lift)
{
    FindingWords words;
    words.title = common::findingTitle(page.evidence.finding);
    if (lift >= page.evidence.lifts.size()) {
        words.first = formText(QT_TRANSLATE_NOOP("CheckInForm", "No lift yet: nothing can be decided about one."));
        return words;
    }
    const checkin::LiftEvidence& about = page.evidence.lifts[lift];
    const common::VerdictWords verdict = common::verdictWordsOf(about.judgement, about.evidence);
    QStringList first = verdict.first;
    if (about.isOnHold) {
        first.prepend(formText(QT_TRANSLATE_NOOP("CheckInForm", "On hold because of pain. Pain that stays is for a doctor or physiotherapist to judge.")));
    }
    if (about.next && about.next->block) {
        first.prepend(common::planWeekText(*about.next->block) + QLatin1Char('.'));
    }
    first.append(QStringLiteral("%1: %2.").arg(common::qstring(about.name), verdict.title));
    words.first = first.join(QLatin1Char(' '));
    QStringList rest{verdict.numbers, verdict.confidence, common::loadStepText(about)};
    rest.removeAll(QString());
    words.numbers = rest.join(QLatin1Char(' '));
    return words;
}

QString historyText(const checkin::ClientEvidence& client)
{
    QStringList lines;
    for (const checkin::Decision& decision : client.history) {
        if (static_cast<std::size_t>(lines.size()) == kHistoryLines) {
            break;
        }
        const auto lift = std::ranges::find_if(client.lifts, [&decision](const auto& one) { return decision.lift == one.lift; });
        lines << common::decisionText(decision, lift == client.lifts.end() ? QString() : common::qstring(lift->name));
    }
    return lines.join(QLatin1Char('\n'));
}

QString variationNote(bool isSameMovement)
{
    return isSameMovement ? formText(QT_TRANSLATE_NOOP("CheckInForm", "Same movement, other variation."))
                          : formText(QT_TRANSLATE_NOOP("CheckInForm", "Another movement."));
}

QString decidedWords(const checkin::ClientEvidence& client, const checkin::LiftEvidence& lift, checkin::ChoiceKind choice)
{
    const auto planned = std::ranges::find_if(lift.choices, [choice](const checkin::Choice& one) { return one.kind == choice && one.followsPlan; });
    const QString name = planned == lift.choices.end() ? common::choiceName(choice) : common::choiceTitle(*planned);
    return formText(QT_TRANSLATE_NOOP("CheckInForm", "%1: %2 decided for %3"))
        .arg(common::qstring(lift.name), name.toLower(), common::qstring(client.name).section(QLatin1Char(' '), 0, 0));
}

QString notedWords(const checkin::ClientEvidence& client)
{
    return formText(QT_TRANSLATE_NOOP("CheckInForm", "Check-in noted for %1")).arg(common::qstring(client.name).section(QLatin1Char(' '), 0, 0));
}

}  // namespace chalk::ui::check_in
