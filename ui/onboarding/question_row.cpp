#include "ui/onboarding/question_row.h"

#include "ui/common/formats.h"
#include "ui/common/health_words.h"
#include "ui/common/look.h"
#include "ui/common/plain_typing.h"
#include "ui/common/segmented_choice.h"

#include <QCheckBox>
#include <QGridLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPainter>
#include <QToolButton>
#include <QVBoxLayout>

#include <algorithm>

namespace chalk::ui::onboarding {

namespace {

constexpr int kMarkColumns = 3;
constexpr int kNo = 0;
constexpr int kYes = 1;

}  // namespace

QuestionRow::QuestionRow(const common::Look& look, clients::HealthQuestion question, QWidget* parent)
    : QWidget(parent),
      m_look(look),
      m_question(question),
      m_choice(new common::SegmentedChoice(common::questionText(question), {{tr("No")}, {tr("Yes"), common::Signal::Warn}}, this)),
      m_detail(new QWidget(this)),
      m_words(new QLineEdit(m_detail))
{
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(16, 8, 16, 8);
    grid->setHorizontalSpacing(10);
    grid->setColumnMinimumWidth(0, 24);
    grid->setColumnStretch(1, 1);
    auto* number = new QLabel(QString::number(static_cast<int>(question) + 1), this);
    number->setProperty("role", QStringLiteral("muted"));
    auto* text = new QLabel(common::questionText(question), this);
    text->setWordWrap(true);
    grid->addWidget(number, 0, 0);
    grid->addWidget(text, 0, 1);
    grid->addWidget(m_choice, 0, 2, Qt::AlignRight | Qt::AlignVCenter);
    grid->addWidget(m_detail, 1, 1, 1, 2);
    auto* detail = new QVBoxLayout(m_detail);
    detail->setContentsMargins(0, 2, 0, 2);
    detail->setSpacing(4);
    auto* marks = new QGridLayout;
    marks->setHorizontalSpacing(12);
    marks->setVerticalSpacing(0);
    const auto own = clients::marksOf(question);
    for (std::size_t i = 0; i < own.size() && own.size() > 1; ++i) {
        auto* mark = new QCheckBox(common::markName(own[i]), m_detail);
        connect(mark, &QCheckBox::clicked, this, &QuestionRow::answered);
        marks->addWidget(mark, static_cast<int>(i) / kMarkColumns, static_cast<int>(i) % kMarkColumns);
        m_marks.push_back(mark);
    }
    detail->addLayout(marks);
    if (!m_marks.empty()) {
        setTabOrder(m_marks.back(), m_words);
    }
    m_words->setPlaceholderText(tr("In the client’s words"));
    m_words->setAccessibleName(tr("Question %1, in the client’s words").arg(static_cast<int>(question) + 1));
    detail->addWidget(m_words);
    m_detail->hide();
    connect(m_choice, &common::SegmentedChoice::choiceMade, this, [this] {
        showDetail();
        Q_EMIT answered();
    });
    connect(m_words, &QLineEdit::textEdited, this, &QuestionRow::typed);
    connect(m_words, &QLineEdit::editingFinished, this, &QuestionRow::answered);
    connect(m_words, &QLineEdit::returnPressed, this, [this] { Q_EMIT moveAsked(1); });
}

void QuestionRow::setAnswer(const clients::HealthAnswer& answer)
{
    m_choice->setChosen(!answer.isYes ? -1 : *answer.isYes ? kYes : kNo);
    const auto own = clients::marksOf(m_question);
    for (std::size_t i = 0; i < m_marks.size(); ++i) {
        m_marks[i]->setChecked(std::find(answer.marks.begin(), answer.marks.end(), own[i]) != answer.marks.end());
    }
    if (!m_words->hasFocus()) {
        m_words->setText(common::qstring(answer.detail));
    }
    showDetail();
}

clients::HealthAnswer QuestionRow::answer() const
{
    clients::HealthAnswer answer;
    if (m_choice->chosen() >= 0) {
        answer.isYes = m_choice->chosen() == kYes;
    }
    const auto own = clients::marksOf(m_question);
    for (std::size_t i = 0; i < m_marks.size() && answer.isYes == true; ++i) {
        if (m_marks[i]->isChecked()) {
            answer.marks.push_back(own[i]);
        }
    }
    answer.detail = m_words->text().trimmed().toStdString();
    return answer;
}

void QuestionRow::takeFocus()
{
    const auto buttons = m_choice->findChildren<QToolButton*>();
    buttons.at(std::max(0, m_choice->chosen()))->setFocus(Qt::OtherFocusReason);
}

void QuestionRow::showDetail()
{
    m_detail->setVisible(m_choice->chosen() == kYes);
    updateGeometry();
}

bool QuestionRow::isInDetail() const
{
    return focusWidget() != nullptr && m_detail->isAncestorOf(focusWidget());
}

void QuestionRow::answerByKey(bool isYes)
{
    m_choice->setChosen(isYes ? kYes : kNo);
    showDetail();
    Q_EMIT answered();
    if (!isYes) {
        Q_EMIT moveAsked(1);
    } else if (!m_marks.empty()) {
        m_marks.front()->setFocus(Qt::OtherFocusReason);
    } else {
        m_words->setFocus(Qt::OtherFocusReason);
    }
}

bool QuestionRow::event(QEvent* event)
{
    // The letters are answers here and no keys of the window; the arrows go to the questions beside.
    if (event->type() == QEvent::ShortcutOverride && common::isPlainTyping(*static_cast<QKeyEvent*>(event))) {
        event->accept();
        return true;
    }
    return QWidget::event(event);
}

void QuestionRow::keyPressEvent(QKeyEvent* event)
{
    switch (event->key()) {
    case Qt::Key_Y:
    case Qt::Key_N:
        if (isInDetail()) {
            Q_EMIT nextAnswered(event->key() == Qt::Key_Y);  // this one is answered: the letter is the next one's
            return;
        }
        return answerByKey(event->key() == Qt::Key_Y);
    case Qt::Key_Down:
    case Qt::Key_Return:
    case Qt::Key_Enter:
        Q_EMIT moveAsked(1);
        return;
    case Qt::Key_Up:
        if (isInDetail()) {
            return takeFocus();
        }
        Q_EMIT moveAsked(-1);
        return;
    default:
        QWidget::keyPressEvent(event);
    }
}

void QuestionRow::paintEvent(QPaintEvent* /*event*/)
{
    QPainter painter(this);
    painter.fillRect(QRect(0, height() - 1, width(), 1), m_look.theme().line);
}

}  // namespace chalk::ui::onboarding
