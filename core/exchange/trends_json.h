#pragma once

#include "core/checkin/trends.h"

#include <QJsonObject>

namespace chalk::exchange {

/// A client's trends: `client`, `unit` (`kg` or `lb`), `from`, `to`, `weeks`, `lifts`, `load_ratio`, `missing` and `is_learning`.
/// A week has `week`, `monday`, `over`, `load_volume` (by pattern, and `total`), `lighter_lifts`, `came`, `counted`, `cancelled_in_time`, `session_load`, `rated`,
/// `unrated`, `monotony`, `strain` and `no_monotony`, which says why there is none. A lift has `name`, `exercise`, `pattern`, `stage`, `measure`,
/// `unit`, `estimated_singles` (`date`, `low`, `median`, `high`; estimates, not tested maxima) and `targets` (`from`, `sets`, `reps_low`, `reps_high`,
/// `rest`, in seconds). `load_ratio` has `monday`, `uncoupled`, `coupled` and `criticism`, the papers that advise against it, or `none`, why there is none.
/// `missing` has for `load_volume`, `estimated_singles`, `targets` and `monotony` what each waits for: `have`, `need`, `first_on` and `lift`; null where
/// nothing is missing.
[[nodiscard]] QJsonObject toJson(const checkin::Trends& trends, const std::string& client, base::MassUnit unit);

/// The studio's: `from`, `to`, `unit`, `weeks` as above, and `clients` by name with `load_volume` over all weeks, `load_change` in per cent (null where
/// there is nothing to compare with), `came`, `counted` and the `monotony` of the last finished week.
[[nodiscard]] QJsonObject toJson(const checkin::StudioTrends& trends);

}  // namespace chalk::exchange
