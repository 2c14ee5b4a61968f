#include "ui/direction/plan_editor_gauges.h"

#include "ui/common/look.h"
#include "ui/common/prose.h"
#include "ui/common/scroll_column.h"
#include "ui/direction/plan_chart.h"
#include "ui/direction/plan_editor_words.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QScrollArea>
#include <QVBoxLayout>

#include <algorithm>

namespace chalk::ui::direction {

namespace {

using chalk::direction::Direction;
using chalk::direction::LiftRole;

QString sectionHtml(const QString& head, const QStringList& lines)
{
    QString html = QStringLiteral("<p style='margin:0 0 2px 0'><b>%1</b></p>").arg(head.toHtmlEscaped());
    for (const QString& line : lines) {
        html += QStringLiteral("<p style='margin:0 0 2px 0'>%1</p>").arg(line.toHtmlEscaped());
    }
    return html + QStringLiteral("<p style='margin:0;line-height:50%'>&nbsp;</p>");
}

}  // namespace

PlanEditorGauges::PlanEditorGauges(const common::Look& look, PlanEditorModel& model, QWidget* parent)
    : QWidget(parent), m_look(look), m_model(model), m_chart(new PlanChart(look)), m_column(new QScrollArea), m_words(new QLabel)
{
    auto* contents = new QWidget;
    auto* inside = new QVBoxLayout(contents);
    inside->setContentsMargins(8, 8, 8, 8);
    m_words->setWordWrap(true);
    m_words->setTextFormat(Qt::RichText);
    m_words->setProperty("role", QStringLiteral("small"));
    inside->addWidget(m_words);
    inside->addStretch(1);
    common::holdColumn(*m_column, contents);
    m_column->setFocusPolicy(Qt::StrongFocus);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(12);
    row->addWidget(m_chart, 3);
    row->addWidget(m_column, 2);
    connect(&model, &PlanEditorModel::changed, this, &PlanEditorGauges::follow);
    follow();
}

void PlanEditorGauges::read(std::size_t week, std::size_t lift)
{
    if (week != m_week || lift != m_lift) {
        m_week = week;
        m_lift = lift;
        follow();
    }
}

QString PlanEditorGauges::words() const
{
    return common::plainText(m_words->text());
}

QString PlanEditorGauges::wordsHtml() const
{
    const auto& wishes = m_model.wishes();
    QStringList departures = departureLines(m_model);
    if (departures.isEmpty()) {
        departures.append(tr("Every number of a week of work lies in its published range."));
    }
    QString html = sectionHtml(tr("Outside of published ranges"), departures);
    if (wishes.direction == Direction::Strength && wishes.lifts[m_lift].role == LiftRole::Main) {
        QStringList zones = zoneLines(m_model, m_week, m_lift);
        zones.append(tr("Printed: Laputin and Oleshko 1982, after competition lifters."));
        html += sectionHtml(tr("%1, week %2: repetitions by intensity").arg(m_model.nameOf(m_lift)).arg(m_week + 1), zones);
    }
    if (wishes.direction == Direction::Physique) {
        QStringList muscles = muscleLines(m_model, m_week);
        muscles.append(tr("10 sets a week gave more than fewer: Schoenfeld 2017. How sets are shared out is common practice."));
        html += sectionHtml(tr("Week %1: sets by muscle group").arg(m_week + 1), muscles);
    }
    return html;
}

void PlanEditorGauges::follow()
{
    m_week = std::min(m_week, m_model.plan().plan.weeks.size() - 1);
    m_lift = std::min(m_lift, m_model.wishes().lifts.size() - 1);
    m_chart->setScene(planChartScene(m_model.plan().plan, m_model.facts().closures, m_model.facts().today));
    m_words->setText(wordsHtml());
    m_column->setAccessibleName(words());
}

}  // namespace chalk::ui::direction
