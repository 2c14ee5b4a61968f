#include "ui/print/health_papers.h"

#include "tests/ui/print/pdf_checks.h"
#include "tests/ui/print/sheet_checks.h"
#include "ui/common/health_words.h"
#include "ui/print/print_text.h"
#include "ui/print/sheet_printing.h"

#include <QDate>

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

namespace chalk::ui::print {

namespace {

using clients::HealthQuestion;

constexpr std::array kPapers{HealthPaper::Intake, HealthPaper::Consent, HealthPaper::DoctorLetter};
constexpr std::array kSizes{PaperSize::A4, PaperSize::Letter};
const QString kNo = QStringLiteral("No.");

/// Somebody of 35 who answers every question with a no.
HealthPaperContent calmContent()
{
    HealthPaperContent content;
    content.studioName = "Harbour Strength";
    content.coachName = "Ines";
    content.client.name = "Tove Aldane";
    content.client.birthDate = base::Date::fromYmd(1991, 5, 14);
    content.today = *base::Date::fromYmd(2026, 11, 24);
    for (clients::HealthAnswer& answer : content.intake.answers) {
        answer.isYes = false;
    }
    content.intake.isRegularExerciser = false;
    content.outcome = clients::outcomeOf(content.intake, {});
    return content;
}

/// Everything at once and too long: names, every mark of every question, details, a note, cautions, a minor with a guardian.
HealthPaperContent crowdedContent()
{
    HealthPaperContent content = calmContent();
    const std::string name = "Wilhelmina Theodora Featherstonehaugh-Cholmondeley van den Oudenrijn-Wassenaar the Younger of Lower Bridgewater";
    content.studioName = "The Old Harbour Street Strength and Movement Rooms beside the Customs House, Upper Floor and Yard";
    content.coachName = "Maximiliana Konstantinopolsky-Abercrombie of the Tuesday Mornings";
    content.client.name = name;
    content.client.birthDate = base::Date::fromYmd(2010, 2, 1);
    content.profile.guardian = "Guardian of " + name;
    std::string detail;
    for (int i = 0; i < 12; ++i) {
        detail += "since the spring before last, worse on stairs and after a long day of standing; ";
    }
    detail += std::string(140, 'x');  // one word wider than a page
    for (int i = 0; i < clients::kHealthQuestionCount; ++i) {
        const auto question = static_cast<HealthQuestion>(i);
        const auto marks = clients::marksOf(question);
        content.intake.answerTo(question) = {true, {marks.begin(), marks.end()}, detail};
    }
    content.intake.resting = {120, 190, 110};
    content.intake.note = detail;
    content.outcome = clients::outcomeOf(content.intake, {});
    content.cautions.push_back({base::CautionId(1), "The whole of the lower back and left hip", detail, "Back", {}, {}});
    return content;
}

QByteArray paperPdf(HealthPaper paper, const HealthPaperContent& content, PaperSize size = PaperSize::A4)
{
    return sheetsPdf(healthSheets(paper, content, size), size, titleOf(paper), QDate(2026, 11, 24));
}

/// The words of a paper with single spaces.
QString wordsOf(HealthPaper paper, const HealthPaperContent& content)
{
    return test::PdfFile(paperPdf(paper, content)).text().simplified();
}

/// All words as they are laid out: lines of one text, which pages or other columns may part, are joined.
QString laidOut(const std::vector<Sheet>& sheets)
{
    QStringList texts;
    for (const Sheet& sheet : sheets) {
        for (const SheetText& text : sheet.texts) {
            texts.append(text.text);
        }
    }
    return texts.join(QLatin1Char(' '));
}

void expectSaid(const QString& text, std::initializer_list<const char*> sayings)
{
    for (const char* saying : sayings) {
        EXPECT_TRUE(text.contains(QString::fromUtf8(saying))) << saying << "\nis not in\n" << text.toStdString();
    }
}

/// What stands on the line of a text, besides it.
QStringList besideOf(const Sheet& sheet, const SheetText& text)
{
    QStringList beside;
    for (const SheetText& other : sheet.texts) {
        if (&other != &text && qFuzzyCompare(other.cell.y() + 1, text.cell.y() + 1)) {
            beside.append(other.text);
        }
    }
    return beside;
}

}  // namespace

TEST(HealthPapers, NothingClipsOrOverlapsHoweverMuchIsSaid)
{
    HealthPaperContent open = calmContent();
    open.intake = {};
    open.outcome = clients::outcomeOf(open.intake, {});
    for (const PaperSize size : kSizes) {
        for (const HealthPaper paper : kPapers) {
            const std::string what = titleOf(paper).toStdString() + (size == PaperSize::A4 ? " on A4" : " on Letter");
            for (const HealthPaperContent& content : {calmContent(), crowdedContent(), open}) {
                const auto sheets = healthSheets(paper, content, size);
                ASSERT_FALSE(sheets.empty());
                for (const Sheet& sheet : sheets) {
                    EXPECT_EQ(sheet.size, millimetresOf(size));
                    test::expectSound(sheet, what + ", " + content.client.name);
                }
            }
        }
    }
}

TEST(HealthPapers, NoLongNameOrAnswerIsCut)
{
    const HealthPaperContent content = crowdedContent();
    for (const HealthPaper paper : kPapers) {
        const QString text = laidOut(healthSheets(paper, content, PaperSize::A4));
        EXPECT_TRUE(text.contains(QStringLiteral("Lower Bridgewater"))) << text.toStdString();
    }
    for (const HealthPaper paper : {HealthPaper::Intake, HealthPaper::DoctorLetter}) {
        const QString text = laidOut(healthSheets(paper, content, PaperSize::A4));
        EXPECT_EQ(text.count(QStringLiteral("standing;")), (clients::kHealthQuestionCount + (paper == HealthPaper::Intake ? 2 : 0)) * 12);
    }
}

TEST(HealthPapers, ANoStandsBesideItsQuestion)
{
    int found = 0;
    for (const PaperSize size : kSizes) {
        for (const Sheet& sheet : healthSheets(HealthPaper::Intake, calmContent(), size)) {
            for (const SheetText& text : sheet.texts) {
                if (text.text == kNo) {
                    EXPECT_EQ(besideOf(sheet, text).size(), 1) << text.cell.y();
                    ++found;
                }
            }
        }
    }
    EXPECT_EQ(found, 2 * (clients::kHealthQuestionCount + 1)) << "and one of how active the client is";
}

TEST(HealthPapers, ACalmIntakeIsOnOnePage)
{
    for (const PaperSize size : kSizes) {
        EXPECT_EQ(healthSheets(HealthPaper::Intake, calmContent(), size).size(), 1U);
    }
}

TEST(HealthPapers, TheConsentIsOnOnePageForAMinorToo)
{
    HealthPaperContent minor = calmContent();
    minor.client.birthDate = base::Date::fromYmd(2011, 2, 1);
    for (const PaperSize size : kSizes) {
        EXPECT_EQ(healthSheets(HealthPaper::Consent, minor, size).size(), 1U);
    }
}

TEST(HealthPapers, EveryPageSaysWhoseItIsAndItsNumber)
{
    const auto sheets = healthSheets(HealthPaper::Intake, crowdedContent(), PaperSize::Letter);
    ASSERT_GT(sheets.size(), 2U);
    for (std::size_t i = 0; i < sheets.size(); ++i) {
        EXPECT_TRUE(sheets[i].texts.front().text.startsWith(QStringLiteral("The Old Harbour Street"))) << i;
        EXPECT_EQ(sheets[i].texts.back().text, QStringLiteral("Page %1 of %2").arg(i + 1).arg(sheets.size()));
    }
}

TEST(HealthPapers, TheSameContentIsTheSameBytes)
{
    std::set<QByteArray> different;
    for (const HealthPaper paper : kPapers) {
        for (const PaperSize size : kSizes) {
            EXPECT_TRUE(paperPdf(paper, crowdedContent(), size) == paperPdf(paper, crowdedContent(), size));
            different.insert(paperPdf(paper, crowdedContent(), size));
        }
    }
    EXPECT_EQ(different.size(), kPapers.size() * kSizes.size());
}

TEST(HealthPapers, TheIntakeSaysAllQuestionsAnswersAndTheOutcome)
{
    HealthPaperContent content = calmContent();
    content.intake.answerTo(HealthQuestion::JointBoneBack) = {true, {clients::HealthMark::Knee}, "stairs, since spring"};
    content.intake.answerTo(HealthQuestion::Smoking) = {};
    content.intake.resting = {64, 122, 78};
    content.outcome = clients::outcomeOf(content.intake, {});
    const QString text = wordsOf(HealthPaper::Intake, content);
    expectSaid(text, {"Health intake", "Tove Aldane", "14 May 1991", "Harbour Strength", "Ines", "24 Nov 2026", "Yes.", "Knee. stairs, since spring", "Not answered yet.",
                      "heart rate 64 a minute, blood pressure 122/78", "Not finished", "Still open: 11.", "A recommendation, no diagnosis.", "physicians and licensed professionals come first",
                      "Riebe et al. 2015", "Read and agreed: client"});
    const QString laid = laidOut(healthSheets(HealthPaper::Intake, content, PaperSize::A4));
    for (int i = 0; i < clients::kHealthQuestionCount; ++i) {
        const QString asked = common::questionText(static_cast<HealthQuestion>(i));
        EXPECT_TRUE(laid.contains(QStringLiteral(" %1. %2").arg(i + 1).arg(asked.left(24)))) << i;
    }
    EXPECT_EQ(text.count(kNo), clients::kHealthQuestionCount - 1) << "ten questions and how active the client is";
}

TEST(HealthPapers, TheConsentSaysWhatIsKeptAndDefersToPhysicians)
{
    const QString text = wordsOf(HealthPaper::Consent, calmContent());
    expectSaid(text, {"Consent", "Harbour Strength keeps your answers about health", "take this consent back", "no medical advice and makes no diagnosis",
                      "a physician or another licensed professional says comes first", "I agree that my health data is kept", "call the emergency number", "Tove Aldane", "Coach: Ines"});
    EXPECT_FALSE(text.contains(QStringLiteral("Guardian")));
    EXPECT_FALSE(text.contains(QStringLiteral("Not answered yet"))) << "it can be signed before anything was asked";
}

TEST(HealthPapers, AGuardianSignsForAMinorAlone)
{
    HealthPaperContent content = calmContent();
    for (const HealthPaper paper : {HealthPaper::Consent, HealthPaper::Intake}) {
        content.client.birthDate = base::Date::fromYmd(2008, 11, 24);
        EXPECT_FALSE(wordsOf(paper, content).contains(QStringLiteral("Guardian"))) << "18 today";
        content.client.birthDate = base::Date::fromYmd(2008, 11, 25);
        content.profile.guardian.clear();
        EXPECT_TRUE(wordsOf(paper, content).contains(QStringLiteral("Guardian"))) << "18 tomorrow";
        content.profile.guardian = "Ada Aldane";
        EXPECT_TRUE(wordsOf(paper, content).contains(QStringLiteral("Guardian: Ada Aldane")));
    }
}

TEST(HealthPapers, TheLetterSaysTheYesesAndAsksForTheDoctorsView)
{
    HealthPaperContent content = calmContent();
    content.intake.answerTo(HealthQuestion::ChestPain) = {true, {clients::HealthMark::ChestPainOnEffort}, "uphill"};
    content.intake.answerTo(HealthQuestion::Smoking) = {true, {}, "ten a day"};
    content.outcome = clients::outcomeOf(content.intake, {});
    const QString text = wordsOf(HealthPaper::DoctorLetter, content);
    expectSaid(text, {"To the doctor of Tove Aldane,", "Chest pain on effort. uphill", "ten a day", "no diagnosis", "What you say comes first", "Nothing speaks against", "Limits", "Not at present.",
                      "Valid until", "Doctor, stamp", "With thanks, Ines, Harbour Strength"});
    EXPECT_TRUE(text.contains(common::outcomeReason(content.outcome))) << text.toStdString();
    EXPECT_FALSE(text.contains(kNo)) << "what was answered with a no is nobody else's";
    EXPECT_EQ(healthSheets(HealthPaper::DoctorLetter, content, PaperSize::A4).size(), 1U);
}

TEST(HealthPapers, EveryPaperHasLinesToSignOn)
{
    for (const HealthPaper paper : kPapers) {
        std::size_t lines = 0;
        for (const Sheet& sheet : healthSheets(paper, calmContent(), PaperSize::A4)) {
            lines += sheet.rules.size() - 1;  // one is below the head
        }
        EXPECT_EQ(lines, paper == HealthPaper::Intake ? 2U : 4U) << titleOf(paper).toStdString();
    }
}

}  // namespace chalk::ui::print
