#include "ui/shell/key_hints_line.h"

#include "ui/common/look.h"
#include "ui/common/tags.h"

#include <QFontMetricsF>
#include <QPainter>

#include <cmath>

namespace chalk::ui::shell {

namespace {

constexpr double kHintGap = 16;
constexpr double kCapGap = 4;
constexpr double kHintTextGap = 5;

common::KeyCapView railCap(const QString& key)
{
    return {key, common::KeyCapGround::Rail};
}

QFont hintFont(const common::Theme& theme)
{
    return theme.font(13, QFont::Normal);
}

}  // namespace

KeyHintsLine::KeyHintsLine(const common::Look& look, QWidget* parent) : QWidget(parent), m_look(look)
{
    setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
    connect(&look, &common::Look::changed, this, qOverload<>(&QWidget::update));
}

void KeyHintsLine::setHints(std::vector<KeyHint> hints)
{
    m_hints = std::move(hints);
    QStringList words;
    for (const KeyHint& hint : m_hints) {
        words.append(QStringLiteral("%1: %2").arg(hint.keys, hint.does));
    }
    setAccessibleName(tr("Keys"));
    setAccessibleDescription(words.join(QStringLiteral(", ")));
    updateGeometry();
    update();
}

double KeyHintsLine::hintWidth(const KeyHint& hint) const
{
    const common::Theme& theme = m_look.theme();
    double width = theme.scaled(kHintTextGap) + QFontMetricsF(hintFont(theme)).horizontalAdvance(hint.does);
    for (const QString& cap : common::keyCapTexts(hint.keys)) {
        width += common::keyCapWidth(railCap(cap), theme) + theme.scaled(kCapGap);
    }
    return width - theme.scaled(kCapGap);
}

QSize KeyHintsLine::sizeHint() const
{
    double width = 0;
    for (const KeyHint& hint : m_hints) {
        width += hintWidth(hint) + m_look.theme().scaled(kHintGap);
    }
    return {static_cast<int>(std::ceil(width)), qRound(m_look.theme().scaled(24))};
}

void KeyHintsLine::paintEvent(QPaintEvent* /*event*/)
{
    const common::Theme& theme = m_look.theme();
    std::size_t shown = 0;
    double total = 0;
    while (shown < m_hints.size()) {
        const double more = hintWidth(m_hints[shown]) + (shown > 0 ? theme.scaled(kHintGap) : 0);
        if (total + more > width()) {
            break;
        }
        total += more;
        ++shown;
    }
    QPainter painter(this);
    double x = width() - total;
    for (std::size_t i = 0; i < shown; ++i) {
        for (const QString& cap : common::keyCapTexts(m_hints[i].keys)) {
            common::paintKeyCap(painter, QRectF(x, 0, width() - x + 1, height()), railCap(cap), theme);
            x += common::keyCapWidth(railCap(cap), theme) + theme.scaled(kCapGap);
        }
        x += theme.scaled(kHintTextGap - kCapGap);
        const double textWidth = QFontMetricsF(hintFont(theme)).horizontalAdvance(m_hints[i].does);
        painter.setFont(hintFont(theme));
        painter.setPen(theme.railInk);
        painter.drawText(QRectF(x, 0, textWidth + 1, height()), Qt::AlignLeft | Qt::AlignVCenter, m_hints[i].does);
        x += textWidth + theme.scaled(kHintGap);
    }
}

}  // namespace chalk::ui::shell
