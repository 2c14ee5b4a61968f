#include "ui/floor/rest_timer_strip.h"

#include "ui/common/action_button.h"
#include "ui/common/look.h"
#include "ui/floor/rest_tile.h"
#include "ui/floor/rest_watch.h"

#include <QBoxLayout>
#include <QGridLayout>
#include <QLabel>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace chalk::ui::floor {

namespace {

constexpr int kTileGap = 12;
constexpr int kStripSide = 24;  ///< the margin of a page

}  // namespace

RestTimerStrip::RestTimerStrip(const common::Look& look, RestWatch& watch, RestShape shape, QWidget* parent)
    : QWidget(parent), m_look(look), m_watch(watch), m_shape(shape)
{
    build();
    setFocusPolicy(shape == RestShape::Wall ? Qt::ClickFocus : Qt::NoFocus);
    setAccessibleName(shape == RestShape::Wall ? tr("Rests on the whole page") : tr("Rests"));
    hide();
    connect(&watch, &RestWatch::changed, this, &RestTimerStrip::showRests);
    connect(&look, &common::Look::changed, this, &RestTimerStrip::showRests);
    dressButtons();
}

void RestTimerStrip::build()
{
    const bool isWall = m_shape == RestShape::Wall;
    auto* whole = new QBoxLayout(isWall ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight, this);
    whole->setContentsMargins(kStripSide, isWall ? 16 : 0, kStripSide, isWall ? 24 : 12);
    whole->setSpacing(kTileGap);
    m_grid = new QGridLayout;
    m_grid->setSpacing(kTileGap);
    m_tools = new QBoxLayout(isWall ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
    m_tools->setSpacing(4);
    if (isWall) {
        whole->addLayout(m_tools);
    }
    whole->addLayout(m_grid, 1);
    if (!isWall) {
        whole->addLayout(m_tools);
    }
    buildTools(isWall);
}

void RestTimerStrip::buildTools(bool isWall)
{
    m_more = new QLabel(isWall ? tr("Rests") : QString(), this);
    m_more->setProperty("role", isWall ? QStringLiteral("title") : QStringLiteral("caption"));
    m_heard = new common::ActionButton(m_look, QString(), this);
    m_other = new common::ActionButton(m_look, isWall ? tr("Back to the floor") : QString(), this);
    m_other->setIconName(isWall ? QStringLiteral("floor") : QStringLiteral("fill-page"));
    m_other->setAccessibleName(isWall ? tr("Back to the floor, F11") : tr("Rests on the whole page, F11"));
    m_other->setToolTip(m_other->accessibleName());
    connect(m_other, &QPushButton::clicked, this, &RestTimerStrip::otherShapeAsked);
    connect(m_heard, &QPushButton::clicked, this, [this] { m_watch.setHeard(!m_watch.isHeard()); });
    if (isWall) {
        m_other->setKeyText(tr("F11"));
        m_tools->addWidget(m_more);
        m_tools->addStretch(1);
        m_tools->addWidget(m_heard);
        m_tools->addWidget(m_other);
        return;
    }
    m_other->setButtonSize(common::ButtonSize::Small);
    m_heard->setButtonSize(common::ButtonSize::Small);
    m_tools->addWidget(m_other, 0, Qt::AlignRight);
    m_tools->addWidget(m_heard, 0, Qt::AlignRight);
    m_tools->addWidget(m_more, 0, Qt::AlignRight);
    m_tools->addStretch(1);
}

void RestTimerStrip::dressButtons()
{
    const bool isHeard = m_watch.isHeard();
    m_heard->setIconName(isHeard ? QStringLiteral("heard") : QStringLiteral("silent"));
    m_heard->setAccessibleName(isHeard ? tr("The end of a rest is heard; make it silent, Alt+B") : tr("The end of a rest is silent; let it be heard, Alt+B"));
    m_heard->setToolTip(m_heard->accessibleName());
}

QString RestTimerStrip::moreText() const
{
    return m_shape == RestShape::Row ? m_more->text() : QString();
}

RestTile* RestTimerStrip::tileOf(const Rest& rest)
{
    RestTile*& tile = m_tiles[rest.plan.client];
    if (tile == nullptr) {
        tile = new RestTile(m_look, this);
        connect(tile, &RestTile::holdAsked, &m_watch, &RestWatch::holdOrGoOn);
        connect(tile, &RestTile::restartAsked, &m_watch, &RestWatch::restart);
        connect(tile, &RestTile::stopAsked, &m_watch, &RestWatch::stop);
    }
    return tile;
}

int RestTimerStrip::shownOf(int count) const
{
    if (m_shape == RestShape::Wall || count < 2) {
        return count;
    }
    const int tools = std::max(m_other->sizeHint().width(), m_more->fontMetrics().horizontalAdvance(tr("%1 more").arg(count)));
    const int room = width() - 2 * kStripSide - kTileGap - tools;
    return std::clamp((room + kTileGap) / (RestTile::rowWidth(m_look.theme()) + kTileGap), 1, count);
}

void RestTimerStrip::dropTiles(const std::vector<Rest>& rests)
{
    for (auto at = m_tiles.begin(); at != m_tiles.end();) {
        const auto has = [client = at->first](const Rest& rest) { return rest.plan.client == client; };
        if (std::any_of(rests.begin(), rests.end(), has)) {
            ++at;
            continue;
        }
        RestTile* gone = at->second;
        at = m_tiles.erase(at);
        const bool hadFocus = gone->isAncestorOf(focusWidget());
        m_grid->removeWidget(gone);
        std::erase(m_shown, gone);
        gone->hide();
        gone->deleteLater();  // its own button may have asked for it
        if (hadFocus) {
            Q_EMIT focusLost();
        }
    }
}

void RestTimerStrip::layTiles(const std::vector<RestTile*>& tiles)
{
    if (tiles == m_shown) {
        return;
    }
    for (RestTile* tile : m_shown) {
        m_grid->removeWidget(tile);
    }
    m_shown = tiles;
    const int count = static_cast<int>(tiles.size());
    const int columns = std::max(1, m_shape == RestShape::Row ? count : static_cast<int>(std::ceil(std::sqrt(count))));
    for (int i = 0; i < count; ++i) {
        m_grid->addWidget(tiles[static_cast<std::size_t>(i)], i / columns, i % columns);
    }
    for (int i = 0; i < m_grid->columnCount(); ++i) {
        m_grid->setColumnStretch(i, i < columns ? 1 : 0);
    }
    for (const auto& [client, tile] : m_tiles) {
        tile->setVisible(std::find(tiles.begin(), tiles.end(), tile) != tiles.end());
    }
}

RestTileSize RestTimerStrip::tileSize(int count) const
{
    if (m_shape == RestShape::Wall) {
        return RestTileSize::Wall;
    }
    return count == 1 && !m_isTight ? RestTileSize::Alone : RestTileSize::Row;
}

void RestTimerStrip::setTight(bool isTight)
{
    if (isTight != m_isTight) {
        m_isTight = isTight;
        showRests();
    }
}

void RestTimerStrip::showRests()
{
    std::vector<Rest> rests = m_watch.timers().rests();
    dressButtons();
    dropTiles(rests);
    const int count = static_cast<int>(rests.size());
    const int shown = shownOf(count);
    if (m_shape == RestShape::Row) {
        m_more->setText(shown < count ? tr("%1 more").arg(count - shown) : QString());
    }
    rests.resize(static_cast<std::size_t>(shown));
    // Each client's rest keeps its place, whichever is the most pressing.
    std::sort(rests.begin(), rests.end(), [](const Rest& a, const Rest& b) { return a.plan.client < b.plan.client; });
    std::vector<RestTile*> tiles;
    for (const Rest& rest : rests) {
        RestTile* tile = tileOf(rest);
        tile->setTileSize(tileSize(count));
        tile->setRest(rest);
        tiles.push_back(tile);
    }
    layTiles(tiles);
    if (m_shape == RestShape::Row) {
        setVisible(count > 0);
    }
}

void RestTimerStrip::paintEvent(QPaintEvent* /*event*/)
{
    if (m_shape == RestShape::Wall) {
        QPainter(this).fillRect(rect(), m_look.theme().win);
    }
}

void RestTimerStrip::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    showRests();
}

}  // namespace chalk::ui::floor
