#include "ui/week/week_geometry.h"

#include <algorithm>
#include <cmath>

namespace chalk::ui::week {

namespace {

using chalk::week::kDayMinutes;

// Pixels at a text size of 100 %.
constexpr double kAxisWidth = 44;
constexpr double kHeadHeight = 46;
constexpr double kFoldHeight = 16;
constexpr double kLeastHour = 38;
constexpr double kLeastLane = 46;
constexpr double kRackPitch = 8;
constexpr double kRackWidth = 6;
constexpr double kMostRackWidth = 34;
constexpr double kLineHeight = 15;
constexpr double kTightLine = 13.5;
constexpr double kTightHour = 52;  ///< below it lines of names stand closer
constexpr double kFoot = 6;
constexpr double kTopGap = 8;  ///< below the head: half of the first hour's caption
constexpr double kBlockGap = 3;
constexpr int kSlotStep = 15;
constexpr double kHourMinutes = 60;

}  // namespace

WeekGeometry::WeekGeometry(const WeekScene& scene, const common::Theme& theme, const QSizeF& room) : m_scene(scene)
{
    const double days = static_cast<double>(std::max<std::size_t>(1, scene.days.size()));
    const double lanes = static_cast<double>(std::max<std::size_t>(1, scene.coaches.size()));
    m_axis = theme.scaled(kAxisWidth);
    m_head = theme.scaled(kHeadHeight);
    m_fold = theme.scaled(kFoldHeight);
    m_rackPitch = scene.racks == 0 ? 0 : std::min(kRackPitch, kMostRackWidth / scene.racks);
    const double racks = m_rackPitch * scene.racks + kBlockGap;
    m_day = std::max((room.width() - m_axis - kBlockGap) / days, lanes * theme.scaled(kLeastLane) + racks);
    m_lane = (m_day - racks) / lanes;
    const double hours = (scene.to - scene.from - foldedMinutesBefore(scene.to)) / kHourMinutes;
    const double folds = m_fold * static_cast<double>(scene.folds.size());
    m_hour = std::max((room.height() - m_head - kTopGap - folds - kFoot) / std::max(1.0, hours), theme.scaled(kLeastHour));
    m_line = theme.scaled(m_hour < theme.scaled(kTightHour) ? kTightLine : kLineHeight);
    m_size = {m_axis + days * m_day + kBlockGap, m_head + kTopGap + hours * m_hour + folds + kFoot};
}

double WeekGeometry::foldedMinutesBefore(int minute) const
{
    double folded = 0;
    for (const FoldedHours& fold : m_scene.folds) {
        folded += std::clamp(minute, fold.from, fold.to) - fold.from;
    }
    return folded;
}

double WeekGeometry::yOf(int minute) const
{
    double bands = 0;
    for (const FoldedHours& fold : m_scene.folds) {
        bands += m_fold * (std::clamp(minute, fold.from, fold.to) - fold.from) / (fold.to - fold.from);
    }
    return m_head + kTopGap + bands + (minute - m_scene.from - foldedMinutesBefore(minute)) / kHourMinutes * m_hour;
}

QRectF WeekGeometry::dayRect(int index) const
{
    return {m_axis + index * m_day, 0, m_day, m_size.height()};
}

QRectF WeekGeometry::laneRect(int index, std::size_t coach) const
{
    return {m_axis + index * m_day + static_cast<double>(coach) * m_lane, m_head, m_lane, m_size.height() - m_head};
}

int WeekGeometry::indexOf(int weekday) const
{
    const auto at = std::find(m_scene.days.begin(), m_scene.days.end(), weekday);
    return at == m_scene.days.end() ? -1 : static_cast<int>(at - m_scene.days.begin());
}

QRectF WeekGeometry::blockRect(const WeekBlock& block) const
{
    const QRectF slot = slotRect({block.coach, block.start()}, block.to - block.from);
    const double width = slot.width() / block.columns;
    return {slot.left() + block.column * width, slot.top(), width - (block.columns > 1 ? 1 : 0), slot.height()};
}

QRectF WeekGeometry::slotRect(const chalk::week::Slot& slot, int minutes) const
{
    const int minute = slot.start % kDayMinutes;
    const QRectF lane = laneRect(indexOf(slot.start / kDayMinutes), slot.coach);
    const double top = yOf(minute) + 1;
    return {lane.left() + kBlockGap, top, lane.width() - kBlockGap - 1, yOf(std::min(minute + minutes, kDayMinutes)) - 1 - top};
}

QRectF WeekGeometry::hatchedRect(const HatchedSpan& span) const
{
    const int index = indexOf(span.day);
    const QRectF across = span.coach ? laneRect(index, *span.coach) : dayRect(index);
    const double top = yOf(span.from) + 2;
    return {across.left() + kBlockGap, top, across.width() - 2 * kBlockGap, yOf(span.to) - 2 - top};
}

QRectF WeekGeometry::rackRect(int weekday, int unit, int from, int to) const
{
    const QRectF day = dayRect(indexOf(weekday));
    const double left = day.right() - m_rackPitch * (m_scene.racks - unit) - 1;
    const double top = yOf(from) + 1;
    return {left, top, m_rackPitch * kRackWidth / kRackPitch, std::max(2.0, yOf(to) - 1 - top)};
}

int WeekGeometry::blockAt(const QPointF& at) const
{
    for (std::size_t i = 0; i < m_scene.blocks.size(); ++i) {
        if (indexOf(m_scene.blocks[i].day) >= 0 && blockRect(m_scene.blocks[i]).contains(at)) {
            return static_cast<int>(i);
        }
    }
    return -1;
}

std::optional<chalk::week::Slot> WeekGeometry::slotAt(const QPointF& at) const
{
    const int index = static_cast<int>(std::floor((at.x() - m_axis) / m_day));
    if (at.x() < m_axis || index >= static_cast<int>(m_scene.days.size()) || m_scene.coaches.empty()) {
        return std::nullopt;
    }
    const auto coach = static_cast<std::size_t>((at.x() - dayRect(index).left()) / m_lane);
    for (int minute = m_scene.from; minute < m_scene.to && coach < m_scene.coaches.size(); minute += kSlotStep) {
        const bool isFolded = std::any_of(m_scene.folds.begin(), m_scene.folds.end(), [minute](const FoldedHours& fold) { return fold.from <= minute && minute < fold.to; });
        if (!isFolded && yOf(minute) <= at.y() && at.y() < yOf(minute + kSlotStep)) {
            return chalk::week::Slot{coach, m_scene.days[static_cast<std::size_t>(index)] * kDayMinutes + minute};
        }
    }
    return std::nullopt;
}

}  // namespace chalk::ui::week
