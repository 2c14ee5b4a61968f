#include "ui/print/card_parts.h"
#include "ui/print/runs.h"

#include <QCoreApplication>

#include <cmath>

namespace chalk::ui::print {

namespace {

constexpr double kFootPoints = 9;
constexpr double kPillHeight = 5.2;
constexpr double kPillPadding = 2.2;
constexpr double kNoteLineHeight = 8;
constexpr double kGap = 3.6;
constexpr double kLeastLine = 8;  ///< to write on

QString footText(const char* text)
{
    return QCoreApplication::translate("Card", text);
}

/// Puts a word at x in the middle of the foot's height and answers where it ends.
double addWord(Sheet& sheet, const QString& word, double x, const QRectF& line, double points = kFootPoints)
{
    const Runs run{{word, points, QFont::Medium, false, false, 0}};
    place(sheet, run, {x, line.top(), widthOf(run), line.height()});
    return x + widthOf(run);
}

/// A word in a rounded box, to be ringed.
double addPill(Sheet& sheet, const QString& word, double x, const QRectF& line)
{
    const double end = addWord(sheet, word, x + kPillPadding, line) + kPillPadding;
    sheet.boxes.push_back({{x, line.center().y() - kPillHeight / 2, end - x, kPillHeight}, 0.35, kPillHeight / 2 - 0.2});
    return end;
}

/// How it felt, and pain with its box; answers where they end.
double addFeltWords(Sheet& sheet, const QRectF& line)
{
    double x = addWord(sheet, footText(QT_TRANSLATE_NOOP("Card", "Felt")), line.left(), line) + kGap;
    x = addPill(sheet, footText(QT_TRANSLATE_NOOP("Card", "steady")), x, line) + 1;
    x = addPill(sheet, footText(QT_TRANSLATE_NOOP("Card", "shaky")), x, line) + kGap;
    x = addWord(sheet, footText(QT_TRANSLATE_NOOP("Card", "Pain 0–10")), x, line) + kGap - 1;
    sheet.boxes.push_back({{x, line.center().y() - 4, 11, 8}, kBoxStroke, 1});
    return x + 11;
}

}  // namespace

void addFoot(Sheet& sheet, const QString& session, const QRectF& area)
{
    addRule(sheet, area, area.top());
    Sheet trial;
    const double words = addFeltWords(trial, area) - area.left() + 2 * kGap;
    const double sessionWidth = widthOf(session, printFont(kLeastPoints, QFont::Medium));
    const bool isTight = words + sessionWidth > area.width();
    const QRectF line = isTight ? area.adjusted(0, 0.7, 0, -3.7) : area.adjusted(0, 1.5, 0, -0.5);
    double x = addFeltWords(sheet, line);
    double end = area.right();
    if (!session.isEmpty()) {
        const QRectF cell = isTight ? QRectF(area.left(), line.bottom(), area.width(), 3.7) : line;
        addWord(sheet, session, area.right() - sessionWidth, cell, kLeastPoints);
        end -= isTight ? 0 : sessionWidth + kGap - 1;
    }
    const QString where = footText(QT_TRANSLATE_NOOP("Card", "where"));
    if (x + kGap + widthOf(where, printFont(kFootPoints, QFont::Medium)) + kLeastLine < end) {
        x = addWord(sheet, where, x + kGap - 1, line) + 1.5;
        const double y = line.center().y() + 3;
        sheet.rules.push_back({{x, y, end, y}, 0.35});
    }
}

void addFeltRow(Sheet& sheet, const QString& name, double nameWidth, const QRectF& line)
{
    const FittedPrint fit = fitted(name, nameWidth, {9, 8.5, kLeastPoints}, QFont::Bold);
    const QRectF cell(line.left(), line.top(), nameWidth, line.height());
    sheet.texts.push_back({fit.text, fit.font, cell, {cell.left(), cell.center().y() + capHeightOf(fit.font) / 2}, false});
    double x = addPill(sheet, footText(QT_TRANSLATE_NOOP("Card", "steady")), cell.right() + 1.5, line) + 1;
    x = addPill(sheet, footText(QT_TRANSLATE_NOOP("Card", "shaky")), x, line) + 2;
    x = addWord(sheet, footText(QT_TRANSLATE_NOOP("Card", "Pain 0–10")), x, line) + 1.5;
    sheet.boxes.push_back({{x, line.center().y() - 3.2, 9, 6.4}, kBoxStroke, 1});
    const double y = line.center().y() + 3;
    if (x + 12 < line.right()) {
        sheet.rules.push_back({{x + 11, y, line.right(), y}, 0.35});
    }
}

void addNotes(Sheet& sheet, const QRectF& area)
{
    addRule(sheet, area, area.top());
    addWord(sheet, footText(QT_TRANSLATE_NOOP("Card", "Notes")), area.left(), {area.left(), area.top() + 1.5, area.width(), 4});
    const int lines = static_cast<int>(std::floor((area.height() - 6) / kNoteLineHeight));
    for (int i = 1; i <= lines; ++i) {
        const double y = area.top() + 4 + i * kNoteLineHeight;
        sheet.rules.push_back({{area.left(), y, area.right(), y}, 0.2});
    }
}

}  // namespace chalk::ui::print
