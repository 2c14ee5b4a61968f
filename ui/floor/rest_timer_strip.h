#pragma once

#ifndef Q_MOC_RUN  // moc stumbles over the standard library behind it
#include "ui/floor/rest_timers.h"
#endif

#include <QWidget>

#include <map>
#include <vector>

class QBoxLayout;
class QGridLayout;
class QLabel;

namespace chalk::ui::common {
class ActionButton;
class Look;
}  // namespace chalk::ui::common

namespace chalk::ui::floor {

class RestTile;
class RestWatch;
enum class RestTileSize : std::uint8_t;

/// Where the rests are shown: in a row above the work, or on the whole page, to be read across the room.
enum class RestShape : std::uint8_t { Row, Wall };

/// The rests under way, side by side, each client's in its place. A row takes no room while there is none; one that is too short
/// for all shows the most pressing and says how many more there are.
class RestTimerStrip : public QWidget {
    Q_OBJECT

public:
    /// Both outlive the strip.
    RestTimerStrip(const common::Look& look, RestWatch& watch, RestShape shape, QWidget* parent = nullptr);

    /// Where there is little room below, one rest alone is no larger than one among others.
    void setTight(bool isTight);
    /// On show, from the left.
    [[nodiscard]] const std::vector<RestTile*>& shownTiles() const { return m_shown; }
    /// `2 more`; empty where all are shown.
    [[nodiscard]] QString moreText() const;

Q_SIGNALS:
    /// The other shape is wanted.
    void otherShapeAsked();
    /// The rest whose button had the focus is over and gone.
    void focusLost();

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void build();
    void buildTools(bool isWall);
    void showRests();
    void dressButtons();
    [[nodiscard]] RestTileSize tileSize(int count) const;
    void dropTiles(const std::vector<Rest>& rests);
    void layTiles(const std::vector<RestTile*>& tiles);
    RestTile* tileOf(const Rest& rest);
    /// How many of `count` tiles are shown.
    [[nodiscard]] int shownOf(int count) const;

    const common::Look& m_look;
    RestWatch& m_watch;
    RestShape m_shape;
    bool m_isTight = false;
    std::map<base::ClientId, RestTile*> m_tiles;
    std::vector<RestTile*> m_shown;
    QGridLayout* m_grid = nullptr;
    QBoxLayout* m_tools = nullptr;
    QLabel* m_more = nullptr;
    common::ActionButton* m_other = nullptr;
    common::ActionButton* m_heard = nullptr;
};

}  // namespace chalk::ui::floor
