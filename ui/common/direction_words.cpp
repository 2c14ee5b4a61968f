#include "ui/common/direction_words.h"

#include "ui/common/formats.h"

#include <QCoreApplication>
#include <QLocale>

#include <algorithm>
#include <array>

namespace chalk::ui::common {

namespace {

using chalk::direction::Direction;
using chalk::direction::FitNote;
using chalk::direction::NoTest;
using chalk::direction::PlanFigure;
using chalk::direction::TestEnd;

constexpr std::array kDirectionNames{QT_TRANSLATE_NOOP("Direction", "Strength"), QT_TRANSLATE_NOOP("Direction", "Physique"),
                                     QT_TRANSLATE_NOOP("Direction", "Movement")};
constexpr std::array kDirectionTexts{QT_TRANSLATE_NOOP("Direction", "Heavier, fewer reps. One main lift a day."),
                                     QT_TRANSLATE_NOOP("Direction", "More sets, more exercises, moderate load."),
                                     QT_TRANSLATE_NOOP("Direction", "Wide range, control, light to moderate load.")};
constexpr std::array kWaveNames{QT_TRANSLATE_NOOP("Direction", "from week to week"), QT_TRANSLATE_NOOP("Direction", "from session to session")};
constexpr std::array kPhaseNames{QT_TRANSLATE_NOOP("Direction", "Base"), QT_TRANSLATE_NOOP("Direction", "Build"), QT_TRANSLATE_NOOP("Direction", "Peak"),
                                 QT_TRANSLATE_NOOP("Direction", "Test")};
constexpr std::array kWeekKindNames{QT_TRANSLATE_NOOP("Direction", "work"), QT_TRANSLATE_NOOP("Direction", "lighter"), QT_TRANSLATE_NOOP("Direction", "test")};
constexpr std::array kRoleNames{QT_TRANSLATE_NOOP("Direction", "Main lift"), QT_TRANSLATE_NOOP("Direction", "Assistance"),
                                QT_TRANSLATE_NOOP("Direction", "Upkeep")};
constexpr std::array kMuscleNames{QT_TRANSLATE_NOOP("Direction", "Quadriceps"), QT_TRANSLATE_NOOP("Direction", "Hamstrings"),
                                  QT_TRANSLATE_NOOP("Direction", "Glutes"),     QT_TRANSLATE_NOOP("Direction", "Chest"),
                                  QT_TRANSLATE_NOOP("Direction", "Back"),       QT_TRANSLATE_NOOP("Direction", "Shoulders"),
                                  QT_TRANSLATE_NOOP("Direction", "Biceps"),     QT_TRANSLATE_NOOP("Direction", "Triceps"),
                                  QT_TRANSLATE_NOOP("Direction", "Trunk")};
static_assert(kMuscleNames.size() == chalk::direction::kMuscleGroups.size());
constexpr std::array kNoTests{QT_TRANSLATE_NOOP("Direction", "Loaded work waits for clearance, or is limited."),
                              QT_TRANSLATE_NOOP("Direction", "A caution speaks against heavy singles: ask whoever treats the client first."),
                              QT_TRANSLATE_NOOP("Direction", "The lift is on hold."),
                              QT_TRANSLATE_NOOP("Direction", "The lift carries no load yet."),
                              QT_TRANSLATE_NOOP("Direction", "A single says little of this lift. A set of three to five is the test for it."),
                              QT_TRANSLATE_NOOP("Direction", "Less than 90 days of loaded work. A set of three to five is enough until then.")};
constexpr std::array kTestEnds{QT_TRANSLATE_NOOP("Direction", "The heaviest attempt that was made stands."),
                               QT_TRANSLATE_NOOP("Direction", "Pain ended the test."),
                               QT_TRANSLATE_NOOP("Direction", "Five attempts are enough for a day."),
                               QT_TRANSLATE_NOOP("Direction", "The equipment gives nothing further."),
                               QT_TRANSLATE_NOOP("Direction", "The test was stopped.")};
constexpr std::array kTestCautions{QT_TRANSLATE_NOOP("Direction", "Clearance is on file, and nothing has changed since."),
                                   QT_TRANSLATE_NOOP("Direction", "Rested, fed and free of pain today."),
                                   QT_TRANSLATE_NOOP("Direction", "Safeties are set, or a spotter stands by who can take the load."),
                                   QT_TRANSLATE_NOOP("Direction", "The area is clear, and both know the word that stops a set.")};
constexpr std::array kHeavyCautions{QT_TRANSLATE_NOOP("Direction", "Use safeties or a spotter for every heavy set."),
                                    QT_TRANSLATE_NOOP("Direction", "Stop a set at pain or when form goes, whatever the plan says."),
                                    QT_TRANSLATE_NOOP("Direction", "Chest pain, dizziness or shortness of breath at rest: stop and get medical help."),
                                    QT_TRANSLATE_NOOP("Direction", "Where health has changed, ask a doctor before going on. Local rules come first.")};

QString directionWords(const char* text)
{
    return QCoreApplication::translate("Direction", text);
}

template <std::size_t N, class Enum>
QString directionWord(const std::array<const char*, N>& words, Enum value)
{
    return directionWords(words[static_cast<std::size_t>(value)]);
}

template <std::size_t N>
QStringList directionSentences(const std::array<const char*, N>& words)
{
    QStringList sentences;
    for (const char* text : words) {
        sentences.append(directionWords(text));
    }
    return sentences;
}

QString longDateText(base::Date date)
{
    return longDayText(date).section(QLatin1Char(' '), 1) + QLatin1Char(' ') + QString::number(static_cast<int>(date.ymd().year()));
}

QString figureText(PlanFigure figure, int value)
{
    switch (figure) {
    case PlanFigure::Share:
        return QLocale::c().toString(value / 10.0, 'g', 4) + QStringLiteral(" %");
    case PlanFigure::Reps:
    case PlanFigure::Sets:
        return QString::number(value);
    case PlanFigure::Rest:
        return restText(base::Seconds(value));
    }
    return {};
}

QString figureName(PlanFigure figure)
{
    switch (figure) {
    case PlanFigure::Share:
        return directionWords(QT_TRANSLATE_NOOP("Direction", "Load"));
    case PlanFigure::Reps:
        return directionWords(QT_TRANSLATE_NOOP("Direction", "Reps"));
    case PlanFigure::Sets:
        return directionWords(QT_TRANSLATE_NOOP("Direction", "Sets"));
    case PlanFigure::Rest:
        return directionWords(QT_TRANSLATE_NOOP("Direction", "Rest"));
    }
    return {};
}

QString noneSuggestedText(const chalk::direction::FitFacts& facts)
{
    if (facts.hasLiftOnHold) {
        return directionWords(QT_TRANSLATE_NOOP("Direction", "None is suggested while a lift is on hold. Settle that first."));
    }
    return directionWords(QT_TRANSLATE_NOOP("Direction", "None stands out. One more cycle is as good a choice."));
}

QString whyText(Direction direction, const chalk::direction::FitFacts& facts)
{
    switch (direction) {
    case Direction::Strength:
        return directionWords(QT_TRANSLATE_NOOP("Direction", "%1 days a week are enough for it, %2 of %3 loaded lifts are past their first cycle, and "
                                                             "no caution speaks against heavy loads."))
            .arg(facts.sessionsAWeek)
            .arg(facts.liftsPastFirstCycle)
            .arg(facts.loadedLifts);
    case Direction::Physique:
        return directionWords(QT_TRANSLATE_NOOP("Direction", "%1 days a week leave room for enough sets, at loads below those of strength work."))
            .arg(facts.sessionsAWeek);
    case Direction::Movement:
        return facts.needsCareWithHeavyLoads
                   ? directionWords(QT_TRANSLATE_NOOP("Direction", "A caution asks for care with heavy loads. This keeps strength up at lighter ones."))
                   : directionWords(QT_TRANSLATE_NOOP("Direction", "%1 days a week are few for the others. This does well with them.")).arg(facts.sessionsAWeek);
    }
    return {};
}

}  // namespace

QString directionName(Direction direction)
{
    return directionWord(kDirectionNames, direction);
}

QString directionText(Direction direction)
{
    return directionWord(kDirectionTexts, direction);
}

QString waveName(chalk::direction::Wave wave)
{
    return directionWord(kWaveNames, wave);
}

QString phaseName(chalk::direction::Phase phase)
{
    return directionWord(kPhaseNames, phase);
}

QString weekKindName(chalk::direction::WeekKind kind)
{
    return directionWord(kWeekKindNames, kind);
}

QString liftRoleName(chalk::direction::LiftRole role)
{
    return directionWord(kRoleNames, role);
}

QString muscleGroupName(chalk::direction::MuscleGroup group)
{
    return directionWord(kMuscleNames, group);
}

QString fitNoteText(FitNote note, Direction direction, int sessionsAWeek)
{
    switch (note) {
    case FitNote::FitsTheWeek:
        return directionWords(QT_TRANSLATE_NOOP("Direction", "Fits %1 days a week")).arg(sessionsAWeek);
    case FitNote::FewerThanWanted:
        return directionWords(QT_TRANSLATE_NOOP("Direction", "Wants %1 days")).arg(demandsOf(direction).goodSessions);
    case FitNote::TooFewSessions:
        return directionWords(QT_TRANSLATE_NOOP("Direction", "Needs %1 days at least")).arg(demandsOf(direction).leastSessions);
    case FitNote::CareWithHeavyLoads:
        return directionWords(QT_TRANSLATE_NOOP("Direction", "Caution: ask first"));
    case FitNote::LiftOnHold:
        return directionWords(QT_TRANSLATE_NOOP("Direction", "Lift on hold"));
    case FitNote::FewLiftsGoneRound:
        return directionWords(QT_TRANSLATE_NOOP("Direction", "First cycle not over"));
    }
    return {};
}

bool isGoodNote(FitNote note)
{
    return note == FitNote::FitsTheWeek;
}

QString suggestionText(std::span<const chalk::direction::DirectionFit> fits, const chalk::direction::FitFacts& facts)
{
    const auto suggested = std::find_if(fits.begin(), fits.end(), [](const chalk::direction::DirectionFit& fit) { return fit.isSuggested; });
    return suggested == fits.end() ? noneSuggestedText(facts) : whyText(suggested->direction, facts);
}

QString planTitle(const chalk::direction::BlockPlan& plan)
{
    return directionWords(QT_TRANSLATE_NOOP("Direction", "%1, %2 weeks")).arg(directionName(plan.wishes.direction)).arg(plan.weeks.size());
}

QString planDaysText(const chalk::direction::BlockPlan& plan)
{
    constexpr int kToSunday = 6;
    return plan.weeks.empty() ? QString()
                              : QStringLiteral("%1 – %2").arg(longDateText(plan.weeks.front().monday), longDateText(plan.weeks.back().monday + kToSunday));
}

QString departureText(const chalk::direction::Departure& departure)
{
    return directionWords(QT_TRANSLATE_NOOP("Direction", "%1 %2; published %3–%4 (%5)"))
        .arg(figureName(departure.figure), figureText(departure.figure, departure.value), figureText(departure.figure, departure.range.least),
             figureText(departure.figure, departure.range.most), qstring(departure.source));
}

QString zoneTotalText(const chalk::direction::ZoneTotal& total)
{
    if (!total.zone) {
        return directionWords(QT_TRANSLATE_NOOP("Direction", "%1 reps where the table prints none")).arg(total.reps);
    }
    constexpr int kPerCent = 10;
    return directionWords(QT_TRANSLATE_NOOP("Direction", "%1 reps at %2–%3 %; printed %4–%5, best %6"))
        .arg(total.reps)
        .arg(total.zone->from.value() / kPerCent)
        .arg(total.zone->to.value() / kPerCent)
        .arg(total.zone->totalLeast)
        .arg(total.zone->totalMost)
        .arg(total.zone->totalBest);
}

QString noTestText(NoTest reason)
{
    return directionWord(kNoTests, reason);
}

QString testEndText(TestEnd end)
{
    return directionWord(kTestEnds, end);
}

QStringList testCautions()
{
    return directionSentences(kTestCautions);
}

QStringList heavyWorkCautions()
{
    return directionSentences(kHeavyCautions);
}

}  // namespace chalk::ui::common
