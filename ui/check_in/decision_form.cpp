#include "ui/check_in/decision_form.h"

#include "ui/check_in/choice_row.h"
#include "ui/check_in/form_facts.h"
#include "ui/common/action_button.h"
#include "ui/common/banner.h"
#include "ui/common/check_in_words.h"
#include "ui/common/formats.h"
#include "ui/common/segmented_choice.h"
#include "ui/decisions/coach_editor.h"

#include <QLabel>
#include <QPlainTextEdit>
#include <QStackedLayout>

#include <algorithm>
#include <array>

namespace chalk::ui::check_in {

namespace {

using checkin::Choice;
using checkin::ChoiceKind;

constexpr std::array kReviewWeeks{1, 2, 4};

}  // namespace

DecisionForm::DecisionForm(const common::Look& look, const lifts::Catalogue& catalogue, QWidget* parent)
    : Panel(look, parent), m_look(look), m_catalogue(catalogue)
{
    build();
    setPage(nullptr, 0, {});
}

DecisionForm::~DecisionForm() = default;

void DecisionForm::setPage(const CheckInCase* page, std::size_t lift, base::Date day)
{
    m_page = page;
    m_lift = lift;
    const base::ClientId client = page == nullptr ? base::ClientId() : page->evidence.client;
    const base::LiftId liftId = this->lift() == nullptr ? base::LiftId() : this->lift()->lift;
    const bool isSame = page != nullptr && client == m_client && liftId == m_liftId && day == m_day;
    m_client = client;
    m_liftId = liftId;
    m_day = day;
    if (!isSame) {
        closeEditor();
        m_edited.clear();
        m_choice.reset();
        m_answer->setChosen(-1);
        m_weeks->setChosen(0);
        m_note->clear();
        setFault({});
        for (std::size_t i = 0; i < kReviewWeeks.size(); ++i) {
            if (page != nullptr && page->evidence.nextReview == day + 7 * kReviewWeeks[i]) {
                m_weeks->setChosen(static_cast<int>(i));
            }
        }
        takeSuggestion();
    }
    showFinding();
    showForecast();
    showChoices();
    review();
}

const checkin::LiftEvidence* DecisionForm::lift() const
{
    return m_page != nullptr && m_lift < m_page->evidence.lifts.size() ? &m_page->evidence.lifts[m_lift] : nullptr;
}

void DecisionForm::takeSuggestion()
{
    if (lift() == nullptr) {
        return;
    }
    const auto& choices = lift()->choices;
    const auto suggested = std::ranges::find(choices, true, &Choice::isSuggested);
    if (suggested != choices.end()) {
        m_choice = static_cast<std::size_t>(suggested - choices.begin());
    }
}

void DecisionForm::choose(std::size_t choice)
{
    if (lift() == nullptr || choice >= lift()->choices.size() || isEditing()) {
        return;
    }
    const bool isAgain = m_choice == choice;
    m_choice = choice;
    showChoices();
    review();
    const Choice& made = lift()->choices[choice];
    const bool isEdited = made.kind == ChoiceKind::ByHand || made.kind == ChoiceKind::Swap;
    if (isEdited && (isAgain || (!made.event && !m_edited.contains(choice)))) {
        Q_EMIT editorAsked(made.kind);
    }
    Q_EMIT changed();
}

std::optional<Choice> DecisionForm::chosen() const
{
    if (lift() == nullptr || !m_choice || *m_choice >= lift()->choices.size()) {
        return std::nullopt;
    }
    Choice choice = lift()->choices[*m_choice];
    if (const auto edited = m_edited.find(*m_choice); edited != m_edited.end()) {
        choice.event = edited->second.event;
        choice.next.reset();
        if (const auto* swap = std::get_if<progression::Swap>(&edited->second.event)) {
            choice.exerciseKey = swap->exerciseKey;
        }
    }
    return choice;
}

bool DecisionForm::isVariationAsked() const
{
    const auto choice = chosen();
    return m_page != nullptr && lift() != nullptr && ((choice && choice->kind == ChoiceKind::Swap) || isSwappedSinceLastTime(*m_page, m_liftId));
}

QString DecisionForm::missingText() const
{
    const auto choice = chosen();
    if (!choice) {
        const bool isNoted = lift() == nullptr && !m_note->toPlainText().trimmed().isEmpty();
        return isNoted ? QString() : lift() == nullptr ? tr("Without a lift a note is what is decided.") : tr("Choose what happens next.");
    }
    if (choice->kind == ChoiceKind::ByHand && !choice->event) {
        return tr("Set the numbers first.");
    }
    if (choice->kind == ChoiceKind::Swap && !choice->event) {
        return tr("Choose the other exercise first.");
    }
    return isVariationAsked() && m_answer->chosen() < 0 ? tr("Say first whether it is the same movement.") : QString();
}

std::optional<progression::EventBody> DecisionForm::eventOf(const Choice& choice, const QString& note) const
{
    auto event = choice.event;
    if (event) {
        if (auto* set = std::get_if<progression::CoachSet>(&*event); set != nullptr && set->reason.empty()) {
            set->reason = tr("Check-in: %1. %2").arg(common::choiceTitle(choice), note).trimmed().toStdString();
        }
    }
    return event;
}

std::optional<DecisionDraft> DecisionForm::draft() const
{
    const auto choice = chosen();
    if (m_page == nullptr || !missingText().isEmpty() || isEditing()) {
        return std::nullopt;
    }
    QString note = m_note->toPlainText().trimmed();
    if (!choice) {
        return DecisionDraft{ChoiceKind::Hold, {}, {}, note.toStdString(), nextReview(), notedWords(m_page->evidence)};
    }
    if (isVariationAsked()) {
        note = QStringLiteral("%1 %2").arg(variationNote(m_answer->chosen() == 0), note).trimmed();
    }
    return DecisionDraft{choice->kind, m_liftId, eventOf(*choice, note), note.toStdString(), nextReview(), decidedWords(m_page->evidence, *lift(), choice->kind)};
}

base::Date DecisionForm::nextReview() const
{
    return m_day + 7 * kReviewWeeks[static_cast<std::size_t>(std::max(0, m_weeks->chosen()))];
}

void DecisionForm::answerVariation(bool isSameMovement)
{
    m_answer->setChosen(isSameMovement ? 0 : 1);
    review();
}

void DecisionForm::setNote(const QString& note)
{
    m_note->setPlainText(note);
}

void DecisionForm::setFault(const QString& fault)
{
    m_fault->setVisible(!fault.isEmpty());
    m_fault->setMessage({common::Signal::Warn, QStringLiteral("warning"), fault.isEmpty() ? QString() : tr("Not written."), fault});
}

void DecisionForm::openEditor(decisions::CoachEditor* editor)
{
    closeEditor();
    m_editor = editor;
    m_editorHost->addWidget(editor);
    m_stack->setCurrentIndex(1);
    connect(editor, &decisions::CoachEditor::cancelled, this, &DecisionForm::closeEditor);
    editor->firstField()->setFocus(Qt::OtherFocusReason);
    review();
}

bool DecisionForm::isEditing() const
{
    return m_editor != nullptr;
}

void DecisionForm::closeEditor()
{
    if (m_editor == nullptr) {
        return;
    }
    m_editor->hide();
    m_editor->deleteLater();
    m_editor = nullptr;
    m_stack->setCurrentIndex(0);
    if (m_choice && *m_choice < m_rows.size()) {
        m_rows[*m_choice]->setFocus(Qt::OtherFocusReason);
    }
    review();
}

void DecisionForm::setEdited(const progression::EventBody& event, const QString& text)
{
    if (!m_choice) {
        return;
    }
    m_edited.insert_or_assign(*m_choice, Edited{event, text});
    showChoices();
    review();
    Q_EMIT changed();
}

void DecisionForm::review()
{
    m_question->setVisible(isVariationAsked());
    m_reviewDay->setText(m_page == nullptr ? QString() : common::longDayText(nextReview()));
    const QString missing = m_page == nullptr ? QString() : missingText();
    m_missing->setText(missing);
    m_missing->setVisible(!missing.isEmpty());
    m_decide->setEnabled(draft().has_value());
    m_skip->setEnabled(m_page != nullptr);
}

}  // namespace chalk::ui::check_in
