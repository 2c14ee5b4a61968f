#pragma once

#include "ui/roster/filter_choice.h"

#include <QWidget>

#include <vector>

class QHBoxLayout;
class QMenu;

namespace chalk::ui::common {
class Chip;
class Look;
}

namespace chalk::ui::roster {

class MenuButton;
class RosterModel;

/// The chips above the roster and the menu of its order. Every chip says how many clients it would leave.
class FilterBar : public QWidget {
    Q_OBJECT

public:
    /// `look` and `model`, whose rows are counted, outlive the bar.
    FilterBar(const common::Look& look, const RosterModel& model, QWidget* parent = nullptr);

    /// Counts again: the model holds other rows now. A coach who is gone leaves the criteria.
    void setCoaches(const std::vector<clients::Coach>& coaches);
    void setCriteria(const RosterCriteria& criteria);
    [[nodiscard]] const RosterCriteria& criteria() const { return m_criteria; }
    void setOrder(checkin::RosterOrder order);
    [[nodiscard]] checkin::RosterOrder order() const { return m_order; }
    /// Everything that can be filtered by, for the button in the header. Owned by the bar.
    [[nodiscard]] QMenu* filterMenu() const { return m_filterMenu; }
    /// Opens the menu of orders.
    void chooseOrder();

Q_SIGNALS:
    void criteriaChanged(const chalk::ui::roster::RosterCriteria& criteria);
    void orderChanged(checkin::RosterOrder order);

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void buildChips();
    void buildOrderMenu();
    void fillFilterMenu();
    void toggle(const FilterChoice& choice);
    void showState();
    void fitChips();
    [[nodiscard]] int countFor(const FilterChoice& choice) const;

    const common::Look& m_look;
    const RosterModel& m_model;
    std::vector<FilterChoice> m_choices;
    std::vector<common::Chip*> m_chips;  ///< beside the choices; null for those without a chip
    RosterCriteria m_criteria;
    checkin::RosterOrder m_order = checkin::RosterOrder::TodayThenFlagged;
    QHBoxLayout* m_chipRow;
    MenuButton* m_orderButton;
    QMenu* m_orderMenu;
    QMenu* m_filterMenu;
};

}  // namespace chalk::ui::roster
