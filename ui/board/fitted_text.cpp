#include "ui/board/fitted_text.h"

#include <QFontMetricsF>

#include <algorithm>

namespace chalk::ui::board {

namespace {

/// How far letters are narrowed, in per cent, before a line is cut: a number that is cut says something else.
constexpr int kNarrowed[] = {94, 88, 83};

/// Qt may come out a fraction of a pixel too wide.
QString elided(const QString& text, const QFontMetricsF& metrics, double width)
{
    return metrics.elidedText(text, Qt::ElideRight, width - 1);
}

/// The places where a line may end: behind a hyphen, before a space.
QList<qsizetype> breaksOf(const QString& name)
{
    QList<qsizetype> breaks;
    for (qsizetype i = 1; i + 1 < name.size(); ++i) {
        if (name[i] == QLatin1Char(' ')) {
            breaks.append(i);
        } else if (name[i] == QLatin1Char('-')) {
            breaks.append(i + 1);
        }
    }
    return breaks;
}

double widestOf(const QStringList& lines, const QFontMetricsF& metrics)
{
    double widest = 0;
    for (const QString& line : lines) {
        widest = std::max(widest, metrics.horizontalAdvance(line));
    }
    return widest;
}

/// Just `count` lines, as even as they go; nothing where they do not fit.
QStringList linesOf(const QString& text, int count, const QFontMetricsF& metrics, double width)
{
    if (count == 1) {
        return metrics.horizontalAdvance(text) <= width ? QStringList{text} : QStringList();
    }
    QStringList best;
    for (const qsizetype at : breaksOf(text)) {
        const QString first = text.left(at).trimmed();
        QStringList lines = linesOf(text.mid(at).trimmed(), count - 1, metrics, width);
        if (lines.isEmpty() || metrics.horizontalAdvance(first) > width) {
            continue;
        }
        lines.prepend(first);
        if (best.isEmpty() || widestOf(lines, metrics) < widestOf(best, metrics)) {
            best = lines;
        }
    }
    return best;
}

/// Line after line as much as goes on it, the last one cut.
QStringList cutLines(const QString& text, int most, const QFontMetricsF& metrics, double width)
{
    const QList<qsizetype> breaks = breaksOf(text);
    for (auto at = breaks.crbegin(); most > 1 && at != breaks.crend(); ++at) {
        const QString first = text.left(*at).trimmed();
        if (metrics.horizontalAdvance(first) <= width) {
            return QStringList{first} + cutLines(text.mid(*at).trimmed(), most - 1, metrics, width);
        }
    }
    return {elided(text, metrics, width)};
}

}  // namespace

FittedText fitted(const QString& text, double width, const common::Theme& theme, std::initializer_list<double> sizes, QFont::Weight weight)
{
    QFont font;
    for (const double px : sizes) {
        font = theme.font(px, weight);
        if (QFontMetricsF(font).horizontalAdvance(text) <= width) {
            return {font, text};
        }
    }
    for (const int percent : kNarrowed) {
        QFont narrowed = font;
        narrowed.setStretch(percent);
        if (QFontMetricsF(narrowed).horizontalAdvance(text) <= width) {
            return {narrowed, text};
        }
    }
    return {font, elided(text, QFontMetricsF(font), width)};
}

FittedLines fittedLines(const QString& text, double width, int most, const common::Theme& theme, std::initializer_list<double> sizes,
                        QFont::Weight weight)
{
    QFont font;
    for (int count = 1; count <= most; ++count) {
        for (const double px : sizes) {
            font = theme.font(px, weight);
            if (const QStringList lines = linesOf(text, count, QFontMetricsF(font), width); !lines.isEmpty()) {
                return {font, lines};
            }
        }
    }
    return {font, cutLines(text, most, QFontMetricsF(font), width)};
}

}  // namespace chalk::ui::board
