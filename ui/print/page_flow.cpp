#include "ui/print/page_flow.h"

#include "ui/print/print_text.h"

#include <QCoreApplication>

#include <algorithm>

namespace chalk::ui::print {

namespace {

// Millimetres, and points of type.
constexpr double kPageEdge = 20;
constexpr double kPageTop = 24;
constexpr double kPageFoot = 16;
constexpr double kBodyPoints = 10.5;
constexpr double kTitlePoints = 20;
constexpr double kHeadingPoints = 12;
constexpr double kSmallPoints = 8.5;
constexpr double kBodyLine = 5.2;
constexpr double kNameColumn = 46;
constexpr double kAnswerColumn = 38;
constexpr double kMoreIndent = 6;
constexpr double kTick = 4;
constexpr double kSignatureRoom = 16;
constexpr double kSignatureLine = 4;
constexpr double kSignatureGap = 10;

void addText(Sheet& sheet, const QString& text, const QFont& font, double x, double y, double lineHeight)
{
    const double wide = widthOf(text, font);
    const double baseline = y + (lineHeight + capHeightOf(font)) / 2;
    sheet.texts.push_back({text, font, QRectF(x, y, wide + 0.2, lineHeight), QPointF(x, baseline), false});
}

}  // namespace

PageFlow::PageFlow(PaperSize paper, QString head) : m_paper(paper), m_head(std::move(head))
{
    newPage();
}

double PageFlow::left() const
{
    return kPageEdge;
}

double PageFlow::width() const
{
    return millimetresOf(m_paper).width() - 2 * kPageEdge;
}

double PageFlow::bottom() const
{
    return millimetresOf(m_paper).height() - kPageFoot - 6;
}

void PageFlow::newPage()
{
    Sheet sheet;
    sheet.size = millimetresOf(m_paper);
    const QFont small = printFont(kSmallPoints, QFont::Medium);
    addText(sheet, fitted(m_head, width(), {kSmallPoints, kLeastPoints}, QFont::Medium).text, small, left(), 12, 4);
    sheet.rules.push_back({QLineF(left(), 18, left() + width(), 18), kBoxStroke});
    m_sheets.push_back(std::move(sheet));
    m_y = kPageTop;
}

Sheet& PageFlow::page(double needed)
{
    if (m_y + needed > bottom()) {
        newPage();
    }
    return m_sheets.back();
}

void PageFlow::lines(const QStringList& broken, const QFont& font, double x, double lineHeight)
{
    for (const QString& line : broken) {
        Sheet& sheet = page(lineHeight);
        addText(sheet, line, font, x, m_y, lineHeight);
        m_y += lineHeight;
    }
}

void PageFlow::title(const QString& text)
{
    const QFont font = printFont(kTitlePoints, QFont::Bold, true);
    lines(wrapped(text, font, width()), font, left(), 9);
    m_y += 2;
}

void PageFlow::heading(const QString& text)
{
    page(7 + 2 * kBodyLine);
    m_y += 3;
    const QFont font = printFont(kHeadingPoints, QFont::Bold);
    lines(wrapped(text, font, width()), font, left(), 6);
    m_y += 1;
}

void PageFlow::paragraph(const QString& text)
{
    const QFont font = printFont(kBodyPoints, QFont::Normal);
    lines(wrapped(text, font, width()), font, left(), kBodyLine);
    m_y += 1.8;
}

void PageFlow::entry(const QString& name, const QString& text)
{
    const QFont bold = printFont(kBodyPoints, QFont::DemiBold);
    const QFont plain = printFont(kBodyPoints, QFont::Normal);
    const QStringList names = wrapped(name, bold, kNameColumn - 4);
    const QStringList words = wrapped(text, plain, width() - kNameColumn);
    const qsizetype count = std::max(names.size(), words.size());
    for (qsizetype i = 0; i < count; ++i) {
        Sheet& sheet = page(kBodyLine);
        if (i < names.size()) {
            addText(sheet, names[i], bold, left(), m_y, kBodyLine);
        }
        if (i < words.size()) {
            addText(sheet, words[i], plain, left() + kNameColumn, m_y, kBodyLine);
        }
        m_y += kBodyLine;
    }
    m_y += 1;
}

void PageFlow::question(const QString& text, const QString& answer, const QString& more)
{
    const QFont plain = printFont(kBodyPoints, QFont::Normal);
    const QStringList asked = wrapped(text, plain, width() - kAnswerColumn - 4);
    const FittedPrint said = fitted(answer, kAnswerColumn, {kBodyPoints, kSmallPoints, kLeastPoints}, QFont::DemiBold);
    Sheet& sheet = page(kBodyLine * (static_cast<double>(asked.size()) + (more.isEmpty() ? 0 : 1)));
    addText(sheet, said.text, said.font, left() + width() - kAnswerColumn, m_y, kBodyLine);
    lines(asked, plain, left(), kBodyLine);
    if (!more.isEmpty()) {
        lines(wrapped(more, plain, width() - kMoreIndent), plain, left() + kMoreIndent, kBodyLine);
    }
    m_y += 1.8;
}

void PageFlow::tick(const QString& text)
{
    const QFont font = printFont(kBodyPoints, QFont::Normal);
    const QStringList broken = wrapped(text, font, width() - kTick - 4);
    Sheet& sheet = page(kBodyLine);
    sheet.boxes.push_back({QRectF(left(), m_y + (kBodyLine - kTick) / 2, kTick, kTick), kBoxStroke, 0.5});
    lines(broken, font, left() + kTick + 4, kBodyLine);
    m_y += 1.5;
}

void PageFlow::signatures(const QStringList& below)
{
    const QFont small = printFont(kSmallPoints, QFont::Normal);
    const auto count = static_cast<double>(below.size());
    const double each = (width() - kSignatureGap * (count - 1)) / count;
    std::vector<QStringList> words;
    qsizetype most = 1;
    for (const QString& text : below) {
        words.push_back(wrapped(text, small, each));
        most = std::max(most, words.back().size());
    }
    const double high = 1 + static_cast<double>(most) * kSignatureLine;
    Sheet& sheet = page(kSignatureRoom + high);
    m_y += kSignatureRoom;
    for (std::size_t i = 0; i < words.size(); ++i) {
        const double x = left() + static_cast<double>(i) * (each + kSignatureGap);
        sheet.rules.push_back({QLineF(x, m_y, x + each, m_y), kBoxStroke});
        for (qsizetype line = 0; line < words[i].size(); ++line) {
            addText(sheet, words[i][line], small, x, m_y + 1 + static_cast<double>(line) * kSignatureLine, kSignatureLine);
        }
    }
    m_y += high + 2;
}

void PageFlow::gap(double millimetres)
{
    m_y += millimetres;
}

std::vector<Sheet> PageFlow::sheets() const
{
    std::vector<Sheet> numbered = m_sheets;
    const QFont small = printFont(kSmallPoints, QFont::Medium);
    for (std::size_t i = 0; i < numbered.size(); ++i) {
        const QString text = QCoreApplication::translate("Papers", "Page %1 of %2").arg(i + 1).arg(numbered.size());
        const double x = left() + width() - widthOf(text, small);
        addText(numbered[i], text, small, x, millimetresOf(m_paper).height() - kPageFoot, 4);
    }
    return numbered;
}

}  // namespace chalk::ui::print
