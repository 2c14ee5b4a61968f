#include "ui/print/week_sheet.h"

#include "ui/common/formats.h"
#include "ui/print/card_parts.h"
#include "ui/print/card_words.h"
#include "ui/print/caution_block.h"
#include "ui/print/compact_lift.h"
#include "ui/print/print_text.h"
#include "ui/print/qr_code.h"

#include <QCoreApplication>

#include <algorithm>

namespace chalk::ui::print {

namespace {

using sessions::CardContent;

constexpr double kWeekEdge = 8;
constexpr double kWeekTitle = 9;
constexpr double kWeekLine = 4.6;
constexpr double kMostWeekCautions = 80;
constexpr double kWeekCode = 16;
constexpr double kDayHead = kWeekCode + 1.8;
constexpr double kDayTitle = 6.5;
constexpr double kDayFelt = 8.6;
constexpr double kBetweenColumns = 5;
constexpr double kWeekRowPadding = 1;
constexpr double kBetweenDays = 3;

QString weekText(const char* text)
{
    return QCoreApplication::translate("Card", text);
}

void addWeekText(Sheet& sheet, const FittedPrint& fit, const QRectF& cell)
{
    sheet.texts.push_back({fit.text, fit.font, cell, {cell.left(), cell.center().y() + capHeightOf(fit.font) / 2}, false});
}

QString weekTitle(const CardContent& card)
{
    const base::IsoWeek week = card.date.isoWeek();
    const base::Date monday = base::Date::mondayOf(week).value_or(card.date);
    return weekText(QT_TRANSLATE_NOOP("Card", "Week %1, %2 – %3 %4"))
        .arg(week.week)
        .arg(common::shortDayText(monday), common::shortDayText(monday + 6))
        .arg(week.year);
}

/// Lays days out one below the other, over as many pages as they take.
class WeekFlow {
public:
    WeekFlow(std::span<const CardContent> cards, PaperSize paper, base::Date asOf) : m_cards(cards), m_size(millimetresOf(paper)), m_asOf(asOf) { newPage(); }

    void addDay(const CardContent& card)
    {
        double whole = kDayHead;
        for (std::size_t lift = 0; lift < card.lifts.size(); lift += 2) {
            whole += rowHeight(card, lift);
        }
        if (m_y + whole > m_area.bottom() && m_y > m_top) {
            newPage();
        }
        addDayHead(card, false);
        for (std::size_t lift = 0; lift < card.lifts.size(); lift += 2) {
            const double height = rowHeight(card, lift);
            if (m_y + height > m_area.bottom() && lift > 0) {
                newPage();
                addDayHead(card, true);
            }
            addRow(card, lift, height);
        }
        m_y += kBetweenDays;
    }

    [[nodiscard]] std::vector<Sheet> sheets() { return std::move(m_sheets); }

private:
    [[nodiscard]] double columnWidth() const { return (m_area.width() - kBetweenColumns) / 2; }

    [[nodiscard]] static CompactLift compactDay(const CardContent& card, std::size_t lift)
    {
        return {card.lifts[lift], {}, QStringLiteral("%1.").arg(lift + 1), hasMixedReserves(card), true};
    }

    [[nodiscard]] double rowHeight(const CardContent& card, std::size_t lift) const
    {
        double height = compactHeight(compactDay(card, lift), columnWidth());
        if (lift + 1 < card.lifts.size()) {
            height = std::max(height, compactHeight(compactDay(card, lift + 1), columnWidth()));
        }
        return height + kWeekRowPadding;
    }

    void newPage()
    {
        m_sheets.emplace_back();
        Sheet& sheet = m_sheets.back();
        sheet.size = m_size;
        m_area = QRectF(QPointF(), m_size).adjusted(kWeekEdge, kWeekEdge, -kWeekEdge, -kWeekEdge);
        const CardContent& first = m_cards.front();
        QRectF cell(m_area.left(), m_area.top(), m_area.width(), kWeekTitle);
        addWeekText(sheet, fitted(common::qstring(first.clientName), cell.width(), {22, 20, 18, 16, 14, 12}, QFont::Bold, true), cell);
        cell = {cell.left(), cell.bottom(), cell.width(), kWeekLine};
        const QString line = weekText(QT_TRANSLATE_NOOP("Card", "%1 · numbers as of %2: each session may move those after it")).arg(weekTitle(first), common::dayText(m_asOf));
        addWeekText(sheet, fitted(line, cell.width(), {10, 9, kLeastPoints}, QFont::Medium), cell);
        m_y = addCautionBlock(sheet, first.cautions, {m_area.left(), cell.bottom() + 1, m_area.width(), kMostWeekCautions}) + 1.5;
        m_top = m_y;
    }

    void addDayHead(const CardContent& card, bool isContinued)
    {
        Sheet& sheet = m_sheets.back();
        sheet.rules.push_back({{m_area.left(), m_y, m_area.right(), m_y}, kHeavyStroke});
        const double width = m_area.width() - kWeekCode - 4;
        QString title = whenAndWhere(card);
        if (isContinued) {
            title += weekText(QT_TRANSLATE_NOOP("Card", " (goes on)"));
        }
        const QRectF cell(m_area.left(), m_y + 1, width, kDayTitle);
        addWeekText(sheet, fitted(title, width, {12, 11, 10, 9, kLeastPoints}, QFont::Bold), cell);
        addFeltRow(sheet, weekText(QT_TRANSLATE_NOOP("Card", "Felt")), 9, {m_area.left(), cell.bottom() + 0.4, width, kDayFelt});
        if (!card.sessionCode.empty()) {
            const QRectF square(m_area.right() - kWeekCode, m_y + 1.2, kWeekCode, kWeekCode);
            if (auto code = qrCode(codeText(QByteArray::fromStdString(card.sessionCode)), square)) {
                sheet.shapes.push_back(*std::move(code));
            }
        }
        m_y += kDayHead;
    }

    void addRow(const CardContent& card, std::size_t lift, double height)
    {
        for (std::size_t i = 0; i < 2 && lift + i < card.lifts.size(); ++i) {
            const double x = m_area.left() + static_cast<double>(i) * (columnWidth() + kBetweenColumns);
            m_sheets.back().rules.push_back({{x, m_y, x + columnWidth(), m_y}, 0.25});
            addCompactLift(m_sheets.back(), compactDay(card, lift + i), {x, m_y + kWeekRowPadding, columnWidth(), height - kWeekRowPadding});
        }
        m_y += height;
    }

    std::span<const CardContent> m_cards;
    QSizeF m_size;
    base::Date m_asOf;
    QRectF m_area;
    std::vector<Sheet> m_sheets;
    double m_top = 0;
    double m_y = 0;
};

}  // namespace

std::vector<Sheet> weekSheets(std::span<const CardContent> cards, PaperSize paper, base::Date asOf)
{
    if (cards.empty()) {
        return {};
    }
    WeekFlow flow(cards, paper, asOf);
    for (const CardContent& card : cards) {
        flow.addDay(card);
    }
    return flow.sheets();
}

}  // namespace chalk::ui::print
