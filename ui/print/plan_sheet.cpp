#include "ui/print/plan_sheet.h"

#include "ui/common/direction_words.h"
#include "ui/common/formats.h"
#include "ui/print/caution_block.h"
#include "ui/print/plan_parts.h"
#include "ui/print/print_text.h"
#include "ui/print/report_parts.h"

#include <QCoreApplication>

#include <algorithm>

namespace chalk::ui::print {

namespace {

// Millimetres.
constexpr double kPlanSide = 10;
constexpr double kPlanTop = 11;
constexpr double kPlanFoot = 9;
constexpr double kPlanFootLine = 5;
constexpr double kPlanGap = 4;
constexpr double kMostCautions = 34;   ///< height
constexpr double kChartHeight = 43;
constexpr double kSmallLine = 4.2;
constexpr int kLeastRows = 3;          ///< of a table that goes on on the next page

QString sheetWords(const char* text)
{
    return QCoreApplication::translate("PlanPaper", text);
}

/// Lays a plan out from page to page.
class PlanFlow {
public:
    PlanFlow(const PlanPaper& paper, PaperSize size) : m_paper(paper), m_notes(paper.plan.plan), m_size(millimetresOf(size)) { newPage(); }

    std::vector<Sheet> sheets()
    {
        addHead();
        m_y = addPlanChart(page(), m_paper.plan.plan, {m_area.left(), m_y, m_area.width(), kChartHeight}) + kPlanGap;
        addCautions();
        for (std::size_t lift = 0; lift < m_paper.plan.plan.wishes.lifts.size(); ++lift) {
            addTable(PlanTable(m_paper, m_notes, lift, m_area.width()));
        }
        addLadder();
        addLegend();
        addNotes();
        addFeet();
        return std::move(m_sheets);
    }

private:
    Sheet& page() { return m_sheets.back(); }
    [[nodiscard]] double room() const { return m_area.bottom() - kPlanFootLine - 1 - m_y; }

    void newPage()
    {
        m_sheets.emplace_back().size = m_size;
        m_area = QRectF(QPointF(), m_size).adjusted(kPlanSide, kPlanTop, -kPlanSide, -kPlanFoot);
        m_y = m_area.top();
    }

    void line(const QString& text, double points, QFont::Weight weight, double height)
    {
        if (room() < height) {
            newPage();
        }
        m_y = addReportLine(page(), text, points, weight, {m_area.left(), m_y, m_area.width(), height});
    }

    void paragraph(const QString& text, double points)
    {
        for (const QString& broken : wrapped(text, printFont(points, QFont::Medium), m_area.width())) {
            line(broken, points, QFont::Medium, points * 1.4 * kMmPerPoint);
        }
    }

    [[nodiscard]] QString aboutText() const
    {
        const chalk::direction::PlanWishes& wishes = m_paper.plan.plan.wishes;
        QStringList parts{common::planTitle(m_paper.plan.plan)};
        if (wishes.direction == chalk::direction::Direction::Strength) {
            parts << common::waveName(wishes.wave);
        }
        parts << common::planDaysText(m_paper.plan.plan)
              << (wishes.sessionsAWeek == 1 ? sheetWords(QT_TRANSLATE_NOOP("PlanPaper", "1 session a week"))
                                            : sheetWords(QT_TRANSLATE_NOOP("PlanPaper", "%1 sessions a week")).arg(wishes.sessionsAWeek));
        if (!m_paper.coachName.empty()) {
            parts << sheetWords(QT_TRANSLATE_NOOP("PlanPaper", "with %1")).arg(common::qstring(m_paper.coachName));
        }
        return parts.join(QStringLiteral(" · "));
    }

    void addHead()
    {
        line(common::qstring(m_paper.studioName), 9.5, QFont::Bold, 5);
        const FittedPrint name = fitted(common::qstring(m_paper.clientName), m_area.width(), {22, 20, 18, 16, 14, 12}, QFont::Bold, true);
        const QRectF cell(m_area.left(), m_y, m_area.width(), 10);
        page().texts.push_back({name.text, name.font, cell, {cell.left(), cell.center().y() + capHeightOf(name.font) / 2}, false});
        m_y = cell.bottom();
        paragraph(aboutText(), 10);
        if (m_paper.plan.endedOn) {
            line(sheetWords(QT_TRANSLATE_NOOP("PlanPaper", "Ended on %1.")).arg(common::longDayText(*m_paper.plan.endedOn)), 10,
                 QFont::Bold, 5);
        }
        m_y += 1;
        paragraph(sheetWords(
                      QT_TRANSLATE_NOOP("PlanPaper",
                                        "Stop each set with as many repetitions left as stand here, and rest as long as it says. Loads are "
                                        "planning figures, not tests: how the sets go moves them.")),
                  10);
        m_y += kPlanGap - 1;
    }

    void addCautions()
    {
        m_y = addCautionBlock(page(), m_paper.cautions, {m_area.left(), m_y, m_area.width(), kMostCautions}) + 1.5;
        paragraph(common::heavyWorkCautions().join(QLatin1Char(' ')), 8.5);
        m_y += kPlanGap;
    }

    /// Whole where a page holds it; else from page to page under its head, from where there is room for some weeks.
    void addTable(const PlanTable& table)
    {
        const double whole = table.headHeight() + static_cast<double>(table.rows()) * table.rowHeight();
        const double fresh = m_area.height() - kPlanFootLine - 1;
        if (room() < (whole <= fresh ? whole : table.headHeight() + kLeastRows * table.rowHeight())) {
            newPage();
        }
        table.addHead(page(), {m_area.left(), m_y});
        m_y += table.headHeight();
        for (std::size_t week = 0; week < table.rows(); ++week) {
            if (room() < table.rowHeight()) {
                newPage();
                table.addHead(page(), {m_area.left(), m_y});
                m_y += table.headHeight();
            }
            table.addRow(page(), week, {m_area.left(), m_y});
            m_y += table.rowHeight();
        }
        m_y += kPlanGap;
    }

    void addLadder()
    {
        QStringList names;
        for (const std::string& name : m_paper.beside) {
            names << common::qstring(name);
        }
        if (!names.isEmpty()) {
            paragraph(sheetWords(QT_TRANSLATE_NOOP("PlanPaper", "Beside the plan, on the ladder as before: %1."))
                          .arg(names.join(QStringLiteral(", "))),
                      9);
        }
    }

    void addLegend()
    {
        bool isPauseAsked = false;
        bool isWeekOver = false;
        for (const chalk::direction::PlanWeek& week : m_paper.plan.plan.weeks) {
            isWeekOver = isWeekOver || m_paper.isOver(week.monday);
            for (const auto& lift : week.work) {
                isPauseAsked = isPauseAsked || std::any_of(lift.begin(), lift.end(),
                                                           [](const chalk::direction::PlannedWork& work) { return work.isPauseAsked; });
            }
        }
        paragraph(
            sheetWords(QT_TRANSLATE_NOOP(
                "PlanPaper",
                "Per cent are shares of the single. Left: repetitions in reserve. In the chart, white bars are lighter weeks and tests.")),
            8.5);
        if (isPauseAsked) {
            paragraph(sheetWords(QT_TRANSLATE_NOOP("PlanPaper", "p: a pause at the bottom of each repetition.")), 8.5);
        }
        if (isWeekOver) {
            paragraph(
                sheetWords(QT_TRANSLATE_NOOP(
                    "PlanPaper", "Weeks that are over: sets done/planned, and the mean share of the single as it was at the beginning.")),
                8.5);
        }
    }

    void addNotes()
    {
        if (m_notes.texts().isEmpty()) {
            return;
        }
        m_y += 1;
        if (room() < 5 + kSmallLine) {
            newPage();
        }
        line(sheetWords(QT_TRANSLATE_NOOP("PlanPaper", "Outside of the published ranges")), 9.5, QFont::Bold, 5);
        for (qsizetype i = 0; i < m_notes.texts().size(); ++i) {
            paragraph(QStringLiteral("%1  %2").arg(i + 1).arg(m_notes.texts()[i]), 8.5);
        }
    }

    void addFeet()
    {
        for (std::size_t i = 0; i < m_sheets.size(); ++i) {
            const QRectF foot(m_area.left(), m_area.bottom() - kPlanFootLine, m_area.width(), kPlanFootLine);
            const QString pageText = sheetWords(QT_TRANSLATE_NOOP("PlanPaper", "%1 %2 · page %3 of %4"))
                                         .arg(common::shortDayText(m_paper.today))
                                         .arg(static_cast<int>(m_paper.today.ymd().year()))
                                         .arg(i + 1)
                                         .arg(m_sheets.size());
            const double wide = widthOf(pageText, printFont(8.5, QFont::Medium));
            const QString whose = QStringLiteral("%1 · %2").arg(common::qstring(m_paper.clientName), common::planTitle(m_paper.plan.plan));
            addReportLine(m_sheets[i], whose, 8.5, QFont::Medium, {foot.left(), foot.top(), foot.width() - wide - kPlanGap, foot.height()});
            addReportLine(m_sheets[i], pageText, 8.5, QFont::Medium, {foot.right() - wide, foot.top(), wide + 0.1, foot.height()});
        }
    }

    const PlanPaper& m_paper;
    PlanNotes m_notes;
    QSizeF m_size;
    std::vector<Sheet> m_sheets;
    QRectF m_area;
    double m_y = 0;
};

}  // namespace

std::vector<Sheet> planSheets(const PlanPaper& paper, PaperSize size)
{
    return PlanFlow(paper, size).sheets();
}

QString planFileName(const PlanPaper& paper)
{
    QString name;
    for (const QChar letter : common::qstring(paper.clientName).toLower()) {
        name += letter.isLetterOrNumber() ? letter : QLatin1Char('-');
    }
    return QStringLiteral("plan-%1-%2").arg(name, common::qstring(paper.plan.plan.wishes.start.toString()));
}

}  // namespace chalk::ui::print
