#include "ui/print/print_text.h"

#include <QFontMetricsF>

namespace chalk::ui::print {

namespace {

constexpr double kDisplaySpacing = 98;  ///< per cent: large figures stand a little closer

/// The longest beginning of a word that fits, at least one character of it.
qsizetype fittingLength(const QString& word, const QFont& font, double width)
{
    qsizetype length = word.size();
    while (length > 1 && widthOf(word.left(length), font) > width) {
        --length;
        if (word.at(length).isLowSurrogate() && length > 1) {
            --length;
        }
    }
    return length;
}

}  // namespace

QFont printFont(double points, QFont::Weight weight, bool isDisplay)
{
    QFont font(isDisplay ? QStringLiteral("Inter Tab Display") : QStringLiteral("Inter Tab"));
    font.setPixelSize(qRound(points * kMmPerPoint * kFontUnitsPerMm));
    font.setWeight(weight);
    font.setHintingPreference(QFont::PreferNoHinting);
    font.setStyleStrategy(QFont::PreferNoShaping);
    if (isDisplay) {
        font.setLetterSpacing(QFont::PercentageSpacing, kDisplaySpacing);
    }
    return font;
}

double pointsOf(const QFont& font)
{
    return font.pixelSize() / kFontUnitsPerMm / kMmPerPoint;
}

double widthOf(const QString& text, const QFont& font)
{
    return QFontMetricsF(font).horizontalAdvance(text) / kFontUnitsPerMm;
}

double capHeightOf(const QFont& font)
{
    return QFontMetricsF(font).capHeight() / kFontUnitsPerMm;
}

FittedPrint fitted(const QString& text, double width, std::initializer_list<double> points, QFont::Weight weight, bool isDisplay)
{
    FittedPrint fit;
    for (const double size : points) {
        fit = {text, printFont(size, weight, isDisplay)};
        if (widthOf(text, fit.font) <= width) {
            return fit;
        }
    }
    fit.text = QFontMetricsF(fit.font).elidedText(text, Qt::ElideRight, width * kFontUnitsPerMm);
    return fit;
}

QStringList wrapped(const QString& text, const QFont& font, double width)
{
    QStringList lines;
    QString line;
    for (QString word : text.simplified().split(QLatin1Char(' '), Qt::SkipEmptyParts)) {
        const QString longer = line.isEmpty() ? word : line + QLatin1Char(' ') + word;
        if (widthOf(longer, font) <= width) {
            line = longer;
            continue;
        }
        if (!line.isEmpty()) {
            lines.append(line);
        }
        while (widthOf(word, font) > width && word.size() > 1) {
            const qsizetype most = fittingLength(word, font, width);
            const qsizetype hyphen = word.left(most).lastIndexOf(QLatin1Char('-'));
            const qsizetype length = hyphen > 0 ? hyphen + 1 : most;
            lines.append(word.left(length));
            word = word.mid(length);
        }
        line = word;
    }
    if (!line.isEmpty() || lines.isEmpty()) {
        lines.append(line);
    }
    return lines;
}

}  // namespace chalk::ui::print
