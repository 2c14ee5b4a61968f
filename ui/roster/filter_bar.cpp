#include "ui/roster/filter_bar.h"

#include "ui/common/chip.h"
#include "ui/common/look.h"
#include "ui/roster/menu_button.h"
#include "ui/roster/roster_model.h"

#include <QActionGroup>
#include <QHBoxLayout>
#include <QMenu>

#include <algorithm>

namespace chalk::ui::roster {

namespace {

constexpr int kChipGap = 6;
constexpr int kChipGroupGap = 10;

QString orderText(checkin::RosterOrder order)
{
    switch (order) {
    case checkin::RosterOrder::TodayThenFlagged:
        return FilterBar::tr("Today, then flagged");
    case checkin::RosterOrder::NextSession:
        return FilterBar::tr("Next session");
    case checkin::RosterOrder::Name:
        return FilterBar::tr("Name");
    case checkin::RosterOrder::LongestSinceSession:
        return FilterBar::tr("Longest since last session");
    }
    return {};
}

}  // namespace

FilterBar::FilterBar(const common::Look& look, const RosterModel& model, QWidget* parent)
    : QWidget(parent),
      m_look(look),
      m_model(model),
      m_chipRow(new QHBoxLayout),
      m_orderButton(new MenuButton(look, this)),
      m_orderMenu(new QMenu(this)),
      m_filterMenu(new QMenu(this))
{
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(kChipGap);
    m_chipRow->setSpacing(kChipGap);
    row->addLayout(m_chipRow);
    row->addStretch();
    row->addWidget(m_orderButton);
    setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
    connect(m_filterMenu, &QMenu::aboutToShow, this, &FilterBar::fillFilterMenu);
    connect(&look, &common::Look::changed, this, &FilterBar::fitChips);
    buildOrderMenu();
    setCoaches({});
}

void FilterBar::buildOrderMenu()
{
    using checkin::RosterOrder;
    auto* group = new QActionGroup(this);
    for (const RosterOrder order : {RosterOrder::TodayThenFlagged, RosterOrder::NextSession, RosterOrder::Name, RosterOrder::LongestSinceSession}) {
        QAction* action = m_orderMenu->addAction(orderText(order));
        action->setCheckable(true);
        action->setChecked(order == m_order);
        group->addAction(action);
        connect(action, &QAction::triggered, this, [this, order] { setOrder(order); });
    }
    m_orderButton->setMenu(m_orderMenu);
    m_orderButton->setText(orderText(m_order));
    m_orderButton->setAccessibleName(tr("Order"));
    m_orderButton->setAccessibleDescription(orderText(m_order));
}

void FilterBar::setCoaches(const std::vector<clients::Coach>& coaches)
{
    std::vector<FilterChoice> choices = filterChoices(coaches);
    const auto isSame = [](const FilterChoice& a, const FilterChoice& b) { return a.text == b.text && a.coach == b.coach; };
    if (!std::equal(choices.begin(), choices.end(), m_choices.begin(), m_choices.end(), isSame)) {
        m_choices = std::move(choices);
        buildChips();
    }
    const auto isTheirs = [this](const clients::Coach& coach) { return m_criteria.coach == coach.id; };
    if (m_criteria.coach && std::none_of(coaches.begin(), coaches.end(), isTheirs)) {
        RosterCriteria criteria = m_criteria;
        criteria.coach.reset();
        setCriteria(criteria);
    }
    showState();
}

void FilterBar::buildChips()
{
    for (common::Chip* chip : m_chips) {
        delete chip;
    }
    m_chips.clear();
    while (QLayoutItem* item = m_chipRow->takeAt(0)) {
        delete item;
    }
    QWidget* before = nullptr;
    for (const FilterChoice& choice : m_choices) {
        if (!choice.isChip) {
            m_chips.push_back(nullptr);
            continue;
        }
        if (choice.group == ChoiceGroup::Phase && choice.phase == checkin::Phase::Learning) {
            m_chipRow->addSpacing(kChipGroupGap);
        }
        auto* chip = new common::Chip(m_look, choice.text, this);
        connect(chip, &QAbstractButton::clicked, this, [this, choice] { toggle(choice); });
        m_chipRow->addWidget(chip);
        if (before != nullptr) {
            setTabOrder(before, chip);
        }
        before = chip;
        m_chips.push_back(chip);
    }
    setTabOrder(before, m_orderButton);
}

void FilterBar::toggle(const FilterChoice& choice)
{
    const bool wasOn = choice.isOn(m_criteria);
    setCriteria(wasOn ? choice.off(m_criteria) : choice.on(m_criteria));
    showState();  // a chip that was pressed while it was on and stays on
}

void FilterBar::setCriteria(const RosterCriteria& criteria)
{
    if (criteria != m_criteria) {
        m_criteria = criteria;
        showState();
        Q_EMIT criteriaChanged(m_criteria);
    }
}

void FilterBar::setOrder(checkin::RosterOrder order)
{
    if (order != m_order) {
        m_order = order;
        m_orderMenu->actions().at(static_cast<int>(order))->setChecked(true);
        m_orderButton->setText(orderText(order));
        m_orderButton->setAccessibleDescription(orderText(order));
        m_orderButton->updateGeometry();
        Q_EMIT orderChanged(order);
    }
}

void FilterBar::chooseOrder()
{
    m_orderButton->click();
}

int FilterBar::countFor(const FilterChoice& choice) const
{
    return countOf(m_model.rows(), choice.on(m_criteria));
}

void FilterBar::showState()
{
    for (std::size_t i = 0; i < m_choices.size(); ++i) {
        if (m_chips[i] != nullptr) {
            m_chips[i]->setChecked(m_choices[i].isOn(m_criteria));
            m_chips[i]->setCount(m_model.rowCount() > 0 ? std::optional(countFor(m_choices[i])) : std::nullopt);
        }
    }
    // The chip of any flag stands for the one that was chosen in the menu.
    const auto any = std::find_if(m_choices.begin(), m_choices.end(),
                                  [](const FilterChoice& choice) { return choice.group == ChoiceGroup::Flag && !choice.flag; });
    common::Chip* chip = m_chips[static_cast<std::size_t>(any - m_choices.begin())];
    const bool isOne = m_criteria.flag && *m_criteria.flag != checkin::ClientFlag::Away;
    chip->setText(isOne ? tagOf(*m_criteria.flag).text : any->text);
    chip->setChecked(isOne || m_criteria.isFlagged);
    if (isOne) {
        chip->setCount(countOf(m_model.rows(), m_criteria));
    }
    chip->updateGeometry();
    fitChips();
}

void FilterBar::fillFilterMenu()
{
    m_filterMenu->clear();
    std::optional<ChoiceGroup> before;
    for (const FilterChoice& choice : m_choices) {
        if (before && *before != choice.group) {
            m_filterMenu->addSeparator();
        }
        before = choice.group;
        QAction* action = m_filterMenu->addAction(choice.text + QLatin1Char('\t') + QString::number(countFor(choice)));
        action->setCheckable(true);
        action->setChecked(choice.isOn(m_criteria));
        connect(action, &QAction::triggered, this, [this, choice] { toggle(choice); });
    }
}

void FilterBar::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    fitChips();
}

void FilterBar::fitChips()
{
    int room = width() - m_orderButton->sizeHint().width() - 2 * kChipGroupGap;
    const auto wanted = [this](std::size_t i) { return m_choices[i].flag != checkin::ClientFlag::Away || countFor(m_choices[i]) > 0 || m_chips[i]->isChecked(); };
    // Who is away gives way first, then the coaches: there may be many. All of them are in the menu.
    const auto rank = [this](std::size_t i) {
        return m_choices[i].flag == checkin::ClientFlag::Away ? 2 : m_choices[i].group == ChoiceGroup::Coach ? 1 : 0;
    };
    for (int turn = 0; turn <= 2; ++turn) {
        for (std::size_t i = 0; i < m_chips.size(); ++i) {
            if (m_chips[i] == nullptr || rank(i) != turn) {
                continue;
            }
            const int width = m_chips[i]->sizeHint().width() + kChipGap;
            const bool isShown = wanted(i) && width <= room;
            m_chips[i]->setVisible(isShown);
            room -= isShown ? width : 0;
        }
    }
}

}  // namespace chalk::ui::roster
