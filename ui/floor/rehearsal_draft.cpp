#include "ui/floor/rehearsal_draft.h"

#include "ui/common/formats.h"

#include <QCoreApplication>

#include <algorithm>

namespace chalk::ui::floor {

namespace {

using progression::Rehearsal;

constexpr int kMostReps = 1000;
constexpr int kMostPauseSeconds = 60;
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

/// `heels_down` is `Heels down`.
QString wordsOfKey(const std::string& key)
{
    QString words = common::qstring(key).replace(QLatin1Char('_'), QLatin1Char(' '));
    return words.left(1).toUpper() + words.mid(1);
}

}  // namespace

RehearsalPoints rehearsalPoints(const screens::PatternGuide& guide)
{
    RehearsalPoints points;
    for (const screens::ScreenPoint& point : guide.points) {
        points.push_back({point.key, common::qstring(point.text)});
    }
    return points;
}

RehearsalPoints pointsOf(const Rehearsal& rehearsal, const screens::PatternGuide& guide)
{
    const auto isKnown = [&guide](const progression::Criterion& criterion) { return guide.find(criterion.key) != nullptr; };
    if (std::all_of(rehearsal.criteria.begin(), rehearsal.criteria.end(), isKnown)) {
        return rehearsalPoints(guide);
    }
    RehearsalPoints points;
    for (const progression::Criterion& criterion : rehearsal.criteria) {
        const screens::ScreenPoint* known = guide.find(criterion.key);
        points.push_back({criterion.key, known != nullptr ? common::qstring(known->text) : wordsOfKey(criterion.key)});
    }
    points.resize(std::min(points.size(), kMostRehearsalPoints));
    return points;
}

std::optional<RehearsalFault> faultOf(const RehearsalDraft& draft, const RehearsalPoints& points, bool areAllPointsAsked)
{
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

Rehearsal rehearsalOf(const RehearsalDraft& draft, const RehearsalPoints& points, const progression::Policy& policy)
{
    Rehearsal rehearsal;
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

RehearsalDraft draftOf(const Rehearsal& rehearsal, const RehearsalPoints& points)
{
    RehearsalDraft draft;
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
