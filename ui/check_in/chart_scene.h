#pragma once

#include "core/checkin/check_in.h"

#include <QString>

#include <optional>
#include <vector>

namespace chalk::ui::check_in {

/// How a chart shows its points.
enum class ChartStyle : std::uint8_t {
    Band,    ///< a line with a range around it
    Bars,    ///< one a week
    Lines,
    Stages,  ///< a row per lift
    Marks    ///< a square per session
};

/// Days that every chart shades alike.
enum class ShadeKind : std::uint8_t { LighterWeek, Layoff, Pain, Flat };

struct ChartShade {
    ShadeKind kind = ShadeKind::LighterWeek;
    checkin::DayRange days;

    bool operator==(const ChartShade&) const = default;
};

/// A value of a day, or of the week that begins on it.
struct ChartPoint {
    base::Date date;
    double value = 0;
    std::optional<double> low;   ///< of a range
    std::optional<double> high;
    QString spoken;              ///< `Mon 23 Nov: 85 kg, likely 83 to 87 kg`
};

struct ChartSeries {
    QString name;
    std::vector<ChartPoint> points;  ///< by date
    bool isDashed = false;
};

struct ChartRow {
    QString name;
    bool isChosen = false;
    std::vector<checkin::StageStretch> stages;
};

/// The axis of values: `low` to `high`, a line every `step`.
struct ValueAxis {
    double low = 0;
    double high = 1;
    double step = 1;

    bool operator==(const ValueAxis&) const = default;
};

/// All that a chart draws, says and exports; the same weeks on every x axis.
struct ChartScene {
    ChartStyle style = ChartStyle::Band;
    QString key;      ///< for the name of a file: `estimated-single`
    QString title;
    QString note;     ///< beside the title: what is counted, and its unit
    QString unit;     ///< of the values in an export
    checkin::DayRange days;
    std::vector<ChartShade> shades;
    std::vector<ChartSeries> series;
    std::vector<ChartRow> rows;
    ValueAxis axis;
    QString flat;     ///< above the flat stretch: `4 weeks flat`
    QString last;     ///< at the end of the line: `85 kg`
    QString lastRange;
    QString missing;  ///< why nothing is drawn; empty where something is
    QString text;     ///< below the marks
};

/// The widest of steps 1, 2, 2.5 and 5 by tens that gives about `lines` lines from `low` to `high`; both ends on a line.
[[nodiscard]] ValueAxis valueAxisFor(double low, double high, int lines);

/// The estimated best single with its likely range: estimated, never tested.
[[nodiscard]] ChartScene singleScene(const checkin::ClientEvidence& client, const checkin::LiftEvidence& lift);
/// Load × repetitions by week.
[[nodiscard]] ChartScene volumeScene(const checkin::ClientEvidence& client, const checkin::LiftEvidence& lift);
/// The stages of all lifts; `lift` is the chosen one.
[[nodiscard]] ChartScene stagesScene(const checkin::ClientEvidence& client, const checkin::LiftEvidence& lift);
/// Sleep and soreness, 1 to 5.
[[nodiscard]] ChartScene readinessScene(const checkin::ClientEvidence& client, const checkin::LiftEvidence& lift);
/// Which sessions the client came to, and how the last targets went.
[[nodiscard]] ChartScene sessionsScene(const checkin::ClientEvidence& client, const checkin::LiftEvidence& lift);

}  // namespace chalk::ui::check_in
