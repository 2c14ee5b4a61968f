#pragma once

#include "core/progression/rescreen.h"
#include "core/screens/screen_catalogue.h"

#include <QString>

namespace chalk::ui::common {
struct Theme;
}

namespace chalk::ui::onboarding {

/// `met`, `partly`, `not met`, `not judged`.
[[nodiscard]] QString markWord(screens::Mark mark);
/// `held 3.2 s`, `shaky`, `not tried`.
[[nodiscard]] QString pauseWord(const screens::PauseTry& pause);
/// `1 Pattern`, `on hold`, `not screened`.
[[nodiscard]] QString startWord(const progression::PatternStart& start);
/// `better`, `as before`, `worse`; empty where it cannot be compared.
[[nodiscard]] QString changeWord(progression::Change change);
/// Why a new screen is due, in a sentence.
[[nodiscard]] QString rescreenSentence(const progression::RescreenDue& due);
/// What a screen does to lifts that run already, by the rules.
[[nodiscard]] QString runningLiftsSentence();
/// Both screens side by side as a table: stages, then what was marked in both or in one of them. `catalogue` gives the points their words.
[[nodiscard]] QString comparisonHtml(const screens::MovementScreen& before, const screens::MovementScreen& after, const screens::ScreenCatalogue& catalogue,
                                     const progression::Policy& policy, const common::Theme& theme);

}  // namespace chalk::ui::onboarding
