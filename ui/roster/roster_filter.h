#pragma once

#include "ui/roster/roster_row.h"

#include <QSortFilterProxyModel>

#include <optional>

namespace chalk::ui::roster {

/// Which clients the roster shows. Everything that is set must fit.
struct RosterCriteria {
    std::optional<base::CoachId> coach;
    std::optional<checkin::Phase> phase;
    bool isFlagged = false;                   ///< with any flag but Away
    std::optional<checkin::ClientFlag> flag;  ///< with this one
    QString text;                             ///< as typed: every word is to be found in name, goal, lifts or flags

    bool operator==(const RosterCriteria&) const = default;
    /// Whether everybody fits.
    [[nodiscard]] bool isEmpty() const { return *this == RosterCriteria(); }
};

/// Whether a client fits. A word of three letters or more may stand anywhere in a word, a shorter one at its start.
[[nodiscard]] bool fits(const RosterRow& row, const RosterCriteria& criteria);
/// How many of the rows fit.
[[nodiscard]] int countOf(const std::vector<RosterRow>& rows, const RosterCriteria& criteria);

/// The roster, filtered and in order.
class RosterFilter : public QSortFilterProxyModel {
    Q_OBJECT

public:
    explicit RosterFilter(QObject* parent = nullptr);

    void setCriteria(const RosterCriteria& criteria);
    [[nodiscard]] const RosterCriteria& criteria() const { return m_criteria; }
    void setOrder(checkin::RosterOrder order);
    [[nodiscard]] checkin::RosterOrder order() const { return m_order; }

protected:
    bool filterAcceptsRow(int row, const QModelIndex& parent) const override;
    bool lessThan(const QModelIndex& left, const QModelIndex& right) const override;

private:
    RosterCriteria m_criteria;
    QStringList m_words;
    checkin::RosterOrder m_order = checkin::RosterOrder::TodayThenFlagged;
};

}  // namespace chalk::ui::roster
