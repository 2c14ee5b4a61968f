#include "ui/print/group_sheet.h"

#include "ui/print/group_foot.h"
#include "ui/print/group_grid.h"
#include "ui/print/group_words.h"
#include "ui/print/print_text.h"
#include "ui/print/qr_code.h"
#include "ui/print/runs.h"

#include <algorithm>

namespace chalk::ui::print {

namespace {

using planning::GroupSession;

constexpr double kGroupEdge = 6.5;
constexpr double kGroupCode = 16;
constexpr double kTitleRoom = 10;
constexpr double kLineRoom = 5.5;
constexpr double kTopRoom = kGroupCode + 1.5;
constexpr double kAboveFoot = 2.5;
constexpr double kMostGroupRow = 30;

/// What is on each page: rows of turns, and the foot.
struct GroupPage {
    std::size_t first = 0;
    std::size_t end = 0;
    bool hasFoot = false;
};

QRectF groupArea(const QSizeF& size)
{
    return QRectF(QPointF(), size).adjusted(kGroupEdge, kGroupEdge, -kGroupEdge, -kGroupEdge);
}

void addGroupTop(Sheet& sheet, const GroupSession& group, const QString& count, const QRectF& area)
{
    const double width = area.width() - kGroupCode - 5;
    const QString title = count.isEmpty() ? groupTitle(group) : QStringLiteral("%1 (%2)").arg(groupTitle(group), count);
    const QRectF cell(area.left(), area.top(), width, kTitleRoom);
    const FittedPrint fit = fitted(title, width, {22, 20, 18, 16, 14}, QFont::Bold, true);
    sheet.texts.push_back({fit.text, fit.font, cell, {cell.left(), cell.center().y() + capHeightOf(fit.font) / 2}, false});
    placeBest(sheet, groupLines(group), {area.left(), cell.bottom(), width, kLineRoom});
    const auto coded = std::find_if(group.members.begin(), group.members.end(), [](const auto& one) { return !one.card.sessionCode.empty(); });
    if (coded != group.members.end()) {
        const QRectF square(area.right() - kGroupCode, area.top(), kGroupCode, kGroupCode);
        if (auto code = qrCode(codeText(QByteArray::fromStdString(coded->card.sessionCode)), square)) {
            sheet.shapes.push_back(*std::move(code));
        }
    }
}

/// As many rows to a page as go; the foot behind the last one, on a page of its own where it has to.
std::vector<GroupPage> pagesOf(const GroupSession& group, const QRectF& area)
{
    Sheet trial;
    const double heads = addGroupHeads(trial, group, area);
    const double foot = addGroupFoot(trial, group, area) + kAboveFoot;
    const double room = area.height() - kTopRoom;
    std::vector<GroupPage> pages(1);
    double used = heads;
    for (std::size_t row = 0; row < turnRows(group); ++row) {
        const double height = groupRowHeight(group, row, area.width());
        if (used + height > room && pages.back().end > pages.back().first) {
            pages.push_back({row, row, false});
            used = heads;
        }
        used += height;
        pages.back().end = row + 1;
    }
    if (used + foot > room) {
        pages.push_back({pages.back().end, pages.back().end, false});
    }
    pages.back().hasFoot = true;
    return pages;
}

double footHeight(const GroupSession& group, const QRectF& area)
{
    Sheet trial;
    return addGroupFoot(trial, group, area) + kAboveFoot;
}

/// The grid with its rows, spread over the height; answers its lower edge.
double addGrid(Sheet& sheet, const GroupSession& group, const GroupPage& page, const QRectF& area)
{
    double y = area.top() + addGroupHeads(sheet, group, area);
    double least = 0;
    for (std::size_t row = page.first; row < page.end; ++row) {
        least += groupRowHeight(group, row, area.width());
    }
    const double more = std::max(0.0, area.bottom() - y - least) / static_cast<double>(page.end - page.first);
    for (std::size_t row = page.first; row < page.end; ++row) {
        const double own = groupRowHeight(group, row, area.width());
        const double height = std::max(own, std::min(own + more, kMostGroupRow));
        addGroupRow(sheet, group, row, {area.left(), y, area.width(), height});
        y += height;
    }
    addGroupColumns(sheet, group, {area.left(), area.top(), area.width(), y - area.top()});
    return y;
}

}  // namespace

std::vector<Sheet> groupSheets(const GroupSession& group, PaperSize paper)
{
    if (group.members.empty()) {
        return {};
    }
    const QSizeF size = millimetresOf(paper).transposed();
    const QRectF area = groupArea(size);
    const std::vector<GroupPage> pages = pagesOf(group, area);
    std::vector<Sheet> sheets;
    for (const GroupPage& page : pages) {
        Sheet sheet;
        sheet.size = size;
        const QString count = pages.size() > 1 ? QStringLiteral("%1/%2").arg(sheets.size() + 1).arg(pages.size()) : QString();
        addGroupTop(sheet, group, count, area);
        QRectF below = area.adjusted(0, kTopRoom, 0, 0);
        if (page.end > page.first) {
            const double foot = page.hasFoot ? footHeight(group, area) : 0;
            below.setTop(addGrid(sheet, group, page, below.adjusted(0, 0, 0, -foot)));
        }
        if (page.hasFoot) {
            addGroupFoot(sheet, group, below.adjusted(0, kAboveFoot, 0, 0));
        }
        sheets.push_back(std::move(sheet));
    }
    return sheets;
}

}  // namespace chalk::ui::print
