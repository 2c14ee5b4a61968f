#include "ui/floor/maximum_test_dialog.h"

#include "ui/common/action_button.h"
#include "ui/common/formats.h"
#include "ui/common/look.h"
#include "ui/floor/maximum_test_start.h"
#include "ui/floor/maximum_test_step.h"
#include "ui/floor/maximum_test_words.h"

#include <QLabel>
#include <QLineEdit>
#include <QStackedWidget>
#include <QVBoxLayout>

namespace chalk::ui::floor {

namespace {

constexpr double kTestWidth = 600;
constexpr double kTestHeight = 540;
constexpr int kTestEdge = 20;
constexpr int kMostOfNote = 200;  ///< characters

QLabel* testLabel(const QString& text, const char* role, QVBoxLayout* column)
{
    auto* label = new QLabel(text, column->parentWidget());
    label->setProperty("role", QLatin1String(role));
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    column->addWidget(label);
    return label;
}

}  // namespace

MaximumTestDialog::MaximumTestDialog(const common::Look& look, TestedLift lift, Keep keep, RestServices rests, QWidget* parent)
    : QDialog(parent), m_look(look), m_lift(std::move(lift)), m_keep(std::move(keep)), m_pages(new QStackedWidget(this))
{
    setWindowTitle(tr("Test a maximum: %1, %2").arg(common::qstring(m_lift.exercise.name), common::qstring(m_lift.clientName)));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(kTestEdge, kTestEdge, kTestEdge, kTestEdge);
    column->addWidget(m_pages);
    m_start = new MaximumTestStart(m_look, m_lift, m_pages);
    m_step = new MaximumTestStep(m_look, m_lift, std::move(rests), m_pages);
    m_pages->addWidget(m_start);
    m_pages->addWidget(m_step);
    buildQuestion();
    buildResult();
    connect(m_start, &MaximumTestStart::begun, this, &MaximumTestDialog::begin);
    connect(m_step, &MaximumTestStep::done, this, &MaximumTestDialog::take);
    connect(m_step, &MaximumTestStep::stopAsked, this, [this] {
        m_run->stop();
        finish();
    });
    resize(qRound(look.theme().scaled(kTestWidth)), qRound(look.theme().scaled(kTestHeight)));
}

QVBoxLayout* MaximumTestDialog::addPage(QWidget*& page)
{
    page = new QWidget(m_pages);
    m_pages->addWidget(page);
    auto* column = new QVBoxLayout(page);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    return column;
}

common::ActionButton* MaximumTestDialog::addButton(const QString& text, QWidget* page, std::function<void()> act)
{
    auto* button = new common::ActionButton(m_look, text, page);
    connect(button, &QPushButton::clicked, this, std::move(act));
    return button;
}

void MaximumTestDialog::buildQuestion()
{
    auto* column = addPage(m_question);
    testLabel(tr("The test is not over. What becomes of it?"), "section", column);
    testLabel(tr("Nothing is written yet."), "", column);
    column->addStretch(1);
    auto* row = new QHBoxLayout;
    row->setSpacing(8);
    m_goOn = addButton(tr("Go on"), m_question, [this] { m_pages->setCurrentWidget(m_askedFrom); });
    m_goOn->setKind(common::ButtonKind::Primary);
    row->addWidget(m_goOn);
    row->addWidget(addButton(tr("Keep what was done"), m_question, [this] {
        m_run->stop();
        showResult();
        keep();
    }));
    row->addStretch(1);
    auto* away = addButton(tr("Throw it away"), m_question, [this] { QDialog::reject(); });
    away->setKind(common::ButtonKind::Danger);
    row->addWidget(away);
    column->addLayout(row);
}

void MaximumTestDialog::buildResult()
{
    auto* column = addPage(m_result);
    m_found = testLabel(QString(), "figure", column);
    m_ending = testLabel(QString(), "", column);
    auto* caption = testLabel(tr("Note"), "caption", column);
    m_note = new QLineEdit(m_result);
    m_note->setMaxLength(kMostOfNote);
    m_note->setAccessibleName(tr("Note on the test"));
    caption->setBuddy(m_note);
    column->addWidget(m_note);
    m_fault = testLabel(QString(), "fault", column);
    m_fault->hide();
    column->addStretch(1);
    auto* row = new QHBoxLayout;
    row->setSpacing(8);
    auto* kept = addButton(tr("Keep"), m_result, [this] { keep(); });
    kept->setKind(common::ButtonKind::Primary);
    kept->setKeyText(tr("Enter"));
    row->addWidget(kept);
    row->addStretch(1);
    row->addWidget(addButton(tr("Throw it away"), m_result, [this] { QDialog::reject(); }));
    column->addLayout(row);
    connect(m_note, &QLineEdit::returnPressed, kept, &QPushButton::click);
}

bool MaximumTestDialog::isAsking() const
{
    return m_pages->currentWidget() == m_question;
}

bool MaximumTestDialog::isAtResult() const
{
    return m_pages->currentWidget() == m_result;
}

void MaximumTestDialog::begin(TestKind kind)
{
    m_run.emplace(m_lift, kind);
    m_pages->setCurrentWidget(m_step);
    m_step->showStep(*m_run);
}

void MaximumTestDialog::take(const DoneTestSet& set)
{
    m_run->record(set);
    if (m_run->next()) {
        m_step->showStep(*m_run);
    } else {
        finish();
    }
}

void MaximumTestDialog::finish()
{
    if (m_run->done().empty()) {
        QDialog::reject();
        return;
    }
    showResult();
}

void MaximumTestDialog::showResult()
{
    m_found->setText(testResultText(m_lift, *m_run));
    m_ending->setText(testEndingText(m_lift, *m_run));
    m_pages->setCurrentWidget(m_result);
    m_note->setFocus(Qt::OtherFocusReason);
}

void MaximumTestDialog::keep()
{
    const QString refusal = m_keep(*m_run, m_note->text().simplified());
    if (refusal.isEmpty()) {
        accept();
        return;
    }
    m_fault->setText(refusal);
    m_fault->show();
}

void MaximumTestDialog::reject()
{
    if (isAsking()) {
        m_pages->setCurrentWidget(m_askedFrom);
        return;
    }
    if (!m_run || m_run->done().empty()) {
        QDialog::reject();
        return;
    }
    m_askedFrom = m_pages->currentWidget();
    m_pages->setCurrentWidget(m_question);
    m_goOn->setFocus(Qt::OtherFocusReason);
}

}  // namespace chalk::ui::floor
