#include "ui/onboarding/plan_step.h"

#include "core/exchange/plan_draft_json.h"
#include "core/planning/plan_wishes.h"
#include "core/store/client_writer.h"
#include "core/store/plan_templates.h"
#include "ui/common/action_button.h"
#include "ui/common/day_entry.h"
#include "ui/common/empty_state.h"
#include "ui/common/formats.h"
#include "ui/common/look.h"
#include "ui/common/panel.h"
#include "ui/common/prose.h"
#include "ui/common/scroll_column.h"
#include "ui/onboarding/onboarding_case.h"
#include "ui/onboarding/plan_lift_row.h"
#include "ui/onboarding/plan_words.h"
#include "ui/onboarding/visit_table.h"

#include <QAction>
#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QScrollArea>
#include <QSignalBlocker>
#include <QVBoxLayout>

namespace chalk::ui::onboarding {

namespace {


}  // namespace

PlanStep::PlanStep(const OnboardingServices& services, QWidget* parent)
    : OnboardingStep(parent),
      m_services(services),
      m_desk(services),
      m_panel(new common::Panel(services.look, this)),
      m_side(new common::Panel(services.look, this)),
      m_template(new QComboBox),
      m_firstDay(new QLineEdit),
      m_templateName(new QLineEdit),
      m_visits(new VisitTable(services.look)),
      m_editable(new QWidget),
      m_words(new QLabel),
      m_start(new common::ActionButton(services.look, tr("Start the plan"), m_side)),
      m_back(new common::ActionButton(services.look, tr("Take the plan back"), m_side)),
      m_board(new common::ActionButton(services.look, tr("Open the board"), m_side))
{
    build();
    buildSide();
    layOut(services.look, m_panel, m_side);
    auto* begin = new QAction(tr("Start the plan"), this);
    begin->setShortcuts({Qt::CTRL | Qt::Key_Return, Qt::CTRL | Qt::Key_Enter});
    begin->setShortcutContext(Qt::WidgetWithChildrenShortcut);
    connect(begin, &QAction::triggered, this, &PlanStep::start);
    addAction(begin);
}

void PlanStep::build()
{
    m_panel->setTitle(tr("Starting plan"), tr("the first two weeks"));
    auto* column = new QVBoxLayout(m_editable);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    buildTop(*column);
    for (const lifts::Pattern pattern : lifts::kPatterns) {
        auto* row = new PlanLiftRow(m_services.look, pattern, m_editable);
        connect(row, &PlanLiftRow::exerciseChosen, this, [this, pattern](const std::string& key) {
            m_desk.draft().of(pattern).exerciseKey = key;
            keepDraft();
        });
        connect(row, &PlanLiftRow::firstLoadChosen, this, [this, pattern](std::optional<base::Load> load) {
            m_desk.draft().of(pattern).firstLoad = load;
            keepDraft();
        });
        connect(row, &PlanLiftRow::leftOut, this, [this, pattern](bool isLeftOut) {
            m_desk.draft().of(pattern).isLeftOut = isLeftOut;
            keepDraft();
        });
        column->addWidget(row);
        m_rows.push_back(row);
    }
    auto* caption = new QLabel(tr("Sessions of the week"), m_editable);
    caption->setProperty("role", QStringLiteral("strong"));
    caption->setContentsMargins(16, 12, 16, 4);
    column->addWidget(caption);
    column->addWidget(m_visits);
    connect(m_visits, &VisitTable::slotsChanged, this, [this](const std::vector<planning::WeekSlot>& changed) {
        m_desk.draft().slots = changed;
        keepDraft();
    });
    column->addStretch(1);
    m_scroll = new QScrollArea(m_panel);
    common::holdColumn(*m_scroll, m_editable);
    m_panel->body()->addWidget(m_scroll);
    m_noPlan = new common::EmptyState(m_services.look, m_panel);
    m_noPlan->setPicture(QStringLiteral("board"), common::Signal::Muted);
    m_noPlan->setWords(tr("No starting plan on file"), tr("These lifts began without one. Where each stands and what is next is on the board."));
    m_panel->body()->addWidget(m_noPlan);
}

void PlanStep::buildTop(QVBoxLayout& column)
{
    auto* bar = new QHBoxLayout;
    bar->setContentsMargins(16, 10, 16, 8);
    bar->setSpacing(10);
    m_template->setAccessibleName(tr("Template of the week"));
    m_firstDay->setAccessibleName(tr("First day"));
    m_firstDay->setFixedWidth(qRound(m_services.look.theme().scaled(120)));
    bar->addWidget(new QLabel(tr("Template"), m_editable));
    bar->addWidget(m_template, 1);
    bar->addWidget(new QLabel(tr("From"), m_editable));
    bar->addWidget(m_firstDay);
    column.addLayout(bar);
    connect(m_template, &QComboBox::activated, this, [this](int index) {
        m_desk.draft().templateKey = m_desk.templates()[static_cast<std::size_t>(index)].key;
        m_desk.draft().slots.clear();
        keepDraft();
    });
    connect(m_firstDay, &QLineEdit::editingFinished, this, [this] {
        const auto day = common::dayOfEntry(m_firstDay->text());
        m_desk.draft().firstDay = day && *day > m_today ? day : std::nullopt;
        keepDraft();
    });
}

void PlanStep::buildSide()
{
    m_side->setTitle(tr("What begins"));
    m_words->setWordWrap(true);
    m_words->setTextFormat(Qt::RichText);
    m_words->setContentsMargins(16, 12, 16, 8);
    auto* scroll = new QScrollArea(m_side);
    scroll->setWidgetResizable(true);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll->setFocusPolicy(Qt::NoFocus);
    auto* holder = new QWidget;
    auto* column = new QVBoxLayout(holder);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_words);
    column->addStretch(1);
    scroll->setWidget(holder);
    scroll->viewport()->setAutoFillBackground(false);
    holder->setAutoFillBackground(false);
    m_side->body()->addWidget(scroll, 1);
    auto* foot = new QVBoxLayout;
    foot->setContentsMargins(16, 10, 16, 12);
    foot->setSpacing(8);
    auto* keep = new QHBoxLayout;
    m_templateName->setPlaceholderText(tr("Name of an own template"));
    auto* save = new common::ActionButton(m_services.look, tr("Save as template"), m_side);
    connect(save, &QPushButton::clicked, this, &PlanStep::saveTemplate);
    connect(m_templateName, &QLineEdit::returnPressed, this, &PlanStep::saveTemplate);
    keep->addWidget(m_templateName, 1);
    keep->addWidget(save);
    foot->addLayout(keep);
    m_start->setKind(common::ButtonKind::Primary);
    m_start->setKeyText(tr("Ctrl Enter"));
    m_board->setKind(common::ButtonKind::Primary);
    connect(m_start, &QPushButton::clicked, this, &PlanStep::start);
    connect(m_back, &QPushButton::clicked, this, &PlanStep::takeBack);
    connect(m_board, &QPushButton::clicked, this, [this] { Q_EMIT placeAsked({.page = QStringLiteral("client"), .client = m_client.id}); });
    for (common::ActionButton* button : {m_back, m_board, m_start}) {
        foot->addWidget(button);
    }
    m_side->body()->addLayout(foot);
}

void PlanStep::setCase(const OnboardingCase& onboarding)
{
    m_client = onboarding.client;
    m_today = onboarding.today;
    m_hasLifts = onboarding.hasLifts;
    m_desk.take(onboarding);
    m_editable->setEnabled(!m_hasLifts);
    const auto started = store::ClientForms(m_services.database).latest(m_client.id, store::FormKind::StartingPlan);
    const bool isOfLifts = m_hasLifts && !(started && *started && (*started)->isFinished);
    m_scroll->setVisible(!isOfLifts);
    m_noPlan->setVisible(isOfLifts);
    m_start->setVisible(!m_hasLifts);
    m_board->setVisible(m_hasLifts);
    const auto canTakeBack = store::PlanStarter(m_services.database, store::randomSessionCode).canTakeBack(m_client.id);
    m_back->setVisible(m_hasLifts && canTakeBack.value_or(false));
    showPlan();
}

void PlanStep::showPlan()
{
    const QSignalBlocker quiet(m_template);
    m_template->clear();
    for (const planning::PlanTemplate& one : m_desk.templates()) {
        m_template->addItem(common::qstring(one.name));
    }
    m_template->setCurrentIndex(static_cast<int>(m_desk.templateIndex()));
    if (!m_firstDay->hasFocus()) {
        m_firstDay->setText(common::entryOfDay(m_desk.draft().firstDay.value_or(m_today)));
    }
    for (PlanLiftRow* row : m_rows) {
        row->setDesk(m_desk, m_services.catalogue, m_client.unit);
    }
    m_visits->setPlan(m_desk.plan(), planning::withWishes(m_desk.templates()[m_desk.templateIndex()], m_desk.draft(), m_services.catalogue));
    m_words->setText(common::proseHtml(sideHtml()));
    m_start->setEnabled(m_desk.toStart().has_value());
}

QString PlanStep::sideHtml() const
{
    const common::Theme& theme = m_services.look.theme();
    if (m_hasLifts) {
        return tr("The plan runs. What is next is on the board; a lift that was left out can begin after a new screen.").toHtmlEscaped();
    }
    QStringList parts;
    if (const auto start = m_desk.toStart(); !start) {
        parts.append(QStringLiteral("<span style='color:%1'>%2</span>").arg(theme.warn.name(), start.error().toHtmlEscaped()));
    } else if (!start->visits.empty()) {
        const store::PlannedVisit& first = start->visits.front();
        parts.append(tr("<b>First session: %1 at %2.</b>").arg(common::dayText(first.date), common::qstring(sessions::clockText(first.startMinute))));
        parts.append(tr("%1 lifts begin, %2 sessions are booked.").arg(start->lifts.size()).arg(start->visits.size()));
    }
    if (const QString warning = weekWarning(m_desk.plan().week); !warning.isEmpty()) {
        parts.append(QStringLiteral("<span style='color:%1'>%2</span>").arg(theme.warn.name(), warning.toHtmlEscaped()));
    }
    for (const planning::PatternGap& gap : m_desk.plan().gaps) {
        parts.append(QStringLiteral("<b>%1:</b> %2").arg(common::patternName(gap.pattern).toHtmlEscaped(), gapReason(gap, m_services.catalogue).toHtmlEscaped()));
    }
    parts.append(QStringLiteral("<span style='color:%1'>%2</span>")
                     .arg(theme.ink3.name(), tr("48 hours between sessions that train the same movements; large before small. Common practice, and the coach decides.").toHtmlEscaped()));
    return parts.join(QStringLiteral("<br><br>"));
}

void PlanStep::keepDraft()
{
    const auto written = store::ClientWriter(m_services.database).saveForm(m_client.id, store::FormKind::StartingPlan, exchange::toJson(m_desk.draft()), m_today);
    if (!written) {
        Q_EMIT refused(written.error().message);
        return;
    }
    Q_EMIT saved();
}

void PlanStep::start()
{
    const auto plan = m_desk.toStart();
    if (m_hasLifts || !plan) {
        return;
    }
    const auto started = store::PlanStarter(m_services.database, store::randomSessionCode).start(m_client.id, *plan, m_today);
    if (!started) {
        Q_EMIT refused(started.error().message);
        return;
    }
    Q_EMIT saved();
    m_board->setFocus(Qt::OtherFocusReason);
}

void PlanStep::takeBack()
{
    const auto taken = store::PlanStarter(m_services.database, store::randomSessionCode).takeBack(m_client.id);
    if (!taken) {
        Q_EMIT refused(taken.error().message);
        return;
    }
    Q_EMIT saved();
}

void PlanStep::saveTemplate()
{
    const QString name = m_templateName->text().trimmed();
    if (name.isEmpty()) {
        m_templateName->setFocus(Qt::OtherFocusReason);
        return;
    }
    planning::PlanTemplate own = planning::withWishes(m_desk.templates()[m_desk.templateIndex()], m_desk.draft(), m_services.catalogue);
    own.name = name.toStdString();
    own.key = "own_" + std::to_string(qHash(name));
    const auto kept = store::PlanTemplates(m_services.database, m_services.catalogue).save(own);
    if (!kept) {
        Q_EMIT refused(kept.error().message);
        return;
    }
    m_desk.draft().templateKey = own.key;
    m_templateName->clear();
    keepDraft();
}

void PlanStep::takeFocus()
{
    if (m_hasLifts) {
        m_board->setFocus(Qt::OtherFocusReason);
    } else {
        m_template->setFocus(Qt::OtherFocusReason);
    }
}

std::vector<shell::KeyHint> PlanStep::keyHints() const
{
    return m_hasLifts ? std::vector<shell::KeyHint>() : std::vector<shell::KeyHint>{{QStringLiteral("Ctrl+Enter"), tr("Start the plan")}};
}

bool PlanStep::closeOrClear()
{
    return false;
}

}  // namespace chalk::ui::onboarding
