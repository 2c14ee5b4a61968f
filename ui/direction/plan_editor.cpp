#include "ui/direction/plan_editor.h"

#include "ui/common/action_button.h"
#include "ui/common/dialogs.h"
#include "ui/common/direction_words.h"
#include "ui/common/look.h"
#include "ui/common/scroll_column.h"
#include "ui/common/style_sheet.h"
#include "ui/direction/plan_editor_gauges.h"
#include "ui/direction/plan_editor_sheet.h"
#include "ui/direction/plan_editor_table.h"
#include "ui/direction/plan_editor_wishes.h"
#include "ui/direction/plan_editor_words.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QScrollArea>
#include <QScreen>
#include <QShortcut>
#include <QVBoxLayout>

#include <algorithm>

namespace chalk::ui::direction {

namespace {

constexpr double kEditorWidth = 1340;
constexpr double kEditorHeight = 820;
constexpr int kScreenMargin = 24;
constexpr double kWishesWidth = 306;
constexpr double kGaugesHeight = 204;
constexpr double kSayingHeight = 38;

}  // namespace

PlanEditor::PlanEditor(const common::Look& look, common::Dialogs& dialogs, PlanEditorCase facts, QWidget* parent)
    : QDialog(parent),
      m_look(look),
      m_dialogs(dialogs),
      m_model(std::move(facts)),
      m_sheet(new PlanEditorSheet(m_model, this)),
      m_table(new PlanEditorTable(look, *m_sheet)),
      m_wishes(new PlanEditorWishes(look, m_model)),
      m_gauges(new PlanEditorGauges(look, m_model)),
      m_lifts(new QComboBox),
      m_title(new QLabel),
      m_saying(new QLabel)
{
    setWindowTitle(tr("Plan of %1").arg(m_model.facts().client));
    auto* area = new QScrollArea;
    area->setFrameShape(QFrame::NoFrame);
    area->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    area->setFixedWidth(qRound(look.theme().scaled(kWishesWidth)));
    common::holdColumn(*area, m_wishes);
    auto* row = new QHBoxLayout;
    row->setSpacing(16);
    row->addWidget(area);
    row->addWidget(middle(), 1);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(16, 16, 16, 12);
    column->setSpacing(12);
    column->addLayout(row, 1);
    column->addWidget(foot());
    connect(&m_model, &PlanEditorModel::changed, this, &PlanEditor::follow);
    connect(m_wishes, &PlanEditorWishes::asked, this, &PlanEditor::takeWishes);
    connect(m_wishes, &PlanEditorWishes::refused, this, [this](const QString& sentence) { say(sentence, true); });
    connect(m_table, &PlanEditorTable::refused, this, [this](const QString& sentence) { say(sentence, true); });
    connect(m_table, &PlanEditorTable::cellRead, this, &PlanEditor::readCell);
    addKeys();
    follow();
    const QSize wanted(qRound(look.theme().scaled(kEditorWidth)), qRound(look.theme().scaled(kEditorHeight)));
    resize(wanted.boundedTo(screen()->availableSize() - QSize(kScreenMargin, kScreenMargin)));
    m_table->setFocus(Qt::OtherFocusReason);
}

QWidget* PlanEditor::middle()
{
    auto* part = new QWidget;
    auto* column = new QVBoxLayout(part);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    m_title->setProperty("role", QStringLiteral("section"));
    m_lifts->setAccessibleName(tr("Lift shown"));
    m_lifts->setToolTip(tr("Ctrl+Page Up and Ctrl+Page Down go from lift to lift."));
    m_saying->setWordWrap(true);
    m_saying->setFixedHeight(qRound(m_look.theme().scaled(kSayingHeight)));
    m_saying->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    m_gauges->setFixedHeight(qRound(m_look.theme().scaled(kGaugesHeight)));
    auto* head = new QHBoxLayout;
    head->addWidget(m_title, 1);
    head->addWidget(m_lifts);
    column->addLayout(head);
    column->addWidget(m_table, 1);
    column->addWidget(m_saying);
    column->addWidget(m_gauges);
    connect(m_lifts, &QComboBox::currentIndexChanged, this, &PlanEditor::chooseLift);
    return part;
}

QWidget* PlanEditor::foot()
{
    auto* part = new QWidget;
    auto* row = new QHBoxLayout(part);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(8);
    const auto button = [this, row](const QString& text, const QString& keys, auto does) {
        auto* made = new common::ActionButton(m_look, text);
        made->setKeyText(keys);
        made->setAutoDefault(false);
        connect(made, &QPushButton::clicked, this, does);
        row->addWidget(made);
        return made;
    };
    m_undo = button(tr("Undo"), tr("Ctrl Z"), [this] { m_model.changes().undo(); });
    m_redo = button(tr("Redo"), tr("Ctrl Shift Z"), [this] { m_model.changes().redo(); });
    m_undo->setEnabled(false);
    m_redo->setEnabled(false);
    connect(&m_model.changes(), &QUndoStack::canUndoChanged, m_undo, &QWidget::setEnabled);
    connect(&m_model.changes(), &QUndoStack::canRedoChanged, m_redo, &QWidget::setEnabled);
    button(tr("Copy the row down"), tr("Ctrl D"), [this] { m_sheet->copyDown(m_table->currentIndex().row()); });
    row->addStretch(1);
    button(tr("Leave"), tr("Esc"), [this] { reject(); });
    button(tr("Keep the plan"), tr("Ctrl S"), [this] { goOn(); })->setKind(common::ButtonKind::Primary);
    return part;
}

void PlanEditor::addKeys()
{
    const auto key = [this](const QKeySequence& keys, auto does) { connect(new QShortcut(keys, this), &QShortcut::activated, this, does); };
    key(QKeySequence::Undo, [this] { m_model.changes().undo(); });
    key(Qt::CTRL | Qt::SHIFT | Qt::Key_Z, [this] { m_model.changes().redo(); });
    key(QKeySequence::Save, [this] { goOn(); });
    key(Qt::CTRL | Qt::Key_PageUp, [this] { stepLift(-1); });
    key(Qt::CTRL | Qt::Key_PageDown, [this] { stepLift(1); });
    key(Qt::Key_F6, [this] {
        QWidget* into = m_table->hasFocus() ? static_cast<QWidget*>(m_wishes) : m_table;
        into == m_wishes ? static_cast<void>(m_wishes->nextInFocusChain()->setFocus(Qt::TabFocusReason)) : m_table->setFocus(Qt::TabFocusReason);
    });
}

void PlanEditor::showLifts()
{
    const QSignalBlocker quiet(m_lifts);
    m_lifts->clear();
    for (std::size_t lift = 0; lift < m_model.wishes().lifts.size(); ++lift) {
        m_lifts->addItem(m_model.nameOf(lift));
    }
    m_lifts->addItem(tr("All lifts"));
    m_lifts->setCurrentIndex(m_sheet->lift() ? static_cast<int>(*m_sheet->lift()) : m_lifts->count() - 1);
}

void PlanEditor::chooseLift(int index)
{
    if (index >= 0) {
        m_sheet->setLift(index == m_lifts->count() - 1 ? std::nullopt : std::optional(static_cast<std::size_t>(index)));
    }
}

void PlanEditor::stepLift(int step)
{
    m_lifts->setCurrentIndex(std::clamp(m_lifts->currentIndex() + step, 0, m_lifts->count() - 1));
}

std::optional<bool> PlanEditor::keepsEdits()
{
    const int edits = m_model.handEdits();
    if (edits == 0) {
        return true;
    }
    common::Question question;
    question.headline = tr("Make the plan anew?");
    question.text = tr("%n exposure(s) or week(s) were set by hand. They can stay where the week, the lift and the exposure are still there.", nullptr, edits);
    if (m_model.hasBegun()) {
        question.text += QLatin1Char(' ') + tr("Weeks that are over stay as they are.");
    }
    question.answers = {tr("Leave the plan as it is"), tr("Keep what was set by hand"), tr("Drop what was set by hand")};
    const int answer = m_dialogs.ask(this, question);
    return answer == 0 ? std::nullopt : std::optional(answer == 1);
}

void PlanEditor::takeWishes(const chalk::direction::PlanWishes& wishes)
{
    if (const auto fault = faultOf(wishes)) {
        return say(wishFaultText(*fault), true);
    }
    if (const auto keeps = keepsEdits()) {
        m_model.setWishes(wishes, *keeps);
    }
}

void PlanEditor::say(const QString& sentence, bool isRefusal)
{
    m_saying->setProperty("role", isRefusal ? QStringLiteral("fault") : QStringLiteral("secondary"));
    common::restyle(*m_saying);
    m_saying->setText(sentence);
    m_saying->setAccessibleName(sentence);
}

QString PlanEditor::saying() const
{
    return m_saying->text();
}

void PlanEditor::readCell(const QString& remark)
{
    say(remark, false);
    const QModelIndex at = m_table->currentIndex();
    if (at.isValid()) {
        m_gauges->read(m_sheet->weekOf(at.row()), m_sheet->liftOf(at.row()));
    }
}

void PlanEditor::follow()
{
    const auto& plan = m_model.plan().plan;
    m_title->setText(QStringLiteral("%1 · %2").arg(common::planTitle(plan), common::planDaysText(plan)));
    showLifts();
}

void PlanEditor::goOn()
{
    setFocus(Qt::OtherFocusReason);  // a field that is still open keeps what was typed
    accept();
}

void PlanEditor::reject()
{
    common::Question question;
    question.headline = tr("Throw the changes away?");
    question.text = tr("The plan stays as it was before it was opened here.");
    question.answers = {tr("Go on editing"), tr("Throw them away")};
    if (!m_model.isChanged() || m_dialogs.ask(this, question) == 1) {
        QDialog::reject();
    }
}

}  // namespace chalk::ui::direction
