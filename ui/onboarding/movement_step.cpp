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
#include "ui/common/segmented_choice.h"
#include "ui/common/settling.h"
#include "ui/onboarding/field_tests_page.h"
#include "ui/onboarding/onboarding_case.h"
#include "ui/onboarding/pattern_list.h"
#include "ui/onboarding/pattern_sheet.h"
#include "ui/onboarding/rescreen_page.h"
#include "ui/onboarding/rescreen_words.h"
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
      m_parts(new common::SegmentedChoice(tr("Movement"), {{tr("Patterns")}, {tr("Field tests")}, {tr("Last screen")}}, m_panel)),
      m_pages(new QStackedWidget(m_panel)),
      m_list(new PatternList(services.look, m_pages)),
      m_sheets(new QStackedWidget(m_pages)),
      m_fieldTests(new FieldTestsPage(services.database, services.dialogs, services.look, m_pages)),
      m_earlier(new RescreenPage(services.look, services.screens, m_pages)),
      m_outcome(new ScreenOutcome(services.look, this)),
      m_again(new common::ActionButton(services.look, tr("Screen again"), m_panel)),
      m_pause(typingPause(this))
{
    build();
    buildActions();
    buildParts();
    connect(m_pause, &QTimer::timeout, this, &MovementStep::save);
    connect(m_list, &PatternList::patternChosen, this, &MovementStep::goTo);
    connect(m_outcome, &ScreenOutcome::nextAsked, this, &MovementStep::goOn);
    connect(m_outcome, &ScreenOutcome::stageChosen, this, &MovementStep::chooseStage);
    connect(m_again, &QPushButton::clicked, this, &MovementStep::beginAnew);
}

MovementStep::~MovementStep()
{
    // A field says that it was left when it goes away; then this must still be whole.
    if (QWidget* field = focusWidget()) {
        field->clearFocus();
    }
}

void MovementStep::build()
{
    m_panel->setTitle(tr("Movement screen"));
    m_again->setButtonSize(common::ButtonSize::Small);
    m_panel->addHeadTool(m_again);
    m_parts->setCompact();
    m_panel->addHeadTool(m_parts);
    auto* patterns = new QWidget(m_pages);
    auto* inside = new QHBoxLayout(patterns);
    inside->setContentsMargins(0, 0, 0, 0);
    inside->setSpacing(0);
    inside->addWidget(m_list);
    inside->addWidget(m_sheets, 1);
    m_pages->addWidget(patterns);
    m_pages->addWidget(m_fieldTests);
    m_pages->addWidget(m_earlier);
    m_panel->body()->addWidget(m_pages, 1);
    layOut(m_services.look, m_panel, m_outcome);
}

void MovementStep::buildParts()
{
    connect(m_parts, &common::SegmentedChoice::choiceMade, this, [this](int part) { showPart(static_cast<Part>(part)); });
    connect(m_fieldTests, &FieldTestsPage::saved, this, &OnboardingStep::saved);
    connect(m_fieldTests, &FieldTestsPage::refused, this, &OnboardingStep::refused);
}

void MovementStep::showPart(Part part)
{
    const Part shown = part == Part::Earlier && !m_rescreen.before ? Part::Patterns : part;
    m_parts->setChosen(static_cast<int>(shown));
    if (shown == m_part || !keep()) {
        m_parts->setChosen(static_cast<int>(m_part));
        return;
    }
    m_part = shown;
    m_outcome->closeEditor();
    m_outcome->setVisible(shown == Part::Patterns);
    m_pages->setCurrentIndex(static_cast<int>(shown));
    takeFocus();
    Q_EMIT stepChanged();
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
        if (m_part == Part::FieldTests) {
            m_fieldTests->toggleStopwatch();
        } else if (m_part == Part::Patterns && m_sheets->isEnabled()) {
            sheetOf(m_present)->toggleStopwatch();
        }
    });
    add(tr("Pain was named"), Qt::Key_P, [this] {
        if (m_part == Part::Patterns && m_sheets->isEnabled()) {
            sheetOf(m_present)->askForPain();
        }
    });
    add(tr("Another starting stage"), Qt::Key_O, [this] {
        if (m_part == Part::Patterns && m_canKeep && !isClosed()) {
            m_outcome->openEditor();
        }
    });
    add(tr("Field tests, or back to the patterns"), Qt::Key_F, [this] { showPart(m_part == Part::FieldTests ? Part::Patterns : Part::FieldTests); });
    add(tr("The last screen beside this one, or back"), Qt::Key_B, [this] { showPart(m_part == Part::Earlier ? Part::Patterns : Part::Earlier); });
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
        sheet->setEarlier(m_rescreen.before ? &m_rescreen.before->of(pattern) : nullptr);
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
        m_part = Part::Patterns;
        m_pages->setCurrentIndex(0);
        m_outcome->show();
    }
    m_client = onboarding.client;
    m_today = onboarding.today;
    m_policy = progression::Policy::defaultsFor(m_client.unit);
    m_kept = onboarding.screen.value_or(m_services.screens.blankScreen(m_today));
    m_canKeep = onboarding.canKeepHealth() && !clients::isBlocked(onboarding.clearance, m_today);
    m_draft = store::ClientForms(m_services.database).planDraft(m_client.id).value_or(planning::PlanDraft());
    readEarlier(onboarding);
    m_fieldTests->setCase(onboarding, m_canKeep);
    for (const lifts::Pattern pattern : lifts::kPatterns) {
        if (PatternSheet* sheet = m_made[static_cast<std::size_t>(pattern)]) {
            sheet->setScreen(m_kept.of(pattern));
            sheet->setEarlier(m_rescreen.before ? &m_rescreen.before->of(pattern) : nullptr);
        }
    }
    m_sheets->setCurrentWidget(sheetOf(m_present));
    m_sheets->setEnabled(m_canKeep && !isClosed());
    m_again->setVisible(isClosed());
    m_again->setEnabled(m_canKeep);
    m_panel->setTitle(tr("Movement screen"), onboarding.screen ? common::entryOfDay(m_kept.date) : tr("unloaded, all eight patterns"));
    showOutcome();
}

void MovementStep::readEarlier(const OnboardingCase& onboarding)
{
    m_cautions.clear();
    m_rescreen = {};
    if (const auto file = store::ClientReader(m_services.database).read(m_client.id, m_today)) {
        for (const clients::Caution& caution : file->cautions) {
            m_cautions.insert(m_cautions.end(), caution.tags.begin(), caution.tags.end());
        }
        auto rescreen = readRescreenCase(m_services.database, *file, onboarding.screen, m_today);
        if (!rescreen) {
            Q_EMIT refused(rescreen.error().message);
        }
        m_rescreen = std::move(rescreen).value_or(RescreenCase());
    }
    m_parts->setAvailable(static_cast<int>(Part::Earlier), m_rescreen.before.has_value());
    if (m_rescreen.before) {
        m_earlier->setScreens(*m_rescreen.before, m_kept, m_policy);
    } else if (m_part == Part::Earlier) {
        showPart(Part::Patterns);
    }
    m_parts->setChosen(static_cast<int>(m_part));
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

store::Result<void> MovementStep::writeScreen(screens::MovementScreen& screen)
{
    return common::settled(m_services.dialogs, m_services.database, exchange::toJson(m_kept), [&](const common::Settling& settling) {
        screen = settling.merged ? exchange::readMovementScreen(*settling.merged, {}).value_or(screen) : screen;
        return store::ClientWriter(m_services.database).saveForm(m_client.id, store::FormKind::MovementScreen, exchange::toJson(screen), m_kept.date, settling.seen);
    });
}

bool MovementStep::save()
{
    m_pause->stop();
    screens::MovementScreen next = marked();
    if (next == m_kept || !m_canKeep || isClosed()) {
        return true;
    }
    if (const auto written = writeScreen(next); !written) {
        tell(written.error());
        return false;
    }
    m_kept = next;
    Q_EMIT saved();
    return true;
}

bool MovementStep::keep()
{
    sheetOf(m_present)->dropStopwatch();
    return m_fieldTests->keep() && save();
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
    if (view.start.state != progression::StartState::OnHold) {
        view.work = m_services.screens.workFor(m_present, inTheWay, m_cautions);
    }
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
    m_outcome->setChoiceOpen(m_canKeep && !isClosed());
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
    const QString due = m_rescreen.due ? rescreenSentence(*m_rescreen.due).toHtmlEscaped() : QString();
    if (isClosed() && !due.isEmpty()) {
        return QStringLiteral("<b>%1</b>").arg(due);
    }
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
    return due;
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
    if (m_part != Part::Patterns) {
        return showPart(Part::Patterns);
    }
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
    auto written = writeScreen(done);
    if (written) {
        written = store::ClientWriter(m_services.database).finishForm(m_client.id, store::FormKind::MovementScreen);
    }
    if (!written) {
        return tell(written.error());
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
    const QJsonObject seen = exchange::toJson(m_draft);
    m_draft.of(m_present).start = choice;
    const auto written = common::settled(m_services.dialogs, m_services.database, seen, [&](const common::Settling& settling) {
        return store::ClientWriter(m_services.database)
            .saveForm(m_client.id, store::FormKind::StartingPlan, settling.merged.value_or(exchange::toJson(m_draft)), m_today, settling.seen);
    });
    if (!written) {
        return tell(written.error());
    }
    Q_EMIT saved();
    sheetOf(m_present)->takeFocus();
}

void MovementStep::takeFocus()
{
    if (m_part == Part::FieldTests) {
        m_fieldTests->takeFocus();
    } else if (m_part == Part::Earlier) {
        m_earlier->setFocus(Qt::OtherFocusReason);
    } else if (m_sheets->isEnabled()) {
        sheetOf(m_present)->takeFocus();
    } else {
        m_list->setFocus(Qt::OtherFocusReason);
    }
}

void MovementStep::keyPressEvent(QKeyEvent* event)
{
    if (m_part == Part::Patterns && (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter)) {
        return goOn();
    }
    OnboardingStep::keyPressEvent(event);
}

std::vector<shell::KeyHint> MovementStep::keyHints() const
{
    if (m_part == Part::FieldTests) {
        return {{tr("Enter"), tr("Next field")}, {QStringLiteral("T"), tr("Stopwatch")}, {tr("Esc"), tr("Patterns")}};
    }
    if (m_part == Part::Earlier) {
        return {{QStringLiteral("B"), tr("Patterns")}};
    }
    if (!m_canKeep || isClosed()) {
        return {{tr("Enter"), tr("Next pattern")}};
    }
    return {{QStringLiteral("1 2 3"), tr("Mark")}, {QStringLiteral("T"), tr("Stopwatch")}, {QStringLiteral("P"), tr("Pain")}, {tr("Enter"), tr("Next pattern")}};
}

bool MovementStep::closeOrClear()
{
    if (sheetOf(m_present)->dropStopwatch() || m_fieldTests->dropStopwatch() || m_outcome->closeEditor()) {
        return true;
    }
    if (m_part == Part::Patterns) {
        return false;
    }
    showPart(Part::Patterns);
    return true;
}

void MovementStep::setRoom(bool isNarrow, bool isLow)
{
    OnboardingStep::setRoom(isNarrow, isLow);
    m_list->setNarrow(isNarrow);
}

void MovementStep::setNow(Stopwatch::Now now)
{
    m_now = std::move(now);
    m_fieldTests->setNow(m_now);
    for (PatternSheet* sheet : m_made) {
        if (sheet != nullptr) {
            sheet->setNow(m_now);
        }
    }
}

}  // namespace chalk::ui::onboarding
