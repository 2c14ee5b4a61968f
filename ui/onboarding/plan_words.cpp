#include "ui/onboarding/plan_words.h"

#include "ui/common/formats.h"
#include "ui/common/health_words.h"
#include "ui/common/kit_words.h"

#include <QCoreApplication>
#include <QLocale>
#include <QStringList>

#include <algorithm>

namespace chalk::ui::onboarding {

namespace {

QString planText(const char* text)
{
    return QCoreApplication::translate("Plan", text);
}

QString exerciseNameOf(const std::string& key, const lifts::Catalogue& catalogue)
{
    const lifts::Exercise* exercise = catalogue.find(key);
    return common::qstring(exercise == nullptr ? key : exercise->name);
}

QString rehearseText(planning::RehearseReason reason)
{
    switch (reason) {
    case planning::RehearseReason::None:
        return {};
    case planning::RehearseReason::NotScreened:
        return planText(QT_TRANSLATE_NOOP("Plan", "Not screened, so it begins unloaded."));
    case planning::RehearseReason::PatternOpen:
        return planText(QT_TRANSLATE_NOOP("Plan", "The unloaded movement comes first."));
    case planning::RehearseReason::ControlOpen:
        return planText(QT_TRANSLATE_NOOP("Plan", "The pauses come first."));
    case planning::RehearseReason::LoadBlocked:
        return planText(QT_TRANSLATE_NOOP("Plan", "Load waits for clearance."));
    }
    return {};
}

QString choiceText(planning::ExerciseReason reason)
{
    switch (reason) {
    case planning::ExerciseReason::FirstChoice:
        return planText(QT_TRANSLATE_NOOP("Plan", "First choice of the template."));
    case planning::ExerciseReason::NextChoice:
        return planText(QT_TRANSLATE_NOOP("Plan", "Next choice of the template."));
    case planning::ExerciseReason::NearestFit:
        return planText(QT_TRANSLATE_NOOP("Plan", "The nearest that equipment and cautions allow."));
    case planning::ExerciseReason::Unloaded:
        return planText(QT_TRANSLATE_NOOP("Plan", "Nothing loaded is allowed, so it stays unloaded."));
    }
    return {};
}

QString loadReasonText(planning::FirstLoadReason reason)
{
    switch (reason) {
    case planning::FirstLoadReason::None:
        return {};
    case planning::FirstLoadReason::Lightest:
        return planText(QT_TRANSLATE_NOOP("Plan", "The lightest that there is."));
    case planning::FirstLoadReason::StartLoad:
        return planText(QT_TRANSLATE_NOOP("Plan", "As the coach wants it."));
    case planning::FirstLoadReason::NearestUnderStart:
        return planText(QT_TRANSLATE_NOOP("Plan", "The nearest under what the coach wants."));
    }
    return {};
}

}  // namespace

QString passText(const planning::PassedOver& pass, const lifts::Catalogue& catalogue)
{
    const QString name = exerciseNameOf(pass.exerciseKey, catalogue);
    return pass.reason == planning::PassReason::RuledOut
               ? planText(QT_TRANSLATE_NOOP("Plan", "%1: ruled out by %2")).arg(name, common::cautionTagName(pass.caution).toLower())
               : planText(QT_TRANSLATE_NOOP("Plan", "%1: no %2")).arg(name, common::kitName(pass.kind).toLower());
}

QString liftReason(const planning::PlannedLift& lift, const lifts::Catalogue& catalogue)
{
    QStringList parts{rehearseText(lift.rehearseReason), choiceText(lift.exerciseReason), loadReasonText(lift.loadReason)};
    for (const planning::PassedOver& pass : lift.passedOver) {
        parts.append(passText(pass, catalogue) + QLatin1Char('.'));
    }
    QStringList cares;
    for (const lifts::CautionTag tag : lift.cares) {
        cares.append(common::cautionTagName(tag).toLower());
    }
    if (!cares.isEmpty()) {
        parts.append(planText(QT_TRANSLATE_NOOP("Plan", "Take care: %1.")).arg(cares.join(QStringLiteral(", "))));
    }
    parts.removeAll(QString());
    return parts.join(QLatin1Char(' '));
}

QString gapReason(const planning::PatternGap& gap, const lifts::Catalogue& catalogue, bool isLeftOut)
{
    switch (gap.reason) {
    case planning::GapReason::OnHold:
        return planText(QT_TRANSLATE_NOOP("Plan", "On hold: pain was named in the screen. A new screen without pain opens it."));
    case planning::GapReason::NotInTemplate:
        return isLeftOut ? planText(QT_TRANSLATE_NOOP("Plan", "Left out by the coach.")) : planText(QT_TRANSLATE_NOOP("Plan", "In no session of this template."));
    case planning::GapReason::NoDay:
        return planText(QT_TRANSLATE_NOOP("Plan", "The hours leave no day for its session. More hours, or fewer sessions a week, would open it."));
    case planning::GapReason::NothingAllowed:
        break;
    }
    QStringList passes;
    for (const planning::PassedOver& pass : gap.passedOver) {
        passes.append(passText(pass, catalogue));
    }
    return planText(QT_TRANSLATE_NOOP("Plan", "No exercise is left. %1.")).arg(passes.join(QStringLiteral("; ")));
}

WayOut wayOutOf(const planning::PatternGap& gap)
{
    switch (gap.reason) {
    case planning::GapReason::OnHold:
        return WayOut::Screen;
    case planning::GapReason::NotInTemplate:
        return WayOut::AddToSession;
    case planning::GapReason::NoDay:
        return WayOut::Hours;
    case planning::GapReason::NothingAllowed:
        break;
    }
    const bool isRuledOut = std::any_of(gap.passedOver.begin(), gap.passedOver.end(), [](const planning::PassedOver& pass) { return pass.reason == planning::PassReason::RuledOut; });
    return isRuledOut ? WayOut::Health : WayOut::Kit;
}

QString wayOutText(WayOut way)
{
    switch (way) {
    case WayOut::None:
        return {};
    case WayOut::Screen:
        return planText(QT_TRANSLATE_NOOP("Plan", "Open the screen"));
    case WayOut::Health:
        return planText(QT_TRANSLATE_NOOP("Plan", "Open the cautions"));
    case WayOut::Hours:
        return planText(QT_TRANSLATE_NOOP("Plan", "Open the hours"));
    case WayOut::Kit:
        return planText(QT_TRANSLATE_NOOP("Plan", "Open time and kit"));
    case WayOut::AddToSession:
        return planText(QT_TRANSLATE_NOOP("Plan", "Add to a session"));
    }
    return {};
}

QString liftDoes(const planning::PlannedLift& lift, const lifts::Catalogue& catalogue, base::MassUnit unit)
{
    if (lift.kind == planning::PlannedKind::Rehearse) {
        return planText(QT_TRANSLATE_NOOP("Plan", "Rehearse: %1")).arg(exerciseNameOf(lift.rehearsalKey, catalogue));
    }
    const lifts::Exercise* exercise = catalogue.find(lift.exerciseKey);
    const bool isAdded = exercise != nullptr && exercise->equipment == lifts::EquipmentKind::AddedToBody;
    return lift.firstLoad ? planText(QT_TRANSLATE_NOOP("Plan", "First load %1")).arg(common::loadText(*lift.firstLoad, unit, exercise == nullptr ? 1 : exercise->pieces, isAdded))
                          : QString();
}

QString weekWarning(const planning::WeekOfSessions& week)
{
    QStringList parts;
    if (!week.unplaced.empty()) {
        parts.append(planText(QT_TRANSLATE_NOOP("Plan", "%1 of the week’s sessions find no day in the client’s hours.")).arg(week.unplaced.size()));
    }
    if (!week.tooClose.empty()) {
        parts.append(planText(QT_TRANSLATE_NOOP("Plan", "Sessions that train the same movements lie closer than 48 hours.")));
    }
    if (!week.outsideHours.empty()) {
        parts.append(week.outsideHours.size() == 1 ? planText(QT_TRANSLATE_NOOP("Plan", "One session lies outside of the client’s hours."))
                                                   : planText(QT_TRANSLATE_NOOP("Plan", "%1 sessions lie outside of the client’s hours.")).arg(week.outsideHours.size()));
    }
    return parts.join(QLatin1Char(' '));
}

}  // namespace chalk::ui::onboarding
