#include "ui/direction/direction_tab.h"

#include "ui/common/action_button.h"
#include "ui/common/direction_words.h"
#include "ui/common/empty_state.h"
#include "ui/common/formats.h"
#include "ui/common/segmented_choice.h"
#include "ui/direction/direction_cards.h"
#include "ui/direction/direction_changes.h"
#include "ui/direction/direction_desk.h"
#include "ui/direction/direction_side.h"
#include "ui/direction/months_view.h"
#include "ui/direction/offer_view.h"
#include "ui/direction/plan_chart.h"
#include "ui/direction/plan_comparison.h"
#include "ui/direction/plan_facts.h"
#include "ui/direction/plan_outcome.h"
#include "ui/direction/plan_panel.h"
#include "ui/direction/running_view.h"

#include <QAction>
#include <QApplication>
#include <QLabel>
#include <QPointer>
#include <QStackedLayout>

namespace chalk::ui::direction {

using chalk::direction::Direction;

DirectionTab::DirectionTab(DirectionServices services, QWidget* parent)
    : QWidget(parent),
      m_services(std::move(services)),
      m_desk(std::make_unique<DirectionDesk>(m_services.database, m_services.catalogue, m_services.atUtc)),
      m_pages(new QStackedLayout(this)),
      m_failure(new common::EmptyState(m_services.look)),
      m_talk(new QLabel(this)),
      m_part(new common::SegmentedChoice(tr("Show"), {{tr("Plan")}, {tr("Planned and done")}, {tr("The months so far")}}, this)),
      m_cards(new DirectionCards(m_services.look, this)),
      m_middle(new QStackedLayout),
      m_plan(new PlanPanel(m_services.look, this)),
      m_comparison(new PlanComparison(m_services.look, m_services.dialogs, this)),
      m_outcome(new PlanOutcome(m_services.look, this)),
      m_months(new MonthsView(m_services.look, m_services.database.access(), m_services.catalogue, this)),
      m_nothing(new common::EmptyState(m_services.look, this)),
      m_side(new DirectionSide(m_services.look, this))
{
    makeParts();
    makeButtons();
    makeKeys();
}

DirectionTab::~DirectionTab() = default;

void DirectionTab::setClient(base::ClientId client, base::Date today)
{
    if (client != m_client || today != m_today) {
        m_case.reset();
        m_isNextAsked = false;
        m_edited = {};
        m_part->setChosen(kPlanPart);
    }
    m_client = client;
    m_today = today;
    m_isStale = true;
    if (isVisible()) {
        read();
    }
}

void DirectionTab::showEvent(QShowEvent* event)
{
    QWidget::showEvent(event);
    if (m_isStale) {
        read();
    }
}

void DirectionTab::read()
{
    m_isStale = false;
    auto found = m_desk->read(m_client, m_today);
    if (!found) {
        m_case.reset();
        m_failure->setWords(tr("The directions cannot be shown"), found.error().message.toHtmlEscaped());
        m_pages->setCurrentWidget(m_failure);
        return;
    }
    const bool isOther = !m_case;
    m_case = std::make_unique<DirectionCase>(*std::move(found));
    if (isOther) {
        m_cards->setChosen(m_case->suggested().value_or(Direction::Strength));
    }
    takeEdits();
    const QPointer<QWidget> focused = QApplication::focusWidget();
    const bool hadFocus = focused && isAncestorOf(focused);
    m_pages->setCurrentIndex(0);
    showCase();
    if (hadFocus && (focused != QApplication::focusWidget() || !focused->isVisible())) {
        setFocus(Qt::OtherFocusReason);  // what had it is not shown any more
    }
    enableKeys();
    Q_EMIT keysChanged();
}

void DirectionTab::showCase()
{
    const bool isRunning = m_case->running.has_value();
    const bool isOffered = !isRunning && !isReviewFirst();
    m_talk->setText(isOffered ? talkText(*m_case) : QString());
    m_cards->setVisible(isOffered);
    m_side->setVisible(isRunning || isOffered);
    m_offerFoot->setVisible(!isRunning);
    m_runningFoot->setVisible(isRunning);
    m_part->setAvailable(kDonePart, m_case->running || m_case->over);
    m_part->setAvailable(kMonthsPart, m_case->talk.firstLoad.has_value());
    m_part->setVisible(m_case->talk.firstLoad || m_case->running || m_case->over);
    if ((m_part->chosen() == kDonePart && !m_case->running && !m_case->over) || (m_part->chosen() == kMonthsPart && !m_case->talk.firstLoad)) {
        m_part->setChosen(kPlanPart);
    }
    if (m_case->over) {
        m_outcome->setOutcome(outcomeFacts(*m_case));
    }
    if (isRunning) {
        showRunning();
    } else {
        std::array<chalk::direction::DirectionFit, 3> fits;
        for (const Direction direction : chalk::direction::kDirections) {
            fits[static_cast<std::size_t>(direction)] = m_case->offer(direction).fit;
        }
        m_cards->setFits(fits, m_case->client.sessionsPerWeek);
        showOffer();
    }
    showPart();
}

void DirectionTab::showOffer()
{
    const Direction direction = m_cards->chosen();
    const DirectionOffer& offer = m_case->offer(direction);
    const bool hasPlan = !offer.plan.weeks.empty();
    if (hasPlan) {
        m_plan->setView(offerPanelView(*m_case, offer));
    }
    m_side->setView(offerSideView(*m_case, offer));
    const base::Date start = hasPlan ? offer.plan.weeks.front().monday : offer.plan.wishes.start;
    m_start->setText(tr("Start %1 on %2").arg(common::directionName(direction).toLower(), common::shortDayText(start)));
    m_start->setEnabled(!startBarOf(*m_case, offer));
    m_editOffer->setEnabled(hasPlan);
    m_cycle->setEnabled(m_case->talk.firstLoad.has_value());
    setFocusProxy(isReviewFirst() ? static_cast<QWidget*>(m_outcome) : m_cards->card(direction));
    if (m_part->chosen() == kPlanPart) {
        m_middle->setCurrentWidget(planPart());
    }
}

void DirectionTab::showRunning()
{
    m_plan->setView(runningPanelView(*m_case));
    m_side->setView(runningSideView(*m_case));
    m_takeUp->setVisible(canTakeUp(*m_case));
    setFocusProxy(m_plan->chart());
}

QWidget* DirectionTab::planPart() const
{
    if (m_case->running) {
        return m_plan;
    }
    if (isReviewFirst()) {
        return m_outcome;
    }
    return m_case->offer(m_cards->chosen()).plan.weeks.empty() ? static_cast<QWidget*>(m_nothing) : m_plan;
}

void DirectionTab::showPart()
{
    if (m_part->chosen() == kMonthsPart) {
        m_middle->setCurrentWidget(m_months);
        m_months->read(m_client, *m_case->talk.firstLoad, m_today);
    } else if (m_part->chosen() == kDonePart) {
        m_middle->setCurrentWidget(m_comparison);
        m_comparison->setCase(comparisonFacts(*m_case, m_case->running ? *m_case->running : *m_case->over));
    } else {
        m_middle->setCurrentWidget(planPart());
    }
    Q_EMIT keysChanged();
}

void DirectionTab::choose(Direction direction)
{
    if (!m_case) {
        return;
    }
    m_cards->setChosen(direction);
    m_cards->card(direction)->setFocus(Qt::ShortcutFocusReason);
    showOffer();
}

void DirectionTab::setInFront(bool isInFront)
{
    m_isInFront = isInFront;
    enableKeys();
}

void DirectionTab::enableKeys()
{
    for (QAction* key : m_keys) {
        key->setEnabled(m_isInFront && m_case && !m_case->running && !isReviewFirst());
    }
}

std::vector<shell::KeyHint> DirectionTab::keyHints() const
{
    std::vector<shell::KeyHint> hints;
    if (m_case && !m_case->running && !isReviewFirst()) {
        hints.push_back({QStringLiteral("1 2 3"), tr("Compare")});
    }
    if (m_middle->currentWidget() == m_comparison) {
        hints.push_back({QStringLiteral("T"), tr("Table")});
    }
    hints.push_back({QStringLiteral("Alt+1"), tr("Board")});
    return hints;
}

void DirectionTab::setRoom(bool isNarrow, bool isLow)
{
    m_plan->setRoom(isNarrow, isLow);
    m_side->setRoom(isNarrow);
}

}  // namespace chalk::ui::direction
