#include "ui/direction/plan_chart.h"

#include "ui/common/look.h"

#include <QAccessible>
#include <QAccessibleWidget>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>

namespace chalk::ui::direction {

namespace {

/// The chart for screen readers: its value is what is read.
class PlanChartAccessible : public QAccessibleWidget {
public:
    explicit PlanChartAccessible(PlanChart* chart) : QAccessibleWidget(chart, QAccessible::Chart), m_chart(chart) {}

    QString text(QAccessible::Text kind) const override
    {
        return kind == QAccessible::Value ? m_chart->reading() : QAccessibleWidget::text(kind);
    }

private:
    PlanChart* m_chart;
};

QAccessibleInterface* makePlanChartAccessible(const QString& /*className*/, QObject* object)
{
    auto* chart = qobject_cast<PlanChart*>(object);
    return chart == nullptr ? nullptr : new PlanChartAccessible(chart);
}

}  // namespace

PlanChart::PlanChart(const common::Look& look, QWidget* parent) : QWidget(parent), m_look(look)
{
    QAccessible::installFactory(makePlanChartAccessible);
    setFocusPolicy(Qt::StrongFocus);
    setMouseTracking(true);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    connect(&look, &common::Look::changed, this, qOverload<>(&QWidget::update));
}

void PlanChart::setScene(PlanChartScene scene)
{
    if (scene == m_scene) {
        return;
    }
    m_scene = std::move(scene);
    m_chosen.reset();
    setAccessibleName(m_scene.spoken);
    update();
}

QString PlanChart::reading() const
{
    if (m_chosen) {
        return m_scene.weeks[*m_chosen].spoken;
    }
    QStringList all;
    for (const PlanChartWeek& week : m_scene.weeks) {
        all.append(week.spoken);
    }
    return all.join(QStringLiteral(". "));
}

PlanChartFrame PlanChart::frame() const
{
    return planChartFrame(m_scene, QRectF(rect()).adjusted(0, 0, 0, -2), m_look.theme());
}

QSize PlanChart::sizeHint() const
{
    return {640, qRound(m_look.theme().scaled(300))};
}

QSize PlanChart::minimumSizeHint() const
{
    return {320, qRound(m_look.theme().scaled(150))};
}

void PlanChart::choose(std::optional<std::size_t> week)
{
    if (week == m_chosen) {
        return;
    }
    m_chosen = week;
    update();
    if (week && hasFocus()) {
        QAccessibleValueChangeEvent event(this, reading());
        QAccessible::updateAccessibility(&event);
    }
}

void PlanChart::keyPressEvent(QKeyEvent* event)
{
    const std::size_t weeks = m_scene.weeks.size();
    const bool isMove = event->key() == Qt::Key_Left || event->key() == Qt::Key_Right || event->key() == Qt::Key_Home || event->key() == Qt::Key_End;
    if (weeks == 0 || !isMove || event->modifiers() != Qt::NoModifier) {
        return QWidget::keyPressEvent(event);
    }
    const std::size_t start = m_scene.present.value_or(0);
    if (event->key() == Qt::Key_Home) {
        choose(0);
    } else if (event->key() == Qt::Key_End) {
        choose(weeks - 1);
    } else if (!m_chosen) {
        choose(start);
    } else if (event->key() == Qt::Key_Right) {
        choose(std::min(*m_chosen + 1, weeks - 1));
    } else {
        choose(*m_chosen == 0 ? 0 : *m_chosen - 1);
    }
}

void PlanChart::mouseMoveEvent(QMouseEvent* event)
{
    choose(frame().weekAt(event->position(), m_scene.weeks.size()));
}

void PlanChart::leaveEvent(QEvent* event)
{
    QWidget::leaveEvent(event);
    if (!hasFocus()) {
        choose(std::nullopt);
    }
}

void PlanChart::focusOutEvent(QFocusEvent* event)
{
    QWidget::focusOutEvent(event);
    choose(std::nullopt);
}

void PlanChart::paintEvent(QPaintEvent* /*event*/)
{
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    paintPlanChart(painter, frame(), m_scene, m_chosen, m_look.theme());
    if (hasFocus()) {
        painter.setPen(QPen(m_look.theme().focus, 2));
        painter.setBrush(Qt::NoBrush);
        painter.drawRoundedRect(QRectF(rect()).adjusted(1, 1, -1, -1), 4, 4);
    }
}

}  // namespace chalk::ui::direction
