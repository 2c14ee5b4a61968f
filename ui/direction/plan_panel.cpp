#include "ui/direction/plan_panel.h"

#include "ui/common/look.h"
#include "ui/direction/plan_chart.h"
#include "ui/direction/plan_table.h"

#include <QLabel>
#include <QPainter>
#include <QVBoxLayout>

namespace chalk::ui::direction {

namespace {

constexpr int kPlanPanelRows = 4;
constexpr int kLowPanelRows = 2;

}  // namespace

/// Which mark of the chart is what.
class PlanLegend : public QWidget {
public:
    explicit PlanLegend(const common::Look& look, QWidget* parent) : QWidget(parent), m_look(look)
    {
        setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
        setAccessibleName(PlanPanel::tr("Line: intensity, per cent of the best single. Bars: hard sets a week. Filled dots: lighter weeks."));
        connect(&look, &common::Look::changed, this, [this] { updateGeometry(); });
    }

    [[nodiscard]] QSize sizeHint() const override
    {
        const QFontMetricsF metrics(m_look.theme().font(common::TextStyle::Micro));
        double width = 0;
        for (const QString& word : words()) {
            width += kMark + metrics.horizontalAdvance(word) + kLegendGap;
        }
        return {qRound(width), qRound(m_look.theme().scaled(20))};
    }
    [[nodiscard]] QSize minimumSizeHint() const override { return sizeHint(); }

    /// Without what the words of a week say anyway.
    void setShort(bool isShort)
    {
        m_isShort = isShort;
        updateGeometry();
        update();
    }

protected:
    void paintEvent(QPaintEvent* /*event*/) override
    {
        const common::Theme& theme = m_look.theme();
        const QColor line = theme.pattern(lifts::Pattern::HorizontalPush).fill;
        QPainter painter(this);
        painter.setRenderHint(QPainter::Antialiasing);
        painter.setFont(theme.font(common::TextStyle::Micro));
        const double middle = height() / 2.0;
        double x = 0;
        int index = 0;
        for (const QString& word : words()) {
            painter.setPen(index == 1 ? QPen(Qt::NoPen) : QPen(line, 2.5));
            painter.setBrush(index == 1 ? theme.rungPast : line);
            if (index == 0) {
                painter.drawLine(QPointF(x, middle), QPointF(x + kMark - 8, middle));
            } else if (index == 1) {
                painter.drawRoundedRect(QRectF(x + 6, middle - 6, 10, 12), 2, 2);
            } else {
                painter.drawEllipse(QPointF(x + 12, middle), 3.5, 3.5);
            }
            painter.setPen(theme.ink2);
            const double width = painter.fontMetrics().horizontalAdvance(word);
            painter.drawText(QRectF(x + kMark, 0, width + 4, height()), Qt::AlignLeft | Qt::AlignVCenter, word);
            x += kMark + width + kLegendGap;
            ++index;
        }
    }

private:
    static constexpr double kMark = 26;
    static constexpr double kLegendGap = 12;

    [[nodiscard]] QStringList words() const
    {
        QStringList words{PlanPanel::tr("% of best single"), PlanPanel::tr("hard sets a week")};
        if (!m_isShort) {
            words.append(PlanPanel::tr("lighter week"));
        }
        return words;
    }

    const common::Look& m_look;
    bool m_isShort = false;
};

PlanPanel::PlanPanel(const common::Look& look, QWidget* parent)
    : common::Panel(look, parent),
      m_legend(new PlanLegend(look, this)),
      m_chart(new PlanChart(look, this)),
      m_table(new PlanTable(look, tr("Main lifts by phase"), kPlanPanelRows, this)),
      m_footnote(new QLabel(this))
{
    addHeadTool(m_legend);
    auto* chartBox = new QVBoxLayout;
    chartBox->setContentsMargins(8, 8, 14, 0);
    chartBox->addWidget(m_chart);
    auto* line = new QFrame(this);
    line->setProperty("rule", true);
    line->setFixedHeight(1);
    m_footnote->setProperty("role", QStringLiteral("muted"));
    m_footnote->setWordWrap(true);
    m_footnote->setContentsMargins(16, 2, 16, 8);
    body()->addLayout(chartBox, 1);
    body()->addWidget(line);
    body()->addWidget(m_table);
    body()->addWidget(m_footnote);
}

void PlanPanel::setView(const PlanPanelView& view)
{
    setTitle(view.title, view.note);
    m_chart->setScene(view.chart);
    m_table->setContent(view.heads, view.rows);
    m_footnote->setText(view.footnote);
    m_footnote->setVisible(!view.footnote.isEmpty());
}

void PlanPanel::setRoom(bool isNarrow, bool isLow)
{
    m_legend->setShort(isNarrow);
    m_table->setMostRows(isLow ? kLowPanelRows : kPlanPanelRows);
}

}  // namespace chalk::ui::direction
