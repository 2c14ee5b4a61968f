#pragma once

#include "core/base/date.h"
#include "core/clients/client.h"
#include "core/clients/health_question.h"
#include "core/clients/resting_reading.h"
#include "core/clients/screening.h"

#include <array>
#include <optional>
#include <string>
#include <vector>

namespace chalk::clients {

/// An answer. Marks count with a yes alone.
struct HealthAnswer {
    std::optional<bool> isYes;      ///< nothing: not answered yet
    std::vector<HealthMark> marks;  ///< of the question's own, without doubles
    std::string detail;             ///< in the client's words, UTF-8

    bool operator==(const HealthAnswer&) const = default;
};

/// A client's answers on one day. Half a one is kept like a whole one.
struct HealthIntake {
    std::array<HealthAnswer, kHealthQuestionCount> answers;
    std::optional<bool> isRegularExerciser;  ///< see ScreeningFacts
    Intensity intended = Intensity::Moderate;
    RestingReading resting;
    std::string note;
    std::optional<base::Date> agreedOn;      ///< read and agreed by the client

    [[nodiscard]] const HealthAnswer& answerTo(HealthQuestion question) const { return answers[static_cast<std::size_t>(question)]; }
    [[nodiscard]] HealthAnswer& answerTo(HealthQuestion question) { return answers[static_cast<std::size_t>(question)]; }
    bool operator==(const HealthIntake&) const = default;
};

/// The four levels that a coach is shown, the mildest first.
enum class HealthLevel : std::uint8_t { Clear, Limits, AskDoctor, NotToday };

/// One mark that led to the outcome.
struct HealthFinding {
    HealthQuestion question = HealthQuestion::HeartOrPressure;
    HealthMark mark = HealthMark::HeartDisease;
    bool isAssumed = false;  ///< the answer was yes and nothing was marked: the gravest is taken

    bool operator==(const HealthFinding&) const = default;
};

/// What an intake leads to. No diagnosis: a recommendation, by a published algorithm and common practice.
struct HealthOutcome {
    HealthLevel level = HealthLevel::Clear;
    ScreeningFacts facts;
    ScreeningAdvice advice = ScreeningAdvice::StartLightly;  ///< of the algorithm alone
    bool isCareNeededNow = false;                            ///< medical care now, whatever else
    RestingWarning resting;
    std::vector<HealthFinding> findings;                     ///< in the order of the questions
    std::vector<lifts::CautionTag> cautions;                 ///< suggested, without doubles
    std::vector<HealthQuestion> open;                        ///< not answered yet
    bool isActivityOpen = false;                             ///< whether the client exercises was not answered yet

    [[nodiscard]] bool isComplete() const { return open.empty() && !isActivityOpen; }
    bool operator==(const HealthOutcome&) const = default;
};

/// Judges an intake. What is not answered counts as a no, and a newcomer; the outcome says what is open.
[[nodiscard]] HealthOutcome outcomeOf(const HealthIntake& intake, const RestingLimits& limits);

/// What a client's file says after this outcome, no letter being on file: `Unanswered` while answers are open and none of those given asks for
/// clearance.
[[nodiscard]] ClearanceState clearanceStateAfter(const HealthOutcome& outcome);

[[nodiscard]] std::string_view keyOf(HealthLevel level);

}  // namespace chalk::clients
