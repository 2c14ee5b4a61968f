#pragma once

#include "ui/common/theme.h"
#include "ui/week/week_scene.h"

#include <QPointF>
#include <QRectF>
#include <QSizeF>

namespace chalk::ui::week {

/// Where the things of a scene lie, in pixels from the top left of its head. The one place for painting, clicks, drags and screen readers. The
/// whole room is used; where it is too small for text to be read the week is larger than the room.
class WeekGeometry {
public:
    WeekGeometry() = default;
    WeekGeometry(const WeekScene& scene, const common::Theme& theme, const QSizeF& room);

    [[nodiscard]] QSizeF size() const { return m_size; }
    [[nodiscard]] double axisWidth() const { return m_axis; }
    [[nodiscard]] double headHeight() const { return m_head; }
    /// Of one line of names.
    [[nodiscard]] double lineHeight() const { return m_line; }
    [[nodiscard]] double hourHeight() const { return m_hour; }
    /// Of a minute of the day; hours that are folded share their band.
    [[nodiscard]] double yOf(int minute) const;

    // A day by its place among those on show.
    [[nodiscard]] QRectF dayRect(int index) const;
    [[nodiscard]] QRectF laneRect(int index, std::size_t coach) const;
    /// Of a weekday; -1 where it is not on show.
    [[nodiscard]] int indexOf(int weekday) const;

    [[nodiscard]] QRectF blockRect(const WeekBlock& block) const;
    /// Where an hour of that coach would lie.
    [[nodiscard]] QRectF slotRect(const chalk::week::Slot& slot, int minutes) const;
    [[nodiscard]] QRectF hatchedRect(const HatchedSpan& span) const;
    [[nodiscard]] QRectF rackRect(int weekday, int unit, int from, int to) const;

    /// The block at a point; -1 for none.
    [[nodiscard]] int blockAt(const QPointF& at) const;
    /// The coach and the quarter of an hour at a point; nothing beside the lanes or in a fold.
    [[nodiscard]] std::optional<chalk::week::Slot> slotAt(const QPointF& at) const;

private:
    [[nodiscard]] double foldedMinutesBefore(int minute) const;

    WeekScene m_scene;
    QSizeF m_size;
    double m_axis = 0;
    double m_head = 0;
    double m_day = 0;
    double m_lane = 0;
    double m_rackPitch = 0;
    double m_hour = 0;
    double m_fold = 0;
    double m_line = 0;
};

}  // namespace chalk::ui::week
