#include "ui/check_in/evidence_chart.h"

#include "ui/check_in/chart_export.h"
#include "ui/check_in/chart_painter.h"
#include "ui/check_in/chart_series.h"
#include "ui/common/dialogs.h"
#include "ui/common/look.h"
#include "ui/common/whole_file.h"

#include <QAccessible>
#include <QBuffer>
#include <QContextMenuEvent>
#include <QGraphicsItem>
#include <QGraphicsLayout>
#include <QKeyEvent>
#include <QMenu>
#include <QPainter>
#include <QSvgGenerator>
#include <QtCharts/QChart>

namespace chalk::ui::check_in {

namespace {

constexpr double kReach = 28;      // pixels beside a point at which the pointer still finds it
constexpr double kPngScale = 2;    // pixels of a picture for one on the screen
constexpr double kBehindLines = 0.5;
constexpr double kBeforeLines = 1000;

}  // namespace

/// What the chart itself does not know: shading below the lines, words above them.
class EvidenceChart::Layer : public QGraphicsItem {
public:
    Layer(const EvidenceChart& view, bool isBehind) : QGraphicsItem(view.chart()), m_view(view), m_isBehind(isBehind)
    {
        setZValue(isBehind ? kBehindLines : kBeforeLines);
    }

    /// The room is about to be another one.
    void changeRoom() { prepareGeometryChange(); }
    [[nodiscard]] QRectF boundingRect() const override { return QRectF(QPointF(), QSizeF(m_view.viewport()->size())); }

    void paint(QPainter* painter, const QStyleOptionGraphicsItem* /*option*/, QWidget* /*widget*/) override
    {
        const common::Theme& theme = m_view.m_look.theme();
        if (m_isBehind) {
            paintBehind(*painter, m_view.m_scene, m_view.m_frame, theme);
        } else {
            paintBefore(*painter, m_view.m_scene, m_view.m_frame, boundingRect().size(), m_view.m_chosen, theme);
        }
    }

private:
    const EvidenceChart& m_view;
    bool m_isBehind;
};

EvidenceChart::EvidenceChart(const common::Look& look, common::Dialogs& dialogs, QWidget* parent)
    : QChartView(new QChart, parent), m_look(look), m_dialogs(dialogs), m_behind(new Layer(*this, true)), m_before(new Layer(*this, false))
{
    setFrameShape(QFrame::NoFrame);
    setFocusPolicy(Qt::StrongFocus);
    setMouseTracking(true);
    viewport()->setMouseTracking(true);
    setRenderHint(QPainter::Antialiasing);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    chart()->legend()->hide();
    chart()->setAnimationOptions(QChart::NoAnimation);
    chart()->setBackgroundVisible(false);
    chart()->setDropShadowEnabled(false);
    chart()->setMargins(QMargins());
    chart()->layout()->setContentsMargins(0, 0, 0, 0);
    setMinimumSize(120, 90);
    connect(&look, &common::Look::changed, this, &EvidenceChart::dress);
    dress();
}

EvidenceChart::~EvidenceChart() = default;

void EvidenceChart::setScene(ChartScene scene)
{
    m_scene = std::move(scene);
    m_chosen.reset();
    dress();
    say();
}

void EvidenceChart::dress()
{
    setBackgroundBrush(m_look.theme().surface);
    fillChart(*chart(), m_scene, m_look.theme());
    layOut();
}

void EvidenceChart::layOut()
{
    m_behind->changeRoom();
    m_before->changeRoom();
    m_frame = chartFrame(m_scene, QSizeF(viewport()->size()), m_look.theme());
    chart()->setPlotArea(m_frame.plot);
    m_behind->update();
    m_before->update();
}

void EvidenceChart::choose(std::optional<PointIndex> point)
{
    if (point == m_chosen) {
        return;
    }
    m_chosen = point;
    m_before->update();
    say();
}

void EvidenceChart::say()
{
    QString said = m_scene.title;
    if (!m_scene.note.isEmpty()) {
        said += QStringLiteral(", ") + m_scene.note;
    }
    if (const ChartPoint* point = pointAt(m_scene, m_chosen)) {
        said = point->spoken;
    } else if (!m_scene.missing.isEmpty()) {
        said += QStringLiteral(". ") + m_scene.missing;
    }
    setAccessibleName(said);
    viewport()->setAccessibleName(said);
    if (isVisible()) {
        QAccessibleEvent event(this, QAccessible::NameChanged);
        QAccessible::updateAccessibility(&event);
    }
}

void EvidenceChart::keyPressEvent(QKeyEvent* event)
{
    switch (event->key()) {
    case Qt::Key_Left:
        choose(steppedPoint(m_scene, m_chosen, -1));
        return;
    case Qt::Key_Right:
        choose(steppedPoint(m_scene, m_chosen, 1));
        return;
    case Qt::Key_Home:
        choose(steppedPoint(m_scene, m_chosen, -100000));
        return;
    case Qt::Key_End:
        choose(steppedPoint(m_scene, m_chosen, 100000));
        return;
    case Qt::Key_Up:
    case Qt::Key_Down:
        if (event->modifiers() == Qt::NoModifier) {
            choose(otherSeriesPoint(m_scene, m_chosen, event->key() == Qt::Key_Up ? -1 : 1));
            return;
        }
        break;
    case Qt::Key_S:
    case Qt::Key_Menu:
        offerToSave(viewport()->mapToGlobal(viewport()->rect().center()));
        return;
    default:
        break;
    }
    event->ignore();
}

void EvidenceChart::mouseMoveEvent(QMouseEvent* event)
{
    choose(nearestPoint(m_scene, m_frame, event->position(), kReach));
}

void EvidenceChart::leaveEvent(QEvent* event)
{
    QChartView::leaveEvent(event);
    if (!hasFocus()) {
        choose(std::nullopt);
    }
}

void EvidenceChart::resizeEvent(QResizeEvent* event)
{
    QChartView::resizeEvent(event);
    layOut();
}

void EvidenceChart::contextMenuEvent(QContextMenuEvent* event)
{
    offerToSave(event->globalPos());
}

void EvidenceChart::focusInEvent(QFocusEvent* event)
{
    QChartView::focusInEvent(event);
    viewport()->update();
}

void EvidenceChart::focusOutEvent(QFocusEvent* event)
{
    QChartView::focusOutEvent(event);
    choose(std::nullopt);
    viewport()->update();
}

void EvidenceChart::paintEvent(QPaintEvent* event)
{
    QChartView::paintEvent(event);
    if (hasFocus()) {
        QPainter painter(viewport());
        painter.setPen(QPen(m_look.theme().focus, 2));
        painter.drawRect(QRectF(viewport()->rect()).adjusted(2, 2, -2, -2));
    }
}

void EvidenceChart::offerToSave(const QPoint& at)
{
    QMenu menu(this);
    for (const QString& suffix : {QStringLiteral("png"), QStringLiteral("svg"), QStringLiteral("csv")}) {
        menu.addAction(tr("Save as %1").arg(suffix.toUpper()), this, [this, suffix] { save(suffix); });
    }
    menu.exec(at);
}

void EvidenceChart::save(const QString& suffix)
{
    const auto path = m_dialogs.fileToSave(this, {tr("Save the chart"), {}, QStringLiteral("%1.%2").arg(m_scene.key, suffix),
                                                  QStringLiteral("%1 (*.%2)").arg(suffix.toUpper(), suffix), suffix});
    if (!path) {
        return;
    }
    const auto fault = common::writeWhole(*path, suffix == QLatin1String("csv") ? chartCsv(m_scene) : picture(suffix));
    if (fault) {
        m_dialogs.ask(this, {common::Signal::Warn, tr("The chart is not saved."), tr("Nothing was written. Choose another place."), *fault, {}, 0});
    }
}

QByteArray EvidenceChart::picture(const QString& suffix)
{
    const auto chosen = std::exchange(m_chosen, std::nullopt);  // a picture has no pointer
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    const QSize size = viewport()->size();
    if (suffix == QLatin1String("svg")) {
        QSvgGenerator generator;
        generator.setOutputDevice(&buffer);
        generator.setSize(size);
        generator.setViewBox(QRect(QPoint(), size));
        generator.setTitle(m_scene.title);
        QPainter painter(&generator);
        render(&painter, QRectF(QPointF(), QSizeF(size)));
    } else {
        QImage image(size * kPngScale, QImage::Format_ARGB32_Premultiplied);
        image.fill(m_look.theme().surface);
        QPainter painter(&image);
        painter.setRenderHint(QPainter::Antialiasing);
        render(&painter, QRectF(QPointF(), QSizeF(image.size())));
        painter.end();
        image.save(&buffer, "PNG");
    }
    m_chosen = chosen;
    return bytes;
}

}  // namespace chalk::ui::check_in
