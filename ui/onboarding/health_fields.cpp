#include "ui/onboarding/health_fields.h"

#include "ui/common/day_entry.h"
#include "ui/common/formats.h"
#include "ui/common/health_words.h"
#include "ui/common/look.h"
#include "ui/common/plain_typing.h"
#include "ui/common/segmented_choice.h"
#include "ui/onboarding/field_column.h"
#include "ui/onboarding/measure_words.h"
#include "ui/onboarding/question_row.h"

#include <QCheckBox>
#include <QKeyEvent>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QSignalBlocker>
#include <QToolButton>
#include <QVBoxLayout>

namespace chalk::ui::onboarding {

namespace {

std::optional<int> wholeNumberIn(const QString& text)
{
    bool isNumber = false;
    const int number = text.trimmed().toInt(&isNumber);
    return isNumber ? std::optional(number) : std::nullopt;
}

}  // namespace

HealthFields::HealthFields(const common::Look& look, QWidget* parent) : QWidget(parent), m_more(new FieldColumn(look, this))
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    for (int i = 0; i < clients::kHealthQuestionCount; ++i) {
        auto* row = new QuestionRow(look, static_cast<clients::HealthQuestion>(i), this);
        connect(row, &QuestionRow::typed, this, &HealthFields::typed);
        connect(row, &QuestionRow::answered, this, &HealthFields::answered);
        connect(row, &QuestionRow::moveAsked, this, [this, i](int by) { move(static_cast<std::size_t>(i), by); });
        connect(row, &QuestionRow::nextAnswered, this, [this, i](bool isYes) { answerNext(static_cast<std::size_t>(i), isYes); });
        column->addWidget(row);
        m_rows.push_back(row);
    }
    column->addWidget(m_more);
    addActivity();
}

void HealthFields::addActivity()
{
    m_active = new common::SegmentedChoice(tr("Active so far"), {{tr("No")}, {tr("Yes")}}, m_more);
    m_more->addField(tr("Active so far"), m_active);
    m_more->setNote(m_active, tr("Half an hour or more of at least moderate exercise, three days a week, for the last three months."));
    m_intended = new common::SegmentedChoice(tr("Will train"), {{common::intensityName(clients::Intensity::Light)},
                                                                {common::intensityName(clients::Intensity::Moderate)},
                                                                {common::intensityName(clients::Intensity::Vigorous)}},
                                             m_more);
    m_more->addField(tr("Will train"), m_intended);
    m_heartRate = new QLineEdit(m_more);
    m_heartRate->setPlaceholderText(tr("Optional, beats a minute at rest"));
    m_more->addField(tr("Resting heart rate"), m_heartRate);
    m_pressure = new QLineEdit(m_more);
    m_pressure->setPlaceholderText(tr("Optional, like 128/82"));
    m_more->addField(tr("Blood pressure"), m_pressure);
    m_note = new QPlainTextEdit(m_more);
    m_note->setTabChangesFocus(true);
    m_note->setFixedHeight(m_note->fontMetrics().lineSpacing() * 2 + 22);
    m_more->addField(tr("Anything else your coach should know?"), m_note);
    m_agreed = new QCheckBox(tr("Read and agreed"), m_more);
    m_more->addField(tr("Client"), m_agreed);
    for (common::SegmentedChoice* choice : {m_active, m_intended}) {
        connect(choice, &common::SegmentedChoice::choiceMade, this, &HealthFields::answered);
    }
    for (QLineEdit* line : {m_heartRate, m_pressure}) {
        connect(line, &QLineEdit::textEdited, this, &HealthFields::typed);
        connect(line, &QLineEdit::editingFinished, this, &HealthFields::answered);
    }
    connect(m_note, &QPlainTextEdit::textChanged, this, &HealthFields::typed);
    connect(m_agreed, &QCheckBox::clicked, this, [this](bool isOn) {
        m_agreedOn = isOn ? std::optional(m_today) : std::nullopt;
        Q_EMIT answered();
    });
}

void HealthFields::setIntake(const clients::HealthIntake& intake, const QString& name, base::Date today)
{
    m_today = today;
    for (QuestionRow* row : m_rows) {
        row->setAnswer(intake.answerTo(row->question()));
    }
    m_active->setChosen(!intake.isRegularExerciser ? -1 : *intake.isRegularExerciser ? 1 : 0);
    m_intended->setChosen(static_cast<int>(intake.intended));
    const clients::RestingReading shown = this->intake().resting;
    if (!m_heartRate->hasFocus() && shown.heartRate != intake.resting.heartRate) {
        m_heartRate->setText(intake.resting.heartRate ? QString::number(*intake.resting.heartRate) : QString());
    }
    if (!m_pressure->hasFocus() && (shown.systolic != intake.resting.systolic || shown.diastolic != intake.resting.diastolic)) {
        m_pressure->setText(intake.resting.systolic && intake.resting.diastolic ? QStringLiteral("%1/%2").arg(*intake.resting.systolic).arg(*intake.resting.diastolic) : QString());
    }
    if (!m_note->hasFocus() && m_note->toPlainText() != common::qstring(intake.note)) {
        const QSignalBlocker quiet(m_note);
        m_note->setPlainText(common::qstring(intake.note));
    }
    m_agreedOn = intake.agreedOn;
    m_agreed->setChecked(m_agreedOn.has_value());
    m_more->setNote(m_agreed, m_agreedOn ? tr("Read and agreed by %1, %2.").arg(name, common::entryOfDay(*m_agreedOn)) : QString());
}

void HealthFields::clear()
{
    m_heartRate->clear();
    m_pressure->clear();
}

clients::RestingReading HealthFields::reading() const
{
    clients::RestingReading reading;
    reading.heartRate = wholeNumberIn(m_heartRate->text());
    if (const auto pressure = pressureOf(m_pressure->text())) {
        reading.systolic = pressure->systolic;
        reading.diastolic = pressure->diastolic;
    }
    return reading;
}

clients::HealthIntake HealthFields::intake() const
{
    clients::HealthIntake intake;
    for (const QuestionRow* row : m_rows) {
        intake.answerTo(row->question()) = row->answer();
    }
    if (m_active->chosen() >= 0) {
        intake.isRegularExerciser = m_active->chosen() == 1;
    }
    intake.intended = static_cast<clients::Intensity>(std::max(0, m_intended->chosen()));
    intake.resting = reading();
    if (clients::faultyFieldOf({intake.resting.heartRate, {}, {}})) {
        intake.resting.heartRate.reset();
    }
    if (clients::faultyFieldOf({{}, intake.resting.systolic, intake.resting.diastolic})) {
        intake.resting.systolic.reset();
        intake.resting.diastolic.reset();
    }
    intake.note = m_note->toPlainText().trimmed().toStdString();
    intake.agreedOn = m_agreedOn;
    return intake;
}

void HealthFields::review(const clients::RestingLimits& limits)
{
    const clients::RestingReading typedReading = reading();
    const bool isRateFaulty = !m_heartRate->text().trimmed().isEmpty() && (!typedReading.heartRate || clients::faultyFieldOf({typedReading.heartRate, {}, {}}));
    const bool isPressureFaulty =
        !m_pressure->text().trimmed().isEmpty() && (!typedReading.systolic || clients::faultyFieldOf({{}, typedReading.systolic, typedReading.diastolic}));
    const clients::RestingWarning warning = clients::warningFor(intake().resting, limits);
    m_more->setFault(m_heartRate, isRateFaulty && !m_heartRate->hasFocus() ? tr("Beats a minute, a whole number from 20 to 250.")
                                  : warning.isHeartRateHigh              ? tr("Above the studio’s limit of %1. Sources differ about it.").arg(limits.heartRate)
                                                                         : QString());
    m_more->setFault(m_pressure, isPressureFaulty && !m_pressure->hasFocus() ? tr("Both numbers, the larger first, like 128/82.")
                                 : warning.isSystolicHigh || warning.isDiastolicHigh
                                     ? tr("Above the studio’s limit of %1/%2. Sources differ about it.").arg(limits.systolic).arg(limits.diastolic)
                                     : QString());
}

void HealthFields::move(std::size_t from, int by)
{
    const auto to = static_cast<std::ptrdiff_t>(from) + by;
    if (to >= 0 && to < static_cast<std::ptrdiff_t>(m_rows.size())) {
        m_rows[static_cast<std::size_t>(to)]->takeFocus();
        Q_EMIT seen(m_rows[static_cast<std::size_t>(to)]);
    } else if (to > 0) {
        m_active->findChildren<QToolButton*>().front()->setFocus(Qt::OtherFocusReason);
        Q_EMIT seen(m_more);
        Q_EMIT endReached();
    }
}

void HealthFields::answerNext(std::size_t from, bool isYes)
{
    move(from, 1);
    if (from + 1 < m_rows.size()) {
        m_rows[from + 1]->answerByKey(isYes);
    } else {
        answerActivity(isYes);
    }
}

void HealthFields::answerActivity(bool isYes)
{
    m_active->setChosen(isYes ? 1 : 0);
    m_agreed->setFocus(Qt::OtherFocusReason);
    Q_EMIT answered();
}

bool HealthFields::isActivityAsked() const
{
    return focusWidget() != nullptr && m_active->isAncestorOf(focusWidget());
}

bool HealthFields::event(QEvent* event)
{
    // The letters that answered the questions answer this one too, and are no keys of the window.
    if (event->type() == QEvent::ShortcutOverride && isActivityAsked() && common::isPlainTyping(*static_cast<QKeyEvent*>(event))) {
        event->accept();
        return true;
    }
    return QWidget::event(event);
}

void HealthFields::keyPressEvent(QKeyEvent* event)
{
    const bool isAnswer = event->key() == Qt::Key_Y || event->key() == Qt::Key_N;
    if (!isAnswer || !isActivityAsked()) {
        return QWidget::keyPressEvent(event);
    }
    answerActivity(event->key() == Qt::Key_Y);
}

void HealthFields::takeFocus()
{
    for (QuestionRow* row : m_rows) {
        if (!row->answer().isYes) {
            row->takeFocus();
            Q_EMIT seen(row);
            return;
        }
    }
    if (m_active->chosen() < 0) {
        m_active->findChildren<QToolButton*>().front()->setFocus(Qt::OtherFocusReason);
        Q_EMIT seen(m_more);
    } else {
        m_rows.front()->takeFocus();
    }
}

}  // namespace chalk::ui::onboarding
