#include "ui/print/roster_week_sheet.h"

#include "core/clients/client.h"
#include "core/sessions/session.h"
#include "ui/common/formats.h"
#include "ui/print/print_text.h"

#include <QCoreApplication>

#include <algorithm>

namespace chalk::ui::print {

namespace {

constexpr double kWallEdge = 8;
constexpr double kWallTitle = 9;
constexpr double kWallLine = 5;
constexpr double kWallHead = 6.5;
constexpr double kWallRow = 4.6;
constexpr double kWallIndent = 3;
constexpr double kWallGap = 1.8;
constexpr double kBetweenWallDays = 2.5;
constexpr int kSundayOfWall = 6;

QString wallText(const char* text)
{
    return QCoreApplication::translate("Card", text);
}

void addWallText(Sheet& sheet, const FittedPrint& fit, const QRectF& cell)
{
    sheet.texts.push_back({fit.text, fit.font, cell, {cell.left(), cell.center().y() + capHeightOf(fit.font) / 2}, false});
}

/// Everybody who begins at one time with one coach.
struct WallBlock {
    QString head;       ///< `07:00 · Ines`
    QStringList names;

    [[nodiscard]] double height() const { return kWallRow * (1 + static_cast<double>(names.size())) + kWallGap; }
};

/// What stands in a day's column.
struct WallDay {
    base::Date date;
    QString note;
    std::vector<WallBlock> blocks;
    std::size_t next = 0;  ///< the first block that is on no page yet
};

bool isOnWall(const week::Booking& booking)
{
    return booking.state != week::BookingState::Cancelled;
}

QString nameOnWall(const week::Booking& booking, bool hasInitialsOnly)
{
    QString name = common::qstring(hasInitialsOnly ? clients::dottedInitialsOf(booking.clientName) : booking.clientName);
    switch (booking.kind) {
    case week::BookingKind::Session: return name;
    case week::BookingKind::Screening: return wallText(QT_TRANSLATE_NOOP("Card", "%1 (movement screen)")).arg(name);
    case week::BookingKind::Trial: return wallText(QT_TRANSLATE_NOOP("Card", "%1 (trial)")).arg(name);
    }
    return name;
}

std::vector<WallBlock> blocksOf(const RosterWeek& week, base::Date date)
{
    std::vector<WallBlock> blocks;
    for (const week::Booking& booking : week.bookings) {
        if (booking.date != date || !isOnWall(booking)) {
            continue;
        }
        const QString time = common::qstring(sessions::clockText(booking.startMinute));
        const QString head = week.isOneCoach ? time : QStringLiteral("%1 · %2").arg(time, common::qstring(booking.coachName));
        const auto same = std::find_if(blocks.begin(), blocks.end(), [&head](const WallBlock& one) { return one.head == head; });
        WallBlock& block = same == blocks.end() ? blocks.emplace_back(WallBlock{head, {}}) : *same;
        block.names.append(nameOnWall(booking, week.hasInitialsOnly));
    }
    return blocks;
}

/// Lays the days out side by side, page after page.
class WallFlow {
public:
    WallFlow(const RosterWeek& week, PaperSize paper) : m_week(week), m_size(millimetresOf(paper).transposed())
    {
        for (int day = 0; day < 7; ++day) {
            WallDay column{week.monday + day, week.notes.at(static_cast<std::size_t>(day)), blocksOf(week, week.monday + day), 0};
            if (day < kSundayOfWall || !column.blocks.empty() || !column.note.isEmpty()) {
                m_days.push_back(std::move(column));
            }
        }
    }

    std::vector<Sheet> sheets()
    {
        do {
            newPage();
            for (std::size_t i = 0; i < m_days.size(); ++i) {
                addDay(i);
            }
        } while (std::any_of(m_days.begin(), m_days.end(), [](const WallDay& day) { return day.next < day.blocks.size(); }));
        return std::move(m_sheets);
    }

private:
    void newPage()
    {
        Sheet& sheet = m_sheets.emplace_back();
        sheet.size = m_size;
        m_area = QRectF(QPointF(), m_size).adjusted(kWallEdge, kWallEdge, -kWallEdge, -kWallEdge);
        QRectF cell(m_area.left(), m_area.top(), m_area.width(), kWallTitle);
        addWallText(sheet, fitted(m_week.title, cell.width(), {20, 18, 16, 14, 12}, QFont::Bold, true), cell);
        cell = {cell.left(), cell.bottom(), cell.width(), kWallLine};
        QString line = wallText(QT_TRANSLATE_NOOP("Card", "Week %1, %2 – %3 %4"))
                           .arg(m_week.monday.isoWeek().week)
                           .arg(common::shortDayText(m_week.monday), common::shortDayText(m_week.monday + 6))
                           .arg(m_week.monday.isoWeek().year);
        if (m_sheets.size() > 1) {
            line += wallText(QT_TRANSLATE_NOOP("Card", " (goes on)"));
        }
        addWallText(sheet, fitted(line, cell.width(), {11, 10, 9, kLeastPoints}, QFont::Medium), cell);
        m_top = cell.bottom() + 2;
    }

    void addDay(std::size_t index)
    {
        WallDay& day = m_days[index];
        Sheet& sheet = m_sheets.back();
        const double width = (m_area.width() + kBetweenWallDays) / static_cast<double>(m_days.size()) - kBetweenWallDays;
        const double x = m_area.left() + static_cast<double>(index) * (width + kBetweenWallDays);
        sheet.rules.push_back({{x, m_top, x + width, m_top}, kHeavyStroke});
        double y = m_top + 0.6;
        addWallText(sheet, fitted(common::dayText(day.date), width, {12, 11, 10, 9, kLeastPoints}, QFont::Bold), {x, y, width, kWallHead});
        y += kWallHead;
        for (const QString& line : day.note.isEmpty() ? QStringList() : wrapped(day.note, printFont(kLeastPoints, QFont::Medium), width)) {
            addWallText(sheet, fitted(line, width, {kLeastPoints}, QFont::Medium), {x, y, width, kWallRow});
            y += kWallRow;
        }
        const std::size_t first = day.next;
        while (day.next < day.blocks.size() && (day.next == first || y + day.blocks[day.next].height() <= m_area.bottom())) {
            y = addBlock(sheet, day.blocks[day.next], {x, y, width, 0});
            ++day.next;
        }
    }

    static double addBlock(Sheet& sheet, const WallBlock& block, const QRectF& at)
    {
        double y = at.top() + kWallGap;
        addWallText(sheet, fitted(block.head, at.width(), {10, 9, kLeastPoints}, QFont::Bold), {at.left(), y, at.width(), kWallRow});
        for (const QString& name : block.names) {
            y += kWallRow;
            const double width = at.width() - kWallIndent;
            addWallText(sheet, fitted(name, width, {10, 9, kLeastPoints}, QFont::Medium), {at.left() + kWallIndent, y, width, kWallRow});
        }
        return y + kWallRow;
    }

    const RosterWeek& m_week;
    QSizeF m_size;
    std::vector<WallDay> m_days;
    std::vector<Sheet> m_sheets;
    QRectF m_area;
    double m_top = 0;
};

}  // namespace

std::vector<Sheet> rosterWeekSheets(const RosterWeek& week, PaperSize paper)
{
    return WallFlow(week, paper).sheets();
}

}  // namespace chalk::ui::print
