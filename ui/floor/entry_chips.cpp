#include "ui/floor/entry_chips.h"

#include "ui/common/look.h"

#include <QFontMetricsF>
#include <QPainter>

namespace chalk::ui::floor {

namespace {

constexpr double kChipHeight = 26;
constexpr double kChipSide = 9;
constexpr double kChipGap = 6;

}  // namespace

EntryChips::EntryChips(const common::Look& look, QWidget* parent) : QWidget(parent), m_look(look)
{
    QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Fixed);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
    setAccessibleName(tr("As understood"));
    connect(&look, &common::Look::changed, this, &QWidget::updateGeometry);
}

void EntryChips::setChips(std::vector<EntryChip> chips)
{
    if (chips == m_chips) {
        return;
    }
    m_chips = std::move(chips);
    QStringList spoken;
    for (const EntryChip& chip : m_chips) {
        spoken.append(QStringLiteral("%1 %2 %3").arg(chip.before, chip.strong, chip.after).simplified());
    }
    setAccessibleDescription(spoken.join(QStringLiteral(", ")));
    updateGeometry();
    update();
}

double EntryChips::widthOf(const EntryChip& chip) const
{
    const common::Theme& theme = m_look.theme();
    const QFontMetricsF plain(theme.font(13, QFont::Medium));
    const QFontMetricsF strong(theme.font(13, QFont::Bold));
    double width = theme.scaled(2 * kChipSide);
    int parts = 0;
    for (const QString& text : {chip.before, chip.after}) {
        width += plain.horizontalAdvance(text);
        parts += text.isEmpty() ? 0 : 1;
    }
    width += strong.horizontalAdvance(chip.strong);
    parts += chip.strong.isEmpty() ? 0 : 1;
    return width + theme.scaled(kChipGap) * std::max(0, parts - 1);
}

std::vector<QRectF> EntryChips::placesFor(double width) const
{
    const common::Theme& theme = m_look.theme();
    const double height = theme.scaled(kChipHeight);
    const double gap = theme.scaled(kChipGap);
    std::vector<QRectF> places;
    double x = 0;
    double y = 0;
    for (const EntryChip& chip : m_chips) {
        const double wide = std::min(widthOf(chip), width);
        if (x > 0 && x + wide > width) {
            x = 0;
            y += height + gap;
        }
        places.emplace_back(x, y, wide, height);
        x += wide + gap;
    }
    return places;
}

int EntryChips::heightForWidth(int width) const
{
    const auto places = placesFor(width);
    return qCeil(places.empty() ? m_look.theme().scaled(kChipHeight) : places.back().bottom());
}

QSize EntryChips::sizeHint() const
{
    return {qRound(m_look.theme().scaled(300)), heightForWidth(width())};
}

QSize EntryChips::minimumSizeHint() const
{
    return {qRound(m_look.theme().scaled(120)), qRound(m_look.theme().scaled(kChipHeight))};
}

void EntryChips::paintEvent(QPaintEvent* /*event*/)
{
    const common::Theme& theme = m_look.theme();
    const auto places = placesFor(width());
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    for (std::size_t i = 0; i < places.size(); ++i) {
        const EntryChip& chip = m_chips[i];
        painter.setPen(Qt::NoPen);
        painter.setBrush(chip.isSteady ? theme.okBg : chip.isLow ? theme.warnBg : theme.sunken);
        painter.drawRoundedRect(places[i], 5, 5);
        painter.setPen(chip.isSteady ? theme.ok : chip.isLow ? theme.warn : theme.ink);
        double x = places[i].left() + theme.scaled(kChipSide);
        for (const auto& [text, weight] : {std::pair(chip.before, QFont::Medium), std::pair(chip.strong, QFont::Bold), std::pair(chip.after, QFont::Medium)}) {
            const QFont font = theme.font(13, weight);
            painter.setFont(font);
            const double room = places[i].right() - x - 2;
            painter.drawText(QRectF(x, places[i].top(), room, places[i].height()), Qt::AlignVCenter, QFontMetricsF(font).elidedText(text, Qt::ElideRight, room));
            x += text.isEmpty() ? 0 : QFontMetricsF(font).horizontalAdvance(text) + theme.scaled(kChipGap);
        }
    }
}

}  // namespace chalk::ui::floor
