#pragma once

#include "core/screens/field_tests.h"

#include <array>
#include <span>

namespace chalk::screens {

/// 30-second chair stand: the average ranges of Rikli and Jones; their lower bounds are the limits of CDC STEADI, 30-Second Chair Stand.
struct ChairStandRow {
    int ageFrom;
    int ageTo;
    int menFrom;
    int menTo;
    int womenFrom;
    int womenTo;
};

/// Push-ups: the lower bound of each class (CSEP and ACSM tables). Men on the toes, women on the knees. Where an older print has another
/// limit, the repetitions from `disputedFrom` up to (not with) `disputedTo` fall into different classes by print.
struct PushUpRow {
    clients::NormSex sex;
    int ageFrom;
    int ageTo;
    int fair;
    int good;
    int veryGood;
    int excellent;
    int disputedFrom;
    int disputedTo;
};

/// Single-leg stance, eyes open: the mean in whole seconds (Springer 2007; tenths are not confirmed, and left out).
struct StanceRow {
    int ageFrom;
    int ageTo;
    int meanSeconds;
    bool doSourcesDisagree;
};

/// Sit-and-reach targets at single ages on a scale that shows 38 cm (15 in) at the feet, in cm.
struct ReachRow {
    int age;
    int menCm;
    int womenCm;
};

/// Plank of college students, mean and standard deviation in seconds (Strand 2014).
struct PlankRow {
    int meanSeconds;
    int deviationSeconds;
};

/// The highest age of a row that is open upwards.
inline constexpr int kOldest = 120;

[[nodiscard]] std::span<const ChairStandRow> chairStandRows();
[[nodiscard]] std::span<const PushUpRow> pushUpRows();
[[nodiscard]] std::span<const StanceRow> stanceRows();
[[nodiscard]] std::span<const ReachRow> reachRows();
[[nodiscard]] PlankRow plankRow(clients::NormSex sex);

}  // namespace chalk::screens
