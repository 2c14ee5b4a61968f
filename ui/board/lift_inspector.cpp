#include "ui/board/lift_inspector.h"

#include "ui/board/evidence_list.h"
#include "ui/board/evidence_words.h"
#include "ui/board/grid_rows.h"
#include "ui/board/inspector_words.h"
#include "ui/board/log_words.h"
#include "ui/board/painted.h"
#include "ui/common/action_button.h"
#include "ui/common/empty_state.h"
#include "ui/common/formats.h"
#include "ui/common/icon_store.h"
#include "ui/common/look.h"
#include "ui/common/prose.h"
#include "ui/common/tags.h"

#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QScrollArea>
#include <QScrollBar>
#include <QStackedLayout>
#include <QVBoxLayout>

namespace chalk::ui::board {

namespace {

using common::Theme;
using progression::PrescriptionKind;
using progression::Stage;

constexpr int kWide = 368;
constexpr int kNarrow = 304;
constexpr std::size_t kLastSessions = 3;
constexpr std::size_t kStageSessions = 12;

QFrame* thinLine(QWidget* parent)
{
    auto* line = new QFrame(parent);
    line->setProperty("rule", true);
    line->setFixedHeight(1);
    return line;
}

}  // namespace

LiftInspector::LiftInspector(const common::Look& look, QWidget* parent)
    : QFrame(parent),
      m_look(look),
      m_pages(new QStackedLayout(this)),
      m_readingPage(new QWidget(this)),
      m_scroll(new QScrollArea(m_readingPage)),
      m_foot(new QWidget(m_readingPage)),
      m_nothing(new common::EmptyState(look, this))
{
    setProperty("panel", true);
    setAccessibleName(tr("Selected lift"));
    auto* content = new QWidget(m_scroll);
    m_sections = new QVBoxLayout(content);
    m_sections->setContentsMargins(0, 0, 0, 0);
    m_sections->setSpacing(0);
    m_scroll->setWidget(content);
    m_scroll->setWidgetResizable(true);
    m_scroll->setFrameShape(QFrame::NoFrame);
    m_scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_scroll->setFocusPolicy(Qt::NoFocus);
    content->setProperty("ground", QStringLiteral("surface"));
    makeHead();
    makeSections();
    m_sections->addStretch();
    makeFoot();
    auto* column = new QVBoxLayout(m_readingPage);
    column->setContentsMargins(1, 1, 1, 1);
    column->setSpacing(0);
    column->addWidget(m_scroll, 1);
    column->addWidget(m_foot);
    m_pages->addWidget(m_readingPage);
    m_pages->addWidget(m_nothing);
    connect(&look, &common::Look::changed, this, &LiftInspector::fit);
    fit();
}

QVBoxLayout* LiftInspector::addSection(QWidget** section, QLabel** caption)
{
    *section = new QWidget(m_scroll->widget());
    auto* column = new QVBoxLayout(*section);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(thinLine(*section));
    auto* inner = new QVBoxLayout;
    inner->setContentsMargins(16, 12, 16, 12);
    inner->setSpacing(6);
    column->addLayout(inner);
    *caption = rowLabel({}, "caption", false, *section);
    inner->addWidget(*caption);
    m_sections->addWidget(*section);
    return inner;
}

void LiftInspector::makeHead()
{
    auto* head = new QVBoxLayout;
    head->setContentsMargins(16, 13, 16, 12);
    head->setSpacing(9);
    m_name = rowLabel({}, "section", true, this);
    m_tag = new Painted(m_look, this);
    m_tag->setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
    auto* top = new QHBoxLayout;
    top->addWidget(m_name, 1);
    top->addWidget(m_tag, 0, Qt::AlignTop);
    head->addLayout(top);
    m_due = new QWidget(this);
    auto* due = new QVBoxLayout(m_due);
    due->setContentsMargins(0, 0, 0, 0);
    due->setSpacing(9);
    m_headline = new Painted(m_look, this);
    due->addWidget(m_headline);
    m_dials = new Painted(m_look, this);
    due->addWidget(m_dials);
    m_plates = new Painted(m_look, this);
    m_plates->setSizePolicy(QSizePolicy::Maximum, QSizePolicy::Fixed);
    m_setUp = rowLabel({}, "secondary", true, this);
    auto* plates = new QHBoxLayout;
    plates->addWidget(m_plates, 0);
    plates->addWidget(m_setUp, 1);
    due->addLayout(plates);
    m_reserve = rowLabel({}, "small", true, this);
    m_reserve->setTextFormat(Qt::RichText);
    auto* steady = new Painted(m_look, this);
    steady->setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
    steady->setPicture([](const Theme& theme) { return QSizeF(theme.scaled(18), theme.scaled(18)); },
                       [](QPainter& painter, const QRectF& rect, const Theme& theme) {
                           common::paintIcon(painter, rect, QStringLiteral("steady"), theme.ink, theme);
                       },
                       {});
    auto* reserve = new QHBoxLayout;
    reserve->setSpacing(8);
    reserve->addWidget(steady, 0, Qt::AlignTop);
    reserve->addWidget(m_reserve, 1);
    due->addLayout(reserve);
    head->addWidget(m_due);
    m_sections->addLayout(head);
}

void LiftInspector::makeSections()
{
    QLabel* whyTitle = nullptr;
    QVBoxLayout* why = addSection(&m_whySection, &whyTitle);
    whyTitle->setText(tr("Why"));
    m_why = new QLabel(m_whySection);
    m_why->setWordWrap(true);
    m_why->setTextFormat(Qt::RichText);
    why->addWidget(m_why);
    m_whyRecord = rowLabel({}, "secondary", true, m_whySection);
    why->addWidget(m_whyRecord);

    QVBoxLayout* evidence = addSection(&m_evidenceSection, &m_evidenceTitle);
    m_evidence = new EvidenceList(m_look, m_evidenceSection);
    evidence->addWidget(m_evidence);
    m_shortfall = rowLabel({}, "secondary", true, m_evidenceSection);
    evidence->addWidget(m_shortfall);

    QVBoxLayout* sessions = addSection(&m_sessionsSection, &m_sessionsTitle);
    m_sessions = new QGridLayout;
    m_sessions->setHorizontalSpacing(12);
    m_sessions->setVerticalSpacing(4);
    m_sessions->setColumnStretch(1, 1);
    sessions->addLayout(m_sessions);
}

void LiftInspector::makeFoot()
{
    auto* row = new QHBoxLayout;
    const auto button = [this, row](const QString& text, const QString& keys, void (LiftInspector::*asked)()) {
        auto* made = new common::ActionButton(m_look, text, m_buttons);
        made->setButtonSize(common::ButtonSize::Small);
        made->setProperty("keys", keys);
        connect(made, &QPushButton::clicked, this, asked);
        row->addWidget(made);
        return made;
    };
    auto* column = new QVBoxLayout(m_foot);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(thinLine(m_foot));
    m_buttons = new QWidget(m_foot);
    auto* rows = new QVBoxLayout(m_buttons);
    rows->setContentsMargins(16, 12, 16, 12);
    rows->setSpacing(8);
    rows->addLayout(row);
    row->setSpacing(8);
    m_release = button(tr("Release"), QStringLiteral("L"), &LiftInspector::releaseAsked);
    m_release->setKind(common::ButtonKind::Primary);
    m_change = button(tr("Change"), QStringLiteral("E"), &LiftInspector::changeAsked);
    m_hold = button(tr("Hold here"), QStringLiteral("H"), &LiftInspector::holdAsked);
    m_swap = button(tr("Swap"), QStringLiteral("S"), &LiftInspector::swapAsked);
    row->addStretch();
    m_test = button(tr("Test a maximum"), QStringLiteral("T"), &LiftInspector::testAsked);
    rows->addWidget(m_test, 0, Qt::AlignLeft);
    column->addWidget(m_buttons);
    m_lock = new common::EmptyState(m_look, m_foot);
    m_lock->setPicture(QStringLiteral("clearance"), common::Signal::Pain);
    connect(m_lock->addButton(tr("Open health")), &QPushButton::clicked, this, &LiftInspector::healthAsked);
    column->addWidget(m_lock);
    m_lock->hide();
}

void LiftInspector::showLift(const LiftCase& lift, const ClientCase& client)
{
    closeEditor();
    fillHead(lift, client);
    fillSetUp(lift);
    m_why->setText(common::proseHtml(whyTextOf(lift).toHtmlEscaped()));
    m_whyRecord->setText(whyRecordTextOf(lift));
    m_whyRecord->setVisible(!m_whyRecord->text().isEmpty());
    m_evidenceTitle->setText(evidenceTitleOf(lift));
    m_evidence->setLines(evidenceLinesOf(lift));
    m_shortfall->setText(shortfallTextOf(lift));
    m_shortfall->setVisible(!m_shortfall->text().isEmpty());
    fillSessions(lift, std::nullopt);
    fillButtons(lift);
    m_scroll->verticalScrollBar()->setValue(0);
    m_pages->setCurrentWidget(m_readingPage);
}

void LiftInspector::showNothing(const QString& headline, const QString& text)
{
    closeEditor();
    m_nothing->setPicture(m_isLocked ? QStringLiteral("clearance") : QString(), m_isLocked ? common::Signal::Pain : common::Signal::Muted);
    m_nothing->setWords(m_isLocked ? m_lockHeadline : headline, m_isLocked ? m_lockText.toHtmlEscaped() : text.toHtmlEscaped());
    m_pages->setCurrentWidget(m_nothing);
}

void LiftInspector::fillHead(const LiftCase& lift, const ClientCase& client)
{
    m_name->setText(common::qstring(lift.exercise.name));
    const common::StageTagView tag{lift.next.stage, lift.next.cycle, true};
    m_tag->setPicture([tag](const Theme& theme) { return QSizeF(stageTagWidth(tag, theme), tagHeight(theme)); },
                      [tag](QPainter& painter, const QRectF& rect, const Theme& theme) { paintStageTag(painter, rect, tag, theme); },
                      stageTagText(tag));
    const HeadlineView headline = headlineOf(lift, whenTextOf(client));
    m_headline->setPicture(
        [](const Theme& theme) { return QSizeF(0, headlineHeight(theme)); },
        [headline](QPainter& painter, const QRectF& rect, const Theme& theme) { paintHeadline(painter, rect, headline, theme); },
        QStringLiteral("%1 %2 %3 %4").arg(headline.number, headline.unit, headline.sets, headline.when).simplified());
    const common::DialsView dials = dialsOf(lift);
    QStringList words;
    for (const common::Dial& dial : dials.dials) {
        words.append(dial.isMoving ? tr("%1 %2, moves").arg(dial.caption, dial.value) : tr("%1 %2, held").arg(dial.caption, dial.value));
    }
    m_dials->setPicture([](const Theme& theme) { return QSizeF(0, common::dialsHeight(theme)); },
                        [dials](QPainter& painter, const QRectF& rect, const Theme& theme) { paintDials(painter, rect, dials, theme); },
                        words.join(QLatin1String("; ")));
    m_dials->setVisible(!dials.dials.empty());
}

void LiftInspector::fillSetUp(const LiftCase& lift)
{
    const auto plates = platesOf(lift);
    if (plates) {
        m_plates->setPicture(
            [view = *plates](const Theme& theme) { return plateStackSize(view, theme); },
            [view = *plates](QPainter& painter, const QRectF& rect, const Theme& theme) { paintPlateStack(painter, rect, view, theme); },
            plateStackText(*plates));
    }
    m_plates->setVisible(plates.has_value());
    m_setUp->setText(setUpTextOf(lift));
    m_setUp->setAlignment(plates ? Qt::AlignRight | Qt::AlignVCenter : Qt::AlignLeft | Qt::AlignVCenter);
    m_setUp->setVisible(!m_setUp->text().isEmpty());
    m_reserve->setText(reserveHtmlOf(lift));
}

void LiftInspector::fillSessions(const LiftCase& lift, std::optional<Stage> stage)
{
    clearRows(*m_sessions);
    m_sessionsTitle->setText(stage ? tr("Sessions in %1").arg(common::stageName(*stage)) : tr("Last sessions"));
    const auto lines = stage ? linesOfStage(lift, *stage, kStageSessions) : lastLinesOf(lift, kLastSessions);
    int row = 0;
    for (const LogLine& line : lines) {
        m_sessions->addWidget(rowLabel(common::shortDayText(line.date), "muted", false, this), row, 0, Qt::AlignTop);
        m_sessions->addWidget(rowLabel(line.note.isEmpty() ? line.what : tr("%1: %2").arg(line.what, line.note), "small", true, this), row,
                              1, Qt::AlignTop);
        m_sessions->addWidget(rowLabel(line.left, "secondary", false, this), row, 2, Qt::AlignTop);
        m_sessions->addWidget(rowLabel(line.steadiness, "secondary", false, this), row, 3, Qt::AlignTop);
        ++row;
    }
    if (lines.empty()) {
        m_sessions->addWidget(rowLabel(stage ? tr("None on this rung.") : tr("None yet."), "muted", false, this), 0, 0, 1, 4);
    }
    m_sessionsSection->setVisible(stage || !m_isLow);
}

void LiftInspector::readStage(const LiftCase& lift, std::optional<Stage> stage)
{
    fillSessions(lift, stage);
    if (stage) {
        m_scroll->ensureWidgetVisible(m_sessionsSection);
    }
}

void LiftInspector::fillButtons(const LiftCase& lift)
{
    const bool isOnHold = lift.next.kind == PrescriptionKind::Hold;
    m_release->setVisible(isOnHold);
    m_change->setVisible(!isOnHold);
    m_hold->setVisible(lift.next.kind == PrescriptionKind::Work);
    m_test->setVisible(lift.next.kind == PrescriptionKind::Work && lift.machine.kit().measure == lifts::Measure::Reps);
    showLock();
}

void LiftInspector::showLock()
{
    for (QWidget* part : {m_due, m_whySection, m_evidenceSection, m_buttons}) {
        part->setVisible(!m_isLocked);
    }
    m_lock->setVisible(m_isLocked);
}

void LiftInspector::setLock(const QString& headline, const QString& text)
{
    m_isLocked = !headline.isEmpty();
    m_lockHeadline = headline;
    m_lockText = text;
    m_lock->setWords(headline, text.toHtmlEscaped());
    showLock();
}

void LiftInspector::setRoom(bool isNarrow, bool isLow)
{
    m_isNarrow = isNarrow;
    m_isLow = isLow;
    m_sessionsSection->setVisible(!isLow);
    fit();
}

void LiftInspector::fit()
{
    setFixedWidth(qRound(m_look.theme().scaled(m_isNarrow ? kNarrow : kWide)));
    for (common::ActionButton* button : {m_release, m_change, m_hold, m_swap, m_test}) {
        button->setKeyText(m_isNarrow ? QString() : button->property("keys").toString());
    }
}

void LiftInspector::openEditor(QWidget* editor)
{
    closeEditor();
    m_editor = editor;
    m_pages->addWidget(editor);
    m_pages->setCurrentWidget(editor);
}

void LiftInspector::closeEditor()
{
    if (m_editor != nullptr) {
        m_pages->removeWidget(m_editor);
        m_editor->hide();
        m_editor->deleteLater();
        m_editor = nullptr;
        m_pages->setCurrentWidget(m_readingPage);
    }
}

void LiftInspector::revealEvidence()
{
    m_scroll->ensureWidgetVisible(m_evidenceSection);
}

}  // namespace chalk::ui::board
