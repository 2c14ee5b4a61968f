#pragma once

#include "core/checkin/trends.h"

#include <QByteArray>

namespace chalk::exchange {

/// The numbers of a client's trends as CSV (RFC 4180), UTF-8, one a record, under the header `client,week,day,figure,of,value,low,high,unit`: the ISO
/// week; a day, which is the Monday of a week's number; a figure of checkin::keyOf(FigureKind); the pattern of a load volume, or the lift's name;
/// the value and, where it is a range, its ends, with ten digits; and what it is counted in: `kg*reps`, `sessions`, `au` for arbitrary units, `kg`,
/// `sets`, `reps`, `s`, or nothing. Pounds stand as `lb`.
[[nodiscard]] QByteArray trendsCsvOf(const checkin::Trends& trends, const std::string& client, base::MassUnit unit);

/// The same of everybody together, with an empty client, and then for each client, on the first day of the weeks: `load_volume` over all weeks, `came`
/// and `counted` over all weeks, and on the Monday of the last finished week its `monotony`.
[[nodiscard]] QByteArray trendsCsvOf(const checkin::StudioTrends& trends);

}  // namespace chalk::exchange
