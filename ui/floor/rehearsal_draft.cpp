#include "ui/floor/rehearsal_draft.h"

#include "ui/common/formats.h"

#include <QCoreApplication>

#include <algorithm>

namespace chalk::ui::floor {

namespace {

using lifts::Pattern;
using progression::Rehearsal;

constexpr int kMostReps = 1000;
constexpr int kMostPauseSeconds = 60;
constexpr const char* kPointKeys[] = {"depth", "path", "balance", "trunk"};

struct PatternPoints {
    Pattern pattern;
    const char* words[4];  ///< in the order of kPointKeys
};

// clang-format off
constexpr PatternPoints kPatternPoints[] = {
    {Pattern::Squat, {QT_TRANSLATE_NOOP("Rehearsal", "Thighs reach level"), QT_TRANSLATE_NOOP("Rehearsal", "Knees follow the toes"),
                      QT_TRANSLATE_NOOP("Rehearsal", "Heels down, weight even"), QT_TRANSLATE_NOOP("Rehearsal", "Back keeps its shape")}},
    {Pattern::Hinge, {QT_TRANSLATE_NOOP("Rehearsal", "Hands pass the knees"), QT_TRANSLATE_NOOP("Rehearsal", "Hips go back, shins stay upright"),
                      QT_TRANSLATE_NOOP("Rehearsal", "Whole foot down, weight even"), QT_TRANSLATE_NOOP("Rehearsal", "Back keeps its shape")}},
    {Pattern::HorizontalPush, {QT_TRANSLATE_NOOP("Rehearsal", "Full way down and up"), QT_TRANSLATE_NOOP("Rehearsal", "Elbows stay under the hands"),
                               QT_TRANSLATE_NOOP("Rehearsal", "Both sides move together"), QT_TRANSLATE_NOOP("Rehearsal", "Hips and ribs in one line")}},
    {Pattern::HorizontalPull, {QT_TRANSLATE_NOOP("Rehearsal", "Full reach, full pull"), QT_TRANSLATE_NOOP("Rehearsal", "Elbows pass close to the ribs"),
                               QT_TRANSLATE_NOOP("Rehearsal", "Both sides move together"), QT_TRANSLATE_NOOP("Rehearsal", "Trunk stays still")}},
    {Pattern::VerticalPush, {QT_TRANSLATE_NOOP("Rehearsal", "Arms straight overhead"), QT_TRANSLATE_NOOP("Rehearsal", "Wrists above the elbows"),
                             QT_TRANSLATE_NOOP("Rehearsal", "Both sides move together"), QT_TRANSLATE_NOOP("Rehearsal", "Ribs stay down")}},
    {Pattern::VerticalPull, {QT_TRANSLATE_NOOP("Rehearsal", "Full reach, chin to the hands"), QT_TRANSLATE_NOOP("Rehearsal", "Shoulders lead, elbows follow"),
                             QT_TRANSLATE_NOOP("Rehearsal", "Both sides move together"), QT_TRANSLATE_NOOP("Rehearsal", "No swing")}},
    {Pattern::SingleLeg, {QT_TRANSLATE_NOOP("Rehearsal", "Front thigh reaches level"), QT_TRANSLATE_NOOP("Rehearsal", "Knee follows the toes"),
                          QT_TRANSLATE_NOOP("Rehearsal", "Stands without a sway"), QT_TRANSLATE_NOOP("Rehearsal", "Hips stay level, trunk upright")}},
    {Pattern::CarryBrace, {QT_TRANSLATE_NOOP("Rehearsal", "Full time or way"), QT_TRANSLATE_NOOP("Rehearsal", "Shoulders level, steps even"),
                           QT_TRANSLATE_NOOP("Rehearsal", "No lean to a side"), QT_TRANSLATE_NOOP("Rehearsal", "Breathes with a firm trunk")}},
};
// clang-format on

QString rehearsalText(const char* text)
{
    return QCoreApplication::translate("Rehearsal", text);
}

/// Milliseconds; nothing where it is no number of 0 to 60 seconds.
std::optional<int> pauseMsOf(const QString& text)
{
    bool isNumber = false;
    const double seconds = QString(text).replace(QLatin1Char(','), QLatin1Char('.')).toDouble(&isNumber);
    return isNumber && seconds >= 0 && seconds <= kMostPauseSeconds ? std::optional(qRound(seconds * 1000)) : std::nullopt;
}

std::optional<int> repsOf(const QString& text)
{
    bool isNumber = false;
    const int reps = text.trimmed().toInt(&isNumber);
    return isNumber && reps >= 0 && reps <= kMostReps ? std::optional(reps) : std::nullopt;
}

QString secondsTextOf(const std::optional<int>& pauseMs)
{
    return pauseMs ? QString::number(*pauseMs / 1000.0) : QString();
}

}  // namespace

std::vector<RehearsalPoint> rehearsalPoints(Pattern pattern)
{
    std::vector<RehearsalPoint> points;
    for (const PatternPoints& one : kPatternPoints) {
        for (std::size_t i = 0; one.pattern == pattern && i < std::size(kPointKeys); ++i) {
            points.push_back({kPointKeys[i], rehearsalText(one.words[i])});
        }
    }
    return points;
}

std::optional<RehearsalFault> faultOf(const RehearsalDraft& draft, Pattern pattern, bool areAllPointsAsked)
{
    const auto points = rehearsalPoints(pattern);
    for (std::size_t i = 0; areAllPointsAsked && i < points.size(); ++i) {
        if (!draft.verdicts[i]) {
            return RehearsalFault{RehearsalPlace::Point, static_cast<int>(i),
                                  rehearsalText(QT_TRANSLATE_NOOP("Rehearsal", "Point %1, “%2”, is not judged yet.")).arg(i + 1).arg(points[i].words)};
        }
    }
    if (!draft.reps.trimmed().isEmpty() && !repsOf(draft.reps)) {
        return RehearsalFault{RehearsalPlace::Reps, 0,
                              rehearsalText(QT_TRANSLATE_NOOP("Rehearsal", "Reps: “%1” is no whole number from 0 to 1000.")).arg(draft.reps)};
    }
    const char* const names[] = {QT_TRANSLATE_NOOP("Rehearsal", "Pause at the top"), QT_TRANSLATE_NOOP("Rehearsal", "Pause in the middle"),
                                 QT_TRANSLATE_NOOP("Rehearsal", "Pause at the bottom")};
    for (std::size_t i = 0; i < draft.pauses.size(); ++i) {
        if (!draft.pauses[i].trimmed().isEmpty() && !pauseMsOf(draft.pauses[i])) {
            return RehearsalFault{static_cast<RehearsalPlace>(static_cast<int>(RehearsalPlace::PauseTop) + static_cast<int>(i)), 0,
                                  rehearsalText(QT_TRANSLATE_NOOP("Rehearsal", "%1: “%2” is no number of seconds from 0 to 60."))
                                      .arg(rehearsalText(names[i]), draft.pauses[i])};
        }
    }
    return std::nullopt;
}

Rehearsal rehearsalOf(const RehearsalDraft& draft, Pattern pattern, const progression::Policy& policy)
{
    Rehearsal rehearsal;
    const auto points = rehearsalPoints(pattern);
    for (std::size_t i = 0; i < points.size(); ++i) {
        if (draft.verdicts[i]) {
            rehearsal.criteria.push_back({points[i].key, *draft.verdicts[i]});
        }
    }
    rehearsal.reps = base::Reps(repsOf(draft.reps).value_or(policy.controlReps.value()));
    rehearsal.pauses = {pauseMsOf(draft.pauses[0]), pauseMsOf(draft.pauses[1]), pauseMsOf(draft.pauses[2])};
    rehearsal.steadiness = draft.felt;
    rehearsal.pain = draft.pain;
    return rehearsal;
}

RehearsalDraft draftOf(const Rehearsal& rehearsal, Pattern pattern)
{
    RehearsalDraft draft;
    const auto points = rehearsalPoints(pattern);
    for (const progression::Criterion& criterion : rehearsal.criteria) {
        const auto at = std::find_if(points.begin(), points.end(), [&criterion](const RehearsalPoint& point) { return point.key == criterion.key; });
        if (at != points.end()) {
            draft.verdicts[static_cast<std::size_t>(at - points.begin())] = criterion.verdict;
        }
    }
    draft.reps = QString::number(rehearsal.reps.value());
    draft.pauses = {secondsTextOf(rehearsal.pauses.topMs), secondsTextOf(rehearsal.pauses.middleMs), secondsTextOf(rehearsal.pauses.bottomMs)};
    draft.felt = rehearsal.steadiness;
    draft.pain = rehearsal.pain;
    return draft;
}

}  // namespace chalk::ui::floor
