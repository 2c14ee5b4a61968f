#pragma once

#include "core/plateau/judgement.h"
#include "core/plateau/logged_exposure.h"

#include <span>
#include <vector>

namespace chalk::plateau {

/// The last segment of a cleaned log up to a day, that day included; empty where nothing was done by then.
[[nodiscard]] std::span<const CleanExposure> segmentOn(std::span<const CleanExposure> log, base::Date day);

/// Judges a lift on a day by its log, which `cleaned` made: two witnesses, the gates before them and the veto after them. What comes after
/// the day changes nothing.
[[nodiscard]] Judgement judge(std::span<const CleanExposure> log, const CheckDay& check);

}  // namespace chalk::plateau
