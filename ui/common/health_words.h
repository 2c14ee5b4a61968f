#pragma once

#include "core/clients/health_intake.h"
#include "core/clients/health_question.h"
#include "core/clients/screening.h"
#include "core/lifts/exercise.h"
#include "ui/common/theme.h"

#include <QString>
#include <QStringList>

namespace chalk::ui::common {

// The health intake in words, in one place, so that the screen, the papers and the command line agree. The topics are those of published
// intakes; the sentences are ours. Nothing here is a diagnosis.

/// To be read aloud: `Do you get chest pain or tightness, at rest or when you move?`
[[nodiscard]] QString questionText(clients::HealthQuestion question);
/// `1` to `12`, as the questions are counted for people.
[[nodiscard]] int questionNumber(clients::HealthQuestion question);
/// `High blood pressure`, `Chest pain at rest`.
[[nodiscard]] QString markName(clients::HealthMark mark);
/// `Lower back`.
[[nodiscard]] QString cautionTagName(lifts::CautionTag tag);
/// `Light`.
[[nodiscard]] QString intensityName(clients::Intensity intensity);

/// `Ask doctor`: as short as the scale needs it.
[[nodiscard]] QString healthLevelName(clients::HealthLevel level);
[[nodiscard]] Signal healthLevelSignal(clients::HealthLevel level);
/// `Medical clearance recommended`; while answers are open `Not finished`.
[[nodiscard]] QString outcomeHeadline(const clients::HealthOutcome& outcome);
/// `Answers 1 and 3: high blood pressure, breathless on light effort. Together they call for a doctor’s view before any training.`
[[nodiscard]] QString outcomeReason(const clients::HealthOutcome& outcome);
/// The readings above their limits: `heart rate 110 a minute (limit 100)`.
[[nodiscard]] QStringList restingWarningTexts(const clients::RestingReading& reading, const clients::RestingWarning& warning, const clients::RestingLimits& limits);
/// What is still to be asked: `Still open: 4, 9 and how active the client is.`; empty where nothing is.
[[nodiscard]] QString openAnswersText(const clients::HealthOutcome& outcome);
/// Words that the coach can say, without quotation marks.
[[nodiscard]] QString wordsToSay(const clients::HealthOutcome& outcome);
/// What has to wait, and what can go on; empty where nothing waits.
[[nodiscard]] QString whatWaitsText(const clients::HealthOutcome& outcome);
[[nodiscard]] QString whatGoesOnText(const clients::HealthOutcome& outcome);
/// `Chest pain, fainting or sudden breathlessness now? Stop and call the emergency number.`
[[nodiscard]] QString emergencyText();
/// That this is a recommendation and no diagnosis.
[[nodiscard]] QString noDiagnosisText();
/// Where the recommendation comes from.
[[nodiscard]] QString screeningSourceText();
/// The row of the algorithm: `Not a regular exerciser · no known disease · signs or symptoms · moderate`.
[[nodiscard]] QString algorithmRowText(const clients::ScreeningFacts& facts);
/// What the algorithm alone says: `Clearance is recommended before starting.`
[[nodiscard]] QString screeningAdviceText(clients::ScreeningAdvice advice);

}  // namespace chalk::ui::common
