#include "core/screens/norm_tables.h"

namespace chalk::screens {

namespace {

using clients::NormSex;

constexpr std::array<ChairStandRow, 7> kChairStand{{
    {60, 64, 14, 19, 12, 17},
    {65, 69, 12, 18, 11, 16},
    {70, 74, 12, 17, 10, 15},
    {75, 79, 11, 17, 10, 15},
    {80, 84, 10, 15, 9, 14},
    {85, 89, 8, 14, 8, 13},
    {90, 94, 7, 12, 4, 11},
}};

constexpr std::array<PushUpRow, 12> kPushUps{{
    {NormSex::Male, 15, 19, 18, 23, 29, 39, 0, 0},
    {NormSex::Male, 20, 29, 17, 22, 29, 36, 0, 0},
    {NormSex::Male, 30, 39, 12, 17, 22, 30, 0, 0},
    {NormSex::Male, 40, 49, 10, 13, 17, 25, 22, 25},
    {NormSex::Male, 50, 59, 7, 10, 13, 21, 0, 0},
    {NormSex::Male, 60, 69, 5, 8, 11, 18, 4, 5},
    {NormSex::Female, 15, 19, 12, 18, 25, 33, 0, 0},
    {NormSex::Female, 20, 29, 10, 15, 21, 30, 0, 0},
    {NormSex::Female, 30, 39, 8, 13, 20, 27, 0, 0},
    {NormSex::Female, 40, 49, 5, 11, 15, 24, 0, 0},
    {NormSex::Female, 50, 59, 2, 7, 11, 21, 1, 2},
    {NormSex::Female, 60, 69, 2, 5, 12, 17, 1, 2},
}};

constexpr std::array<StanceRow, 6> kStance{{
    {18, 39, 43, false},
    {40, 49, 40, false},
    {50, 59, 37, false},
    {60, 69, 27, false},
    {70, 79, 15, true},
    {80, kOldest, 6, false},
}};

constexpr std::array<ReachRow, 5> kReach{{{25, 50, 55}, {35, 47, 52}, {45, 44, 51}, {55, 42, 48}, {65, 39, 44}}};

}  // namespace

std::span<const ChairStandRow> chairStandRows()
{
    return kChairStand;
}

std::span<const PushUpRow> pushUpRows()
{
    return kPushUps;
}

std::span<const StanceRow> stanceRows()
{
    return kStance;
}

std::span<const ReachRow> reachRows()
{
    return kReach;
}

PlankRow plankRow(NormSex sex)
{
    return sex == NormSex::Male ? PlankRow{124, 72} : PlankRow{83, 63};
}

}  // namespace chalk::screens
