#include "ui/onboarding/step_words.h"

#include "ui/common/formats.h"

#include <QCoreApplication>
#include <QStringList>

namespace chalk::ui::onboarding {

namespace {

QString stepText(const char* text)
{
    return QCoreApplication::translate("Onboarding", text);
}

}  // namespace

QString stepName(StepKind step)
{
    switch (step) {
    case StepKind::Profile:
        return stepText(QT_TRANSLATE_NOOP("Onboarding", "Profile"));
    case StepKind::Health:
        return stepText(QT_TRANSLATE_NOOP("Onboarding", "Health"));
    case StepKind::TimeAndKit:
        return stepText(QT_TRANSLATE_NOOP("Onboarding", "Time and kit"));
    case StepKind::Movement:
        return stepText(QT_TRANSLATE_NOOP("Onboarding", "Movement"));
    case StepKind::StartingPlan:
        return stepText(QT_TRANSLATE_NOOP("Onboarding", "Starting plan"));
    }
    return {};
}

QString stepNote(StepKind step, StepState state)
{
    if (state == StepState::WaitsForClearance) {
        return stepText(QT_TRANSLATE_NOOP("Onboarding", "Waits for clearance"));
    }
    if (state == StepState::WaitsForConsent) {
        return stepText(QT_TRANSLATE_NOOP("Onboarding", "Waits for consent"));
    }
    switch (step) {
    case StepKind::Profile:
        return stepText(QT_TRANSLATE_NOOP("Onboarding", "Goals, contacts, consent"));
    case StepKind::Health:
        return stepText(QT_TRANSLATE_NOOP("Onboarding", "Intake and clearance"));
    case StepKind::TimeAndKit:
        return stepText(QT_TRANSLATE_NOOP("Onboarding", "Hours, equipment"));
    case StepKind::Movement:
        return stepText(QT_TRANSLATE_NOOP("Onboarding", "Screen, 8 patterns"));
    case StepKind::StartingPlan:
        return stepText(QT_TRANSLATE_NOOP("Onboarding", "First two weeks"));
    }
    return {};
}

QString stateWords(StepState state)
{
    switch (state) {
    case StepState::Open:
        return stepText(QT_TRANSLATE_NOOP("Onboarding", "not begun"));
    case StepState::Begun:
        return stepText(QT_TRANSLATE_NOOP("Onboarding", "begun"));
    case StepState::Done:
        return stepText(QT_TRANSLATE_NOOP("Onboarding", "done"));
    case StepState::WaitsForConsent:
        return stepText(QT_TRANSLATE_NOOP("Onboarding", "waits for consent"));
    case StepState::WaitsForClearance:
        return stepText(QT_TRANSLATE_NOOP("Onboarding", "waits for clearance"));
    }
    return {};
}

QString subtitleOf(const OnboardingCase& onboarding)
{
    const clients::Client& client = onboarding.client;
    if (client.id.isNone()) {
        return stepText(QT_TRANSLATE_NOOP("Onboarding", "Begins with a name"));
    }
    QStringList parts;
    if (!onboarding.hasLifts) {
        parts.append(stepText(QT_TRANSLATE_NOOP("Onboarding", "New client")));
    }
    if (client.birthDate) {
        parts.append(QString::number(base::ageOn(*client.birthDate, onboarding.today)));
    }
    parts.append(stepText(QT_TRANSLATE_NOOP("Onboarding", "started %1 with %2")).arg(common::dayText(client.startedOn), common::qstring(onboarding.coachName)));
    return parts.join(QStringLiteral(" · "));
}

WaitWords waitWordsOf(StepState state, const OnboardingCase& onboarding)
{
    if (state == StepState::WaitsForConsent) {
        return {stepText(QT_TRANSLATE_NOOP("Onboarding", "Waits for consent.")),
                clients::isMinorOn(onboarding.client.birthDate.value_or(onboarding.today - 365 * 40), onboarding.today)
                    ? stepText(QT_TRANSLATE_NOOP("Onboarding", "Nothing about health is kept before the client and a guardian agree to it."))
                    : stepText(QT_TRANSLATE_NOOP("Onboarding", "Nothing about health is kept before the client agrees to it.")),
                StepKind::Profile};
    }
    if (state != StepState::WaitsForClearance) {
        return {};
    }
    if (onboarding.clearance.state == clients::ClearanceState::Unanswered) {
        return {stepText(QT_TRANSLATE_NOOP("Onboarding", "Waits for the health intake.")),
                stepText(QT_TRANSLATE_NOOP("Onboarding", "Nobody is screened or loaded before every question is answered.")), StepKind::Health};
    }
    if (onboarding.clearance.state == clients::ClearanceState::Granted) {
        return {stepText(QT_TRANSLATE_NOOP("Onboarding", "The doctor’s letter is past its date.")),
                stepText(QT_TRANSLATE_NOOP("Onboarding", "Record a new one before anything goes on.")), StepKind::Health};
    }
    return {stepText(QT_TRANSLATE_NOOP("Onboarding", "Waits for clearance.")),
            stepText(QT_TRANSLATE_NOOP("Onboarding", "A doctor’s answer has to be on file first.")), StepKind::Health};
}

}  // namespace chalk::ui::onboarding
