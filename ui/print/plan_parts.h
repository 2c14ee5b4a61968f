#pragma once

#include "ui/print/plan_paper.h"
#include "ui/print/sheet.h"

#include <QPointF>
#include <QRectF>
#include <QString>
#include <QStringList>

#include <map>
#include <tuple>

namespace chalk::ui::print {

// The parts that a plan on paper is laid out from.

/// What leaves its published range, each said once and numbered from 1.
class PlanNotes {
public:
    explicit PlanNotes(const chalk::direction::BlockPlan& plan);

    [[nodiscard]] const QStringList& texts() const { return m_texts; }
    /// The numbers of what leaves its range in an exposure: `1, 3`; empty where nothing does.
    [[nodiscard]] QString marksOf(std::size_t week, std::size_t lift, std::size_t exposure) const;

private:
    QStringList m_texts;
    std::map<std::tuple<std::size_t, std::size_t, std::size_t>, QString> m_marks;
};

/// Weekly intensity as a line and hard sets as bars (lighter weeks and the test are white), with the phases above and the weeks below.
/// Begins at the top of its area and answers its lower edge.
double addPlanChart(Sheet& sheet, const chalk::direction::BlockPlan& plan, const QRectF& area);

/// The weeks of one lift: two exposures of a week beside each other, further ones below, each with room to write in. What was done stands
/// in that room in weeks that are over.
class PlanTable {
public:
    /// Keeps references to the paper and its notes. `width` in millimetres.
    PlanTable(const PlanPaper& paper, const PlanNotes& notes, std::size_t lift, double width);

    [[nodiscard]] double headHeight() const;
    [[nodiscard]] double rowHeight() const;
    [[nodiscard]] std::size_t rows() const { return m_paper.plan.plan.weeks.size(); }
    void addHead(Sheet& sheet, const QPointF& corner) const;
    void addRow(Sheet& sheet, std::size_t week, const QPointF& corner) const;

private:
    /// What is put on the lift; empty where no single is known, and for a test.
    [[nodiscard]] QString loadText(std::size_t week, std::size_t exposure) const;
    /// What marks an exposure: `p` for a pause, and the numbers of its notes.
    [[nodiscard]] QString markText(std::size_t week, std::size_t exposure) const;
    [[nodiscard]] double workWidth() const;
    [[nodiscard]] double writeWidth() const;
    [[nodiscard]] QRectF blockAt(const QPointF& corner, std::size_t exposure) const;
    [[nodiscard]] QString detailText() const;
    void addWork(Sheet& sheet, std::size_t week, std::size_t exposure, const QRectF& block) const;
    void addDone(Sheet& sheet, std::size_t week, const QRectF& block) const;

    const PlanPaper& m_paper;
    const PlanNotes& m_notes;
    std::size_t m_lift;
    double m_width;
    double m_loadWidth;
    std::size_t m_most = 1;     ///< exposures of a week
    std::size_t m_beside = 1;   ///< of them beside each other
    std::size_t m_lines = 1;    ///< lines of a week
    double m_markWidth = 0;     ///< 0 where nothing is marked
    std::vector<chalk::direction::WeekReview> m_reviews;  ///< by week
};

}  // namespace chalk::ui::print
