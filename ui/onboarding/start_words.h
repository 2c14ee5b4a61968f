#pragma once

#include "core/progression/screen_start.h"
#include "core/screens/screen_catalogue.h"

#include <QString>
#include <QStringList>

namespace chalk::ui::onboarding {

/// `Start the squat at Pattern.`, `The squat is on hold.`, `The squat is not screened.`
[[nodiscard]] QString startHeadline(const progression::PatternStart& start);
/// Why, in numbers: `4 of 6 points met, 2 partly. Every point has to be met before the pauses count.`
[[nodiscard]] QString startReason(const progression::PatternStart& start, const screens::PatternGuide& guide);
/// What loaded work still lacks, a sentence each.
[[nodiscard]] QStringList needSentences(const progression::PatternStart& start);
/// `2 × 10 each side`, `2 × 15 s`.
[[nodiscard]] QString doseText(const screens::Dose& dose);
/// `Side`, `Front`.
[[nodiscard]] QString viewName(screens::ViewFrom from);
/// Why another stage cannot be chosen.
[[nodiscard]] QString choiceFaultText(progression::ChoiceFault fault);

}  // namespace chalk::ui::onboarding
