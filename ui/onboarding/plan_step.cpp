#include "ui/onboarding/plan_step.h"

#include "core/exchange/plan_draft_json.h"
#include "core/exchange/plan_template_json.h"
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
#include "ui/common/settling.h"
#include "ui/onboarding/onboarding_case.h"
#include "ui/onboarding/plan_lift_row.h"
#include "ui/onboarding/plan_words.h"
#include "ui/onboarding/visit_table.h"

#include <QAction>
#include <QComboBox>
#include <QCryptographicHash>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QScrollArea>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include <algorithm>

namespace chalk::ui::onboarding {

namespace {

constexpr const char* kOwnTemplate = "own_";  ///< how the key of one begins

/// The key of an own template: the same for the same name, whatever is typed into it.
std::string keyOfOwnTemplate(const QString& name)
{
    constexpr int kKeyLength = 16;
    return kOwnTemplate + QCryptographicHash::hash(name.toUtf8(), QCryptographicHash::Sha256).toHex().left(kKeyLength).toStdString();
}

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
      m_saveTemplate(new common::ActionButton(services.look, tr("Save as template"), m_side)),
      m_renameTemplate(new common::ActionButton(services.look, tr("Rename"), m_side)),
      m_removeTemplate(new common::ActionButton(services.look, tr("Remove"), m_side)),
      m_putBack(new common::ActionButton(services.look, tr("Put it back"), m_side)),
      m_visits(new VisitTable),
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
        buildRow(pattern);
        column->addWidget(m_rows.back());
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
    connect(m_visits, &VisitTable::contentsChanged, this, [this](const planning::SessionContents& changed) {
        m_desk.draft().contents = changed;
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

void PlanStep::buildRow(lifts::Pattern pattern)
{
    auto* row = new PlanLiftRow(m_services.look, pattern, m_editable);
    connect(row, &PlanLiftRow::exerciseChosen, this, [this, pattern](const std::string& key) {
        m_desk.draft().of(pattern).exerciseKey = key;
        keepDraft();
    });
    connect(row, &PlanLiftRow::equipmentChosen, this, [this, pattern](const std::string& key) {
        m_desk.draft().of(pattern).equipmentKey = key;
        m_desk.draft().of(pattern).firstLoad.reset();
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
    connect(row, &PlanLiftRow::whyLeftOut, this, [this, pattern](const QString& why) {
        if (m_desk.draft().of(pattern).whyLeftOut != why.toStdString()) {
            m_desk.draft().of(pattern).whyLeftOut = why.toStdString();
            keepDraft();
        }
    });
    connect(row, &PlanLiftRow::wayOutAsked, this, [this, pattern](WayOut way) { goOut(pattern, way); });
    connect(row, &PlanLiftRow::beginAsked, this, [this, pattern] { beginLift(pattern); });
    m_rows.push_back(row);
}

void PlanStep::goOut(lifts::Pattern pattern, WayOut way)
{
    const auto open = [this](const char* step) { Q_EMIT placeAsked({.page = QStringLiteral("onboarding"), .client = m_client.id, .tab = QLatin1String(step)}); };
    switch (way) {
    case WayOut::None:
        break;
    case WayOut::Screen:
        open("movement");
        break;
    case WayOut::Health:
        open("health");
        break;
    case WayOut::Hours:
    case WayOut::Kit:
        open("time");
        break;
    case WayOut::AddToSession:
        m_desk.draft().contents = m_desk.contents().all;
        planning::addTo(m_desk.draft().contents, planning::shortestOf(m_desk.draft().contents), pattern);
        keepDraft();
        break;
    }
}

void PlanStep::beginLift(lifts::Pattern pattern)
{
    const planning::PlannedLift* lift = m_desk.plan().find(pattern);
    const auto fresh = lift == nullptr ? tl::make_unexpected(QString()) : m_desk.newLiftOf(*lift);
    if (!fresh) {
        Q_EMIT refused(fresh.error());
        return;
    }
    const auto begun = store::PlanStarter(m_services.database, store::randomSessionCode).beginLift(m_client.id, *fresh, m_today);
    if (!begun) {
        Q_EMIT refused(begun.error().message);
        return;
    }
    Q_EMIT saved();
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
        m_desk.draft().contents.clear();
        m_templateName->clear();
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
    buildTemplateKeeping(*foot);
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

void PlanStep::buildTemplateKeeping(QVBoxLayout& foot)
{
    m_templateName->setAccessibleName(tr("Name of an own template"));
    m_templateName->setPlaceholderText(tr("Own template, its name"));
    foot.addWidget(m_templateName);
    auto* buttons = new QHBoxLayout;
    buttons->setSpacing(8);
    for (common::ActionButton* button : {m_saveTemplate, m_renameTemplate, m_removeTemplate, m_putBack}) {
        button->setButtonSize(common::ButtonSize::Small);
        buttons->addWidget(button);
    }
    buttons->addStretch();
    foot.addLayout(buttons);
    connect(m_templateName, &QLineEdit::textChanged, this, &PlanStep::showTemplateKeeping);
    connect(m_templateName, &QLineEdit::returnPressed, this, &PlanStep::saveTemplate);
    connect(m_saveTemplate, &QPushButton::clicked, this, &PlanStep::saveTemplate);
    connect(m_renameTemplate, &QPushButton::clicked, this, &PlanStep::renameTemplate);
    connect(m_removeTemplate, &QPushButton::clicked, this, &PlanStep::removeTemplate);
    connect(m_putBack, &QPushButton::clicked, this, &PlanStep::putTemplateBack);
}

void PlanStep::setCase(const OnboardingCase& onboarding)
{
    m_client = onboarding.client;
    m_today = onboarding.today;
    m_hasLifts = onboarding.hasLifts;
    m_desk.take(onboarding);
    m_seenDraft = exchange::toJson(m_desk.draft());
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
    m_template->setEnabled(!m_hasLifts);
    m_firstDay->setEnabled(!m_hasLifts);
    m_visits->setEnabled(!m_hasLifts);
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
        row->setDesk(m_desk, m_services.catalogue, m_client.unit, m_hasLifts);
    }
    m_visits->setDesk(m_desk);
    showTemplateKeeping();
    m_words->setText(common::proseHtml(sideHtml()));
    m_start->setEnabled(m_desk.toStart().has_value());
}

QString PlanStep::sideHtml() const
{
    const common::Theme& theme = m_services.look.theme();
    if (m_hasLifts) {
        return tr("The plan runs. What is next is on the board. A lift that was left out can begin here, once nothing stands in its way.").toHtmlEscaped();
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
        parts.append(QStringLiteral("<b>%1:</b> %2").arg(common::patternName(gap.pattern).toHtmlEscaped(), gapReason(gap, m_services.catalogue, m_desk.draft().of(gap.pattern).isLeftOut).toHtmlEscaped()));
    }
    parts.append(QStringLiteral("<span style='color:%1'>%2</span>")
                     .arg(theme.ink3.name(), tr("48 hours between sessions that train the same movements; large before small. Common practice, and the coach decides.").toHtmlEscaped()));
    return parts.join(QStringLiteral("<br><br>"));
}

void PlanStep::keepDraft()
{
    QJsonObject draft = exchange::toJson(m_desk.draft());
    const auto written = common::settled(m_services.dialogs, m_services.database, m_seenDraft, [&](const common::Settling& settling) {
        draft = settling.merged.value_or(draft);
        return store::ClientWriter(m_services.database).saveForm(m_client.id, store::FormKind::StartingPlan, draft, m_today, settling.seen);
    });
    if (!written) {
        return tell(written.error());
    }
    m_seenDraft = draft;
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

bool PlanStep::isOwnTemplate() const
{
    return m_desk.templates()[m_desk.templateIndex()].key.starts_with(kOwnTemplate);
}

void PlanStep::showTemplateKeeping()
{
    const QString present = common::qstring(m_desk.templates().empty() ? std::string() : m_desk.templates()[m_desk.templateIndex()].name);
    const bool isOwn = !m_desk.templates().empty() && isOwnTemplate();
    const QString name = m_templateName->text().trimmed();
    const bool isNewName = !name.isEmpty() && name != present;
    m_saveTemplate->setText(isOwn && !isNewName ? tr("Save changes") : tr("Save as template"));
    m_saveTemplate->setVisible(!m_hasLifts && (isOwn || isNewName));
    m_templateName->setVisible(!m_hasLifts);
    m_renameTemplate->setVisible(!m_hasLifts && isOwn && isNewName);
    m_removeTemplate->setVisible(!m_hasLifts && isOwn);
    m_putBack->setVisible(!m_hasLifts && m_removed.has_value());
    m_putBack->setText(m_removed ? tr("Put “%1” back").arg(common::qstring(m_removed->name)) : QString());
}

bool PlanStep::writeTemplate(const planning::PlanTemplate& plan)
{
    const auto at = std::find_if(m_desk.templates().begin(), m_desk.templates().end(),
                                 [&plan](const planning::PlanTemplate& one) { return one.name == plan.name && one.key.starts_with(kOwnTemplate); });
    const QJsonObject seen = at == m_desk.templates().end() ? QJsonObject() : exchange::toJson(*at);
    const auto kept = common::settled(m_services.dialogs, m_services.database, seen, [&](const common::Settling& settling) {
        return store::PlanTemplates(m_services.database, m_services.catalogue).save(plan, settling.seen);
    });
    if (!kept) {
        tell(kept.error());
    }
    return kept.has_value();
}

void PlanStep::saveTemplate()
{
    const planning::PlanTemplate& present = m_desk.templates()[m_desk.templateIndex()];
    const QString name = m_templateName->text().trimmed();
    if (name.isEmpty() && !isOwnTemplate()) {
        m_templateName->setFocus(Qt::OtherFocusReason);
        return;
    }
    planning::PlanTemplate own = planning::withWishes(present, m_desk.draft(), m_services.catalogue);
    if (!name.isEmpty() && name.toStdString() != present.name) {
        own.name = name.toStdString();
        own.key = keyOfOwnTemplate(name);
    }
    if (!writeTemplate(own)) {
        return;
    }
    m_desk.draft().templateKey = own.key;
    m_desk.draft().contents.clear();
    m_templateName->clear();
    keepDraft();
}

void PlanStep::renameTemplate()
{
    const std::string from = m_desk.templates()[m_desk.templateIndex()].name;
    const auto renamed = store::PlanTemplates(m_services.database, m_services.catalogue).rename(from, m_templateName->text().trimmed().toStdString());
    if (!renamed) {
        Q_EMIT refused(renamed.error().message);
        return;
    }
    m_templateName->clear();
    Q_EMIT saved();
}

void PlanStep::removeTemplate()
{
    const planning::PlanTemplate present = m_desk.templates()[m_desk.templateIndex()];
    const auto removed = common::settled(m_services.dialogs, m_services.database, exchange::toJson(present), [&](const common::Settling& settling) {
        return store::PlanTemplates(m_services.database, m_services.catalogue).remove(present.name, settling.seen);
    });
    if (!removed) {
        tell(removed.error());
        return;
    }
    m_removed = present;
    m_desk.draft().templateKey.clear();
    m_desk.draft().slots.clear();
    m_desk.draft().contents.clear();
    keepDraft();
    m_putBack->setFocus(Qt::OtherFocusReason);
}

void PlanStep::putTemplateBack()
{
    if (!writeTemplate(*m_removed)) {
        return;
    }
    m_desk.draft().templateKey = m_removed->key;
    m_removed.reset();
    keepDraft();
    m_template->setFocus(Qt::OtherFocusReason);
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
