#pragma once

#include "core/checkin/progress_report.h"

#include <QString>
#include <QStringList>

#include <vector>

namespace chalk::ui::print {

// What a progress report says, in a client's words.

/// A large figure and the lines below it.
struct ReportFigure {
    QString figure;
    QStringList below;
};

/// `31 Aug – 22 Nov 2026 · 12 weeks · prepared by Ines`.
[[nodiscard]] QString reportSpan(const checkin::ProgressReport& report);
/// `You came to 22 of 24 sessions. Your trap-bar deadlift went from 85 to 105 kg, with no pain above 2 of 10.`
[[nodiscard]] QString reportSentence(const checkin::ProgressReport& report);
/// At most four: the lifts that rose most, then those that moved another number; none without work.
[[nodiscard]] std::vector<ReportFigure> reportFigures(const checkin::ProgressReport& report);
/// `Back squat: 80 kg, 3 × 8.`, one for each lift that something is due of.
[[nodiscard]] QStringList nextTexts(const checkin::ProgressReport& report);
/// `85 → 105 kg`.
[[nodiscard]] QString riseText(const checkin::ReportLift& lift);
/// `77.5 kg`, `2 × 12 kg`, `bodyweight`.
[[nodiscard]] QString workLoadText(const checkin::ReportLift& lift, base::Load load);

}  // namespace chalk::ui::print
