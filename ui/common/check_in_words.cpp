#include "ui/common/check_in_words.h"

#include "ui/common/formats.h"
#include "ui/common/plan_week_text.h"

#include <QCoreApplication>
#include <QStringList>

#include <cmath>

namespace chalk::ui::common {

namespace {

using checkin::ChoiceKind;
using checkin::FindingKind;

constexpr const char* kFindingNames[] = {QT_TRANSLATE_NOOP("CheckIn", "Pain"),      QT_TRANSLATE_NOOP("CheckIn", "Clearance"),
                                         QT_TRANSLATE_NOOP("CheckIn", "Plateau"),   QT_TRANSLATE_NOOP("CheckIn", "Direction"),
                                         QT_TRANSLATE_NOOP("CheckIn", "Attendance"), QT_TRANSLATE_NOOP("CheckIn", "Screen again"),
                                         QT_TRANSLATE_NOOP("CheckIn", "On course")};
constexpr const char* kChoiceNames[] = {QT_TRANSLATE_NOOP("CheckIn", "Lighter week, then rebuild"), QT_TRANSLATE_NOOP("CheckIn", "Hold one more week"),
                                        QT_TRANSLATE_NOOP("CheckIn", "Move on to the next stage"),  QT_TRANSLATE_NOOP("CheckIn", "Swap the lift"),
                                        QT_TRANSLATE_NOOP("CheckIn", "Leave it to me"),             QT_TRANSLATE_NOOP("CheckIn", "Back to the screen"),
                                        QT_TRANSLATE_NOOP("CheckIn", "Talk about direction")};
constexpr const char* kChoiceReasons[] = {
    "",
    QT_TRANSLATE_NOOP("CheckIn", "Nothing speaks against carrying on."),
    QT_TRANSLATE_NOOP("CheckIn", "Too little is known to change anything."),
    QT_TRANSLATE_NOOP("CheckIn", "The lift is on hold because of pain."),
    QT_TRANSLATE_NOOP("CheckIn", "Too few of the planned sessions took place: coming is first."),
    QT_TRANSLATE_NOOP("CheckIn", "Poor sleep, sore muscles or stress, and no lighter week of late."),
    QT_TRANSLATE_NOOP("CheckIn", "Next to nothing was left in reserve, and no lighter week of late."),
    QT_TRANSLATE_NOOP("CheckIn", "A lighter week did not change it."),
    QT_TRANSLATE_NOOP("CheckIn", "There was still something in reserve."),
    QT_TRANSLATE_NOOP("CheckIn", "Estimated strength may be falling."),
    QT_TRANSLATE_NOOP("CheckIn", "Several lifts have stalled after the first months."),
    QT_TRANSLATE_NOOP("CheckIn", "Weeks of learning without any load yet."),
    QT_TRANSLATE_NOOP("CheckIn", "After a long break the movement is looked at first."),
    QT_TRANSLATE_NOOP("CheckIn", "The plan is over: its review comes first.")};
static_assert(std::size(kChoiceReasons) == checkin::kChoiceReasons.size());
static_assert(std::size(kFindingNames) == checkin::kFindingKinds.size());
static_assert(std::size(kChoiceNames) == checkin::kChoiceKinds.size());

QString checkInWords(const char* text)
{
    return QCoreApplication::translate("CheckIn", text);
}

/// With a small first letter, inside a sentence.
QString insideSentence(QString text)
{
    text[0] = text[0].toLower();
    return text;
}

QString withSubject(const QString& subject, const char* withIt, const char* without)
{
    return subject.isEmpty() ? checkInWords(without) : checkInWords(withIt).arg(subject);
}

QString flatText(const QString& lift, int weeks)
{
    if (weeks < 1) {
        return withSubject(lift, QT_TRANSLATE_NOOP("CheckIn", "%1 has stalled"), QT_TRANSLATE_NOOP("CheckIn", "A lift has stalled"));
    }
    const QString span = weeksText(weeks);
    return lift.isEmpty() ? checkInWords(QT_TRANSLATE_NOOP("CheckIn", "%1 without a new best")).arg(span)
                          : checkInWords(QT_TRANSLATE_NOOP("CheckIn", "%1, %2 without a new best")).arg(lift, span);
}

QString cameText(const checkin::QueueEntry& entry)
{
    return entry.of == 0 ? checkInWords(QT_TRANSLATE_NOOP("CheckIn", "No session of late"))
                         : checkInWords(QT_TRANSLATE_NOOP("CheckIn", "Came to %1 of the last %2")).arg(entry.came).arg(entry.of);
}

QString lighterWeekText(const checkin::Choice& choice, const checkin::LiftEvidence& lift, const lifts::Exercise* exercise)
{
    if (!choice.next) {
        return checkInWords(QT_TRANSLATE_NOOP("CheckIn", "Fewer sets and less load for a week"));
    }
    const QString now = prescriptionText(*choice.next, lift, exercise);
    return choice.later ? checkInWords(QT_TRANSLATE_NOOP("CheckIn", "This week %1, then %2")).arg(now, prescriptionText(*choice.later, lift, exercise))
                        : checkInWords(QT_TRANSLATE_NOOP("CheckIn", "This week %1")).arg(now);
}

/// With what it means for a plan that the lift follows.
QString endingPlan(const checkin::Choice& choice, const QString& text)
{
    return choice.followsPlan ? checkInWords(QT_TRANSLATE_NOOP("CheckIn", "%1. The plan ends for this lift")).arg(text) : text;
}

QString swapText(const checkin::Choice& choice, const checkin::LiftEvidence& lift, const lifts::Catalogue& catalogue)
{
    if (choice.exerciseKey.empty()) {
        return checkInWords(QT_TRANSLATE_NOOP("CheckIn", "An easier or harder neighbour"));
    }
    const QString name = exerciseNameText(choice.exerciseKey, catalogue);
    return choice.next ? QStringLiteral("%1, %2").arg(name, prescriptionText(*choice.next, lift, catalogue.find(choice.exerciseKey))) : name;
}

}  // namespace

QString weeksText(int weeks)
{
    return weeks == 1 ? checkInWords(QT_TRANSLATE_NOOP("CheckIn", "1 week")) : checkInWords(QT_TRANSLATE_NOOP("CheckIn", "%1 weeks")).arg(weeks);
}

QString loadStepText(const checkin::LiftEvidence& lift)
{
    const bool isLoadMoving = lift.stage == progression::Stage::BaseLoad || lift.stage == progression::Stage::LoadBuild;
    const bool isPlanLed = lift.next && lift.next->block;
    if (isPlanLed || !isLoadMoving || !lift.weeksPerStep) {
        return {};
    }
    const int weeks = static_cast<int>(std::lround(*lift.weeksPerStep));
    return weeks < 1 ? checkInWords(QT_TRANSLATE_NOOP("CheckIn", "The next load step takes less than a week at a usual gain, with the loads on hand."))
                     : checkInWords(QT_TRANSLATE_NOOP("CheckIn", "The next load step takes about %1 at a usual gain, with the loads on hand.")).arg(weeksText(weeks));
}

QString findingName(FindingKind kind)
{
    return checkInWords(kFindingNames[static_cast<std::size_t>(kind)]);
}

QString findingTitle(const checkin::Finding& finding)
{
    const QString name = findingName(finding.kind);
    if (finding.kind == FindingKind::Direction && finding.planEnd) {
        return checkInWords(QT_TRANSLATE_NOOP("CheckIn", "Direction, the plan ended on %1")).arg(shortDayText(*finding.planEnd));
    }
    return finding.kind == FindingKind::Plateau && finding.flatWeeks > 0 ? QStringLiteral("%1, %2").arg(name, weeksText(finding.flatWeeks)) : name;
}

QString queueWhyText(const checkin::QueueEntry& entry, const lifts::Catalogue& catalogue)
{
    const QString lift = exerciseNameText(entry.exerciseKey, catalogue);
    switch (entry.finding.kind) {
    case FindingKind::Pain:
        return withSubject(lift, QT_TRANSLATE_NOOP("CheckIn", "%1 on hold, pain"), QT_TRANSLATE_NOOP("CheckIn", "On hold, pain"));
    case FindingKind::Clearance:
        return checkInWords(QT_TRANSLATE_NOOP("CheckIn", "Waits for a doctor’s view"));
    case FindingKind::Plateau:
        return flatText(lift, entry.finding.flatWeeks);
    case FindingKind::Direction:
        return entry.finding.planEnd
                   ? checkInWords(QT_TRANSLATE_NOOP("CheckIn", "The plan ended on %1: review it")).arg(shortDayText(*entry.finding.planEnd))
                   : checkInWords(QT_TRANSLATE_NOOP("CheckIn", "Ready to choose what comes next"));
    case FindingKind::Attendance:
        return cameText(entry);
    case FindingKind::Rescreen:
        return withSubject(lift, QT_TRANSLATE_NOOP("CheckIn", "%1 is to be screened again"), QT_TRANSLATE_NOOP("CheckIn", "A lift is to be screened again"));
    case FindingKind::OnCourse:
        return entry.of == 0 ? checkInWords(QT_TRANSLATE_NOOP("CheckIn", "Nothing that needs a decision")) : cameText(entry);
    }
    return {};
}

QString choiceName(ChoiceKind kind)
{
    return checkInWords(kChoiceNames[static_cast<std::size_t>(kind)]);
}

QString choiceTitle(const checkin::Choice& choice)
{
    if (choice.followsPlan && choice.kind == ChoiceKind::Hold) {
        return checkInWords(QT_TRANSLATE_NOOP("CheckIn", "Keep to the plan"));
    }
    if (choice.followsPlan && choice.kind == ChoiceKind::Direction) {
        return checkInWords(QT_TRANSLATE_NOOP("CheckIn", "Open the plan"));
    }
    return choice.kind == ChoiceKind::MoveOn && choice.next
               ? checkInWords(QT_TRANSLATE_NOOP("CheckIn", "Move on to %1")).arg(stageName(choice.next->stage))
               : choiceName(choice.kind);
}

QString choiceReasonText(checkin::ChoiceReason reason)
{
    const char* text = kChoiceReasons[static_cast<std::size_t>(reason)];
    return *text == '\0' ? QString() : checkInWords(text);
}

QString choiceText(const checkin::Choice& choice, const checkin::LiftEvidence& lift, const lifts::Catalogue& catalogue)
{
    const lifts::Exercise* exercise = catalogue.find(lift.exerciseKey);
    switch (choice.kind) {
    case ChoiceKind::LighterWeek:
        return lighterWeekText(choice, lift, exercise);
    case ChoiceKind::Hold:
        return choice.next ? prescriptionText(*choice.next, lift, exercise) : checkInWords(QT_TRANSLATE_NOOP("CheckIn", "The same once more"));
    case ChoiceKind::MoveOn:
        return choice.next ? prescriptionText(*choice.next, lift, exercise) : checkInWords(QT_TRANSLATE_NOOP("CheckIn", "As things are"));
    case ChoiceKind::Swap:
        return endingPlan(choice, swapText(choice, lift, catalogue));
    case ChoiceKind::ByHand:
        return endingPlan(choice, checkInWords(QT_TRANSLATE_NOOP("CheckIn", "Set the numbers by hand")));
    case ChoiceKind::Rescreen:
        return checkInWords(QT_TRANSLATE_NOOP("CheckIn", "The movement without load, judged point by point"));
    case ChoiceKind::Direction:
        return choice.followsPlan ? checkInWords(QT_TRANSLATE_NOOP("CheckIn", "Change its weeks, or end it, on the client’s page"))
                                  : checkInWords(QT_TRANSLATE_NOOP("CheckIn", "What comes after the first months"));
    }
    return {};
}

QString prescriptionText(const progression::Prescription& next, const checkin::LiftEvidence& lift, const lifts::Exercise* exercise)
{
    switch (next.kind) {
    case progression::PrescriptionKind::Hold:
        return checkInWords(QT_TRANSLATE_NOOP("CheckIn", "on hold"));
    case progression::PrescriptionKind::Rehearse:
        return checkInWords(QT_TRANSLATE_NOOP("CheckIn", "the movement without load"));
    case progression::PrescriptionKind::Work:
        break;
    }
    const bool isAddedToBody = exercise != nullptr && exercise->equipment == lifts::EquipmentKind::AddedToBody;
    const lifts::Measure measure = exercise == nullptr ? lift.measure : exercise->measure;
    const QString load = loadText(next.load, lift.unit, exercise == nullptr ? lift.pieces : exercise->pieces, isAddedToBody);
    const QString sets =
        QStringLiteral("%1 × %2").arg(next.sets.value()).arg(targetText(next, measure, progression::Policy::defaultsFor(lift.unit)));
    const QString work = checkInWords(QT_TRANSLATE_NOOP("CheckIn", "%1 at %2, rest %3")).arg(sets, load, restText(next.rest));
    return next.block ? QStringLiteral("%1, %2").arg(work, planWeekInSentence(*next.block)) : work;
}

QString exerciseNameText(const std::string& key, const lifts::Catalogue& catalogue)
{
    const lifts::Exercise* exercise = catalogue.find(key);
    return qstring(exercise == nullptr ? key : exercise->name);
}

QString decisionText(const checkin::Decision& decision, const QString& liftName)
{
    const QString choice = insideSentence(choiceName(decision.choice));
    const QString about = insideSentence(findingName(decision.about));
    QString text = QStringLiteral("%1: %2 (%3%4).")
                       .arg(shortDayText(decision.day), choice, liftName.isEmpty() ? QString() : liftName + QStringLiteral(", "), about);
    const QString note = qstring(decision.note).simplified();
    if (!note.isEmpty()) {
        text += QStringLiteral(" “%1”").arg(note);
    }
    return text + checkInWords(QT_TRANSLATE_NOOP("CheckIn", " Review %1.")).arg(shortDayText(decision.nextReview));
}

}  // namespace chalk::ui::common
