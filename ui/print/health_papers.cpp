#include "ui/print/health_papers.h"

#include "ui/common/day_entry.h"
#include "ui/common/formats.h"
#include "ui/common/health_words.h"
#include "ui/print/page_flow.h"

#include <QCoreApplication>

namespace chalk::ui::print {

namespace {

QString paperText(const char* text)
{
    return QCoreApplication::translate("Papers", text);
}

QString nameOf(const HealthPaperContent& content)
{
    return common::qstring(content.client.name);
}

void addPerson(PageFlow& flow, const HealthPaperContent& content)
{
    flow.entry(paperText(QT_TRANSLATE_NOOP("Papers", "Client")), nameOf(content));
    if (content.client.birthDate) {
        flow.entry(paperText(QT_TRANSLATE_NOOP("Papers", "Born")), common::entryOfDay(*content.client.birthDate));
    }
    flow.entry(paperText(QT_TRANSLATE_NOOP("Papers", "Coach")), common::qstring(content.coachName));
    flow.entry(paperText(QT_TRANSLATE_NOOP("Papers", "Day")), common::entryOfDay(content.today));
}

/// `Yes.`, short enough for the column beside a question.
QString answerText(std::optional<bool> isYes)
{
    if (!isYes) {
        return paperText(QT_TRANSLATE_NOOP("Papers", "Not answered yet."));
    }
    return *isYes ? paperText(QT_TRANSLATE_NOOP("Papers", "Yes.")) : paperText(QT_TRANSLATE_NOOP("Papers", "No."));
}

/// What a yes means in particular; empty for any other answer.
QString moreOf(const clients::HealthAnswer& answer)
{
    if (answer.isYes != true) {
        return {};
    }
    QStringList marks;
    for (const clients::HealthMark mark : answer.marks) {
        marks.append(common::markName(mark));
    }
    QStringList parts;
    if (!marks.isEmpty()) {
        parts.append(marks.join(QStringLiteral(", ")) + QLatin1Char('.'));
    }
    if (!answer.detail.empty()) {
        parts.append(common::qstring(answer.detail));
    }
    return parts.join(QLatin1Char(' '));
}

void addAnswer(PageFlow& flow, clients::HealthQuestion question, const clients::HealthAnswer& answer)
{
    flow.question(QStringLiteral("%1. %2").arg(common::questionNumber(question)).arg(common::questionText(question)), answerText(answer.isYes), moreOf(answer));
}

void addAnswers(PageFlow& flow, const clients::HealthIntake& intake)
{
    for (int i = 0; i < clients::kHealthQuestionCount; ++i) {
        const auto question = static_cast<clients::HealthQuestion>(i);
        addAnswer(flow, question, intake.answerTo(question));
    }
    flow.gap(2);
    const QString active = intake.isRegularExerciser == true ? paperText(QT_TRANSLATE_NOOP("Papers", "Yes, three days a week or more for three months."))
                                                             : answerText(intake.isRegularExerciser);
    flow.entry(paperText(QT_TRANSLATE_NOOP("Papers", "Active so far")), active);
    flow.entry(paperText(QT_TRANSLATE_NOOP("Papers", "Will train")), common::intensityName(intake.intended));
    QStringList resting;
    if (intake.resting.heartRate) {
        resting.append(paperText(QT_TRANSLATE_NOOP("Papers", "heart rate %1 a minute")).arg(*intake.resting.heartRate));
    }
    if (intake.resting.systolic && intake.resting.diastolic) {
        resting.append(paperText(QT_TRANSLATE_NOOP("Papers", "blood pressure %1/%2")).arg(*intake.resting.systolic).arg(*intake.resting.diastolic));
    }
    if (!resting.isEmpty()) {
        flow.entry(paperText(QT_TRANSLATE_NOOP("Papers", "At rest")), resting.join(QStringLiteral(", ")));
    }
    if (!intake.note.empty()) {
        flow.entry(paperText(QT_TRANSLATE_NOOP("Papers", "Note")), common::qstring(intake.note));
    }
}

/// A line for the guardian of a minor.
void addGuardian(PageFlow& flow, const HealthPaperContent& content)
{
    if (content.client.birthDate && clients::isMinorOn(*content.client.birthDate, content.today)) {
        const QString guardian = content.profile.guardian.empty() ? paperText(QT_TRANSLATE_NOOP("Papers", "Guardian"))
                                                                  : paperText(QT_TRANSLATE_NOOP("Papers", "Guardian: %1")).arg(common::qstring(content.profile.guardian));
        flow.signatures({guardian, paperText(QT_TRANSLATE_NOOP("Papers", "Day"))});
    }
}

void addIntake(PageFlow& flow, const HealthPaperContent& content)
{
    addPerson(flow, content);
    flow.heading(paperText(QT_TRANSLATE_NOOP("Papers", "Answers")));
    addAnswers(flow, content.intake);
    flow.heading(common::outcomeHeadline(content.outcome));
    for (const QString& text : {common::outcomeReason(content.outcome), common::openAnswersText(content.outcome)}) {
        if (!text.isEmpty()) {
            flow.paragraph(text);
        }
    }
    for (const clients::Caution& caution : content.cautions) {
        flow.entry(common::qstring(caution.bodyPart), common::qstring(caution.text));
    }
    flow.paragraph(common::noDiagnosisText());
    flow.paragraph(common::screeningSourceText());
    flow.signatures({paperText(QT_TRANSLATE_NOOP("Papers", "Read and agreed: client")), paperText(QT_TRANSLATE_NOOP("Papers", "Day"))});
    addGuardian(flow, content);
}

void addConsent(PageFlow& flow, const HealthPaperContent& content)
{
    addPerson(flow, content);
    const QString studio = common::qstring(content.studioName);
    flow.heading(paperText(QT_TRANSLATE_NOOP("Papers", "What is kept, and why")));
    flow.paragraph(paperText(QT_TRANSLATE_NOOP("Papers", "%1 keeps your answers about health, what is measured, how you move and what you train, so that your training can be planned "
                                                         "with care. It is kept on the studio’s own computer, and only those who coach you use it.")).arg(studio));
    flow.paragraph(paperText(QT_TRANSLATE_NOOP("Papers", "You can see all of it at any time, have it corrected, and take this consent back by telling your coach. Then nothing more about "
                                                         "your health is kept, and training that rests on it ends.")));
    flow.heading(paperText(QT_TRANSLATE_NOOP("Papers", "What training can bring with it")));
    flow.paragraph(paperText(QT_TRANSLATE_NOOP("Papers", "Strength training loads muscles, joints, heart and circulation. Sore muscles are usual. Injuries happen now and then; serious "
                                                         "events are rare and cannot be ruled out. You can stop any exercise at any time, and you say at once when something hurts, when you "
                                                         "feel dizzy or short of breath, or when your health changes.")));
    flow.paragraph(common::emergencyText());
    flow.paragraph(paperText(QT_TRANSLATE_NOOP("Papers", "A coach gives no medical advice and makes no diagnosis. What a physician or another licensed professional says comes first, and so "
                                                         "do the rules of the place where you train. Local law may ask for another wording than this page.")));
    flow.heading(paperText(QT_TRANSLATE_NOOP("Papers", "Agreed")));
    flow.tick(paperText(QT_TRANSLATE_NOOP("Papers", "I agree that my health data is kept as said above.")));
    flow.tick(paperText(QT_TRANSLATE_NOOP("Papers", "I have read this page and could ask whatever I wanted to know.")));
    flow.signatures({nameOf(content), paperText(QT_TRANSLATE_NOOP("Papers", "Day"))});
    addGuardian(flow, content);
    flow.signatures({paperText(QT_TRANSLATE_NOOP("Papers", "Coach: %1")).arg(common::qstring(content.coachName)), paperText(QT_TRANSLATE_NOOP("Papers", "Day"))});
}

void addLetter(PageFlow& flow, const HealthPaperContent& content)
{
    addPerson(flow, content);
    flow.gap(4);
    flow.paragraph(paperText(QT_TRANSLATE_NOOP("Papers", "To the doctor of %1,")).arg(nameOf(content)));
    flow.paragraph(paperText(QT_TRANSLATE_NOOP("Papers", "%1 would like to begin strength training with us: coached, at first without load, then with light loads well short of failure "
                                                         "and small steps. Answers in our health intake make us ask for your view before it begins.")).arg(nameOf(content)));
    flow.heading(paperText(QT_TRANSLATE_NOOP("Papers", "What made us ask")));
    const QString reason = common::outcomeReason(content.outcome);
    if (const QString known = reason.isEmpty() ? common::qstring(content.clearance.reason) : reason; !known.isEmpty()) {
        flow.paragraph(known);
    }
    for (int i = 0; i < clients::kHealthQuestionCount; ++i) {
        const auto question = static_cast<clients::HealthQuestion>(i);
        if (content.intake.answerTo(question).isYes == true) {
            addAnswer(flow, question, content.intake.answerTo(question));
        }
    }
    flow.paragraph(paperText(QT_TRANSLATE_NOOP("Papers", "These are the client’s own answers and no diagnosis. What you say comes first: we keep to it.")));
    flow.heading(paperText(QT_TRANSLATE_NOOP("Papers", "Your view")));
    flow.tick(paperText(QT_TRANSLATE_NOOP("Papers", "Nothing speaks against coached strength training as described.")));
    flow.tick(paperText(QT_TRANSLATE_NOOP("Papers", "It is possible within these limits:")));
    flow.signatures({paperText(QT_TRANSLATE_NOOP("Papers", "Limits"))});
    flow.tick(paperText(QT_TRANSLATE_NOOP("Papers", "Not at present.")));
    flow.signatures({paperText(QT_TRANSLATE_NOOP("Papers", "Valid until")), paperText(QT_TRANSLATE_NOOP("Papers", "Doctor, stamp")), paperText(QT_TRANSLATE_NOOP("Papers", "Day"))});
    flow.paragraph(paperText(QT_TRANSLATE_NOOP("Papers", "With thanks, %1, %2")).arg(common::qstring(content.coachName), common::qstring(content.studioName)));
}

}  // namespace

QString titleOf(HealthPaper paper)
{
    switch (paper) {
    case HealthPaper::Intake:
        return paperText(QT_TRANSLATE_NOOP("Papers", "Health intake"));
    case HealthPaper::Consent:
        return paperText(QT_TRANSLATE_NOOP("Papers", "Consent"));
    case HealthPaper::DoctorLetter:
        return paperText(QT_TRANSLATE_NOOP("Papers", "Before strength training"));
    }
    return {};
}

QString paperFileName(HealthPaper paper, const HealthPaperContent& content)
{
    QString name = QStringLiteral("%1-%2-%3").arg(titleOf(paper), nameOf(content), common::qstring(content.today.toString())).toLower().simplified();
    for (const QChar letter : {QLatin1Char(' '), QLatin1Char('/'), QLatin1Char('\\'), QLatin1Char(':')}) {
        name.replace(letter, QLatin1Char('-'));
    }
    return name;
}

std::vector<Sheet> healthSheets(HealthPaper paper, const HealthPaperContent& content, PaperSize size)
{
    PageFlow flow(size, QStringLiteral("%1 · %2 · %3").arg(common::qstring(content.studioName), nameOf(content), titleOf(paper)));
    flow.title(titleOf(paper));
    switch (paper) {
    case HealthPaper::Intake:
        addIntake(flow, content);
        break;
    case HealthPaper::Consent:
        addConsent(flow, content);
        break;
    case HealthPaper::DoctorLetter:
        addLetter(flow, content);
        break;
    }
    return flow.sheets();
}

}  // namespace chalk::ui::print
