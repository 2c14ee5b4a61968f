#include "ui/board/initials_tile.h"

#include "ui/board/painted.h"

#include <QPainter>

namespace chalk::ui::board {

namespace {

constexpr double kTileSide = 40;

}  // namespace

void setInitials(Painted& tile, const QString& initials)
{
    tile.setPicture([](const common::Theme& theme) { return QSizeF(theme.scaled(kTileSide), theme.scaled(kTileSide)); },
                    [initials](QPainter& painter, const QRectF& rect, const common::Theme& theme) {
                        painter.setPen(Qt::NoPen);
                        painter.setBrush(theme.chalk);
                        painter.drawRoundedRect(rect, 8, 8);
                        painter.setFont(theme.font(14, QFont::DemiBold));
                        painter.setPen(theme.chalkInk);
                        painter.drawText(rect, Qt::AlignCenter, initials);
                    },
                    initials);
}

}  // namespace chalk::ui::board
