#include "ui/floor/entry_pane.h"

#include "ui/common/formats.h"
#include "ui/common/look.h"
#include "ui/common/plan_week_text.h"
#include "ui/floor/entry_chips.h"
#include "ui/floor/entry_field.h"
#include "ui/floor/lift_heading.h"
#include "ui/floor/next_time_bar.h"
#include "ui/floor/rehearsal_sheet.h"

#include <QSignalBlocker>
#include <QVBoxLayout>

namespace chalk::ui::floor {

namespace {

LiftHeading::View headingOf(const FloorClient& client, const FloorLift& lift)
{
    LiftHeading::View view{common::qstring(lift.exercise.name), lift.due.stage, lift.due.cycle, {}, lift.due.block ? common::planWeekText(*lift.due.block) : QString()};
    for (const clients::Caution& caution : client.cautions) {
        const std::string& words = caution.shortText.empty() ? caution.text : caution.shortText;
        view.cautions.append(QStringLiteral("%1: %2").arg(common::qstring(caution.bodyPart), common::qstring(words)));
    }
    return view;
}

}  // namespace

EntryPane::EntryPane(const common::Look& look, QWidget* parent)
    : QWidget(parent),
      m_heading(new LiftHeading(look, this)),
      m_field(new EntryField(look, this)),
      m_sheet(new RehearsalSheet(look, this)),
      m_chips(new EntryChips(look, this)),
      m_next(new NextTimeBar(look, this))
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(16, 14, 16, 12);
    column->setSpacing(8);
    column->addWidget(m_heading);
    column->addWidget(m_field);
    column->addWidget(m_sheet);
    column->addWidget(m_chips);
    column->addWidget(m_next);
    connect(m_field, &QLineEdit::textEdited, this, &EntryPane::typed);
    connect(m_field, &QLineEdit::returnPressed, this, &EntryPane::saveAsked);
    connect(m_sheet, &RehearsalSheet::judged, this, &EntryPane::judged);
    connect(m_sheet, &RehearsalSheet::saveAsked, this, &EntryPane::saveAsked);
}

void EntryPane::showDesk(const FloorDesk& desk)
{
    const FloorLift& lift = *desk.lift();
    const EntryReading reading = desk.reading();
    const bool isSheet = lift.isRehearsed();
    const bool isOpen = reading.state != EntryState::Blocked && reading.state != EntryState::OnHold;
    m_heading->setView(headingOf(*desk.client(), lift));
    m_field->setVisible(!isSheet);
    m_sheet->setVisible(isSheet);
    m_chips->setVisible(!isSheet && !reading.chips.empty());
    m_field->setEnabled(isOpen);
    m_sheet->setEnabled(isOpen);
    m_field->setHint(tr("reps, then @load r-left p-pain s-shaky"));
    if (m_field->text() != lift.line) {
        const QSignalBlocker quiet(m_field);
        m_field->setText(lift.line);
    }
    m_field->setFault(reading.faultBegin, reading.state == EntryState::Fault ? reading.faultLength : 0);
    const progression::Policy& policy = lift.machine.setup().policy;
    m_sheet->setRehearsal(lift.points, lift.rehearsal, policy.pauseMs, policy.controlReps.value());
    m_chips->setChips(reading.chips);
    m_next->setMessage(desk.message());
}

void EntryPane::focusEntry()
{
    if (m_sheet->isVisibleTo(this)) {
        m_sheet->focusOpenPlace();
    } else {
        m_field->setFocus(Qt::OtherFocusReason);
    }
}

void EntryPane::forgetTyping()
{
    m_field->forgetTyping();
}

void EntryPane::focusFault(const EntryReading& reading)
{
    if (reading.rehearsalFault) {
        m_sheet->focusPlace(*reading.rehearsalFault);
    } else if (reading.faultLength > 0) {
        m_field->setFocus(Qt::OtherFocusReason);
        m_field->setSelection(reading.faultBegin, reading.faultLength);
    }
}

}  // namespace chalk::ui::floor
