#include "ui/onboarding/health_step.h"

#include "core/exchange/health_intake_json.h"
#include "core/store/client_writer.h"
#include "core/store/studio_settings.h"
#include "ui/common/action_button.h"
#include "ui/common/formats.h"
#include "ui/common/health_words.h"
#include "ui/common/key_cap.h"
#include "ui/common/look.h"
#include "ui/common/panel.h"
#include "ui/common/plain_typing.h"
#include "ui/common/scroll_column.h"
#include "ui/common/settling.h"
#include "ui/onboarding/caution_section.h"
#include "ui/onboarding/health_fields.h"
#include "ui/onboarding/letter_editor.h"
#include "ui/onboarding/onboarding_case.h"
#include "ui/onboarding/outcome_panel.h"
#include "ui/onboarding/paper_content.h"
#include "ui/onboarding/resting_limits.h"
#include "ui/onboarding/typing_pause.h"
#include "ui/print/paper_dialog.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QScrollArea>
#include <QTimer>
#include <QVBoxLayout>

namespace chalk::ui::onboarding {

namespace {

constexpr int kReminderDays = 7;

}  // namespace

HealthStep::HealthStep(const OnboardingServices& services, QWidget* parent)
    : OnboardingStep(parent),
      m_services(services),
      m_panel(new common::Panel(services.look, this)),
      m_scroll(new QScrollArea(m_panel)),
      m_fields(new HealthFields(services.look)),
      m_restingLimits(new RestingLimitsSection(services)),
      m_cautions(new CautionSection(services)),
      m_outcome(new OutcomePanel(services.look, this)),
      m_letter(new LetterEditor(services.look, services.dialogs, m_outcome)),
      m_printLetter(new common::ActionButton(services.look, tr("Print a letter for the doctor"), m_outcome)),
      m_record(new common::ActionButton(services.look, tr("Record the answer"), m_outcome)),
      m_gone(new common::ActionButton(services.look, tr("Letter went today"), m_outcome)),
      m_remind(new common::ActionButton(services.look, tr("Remind me in a week"), m_outcome)),
      m_pause(typingPause(this))
{
    setFocusPolicy(Qt::StrongFocus);
    setAccessibleName(tr("Health intake"));
    build();
    buildActions();
    connect(m_pause, &QTimer::timeout, this, &HealthStep::save);
    connect(m_fields, &HealthFields::typed, m_pause, qOverload<>(&QTimer::start));
    connect(m_fields, &HealthFields::answered, this, &HealthStep::save);
    connect(m_fields, &HealthFields::seen, this, [this](QWidget* part) { m_scroll->ensureWidgetVisible(part, 0, 60); });
    connect(m_restingLimits, &RestingLimitsSection::saved, this, &OnboardingStep::saved);
    connect(m_restingLimits, &RestingLimitsSection::refused, this, &OnboardingStep::refused);
    connect(m_cautions, &CautionSection::saved, this, &OnboardingStep::saved);
    connect(m_cautions, &CautionSection::refused, this, &OnboardingStep::refused);
}

void HealthStep::build()
{
    m_panel->setTitle(tr("Health intake"), tr("12 questions, read aloud together"));
    auto* keys = new QWidget(m_panel);
    auto* hint = new QHBoxLayout(keys);
    hint->setContentsMargins(0, 0, 0, 0);
    hint->setSpacing(4);
    for (const QString& key : {QStringLiteral("Y"), QStringLiteral("N")}) {
        hint->addWidget(new common::KeyCap(m_services.look, {key}, keys));
    }
    auto* word = new QLabel(tr("answer"), keys);
    word->setProperty("role", QStringLiteral("muted"));
    hint->addWidget(word);
    m_panel->addHeadTool(keys);
    const auto addPaper = [this](const QString& text, print::HealthPaper paper) {
        auto* button = new common::ActionButton(m_services.look, text, m_panel);
        button->setButtonSize(common::ButtonSize::Small);
        button->setIconName(QStringLiteral("print"));
        connect(button, &QPushButton::clicked, this, [this, paper] { showPaper(paper); });
        m_panel->addHeadTool(button);
        return button;
    };
    addPaper(tr("Consent"), print::HealthPaper::Consent);
    m_intake = addPaper(tr("Intake"), print::HealthPaper::Intake);
    auto* contents = new QWidget;
    auto* column = new QVBoxLayout(contents);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(m_fields);
    column->addWidget(m_restingLimits);
    column->addWidget(m_cautions);
    column->addStretch(1);
    common::holdColumn(*m_scroll, contents);
    m_panel->body()->addWidget(m_scroll);
    layOut(m_services.look, m_panel, m_outcome);
}

void HealthStep::buildActions()
{
    m_printLetter->setKind(common::ButtonKind::Primary);
    m_printLetter->setIconName(QStringLiteral("print"));
    m_outcome->body()->insertWidget(2, m_letter);
    m_outcome->foot()->addWidget(m_printLetter);
    auto* row = new QHBoxLayout;
    row->setSpacing(8);
    row->addWidget(m_record, 1);
    row->addWidget(m_gone, 1);
    m_outcome->foot()->addLayout(row);
    m_outcome->foot()->addWidget(m_remind);
    m_letter->hide();
    connect(m_remind, &QPushButton::clicked, this, &HealthStep::remindInAWeek);
    connect(m_printLetter, &QPushButton::clicked, this, [this] { showPaper(print::HealthPaper::DoctorLetter); });
    connect(m_record, &QPushButton::clicked, this, [this] { showEditor(true); });
    connect(m_gone, &QPushButton::clicked, this, &HealthStep::noteLetterGone);
    connect(m_letter, &LetterEditor::letterGiven, this, &HealthStep::recordLetter);
    connect(m_letter, &LetterEditor::left, this, [this] { showEditor(false); });
}

void HealthStep::setCase(const OnboardingCase& onboarding)
{
    if (onboarding.client.id != m_client.id) {
        m_pause->stop();
        m_fields->clear();
        showEditor(false);
    }
    m_client = onboarding.client;
    m_clearance = onboarding.clearance;
    m_today = onboarding.today;
    m_kept = onboarding.intake.value_or(clients::HealthIntake());
    m_limits = store::StudioSettings(m_services.database).restingLimits().value_or(clients::RestingLimits());
    m_canKeep = onboarding.canKeepHealth();
    m_fields->setEnabled(m_canKeep);
    m_cautions->setEnabled(m_canKeep);
    m_intake->setEnabled(m_canKeep);
    m_fields->setIntake(m_kept, common::qstring(m_client.name), m_today);
    m_fields->review(m_limits);
    m_restingLimits->setLimits(m_limits);
    m_cautions->setCase(onboarding);
    showOutcome();
}

void HealthStep::showOutcome()
{
    const clients::HealthOutcome outcome = clients::outcomeOf(m_kept, m_limits);
    m_outcome->setOutcome(outcome, m_clearance, m_today);
    const bool isDoctorAsked = this->isDoctorAsked() || m_clearance.state == clients::ClearanceState::Granted;
    const bool wasInFoot = isVisible() && focusWidget() != nullptr && m_outcome->isAncestorOf(focusWidget()) && focusWidget()->hasFocus();
    const bool isAwaited = isDoctorAsked && clients::isBlocked(m_clearance, m_today);
    m_printLetter->setVisible(isDoctorAsked && m_canKeep);
    m_record->setVisible(isDoctorAsked);
    m_gone->setVisible(isAwaited);
    m_remind->setVisible(isAwaited && m_clearance.state != clients::ClearanceState::Granted);
    m_remind->setText(m_clearance.remindOn ? tr("Reminder on %1").arg(common::dayText(*m_clearance.remindOn)) : tr("Remind me in a week"));
    m_remind->setEnabled(m_clearance.remindOn != m_today + kReminderDays);
    m_gone->setText(m_clearance.askedOn ? tr("Went on %1").arg(common::shortDayText(*m_clearance.askedOn)) : tr("Letter went today"));
    m_gone->setEnabled(!m_clearance.askedOn);
    if (wasInFoot && m_letter->isHidden()) {
        takeFocus();  // the button that had it may be gone
    }
}

void HealthStep::takeFocus()
{
    if (m_canKeep) {
        m_fields->takeFocus();
    } else {
        setFocus(Qt::OtherFocusReason);
    }
}

bool HealthStep::event(QEvent* event)
{
    // Where a question is not in focus its letters do nothing: none of them is a key of the window here.
    if (event->type() == QEvent::ShortcutOverride && common::isPlainTyping(*static_cast<QKeyEvent*>(event))) {
        event->accept();
        return true;
    }
    return OnboardingStep::event(event);
}

bool HealthStep::closeEarlierIntake(clients::HealthIntake& next)
{
    store::ClientForms forms(m_services.database);
    const auto latest = forms.latest(m_client.id, store::FormKind::HealthIntake);
    if (!latest || !*latest || (*latest)->isFinished || (*latest)->day == m_today || !clients::outcomeOf(m_kept, m_limits).isComplete()) {
        return true;
    }
    const auto closed = store::ClientWriter(m_services.database).finishForm(m_client.id, store::FormKind::HealthIntake);
    if (!closed) {
        fail(closed.error());
    } else if (next.agreedOn == m_kept.agreedOn) {
        next.agreedOn.reset();
    }
    return closed.has_value();
}

bool HealthStep::save()
{
    m_pause->stop();
    clients::HealthIntake next = m_fields->intake();
    m_fields->review(m_limits);
    if (next == m_kept || m_client.id.isNone() || !m_canKeep) {
        return true;
    }
    if (!closeEarlierIntake(next)) {
        return false;
    }
    const auto written = common::settled(m_services.dialogs, m_services.database, exchange::toJson(m_kept), [&](const common::Settling& settling) {
        next = settling.merged ? exchange::readHealthIntake(*settling.merged, {}).value_or(next) : next;
        const QString reason = common::outcomeReason(clients::outcomeOf(next, m_limits));
        return store::ClientWriter(m_services.database).saveIntake(m_client.id, next, m_limits, reason.toStdString(), m_today, settling.seen);
    });
    if (!written) {
        fail(written.error());
        return false;
    }
    m_kept = next;
    Q_EMIT saved();
    return true;
}

bool HealthStep::keep()
{
    return save();
}

void HealthStep::fail(const store::StoreError& error)
{
    tell(error);
}

void HealthStep::showEditor(bool isOpen)
{
    m_letter->setVisible(isOpen);
    if (isOpen) {
        m_letter->begin(m_today);
    }
}

void HealthStep::recordLetter(const store::Letter& letter)
{
    const auto written = store::ClientWriter(m_services.database).recordLetter(m_client.id, letter, m_today);
    if (!written) {
        return fail(written.error());
    }
    showEditor(false);
    Q_EMIT saved();
}

void HealthStep::noteLetterGone()
{
    const auto written = store::ClientWriter(m_services.database).askForLetter(m_client.id, m_today);
    if (!written) {
        return fail(written.error());
    }
    Q_EMIT saved();
}

void HealthStep::remindInAWeek()
{
    const auto written = store::ClientWriter(m_services.database).remindOfLetter(m_client.id, m_today + kReminderDays);
    if (!written) {
        return fail(written.error());
    }
    Q_EMIT saved();
}

std::vector<shell::KeyHint> HealthStep::keyHints() const
{
    if (!m_canKeep) {
        return {{QStringLiteral("Ctrl+P"), tr("Consent page")}};
    }
    return {{QStringLiteral("Y N"), tr("Answer")}, {QStringLiteral("↑ ↓"), tr("Question")}, {QStringLiteral("Ctrl+P"), isDoctorAsked() ? tr("Letter") : tr("Intake")}};
}

bool HealthStep::canPrint() const
{
    return !m_client.id.isNone();
}

void HealthStep::print()
{
    if (!m_canKeep) {
        return showPaper(print::HealthPaper::Consent);
    }
    showPaper(isDoctorAsked() ? print::HealthPaper::DoctorLetter : print::HealthPaper::Intake);
}

void HealthStep::showPaper(print::HealthPaper paper)
{
    if (!save()) {
        return;
    }
    const auto content = readPaperContent(m_services.database, m_client.id, m_today);
    if (!content) {
        return fail(content.error());
    }
    const QDate day = QDate(1970, 1, 1).addDays(m_today.daysSince1970());
    auto* dialog = new print::PaperDialog({m_services.look, m_services.dialogs, print::CardDialogServices::standardPrinterChoice()}, print::titleOf(paper),
                                          print::paperFileName(paper, *content), [paper, content = *content](print::PaperSize size) { return print::healthSheets(paper, content, size); }, day, window());
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    if (paper == print::HealthPaper::DoctorLetter && !m_clearance.askedOn) {
        connect(dialog, &print::PaperDialog::paperMade, this, &HealthStep::noteLetterGone);
    }
    dialog->open();
}

bool HealthStep::isDoctorAsked() const
{
    return onboarding::isDoctorAsked(m_clearance, clients::outcomeOf(m_kept, m_limits));
}

bool HealthStep::closeOrClear()
{
    if (!m_letter->isHidden()) {
        showEditor(false);
        return true;
    }
    return m_restingLimits->closeEditor() || m_cautions->closeEditor();
}

}  // namespace chalk::ui::onboarding
