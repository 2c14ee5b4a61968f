#include "ui/check_in/decision_form.h"
#include "ui/common/action_button.h"
#include "ui/common/banner.h"
#include "ui/common/scroll_column.h"
#include "ui/common/segmented_choice.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPlainTextEdit>
#include <QScrollArea>
#include <QStackedLayout>

// How the form of a decision is put together.

namespace chalk::ui::check_in {

namespace {

constexpr int kFormEdge = 16;
constexpr int kNoteHeight = 60;

QLabel* wrappedLabel(QWidget* parent, const QString& role, const QString& text = {})
{
    auto* label = new QLabel(text, parent);
    label->setProperty("role", role);
    label->setWordWrap(true);
    label->setTextFormat(Qt::PlainText);
    return label;
}

}  // namespace

void DecisionForm::build()
{
    auto* pages = new QWidget(this);
    m_stack = new QStackedLayout(pages);
    body()->addWidget(pages, 1);
    auto* area = new QScrollArea(pages);
    area->setFrameShape(QFrame::NoFrame);
    area->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    auto* contents = new QWidget(area);
    auto* outer = new QVBoxLayout(contents);
    outer->setContentsMargins(1, 1, 1, 0);
    outer->setSpacing(0);
    m_finding = new common::Banner(m_look, contents);
    outer->addWidget(m_finding);
    auto* column = new QVBoxLayout;
    column->setContentsMargins(kFormEdge, 10, kFormEdge, 10);
    column->setSpacing(8);
    outer->addLayout(column);
    m_numbers = wrappedLabel(contents, QStringLiteral("secondary"));
    column->addWidget(m_numbers);
    m_choicesTitle = wrappedLabel(contents, QStringLiteral("caption"), tr("What happens next"));
    column->addWidget(m_choicesTitle);
    m_rowsColumn = new QVBoxLayout;
    m_rowsColumn->setSpacing(6);
    column->addLayout(m_rowsColumn);
    buildQuestion(*column);
    buildReview(*column);
    m_forecastTitle = wrappedLabel(contents, QStringLiteral("caption"), tr("If all goes well"));
    column->addWidget(m_forecastTitle);
    m_forecast = wrappedLabel(contents, QStringLiteral("secondary"));
    column->addWidget(m_forecast);
    m_historyTitle = wrappedLabel(contents, QStringLiteral("caption"), tr("Decided before"));
    column->addWidget(m_historyTitle);
    m_history = wrappedLabel(contents, QStringLiteral("secondary"));
    column->addWidget(m_history);
    outer->addStretch(1);
    common::holdColumn(*area, contents);
    m_stack->addWidget(area);
    auto* host = new QWidget(pages);
    m_editorHost = new QVBoxLayout(host);
    m_editorHost->setContentsMargins(0, 0, 0, 0);
    m_stack->addWidget(host);
    buildFoot();
}

void DecisionForm::buildQuestion(QVBoxLayout& column)
{
    m_question = new QWidget(this);
    auto* box = new QVBoxLayout(m_question);
    box->setContentsMargins(0, 4, 0, 0);
    box->setSpacing(4);
    box->addWidget(wrappedLabel(m_question, QStringLiteral("strong"), tr("Same movement, other variation?")));
    m_answer = new common::SegmentedChoice(tr("Same movement, other variation?"), {{tr("Same movement")}, {tr("Another one")}}, m_question);
    m_answer->setCompact();
    connect(m_answer, &common::SegmentedChoice::choiceMade, this, [this] {
        review();
        Q_EMIT changed();
    });
    box->addWidget(m_answer, 0, Qt::AlignLeft);
    m_question->hide();
    column.addWidget(m_question);
}

void DecisionForm::buildReview(QVBoxLayout& column)
{
    column.addWidget(wrappedLabel(this, QStringLiteral("caption"), tr("Next review")));
    m_weeks = new common::SegmentedChoice(tr("Next review"), {{tr("1 week")}, {tr("2 weeks")}, {tr("4 weeks")}}, this);
    m_weeks->setCompact();
    m_weeks->setChosen(0);
    connect(m_weeks, &common::SegmentedChoice::choiceMade, this, [this] {
        review();
        Q_EMIT changed();
    });
    column.addWidget(m_weeks, 0, Qt::AlignLeft);
    m_reviewDay = wrappedLabel(this, QStringLiteral("secondary"));
    column.addWidget(m_reviewDay);
    m_note = new QPlainTextEdit(this);
    m_note->setPlaceholderText(tr("Note for the history"));
    m_note->setAccessibleName(tr("Note for the history"));
    m_note->setTabChangesFocus(true);
    m_note->setFixedHeight(kNoteHeight);
    connect(m_note, &QPlainTextEdit::textChanged, this, &DecisionForm::review);
    column.addWidget(m_note);
}

void DecisionForm::buildFoot()
{
    auto* rule = new QFrame(this);
    rule->setProperty("rule", true);
    rule->setFixedHeight(1);
    body()->addWidget(rule);
    auto* foot = new QVBoxLayout;
    foot->setContentsMargins(kFormEdge, 10, kFormEdge, 12);
    foot->setSpacing(8);
    body()->addLayout(foot);
    m_fault = new common::Banner(m_look, this);
    m_fault->hide();
    foot->addWidget(m_fault);
    m_missing = wrappedLabel(this, QStringLiteral("secondary"));
    foot->addWidget(m_missing);
    auto* row = new QHBoxLayout;
    row->setSpacing(8);
    foot->addLayout(row);
    m_skip = new common::ActionButton(m_look, tr("Skip"), this);
    connect(m_skip, &QPushButton::clicked, this, &DecisionForm::skipAsked);
    row->addWidget(m_skip);
    m_decide = new common::ActionButton(m_look, tr("Decide and next"), this);
    m_decide->setKind(common::ButtonKind::Primary);
    m_decide->setKeyText(tr("Ctrl Enter"));
    connect(m_decide, &QPushButton::clicked, this, &DecisionForm::decideAsked);
    row->addWidget(m_decide, 1);
}

}  // namespace chalk::ui::check_in
