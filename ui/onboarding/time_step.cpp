#include "ui/onboarding/time_step.h"

#include "core/exchange/plan_template_json.h"
#include "core/exchange/profile_json.h"
#include "core/planning/session_days.h"
#include "core/sessions/session.h"
#include "core/store/client_writer.h"
#include "ui/common/action_button.h"
#include "ui/common/formats.h"
#include "ui/common/hours_grid.h"
#include "ui/common/kit_words.h"
#include "ui/common/look.h"
#include "ui/common/panel.h"
#include "ui/common/prose.h"
#include "ui/common/scroll_column.h"
#include "ui/common/segmented_choice.h"
#include "ui/common/settling.h"
#include "ui/onboarding/onboarding_case.h"

#include <QCheckBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLocale>
#include <QScrollArea>
#include <QVBoxLayout>

#include <algorithm>

namespace chalk::ui::onboarding {

namespace {

constexpr int kWeekdays = 5;
constexpr int kAllDays = 7;

constexpr std::array kHomeKit{lifts::EquipmentKind::Barbell,        lifts::EquipmentKind::TrapBar, lifts::EquipmentKind::Dumbbell, lifts::EquipmentKind::DumbbellPair,
                              lifts::EquipmentKind::Kettlebell,     lifts::EquipmentKind::KettlebellPair, lifts::EquipmentKind::Bag, lifts::EquipmentKind::Stack,
                              lifts::EquipmentKind::AddedToBody};

int daysWithHours(const clients::WeekHours& hours, int minutes)
{
    int days = 0;
    for (int day = 0; day < kAllDays; ++day) {
        bool isPossible = false;
        for (int slot = 0; slot < clients::WeekHours::kSlotsPerDay && !isPossible; ++slot) {
            isPossible = hours.covers(day, slot * clients::WeekHours::kSlotMinutes, minutes);
        }
        days += isPossible ? 1 : 0;
    }
    return days;
}

}  // namespace

TimeStep::TimeStep(const OnboardingServices& services, QWidget* parent)
    : OnboardingStep(parent),
      m_services(services),
      m_panel(new common::Panel(services.look, this)),
      m_side(new common::Panel(services.look, this)),
      m_grid(new common::HoursGrid(services.look)),
      m_summary(new QLabel),
      m_templates(exchange::builtInPlanTemplates(services.catalogue))
{
    buildHours();
    buildSide();
    layOut(m_services.look, m_panel, m_side);
    connect(m_grid, &common::HoursGrid::painted, this, &TimeStep::save);
}

void TimeStep::buildHours()
{
    m_panel->setTitle(tr("Hours"), tr("when the client can come"));
    auto* bar = new QWidget(m_panel);
    auto* row = new QHBoxLayout(bar);
    row->setContentsMargins(16, 10, 16, 8);
    row->setSpacing(8);
    auto* brush = new common::SegmentedChoice(tr("Paint"), {{tr("Free"), common::Signal::Ok}, {tr("Rather"), common::Signal::Ok}, {tr("Not")}}, bar);
    brush->setChosen(0);
    connect(brush, &common::SegmentedChoice::choiceMade, this, [this](int index) { m_grid->setBrush(static_cast<common::HourBrush>(index)); });
    row->addWidget(brush);
    row->addStretch(1);
    const auto addFill = [&](const QString& text, int from, int to, int days) {
        auto* button = new common::ActionButton(m_services.look, text, bar);
        button->setButtonSize(common::ButtonSize::Small);
        connect(button, &QPushButton::clicked, this, [this, from, to, days] { fill(from, to, days); });
        row->addWidget(button);
    };
    addFill(tr("Mornings"), 7 * 60, 12 * 60, kWeekdays);
    addFill(tr("Middays"), 11 * 60, 14 * 60, kWeekdays);
    addFill(tr("Evenings"), 17 * 60, 21 * 60, kWeekdays);
    addFill(tr("All hours"), 7 * 60, 21 * 60, kAllDays);
    auto* clear = new common::ActionButton(m_services.look, tr("None"), bar);
    clear->setButtonSize(common::ButtonSize::Small);
    connect(clear, &QPushButton::clicked, this, [this] {
        m_grid->setHours({}, {});
        save();
    });
    row->addWidget(clear);
    m_panel->body()->addWidget(bar);
    auto* scroll = new QScrollArea(m_panel);
    auto* holder = new QWidget;
    auto* column = new QVBoxLayout(holder);
    column->setContentsMargins(8, 0, 16, 12);
    column->addWidget(m_grid);
    common::holdColumn(*scroll, holder);
    m_panel->body()->addWidget(scroll, 1);
    auto* whole = new QCheckBox(tr("Show the night too"), m_panel);
    whole->setContentsMargins(16, 0, 16, 8);
    connect(whole, &QCheckBox::toggled, m_grid, &common::HoursGrid::setWholeDay);
    auto* foot = new QHBoxLayout;
    foot->setContentsMargins(16, 0, 16, 8);
    foot->addWidget(whole);
    m_panel->body()->addLayout(foot);
}

void TimeStep::buildSide()
{
    m_side->setTitle(tr("What that gives"));
    m_summary->setWordWrap(true);
    m_summary->setTextFormat(Qt::RichText);
    m_summary->setContentsMargins(16, 12, 16, 8);
    auto* contents = new QWidget;
    auto* column = new QVBoxLayout(contents);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(m_summary);
    auto* caption = new QLabel(tr("Kit at home, if any"), contents);
    caption->setProperty("role", QStringLiteral("caption"));
    caption->setContentsMargins(16, 12, 16, 2);
    column->addWidget(caption);
    auto* kit = new QVBoxLayout;
    kit->setContentsMargins(16, 0, 16, 12);
    kit->setSpacing(0);
    for (const lifts::EquipmentKind kind : kHomeKit) {
        auto* box = new QCheckBox(common::kitName(kind), contents);
        connect(box, &QCheckBox::clicked, this, &TimeStep::save);
        kit->addWidget(box);
        m_kit.push_back(box);
    }
    column->addLayout(kit);
    column->addStretch(1);
    auto* scroll = new QScrollArea(m_side);
    common::holdColumn(*scroll, contents);
    m_side->body()->addWidget(scroll);
}

void TimeStep::setCase(const OnboardingCase& onboarding)
{
    m_client = onboarding.client;
    m_kept = onboarding.profile;
    m_today = onboarding.today;
    m_grid->setHours(m_kept.free, m_kept.preferred);
    for (std::size_t i = 0; i < m_kit.size(); ++i) {
        m_kit[i]->setChecked(std::find(m_kept.homeKit.begin(), m_kept.homeKit.end(), kHomeKit[i]) != m_kept.homeKit.end());
    }
    showSummary();
}

void TimeStep::fill(int firstMinute, int endMinute, int days)
{
    clients::WeekHours free = m_grid->free();
    for (int day = 0; day < days; ++day) {
        static_cast<void>(free.add({day, firstMinute, endMinute}));
    }
    m_grid->setHours(free, m_grid->preferred());
    save();
}

void TimeStep::save()
{
    clients::Profile next = m_kept;
    next.free = m_grid->free();
    next.preferred = m_grid->preferred();
    next.homeKit.clear();
    for (std::size_t i = 0; i < m_kit.size(); ++i) {
        if (m_kit[i]->isChecked()) {
            next.homeKit.push_back(kHomeKit[i]);
        }
    }
    if (next == m_kept) {
        return;
    }
    const auto written = common::settled(m_services.dialogs, m_services.database, exchange::toJson(m_kept), [&](const common::Settling& settling) {
        next = settling.merged ? exchange::readProfile(*settling.merged, {}).value_or(next) : next;
        return store::ClientWriter(m_services.database).saveProfile(m_client.id, next, m_today, settling.seen);
    });
    if (!written) {
        return tell(written.error());
    }
    m_kept = next;
    Q_EMIT saved();
}

void TimeStep::showSummary()
{
    const int minutes = m_kept.sessionMinutes;
    if (m_kept.free.isEmpty()) {
        m_summary->setText(common::proseHtml(tr("Nothing painted yet. Without hours the plan takes any day from 9:00 to 20:00.")));
        return;
    }
    const int days = daysWithHours(m_kept.free, minutes);
    QStringList lines{(days == 1 ? tr("One day with room for %1 minutes.") : tr("%1 days").arg(days) + tr(" with room for %1 minutes.")).arg(minutes)};
    const planning::PlanTemplate* plan = planning::templateFor(m_templates, m_client.sessionsPerWeek);
    if (plan != nullptr) {
        const planning::WeekOfSessions week = planning::weekOf(*plan, {m_kept.free, m_kept.preferred, minutes}, m_today.weekday());
        QStringList slots;
        for (const planning::WeekSlot& slot : week.slots) {
            slots.append(QStringLiteral("%1 %2").arg(QLocale::c().dayName(slot.weekday + 1, QLocale::ShortFormat), common::qstring(sessions::clockText(slot.startMinute))));
        }
        lines.append(week.unplaced.empty() ? tr("The sessions of a week fit: %1.").arg(slots.join(QStringLiteral(", ")))
                                           : tr("Of %1 sessions a week only %2 fit.").arg(m_client.sessionsPerWeek).arg(static_cast<int>(week.slots.size())));
        if (!week.tooClose.empty()) {
            lines.append(tr("They lie closer than 48 hours for the same movements: another day would help."));
        }
    }
    m_summary->setText(common::proseHtml(lines.join(QStringLiteral("<br>"))));
}

void TimeStep::takeFocus()
{
    m_grid->setFocus(Qt::OtherFocusReason);
}

std::vector<shell::KeyHint> TimeStep::keyHints() const
{
    return {{QStringLiteral("F"), tr("Free")}, {QStringLiteral("R"), tr("Rather")}, {tr("Del"), tr("Not")}, {tr("Shift ↓"), tr("Select")}};
}

}  // namespace chalk::ui::onboarding
