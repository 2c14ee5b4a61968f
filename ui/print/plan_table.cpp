#include "core/direction/planned_load.h"
#include "ui/common/direction_words.h"
#include "ui/common/formats.h"
#include "ui/common/plan_words.h"
#include "ui/print/plan_parts.h"
#include "ui/print/report_parts.h"
#include "ui/print/runs.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace chalk::ui::print {

namespace {

using chalk::direction::PlannedWork;

// Millimetres.
constexpr double kTableLine = 4.9;
constexpr double kTableName = 6.4;
constexpr double kTableLabels = 4.6;
constexpr double kNameWidth = 100;  ///< at most
constexpr double kNumberWidth = 6;
constexpr double kDateWidth = 12.5;
constexpr double kKindWidth = 12;
constexpr double kWeekWidth = kNumberWidth + kDateWidth + kKindWidth;
constexpr double kSetsWidth = 17;
constexpr double kLoadWidth = 18.5;   ///< at least
constexpr double kShareWidth = 8.5;
constexpr double kRestWidth = 9;
constexpr double kLeftWidth = 6.5;
constexpr double kNumbersWidth = kSetsWidth + kShareWidth + kRestWidth + kLeftWidth;  ///< without the load
constexpr double kCellGap = 0.8;
constexpr double kHairline = 0.15;
constexpr double kTablePoints = 8.5;
constexpr double kBlockGap = 1.6;  ///< between the room to write in and the next exposure
constexpr std::size_t kMostBeside = 2;
constexpr double kLeastWrite = 12;  ///< to write in

QString tableWords(const char* text)
{
    return QCoreApplication::translate("PlanPaper", text);
}

/// Puts texts into cells that follow each other.
class CellRow {
public:
    CellRow(Sheet& sheet, const QRectF& line) : m_sheet(sheet), m_line(line), m_x(line.left()) {}

    void add(const QString& text, double width, QFont::Weight weight = QFont::Medium, double points = kTablePoints)
    {
        if (!text.isEmpty()) {
            addReportLine(m_sheet, text, points, weight, {m_x, m_line.top(), width - kCellGap, m_line.height()});
        }
        m_x += width;
    }

private:
    Sheet& m_sheet;
    QRectF m_line;
    double m_x;
};

/// `80`, `82.5`: the sign stands above the column.
QString bareShareText(base::Milli share)
{
    return common::planShareText(share).section(QLatin1Char(' '), 0, 0);
}

QString weekWordOf(const chalk::direction::PlanWeek& week)
{
    return week.kind == chalk::direction::WeekKind::Lighter ? common::weekKindName(week.kind) : common::phaseName(week.phase);
}

}  // namespace

PlanTable::PlanTable(const PlanPaper& paper, const PlanNotes& notes, std::size_t lift, double width)
    : m_paper(paper), m_notes(notes), m_lift(lift), m_width(width), m_loadWidth(kLoadWidth)
{
    for (const chalk::direction::PlanWeek& week : paper.plan.plan.weeks) {
        m_most = std::max(m_most, week.work[lift].size());
    }
    for (std::size_t week = 0; week < rows(); ++week) {
        for (std::size_t exposure = 0; exposure < paper.plan.plan.weeks[week].work[lift].size(); ++exposure) {
            const QString mark = markText(week, exposure);
            m_loadWidth = std::max(m_loadWidth, widthOf(loadText(week, exposure), printFont(kTablePoints, QFont::Bold)) + kCellGap + 0.1);
            m_markWidth = std::max(m_markWidth, mark.isEmpty() ? 0 : widthOf(mark, printFont(kLeastPoints, QFont::Bold)) + 2 * kCellGap + 0.1);
        }
    }
    m_beside = std::min(m_most, kMostBeside);
    m_beside = writeWidth() < kLeastWrite ? 1 : m_beside;
    m_lines = (m_most + m_beside - 1) / m_beside;
    const base::Load single = paper.plan.singles[lift].load;
    m_reviews =
        chalk::direction::reviewOf(paper.plan.plan, lift, single > base::Load() ? single : base::Load::fromCenti(1), paper.done[lift]);
}

QString PlanTable::loadText(std::size_t week, std::size_t exposure) const
{
    const chalk::direction::PlanWeek& planned = m_paper.plan.plan.weeks[week];
    const chalk::direction::PlannedWork& work = planned.work[m_lift][exposure];
    const chalk::direction::LiftForPlan* lift = work.isTest ? nullptr : m_paper.liftAt(m_lift);
    const auto load =
        lift == nullptr ? std::nullopt : chalk::direction::plannedLoad(*lift, m_paper.singleIn(m_lift, planned.monday), work.scheme.share);
    return load ? common::planLoadText(*lift, *load) : QString();
}

QString PlanTable::markText(std::size_t week, std::size_t exposure) const
{
    const chalk::direction::PlannedWork& work = m_paper.plan.plan.weeks[week].work[m_lift][exposure];
    const QString pause = work.isPauseAsked && !work.isTest ? tableWords(QT_TRANSLATE_NOOP("PlanPaper", "p")) : QString();
    return QStringLiteral("%1 %2").arg(pause, m_notes.marksOf(week, m_lift, exposure)).trimmed();
}

double PlanTable::headHeight() const
{
    return kTableName + kTableLabels * static_cast<double>(m_lines);
}

double PlanTable::rowHeight() const
{
    return kTableLine * static_cast<double>(m_lines);
}

double PlanTable::workWidth() const
{
    return kNumbersWidth + m_loadWidth + m_markWidth;
}

double PlanTable::writeWidth() const
{
    return (m_width - kWeekWidth) / static_cast<double>(m_beside) - workWidth();
}

QRectF PlanTable::blockAt(const QPointF& corner, std::size_t exposure) const
{
    const double width = workWidth() + writeWidth();
    return {corner.x() + kWeekWidth + static_cast<double>(exposure % m_beside) * width,
            corner.y() + static_cast<double>(exposure / m_beside) * kTableLine, width, kTableLine};
}

QString PlanTable::detailText() const
{
    const chalk::direction::PlannedLift& planned = m_paper.plan.plan.wishes.lifts[m_lift];
    const chalk::direction::LiftForPlan* lift = m_paper.liftAt(m_lift);
    QStringList parts{common::liftRoleName(planned.role)};
    if (lift != nullptr) {
        const chalk::direction::PlanSingle single = chalk::direction::singleNow(m_paper.plan, m_lift, m_paper.lifts);
        parts << tableWords(QT_TRANSLATE_NOOP("PlanPaper", "single %1")).arg(common::planSingleText(single, lift->machine.setup().unit));
        if (const QString wait = common::planWaitText(*lift, single.load, m_paper.isRunning()); !wait.isEmpty()) {
            parts << wait;
        }
    }
    return parts.join(QStringLiteral(" · "));
}

void PlanTable::addHead(Sheet& sheet, const QPointF& corner) const
{
    const FittedPrint name = fitted(common::qstring(m_paper.names[m_lift]), kNameWidth, {11, 10, 9, kLeastPoints}, QFont::Bold);
    const QRectF cell(corner.x(), corner.y(), widthOf(name.text, name.font) + 0.1, kTableName);
    sheet.texts.push_back({name.text, name.font, cell, {cell.left(), cell.center().y() + capHeightOf(name.font) / 2}, false});
    const double beside = cell.right() + 3;
    addReportLine(sheet, detailText(), 8.5, QFont::Medium, {beside, cell.top(), corner.x() + m_width - beside, cell.height()});
    const double top = corner.y() + kTableName;
    CellRow week(sheet, {corner.x(), top, m_width, kTableLabels});
    week.add(tableWords(QT_TRANSLATE_NOOP("PlanPaper", "Week")), kWeekWidth, QFont::Medium, kLeastPoints);
    for (std::size_t exposure = 0; exposure < m_most; ++exposure) {
        const QRectF block = blockAt({corner.x(), top}, exposure);
        CellRow row(sheet, {block.left(), top + static_cast<double>(exposure / m_beside) * kTableLabels, block.width(), kTableLabels});
        row.add(tableWords(QT_TRANSLATE_NOOP("PlanPaper", "Day %1")).arg(exposure + 1), kSetsWidth, QFont::Bold, kLeastPoints);
        row.add(tableWords(QT_TRANSLATE_NOOP("PlanPaper", "load")), m_loadWidth, QFont::Medium, kLeastPoints);
        row.add(QStringLiteral("%"), kShareWidth, QFont::Medium, kLeastPoints);
        row.add(tableWords(QT_TRANSLATE_NOOP("PlanPaper", "rest")), kRestWidth, QFont::Medium, kLeastPoints);
        row.add(tableWords(QT_TRANSLATE_NOOP("PlanPaper", "left")), kLeftWidth + m_markWidth, QFont::Medium, kLeastPoints);
        row.add(tableWords(QT_TRANSLATE_NOOP("PlanPaper", "done")), writeWidth() - kCellGap, QFont::Medium, kLeastPoints);
    }
    const double bottom = corner.y() + headHeight();
    sheet.rules.push_back({{corner.x(), bottom, corner.x() + m_width, bottom}, kRuleStroke});
}

void PlanTable::addWork(Sheet& sheet, std::size_t index, std::size_t exposure, const QRectF& block) const
{
    const chalk::direction::PlanWeek& week = m_paper.plan.plan.weeks[index];
    const PlannedWork& work = week.work[m_lift][exposure];
    const chalk::direction::LiftForPlan* lift = m_paper.liftAt(m_lift);
    const base::Load single = m_paper.singleIn(m_lift, week.monday);
    CellRow row(sheet, block);
    if (work.isTest) {
        row.add(lift == nullptr ? common::planSetsText(work) : common::planWorkText(work, *lift, single), workWidth(), QFont::Bold);
        return;
    }
    row.add(common::planSetsText(work), kSetsWidth, QFont::Bold);
    row.add(loadText(index, exposure), m_loadWidth, QFont::Bold);
    row.add(bareShareText(work.scheme.share), kShareWidth, QFont::Medium, kLeastPoints);
    row.add(common::restText(work.scheme.rest), kRestWidth);
    row.add(QString::number(work.scheme.reserve), kLeftWidth);
    row.add(markText(index, exposure), m_markWidth, QFont::Bold, kLeastPoints);
}

void PlanTable::addDone(Sheet& sheet, std::size_t index, const QRectF& block) const
{
    const chalk::direction::WeekReview& review = m_reviews[index];
    const QString sets = tableWords(QT_TRANSLATE_NOOP("PlanPaper", "%1/%2")).arg(review.doneSets).arg(review.plannedSets);
    const bool hasShare = review.doneReps > 0 && m_paper.plan.singles[m_lift].load > base::Load();
    const QString share = QStringLiteral("%1, %2 %").arg(sets).arg(std::lround(review.doneShare * 100));
    const Runs brief{{sets, 8.5, QFont::Medium}};
    placeBest(sheet, hasShare ? std::vector<Runs>{{{share, 8.5, QFont::Medium}}, brief} : std::vector<Runs>{brief},
              {block.left() + workWidth(), block.top(), writeWidth() - kBlockGap, block.height()});
}

void PlanTable::addRow(Sheet& sheet, std::size_t index, const QPointF& corner) const
{
    const chalk::direction::PlanWeek& week = m_paper.plan.plan.weeks[index];
    CellRow row(sheet, {corner.x(), corner.y(), kWeekWidth, kTableLine});
    row.add(QString::number(index + 1), kNumberWidth, QFont::Bold);
    row.add(common::shortDayText(week.monday), kDateWidth);
    row.add(weekWordOf(week), kKindWidth, QFont::Medium, kLeastPoints);
    for (std::size_t exposure = 0; exposure < week.work[m_lift].size(); ++exposure) {
        addWork(sheet, index, exposure, blockAt(corner, exposure));
    }
    const double lowest = corner.y() + rowHeight();
    for (std::size_t beside = 0; beside < m_beside; ++beside) {
        const QRectF block = blockAt(corner, beside);
        const double right = block.right() - (beside + 1 == m_beside ? kHairline / 2 : kBlockGap);
        for (const double x : {block.left() + workWidth() - kCellGap, right}) {
            sheet.rules.push_back({{x, corner.y(), x, lowest}, kHairline});
        }
    }
    if (m_paper.isOver(week.monday)) {
        addDone(sheet, index, blockAt(corner, m_beside - 1));
    }
    sheet.rules.push_back({{corner.x(), lowest, corner.x() + m_width, lowest}, kHairline});
}

}  // namespace chalk::ui::print
