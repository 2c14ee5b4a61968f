#include "ui/common/health_words.h"

#include <QCoreApplication>

#include <array>

namespace chalk::ui::common {

namespace {

using clients::HealthLevel;
using clients::HealthOutcome;

QString healthText(const char* text)
{
    return QCoreApplication::translate("Health", text);
}

// In the order of the enumerators; a test holds their numbers against each other.
constexpr std::array<const char*, clients::kHealthQuestionCount> kQuestions{
    QT_TRANSLATE_NOOP("Health", "Has a doctor told you about a heart or artery problem or a stroke, or given you tablets for your heart or blood pressure?"),
    QT_TRANSLATE_NOOP("Health", "Do you get chest pain or tightness, at rest or when you move?"),
    QT_TRANSLATE_NOOP("Health", "Does light effort, such as one flight of stairs, leave you short of breath? Or have you swollen ankles, a racing heart, or leg pain when you walk?"),
    QT_TRANSLATE_NOOP("Health", "Have you fainted or felt dizzy in the last 12 months?"),
    QT_TRANSLATE_NOOP("Health", "Do you have diabetes, or kidney or lung disease?"),
    QT_TRANSLATE_NOOP("Health", "Does a joint, bone or back problem limit what you do?"),
    QT_TRANSLATE_NOOP("Health", "Any operation, hospital stay or injury in the last 12 months?"),
    QT_TRANSLATE_NOOP("Health", "Are you pregnant, or did you give birth in the last 12 months?"),
    QT_TRANSLATE_NOOP("Health", "Do you take prescribed medicine, or is another condition being treated?"),
    QT_TRANSLATE_NOOP("Health", "Has anybody told you to exercise only with supervision?"),
    QT_TRANSLATE_NOOP("Health", "Do you smoke, or did you stop in the last six months?"),
    QT_TRANSLATE_NOOP("Health", "Did a parent, brother or sister have heart trouble early in life?"),
};

constexpr std::array<const char*, clients::kHealthMarkCount> kMarks{
    QT_TRANSLATE_NOOP("Health", "Heart disease"),
    QT_TRANSLATE_NOOP("Health", "Artery disease or a stroke"),
    QT_TRANSLATE_NOOP("Health", "High blood pressure"),
    QT_TRANSLATE_NOOP("Health", "Chest pain at rest"),
    QT_TRANSLATE_NOOP("Health", "Chest pain on effort"),
    QT_TRANSLATE_NOOP("Health", "Breathless on light effort"),
    QT_TRANSLATE_NOOP("Health", "Breathless at night"),
    QT_TRANSLATE_NOOP("Health", "Ankle swelling"),
    QT_TRANSLATE_NOOP("Health", "A racing or uneven heart"),
    QT_TRANSLATE_NOOP("Health", "Leg pain on walking"),
    QT_TRANSLATE_NOOP("Health", "Fainted"),
    QT_TRANSLATE_NOOP("Health", "Dizzy"),
    QT_TRANSLATE_NOOP("Health", "Diabetes"),
    QT_TRANSLATE_NOOP("Health", "Kidney disease"),
    QT_TRANSLATE_NOOP("Health", "Lung disease"),
    QT_TRANSLATE_NOOP("Health", "Neck"),
    QT_TRANSLATE_NOOP("Health", "Shoulder"),
    QT_TRANSLATE_NOOP("Health", "Elbow"),
    QT_TRANSLATE_NOOP("Health", "Wrist"),
    QT_TRANSLATE_NOOP("Health", "Lower back"),
    QT_TRANSLATE_NOOP("Health", "Hip"),
    QT_TRANSLATE_NOOP("Health", "Knee"),
    QT_TRANSLATE_NOOP("Health", "Ankle"),
    QT_TRANSLATE_NOOP("Health", "Weak bones"),
    QT_TRANSLATE_NOOP("Health", "Operation"),
    QT_TRANSLATE_NOOP("Health", "Injury"),
    QT_TRANSLATE_NOOP("Health", "Pregnant"),
    QT_TRANSLATE_NOOP("Health", "Gave birth"),
    QT_TRANSLATE_NOOP("Health", "Prescribed medicine"),
    QT_TRANSLATE_NOOP("Health", "Another condition"),
    QT_TRANSLATE_NOOP("Health", "Supervised exercise only"),
    QT_TRANSLATE_NOOP("Health", "Smokes"),
    QT_TRANSLATE_NOOP("Health", "Heart trouble in the family"),
};

constexpr std::array<const char*, 14> kTags{
    QT_TRANSLATE_NOOP("Health", "Lower back"),   QT_TRANSLATE_NOOP("Health", "Neck"),           QT_TRANSLATE_NOOP("Health", "Shoulder"),
    QT_TRANSLATE_NOOP("Health", "Elbow"),        QT_TRANSLATE_NOOP("Health", "Wrist"),          QT_TRANSLATE_NOOP("Health", "Hip"),
    QT_TRANSLATE_NOOP("Health", "Knee"),         QT_TRANSLATE_NOOP("Health", "Ankle"),          QT_TRANSLATE_NOOP("Health", "Pelvic floor"),
    QT_TRANSLATE_NOOP("Health", "Pregnancy"),    QT_TRANSLATE_NOOP("Health", "Blood pressure"), QT_TRANSLATE_NOOP("Health", "Bone density"),
    QT_TRANSLATE_NOOP("Health", "Balance"),      QT_TRANSLATE_NOOP("Health", "Grip"),
};

/// `1`, `1 and 3`, `1, 3 and 6`.
QString listOf(const QStringList& parts)
{
    if (parts.size() < 2) {
        return parts.join(QString());
    }
    return healthText(QT_TRANSLATE_NOOP("Health", "%1 and %2")).arg(parts.mid(0, parts.size() - 1).join(QStringLiteral(", ")), parts.back());
}

QString numberOf(clients::HealthQuestion question)
{
    return QString::number(questionNumber(question));
}

QString lowered(const QString& text)
{
    return text.isEmpty() ? text : text.front().toLower() + text.mid(1);
}

/// The findings that carried the outcome to its level: all of them where it is clear or has limits.
std::vector<clients::HealthFinding> decidingFindings(const HealthOutcome& outcome)
{
    std::vector<clients::HealthFinding> deciding;
    const bool isDoctorAsked = outcome.level >= HealthLevel::AskDoctor;
    for (const clients::HealthFinding& finding : outcome.findings) {
        const clients::HealthWeight weight = clients::weightOf(finding.mark);
        if (isDoctorAsked ? weight >= clients::HealthWeight::AskDoctor : weight >= clients::HealthWeight::Limit) {
            deciding.push_back(finding);
        }
    }
    return deciding;
}

QString levelConclusion(const HealthOutcome& outcome, bool isSeveral)
{
    switch (outcome.level) {
    case HealthLevel::Clear:
        return {};
    case HealthLevel::Limits:
        return healthText(QT_TRANSLATE_NOOP("Health", "Train with care: cautions are suggested below."));
    case HealthLevel::AskDoctor:
        return isSeveral ? healthText(QT_TRANSLATE_NOOP("Health", "Together they call for a doctor’s view before any training."))
                         : healthText(QT_TRANSLATE_NOOP("Health", "It calls for a doctor’s view before any training."));
    case HealthLevel::NotToday:
        return healthText(QT_TRANSLATE_NOOP("Health", "No training before a doctor has seen the client."));
    }
    return {};
}

QString restingReason(const clients::RestingWarning& warning)
{
    if (!warning.isAny()) {
        return {};
    }
    return warning.isSystolicHigh || warning.isDiastolicHigh
               ? healthText(QT_TRANSLATE_NOOP("Health", "The blood pressure at rest is above the studio’s limit."))
               : healthText(QT_TRANSLATE_NOOP("Health", "The heart rate at rest is above the studio’s limit."));
}

}  // namespace

QString questionText(clients::HealthQuestion question)
{
    return healthText(kQuestions[static_cast<std::size_t>(question)]);
}

int questionNumber(clients::HealthQuestion question)
{
    return static_cast<int>(question) + 1;
}

QString markName(clients::HealthMark mark)
{
    return healthText(kMarks[static_cast<std::size_t>(mark)]);
}

QString cautionTagName(lifts::CautionTag tag)
{
    return healthText(kTags[static_cast<std::size_t>(tag)]);
}

QString intensityName(clients::Intensity intensity)
{
    switch (intensity) {
    case clients::Intensity::Light:
        return healthText(QT_TRANSLATE_NOOP("Health", "Light"));
    case clients::Intensity::Moderate:
        return healthText(QT_TRANSLATE_NOOP("Health", "Moderate"));
    case clients::Intensity::Vigorous:
        return healthText(QT_TRANSLATE_NOOP("Health", "Vigorous"));
    }
    return {};
}

QString healthLevelName(HealthLevel level)
{
    switch (level) {
    case HealthLevel::Clear:
        return healthText(QT_TRANSLATE_NOOP("Health", "Clear"));
    case HealthLevel::Limits:
        return healthText(QT_TRANSLATE_NOOP("Health", "Limits"));
    case HealthLevel::AskDoctor:
        return healthText(QT_TRANSLATE_NOOP("Health", "Ask doctor"));
    case HealthLevel::NotToday:
        return healthText(QT_TRANSLATE_NOOP("Health", "Not today"));
    }
    return {};
}

Signal healthLevelSignal(HealthLevel level)
{
    switch (level) {
    case HealthLevel::Clear:
        return Signal::Ok;
    case HealthLevel::Limits:
        return Signal::Warn;
    case HealthLevel::AskDoctor:
    case HealthLevel::NotToday:
        return Signal::Pain;
    }
    return Signal::Muted;
}

QString outcomeHeadline(const HealthOutcome& outcome)
{
    if (outcome.isCareNeededNow) {
        return healthText(QT_TRANSLATE_NOOP("Health", "Not today: medical care now"));
    }
    switch (outcome.level) {
    case HealthLevel::NotToday:
        return healthText(QT_TRANSLATE_NOOP("Health", "Not today: medical advice first"));
    case HealthLevel::AskDoctor:
        return healthText(QT_TRANSLATE_NOOP("Health", "Medical clearance recommended"));
    case HealthLevel::Clear:
    case HealthLevel::Limits:
        break;
    }
    if (!outcome.isComplete()) {
        return healthText(QT_TRANSLATE_NOOP("Health", "Not finished yet"));
    }
    return outcome.level == HealthLevel::Limits ? healthText(QT_TRANSLATE_NOOP("Health", "Clear to start, with limits"))
                                                : healthText(QT_TRANSLATE_NOOP("Health", "Clear to start"));
}

QString outcomeReason(const HealthOutcome& outcome)
{
    QStringList numbers;
    QStringList names;
    for (const clients::HealthFinding& finding : decidingFindings(outcome)) {
        if (!numbers.contains(numberOf(finding.question))) {
            numbers.append(numberOf(finding.question));
        }
        const QString name = lowered(markName(finding.mark));
        names.append(finding.isAssumed ? healthText(QT_TRANSLATE_NOOP("Health", "%1 (not said which, the gravest is taken)")).arg(name) : name);
    }
    QStringList sentences;
    if (!numbers.isEmpty()) {
        const QString lead = numbers.size() == 1 ? healthText(QT_TRANSLATE_NOOP("Health", "Answer %1: %2.")) : healthText(QT_TRANSLATE_NOOP("Health", "Answers %1: %2."));
        sentences.append(lead.arg(listOf(numbers), names.join(QStringLiteral(", "))));
    }
    sentences.append(restingReason(outcome.resting));
    if (sentences.join(QString()).isEmpty()) {
        return outcome.isComplete() ? healthText(QT_TRANSLATE_NOOP("Health", "No answer asks for anything.")) : QString();
    }
    sentences.append(levelConclusion(outcome, names.size() > 1));
    sentences.removeAll(QString());
    return sentences.join(QLatin1Char(' '));
}

QStringList restingWarningTexts(const clients::RestingReading& reading, const clients::RestingWarning& warning, const clients::RestingLimits& limits)
{
    QStringList texts;
    if (warning.isHeartRateHigh) {
        texts.append(healthText(QT_TRANSLATE_NOOP("Health", "heart rate %1 a minute (limit %2)")).arg(reading.heartRate.value_or(0)).arg(limits.heartRate));
    }
    if (warning.isSystolicHigh) {
        texts.append(healthText(QT_TRANSLATE_NOOP("Health", "systolic %1 (limit %2)")).arg(reading.systolic.value_or(0)).arg(limits.systolic));
    }
    if (warning.isDiastolicHigh) {
        texts.append(healthText(QT_TRANSLATE_NOOP("Health", "diastolic %1 (limit %2)")).arg(reading.diastolic.value_or(0)).arg(limits.diastolic));
    }
    return texts;
}

QString openAnswersText(const HealthOutcome& outcome)
{
    QStringList parts;
    for (const clients::HealthQuestion question : outcome.open) {
        parts.append(numberOf(question));
    }
    if (outcome.isActivityOpen) {
        parts.append(healthText(QT_TRANSLATE_NOOP("Health", "how active the client is")));
    }
    return parts.isEmpty() ? QString() : healthText(QT_TRANSLATE_NOOP("Health", "Still open: %1.")).arg(listOf(parts));
}

QString wordsToSay(const HealthOutcome& outcome)
{
    if (outcome.isCareNeededNow) {
        return healthText(QT_TRANSLATE_NOOP("Health", "What you describe should be looked at by a doctor now, before anything else. Let us call somebody together."));
    }
    if (!outcome.isComplete() && outcome.level < HealthLevel::AskDoctor) {
        return healthText(QT_TRANSLATE_NOOP("Health", "A few questions about your health come first. They stay between us."));
    }
    switch (outcome.level) {
    case HealthLevel::NotToday:
        return healthText(QT_TRANSLATE_NOOP("Health", "We do not train today. Please see your doctor soon, and we go on from there."));
    case HealthLevel::AskDoctor:
        return healthText(QT_TRANSLATE_NOOP("Health", "Your answers make it wise to see your doctor before we train. It is a routine precaution, not a diagnosis."));
    case HealthLevel::Limits:
        return healthText(QT_TRANSLATE_NOOP("Health", "We can start, and we take care of what you told me. Say at once if something hurts."));
    case HealthLevel::Clear:
        return healthText(QT_TRANSLATE_NOOP("Health", "Nothing in your answers stands in the way. Tell me when something changes."));
    }
    return {};
}

QString whatWaitsText(const HealthOutcome& outcome)
{
    if (outcome.level >= HealthLevel::AskDoctor) {
        return healthText(QT_TRANSLATE_NOOP("Health", "Movement screen, starting plan and loaded work wait."));
    }
    return outcome.isComplete() ? QString() : healthText(QT_TRANSLATE_NOOP("Health", "Movement screen and starting plan wait for the open answers."));
}

QString whatGoesOnText(const HealthOutcome& outcome)
{
    return outcome.level >= HealthLevel::AskDoctor || !outcome.isComplete()
               ? healthText(QT_TRANSLATE_NOOP("Health", "Profile, goals, hours and equipment can go on."))
               : healthText(QT_TRANSLATE_NOOP("Health", "Everything can go on."));
}

QString emergencyText()
{
    return healthText(QT_TRANSLATE_NOOP("Health", "Chest pain, fainting or sudden breathlessness now? Stop and call the emergency number."));
}

QString noDiagnosisText()
{
    return healthText(QT_TRANSLATE_NOOP("Health", "A recommendation, no diagnosis. Local rules, physicians and licensed professionals come first."));
}

QString screeningSourceText()
{
    return healthText(QT_TRANSLATE_NOOP("Health", "Preparticipation algorithm: Riebe et al. 2015, Med Sci Sports Exerc 47(11):2473–2479. What goes beyond it is common practice."));
}

QString algorithmRowText(const clients::ScreeningFacts& facts)
{
    const QStringList parts{
        facts.isRegularExerciser ? healthText(QT_TRANSLATE_NOOP("Health", "Regular exerciser")) : healthText(QT_TRANSLATE_NOOP("Health", "Not a regular exerciser")),
        facts.hasKnownDisease ? healthText(QT_TRANSLATE_NOOP("Health", "known disease")) : healthText(QT_TRANSLATE_NOOP("Health", "no known disease")),
        facts.hasSignsOrSymptoms ? healthText(QT_TRANSLATE_NOOP("Health", "signs or symptoms")) : healthText(QT_TRANSLATE_NOOP("Health", "no signs or symptoms")),
        lowered(intensityName(facts.intended))};
    return parts.join(QStringLiteral(" · "));
}

QString screeningAdviceText(clients::ScreeningAdvice advice)
{
    switch (advice) {
    case clients::ScreeningAdvice::StartLightly:
        return healthText(QT_TRANSLATE_NOOP("Health", "Clearance is not necessary: light to moderate exercise first, then on."));
    case clients::ScreeningAdvice::ContinueOrProgress:
        return healthText(QT_TRANSLATE_NOOP("Health", "Clearance is not necessary: go on as before, or on from there."));
    case clients::ScreeningAdvice::Continue:
        return healthText(QT_TRANSLATE_NOOP("Health", "Clearance is not necessary: go on as before."));
    case clients::ScreeningAdvice::ClearBeforeStarting:
        return healthText(QT_TRANSLATE_NOOP("Health", "Clearance is recommended before starting."));
    case clients::ScreeningAdvice::ClearThenStartLightly:
        return healthText(QT_TRANSLATE_NOOP("Health", "Clearance is recommended; afterwards light to moderate exercise first."));
    case clients::ScreeningAdvice::ClearBeforeVigorous:
        return healthText(QT_TRANSLATE_NOOP("Health", "Clearance is recommended before vigorous exercise."));
    case clients::ScreeningAdvice::StopAndClear:
        return healthText(QT_TRANSLATE_NOOP("Health", "Stop, and seek clearance."));
    }
    return {};
}

}  // namespace chalk::ui::common
