#include "app/commands/clearance_command.h"

#include "core/exchange/health_intake_json.h"
#include "ui/common/formats.h"
#include "ui/common/health_words.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

namespace chalk::app {

namespace {

using clients::HealthIntake;
using clients::HealthOutcome;
using ui::common::qstring;

/// An intake judged, with the limits that its readings were held against.
struct JudgedIntake {
    HealthIntake intake;
    clients::RestingLimits limits;
    HealthOutcome outcome = clients::outcomeOf(intake, limits);
    clients::Clearance clearance = {clients::clearanceStateAfter(outcome), {}, {}, {}, {}, {}};

    [[nodiscard]] bool isBlocked(base::Date today) const { return clients::isBlocked(clearance, today); }
    [[nodiscard]] QString reason() const { return ui::common::outcomeReason(outcome); }
};

template <class Keys>
QJsonArray keysJson(const Keys& values)
{
    QJsonArray keys;
    for (const auto value : values) {
        keys.append(qstring(keyOf(value)));
    }
    return keys;
}

QJsonObject algorithmJson(const HealthOutcome& outcome)
{
    return {{QStringLiteral("regular_exerciser"), outcome.facts.isRegularExerciser},
            {QStringLiteral("known_disease"), outcome.facts.hasKnownDisease},
            {QStringLiteral("signs_or_symptoms"), outcome.facts.hasSignsOrSymptoms},
            {QStringLiteral("intended"), qstring(keyOf(outcome.facts.intended))},
            {QStringLiteral("advice"), qstring(keyOf(outcome.advice))},
            {QStringLiteral("says"), ui::common::screeningAdviceText(outcome.advice)}};
}

QJsonArray findingsJson(const HealthOutcome& outcome)
{
    QJsonArray findings;
    for (const clients::HealthFinding& finding : outcome.findings) {
        findings.append(QJsonObject{{QStringLiteral("answer"), ui::common::questionNumber(finding.question)},
                                    {QStringLiteral("question"), qstring(keyOf(finding.question))},
                                    {QStringLiteral("mark"), qstring(keyOf(finding.mark))},
                                    {QStringLiteral("assumed"), finding.isAssumed}});
    }
    return findings;
}

QJsonArray restingJson(const JudgedIntake& judged)
{
    return QJsonArray::fromStringList(ui::common::restingWarningTexts(judged.intake.resting, judged.outcome.resting, judged.limits));
}

QJsonObject clearanceJson(const JudgedIntake& judged, base::Date today)
{
    const HealthOutcome& outcome = judged.outcome;
    return {{QStringLiteral("outcome"), qstring(keyOf(outcome.level))},
            {QStringLiteral("headline"), ui::common::outcomeHeadline(outcome)},
            {QStringLiteral("state"), qstring(keyOf(judged.clearance.state))},
            {QStringLiteral("blocked"), judged.isBlocked(today)},
            {QStringLiteral("medical_care_now"), outcome.isCareNeededNow},
            {QStringLiteral("reason"), judged.reason()},
            {QStringLiteral("findings"), findingsJson(outcome)},
            {QStringLiteral("above_resting_limits"), restingJson(judged)},
            {QStringLiteral("resting_limits"), QJsonObject{{QStringLiteral("heart_rate"), judged.limits.heartRate},
                                                           {QStringLiteral("systolic"), judged.limits.systolic},
                                                           {QStringLiteral("diastolic"), judged.limits.diastolic}}},
            {QStringLiteral("cautions"), keysJson(outcome.cautions)},
            {QStringLiteral("open"), keysJson(outcome.open)},
            {QStringLiteral("activity_open"), outcome.isActivityOpen},
            {QStringLiteral("algorithm"), algorithmJson(outcome)},
            {QStringLiteral("source"), ui::common::screeningSourceText()},
            {QStringLiteral("note"), ui::common::noDiagnosisText()}};
}

void writeClearance(QTextStream& out, const JudgedIntake& judged, base::Date today)
{
    const HealthOutcome& outcome = judged.outcome;
    out << ui::common::outcomeHeadline(outcome) << " (" << ui::common::healthLevelName(outcome.level) << ")\n";
    out << (judged.isBlocked(today) ? "Blocked: no loaded work before this is settled.\n" : "Not blocked.\n");
    if (const QString reason = judged.reason(); !reason.isEmpty()) {
        out << "Why: " << reason << '\n';
    }
    for (const QString& reading : ui::common::restingWarningTexts(judged.intake.resting, outcome.resting, judged.limits)) {
        out << "Above its limit: " << reading << '\n';
    }
    if (!outcome.isComplete()) {
        out << ui::common::openAnswersText(outcome) << '\n';
    }
    out << "Algorithm: " << ui::common::algorithmRowText(outcome.facts) << ". " << ui::common::screeningAdviceText(outcome.advice) << '\n';
    out << "Say: " << ui::common::wordsToSay(outcome) << '\n';
    out << ui::common::emergencyText() << '\n';
    out << "Source: " << ui::common::screeningSourceText() << '\n';
    out << ui::common::noDiagnosisText() << '\n';
}

int runClearance(const CommandContext& context)
{
    const auto text = context.readInput(context.operands.front());
    if (!text) {
        return kWrongUse;
    }
    const auto value = exchange::parseJson(*text);
    if (!value) {
        return context.refuse(QString::fromStdString(value.error().field + ": " + value.error().reason));
    }
    const auto intake = exchange::readHealthIntake(*value, {});
    if (!intake) {
        return context.refuse(QString::fromStdString(intake.error().field + ": " + intake.error().reason));
    }
    const JudgedIntake judged{*intake, {}};
    if (context.isJson()) {
        context.out << QJsonDocument(clearanceJson(judged, context.today)).toJson(QJsonDocument::Indented);
    } else {
        writeClearance(context.out, judged, context.today);
    }
    return kDone;
}

/// Every question with its marks, as they are written in the file.
QString questionList()
{
    QString list;
    for (int i = 0; i < clients::kHealthQuestionCount; ++i) {
        const auto question = static_cast<clients::HealthQuestion>(i);
        QStringList marks;
        for (const clients::HealthMark mark : clients::marksOf(question)) {
            marks.append(qstring(keyOf(mark)));
        }
        list += QStringLiteral("\n  %1  %2").arg(qstring(keyOf(question)), -22).arg(marks.join(QStringLiteral(", ")));
    }
    return list;
}

}  // namespace

Command clearanceCommand()
{
    return {QStringLiteral("clearance"),
            QStringLiteral("judge the answers of a health intake: outcome, reason and source"),
            QStringLiteral("FILE"),
            1,
            1,
            {},
            QStringLiteral("FILE is one JSON object (- for standard input):\n"
                           "  {\"answers\": {\"chest_pain\": false, \"breathless\": {\"yes\": true, \"marks\": [\"breathless_on_light_effort\"],\n"
                           "   \"detail\": \"since spring\"}, ...}, \"regular_exerciser\": false, \"intended\": \"moderate\",\n"
                           "   \"resting\": {\"heart_rate\": 72, \"systolic\": 128, \"diastolic\": 82}, \"note\": \"sleeps badly\", \"agreed\": \"2026-11-18\"}\n"
                           "An answer is true, false or an object; what is left out is open, and a yes without marks is taken for the gravest. intended is\n"
                           "light, moderate (as by itself) or vigorous. The questions and their marks:") +
                questionList() +
                QStringLiteral("\nReadings above 100 beats a minute, 180 systolic or 100 diastolic warn. It is a recommendation and no diagnosis; local rules and\n"
                               "licensed professionals come first."),
            runClearance};
}

}  // namespace chalk::app
