#include "ui/floor/rehearsal_sheet.h"

#include "ui/common/look.h"
#include "ui/common/plain_typing.h"
#include "ui/common/segmented_choice.h"

#include <QAbstractButton>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QVBoxLayout>

namespace chalk::ui::floor {

namespace {

using common::SegmentedChoice;
using common::Signal;
using progression::Verdict;

constexpr int kMostRehearsalPain = 10;

QLabel* rowLabel(const QString& text, QWidget* parent)
{
    auto* label = new QLabel(text, parent);
    label->setWordWrap(true);
    return label;
}

}  // namespace

RehearsalSheet::RehearsalSheet(const common::Look& look, QWidget* parent) : QWidget(parent), m_look(look)
{
    setAccessibleName(tr("Rehearsal"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    buildPoints();
    buildNumbers();
    buildFelt();
}

QHBoxLayout* RehearsalSheet::addRow(QLabel* label)
{
    auto* row = new QHBoxLayout;
    row->setSpacing(12);
    row->addWidget(label, 1);
    static_cast<QVBoxLayout*>(layout())->addLayout(row);
    return row;
}

void RehearsalSheet::watch(QWidget* widget)
{
    widget->installEventFilter(this);
    for (QWidget* child : widget->findChildren<QWidget*>()) {
        child->installEventFilter(this);
    }
}

void RehearsalSheet::buildPoints()
{
    for (std::size_t i = 0; i < m_verdicts.size(); ++i) {
        m_points[i] = rowLabel({}, this);
        m_verdicts[i] = new SegmentedChoice(tr("Point %1").arg(i + 1), {{tr("Met"), Signal::Ok}, {tr("Partly"), Signal::Warn}, {tr("Not met"), Signal::Pain}}, this);
        connect(m_verdicts[i], &SegmentedChoice::choiceMade, this, [this, i](int choice) {
            m_draft.verdicts[i] = static_cast<Verdict>(choice);
            tell();
        });
        addRow(m_points[i])->addWidget(m_verdicts[i]);
        m_rows.push_back({m_verdicts[i]});
        watch(m_verdicts[i]);
    }
}

QLineEdit* RehearsalSheet::addSeconds(const QString& name)
{
    auto* field = new QLineEdit(this);
    field->setAccessibleName(name);
    field->setAlignment(Qt::AlignCenter);
    field->setFixedWidth(qRound(m_look.theme().scaled(64)));
    connect(field, &QLineEdit::textEdited, this, [this] {
        m_draft.reps = m_reps->text();
        for (std::size_t i = 0; i < m_pauses.size(); ++i) {
            m_draft.pauses[i] = m_pauses[i]->text();
        }
        tell();
    });
    watch(field);
    return field;
}

void RehearsalSheet::buildNumbers()
{
    m_numbersHint = rowLabel({}, this);
    auto* fields = addRow(m_numbersHint);
    fields->setSpacing(6);
    m_reps = addSeconds(tr("Reps"));
    m_pauses = {addSeconds(tr("Pause at the top, seconds")), addSeconds(tr("Pause in the middle, seconds")), addSeconds(tr("Pause at the bottom, seconds"))};
    const QStringList captions{tr("reps"), tr("top"), tr("middle"), tr("bottom")};
    std::vector<QWidget*> row{m_reps, m_pauses[0], m_pauses[1], m_pauses[2]};
    for (std::size_t i = 0; i < row.size(); ++i) {
        auto* caption = new QLabel(captions[static_cast<qsizetype>(i)], this);
        caption->setProperty("role", QStringLiteral("secondary"));
        fields->addWidget(caption);
        fields->addWidget(row[i]);
    }
    m_rows.push_back(std::move(row));
}

void RehearsalSheet::buildFelt()
{
    m_felt = new SegmentedChoice(tr("Felt"), {{tr("Steady"), Signal::Ok}, {tr("Shaky"), Signal::Warn}, {tr("Lost"), Signal::Pain}}, this);
    connect(m_felt, &SegmentedChoice::choiceMade, this, [this](int choice) {
        m_draft.felt = static_cast<progression::Steadiness>(choice);
        tell();
    });
    addRow(rowLabel(tr("Felt"), this))->addWidget(m_felt);
    m_rows.push_back({m_felt});
    watch(m_felt);
    std::vector<common::Segment> steps{{tr("None")}};
    for (int pain = 1; pain <= kMostRehearsalPain; ++pain) {
        steps.push_back({QString::number(pain), Signal::Pain});
    }
    m_pain = new SegmentedChoice(tr("Pain of 10"), steps, this);
    connect(m_pain, &SegmentedChoice::choiceMade, this, [this](int choice) {
        m_draft.pain = choice;
        tell();
    });
    addRow(rowLabel(tr("Pain of 10"), this))->addWidget(m_pain);
    m_rows.push_back({m_pain});
    watch(m_pain);
}

void RehearsalSheet::setRehearsal(const RehearsalPoints& points, const RehearsalDraft& draft, int pauseMs, int reps)
{
    m_draft = draft;
    for (std::size_t i = 0; i < m_points.size(); ++i) {
        const bool isThere = i < points.size();
        m_points[i]->setVisible(isThere);
        m_verdicts[i]->setVisible(isThere);
        if (!isThere) {
            continue;
        }
        m_points[i]->setText(QStringLiteral("%1  %2").arg(i + 1).arg(points[i].words));
        m_verdicts[i]->setAccessibleName(points[i].words);
        m_verdicts[i]->setChosen(draft.verdicts[i] ? static_cast<int>(*draft.verdicts[i]) : -1);
    }
    m_numbersHint->setText(tr("Pauses, at least %1 s each").arg(QString::number(pauseMs / 1000.0)));
    m_reps->setPlaceholderText(QString::number(reps));
    const auto show = [](QLineEdit* field, const QString& text) {
        if (field->text() != text) {
            field->setText(text);
        }
    };
    show(m_reps, draft.reps);
    for (std::size_t i = 0; i < m_pauses.size(); ++i) {
        m_pauses[i]->setPlaceholderText(QStringLiteral("–"));
        show(m_pauses[i], draft.pauses[i]);
    }
    m_felt->setChosen(static_cast<int>(draft.felt));
    m_pain->setChosen(draft.pain);
}

void RehearsalSheet::tell()
{
    Q_EMIT judged(m_draft);
}

bool RehearsalSheet::isRowThere(int row) const
{
    return row >= 0 && row < static_cast<int>(m_rows.size()) && !m_rows[static_cast<std::size_t>(row)].front()->isHidden();
}

int RehearsalSheet::rowFrom(int row, int by) const
{
    do {
        row += by;
    } while (row >= 0 && row < static_cast<int>(m_rows.size()) && !isRowThere(row));
    return row;
}

int RehearsalSheet::rowWithFocus() const
{
    for (std::size_t i = 0; i < m_rows.size(); ++i) {
        for (const QWidget* widget : m_rows[i]) {
            if (widget->hasFocus() || widget->isAncestorOf(focusWidget())) {
                return static_cast<int>(i);
            }
        }
    }
    return -1;
}

void RehearsalSheet::focusRow(int row)
{
    QWidget* first = m_rows[static_cast<std::size_t>(row)].front();
    if (auto* choice = qobject_cast<SegmentedChoice*>(first)) {
        // Buttons of one group are found in the order in which they stand.
        const auto buttons = choice->findChildren<QAbstractButton*>(QString(), Qt::FindDirectChildrenOnly);
        buttons[std::max(0, choice->chosen())]->setFocus(Qt::OtherFocusReason);
        return;
    }
    first->setFocus(Qt::OtherFocusReason);
}

bool RehearsalSheet::moveRow(int by)
{
    const int to = rowFrom(rowWithFocus(), by);
    if (!isRowThere(to)) {
        return false;
    }
    focusRow(to);
    return true;
}

void RehearsalSheet::focusOpenPlace()
{
    for (std::size_t i = 0; i < m_verdicts.size(); ++i) {
        if (!m_draft.verdicts[i] && isRowThere(static_cast<int>(i))) {
            focusRow(static_cast<int>(i));
            return;
        }
    }
    m_pauses[0]->setFocus(Qt::OtherFocusReason);
}

void RehearsalSheet::focusPlace(const RehearsalFault& fault)
{
    switch (fault.place) {
    case RehearsalPlace::Point:
        focusRow(fault.point);
        return;
    case RehearsalPlace::Reps:
        m_reps->setFocus(Qt::OtherFocusReason);
        return;
    case RehearsalPlace::PauseTop:
    case RehearsalPlace::PauseMiddle:
    case RehearsalPlace::PauseBottom:
        m_pauses[static_cast<std::size_t>(fault.place) - static_cast<std::size_t>(RehearsalPlace::PauseTop)]->setFocus(Qt::OtherFocusReason);
        return;
    }
}

bool RehearsalSheet::event(QEvent* event)
{
    if (event->type() == QEvent::ShortcutOverride && common::isPlainTyping(*static_cast<QKeyEvent*>(event))) {
        event->accept();
        return true;
    }
    return QWidget::event(event);
}

bool RehearsalSheet::eventFilter(QObject* watched, QEvent* event)
{
    if (event->type() != QEvent::KeyPress && event->type() != QEvent::ShortcutOverride) {
        return QWidget::eventFilter(watched, event);
    }
    const auto* key = static_cast<QKeyEvent*>(event);
    if ((key->modifiers() & ~Qt::KeypadModifier) != Qt::NoModifier) {
        return QWidget::eventFilter(watched, event);
    }
    const bool isUpOrDown = key->key() == Qt::Key_Up || key->key() == Qt::Key_Down;
    const int by = key->key() == Qt::Key_Up ? -1 : 1;
    const int row = rowWithFocus();
    // At the first and the last row Up and Down are left to the page, which goes to another lift.
    const bool isInside = isUpOrDown && isRowThere(rowFrom(row, by));
    if (event->type() == QEvent::ShortcutOverride) {
        if (isInside) {
            event->accept();
        }
        return isInside;
    }
    if (isInside) {
        return moveRow(by);
    }
    if (key->key() == Qt::Key_Return || key->key() == Qt::Key_Enter) {
        Q_EMIT saveAsked();
        return true;
    }
    if (row + 1 == static_cast<int>(m_rows.size()) && key->key() >= Qt::Key_0 && key->key() <= Qt::Key_9) {
        m_draft.pain = key->key() - Qt::Key_0;
        m_pain->setChosen(m_draft.pain);
        focusRow(row);
        tell();
        return true;
    }
    const int digit = key->key() - Qt::Key_1;
    if (row >= 0 && row < static_cast<int>(m_verdicts.size()) && digit >= 0 && digit <= 2) {
        m_draft.verdicts[static_cast<std::size_t>(row)] = static_cast<Verdict>(digit);
        m_verdicts[static_cast<std::size_t>(row)]->setChosen(digit);
        tell();
        moveRow(1);
        return true;
    }
    return QWidget::eventFilter(watched, event);
}

}  // namespace chalk::ui::floor
