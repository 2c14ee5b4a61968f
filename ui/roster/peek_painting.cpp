#include "ui/roster/peek_painting.h"

#include "ui/common/formats.h"
#include "ui/common/icon_store.h"
#include "ui/common/wrapped_text.h"

#include <QCoreApplication>
#include <QFontMetricsF>
#include <QPainter>

namespace chalk::ui::roster {

namespace {

using common::Theme;

// Pixels at a text size of 100 %.
constexpr double kPeekEdge = 16;
constexpr double kPeekLine = 18;
constexpr double kPeekLiftHeight = 30;
constexpr double kPeekNoteWidth = 84;
constexpr double kPeekIcon = 16;

QString peekWords(const char* text)
{
    return QCoreApplication::translate("Peek", text);
}

/// Writes the peek downwards, piece by piece; measures only where there is no painter.
class PeekWriter {
public:
    PeekWriter(QPainter* painter, double width, const Theme& theme)
        : m_painter(painter), m_left(theme.scaled(kPeekEdge)), m_width(width - 2 * m_left), m_theme(theme)
    {
        skip(kPeekEdge - 2);
    }

    [[nodiscard]] double height() const { return m_top; }
    void skip(double pixels) { m_top += m_theme.scaled(pixels); }

    void line(const QString& text, const QFont& font, const QColor& ink, double height)
    {
        if (m_painter != nullptr) {
            m_painter->setFont(font);
            m_painter->setPen(ink);
            m_painter->drawText(QRectF(m_left, m_top, m_width, m_theme.scaled(height)), Qt::AlignLeft | Qt::AlignVCenter,
                                QFontMetricsF(font).elidedText(text, Qt::ElideRight, m_width));
        }
        skip(height);
    }

    void smallLine(const QString& text)
    {
        if (!text.isEmpty()) {
            line(text, m_theme.font(common::TextStyle::Small), m_theme.ink2, kPeekLine);
        }
    }

    /// A caution is never cut short.
    void caution(const QString& text)
    {
        const double indent = m_theme.scaled(kPeekIcon + 8);
        const QFont font = m_theme.font(common::TextStyle::Small);
        const double lineHeight = m_theme.scaled(kPeekLine);
        if (m_painter != nullptr) {
            const double side = m_theme.scaled(kPeekIcon);
            common::paintIcon(*m_painter, QRectF(m_left, m_top + (lineHeight - side) / 2, side, side), QStringLiteral("info"), m_theme.warn, m_theme);
            m_painter->setPen(m_theme.ink);
            common::paintWrappedText(*m_painter, {m_left + indent, m_top}, text, font, m_width - indent, lineHeight);
        }
        m_top += common::wrappedTextHeight(text, font, m_width - indent, lineHeight);
        skip(2);
    }

    void rule()
    {
        skip(8);
        if (m_painter != nullptr) {
            m_painter->fillRect(QRectF(m_left, m_top, m_width, 1), m_theme.line);
        }
        skip(8);
    }

    void lift(const PeekLift& lift)
    {
        const double height = m_theme.scaled(kPeekLiftHeight);
        if (m_painter != nullptr) {
            const double noteWidth = m_theme.scaled(kPeekNoteWidth);
            const common::StageTagView tag{lift.stage, lift.cycle};
            const double tagWidth = common::stageTagWidth(tag, m_theme);
            const double tagLeft = m_left + m_width - noteWidth - tagWidth;
            common::paintStageTag(*m_painter, QRectF(tagLeft, m_top, tagWidth, height), tag, m_theme);
            write(QRectF(m_left, m_top, tagLeft - m_left - m_theme.scaled(10), height), lift.name, common::TextStyle::Small, m_theme.ink);
            write(QRectF(m_left + m_width - noteWidth + m_theme.scaled(8), m_top, noteWidth - m_theme.scaled(8), height), lift.note,
                  common::TextStyle::Micro, m_theme.ink3);
        }
        m_top += height;
    }

    void keys(const std::vector<std::pair<QString, QString>>& hints)
    {
        const double height = m_theme.scaled(22);
        double x = m_left;
        for (const auto& [key, does] : hints) {
            const common::KeyCapView cap{key};
            const double capWidth = common::keyCapWidth(cap, m_theme);
            const double textWidth = QFontMetricsF(m_theme.font(common::TextStyle::Micro)).horizontalAdvance(does);
            if (m_painter != nullptr) {
                common::paintKeyCap(*m_painter, QRectF(x, m_top, capWidth, height), cap, m_theme);
                write(QRectF(x + capWidth + m_theme.scaled(6), m_top, textWidth + 2, height), does, common::TextStyle::Micro, m_theme.ink3);
            }
            x += capWidth + textWidth + m_theme.scaled(20);
        }
        m_top += height;
    }

private:
    void write(const QRectF& rect, const QString& text, common::TextStyle style, const QColor& ink)
    {
        const QFont font = m_theme.font(style);
        m_painter->setFont(font);
        m_painter->setPen(ink);
        m_painter->drawText(rect, Qt::AlignLeft | Qt::AlignVCenter, QFontMetricsF(font).elidedText(text, Qt::ElideRight, rect.width()));
    }

    QPainter* m_painter;
    double m_left;
    double m_width;
    const Theme& m_theme;
    double m_top = 0;
};

void writeLifts(PeekWriter& writer, const RosterRow& row)
{
    writer.rule();
    if (row.lifts.empty()) {
        writer.smallLine(peekWords(QT_TRANSLATE_NOOP("Peek", "No lift has been screened yet.")));
    }
    for (const PeekLift& lift : row.lifts) {
        writer.lift(lift);
    }
}

std::vector<std::pair<QString, QString>> peekKeys(RosterReach reach)
{
    std::vector<std::pair<QString, QString>> keys;
    if (reach == RosterReach::Training) {
        keys.emplace_back(peekWords(QT_TRANSLATE_NOOP("Peek", "Enter")), peekWords(QT_TRANSLATE_NOOP("Peek", "Open")));
        keys.emplace_back(QStringLiteral("P"), peekWords(QT_TRANSLATE_NOOP("Peek", "Card")));
    }
    keys.emplace_back(peekWords(QT_TRANSLATE_NOOP("Peek", "Esc")), peekWords(QT_TRANSLATE_NOOP("Peek", "Close")));
    return keys;
}

}  // namespace

double paintPeek(QPainter* painter, double width, const RosterRow& row, const Theme& theme, RosterReach reach)
{
    PeekWriter writer(painter, width, theme);
    writer.line(row.name, theme.font(common::TextStyle::Section), theme.ink, 22);
    writer.smallLine(row.detail);
    writer.smallLine(peekWords(QT_TRANSLATE_NOOP("Peek", "Coach %1")).arg(row.coachName));
    if (!row.cautions.isEmpty()) {
        writer.rule();
        for (const QString& caution : row.cautions) {
            writer.caution(caution);
        }
    }
    writer.rule();
    const QString next = row.position.next ? peekWords(QT_TRANSLATE_NOOP("Peek", "Next: %1, %2")).arg(row.when, row.where) : row.when;
    writer.line(next, theme.font(common::TextStyle::Small), theme.ink, kPeekLine);
    writer.smallLine(row.lastCame.isEmpty() ? common::attendanceText(row.attendance)
                                            : row.lastCame + QStringLiteral(", ") + common::attendanceText(row.attendance));
    if (reach == RosterReach::Training) {
        writeLifts(writer, row);
    }
    writer.rule();
    writer.keys(peekKeys(reach));
    writer.skip(kPeekEdge - 4);
    return writer.height();
}

}  // namespace chalk::ui::roster
