#include "ui/trends/trend_cards.h"

#include "ui/common/formats.h"
#include "ui/common/look.h"
#include "ui/common/panel.h"
#include "ui/trends/ghost_chart.h"
#include "ui/trends/line_charts.h"
#include "ui/trends/step_rows.h"
#include "ui/trends/studio_charts.h"
#include "ui/trends/trend_words.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QVBoxLayout>

namespace chalk::ui::trends {

namespace {

constexpr double kValuesWidth = 232;
constexpr double kNarrowValuesWidth = 196;
constexpr int kCardEdge = 16;
constexpr int kCardGap = 14;
constexpr int kVolumeStretch = 6;
constexpr int kSmallStretch = 5;

/// The picture of what will be here, with its words.
ChartPaint ghost(GhostShape shape, const GapWords& words)
{
    return [shape, words](QPainter& painter, const QRectF& area, const common::Theme& theme) { return paintGhost(painter, area, shape, words, theme); };
}

QString spokenGap(const GapWords& words)
{
    return QStringLiteral("%1. %2").arg(words.headline, words.text);
}

}  // namespace

TrendCards::TrendCards(const common::Look& look, QWidget* parent) : QWidget(parent), m_look(look)
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(kCardGap);
    m_scene.selected = -1;
    buildVolume();
    buildSmall();
    connect(&look, &common::Look::changed, this, &TrendCards::dress);
    dress();
}

void TrendCards::buildVolume()
{
    auto* row = new QHBoxLayout;
    static_cast<QVBoxLayout*>(layout())->addLayout(row, kVolumeStretch);
    m_volume = makeCard(row, 1);
    auto* inner = new QHBoxLayout;
    inner->setSpacing(kCardEdge);
    m_volume.panel->body()->removeWidget(m_volume.view);
    inner->addWidget(m_volume.view, 1);
    m_line = new QWidget(m_volume.panel);
    m_line->setFixedWidth(1);
    m_line->setAutoFillBackground(true);
    inner->addWidget(m_line);
    m_values = new ChartView(m_look, m_volume.panel);
    m_values->setFocusPolicy(Qt::NoFocus);
    inner->addWidget(m_values);
    m_volume.panel->body()->addLayout(inner, 1);
    connect(m_volume.view, &ChartView::spotChosen, this, &TrendCards::selectWeek);
}

void TrendCards::buildSmall()
{
    auto* row = new QHBoxLayout;
    row->setSpacing(kCardGap);
    static_cast<QVBoxLayout*>(layout())->addLayout(row, kSmallStretch);
    m_small[0] = makeCard(row, 45);
    m_small[1] = makeCard(row, 43);
    m_small[2] = makeCard(row, 36);
    m_note = new QLabel(m_small[2].panel);
    m_note->setWordWrap(true);
    m_note->setTextFormat(Qt::PlainText);
    m_small[2].panel->body()->addWidget(m_note);
}

TrendCards::Card TrendCards::makeCard(QHBoxLayout* row, int stretch)
{
    Card card;
    card.panel = new common::Panel(m_look, this);
    card.view = new ChartView(m_look, card.panel);
    card.panel->body()->setContentsMargins(kCardEdge, kCardEdge / 2, kCardEdge, kCardEdge / 2);
    card.panel->body()->addWidget(card.view, 1);
    row->addWidget(card.panel, stretch);
    return card;
}

void TrendCards::setCard(Card& card, const CardContent& content)
{
    card.name = content.title;
    card.title = content.unit.isEmpty() ? content.title : QStringLiteral("%1, %2").arg(content.title, content.unit);
    card.fileName = content.fileName;
    card.panel->setTitle(content.title, content.unit);
    card.view->setChart(content.paint, QStringLiteral("%1. %2").arg(content.title, content.spoken));
}

void TrendCards::setView(const TrendsView& view)
{
    m_view = view;
    m_scene = {view.weeks(), view.unit(), static_cast<int>(view.weeks().size()) - 1};
    while (m_scene.selected > 0 && !m_scene.weeks[static_cast<std::size_t>(m_scene.selected)].isOver) {
        --m_scene.selected;
    }
    showVolume();
    if (m_view.client() != nullptr) {
        showClient();
    } else {
        showStudio();
    }
    m_note->setVisible(!m_note->text().isEmpty());
}

void TrendCards::selectWeek(int week)
{
    if (week >= 0 && week < static_cast<int>(m_scene.weeks.size())) {
        m_scene.selected = week;
        showVolume();
    }
}

QString TrendCards::weekNote() const
{
    const auto week = static_cast<std::size_t>(m_scene.selected);
    QString note = totalNote(m_scene.weeks, week, m_scene.unit);
    if (m_scene.weeks[week].attendance.counted() > 0) {
        note += QStringLiteral(" ") + tr("Came: %1.").arg(attendanceText(m_scene.weeks[week].attendance));
    }
    const QString carries = m_view.client() != nullptr ? carriesNote(m_view.client()->trends) : QString();
    return carries.isEmpty() ? note : note + QStringLiteral(" ") + carries;
}

TrendCards::CardContent TrendCards::volumeContent() const
{
    const QString unit = tr("%1 × reps, stacked by pattern").arg(common::unitText(m_scene.unit));
    if (!m_view.hasVolume()) {
        const GapWords words = m_view.client() != nullptr ? volumeGapWords(m_view.client()->trends) : studioVolumeGapWords();
        return {tr("Load-volume by week"), unit, {}, ghost(GhostShape::Bars, words), spokenGap(words)};
    }
    const auto paint = [scene = m_scene](QPainter& painter, const QRectF& area, const common::Theme& theme) { return paintVolume(painter, area, scene, theme); };
    return {tr("Load-volume by week"), unit, QStringLiteral("load-volume"), paint, spokenVolume(m_scene)};
}

void TrendCards::showVolume()
{
    setCard(m_volume, volumeContent());
    m_values->setVisible(m_view.hasVolume());
    m_line->setVisible(m_view.hasVolume());
    m_values->setChart([scene = m_scene, note = weekNote()](QPainter& painter, const QRectF& area, const common::Theme& theme) {
        return paintWeekValues(painter, area, scene, note, theme);
    }, weekNote());
}

void TrendCards::showClient()
{
    const checkin::Trends& trends = m_view.client()->trends;
    const auto with = [&trends](HotSpots (*paint)(QPainter&, const QRectF&, const checkin::Trends&, const common::Theme&)) {
        return [trends, paint](QPainter& painter, const QRectF& area, const common::Theme& theme) { return paint(painter, area, trends, theme); };
    };
    const QString inTable = tr("The numbers stand in the table, key T.");
    const GapWords singles = singlesGapWords(trends);
    const QString unit = tr("%1, an estimate").arg(common::unitText(m_view.unit()));
    setCard(m_small[0], trends.singlesGap ? CardContent{tr("Estimated best single"), unit, {}, ghost(GhostShape::Line, singles), spokenGap(singles)}
                                          : CardContent{tr("Estimated best single"), unit, QStringLiteral("best-single"), with(paintSingles), inTable});
    const GapWords targets = targetsGapWords(trends);
    setCard(m_small[1], trends.targetsGap ? CardContent{tr("Reps and rest"), {}, {}, ghost(GhostShape::Steps, targets), spokenGap(targets)}
                                          : CardContent{tr("Reps and rest"), tr("one lift a row"), QStringLiteral("reps-and-rest"), with(paintSteps), inTable});
    const GapWords monotony = monotonyGapWords(trends);
    setCard(m_small[2], trends.monotonyGap ? CardContent{tr("Monotony"), tr("how alike the days are"), {}, ghost(GhostShape::Wave, monotony), spokenGap(monotony)}
                                           : CardContent{tr("Monotony"), tr("how alike the days are"), QStringLiteral("monotony"), with(paintMonotony), inTable});
    m_note->setText(trends.monotonyGap ? QString() : monotonyNote(trends));
}

void TrendCards::showStudio()
{
    const checkin::StudioTrends& studio = *m_view.studio();
    const auto numbers = [](const std::vector<NamedNumber>& rows, const QString& none) {
        return [rows, none](QPainter& painter, const QRectF& area, const common::Theme& theme) { return paintNumbers(painter, area, rows, none, theme); };
    };
    const auto attendance = [studio](QPainter& painter, const QRectF& area, const common::Theme& theme) { return paintAttendance(painter, area, studio, theme); };
    const QString inTable = tr("The numbers stand in the table, key T.");
    setCard(m_small[0], {tr("Attendance"), tr("per cent of the sessions that count"), QStringLiteral("attendance"), attendance, inTable});
    setCard(m_small[1], {tr("Change of load"), tr("later half against earlier"), QStringLiteral("change-of-load"),
                         numbers(loadChanges(studio), tr("Nobody's load changed, or there is nothing to compare with yet.")), inTable});
    setCard(m_small[2], {tr("Too much alike"), tr("monotony 2 or more last week"), QStringLiteral("too-much-alike"),
                         numbers(tooMuchAlike(studio), tr("Nobody, of those whose sessions were all rated.")), inTable});
    m_note->setText(tr("Monotony says how alike the days of a week are. 2 is common practice after Foster 1998."));
}

void TrendCards::setNarrow(bool isNarrow)
{
    m_isNarrow = isNarrow;
    dress();
}

std::vector<NamedChart> TrendCards::charts() const
{
    std::vector<NamedChart> charts;
    for (const Card* card : {&m_volume, &m_small[0], &m_small[1], &m_small[2]}) {
        if (!card->fileName.isEmpty()) {
            charts.push_back({card->name, card->title, card->fileName, card->view->chart(), QSizeF(card->view->size())});
        }
    }
    return charts;
}

std::vector<ChartView*> TrendCards::views() const
{
    return {m_volume.view, m_small[0].view, m_small[1].view, m_small[2].view};
}

void TrendCards::dress()
{
    const common::Theme& theme = m_look.theme();
    m_values->setFixedWidth(static_cast<int>(theme.scaled(m_isNarrow ? kNarrowValuesWidth : kValuesWidth)));
    m_note->setFont(theme.font(common::TextStyle::Small));
    QPalette palette = m_line->palette();
    palette.setColor(QPalette::Window, theme.line);
    m_line->setPalette(palette);
}

}  // namespace chalk::ui::trends
