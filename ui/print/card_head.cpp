#include "ui/common/formats.h"
#include "ui/print/card_parts.h"
#include "ui/print/card_words.h"
#include "ui/print/qr_code.h"

#include <QCoreApplication>

#include <algorithm>

namespace chalk::ui::print {

namespace {

using common::qstring;
using sessions::CardCaution;
using sessions::CardContent;

constexpr double kCodeSide = 19;
constexpr double kCodeGap = 4;
constexpr double kNameHeight = 24.6 * kMmPerPoint;
constexpr double kLineHeight = 14 * kMmPerPoint;
constexpr double kHeadHeight = 20;
constexpr double kCautionHeight = 8;
constexpr double kCautionPadding = 3;
constexpr double kMostLabelWidth = 42;
constexpr double kMostCautionShare = 0.45;  ///< of the printed height, for all cautions together
constexpr double kDrillsHeight = 5.2;

void addText(Sheet& sheet, const FittedPrint& fit, const QRectF& cell, bool isWhite = false)
{
    sheet.texts.push_back({fit.text, fit.font, cell, {cell.left(), cell.center().y() + capHeightOf(fit.font) / 2}, isWhite});
}

void addWho(Sheet& sheet, const CardContent& card, const QRectF& area)
{
    const double width = area.width() - kCodeSide - kCodeGap;
    QRectF cell(area.left(), area.top(), width, kNameHeight);
    addText(sheet, fitted(qstring(card.clientName), width, {22, 20, 18, 16, 14}, QFont::Bold, true), cell);
    cell = {area.left(), cell.bottom(), width, kLineHeight};
    addText(sheet, fitted(whenAndWhere(card), width, {10.5, 9.5, 8.5, kLeastPoints}, QFont::Medium), cell);
    cell.translate(0, kLineHeight);
    placeBest(sheet, instructions(card), cell);
    if (!card.sessionCode.empty()) {
        const QRectF square(area.right() - kCodeSide, area.top(), kCodeSide, kCodeSide);
        if (auto code = qrCode(codeText(QByteArray::fromStdString(card.sessionCode)), square)) {
            sheet.shapes.push_back(*std::move(code));
        }
    }
}

/// The lines of a caution at the largest size at which they stay below `mostHeight`.
struct CautionLines {
    QFont font;
    QStringList lines;
    double lineHeight = 0;

    [[nodiscard]] double height() const { return std::max(kCautionHeight, static_cast<double>(lines.size()) * lineHeight + 2); }
};

CautionLines cautionLines(const QString& text, double width, double mostHeight)
{
    CautionLines fit;
    for (const double points : {10.0, 9.0, kLeastPoints}) {
        fit.font = printFont(points, QFont::DemiBold);
        fit.lineHeight = points * 1.3 * kMmPerPoint;
        fit.lines = wrapped(text, fit.font, width);
        if (fit.height() <= mostHeight) {
            return fit;
        }
    }
    const auto most = std::max<qsizetype>(1, static_cast<qsizetype>((mostHeight - 2) / fit.lineHeight));
    if (fit.lines.size() > most) {
        fit.lines.erase(fit.lines.begin() + most, fit.lines.end());
        fit.lines.last() = wrapped(fit.lines.last() + QStringLiteral(" …"), fit.font, width).constFirst();
    }
    return fit;
}

/// Answers the lower edge of the box.
double addCaution(Sheet& sheet, const CardCaution& caution, const QRectF& area, double y, double mostHeight)
{
    const double labelRoom = kMostLabelWidth - 2 * kCautionPadding;
    const FittedPrint label = fitted(qstring(caution.label).toUpper(), labelRoom, {10, 9, kLeastPoints}, QFont::Bold);
    const double labelWidth = caution.label.empty() ? 0 : widthOf(label.text, label.font) + 2 * kCautionPadding;
    const double textLeft = area.left() + labelWidth + kCautionPadding;
    const double textWidth = area.right() - kCautionPadding - textLeft;
    const CautionLines text = cautionLines(qstring(caution.text), textWidth, mostHeight);
    const QRectF box(area.left(), y, area.width(), text.height());
    sheet.boxes.push_back({box, 0.6, 1.2});
    if (!caution.label.empty()) {
        QPainterPath black;
        black.addRoundedRect(box.adjusted(0, 0, labelWidth - box.width(), 0), 1.2, 1.2);
        black.addRect(box.left() + labelWidth - 2, box.top(), 2, box.height());
        black.setFillRule(Qt::WindingFill);
        sheet.shapes.push_back(black);
        addText(sheet, label, {box.left() + kCautionPadding, box.top(), labelWidth - 2 * kCautionPadding, box.height()}, true);
    }
    double lineTop = box.center().y() - static_cast<double>(text.lines.size()) * text.lineHeight / 2;
    for (const QString& line : text.lines) {
        addText(sheet, {line, text.font}, {textLeft, lineTop, textWidth, text.lineHeight});
        lineTop += text.lineHeight;
    }
    return box.bottom();
}

double addDrills(Sheet& sheet, const QString& text, const QRectF& area, double y)
{
    const Runs line{{QCoreApplication::translate("Card", "Warm-up"), 9.5, QFont::Bold, false, false, 0}, {text, 9.5, QFont::Normal, false, false, 2}};
    placeBest(sheet, {line}, {area.left(), y, area.width(), kDrillsHeight});
    return y + kDrillsHeight + 1;
}

}  // namespace

double addHead(Sheet& sheet, const CardContent& card, const QRectF& area, bool withDrills)
{
    addWho(sheet, card, area);
    double y = area.top() + kHeadHeight;
    const double mostHeight = area.height() * kMostCautionShare / static_cast<double>(std::max<std::size_t>(1, card.cautions.size()));
    for (const CardCaution& caution : card.cautions) {
        y = addCaution(sheet, caution, area, y + 1.8, mostHeight);
    }
    y += 1.5;
    if (withDrills) {
        y = addDrills(sheet, drillText(card), area, y);
    }
    return y;
}

}  // namespace chalk::ui::print
