#pragma once

#include "core/plateau/entry_mark.h"
#include "core/plateau/logged_exposure.h"

#include <cstddef>
#include <span>
#include <vector>

namespace chalk::plateau {

/// An exposure as the detector takes it.
struct CleanExposure {
    std::size_t row = 0;  ///< its place in the log it was made from
    base::Date date;
    progression::Stage stage = progression::Stage::BaseLoad;
    int segment = 0;      ///< counts variations, from 0
    int block = 0;        ///< counts stages within variations, from 0 on through the log
    double index = 0;     ///< see StrengthIndex
    double variance = 0;  ///< of the index
    bool followsPlan = false;  ///< of weeks: its lever is the single
    bool isUsed = false;       ///< for the trend
    bool isValid = false;      ///< for the lever
    bool isComplete = false;   ///< the target was met
    bool isLeverBest = false;  ///< a new best of its block in the lever of the stage: complete, steady, valid
    std::vector<EntryMark> marks;  ///< in the order of EntryMark

    [[nodiscard]] bool has(EntryMark mark) const;
};

/// Cleans a log row by row; what comes later changes nothing about what came before. The log is of one lift, by date; rows of one day keep
/// their order.
[[nodiscard]] std::vector<CleanExposure> cleaned(std::span<const LoggedExposure> log);

}  // namespace chalk::plateau
