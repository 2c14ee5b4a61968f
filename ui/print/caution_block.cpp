#include "ui/print/caution_block.h"

#include "ui/common/formats.h"
#include "ui/print/print_text.h"

#include <QCoreApplication>

#include <algorithm>

namespace chalk::ui::print {

namespace {

using common::qstring;
using sessions::CardCaution;

constexpr double kLineFactor = 1.3;
constexpr double kLabelPadding = 1.1;
constexpr double kMostLabelShare = 0.45;  ///< of the width, for a label beside its text; a longer one stands above it
constexpr double kBetweenCautions = 0.8;

/// A caution in one size of type.
struct CautionSetting {
    FittedPrint label;
    QFont font;
    QStringList lines;
    double labelWidth = 0;  ///< of the black box
    bool isLabelAbove = false;
    double lineHeight = 0;

    /// How far the text stands from the left.
    [[nodiscard]] double indent() const { return labelWidth > 0 && !isLabelAbove ? labelWidth + kLabelPadding : 0; }
    [[nodiscard]] double labelHeight() const { return isLabelAbove ? lineHeight + 0.3 : 0; }
    [[nodiscard]] double height() const { return labelHeight() + static_cast<double>(lines.size()) * lineHeight + kBetweenCautions; }
};

CautionSetting settingOf(const CardCaution& caution, double width, double points)
{
    CautionSetting set;
    set.font = printFont(points, QFont::Medium);
    set.lineHeight = points * kLineFactor * kMmPerPoint;
    if (!caution.label.empty()) {
        set.label = fitted(qstring(caution.label).toUpper(), width - 2 * kLabelPadding, {points, kLeastPoints}, QFont::Bold);
        set.labelWidth = widthOf(set.label.text, set.label.font) + 2 * kLabelPadding;
        set.isLabelAbove = set.labelWidth > width * kMostLabelShare;
    }
    set.lines = wrapped(qstring(caution.text), set.font, width - set.indent());
    return set;
}

std::vector<CautionSetting> settingsOf(std::span<const CardCaution> cautions, double width, double points)
{
    std::vector<CautionSetting> settings;
    for (const CardCaution& caution : cautions) {
        settings.push_back(settingOf(caution, width, points));
    }
    return settings;
}

double heightOf(const std::vector<CautionSetting>& settings)
{
    double height = 0;
    for (const CautionSetting& set : settings) {
        height += set.height();
    }
    return height;
}

qsizetype linesOf(const std::vector<CautionSetting>& settings)
{
    qsizetype lines = 0;
    for (const CautionSetting& set : settings) {
        lines += set.lines.size();
    }
    return lines;
}

void addSetting(Sheet& sheet, const CautionSetting& set, const QRectF& area)
{
    const auto baseline = [](const QRectF& cell, const QFont& font) { return cell.center().y() + capHeightOf(font) / 2; };
    if (set.labelWidth > 0) {
        const QRectF box(area.left(), area.top(), set.labelWidth, set.lineHeight);
        QPainterPath black;
        black.addRoundedRect(box, 0.7, 0.7);
        sheet.shapes.push_back(black);
        const QRectF cell = box.adjusted(kLabelPadding, 0, -kLabelPadding + 0.05, 0);
        sheet.texts.push_back({set.label.text, set.label.font, cell, {cell.left(), baseline(cell, set.label.font)}, true});
    }
    QRectF cell(area.left() + set.indent(), area.top() + set.labelHeight(), area.width() - set.indent(), set.lineHeight);
    for (const QString& line : set.lines) {
        sheet.texts.push_back({line, set.font, cell, {cell.left(), baseline(cell, set.font)}, false});
        cell.translate(0, set.lineHeight);
    }
}

/// Keeps what goes into `height`.
void cut(CautionSetting& set, double width, double height)
{
    const auto most = std::max<qsizetype>(1, static_cast<qsizetype>((height - kBetweenCautions - set.labelHeight()) / set.lineHeight));
    if (set.lines.size() > most) {
        set.lines.erase(set.lines.begin() + most, set.lines.end());
        QString& last = set.lines.last();
        while (!last.isEmpty() && widthOf(last + QStringLiteral(" …"), set.font) > width - set.indent()) {
            last.chop(1);
        }
        last += QStringLiteral(" …");
    }
}

}  // namespace

double addCautionBlock(Sheet& sheet, std::span<const CardCaution> cautions, const QRectF& area)
{
    const CardCaution none{{}, QCoreApplication::translate("Card", "No cautions").toStdString()};
    const std::span<const CardCaution> said = cautions.empty() ? std::span(&none, 1) : cautions;
    std::vector<CautionSetting> settings = settingsOf(said, area.width(), kLeastPoints);
    // Large where it fits, unless smaller type saves lines.
    for (const double points : {8.5, 9.0}) {
        std::vector<CautionSetting> larger = settingsOf(said, area.width(), points);
        if (heightOf(larger) <= area.height() && linesOf(larger) == linesOf(settings)) {
            settings = std::move(larger);
        }
    }
    const bool isTooHigh = heightOf(settings) > area.height();
    double y = area.top();
    for (CautionSetting& set : settings) {
        if (isTooHigh) {
            cut(set, area.width(), area.height() / static_cast<double>(settings.size()));
        }
        addSetting(sheet, set, {area.left(), y, area.width(), set.height()});
        y += set.height();
    }
    return y;
}

}  // namespace chalk::ui::print
