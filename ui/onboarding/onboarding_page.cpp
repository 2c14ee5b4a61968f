#include "ui/onboarding/onboarding_page.h"

#include "core/store/client_writer.h"
#include "core/store/studio_reader.h"
#include "ui/common/action_button.h"
#include "ui/common/banner.h"
#include "ui/common/clock.h"
#include "ui/common/dialogs.h"
#include "ui/common/empty_state.h"
#include "ui/common/formats.h"
#include "ui/common/look.h"
#include "ui/common/page_header.h"
#include "ui/onboarding/onboarding_step.h"
#include "ui/onboarding/step_list.h"
#include "ui/onboarding/step_words.h"

#include <QAction>
#include <QHBoxLayout>
#include <QLabel>
#include <QStackedWidget>
#include <QVBoxLayout>

namespace chalk::ui::onboarding {

namespace {

constexpr double kTightBelow = 940;  ///< pixels at a text size of 100 %: narrower, and the list shows numbers alone

std::vector<StepKind> stepsIn(const std::map<StepKind, StepFactory>& factories)
{
    std::vector<StepKind> steps;
    for (const auto& factory : factories) {
        steps.push_back(factory.first);
    }
    return steps;
}

/// Somebody of whom nothing is known yet.
OnboardingCase blankCase(store::Database& database, base::Date today)
{
    OnboardingCase blank;
    blank.today = today;
    blank.client.startedOn = today;
    blank.clearance.state = clients::ClearanceState::Unanswered;
    if (const auto coaches = store::StudioReader(database).coaches(); coaches && !coaches->empty()) {
        blank.client.coach = coaches->front().id;
        blank.coachName = coaches->front().name;
    }
    return blank;
}

}  // namespace

OnboardingPage::OnboardingPage(OnboardingServices services, QWidget* parent) : OnboardingPage(services, stepFactories(services), parent) {}

OnboardingPage::OnboardingPage(OnboardingServices services, std::map<StepKind, StepFactory> factories, QWidget* parent)
    : shell::Page(parent),
      m_services(std::move(services)),
      m_factories(std::move(factories)),
      m_header(new common::PageHeader(m_services.look, this)),
      m_saved(new QLabel(tr("Every answer is saved as you go"), m_header)),
      m_list(new StepList(m_services.look, stepsIn(m_factories), this)),
      m_trouble(new common::Banner(m_services.look, this)),
      m_wait(new common::Banner(m_services.look, this)),
      m_pages(new QStackedWidget(this)),
      m_failure(new common::EmptyState(m_services.look, this))
{
    build();
    buildActions();
}

OnboardingPage::~OnboardingPage() = default;

void OnboardingPage::build()
{
    buildHeader();
    m_failure->setPicture(QStringLiteral("warning"), common::Signal::Pain);
    m_pages->addWidget(m_failure);
    m_trouble->hide();
    m_wait->hide();
    m_wayOut = m_wait->addButton(QString());
    connect(m_wayOut, &QPushButton::clicked, this, [this] { goTo(waitWordsOf(stateOf(m_present, *m_case), *m_case).wayOut, true); });
    connect(m_list, &StepList::stepChosen, this, [this](StepKind step) { goTo(step, true); });
    connect(&m_services.look, &common::Look::changed, this, [this] {
        if (step() != nullptr && m_case != nullptr) {
            step()->setCase(*m_case);  // its rich texts hold colours
        }
    });
    auto* middle = new QVBoxLayout;
    middle->setSpacing(8);
    middle->addWidget(m_trouble);
    middle->addWidget(m_wait);
    middle->addWidget(m_pages, 1);
    auto* row = new QHBoxLayout;
    row->setContentsMargins(24, 0, 24, 16);
    row->setSpacing(16);
    row->addWidget(m_list);
    row->addLayout(middle, 1);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(m_header);
    column->addLayout(row, 1);
}

void OnboardingPage::buildHeader()
{
    m_saved->setProperty("role", QStringLiteral("secondary"));
    m_header->addTool(m_saved);
    m_discard = new common::ActionButton(m_services.look, tr("Discard"), m_header);
    m_discard->setKind(common::ButtonKind::Plain);
    m_discard->setToolTip(tr("Take this client out of the studio again"));
    connect(m_discard, &QPushButton::clicked, this, &OnboardingPage::discardClient);
    m_header->addTool(m_discard);
    auto* close = new common::ActionButton(m_services.look, tr("Save and close"), m_header);
    connect(close, &QPushButton::clicked, this, &OnboardingPage::closePage);
    m_header->addTool(close);
}

void OnboardingPage::buildActions()
{
    const auto add = [this](const QString& text, const QKeySequence& key, auto&& act) {
        auto* action = new QAction(text, this);
        action->setShortcut(key);
        action->setShortcutContext(Qt::WidgetWithChildrenShortcut);
        connect(action, &QAction::triggered, this, act);
        addAction(action);
    };
    add(tr("Next step"), Qt::ALT | Qt::Key_Down, [this] { goBy(1); });
    add(tr("Previous step"), Qt::ALT | Qt::Key_Up, [this] { goBy(-1); });
    add(tr("Save and close"), Qt::CTRL | Qt::Key_W, [this] { closePage(); });
}

QString OnboardingPage::title() const
{
    return m_case == nullptr || m_case->client.name.empty() ? tr("New client") : common::qstring(m_case->client.name);
}

void OnboardingPage::open(const shell::Place& place)
{
    if (place.client != m_client && step() != nullptr && !step()->keep()) {
        return;
    }
    m_client = place.client;
    m_trouble->hide();
    if (!readCase()) {
        return;
    }
    goTo(stepOf(place.tab.toStdString()).value_or(firstOpenStep(*m_case)), true);
}

shell::Place OnboardingPage::place() const
{
    shell::Place place;
    place.client = m_client;
    place.tab = common::qstring(keyOf(m_present));
    return place;
}

void OnboardingPage::refresh()
{
    if (readCase() && step() != nullptr) {
        step()->setCase(*m_case);
        showCase();
        Q_EMIT pageChanged();
    }
}

bool OnboardingPage::readCase()
{
    if (m_client.isNone()) {
        m_case = std::make_unique<OnboardingCase>(blankCase(m_services.database, m_services.clock.today()));
        return true;
    }
    auto read = readOnboardingCase(m_services.database, m_client, m_services.clock.today());
    if (!read) {
        m_failure->setWords(tr("This client cannot be shown"), read.error().message.toHtmlEscaped());
        m_pages->setCurrentWidget(m_failure);
        m_list->hide();
        return false;
    }
    m_list->show();
    m_case = std::make_unique<OnboardingCase>(*std::move(read));
    return true;
}

OnboardingStep* OnboardingPage::step() const
{
    const auto made = m_steps.find(m_present);
    return made == m_steps.end() ? nullptr : made->second;
}

OnboardingStep* OnboardingPage::stepOfKind(StepKind kind)
{
    if (const auto made = m_steps.find(kind); made != m_steps.end()) {
        return made->second;
    }
    const auto factory = m_factories.find(kind);
    if (factory == m_factories.end()) {
        return nullptr;
    }
    OnboardingStep* made = factory->second(m_pages);
    m_pages->addWidget(made);
    m_steps[kind] = made;
    connectStep(*made);
    made->setRoom(m_isNarrow, m_isLow);
    for (QAction* action : made->actions()) {
        addAction(action);
    }
    return made;
}

void OnboardingPage::connectStep(OnboardingStep& step)
{
    connect(&step, &OnboardingStep::clientAdded, this, [this](base::ClientId client) { m_client = client; });
    connect(&step, &OnboardingStep::saved, this, [this] {
        m_trouble->hide();
        refresh();
        Q_EMIT studioChanged();
    });
    connect(&step, &OnboardingStep::refused, this, &OnboardingPage::showTrouble);
    connect(&step, &OnboardingStep::nextAsked, this, [this] { goBy(1); });
    connect(&step, &OnboardingStep::placeAsked, this, &shell::Page::placeAsked);
    connect(&step, &OnboardingStep::stepChanged, this, &shell::Page::pageChanged);
}

void OnboardingPage::goTo(StepKind kind, bool isFocusMoved)
{
    OnboardingStep* next = m_client.isNone() ? stepOfKind(StepKind::Profile) : stepOfKind(kind);
    if (next == nullptr || (step() != nullptr && m_pages->currentWidget() == step() && next != step() && !step()->keep())) {
        return;
    }
    if (m_client.isNone() != m_case->client.id.isNone() && !readCase()) {
        return;
    }
    m_present = m_client.isNone() ? StepKind::Profile : kind;
    for (const auto& [other, made] : m_steps) {
        for (QAction* action : made->actions()) {
            action->setEnabled(other == m_present);
        }
    }
    next->setCase(*m_case);
    m_pages->setCurrentWidget(next);
    showCase();
    if (isFocusMoved) {
        next->takeFocus();
    }
    Q_EMIT pageChanged();
}

void OnboardingPage::goBy(int steps)
{
    const auto order = stepsIn(m_factories);
    const auto at = std::find(order.begin(), order.end(), m_present);
    const auto next = at - order.begin() + steps;
    if (next >= 0 && next < static_cast<std::ptrdiff_t>(order.size())) {
        goTo(order[static_cast<std::size_t>(next)], true);
    }
}

void OnboardingPage::closePage()
{
    if (step() != nullptr && !step()->keep()) {
        return;
    }
    shell::Place place;
    const bool isTraining = m_case != nullptr && m_case->hasLifts;
    place.page = isTraining ? QStringLiteral("client") : QStringLiteral("roster");
    place.client = m_client;
    Q_EMIT placeAsked(place);
}

void OnboardingPage::discardClient()
{
    const int kDiscard = 1;
    const common::Question question{common::Signal::Pain, tr("Discard %1?").arg(title()),
                                    tr("Everything kept of this client is deleted: profile, intake, letters, measures, screens. Nothing was trained yet. This cannot be undone."),
                                    {},
                                    {tr("Keep the client"), tr("Discard the client")}};
    if (m_services.dialogs.ask(window(), question) != kDiscard) {
        return;
    }
    const auto discarded = store::ClientWriter(m_services.database).discard(m_client);
    if (!discarded) {
        showTrouble(discarded.error().message);
        return;
    }
    m_client = {};
    readCase();
    Q_EMIT studioChanged();
    Q_EMIT placeAsked({.page = QStringLiteral("roster")});
}

void OnboardingPage::showCase()
{
    m_discard->setVisible(!m_client.isNone() && !m_case->hasLifts);
    m_header->setTitle(title());
    m_header->setSubtitle(subtitleOf(*m_case));
    m_list->setCase(*m_case, m_present);
    const WaitWords wait = waitWordsOf(stateOf(m_present, *m_case), *m_case);
    m_wait->setVisible(!wait.lead.isEmpty());
    if (!wait.lead.isEmpty()) {
        m_wait->setMessage({common::Signal::Warn, QStringLiteral("lock"), wait.lead, wait.text});
        m_wayOut->setText(tr("Go to %1").arg(stepName(wait.wayOut)));
    }
}

void OnboardingPage::showTrouble(const QString& message)
{
    m_trouble->setMessage({common::Signal::Pain, QStringLiteral("warning"), tr("Not saved."), message});
    m_trouble->show();
}

std::vector<shell::KeyHint> OnboardingPage::keyHints() const
{
    std::vector<shell::KeyHint> hints = step() == nullptr ? std::vector<shell::KeyHint>() : step()->keyHints();
    const auto order = stepsIn(m_factories);
    if (!m_client.isNone() && !order.empty() && m_present != order.back()) {
        hints.push_back({QStringLiteral("Alt+↓"), tr("Next step")});
    }
    return hints;
}

std::optional<shell::OpenClient> OnboardingPage::openClient() const
{
    return m_client.isNone() ? std::nullopt : std::optional(shell::OpenClient{m_client, title()});
}

bool OnboardingPage::canPrint() const
{
    return step() != nullptr && step()->canPrint();
}

void OnboardingPage::print()
{
    if (step() != nullptr) {
        step()->print();
    }
}

bool OnboardingPage::closeOrClear()
{
    return step() != nullptr && step()->closeOrClear();
}

void OnboardingPage::setRoom(bool isNarrow, bool isLow)
{
    m_isNarrow = isNarrow;
    m_isLow = isLow;
    fitList();
    m_saved->setVisible(!isNarrow);
    for (const auto& made : m_steps) {
        made.second->setRoom(isNarrow, isLow);
    }
}

void OnboardingPage::fitList()
{
    const bool isTight = width() < m_services.look.theme().scaled(kTightBelow);
    m_list->setRoom(isTight ? ListRoom::Tight : m_isNarrow ? ListRoom::Narrow : ListRoom::Wide);
}

void OnboardingPage::resizeEvent(QResizeEvent* event)
{
    shell::Page::resizeEvent(event);
    fitList();
}

void OnboardingPage::hideEvent(QHideEvent* event)
{
    if (step() != nullptr) {
        step()->keep();
    }
    shell::Page::hideEvent(event);
}

}  // namespace chalk::ui::onboarding
