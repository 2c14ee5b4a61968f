#include "ui/week/closures_editor.h"

#include "core/sessions/session.h"
#include "ui/common/action_button.h"
#include "ui/common/day_entry.h"
#include "ui/common/formats.h"
#include "ui/common/look.h"
#include "ui/print/group_words.h"

#include <QComboBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QSpinBox>
#include <QVBoxLayout>

namespace chalk::ui::week {

using chalk::week::Closure;
using chalk::week::kDayMinutes;

namespace {

constexpr int kHalfHour = 30;
constexpr int kStationBase = 1'000'000'000;  ///< entries of the choice from here on are stations

void fillTimes(QComboBox& box, int first, int last, int chosen)
{
    for (int minute = first; minute <= last; minute += kHalfHour) {
        box.addItem(minute == kDayMinutes ? QStringLiteral("24:00") : common::qstring(sessions::clockText(minute)), minute);
    }
    box.setCurrentIndex(box.findData(chosen));
}

}  // namespace

ClosuresEditor::ClosuresEditor(const common::Look& look, StudioHours& hours, base::Date today, QWidget* parent)
    : QWidget(parent),
      m_look(look),
      m_hours(hours),
      m_today(today),
      m_list(new QListWidget(this)),
      m_first(new QLineEdit(this)),
      m_last(new QLineEdit(this)),
      m_from(new QComboBox(this)),
      m_to(new QComboBox(this)),
      m_what(new QComboBox(this)),
      m_units(new QSpinBox(this)),
      m_why(new QLineEdit(this)),
      m_typed(new QLabel(this)),
      m_add(new common::ActionButton(look, tr("Add the closure"), this)),
      m_remove(new common::ActionButton(look, tr("Take it away"), this))
{
    m_what->addItem(tr("The studio"), QVariant::fromValue<qlonglong>(0));
    for (const clients::Coach& coach : hours.coaches()) {
        m_what->addItem(common::qstring(coach.name), QVariant::fromValue<qlonglong>(coach.id.value()));
    }
    for (const lifts::Station station : {lifts::Station::Rack, lifts::Station::Bench, lifts::Station::Machine, lifts::Station::PullUpBar, lifts::Station::Lane}) {
        m_what->addItem(print::stationName(station), QVariant::fromValue<qlonglong>(kStationBase + static_cast<int>(station)));
    }
    fillTimes(*m_from, 0, kDayMinutes - kHalfHour, 0);
    fillTimes(*m_to, kHalfHour, kDayMinutes, kDayMinutes);
    m_first->setText(common::entryOfDay(today));
    build();
    showAll();
    showTyped();
}

void ClosuresEditor::build()
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(10);
    m_list->setAccessibleName(tr("Closures"));
    m_list->setWordWrap(true);
    column->addWidget(m_list, 1);
    column->addWidget(m_remove, 0, Qt::AlignLeft);
    column->addLayout(buildForm());
    m_typed->setWordWrap(true);
    m_typed->setProperty("role", QStringLiteral("secondary"));
    column->addWidget(m_typed);
    m_add->setKind(common::ButtonKind::Primary);
    column->addWidget(m_add, 0, Qt::AlignRight);
    for (QLineEdit* field : {m_first, m_last, m_why}) {
        connect(field, &QLineEdit::textChanged, this, &ClosuresEditor::showTyped);
        connect(field, &QLineEdit::returnPressed, this, &ClosuresEditor::add);
    }
    for (QComboBox* box : {m_from, m_to, m_what}) {
        connect(box, &QComboBox::currentIndexChanged, this, &ClosuresEditor::showTyped);
    }
    connect(m_units, &QSpinBox::valueChanged, this, &ClosuresEditor::showTyped);
    connect(m_list, &QListWidget::currentRowChanged, this, [this](int row) { m_remove->setEnabled(row >= 0); });
    connect(m_add, &QPushButton::clicked, this, &ClosuresEditor::add);
    connect(m_remove, &QPushButton::clicked, this, &ClosuresEditor::remove);
}

QFormLayout* ClosuresEditor::buildForm()
{
    auto* form = new QFormLayout;
    form->setLabelAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    const auto addPair = [this, form](const QString& text, QWidget* from, const QString& fromName, QWidget* to, const QString& toName) {
        auto* row = new QHBoxLayout;
        from->setAccessibleName(fromName);
        to->setAccessibleName(toName);
        row->addWidget(from, 1);
        row->addWidget(new QLabel(tr("to"), this));
        row->addWidget(to, 1);
        form->addRow(text, row);
    };
    const auto add = [form](const QString& text, QWidget* field) {
        field->setAccessibleName(text);
        form->addRow(text, field);
    };
    addPair(tr("Days"), m_first, tr("First day"), m_last, tr("Last day"));
    m_last->setPlaceholderText(tr("The same day"));
    addPair(tr("Hours"), m_from, tr("From"), m_to, tr("To"));
    add(tr("What is not there"), m_what);
    m_units->setRange(0, 20);
    add(tr("How many are left"), m_units);
    add(tr("Why"), m_why);
    return form;
}

std::optional<Closure> ClosuresEditor::closure() const
{
    const auto first = common::dayOfEntry(m_first->text());
    const auto last = m_last->text().trimmed().isEmpty() ? first : common::dayOfEntry(m_last->text());
    const qlonglong what = m_what->currentData().toLongLong();
    Closure closure;
    if (!first || !last) {
        return std::nullopt;
    }
    closure.first = *first;
    closure.last = *last;
    closure.fromMinute = m_from->currentData().toInt();
    closure.toMinute = m_to->currentData().toInt();
    if (what >= kStationBase) {
        closure.station = static_cast<lifts::Station>(what - kStationBase);
        closure.units = m_units->value();
    } else {
        closure.coach = base::CoachId(what);
    }
    closure.why = m_why->text().trimmed().toStdString();
    return faultOf(closure) ? std::nullopt : std::optional(closure);
}

void ClosuresEditor::showAll()
{
    m_list->clear();
    for (const store::KeptClosure& kept : m_hours.closures()) {
        auto* item = new QListWidgetItem(closureLine(kept.closure, m_hours.coaches()), m_list);
        item->setData(Qt::UserRole, QVariant::fromValue<qlonglong>(kept.id));
    }
    m_remove->setEnabled(false);
}

void ClosuresEditor::showTyped()
{
    const auto typed = closure();
    m_units->setEnabled(m_what->currentData().toLongLong() >= kStationBase);
    m_add->setEnabled(typed.has_value());
    m_typed->setText(!m_hours.refusal().isEmpty() ? m_hours.refusal() : typed ? closureLine(*typed, m_hours.coaches()) : tr("The days or the hours make no sense yet: 24 Dec 2026."));
}

void ClosuresEditor::add()
{
    if (const auto typed = closure(); typed && m_hours.addClosure(*typed)) {
        m_why->clear();
        showAll();
        Q_EMIT changed();
    }
    showTyped();
}

void ClosuresEditor::remove()
{
    const QListWidgetItem* item = m_list->currentItem();
    if (item != nullptr) {
        const bool isRemoved = m_hours.removeClosure(item->data(Qt::UserRole).toLongLong());
        showAll();  // somebody else may have taken it away
        if (isRemoved) {
            Q_EMIT changed();
        }
    }
    showTyped();
}

}  // namespace chalk::ui::week
