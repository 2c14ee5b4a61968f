#include "ui/board/evidence_list.h"

#include "ui/board/evidence_words.h"
#include "ui/board/grid_rows.h"
#include "ui/board/painted.h"
#include "ui/common/icon_store.h"
#include "ui/common/look.h"

#include <QGridLayout>
#include <QLabel>
#include <QPainter>

namespace chalk::ui::board {

namespace {

constexpr double kMarkSide = 16;

QSizeF markSize(const common::Theme& theme)
{
    return {theme.scaled(kMarkSide), theme.scaled(kMarkSide + 2)};
}

void paintMark(QPainter& painter, const QRectF& rect, bool isMet, const common::Theme& theme)
{
    const double side = theme.scaled(kMarkSide);
    const QRectF square(rect.left(), rect.top() + 1, side, side);
    if (isMet) {
        common::paintIcon(painter, square, QStringLiteral("check"), theme.ok, theme);
        return;
    }
    painter.setPen(QPen(theme.ink3, 1.6));
    painter.setBrush(Qt::NoBrush);
    painter.drawRoundedRect(square.adjusted(2, 2, -2, -2), 3, 3);
}

}  // namespace

EvidenceList::EvidenceList(const common::Look& look, QWidget* parent) : QWidget(parent), m_look(look), m_grid(new QGridLayout(this))
{
    m_grid->setContentsMargins(0, 0, 0, 0);
    m_grid->setHorizontalSpacing(8);
    m_grid->setVerticalSpacing(5);
    m_grid->setColumnStretch(1, 1);
}

void EvidenceList::setLines(const std::vector<EvidenceLine>& lines)
{
    clearRows(*m_grid);
    for (std::size_t i = 0; i < lines.size(); ++i) {
        const EvidenceLine& line = lines[i];
        const int row = static_cast<int>(i);
        auto* mark = new Painted(m_look, this);
        mark->setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
        mark->setPicture(
            markSize,
            [isMet = line.isMet](QPainter& painter, const QRectF& rect, const common::Theme& theme) {
                paintMark(painter, rect, isMet, theme);
            },
            line.isMet ? tr("met") : tr("not met yet"));
        m_grid->addWidget(mark, row, 0, Qt::AlignTop);
        m_grid->addWidget(rowLabel(line.text, "small", true, this), row, 1, Qt::AlignTop);
        QLabel* fact = rowLabel(line.fact, line.isTarget ? "smallStrong" : "muted", false, this);
        fact->setAlignment(Qt::AlignRight | Qt::AlignTop);
        m_grid->addWidget(fact, row, 2, Qt::AlignTop);
    }
}

}  // namespace chalk::ui::board
