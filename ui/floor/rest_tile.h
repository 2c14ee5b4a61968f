#pragma once

#ifndef Q_MOC_RUN  // moc stumbles over the standard library behind it
#include "ui/floor/rest_timers.h"
#endif

#include <QWidget>

namespace chalk::ui::common {
class ActionButton;
class Look;
struct Theme;
}  // namespace chalk::ui::common

namespace chalk::ui::floor {

/// How large the digits are: 48 px among others in the strip, 64 px alone in it, on the wall as large as the tile lets them be.
enum class RestTileSize : std::uint8_t { Row, Alone, Wall };

/// One client's rest: the time, whose it is, a bar that empties second by second, and the keys to hold, restart and stop it. When
/// it is over the tile is filled and says so. Nothing in it blinks or glides. Screen readers are told when a rest starts, is held,
/// goes on and is over, not at every second.
class RestTile : public QWidget {
    Q_OBJECT

public:
    explicit RestTile(const common::Look& look, QWidget* parent = nullptr);

    void setRest(const Rest& rest);
    void setTileSize(RestTileSize size);
    [[nodiscard]] const Rest& rest() const { return m_rest; }
    /// `1:20`: what is left, or how much it is over by.
    [[nodiscard]] QString digits() const;
    /// `of 2:30`, `held`, `over by`.
    [[nodiscard]] QString word() const;
    /// The size of the digits on the screen, in pixels.
    [[nodiscard]] double digitsPx() const;

    /// The least width of a tile in a row, in pixels.
    [[nodiscard]] static int rowWidth(const common::Theme& theme);
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

Q_SIGNALS:
    void holdAsked(chalk::base::ClientId client);
    void restartAsked(chalk::base::ClientId client);
    void stopAsked(chalk::base::ClientId client);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void dress();
    void nameButtons();
    void announce();
    void paintTime(QPainter& painter) const;
    void paintName(QPainter& painter) const;
    void paintBar(QPainter& painter) const;
    [[nodiscard]] QRectF timeRect() const;
    [[nodiscard]] QRectF nameRect() const;
    [[nodiscard]] QRectF barRect() const;
    [[nodiscard]] double namePx() const;

    const common::Look& m_look;
    Rest m_rest;
    RestTileSize m_size = RestTileSize::Row;
    common::ActionButton* m_hold;
    common::ActionButton* m_again;
    common::ActionButton* m_stop;
};

}  // namespace chalk::ui::floor
