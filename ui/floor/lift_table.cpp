#include "ui/floor/lift_table.h"

#include "ui/common/look.h"
#include "ui/floor/lift_rows.h"

#include <QKeyEvent>
#include <QLineEdit>
#include <QMouseEvent>
#include <QStyle>
#include <QToolTip>

#include <algorithm>

namespace chalk::ui::floor {

namespace {

QString spokenField(LiftField field, int set)
{
    switch (field) {
    case LiftField::Load:
        return LiftTable::tr("Load");
    case LiftField::Amount:
        return LiftTable::tr("Set %1").arg(set + 1);
    case LiftField::Left:
        return LiftTable::tr("Reps left in reserve");
    case LiftField::Rest:
        return LiftTable::tr("Rest");
    case LiftField::Felt:
        return LiftTable::tr("Felt: steady, shaky or lost");
    case LiftField::Pain:
        return LiftTable::tr("Pain out of 10");
    }
    return {};
}

}  // namespace

LiftTable::LiftTable(const common::Look& look, const LiftRowsModel& model, FieldText textOf, QWidget* parent)
    : QListView(parent), m_look(look), m_rows(model), m_textOf(std::move(textOf)), m_editor(new QLineEdit(viewport()))
{
    m_editor->setAlignment(Qt::AlignCenter);
    m_editor->setAccessibleName(tr("Field of the lift"));
    m_editor->hide();
    m_editor->installEventFilter(this);
    viewport()->setCursor(Qt::ArrowCursor);
}

std::vector<LiftBox> LiftTable::boxesOf(const QModelIndex& row) const
{
    if (!row.isValid() || m_rows.row(row.row()).amounts.empty()) {
        return {};
    }
    return liftBoxesOf(visualRect(row), static_cast<int>(m_rows.row(row.row()).amounts.size()), m_look.theme());
}

void LiftTable::place(const LiftBox& box)
{
    m_open = box;
    m_isFaulty = false;
    m_editor->setProperty("fault", false);
    QRectF rect = box.rect;
    if (box.field == LiftField::Load) {
        rect.setWidth(std::min(rect.width(), m_look.theme().scaled(110)));
    }
    m_editor->setGeometry(rect.toAlignedRect().adjusted(-1, -1, 1, 1));
    m_editor->setAccessibleName(spokenField(box.field, box.set));
    m_editor->setText(m_textOf(box.field, box.set));
    m_editor->show();
    m_editor->selectAll();
    m_editor->setFocus(Qt::OtherFocusReason);
}

void LiftTable::editBox(LiftField field, int set)
{
    scrollTo(currentIndex());
    const auto boxes = boxesOf(currentIndex());
    const auto box = std::find_if(boxes.begin(), boxes.end(), [&](const LiftBox& one) { return one.field == field && one.set == set; });
    if (box != boxes.end()) {
        place(*box);
    }
}

void LiftTable::closeEditor()
{
    m_open.reset();
    m_editor->hide();
}

void LiftTable::setFault(const QString& fault)
{
    m_isFaulty = !fault.isEmpty();
    m_editor->setProperty("fault", m_isFaulty);
    m_editor->style()->unpolish(m_editor);
    m_editor->style()->polish(m_editor);
    if (m_isFaulty) {
        QToolTip::showText(m_editor->mapToGlobal(QPoint(0, m_editor->height())), fault, m_editor);
    }
}

bool LiftTable::commit()
{
    if (!m_open || !m_editor->isModified()) {
        return !m_open || !m_isFaulty;
    }
    Q_EMIT fieldTyped(m_open->field, m_open->set, m_editor->text());
    m_editor->setModified(false);
    return !m_isFaulty;
}

bool LiftTable::leavesLift(const QKeyEvent& key)
{
    const bool isMove = key.key() == Qt::Key_Up || key.key() == Qt::Key_Down || key.key() == Qt::Key_PageUp || key.key() == Qt::Key_PageDown;
    const bool isEnter = key.key() == Qt::Key_Return || key.key() == Qt::Key_Enter;
    return isMove || (key.modifiers() & Qt::AltModifier) != 0 || (isEnter && (key.modifiers() & Qt::ControlModifier) != 0);
}

void LiftTable::step(int by)
{
    const LiftBox open = *m_open;
    const auto boxes = boxesOf(currentIndex());
    const auto at = std::find_if(boxes.begin(), boxes.end(), [&open](const LiftBox& one) { return one.field == open.field && one.set == open.set; });
    const auto next = (at == boxes.end() ? 0 : at - boxes.begin()) + by;
    if (next >= 0 && next < static_cast<std::ptrdiff_t>(boxes.size())) {
        place(boxes[static_cast<std::size_t>(next)]);
    } else {
        closeEditor();
        Q_EMIT lineAsked();
    }
}

bool LiftTable::eventFilter(QObject* watched, QEvent* event)
{
    if (watched != m_editor || !m_open) {
        return QListView::eventFilter(watched, event);
    }
    if (event->type() == QEvent::FocusOut && static_cast<QFocusEvent*>(event)->reason() != Qt::PopupFocusReason) {
        if (commit()) {
            closeEditor();
        }
        return false;
    }
    if (event->type() == QEvent::ShortcutOverride) {
        const int key = static_cast<QKeyEvent*>(event)->key();
        if (leavesLift(*static_cast<QKeyEvent*>(event))) {
            // What is typed belongs to this lift, whatever the key goes on to; what makes no sense keeps it here.
            const bool isDone = commit();
            if (isDone) {
                closeEditor();
            }
            event->setAccepted(!isDone);
            return true;
        }
        const bool isOurs = key == Qt::Key_Return || key == Qt::Key_Enter || key == Qt::Key_Escape || key == Qt::Key_Tab || key == Qt::Key_Backtab;
        event->setAccepted(isOurs && (static_cast<QKeyEvent*>(event)->modifiers() & (Qt::ControlModifier | Qt::AltModifier)) == 0);
        return event->isAccepted();
    }
    if (event->type() != QEvent::KeyPress) {
        return false;
    }
    switch (static_cast<QKeyEvent*>(event)->key()) {
    case Qt::Key_Tab:
        return !commit() || (step(1), true);
    case Qt::Key_Backtab:
        return !commit() || (step(-1), true);
    case Qt::Key_Return:
    case Qt::Key_Enter:
        if (commit()) {
            closeEditor();
            Q_EMIT lineAsked();
        }
        return true;
    case Qt::Key_Escape:
        closeEditor();
        Q_EMIT lineAsked();
        return true;
    default:
        return false;
    }
}

void LiftTable::mouseReleaseEvent(QMouseEvent* event)
{
    const QModelIndex row = indexAt(event->pos());
    if (event->button() != Qt::LeftButton || !row.isValid()) {
        QListView::mouseReleaseEvent(event);
        return;
    }
    const auto boxes = boxesOf(row);
    const auto box = std::find_if(boxes.begin(), boxes.end(), [event](const LiftBox& one) { return one.rect.contains(event->position()); });
    const std::optional<LiftBox> hit = box == boxes.end() ? std::nullopt : std::optional(*box);
    closeEditor();
    Q_EMIT rowAsked(row.row());
    if (!hit) {
        return;
    }
    if (hit->field == LiftField::Felt) {
        const bool isLeftHalf = event->position().x() < hit->rect.center().x();
        Q_EMIT fieldTyped(LiftField::Felt, 0, isLeftHalf ? QStringLiteral("steady") : QStringLiteral("shaky"));
        return;
    }
    editBox(hit->field, hit->set);
}

void LiftTable::resizeEvent(QResizeEvent* event)
{
    QListView::resizeEvent(event);
    closeEditor();
}

}  // namespace chalk::ui::floor
