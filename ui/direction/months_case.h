#pragma once

#include "core/checkin/progress_report.h"
#include "core/lifts/catalogue.h"
#include "core/screens/pattern_screen.h"
#include "core/store/database.h"
#include "ui/common/plateau_words.h"

#include <QString>
#include <QStringList>

#include <optional>
#include <string>
#include <vector>

namespace chalk::ui::direction {

/// A lift that has stalled, with what the weekly check-in says of it.
struct StalledMonth {
    std::string name;
    common::VerdictWords words;

    bool operator==(const StalledMonth&) const = default;
};

/// What the months since the first load achieved.
struct MonthsCase {
    checkin::ProgressReport report;
    std::optional<screens::MovementScreen> screenThen;   ///< the first one that was finished
    std::optional<screens::MovementScreen> screenNow;    ///< the last one, where it is another
    std::vector<StalledMonth> stalls;
};

/// Reads them over a connection of its own, so that it can run beside the window's thread: lifts are judged, which may take a while.
/// `from` is not after `today`.
[[nodiscard]] store::Result<MonthsCase> readMonths(const store::Access& access, const lifts::Catalogue& catalogue, base::ClientId client, base::Date from,
                                                   base::Date today);

/// For each lift that carried load: its name, where it stood, where it stands, how much the load rose. `40 kg, 3 × 8, rest 3:00`.
[[nodiscard]] std::vector<QStringList> monthLiftRows(const checkin::ProgressReport& report);
/// For each pattern that was screened: its name, then, now. `4 of 6 points met, pain 3`; `not screened again`.
[[nodiscard]] std::vector<QStringList> monthScreenRows(const MonthsCase& months);
/// `Came to 40 of 44 sessions.` and the most pain that was named.
[[nodiscard]] QString monthAttendanceText(const checkin::ProgressReport& report);

}  // namespace chalk::ui::direction
