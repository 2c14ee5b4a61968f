#pragma once

#include "ui/direction/missed_weeks_preview.h"

#include <QDialog>

class QLabel;
class QListWidget;
class QTableWidget;

namespace chalk::ui::common {
class ActionButton;
class Look;
class SegmentedChoice;
}  // namespace chalk::ui::common

namespace chalk::ui::direction {

struct MissedWeeksCase {
    chalk::direction::ClientPlan plan;
    std::vector<std::vector<chalk::direction::DoneSet>> done;  ///< by lift of the plan
    std::vector<AwayDays> away;
    QString client;
    base::Date today;
};

/// Which weeks of a plan are or were missed, and whether the plan is shifted or squeezed by them: both are shown week by week before one is chosen. It
/// writes nothing: after `accept()` the changed plan is there to be taken.
class MissedWeeksDialog : public QDialog {
    Q_OBJECT

public:
    /// `look` outlives the dialog. The plan has a week.
    MissedWeeksDialog(const common::Look& look, MissedWeeksCase facts, QWidget* parent = nullptr);

    /// The Mondays that are marked.
    [[nodiscard]] std::vector<base::Date> missed() const;
    [[nodiscard]] chalk::direction::MissedWeeks way() const;
    /// The plan as it is changed by them.
    [[nodiscard]] chalk::direction::ClientPlan plan() const;

private:
    [[nodiscard]] QWidget* weeksPart();
    [[nodiscard]] QWidget* previewPart();
    [[nodiscard]] QWidget* foot();
    void follow();
    void showRows(const std::vector<base::Date>& mondays);

    const common::Look& m_look;
    MissedWeeksCase m_facts;
    QListWidget* m_weeks;
    common::SegmentedChoice* m_way;
    QTableWidget* m_rows;
    QLabel* m_shift;
    QLabel* m_squeeze;
    common::ActionButton* m_keep = nullptr;
};

}  // namespace chalk::ui::direction
