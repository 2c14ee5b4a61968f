#include "ui/common/action_button.h"
#include "ui/common/direction_words.h"
#include "ui/common/empty_state.h"
#include "ui/common/segmented_choice.h"
#include "ui/direction/direction_cards.h"
#include "ui/direction/direction_desk.h"
#include "ui/direction/direction_side.h"
#include "ui/direction/direction_tab.h"
#include "ui/direction/months_view.h"
#include "ui/direction/plan_comparison.h"
#include "ui/direction/plan_outcome.h"
#include "ui/direction/plan_panel.h"

#include <QAction>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QStackedLayout>
#include <QVBoxLayout>

namespace chalk::ui::direction {

using chalk::direction::Direction;

namespace {

QGridLayout* footGrid(QWidget* foot)
{
    auto* grid = new QGridLayout(foot);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setSpacing(8);
    grid->setColumnStretch(0, 1);
    grid->setColumnStretch(1, 1);
    return grid;
}

}  // namespace

void DirectionTab::makeParts()
{
    m_talk->setWordWrap(true);
    m_talk->setProperty("role", QStringLiteral("secondary"));
    m_part->setCompact();
    m_part->setChosen(kPlanPart);
    m_nothing->setWords(tr("No plan can be made yet"), tr("A plan is made from lifts that are counted in repetitions and were loaded once."));
    for (QWidget* part : {static_cast<QWidget*>(m_plan), static_cast<QWidget*>(m_comparison), static_cast<QWidget*>(m_outcome),
                          static_cast<QWidget*>(m_months), static_cast<QWidget*>(m_nothing)}) {
        m_middle->addWidget(part);
    }
    auto* top = new QHBoxLayout;
    top->setSpacing(12);
    top->addWidget(m_talk, 1);
    top->addWidget(m_part);
    auto* left = new QVBoxLayout;
    left->setSpacing(12);
    left->addLayout(top);
    left->addWidget(m_cards);
    left->addLayout(m_middle, 1);
    auto* page = new QWidget(this);
    auto* row = new QHBoxLayout(page);
    row->setContentsMargins(24, 12, 24, 16);
    row->setSpacing(16);
    row->addLayout(left, 1);
    row->addWidget(m_side);
    m_failure->setPicture(QStringLiteral("warning"), common::Signal::Pain);
    m_pages->addWidget(page);
    m_pages->addWidget(m_failure);
    setFocusProxy(m_cards->card(Direction::Strength));
    connectParts();
}

void DirectionTab::connectParts()
{
    connect(m_cards, &DirectionCards::choiceMade, this, &DirectionTab::showOffer);
    connect(m_part, &common::SegmentedChoice::choiceMade, this, &DirectionTab::showPart);
    connect(m_outcome, &PlanOutcome::backAsked, this, &DirectionTab::oneMoreCycle);
    connect(m_outcome, &PlanOutcome::printAsked, this, [this] { Q_EMIT planAsked(m_client); });
    connect(m_outcome, &PlanOutcome::nextPlanAsked, this, [this] {
        m_isNextAsked = true;
        showCase();
        enableKeys();
        m_cards->card(m_cards->chosen())->setFocus(Qt::OtherFocusReason);
        Q_EMIT keysChanged();
    });
}

void DirectionTab::makeButtons()
{
    m_offerFoot = offerFoot();
    m_runningFoot = runningFoot();
    m_side->foot()->addWidget(m_offerFoot);
    m_side->foot()->addWidget(m_runningFoot);
    m_runningFoot->hide();
}

common::ActionButton* DirectionTab::addButton(QWidget* parent, const QString& text)
{
    auto* button = new common::ActionButton(m_services.look, text, parent);
    button->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    return button;
}

QWidget* DirectionTab::offerFoot()
{
    auto* foot = new QWidget(m_side);
    auto* grid = footGrid(foot);
    m_start = addButton(foot, {});
    m_start->setKind(common::ButtonKind::Primary);
    m_start->setButtonSize(common::ButtonSize::Large);
    auto* cycle = addButton(foot, tr("One more cycle"));
    grid->addWidget(m_start, 0, 0, 1, 2);
    m_editOffer = addButton(foot, tr("Edit the plan"));
    grid->addWidget(cycle, 1, 0);
    grid->addWidget(m_editOffer, 1, 1);
    connect(m_start, &QPushButton::clicked, this, &DirectionTab::start);
    connect(cycle, &QPushButton::clicked, this, &DirectionTab::oneMoreCycle);
    connect(m_editOffer, &QPushButton::clicked, this, &DirectionTab::edit);
    return foot;
}

QWidget* DirectionTab::runningFoot()
{
    auto* foot = new QWidget(m_side);
    auto* grid = footGrid(foot);
    m_takeUp = addButton(foot, tr("Take up again"));
    auto* edited = addButton(foot, tr("Edit the plan"));
    auto* missed = addButton(foot, tr("Missed weeks"));
    auto* printed = addButton(foot, tr("Print"));
    printed->setIconName(QStringLiteral("print"));
    auto* ended = addButton(foot, tr("End the plan"));
    grid->addWidget(m_takeUp, 0, 0, 1, 2);
    grid->addWidget(edited, 1, 0);
    grid->addWidget(missed, 1, 1);
    grid->addWidget(printed, 2, 0);
    grid->addWidget(ended, 2, 1);
    connect(m_takeUp, &QPushButton::clicked, this, &DirectionTab::takeUp);
    connect(edited, &QPushButton::clicked, this, &DirectionTab::edit);
    connect(missed, &QPushButton::clicked, this, &DirectionTab::missWeeks);
    connect(printed, &QPushButton::clicked, this, [this] { Q_EMIT planAsked(m_client); });
    connect(ended, &QPushButton::clicked, this, &DirectionTab::end);
    return foot;
}

void DirectionTab::makeKeys()
{
    for (const Direction direction : chalk::direction::kDirections) {
        auto* action = new QAction(tr("Compare: %1").arg(common::directionName(direction)), this);
        action->setShortcut(QKeySequence(Qt::Key_1 + static_cast<int>(direction)));
        action->setShortcutContext(Qt::WidgetWithChildrenShortcut);
        connect(action, &QAction::triggered, this, [this, direction] { choose(direction); });
        addAction(action);
        m_keys[static_cast<std::size_t>(direction)] = action;
    }
}

}  // namespace chalk::ui::direction
