#include "ui/onboarding/movement_step.h"

#include "core/exchange/movement_screen_json.h"
#include "core/exchange/plan_draft_json.h"
#include "core/screens/screen_catalogue.h"
#include "core/store/client_forms.h"
#include "core/store/client_reader.h"
#include "core/store/client_writer.h"
#include "ui/common/action_button.h"
#include "ui/common/day_entry.h"
#include "ui/common/formats.h"
#include "ui/common/look.h"
#include "ui/common/panel.h"
#include "ui/onboarding/onboarding_case.h"
#include "ui/onboarding/pattern_list.h"
#include "ui/onboarding/pattern_sheet.h"
#include "ui/onboarding/screen_outcome.h"
#include "ui/onboarding/typing_pause.h"

#include <QAction>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QStackedWidget>
#include <QVBoxLayout>

namespace chalk::ui::onboarding {

MovementStep::MovementStep(const OnboardingServices& services, QWidget* parent)
    : OnboardingStep(parent),
      m_services(services),
      m_panel(new common::Panel(services.look, this)),
      m_list(new PatternList(services.look, m_panel)),
      m_sheets(new QStackedWidget(m_panel)),
      m_outcome(new ScreenOutcome(services.look, this)),
      m_again(new common::ActionButton(services.look, tr("Screen again"), m_panel)),
      m_pause(typingPause(this))
{
    build();
    buildActions();
    connect(m_pause, &QTimer::timeout, this, &MovementStep::save);
    connect(m_list, &PatternList::patternChosen, this, &MovementStep::goTo);
    connect(m_outcome, &ScreenOutcome::nextAsked, this, &MovementStep::goOn);
    connect(m_outcome, &ScreenOutcome::stageChosen, this, &MovementStep::chooseStage);
    connect(m_again, &QPushButton::clicked, this, &MovementStep::beginAnew);
}

void MovementStep::build()
{
    m_panel->setTitle(tr("Movement screen"));
    m_again->setButtonSize(common::ButtonSize::Small);
    m_panel->addHeadTool(m_again);
    auto* inside = new QHBoxLayout;
    inside->setContentsMargins(0, 0, 0, 0);
    inside->setSpacing(0);
    inside->addWidget(m_list);
    inside->addWidget(m_sheets, 1);
    m_panel->body()->addLayout(inside);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(16);
    row->addWidget(m_panel, 1);
    row->addWidget(m_outcome);
}

void MovementStep::buildActions()
{
    const auto add = [this](const QString& text, const QKeySequence& key, auto&& act) {
        auto* action = new QAction(text, this);
        action->setShortcut(key);
        action->setShortcutContext(Qt::WidgetWithChildrenShortcut);
        connect(action, &QAction::triggered, this, act);
        addAction(action);
    };
    add(tr("Start or stop the stopwatch"), Qt::Key_T, [this] {
        if (!isClosed()) {
            sheetOf(m_present)->toggleStopwatch();
        }
    });
    add(tr("Pain was named"), Qt::Key_P, [this] {
        if (!isClosed()) {
            sheetOf(m_present)->askForPain();
        }
    });
    add(tr("Another starting stage"), Qt::Key_O, [this] { m_outcome->openEditor(); });
    add(tr("Next pattern"), Qt::CTRL | Qt::Key_PageDown, [this] { goOn(); });
}

PatternSheet* MovementStep::sheetOf(lifts::Pattern pattern)
{
    PatternSheet*& sheet = m_made[static_cast<std::size_t>(pattern)];
    if (sheet == nullptr) {
        sheet = new PatternSheet(m_services.look, m_services.screens.of(pattern), m_policy.pauseMs, m_sheets);
        if (m_now) {
            sheet->setNow(m_now);
        }
        sheet->setScreen(m_kept.of(pattern));
        m_sheets->addWidget(sheet);
        connect(sheet, &PatternSheet::typed, m_pause, qOverload<>(&QTimer::start));
        connect(sheet, &PatternSheet::marked, this, &MovementStep::save);
    }
    return sheet;
}

void MovementStep::setCase(const OnboardingCase& onboarding)
{
    if (onboarding.client.id != m_client.id) {
        m_pause->stop();
        m_present = lifts::Pattern::Squat;
        m_outcome->closeEditor();
    }
    m_client = onboarding.client;
    m_today = onboarding.today;
    m_policy = progression::Policy::defaultsFor(m_client.unit);
    m_kept = onboarding.screen.value_or(m_services.screens.blankScreen(m_today));
    m_canKeep = onboarding.canKeepHealth() && !clients::isBlocked(onboarding.clearance, m_today);
    m_draft = store::ClientForms(m_services.database).planDraft(m_client.id).value_or(planning::PlanDraft());
    m_cautions.clear();
    if (const auto file = store::ClientReader(m_services.database).read(m_client.id, m_today)) {
        for (const clients::Caution& caution : file->cautions) {
            m_cautions.insert(m_cautions.end(), caution.tags.begin(), caution.tags.end());
        }
    }
    for (const lifts::Pattern pattern : lifts::kPatterns) {
        if (PatternSheet* sheet = m_made[static_cast<std::size_t>(pattern)]) {
            sheet->setScreen(m_kept.of(pattern));
        }
    }
    m_sheets->setCurrentWidget(sheetOf(m_present));
    m_sheets->setEnabled(m_canKeep && !isClosed());
    m_again->setVisible(isClosed());
    m_again->setEnabled(m_canKeep);
    m_panel->setTitle(tr("Movement screen"), onboarding.screen ? common::entryOfDay(m_kept.date) : tr("unloaded, all eight patterns"));
    showOutcome();
}

screens::MovementScreen MovementStep::marked() const
{
    screens::MovementScreen screen = m_kept;
    for (const lifts::Pattern pattern : lifts::kPatterns) {
        if (const PatternSheet* sheet = m_made[static_cast<std::size_t>(pattern)]) {
            screen.of(pattern) = sheet->screen();
        }
    }
    return screen;
}

bool MovementStep::save()
{
    m_pause->stop();
    const screens::MovementScreen next = marked();
    if (next == m_kept || !m_canKeep || isClosed()) {
        return true;
    }
    const auto written = store::ClientWriter(m_services.database).saveForm(m_client.id, store::FormKind::MovementScreen, exchange::toJson(next), m_kept.date);
    if (!written) {
        Q_EMIT refused(written.error().message);
        return false;
    }
    m_kept = next;
    Q_EMIT saved();
    return true;
}

bool MovementStep::keep()
{
    sheetOf(m_present)->dropStopwatch();
    return save();
}

void MovementStep::showOutcome()
{
    const auto starts = progression::startsOf(m_kept, m_policy);
    m_list->setStarts(starts, m_present);
    OutcomeView view;
    view.start = starts[static_cast<std::size_t>(m_present)];
    view.guide = &m_services.screens.of(m_present);
    std::vector<std::string> inTheWay;
    for (const screens::PointMark& point : view.start.pointsInTheWay) {
        inTheWay.push_back(point.key);
    }
    view.work = m_services.screens.workFor(m_present, inTheWay, m_cautions);
    view.choice = m_draft.of(m_present).start;
    for (const progression::PatternStart& start : starts) {
        common::LiftStripColumn& column = view.strip.lifts[static_cast<std::size_t>(start.pattern)];
        const auto& wanted = m_draft.of(start.pattern).start;
        if (wanted || start.state == progression::StartState::Starts) {
            column.stage = wanted ? wanted->stage : start.stage;
        }
        column.mark = start.state == progression::StartState::OnHold ? common::LiftMark::Pain : common::LiftMark::None;
    }
    view.next = nextWords();
    view.words = screenWords();
    m_outcome->setView(view);
    m_outcome->setEnabled(m_canKeep || isClosed());
}

QString MovementStep::nextWords() const
{
    if (m_present != lifts::kPatterns.back()) {
        return tr("Next: %1").arg(common::patternName(lifts::kPatterns[static_cast<std::size_t>(m_present) + 1]));
    }
    return isClosed() ? tr("Next: Starting plan") : tr("Finish the screen");
}

QString MovementStep::screenWords() const
{
    if (isClosed()) {
        return tr("Finished on %1. It stays as it is.").arg(common::entryOfDay(m_kept.date)).toHtmlEscaped();
    }
    const auto open = screens::openPatternsOf(m_kept);
    if (m_present == lifts::kPatterns.back() && !open.empty() && open.size() < lifts::kPatterns.size()) {
        QStringList names;
        for (const lifts::Pattern pattern : open) {
            names.append(common::patternName(pattern).toLower());
        }
        return tr("Still open: %1. What is open counts as not met.").arg(names.join(QStringLiteral(", "))).toHtmlEscaped();
    }
    return {};
}

void MovementStep::goTo(lifts::Pattern pattern)
{
    sheetOf(m_present)->dropStopwatch();
    if (!save()) {
        return;
    }
    m_outcome->closeEditor();
    m_present = pattern;
    m_sheets->setCurrentWidget(sheetOf(pattern));
    showOutcome();
    sheetOf(pattern)->takeFocus();
}

void MovementStep::goOn()
{
    if (m_present != lifts::kPatterns.back()) {
        return goTo(lifts::kPatterns[static_cast<std::size_t>(m_present) + 1]);
    }
    if (!isClosed()) {
        finish();
    } else {
        Q_EMIT nextAsked();
    }
}

void MovementStep::finish()
{
    screens::MovementScreen done = marked();
    done.isFinished = true;
    store::ClientWriter writer(m_services.database);
    auto written = writer.saveForm(m_client.id, store::FormKind::MovementScreen, exchange::toJson(done), m_kept.date);
    if (written) {
        written = writer.finishForm(m_client.id, store::FormKind::MovementScreen);
    }
    if (!written) {
        Q_EMIT refused(written.error().message);
        return;
    }
    Q_EMIT saved();
    Q_EMIT nextAsked();
}

void MovementStep::beginAnew()
{
    const screens::MovementScreen blank = m_services.screens.blankScreen(m_today);
    const auto written = store::ClientWriter(m_services.database).saveForm(m_client.id, store::FormKind::MovementScreen, exchange::toJson(blank), m_today);
    if (!written) {
        Q_EMIT refused(written.error().message);
        return;
    }
    m_present = lifts::Pattern::Squat;
    Q_EMIT saved();
    takeFocus();
}

void MovementStep::chooseStage(const std::optional<progression::StartChoice>& choice)
{
    m_draft.of(m_present).start = choice;
    const auto written = store::ClientWriter(m_services.database).saveForm(m_client.id, store::FormKind::StartingPlan, exchange::toJson(m_draft), m_today);
    if (!written) {
        Q_EMIT refused(written.error().message);
        return;
    }
    Q_EMIT saved();
    sheetOf(m_present)->takeFocus();
}

void MovementStep::takeFocus()
{
    if (m_sheets->isEnabled()) {
        sheetOf(m_present)->takeFocus();
    } else {
        m_list->setFocus(Qt::OtherFocusReason);
    }
}

void MovementStep::keyPressEvent(QKeyEvent* event)
{
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
        return goOn();
    }
    OnboardingStep::keyPressEvent(event);
}

std::vector<shell::KeyHint> MovementStep::keyHints() const
{
    return {{QStringLiteral("1 2 3"), tr("Mark")}, {QStringLiteral("T"), tr("Stopwatch")}, {QStringLiteral("P"), tr("Pain")}, {tr("Enter"), tr("Next pattern")}};
}

bool MovementStep::closeOrClear()
{
    return sheetOf(m_present)->dropStopwatch() || m_outcome->closeEditor();
}

void MovementStep::setRoom(bool isNarrow, bool /*isLow*/)
{
    m_list->setNarrow(isNarrow);
    m_outcome->setNarrow(isNarrow);
}

void MovementStep::setNow(Stopwatch::Now now)
{
    m_now = std::move(now);
    for (PatternSheet* sheet : m_made) {
        if (sheet != nullptr) {
            sheet->setNow(m_now);
        }
    }
}

}  // namespace chalk::ui::onboarding
