#include "ui/onboarding/screen_outcome.h"

#include "ui/common/action_button.h"
#include "ui/common/editor_foot.h"
#include "ui/common/formats.h"
#include "ui/common/look.h"
#include "ui/common/prose.h"
#include "ui/common/scroll_column.h"
#include "ui/common/segmented_choice.h"
#include "ui/onboarding/field_column.h"
#include "ui/onboarding/start_ladder.h"
#include "ui/onboarding/start_words.h"

#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPainter>
#include <QScrollArea>
#include <QVBoxLayout>

namespace chalk::ui::onboarding {

namespace {

constexpr double kStageNameWidth = 64;

// Pixels at a text size of 100 %.

/// All eight ladders small, with their letters below.
class StripBox : public QWidget {
public:
    explicit StripBox(const common::Look& look, const OutcomeView& view, QWidget* parent) : QWidget(parent), m_look(look), m_view(view)
    {
        setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    }

    [[nodiscard]] QSize sizeHint() const override
    {
        const QSizeF strip = common::liftStripSize(m_look.theme());
        return {qCeil(strip.width()), qCeil(strip.height() + m_look.theme().scaled(22))};
    }

protected:
    void paintEvent(QPaintEvent* /*event*/) override
    {
        const common::Theme& theme = m_look.theme();
        QPainter painter(this);
        painter.setRenderHint(QPainter::Antialiasing);
        const double captions = theme.scaled(20);
        common::paintLiftStripCaptions(painter, QRectF(0, 0, width(), captions), theme);
        common::paintLiftStrip(painter, QRectF(0, captions, width(), height() - captions), m_view.strip, theme);
    }

private:
    const common::Look& m_look;
    const OutcomeView& m_view;
};

}  // namespace

ScreenOutcome::ScreenOutcome(const common::Look& look, QWidget* parent)
    : common::Panel(look, parent),
      m_look(look),
      m_ladder(new StartLadder(look, this)),
      m_words(new QLabel(this)),
      m_why(new QLabel(this)),
      m_work(new QLabel(this)),
      m_strip(new StripBox(look, m_view, this)),
      m_editor(new FieldColumn(look, this, kStageNameWidth)),
      m_other(new common::ActionButton(look, tr("Other stage"), this)),
      m_next(new common::ActionButton(look, {}, this))
{
    setTitle(tr("Outcome"), tr("updates as you mark"));
    auto* contents = new QWidget(this);
    auto* column = new QVBoxLayout(contents);
    column->setContentsMargins(16, 12, 16, 12);
    column->setSpacing(10);
    for (QLabel* label : {m_words, m_why, m_work}) {
        label->setWordWrap(true);
        label->setTextFormat(Qt::RichText);
    }
    column->addWidget(m_words);
    column->addWidget(m_ladder);
    column->addWidget(m_why);
    column->addWidget(m_work);
    auto* caption = new QLabel(tr("All patterns so far"), contents);
    caption->setProperty("role", QStringLiteral("caption"));
    column->addWidget(caption);
    column->addWidget(m_strip);
    column->addStretch(1);
    auto* scroll = new QScrollArea(this);
    common::holdColumn(*scroll, contents);
    body()->addWidget(scroll, 1);
    buildEditor();
    body()->addWidget(m_editor);
    auto* foot = new QVBoxLayout;
    foot->setContentsMargins(16, 10, 16, 12);
    foot->setSpacing(8);
    m_next->setKind(common::ButtonKind::Primary);
    m_next->setKeyText(tr("Enter"));
    m_other->setKeyText(QStringLiteral("O"));
    foot->addWidget(m_next);
    foot->addWidget(m_other);
    body()->addLayout(foot);
    connect(m_other, &QPushButton::clicked, this, &ScreenOutcome::openEditor);
    connect(m_next, &QPushButton::clicked, this, &ScreenOutcome::nextAsked);
    connect(&look, &common::Look::changed, m_strip, &QWidget::updateGeometry);
}

void ScreenOutcome::buildEditor()
{
    m_editor->addHeading(tr("Another starting stage"));
    m_stage = new common::SegmentedChoice(tr("Stage"), {{QStringLiteral("1")}, {QStringLiteral("2")}, {QStringLiteral("3")}}, m_editor);
    m_editor->addField(tr("Stage"), m_stage);
    m_reason = new QLineEdit(m_editor);
    m_editor->addWideField(tr("Because"), m_reason);
    connect(m_reason, &QLineEdit::returnPressed, this, &ScreenOutcome::accept);
    auto* foot = new common::EditorFoot(m_look, tr("Keep"), m_editor);
    connect(foot->addButton(tr("As screened")), &QPushButton::clicked, this, [this] {
        closeEditor();
        Q_EMIT stageChosen(std::nullopt);
    });
    foot->setCompact();
    connect(foot, &common::EditorFoot::keepAsked, this, &ScreenOutcome::accept);
    connect(foot, &common::EditorFoot::leaveAsked, this, &ScreenOutcome::closeEditor);
    m_editor->addLine(foot);
    m_editor->installEventFilter(this);
    m_editor->hide();
}

bool ScreenOutcome::eventFilter(QObject* watched, QEvent* event)
{
    if (watched != m_editor || event->type() != QEvent::KeyPress) {
        return common::Panel::eventFilter(watched, event);
    }
    const int key = static_cast<QKeyEvent*>(event)->key();
    if (key != Qt::Key_Return && key != Qt::Key_Enter) {
        return common::Panel::eventFilter(watched, event);
    }
    if (auto* button = qobject_cast<QPushButton*>(m_editor->focusWidget()); button != nullptr && button->hasFocus()) {
        button->click();
    }
    return true;
}

void ScreenOutcome::setView(const OutcomeView& view)
{
    m_view = view;
    const bool starts = view.start.state == progression::StartState::Starts;
    const bool isChosen = view.choice.has_value();
    m_ladder->setStage(isChosen ? std::optional(view.choice->stage) : starts ? std::optional(view.start.stage) : std::nullopt);
    const common::Theme& theme = m_look.theme();
    QString why = QStringLiteral("<b>%1</b> <span style='color:%2'>%3</span>")
                      .arg(startHeadline(view.start).toHtmlEscaped(), theme.ink2.name(), startReason(view.start, *view.guide).toHtmlEscaped());
    if (isChosen && !(starts && view.choice->stage == view.start.stage)) {
        why = QStringLiteral("<b>%1</b> %2<br>").arg(tr("The coach starts it at %1.").arg(common::stageName(view.choice->stage)).toHtmlEscaped(),
                                                     common::qstring(view.choice->reason).toHtmlEscaped()) +
              why;
    }
    for (const QString& need : needSentences(view.start)) {
        why += QStringLiteral("<br><span style='color:%1'>%2</span>").arg(theme.warn.name(), need.toHtmlEscaped());
    }
    m_why->setText(common::proseHtml(why));
    m_words->setText(common::proseHtml(view.words));
    m_words->setVisible(!view.words.isEmpty());
    m_next->setText(view.next);
    showWork(view);
    m_strip->update();
    m_strip->setAccessibleName(common::liftStripText(view.strip));
}

void ScreenOutcome::showWork(const OutcomeView& view)
{
    QString rows;
    for (const screens::WorkForPoints& one : view.work) {
        rows += QStringLiteral("<tr><td>%1</td><td align='right' style='white-space:nowrap'><b>%2</b></td></tr><tr><td colspan='2' style='color:%3'>%4</td></tr>")
                    .arg(common::qstring(one.work->name).toHtmlEscaped(), doseText(one.work->dose).toHtmlEscaped(), m_look.theme().ink3.name(),
                         common::qstring(one.work->how).toHtmlEscaped());
    }
    m_work->setVisible(!rows.isEmpty());
    m_work->setText(QStringLiteral("<p style='color:%1; font-weight:600'>%2</p><table width='100%' cellspacing='0' cellpadding='2'>%3</table>")
                        .arg(m_look.theme().ink3.name(), tr("Work to do first"), rows));
}

void ScreenOutcome::openEditor()
{
    m_stage->setChosen(m_view.choice ? progression::numberOf(m_view.choice->stage) - 1 : -1);
    m_reason->setText(m_view.choice ? common::qstring(m_view.choice->reason) : QString());
    m_editor->setFault(m_reason, {});
    m_focusBefore = window()->focusWidget();
    m_editor->show();
    m_stage->setFocus(Qt::OtherFocusReason);
    m_stage->nextInFocusChain()->setFocus(Qt::OtherFocusReason);
}

void ScreenOutcome::setChoiceOpen(bool isOpen)
{
    m_other->setEnabled(isOpen);
}

bool ScreenOutcome::closeEditor()
{
    const bool wasOpen = !m_editor->isHidden();
    if (wasOpen && m_editor->isAncestorOf(window()->focusWidget()) && m_focusBefore != nullptr) {
        m_focusBefore->setFocus(Qt::OtherFocusReason);
    }
    m_editor->hide();
    return wasOpen;
}

void ScreenOutcome::accept()
{
    if (m_stage->chosen() < 0) {
        return m_editor->setFault(m_reason, tr("Choose a stage first."));
    }
    const progression::StartChoice choice{static_cast<progression::Stage>(m_stage->chosen() + 1), m_reason->text().trimmed().toStdString()};
    const auto chosen = progression::chosenStartOf(m_view.start, choice);
    if (!chosen) {
        return m_editor->setFault(m_reason, choiceFaultText(chosen.error()));
    }
    closeEditor();
    Q_EMIT stageChosen(choice);
}

}  // namespace chalk::ui::onboarding
