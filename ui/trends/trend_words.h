#pragma once

#include "core/store/trends_reader.h"

#include <QString>
#include <QStringList>

namespace chalk::ui::trends {

/// What stands in the place of a chart: `Two more sessions`, and what starts it and when.
struct GapWords {
    QString headline;
    QString text;

    bool operator==(const GapWords&) const = default;
};

/// `10 778`: whole, with narrow spaces between thousands.
[[nodiscard]] QString wholeText(double number);
/// `7 Sep – 29 Nov 2026`.
[[nodiscard]] QString rangeText(const checkin::DayRange& days);
/// `Carry`, short enough for a head of a column.
[[nodiscard]] QString shortPatternName(lifts::Pattern pattern);

[[nodiscard]] GapWords volumeGapWords(const checkin::Trends& trends);
/// Of the studio: nobody has lifted yet.
[[nodiscard]] GapWords studioVolumeGapWords();
[[nodiscard]] GapWords singlesGapWords(const checkin::Trends& trends);
[[nodiscard]] GapWords targetsGapWords(const checkin::Trends& trends);
[[nodiscard]] GapWords monotonyGapWords(const checkin::Trends& trends);

/// Under the chart of monotony: what the last number says, or why the last finished week has none, with the band's source.
[[nodiscard]] QString monotonyNote(const checkin::Trends& trends);
/// The acute to chronic ratio, never without its criticism; or why there is none.
[[nodiscard]] QString ratioNote(const checkin::Trends& trends);
/// How carries are counted: `Carries: 4 m count as one rep.`; empty without a carry.
[[nodiscard]] QString carriesNote(const checkin::Trends& trends);
/// `Total 10 778, up 1 % on week 46.` of a week against the one before it; where it is not over it says so.
[[nodiscard]] QString totalNote(const std::vector<checkin::TrendWeek>& weeks, std::size_t week, base::MassUnit unit);
/// `80 % (8 of 10)`, or `none counted`.
[[nodiscard]] QString attendanceText(const analysis::Attendance& attendance);
/// `−12 %`, `new`, `back`, or a dash.
[[nodiscard]] QString changeText(const checkin::LoadTrend& trend);
/// `3 × 5–8`.
[[nodiscard]] QString targetText(const checkin::TargetStep& step);
/// `5→8`, of the first and the last step, or `8` where they are alike.
[[nodiscard]] QString repsCourse(const checkin::LiftTrend& lift);

}  // namespace chalk::ui::trends
